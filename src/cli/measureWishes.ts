import type { PhotoWishes } from "../core/photo/PhotoMeasurement.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";

/** Options of `measure` that override what it finds from the picture. */
export interface WishOptions {
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
export function wishesFrom(options: WishOptions): Result<PhotoWishes> {
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
