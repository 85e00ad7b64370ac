import { medianInPlace } from "../curve/median.ts";
import type { Plane } from "./blurred.ts";

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
    const here = values[i] as number;
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
  const here = values[i] as number;
  return (
    (here >= (values[i - 1] as number) && here > (values[i + 1] as number)) ||
    (here >= (values[i - width] as number) && here > (values[i + width] as number))
  );
}

function sampled(values: Float32Array, stride: number): Float64Array {
  const sample = new Float64Array(Math.floor(values.length / stride));
  for (let i = 0; i < sample.length; i++) sample[i] = values[i * stride] as number;
  return sample;
}
