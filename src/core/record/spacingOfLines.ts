import { crackPitch, lineIntercept, type TestLine } from "../crackle/lineIntercept.ts";
import { tQuantile } from "../math/distributions.ts";
import type { MeasuredSpacing, SpacingInDirection } from "./FiringRecord.ts";

/** A line with its counts and, where the pattern has one, its direction. */
export interface CountedLine extends TestLine {
  readonly direction: SpacingInDirection["direction"] | null;
}

/** Normal sigmas that 95 of 100 lie within. */
const SIGMAS_95 = 1.96;

/**
 * Least variance of the cracks counted on one line: of evenly spaced ones laid over at any place it
 * is f (1 − f) for a length of so many spacings and f more, a sixth on average; own arithmetic.
 */
const LEAST_VARIANCE = 1 / 6;

/**
 * Crack spacing of a piece from counts along lines, of which at least one crosses a crack.
 * Lines of two directions count for half each, whatever their lengths; for parallel cracks the two
 * give the pitch square across at any slant: 1/p² is the sum of both counts per length, squared.
 * One line alone, or one each way, has the interval of a count, as of lines thrown down at random;
 * lines that agree by luck have that of evenly spaced cracks.
 *
 * @throws RangeError when no line crosses anything.
 */
export function spacingOfLines(
  lines: readonly CountedLine[],
  pattern: MeasuredSpacing["pattern"],
): MeasuredSpacing {
  const all = lineIntercept(lines);
  if (all.interceptMm === null) throw new RangeError("spacingOfLines: nothing was crossed");
  const ways = (["along", "across"] as const).map((way) =>
    lines.filter(({ direction }) => direction === way),
  );
  const both = ways.every((way) => way.length > 0) ? ways : null;
  const found =
    both === null
      ? {
          interceptMm: all.interceptMm,
          intervalMm: around(all.interceptMm, reachOf(perLength(lines))),
          pitchOver: crackPitch(1, pattern),
        }
      : ofTwoWays(both, pattern);
  const directions = both === null ? [] : both.map(inDirection);
  const [along, across] = directions.map(({ interceptMm }) => interceptMm);
  return {
    kind: "measured",
    pitchMm: found.interceptMm * found.pitchOver,
    lowMm: found.intervalMm.low * found.pitchOver,
    highMm: found.intervalMm.high * found.pitchOver,
    interceptMm: found.interceptMm,
    lines: lines.length,
    lengthMm: all.lengthMm,
    crossings: all.crossings,
    pattern,
    from: "lines",
    directions,
    alongOverAcross: along && across ? along / across : null,
  };
}

/** How far 95 in 100 reach in the logarithm; an error that no scatter was needed for is known. */
function reachOf({ error, freedom }: { readonly error: number; readonly freedom: number }): number {
  return error * (freedom < 1 ? SIGMAS_95 : tQuantile(0.95, freedom));
}

/** The interval that reaches so far to either side in the logarithm. */
function around(interceptMm: number, reach: number) {
  const factor = Math.exp(reach);
  return { low: interceptMm / factor, high: interceptMm * factor };
}

/** Cracks per length in one direction, with its relative standard error. */
interface PerLength {
  readonly perMm: number;
  readonly error: number;
  readonly freedom: number;
}

function ofTwoWays(
  ways: readonly (readonly CountedLine[])[],
  pattern: MeasuredSpacing["pattern"],
): {
  readonly interceptMm: number;
  readonly intervalMm: { readonly low: number; readonly high: number };
  readonly pitchOver: number;
} {
  const each = ways.map(perLength);
  const power = pattern === "net" ? 1 : 2;
  const weights = each.map(({ perMm }) => perMm ** power);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const error = Math.hypot(...each.map((way, i) => (weights[i]! / total) * way.error));
  const freedom = each.reduce((sum, way) => sum + way.freedom, 0);
  const interceptMm = pattern === "net" ? 2 / total : 1 / Math.sqrt(total);
  return {
    interceptMm,
    intervalMm: around(interceptMm, reachOf({ error, freedom })),
    pitchOver: pattern === "net" ? crackPitch(1, "net") : 1,
  };
}

function perLength(lines: readonly CountedLine[]): PerLength {
  const { crossings, lengthMm, interceptMm, intervalMm } = lineIntercept(lines);
  const freedom = lines.length - 1;
  if (interceptMm === null) return { perMm: 0, error: 0, freedom };
  const error =
    intervalMm === null
      ? 1 / Math.sqrt(crossings)
      : Math.log(intervalMm.high / intervalMm.low) / (2 * tQuantile(0.95, freedom));
  const least = Math.sqrt(lines.length * LEAST_VARIANCE) / crossings;
  return { perMm: crossings / lengthMm, error: Math.max(error, least), freedom };
}

function inDirection(lines: readonly CountedLine[]): SpacingInDirection {
  const { interceptMm, crossings } = lineIntercept(lines);
  const [{ direction }] = lines as readonly [CountedLine];
  return {
    direction: direction as SpacingInDirection["direction"],
    interceptMm,
    lines: lines.length,
    crossings,
  };
}
