import { tQuantile } from "../math/distributions.ts";

/** Probability that intervals are stated for. */
const WITHIN = 0.95;

/** A test line, or the lines of one field of a picture: its length and the cracks it crosses. */
export interface TestLine {
  /** Above 0 [mm]. */
  readonly lengthMm: number;
  /** Whole, 0 or more; a touch counts 1, a meeting point of three cracks 1.5. */
  readonly crossings: number;
}

/** Mean length of line between two cracks, with how well it is known. */
export interface LineIntercept {
  readonly lines: number;
  readonly lengthMm: number;
  readonly crossings: number;
  /** All the length over all the crossings [mm]; null when nothing was crossed. */
  readonly interceptMm: number | null;
  /** 95 % interval of `interceptMm` from the scatter between lines; null below two lines. */
  readonly intervalMm: { readonly low: number; readonly high: number } | null;
  /** With no crossing at all, a smaller mean intercept would show one 95 times in 100 [mm]. */
  readonly atLeastMm: number | null;
  /** The lines' own intercepts averaged; null below two lines or where a line crosses nothing. */
  readonly ofLines: InterceptOfLines | null;
}

/** The intercept of each line taken as one reading: mean, scatter and 95 % interval of the mean. */
interface InterceptOfLines {
  /** Never below the pooled value: a mean of ratios leans to the lines with few crossings. */
  readonly meanMm: number;
  readonly standardDeviationMm: number;
  readonly halfWidthMm: number;
  /** Half the interval over the mean; 0.1 or less is the usual aim. */
  readonly relativeAccuracy: number;
}

/**
 * Mean lineal intercept from counts along lines: pooled over all lines, with the lines as
 * replicates for the interval (Student's t). The interval is even in the logarithm, since spacings
 * are nearly log-normal, and long lines weigh by their length.
 *
 * @throws RangeError without lines, for a length of 0 or less, or a negative count.
 * @see SOURCES["astm-e112"]
 */
export function lineIntercept(lines: readonly TestLine[]): LineIntercept {
  if (lines.length === 0) throw new RangeError("lineIntercept: needs a line");
  for (const { lengthMm, crossings } of lines)
    if (!(lengthMm > 0 && crossings >= 0))
      throw new RangeError(`lineIntercept: ${crossings} crossings on ${lengthMm} mm`);
  const lengthMm = sum(lines.map((line) => line.lengthMm));
  const crossings = sum(lines.map((line) => line.crossings));
  const interceptMm = crossings === 0 ? null : lengthMm / crossings;
  const share = relativeError(lines);
  return {
    lines: lines.length,
    lengthMm,
    crossings,
    interceptMm,
    intervalMm:
      interceptMm === null || share === null
        ? null
        : interceptInterval(interceptMm, share, lines.length - 1),
    atLeastMm: interceptMm === null ? lengthMm / -Math.log(1 - WITHIN) : null,
    ofLines: ofLines(lines),
  };
}

/**
 * The 95 % interval of an intercept whose logarithm has this standard error.
 *
 * @param freedom Degrees of freedom of the standard error, at least 1.
 */
function interceptInterval(
  interceptMm: number,
  standardError: number,
  freedom: number,
): { readonly low: number; readonly high: number } {
  const factor = Math.exp(tQuantile(WITHIN, freedom) * standardError);
  return { low: interceptMm / factor, high: interceptMm * factor };
}

/** Standard error of the pooled count per length over itself; null when it cannot be known. */
function relativeError(lines: readonly TestLine[]): number | null {
  const crossings = sum(lines.map((line) => line.crossings));
  if (lines.length < 2 || crossings === 0) return null;
  const perMm = crossings / sum(lines.map((line) => line.lengthMm));
  const squares = sum(lines.map((line) => (line.crossings - perMm * line.lengthMm) ** 2));
  return Math.sqrt((lines.length / (lines.length - 1)) * squares) / crossings;
}

function ofLines(lines: readonly TestLine[]): InterceptOfLines | null {
  if (lines.length < 2 || lines.some(({ crossings }) => crossings === 0)) return null;
  const each = lines.map(({ lengthMm, crossings }) => lengthMm / crossings);
  const meanMm = sum(each) / each.length;
  const standardDeviationMm = Math.sqrt(
    sum(each.map((value) => (value - meanMm) ** 2)) / (each.length - 1),
  );
  const halfWidthMm =
    (tQuantile(WITHIN, each.length - 1) * standardDeviationMm) / Math.sqrt(each.length);
  return { meanMm, standardDeviationMm, halfWidthMm, relativeAccuracy: halfWidthMm / meanMm };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** What a pattern of cracks is taken for when its spacing is worked out. */
export type CrackPattern = "net" | "parallel";

/**
 * Distance from one crack to its next neighbour, square across [mm], from the mean intercept of
 * lines in all directions. A net of square cells of side d has the intercept π d/4, parallel
 * cracks of pitch p have π p/2.
 *
 * @see SOURCES["underwood-1970"]
 */
export function crackPitch(interceptMm: number, pattern: CrackPattern): number {
  return ((pattern === "net" ? 4 : 2) / Math.PI) * interceptMm;
}

/**
 * Grain size number of metallographers for a mean intercept [mm]: 0 at 0.32 mm, one more for
 * each halving of the area of a cell.
 *
 * @see SOURCES["astm-e112"]
 */
export function grainSizeNumber(interceptMm: number): number {
  return -6.643856 * Math.log10(interceptMm) - 3.288;
}
