import type { Plane } from "./blurred.ts";

/** A picture of yes and no, row by row: 1 where a crack is, else 0. */
export interface Mask {
  readonly width: number;
  readonly height: number;
  readonly bits: Uint8Array;
}

/**
 * Places above the low level that hang together with one above the high level, corner to corner
 * counting as together; the outermost rows and columns are left out.
 */
export function aboveThreshold(
  strength: Plane,
  level: { readonly low: number; readonly high: number },
): Mask {
  const { width, height, values } = strength;
  const bits = new Uint8Array(values.length);
  const waiting: number[] = [];
  const inside = (i: number) => {
    const x = i % width;
    return x > 0 && x < width - 1 && i >= width && i < values.length - width;
  };
  const take = (i: number, least: number) => {
    if (bits[i] === 1 || !((values[i] as number) > least) || !inside(i)) return;
    bits[i] = 1;
    waiting.push(i);
  };
  for (let i = 0; i < values.length; i++) {
    take(i, level.high);
    for (let from = waiting.pop(); from !== undefined; from = waiting.pop())
      for (const down of [-width, 0, width])
        for (const across of [-1, 0, 1]) take(from + down + across, level.low);
  }
  return { width, height, bits };
}
