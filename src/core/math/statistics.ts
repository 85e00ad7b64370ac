/** Middle value, the upper of two; NaN of nothing. NaN values are left out. */
export function median(values: ArrayLike<number>): number {
  const known = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
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
    const step = values[i]! - values[i - 1]!;
    if (!(step > 0)) continue;
    steps[count++] = step;
    if (step !== steps[0]) isOneStep = false;
  }
  if (isOneStep) return count === 0 ? Number.NaN : steps[0]!;
  return selected(steps.subarray(0, count), count >> 1);
}

/** Correlation of two columns over the rows where both have a value; NaN when either is constant. */
export function correlation(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const stride = Math.max(1, Math.floor(a.length / 2000));
  const pairs: [number, number][] = [];
  for (let i = 0; i < a.length; i += stride) {
    const x = a[i]!;
    const y = b[i]!;
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
    const value = values[i]!;
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

/** A reading this far from both its neighbours is no sign of anything, in any unit. */
const FAR = 90;

/**
 * The numbers of a column in their order, without those that no kiln gives: 9999, an end of scale,
 * a lone spike. The unit may be any.
 */
export function steadyValues(numbers: Float64Array): Float64Array {
  const values = numbers.filter((value) => value < 3300 && value > -460 && !isScaleEnd(value));
  return values.filter((value, i) => {
    const before = Math.abs(value - (values[i - 1] ?? Number.POSITIVE_INFINITY));
    const after = Math.abs(value - (values[i + 1] ?? Number.POSITIVE_INFINITY));
    return before < FAR || after < FAR;
  });
}

/** Ends of the scales of thermocouples K, S and B in °C, °F and K: IEC 60584-1. */
const SCALE_ENDS = [1372, 1768, 1820].flatMap((end) => [end, end * 1.8 + 32, end + 273.15]);
/** Below this is none of them; nearly all readings are. */
const LEAST_END = Math.min(...SCALE_ENDS) - 1;

/** Whether a number is the end of a thermocouple's scale in °C, °F or K, where open ones are parked. */
export function isScaleEnd(value: number): boolean {
  if (value < LEAST_END) return false;
  return SCALE_ENDS.some((end) => Math.abs(value - end) < 0.6);
}

/** Middle value, the mean of the middle two when their number is even; may reorder what it is given. */
export function medianInPlace(values: number[] | Float64Array): number {
  if (values.length === 0) return Number.NaN;
  const all = values instanceof Float64Array ? values : Float64Array.from(values);
  const middle = all.length >>> 1;
  const high = selected(all, middle);
  if (all.length % 2 === 1) return high;
  let low = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < middle; i++) low = Math.max(low, all[i]!);
  return (low + high) / 2;
}

/** Below this many values sorting is as quick. */
const FEW = 64;
/** Halvings after which the rest is sorted: values may be laid out so that halving gains nothing. */
const MOST_ROUNDS = 100;

/**
 * The value that would stand at a place if the values were sorted; puts them in another order,
 * in which none before that place is greater and none after it is less.
 * By halving about a middle one (Hoare 1961), so in a time that grows as the number of values.
 * @param values Without NaN, and with more values than the place.
 */
export function selected(values: Float64Array, place: number): number {
  let from = 0;
  let to = values.length - 1;
  for (let round = 0; to - from > FEW && round < MOST_ROUNDS; round++) {
    const pivot = middleOfThree(values, from, to);
    let low = from;
    let high = to;
    while (low <= high) {
      while (values[low]! < pivot) low++;
      while (values[high]! > pivot) high--;
      if (low > high) break;
      const moved = values[low]!;
      values[low++] = values[high]!;
      values[high--] = moved;
    }
    if (place <= high) to = high;
    else if (place >= low) from = low;
    else return pivot;
  }
  return values.subarray(from, to + 1).sort()[place - from]!;
}

function middleOfThree(values: Float64Array, from: number, to: number): number {
  const a = values[from]!;
  const b = values[(from + to) >> 1]!;
  const c = values[to]!;
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}

/** Where the middle 80 % of draws lie. */
export interface Spread {
  /** Exceeded in nine of ten draws. */
  readonly low: number;
  readonly median: number;
  /** Exceeded in one of ten draws. */
  readonly high: number;
}

/** Spread of many draws; at least one. */
export function spreadOf(values: Float64Array): Spread {
  const sorted = values.toSorted();
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
  return { low: at(0.1), median: at(0.5), high: at(0.9) };
}
