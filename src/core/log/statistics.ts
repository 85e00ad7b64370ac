import { selected } from "../curve/selected.ts";

/** Middle value, the upper of two; NaN of nothing. NaN values are left out. */
export function median(values: ArrayLike<number>): number {
  const known = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (!Number.isNaN(value)) known[count++] = value;
  }
  return count === 0 ? Number.NaN : selected(known.subarray(0, count), count >> 1);
}

/** Middle step between values that rise; steps that do not are passed over. */
export function medianStep(values: Float64Array): number {
  const steps = new Float64Array(Math.max(0, values.length - 1));
  let count = 0;
  let isOneStep = true;
  for (let i = 1; i < values.length; i++) {
    const step = (values[i] as number) - (values[i - 1] as number);
    if (!(step > 0)) continue;
    steps[count++] = step;
    if (step !== steps[0]) isOneStep = false;
  }
  if (isOneStep) return count === 0 ? Number.NaN : (steps[0] as number);
  return selected(steps.subarray(0, count), count >> 1);
}

/** Correlation of two columns over the rows where both have a value; NaN when either is constant. */
export function correlation(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const stride = Math.max(1, Math.floor(a.length / 2000));
  const pairs: [number, number][] = [];
  for (let i = 0; i < a.length; i += stride) {
    const x = a[i] as number;
    const y = b[i] as number;
    if (!Number.isNaN(x + y)) pairs.push([x, y]);
  }
  const meanX = pairs.reduce((sum, [x]) => sum + x, 0) / pairs.length;
  const meanY = pairs.reduce((sum, [, y]) => sum + y, 0) / pairs.length;
  let xy = 0;
  let xx = 0;
  let yy = 0;
  for (const [x, y] of pairs) {
    xy += (x - meanX) * (y - meanY);
    xx += (x - meanX) ** 2;
    yy += (y - meanY) ** 2;
  }
  return xy / Math.sqrt(xx * yy);
}

/** What a column of numbers looks like. */
export interface Shape {
  readonly count: number;
  readonly first: number;
  readonly least: number;
  readonly greatest: number;
  /** Share of steps between neighbouring values that go up, and that do not go down. */
  readonly risingShare: number;
  readonly steadyShare: number;
  /** Middle size of the steps that are not zero. */
  readonly medianStep: number;
  readonly isWhole: boolean;
}

/** Shape of a column; values that are NaN are passed over. */
export function shapeOf(values: Float64Array): Shape {
  let count = 0;
  let first = Number.NaN;
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  let previous = Number.NaN;
  let rising = 0;
  let falling = 0;
  let isWhole = true;
  const steps: number[] = [];
  const stride = Math.max(1, Math.floor(values.length / 4000));
  let sampled = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    const isSampled = i === sampled;
    if (isSampled) sampled += stride;
    if (Number.isNaN(value)) continue;
    if (count++ === 0) first = value;
    if (value < least) least = value;
    if (value > greatest) greatest = value;
    if (value > previous) rising++;
    else if (value < previous) falling++;
    if (isSampled && value !== previous && !Number.isNaN(previous))
      steps.push(Math.abs(value - previous));
    isWhole &&= Number.isInteger(value);
    previous = value;
  }
  const pairs = Math.max(1, count - 1);
  return {
    count,
    first,
    least,
    greatest,
    risingShare: rising / pairs,
    steadyShare: 1 - falling / pairs,
    medianStep: median(steps),
    isWhole,
  };
}
