import { basename } from "node:path";
import { answerHtml } from "../../core/answers/answerHtml.ts";
import { measureAnswer } from "../../core/answers/sideAnswers.ts";
import { measurePhoto } from "../../core/photo/measurePhoto.ts";
import type {
  PhotoInput,
  PhotoMeasurement,
  PhotoWishes,
} from "../../core/photo/PhotoMeasurement.ts";
import { parseCrop, parsePhotoScale, scaleWords } from "../../core/photo/photoScale.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { measureDocument } from "../../core/reports/documents/measureDocument.ts";
import { readPhoto } from "../../node/readPhoto.ts";
import { writeOutput } from "../../node/writeOutput.ts";
import {
  answer,
  answerJson,
  type CommonOptions,
  EXIT,
  paintFor,
  refuse,
  say,
} from "../conversation.ts";
import { textOfAnswer } from "../showAnswer.ts";

interface MeasureOptions extends CommonOptions, WishOptions {
  readonly scale?: string;
  readonly width?: string;
  readonly corners?: string;
  readonly crop?: string;
  readonly overlay?: string;
}

/** `undunted measure PHOTO`: the spacing of the cracks in a photograph of an inked tile. */
export async function run(path: string, options: MeasureOptions): Promise<number> {
  const scale = parsePhotoScale(options);
  const crop = options.crop === undefined ? ok(null) : parseCrop(options.crop);
  const wishes = wishesFrom(options);
  if (!scale.ok || !crop.ok || !wishes.ok)
    return refuse(
      [scale, crop, wishes].flatMap((result) => (result.ok ? [] : result.problems)),
      options,
    );
  if (scale.value.kind === "corners" && crop.value !== null) return refuse([bothCorners], options);
  const photo = await readPhoto(path, { scale: scale.value, crop: crop.value });
  if (!photo.ok) return refuse(photo.problems, options);
  const input: PhotoInput = {
    ...photo.value,
    name: path === "-" ? "standard input" : basename(path),
    scaleFrom: scaleWords(scale.value),
    isSquared: scale.value.kind === "corners",
    isWhole: scale.value.kind !== "corners" && crop.value === null,
    wishes: wishes.value as PhotoWishes,
  };
  const measured = measurePhoto(input);
  if (!measured.ok) return refuse(measured.problems, options);
  const written = await writeWanted(options, input, measured.value);
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) answerJson(measureDocument(measured.value));
  else {
    const told = measureAnswer(measured.value, { unit: "C", overlayUrl: null });
    const text = textOfAnswer(told, options, paintFor(options));
    if (!text.ok) return refuse(text.problems, options);
    answer(text.value);
  }
  return EXIT.fine;
}

const bothCorners = {
  code: "photo/several-scales",
  where: "command line",
  what: "both --corners and --crop are given",
  expected: "--corners alone; what lies inside the corners is measured",
  fix: "drop --crop",
} as const;

async function writeWanted(
  options: MeasureOptions,
  { picture }: PhotoInput,
  measured: PhotoMeasurement,
): Promise<Result<null>> {
  const force = { force: options.force === true };
  const { overlay, html } = options;
  if (overlay === undefined && html === undefined) return ok(null);
  const { drawOverlay } = await import("../../node/drawOverlay.ts");
  if (overlay !== undefined) {
    if (!overlay.toLowerCase().endsWith(".png")) return failed(notPng(overlay));
    const content = await drawOverlay(picture, measured, "png");
    const written = await writeOutput(overlay, content, force);
    if (!written.ok) return written;
    say(`wrote ${written.value}`, options);
  }
  if (html === undefined) return ok(null);
  const jpeg = Buffer.from(await drawOverlay(picture, measured, "jpeg")).toString("base64");
  const page = answerHtml(
    measureAnswer(measured, {
      unit: "C",
      overlayUrl: `data:image/jpeg;base64,${jpeg}`,
    }),
  );
  const written = await writeOutput(html, page, force);
  if (!written.ok) return written;
  say(`wrote ${written.value}`, options);
  return ok(null);
}

function notPng(overlay: string) {
  return {
    code: "command/overlay-ending",
    where: `--overlay ${overlay}`,
    what: "the overlay is written as PNG only",
    expected: "a name that ends in .png",
    fix: "--overlay overlay.png",
  } as const;
}

/** Options of `measure` that override what it finds from the picture. */
interface WishOptions {
  readonly count?: string;
  readonly pattern?: "net" | "parallel";
  readonly lineWidth?: string;
  readonly background?: string;
  readonly threshold?: string;
  readonly merge?: string;
  readonly angles?: string;
}

/** A number with its least and greatest value, for an option that takes one. */
interface Range {
  readonly option: string;
  readonly low: number;
  readonly high: number;
  readonly expected: string;
}

const WIDTH: Range = { option: "--line-width", low: 3, high: 200, expected: "3 to 200 pixels" };
const BACKGROUND: Range = {
  option: "--background",
  low: 4,
  high: 5000,
  expected: "4 to 5000 pixels",
};
const THRESHOLD: Range = {
  option: "--threshold",
  low: 0.05,
  high: 0.95,
  expected: "0.05 to 0.95 of the usual crack",
};
const MERGE: Range = { option: "--merge", low: 0, high: 1000, expected: "0 to 1000 pixels" };

/** The wishes of the command line; problems as `command/…`. */
function wishesFrom(options: WishOptions): Result<PhotoWishes> {
  const problems: Problem[] = [];
  const taken = <T>(result: Result<T>): T | undefined => {
    if (result.ok) return result.value;
    problems.push(...result.problems);
    return undefined;
  };
  const number = (text: string | undefined, range: Range) =>
    text === undefined ? undefined : taken(numberIn(text, range));
  const lineWidthPx = number(options.lineWidth, WIDTH);
  const backgroundPx = number(options.background, BACKGROUND);
  const thresholdShare = number(options.threshold, THRESHOLD);
  const mergePx = number(options.merge, MERGE);
  const anglesDeg = options.angles === undefined ? undefined : taken(angles(options.angles));
  const ownCounts = options.count === undefined ? undefined : taken(counts(options.count));
  if (problems.length > 0) return failed(...problems);
  return ok({
    ...(lineWidthPx !== undefined && { lineWidthPx }),
    ...(backgroundPx !== undefined && { backgroundPx }),
    ...(thresholdShare !== undefined && { thresholdShare }),
    ...(mergePx !== undefined && { mergePx }),
    ...(anglesDeg !== undefined && { anglesDeg }),
    ...(ownCounts !== undefined && { ownCounts }),
    ...(options.pattern !== undefined && { pattern: options.pattern }),
  });
}

function numberIn(text: string, { option, low, high, expected }: Range): Result<number> {
  const value = /^\d+(?:\.\d+)?(?:\s*px)?$/.test(text.trim())
    ? Number.parseFloat(text)
    : Number.NaN;
  return value >= low && value <= high ? ok(value) : failed(notSo(option, text, expected));
}

function angles(text: string): Result<readonly number[]> {
  const parts = text.split(",").map((part) => part.trim());
  const isAngle = (part: string) => /^\d{1,3}$/.test(part) && Number(part) < 180;
  return parts.every(isAngle)
    ? ok([...new Set(parts.map(Number))])
    : failed(notSo("--angles", text, "whole degrees from 0 to 179 with commas between: 0,90"));
}

function counts(text: string): Result<readonly [number, number]> {
  const match = /^\s*(\d{1,5})\s*,\s*(\d{1,5})\s*$/.exec(text);
  return match
    ? ok([Number(match[1]), Number(match[2])])
    : failed(notSo("--count", text, "your counts along line A and line B of the overlay: 17,21"));
}

function notSo(where: string, text: string, expected: string): Problem {
  return {
    code: "command/measure-option",
    where,
    what: `"${text}" cannot be taken`,
    expected,
    fix: `${where} with ${expected}`,
  };
}
