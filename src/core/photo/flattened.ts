import { medianInPlace } from "../curve/median.ts";
import { blurred, type Plane } from "./blurred.ts";
import type { Picture } from "./Picture.ts";
import { reduced } from "./reduced.ts";

/** Standard deviation of the background, in squares of the coarse picture that it is taken from. */
const COARSE_SIGMA = 4;

/** Least grey that a picture is divided by: below it, a background is as good as black. */
const LEAST_GREY = 1;

/** Most values that the middle is taken from. */
const SAMPLED = 200_000;

/**
 * A picture divided by its own background, so that even ground is 1 whatever the light: a crack of
 * half the ground's brightness is 0.5. The background is a wide Gauss curve over the
 * picture, raised so that the middle of all places is ground.
 *
 * @param sigma Standard deviation of the background [px], at least 4.
 */
export function flattened(picture: Picture, sigma: number): Plane {
  const { width, height } = picture;
  const grey: Plane = { width, height, values: new Float32Array(picture.grey) };
  const factor = Math.max(1, Math.floor(sigma / COARSE_SIGMA));
  const fits = Math.min(width, height) >= 2 * factor;
  const coarse = fits ? reduced(grey, factor) : grey;
  const ground = blurred(coarse, fits ? sigma / factor : COARSE_SIGMA);
  divide(grey, ground, fits ? factor : 1);
  const middle = middleOf(grey.values);
  for (let i = 0; i < grey.values.length; i++) grey.values[i] = (grey.values[i] as number) / middle;
  return grey;
}

/** The middle value, which is even ground where cracks cover less than half of it. */
function middleOf(values: Float32Array): number {
  const stride = Math.max(1, Math.floor(values.length / SAMPLED));
  const sample = new Float64Array(Math.ceil(values.length / stride));
  for (let i = 0; i < sample.length; i++) sample[i] = values[i * stride] as number;
  return Math.max(Number.EPSILON, medianInPlace(sample));
}

/** Divides in place by a coarse plane, read between its squares. */
function divide(plane: Plane, ground: Plane, factor: number): void {
  const columns = Array.from({ length: plane.width }, (_, x) => between(x, factor, ground.width));
  const line = new Float32Array(ground.width);
  for (let y = 0; y < plane.height; y++) {
    const { low, high, share } = between(y, factor, ground.height);
    for (let x = 0; x < ground.width; x++) {
      const top = ground.values[low * ground.width + x] as number;
      const bottom = ground.values[high * ground.width + x] as number;
      line[x] = top + share * (bottom - top);
    }
    for (let x = 0; x < plane.width; x++) {
      const column = columns[x] as Between;
      const left = line[column.low] as number;
      const here = left + column.share * ((line[column.high] as number) - left);
      const i = y * plane.width + x;
      plane.values[i] = (plane.values[i] as number) / Math.max(LEAST_GREY, here);
    }
  }
}

interface Between {
  readonly low: number;
  readonly high: number;
  readonly share: number;
}

function between(at: number, factor: number, count: number): Between {
  const place = Math.min(count - 1, Math.max(0, (at + 0.5) / factor - 0.5));
  const low = Math.min(count - 1, Math.floor(place));
  return { low, high: Math.min(count - 1, low + 1), share: place - low };
}
