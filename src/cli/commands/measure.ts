import { basename } from "node:path";
import { measurePhoto } from "../../core/photo/measurePhoto.ts";
import type {
  PhotoInput,
  PhotoMeasurement,
  PhotoWishes,
} from "../../core/photo/PhotoMeasurement.ts";
import { parseCrop, parsePhotoScale, scaleWords } from "../../core/photo/parsePhotoScale.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import { measureDocument } from "../../core/reports/documents/measureDocument.ts";
import { measureHtml } from "../../core/reports/measureHtml.ts";
import { measureText } from "../../core/reports/measureText.ts";
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
import { type WishOptions, wishesFrom } from "../measureWishes.ts";

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
  else
    answer(measureText(measured.value, { unit: "C", overlayUrl: null, paint: paintFor(options) }));
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
  const page = measureHtml(measured, {
    unit: "C",
    overlayUrl: `data:image/jpeg;base64,${jpeg}`,
  });
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
