import { medianInPlace } from "../math/statistics.ts";
import { blurred, type Plane } from "./PhotoMeasurement.ts";

/**
 * Least smoothing, as a share of a crack's full width, at which a bar of even darkness has a single
 * ridge that runs along its middle: half the width over √3.
 *
 * @see SOURCES["steger-1998"]
 */
export const SIGMA_OF_WIDTH = 1 / (2 * Math.sqrt(3));

/**
 * How much each place looks like the middle of a dark line: the larger curvature of the smoothed
 * picture, times sigma², so that scales can be compared; the largest over the scales given.
 *
 * @param sigmas Smoothings [px], each above 0; at least one.
 */
export function ridges(flat: Plane, sigmas: readonly number[]): Plane {
  const strength = new Float32Array(flat.values.length);
  for (const sigma of sigmas) addScale(blurred(flat, sigma), sigma ** 2, strength);
  return { ...flat, values: strength };
}

/** Strength of the ridge of a bar that is this much darker than the ground, at one smoothing. */
export function barStrength(bar: {
  readonly width: number;
  readonly contrast: number;
  readonly sigma: number;
}): number {
  const u = bar.width / bar.sigma;
  return (bar.contrast * u * Math.exp(-(u ** 2) / 8)) / Math.sqrt(2 * Math.PI);
}

function addScale(
  { width, height, values: f }: Plane,
  scale: number,
  strength: Float32Array,
): void {
  for (let y = 1; y < height - 1; y++) {
    for (let i = y * width + 1; i < (y + 1) * width - 1; i++) {
      const twice = 2 * f[i]!;
      const xx = f[i - 1]! + f[i + 1]! - twice;
      const yy = f[i - width]! + f[i + width]! - twice;
      const xy =
        (f[i - width - 1]! + f[i + width + 1]! - f[i - width + 1]! - f[i + width - 1]!) / 4;
      const half = (xx - yy) / 2;
      const most = scale * ((xx + yy) / 2 + Math.sqrt(half * half + xy * xy));
      if (most > strength[i]!) strength[i] = most;
    }
  }
}

/** Most values that a level is worked out from. */
const SAMPLED = 200_000;

/** Median absolute deviation of normal scatter, over its standard deviation. */
const SIGMA_PER_MAD = 1.4826;

/** What the strengths of a picture's ridges are like. */
export interface RidgeLevels {
  /** Middle strength of everything: what even ground gives. */
  readonly ground: number;
  /** Scatter of the ground, as one standard deviation. */
  readonly scatter: number;
  /** Strength of the cracks: the middle of the crests far above the ground; 0 with no crest there. */
  readonly crest: number;
  /** Share of places that are a crest far above the ground. */
  readonly crestShare: number;
}

/** Levels of ground and of crests; `farSigmas` says how many scatters above the ground count as far. */
export function ridgeLevels(strength: Plane, farSigmas: number): RidgeLevels {
  const { values, width } = strength;
  const stride = Math.max(1, Math.floor(values.length / SAMPLED));
  const sample = sampled(values, stride);
  const ground = medianInPlace(sample.slice());
  const scatter = SIGMA_PER_MAD * medianInPlace(sample.map((value) => Math.abs(value - ground)));
  const far = ground + farSigmas * scatter;
  const crests: number[] = [];
  let count = 0;
  for (let i = width; i < values.length - width; i++) {
    const here = values[i]!;
    if (here <= far || !isCrest(values, i, width)) continue;
    if (count++ % stride === 0) crests.push(here);
  }
  return {
    ground,
    scatter,
    crest: crests.length === 0 ? 0 : medianInPlace(crests),
    crestShare: count / values.length,
  };
}

/** Whether a place is no lower than its neighbours along a row or down a column. */
export function isCrest(values: Float32Array, i: number, width: number): boolean {
  const here = values[i]!;
  return (
    (here >= values[i - 1]! && here > values[i + 1]!) ||
    (here >= values[i - width]! && here > values[i + width]!)
  );
}

function sampled(values: Float32Array, stride: number): Float64Array {
  const sample = new Float64Array(Math.floor(values.length / stride));
  for (let i = 0; i < sample.length; i++) sample[i] = values[i * stride]!;
  return sample;
}
