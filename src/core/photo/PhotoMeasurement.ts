import type { Caution } from "../cautions/cautions.ts";
import type { CrackPattern } from "../crackle/lineIntercept.ts";
import type { Finding } from "../findings/Finding.ts";
import type { Mask } from "./crackLines.ts";
import type { CrackProfile } from "./crackWidth.ts";
import type { Crossings } from "./crossings.ts";
import type { CrackDirection } from "./stripCounts.ts";

/** What a person can set; what is not set is found from the picture. */
export interface PhotoWishes {
  /** Full width of a crack [px], 3 or more. */
  readonly lineWidthPx?: number;
  /** Standard deviation of the background [px]. */
  readonly backgroundPx?: number;
  /** Least strength of a crack, as a share of the usual crack's, above 0 and below 1. */
  readonly thresholdShare?: number;
  /** Crossings closer than this are one [px]. */
  readonly mergePx?: number;
  /** Directions of the test lines [whole degrees], one or more. */
  readonly anglesDeg?: readonly number[];
  readonly pattern?: CrackPattern;
  /** Crossings that the person counted along line A and line B. */
  readonly ownCounts?: readonly [number, number];
}

/** A picture to measure, upright and cropped. */
export interface PhotoInput {
  readonly name: string;
  readonly picture: Picture;
  /** Length that a pixel stands for [mm]. */
  readonly mmPerPx: number;
  /** Where the scale comes from, in words. */
  readonly scaleFrom: string;
  /** Whether slant was taken out by four corners. */
  readonly isSquared: boolean;
  /** Whether the whole photograph is measured, with all that it shows. */
  readonly isWhole: boolean;
  readonly wishes: PhotoWishes;
  /** Told on a page with its own tools, so that no advice names an option of the command. */
  readonly isOnPage?: boolean;
}

/** One thing that was chosen, with its reason. */
export interface PhotoChoice {
  readonly what: string;
  readonly value: string;
  readonly because: string;
}

/** A line that is drawn and named, so that a person can count along it. */
export interface CheckLine {
  readonly name: "A" | "B";
  readonly crossings: Crossings;
  readonly lengthMm: number;
  /** What the person counted; null when not given. */
  readonly ownCount: number | null;
}

/** The spacing of cracks as counted in a picture. */
export interface CountedCracks {
  readonly profile: CrackProfile;
  /** Counted along all test lines. */
  readonly crossings: number;
  readonly lengthMm: number;
  /** Mean length of line from crack to crack, hidden cracks allowed for [mm]. */
  readonly interceptMm: number;
  /** 95 % interval, from the scatter between strips of the picture. */
  readonly intervalMm: { readonly low: number; readonly high: number };
  /** Half the interval over the intercept. */
  readonly relativeAccuracy: number;
  readonly testLines: number;
  /**
   * Share of cracks that are likely hidden behind a near neighbour, judged by the pairs just wide
   * enough apart to be told from one crack.
   */
  readonly hiddenShare: number;
  readonly direction: CrackDirection | null;
  readonly pattern: CrackPattern;
  readonly pitchMm: number;
  readonly pitchIntervalMm: { readonly low: number; readonly high: number };
  /** Pitches that fit into the shorter side. */
  readonly cellsAcross: number;
  readonly checkLines: readonly CheckLine[];
}

/** What a person changed of the count. */
export interface CorrectedCount {
  /** Crossings taken away and added. */
  readonly takenAway: number;
  readonly added: number;
  /** Areas left out, and the share of the length of the test lines that they take with them. */
  readonly areas: number;
  readonly leftOutShare: number;
  /** Corrections that meet no line or no crossing any more, and so change nothing. */
  readonly lost: number;
}

/** What a photograph of a tile shows. */
export interface PhotoMeasurement {
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly mmPerPx: number;
  readonly scaleFrom: string;
  readonly choices: readonly PhotoChoice[];
  /** Null when no crack was found. */
  readonly cracks: CountedCracks | null;
  /** What was corrected by hand; null when nothing was. */
  readonly corrected: CorrectedCount | null;
  /** Narrowest crack, inked to half the brightness of the ground, that would have been seen [mm]. */
  readonly leastVisibleMm: number;
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
  /**
   * What was found, for drawing and for correcting, in pixels of the mask; `factor` pixels of the
   * picture are one of the mask.
   */
  readonly found: {
    readonly lines: Mask;
    readonly factor: number;
    readonly counted: readonly Crossings[];
    /** Strip along the edges that no line enters. */
    readonly margin: number;
    /** Crossings closer than this are one. */
    readonly mergePx: number;
  };
}

/** A grey picture, row by row from the top left; grey runs from 0 (black) to 255 (white). */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly grey: Float32Array | Uint8Array;
}

/** A place in a picture [px], from its top left corner. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** A plane of numbers, row by row. */
export interface Plane {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

/** Standard deviations that the sampled Gauss curve reaches to either side. */
const REACH = 3;

/**
 * A plane smoothed by a Gauss curve, its edge values repeated outwards.
 *
 * @param sigma One standard deviation [px], above 0.
 */
export function blurred(plane: Plane, sigma: number): Plane {
  const half = gaussHalf(sigma);
  return { ...plane, values: downColumns(alongRows(plane, half), plane.width, half) };
}

/** Weights from the middle outwards; with their mirror image they sum to 1. */
function gaussHalf(sigma: number): Float64Array {
  const reach = Math.max(1, Math.ceil(REACH * sigma));
  const half = Float64Array.from({ length: reach + 1 }, (_, i) =>
    Math.exp(-((i / sigma) ** 2) / 2),
  );
  const total = half.reduce((sum, weight) => sum + 2 * weight, -half[0]!);
  return half.map((weight) => weight / total);
}

function alongRows({ width, height, values }: Plane, half: Float64Array): Float32Array {
  const out = new Float32Array(values.length);
  const reach = half.length - 1;
  const padded = new Float32Array(width + 2 * reach);
  for (let y = 0; y < height; y++) {
    const row = values.subarray(y * width, (y + 1) * width);
    padded.fill(row[0]!, 0, reach);
    padded.set(row, reach);
    padded.fill(row[width - 1]!, reach + width);
    for (let x = 0; x < width; x++) {
      let sum = half[0]! * padded[x + reach]!;
      for (let k = 1; k <= reach; k++)
        sum += half[k]! * (padded[x + reach - k]! + padded[x + reach + k]!);
      out[y * width + x] = sum;
    }
  }
  return out;
}

/** Down the columns, but row by row, which is how memory lies. */
function downColumns(values: Float32Array, width: number, half: Float64Array): Float32Array {
  const out = new Float32Array(values.length);
  const height = values.length / width;
  const sums = new Float64Array(width);
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    for (let k = 0; k < half.length; k++) {
      const above = Math.max(0, y - k) * width;
      const below = Math.min(height - 1, y + k) * width;
      const weight = half[k]! * (k === 0 ? 0.5 : 1);
      for (let x = 0; x < width; x++)
        sums[x] = sums[x]! + weight * (values[above + x]! + values[below + x]!);
    }
    for (let x = 0; x < width; x++) out[y * width + x] = sums[x]!;
  }
  return out;
}

/**
 * A plane made smaller by a whole factor, each new value the mean of a square of old ones; what
 * does not fill a square at the right and the bottom is left out.
 *
 * @param factor Whole, at least 1.
 */
export function reduced(plane: Plane, factor: number): Plane {
  if (factor === 1) return plane;
  const width = Math.floor(plane.width / factor);
  const height = Math.floor(plane.height / factor);
  const values = new Float32Array(width * height);
  for (let y = 0; y < height * factor; y++) {
    const to = Math.floor(y / factor) * width;
    const from = y * plane.width;
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let k = 0; k < factor; k++) sum += plane.values[from + x * factor + k]!;
      values[to + x] = values[to + x]! + sum;
    }
  }
  const share = 1 / factor ** 2;
  for (let i = 0; i < values.length; i++) values[i] = values[i]! * share;
  return { width, height, values };
}
