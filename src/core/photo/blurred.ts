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
  const total = half.reduce((sum, weight) => sum + 2 * weight, -(half[0] as number));
  return half.map((weight) => weight / total);
}

function alongRows({ width, height, values }: Plane, half: Float64Array): Float32Array {
  const out = new Float32Array(values.length);
  const reach = half.length - 1;
  const padded = new Float32Array(width + 2 * reach);
  for (let y = 0; y < height; y++) {
    const row = values.subarray(y * width, (y + 1) * width);
    padded.fill(row[0] as number, 0, reach);
    padded.set(row, reach);
    padded.fill(row[width - 1] as number, reach + width);
    for (let x = 0; x < width; x++) {
      let sum = (half[0] as number) * (padded[x + reach] as number);
      for (let k = 1; k <= reach; k++)
        sum +=
          (half[k] as number) *
          ((padded[x + reach - k] as number) + (padded[x + reach + k] as number));
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
      const weight = (half[k] as number) * (k === 0 ? 0.5 : 1);
      for (let x = 0; x < width; x++)
        sums[x] =
          (sums[x] as number) +
          weight * ((values[above + x] as number) + (values[below + x] as number));
    }
    for (let x = 0; x < width; x++) out[y * width + x] = sums[x] as number;
  }
  return out;
}
