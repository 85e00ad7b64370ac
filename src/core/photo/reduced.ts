import type { Plane } from "./blurred.ts";

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
      for (let k = 0; k < factor; k++) sum += plane.values[from + x * factor + k] as number;
      values[to + x] = (values[to + x] as number) + sum;
    }
  }
  const share = 1 / factor ** 2;
  for (let i = 0; i < values.length; i++) values[i] = (values[i] as number) * share;
  return { width, height, values };
}
