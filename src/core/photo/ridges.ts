import { blurred, type Plane } from "./blurred.ts";

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
      const twice = 2 * (f[i] as number);
      const xx = (f[i - 1] as number) + (f[i + 1] as number) - twice;
      const yy = (f[i - width] as number) + (f[i + width] as number) - twice;
      const xy =
        ((f[i - width - 1] as number) +
          (f[i + width + 1] as number) -
          (f[i - width + 1] as number) -
          (f[i + width - 1] as number)) /
        4;
      const half = (xx - yy) / 2;
      const most = scale * ((xx + yy) / 2 + Math.sqrt(half * half + xy * xy));
      if (most > (strength[i] as number)) strength[i] = most;
    }
  }
}
