import { steadyValues } from "../../math/statistics.ts";

/** Places in a row that must lie on one line; fewer in a short log, whose ramps are short. */
const RUN = 6;
const SHORT_RUN = 4;
/** Fewest runs that move, to tell by. */
const LEAST_RUNS = 6;
/** By what the share counts less of a column that leaves its lines for longer than a corner takes. */
const LONG_BREAK = 0.5;

/** How closely the columns are looked at. */
interface Grain {
  readonly clock: Float64Array | null;
  readonly places: number;
  /** Whether runs that stay at one value count as well: on a hold a kiln wavers, its set point does not. */
  readonly holds: boolean;
}

/** Share of the runs of places that lie on one line within the last digit; NaN of too few. */
export function exactShare(
  values: Float64Array,
  digit: number,
  { clock, places, holds }: Grain,
): number {
  const stride = Math.max(1, Math.floor(values.length / places));
  const length = values.length < 90 ? SHORT_RUN : RUN;
  const reach = (length - 1) * stride;
  let exact = 0;
  let runs = 0;
  let broken = 0;
  let longest = 0;
  for (let from = 0; from + reach < values.length; from += stride) {
    const change = Math.abs(values[from + reach]! - values[from]!);
    const moves = change > 1.5 * digit * (length - 1);
    const off = moves || holds ? offLine(values, clock, { from, stride, reach }) : Number.NaN;
    if (Number.isNaN(off)) continue;
    runs++;
    const isExact = off <= (moves ? 1.01 * digit : 1e-9);
    if (isExact) exact++;
    broken = isExact ? 0 : broken + 1;
    if (broken > longest) longest = broken;
  }
  if (runs < LEAST_RUNS) return Number.NaN;
  // A corner breaks the runs across it; beyond that a programme does not leave its lines.
  return longest > length + 1 ? (exact / runs) * LONG_BREAK : exact / runs;
}

interface Run {
  readonly from: number;
  readonly stride: number;
  readonly reach: number;
}

/** Largest departure of the places of a run from the line through its ends; NaN where one has no reading. */
function offLine(values: Float64Array, clock: Float64Array | null, run: Run): number {
  const { from, stride, reach } = run;
  const timeOf = (row: number) => clock?.[row] ?? row;
  const first = values[from]!;
  const slope = (values[from + reach]! - first) / (timeOf(from + reach) - timeOf(from));
  let most = 0;
  for (let row = from + stride; row < from + reach; row += stride)
    most = Math.max(most, Math.abs(values[row]! - first - slope * (timeOf(row) - timeOf(from))));
  return most;
}

/** Readings that are looked at for the last digit. */
const DIGIT_READINGS = 3000;

function thinned(values: Float64Array): Float64Array {
  const stride = Math.ceil(values.length / DIGIT_READINGS);
  if (stride <= 1) return values;
  const few = new Float64Array(Math.ceil(values.length / stride));
  for (let i = 0; i < few.length; i++) few[i] = values[i * stride]!;
  return few;
}

/** What the steady values of a column are rounded to, from coarse to fine, with grids of whole degrees of the other scale. */
export function lastDigit(values: Float64Array): number {
  const known = steadyValues(thinned(values)).filter((value) => !Number.isNaN(value));
  const isAll = (test: (value: number) => boolean) => known.every(test);
  const isWhole = (value: number) => Math.abs(value - Math.round(value)) < 1e-4;
  if (isAll((value) => isWhole((value - 32) / 1.8))) return 1.8;
  for (const digit of [1, 0.5]) if (isAll((value) => isWhole(value / digit))) return digit;
  if (isAll((value) => Math.abs((Math.round(value * 1.8 + 32) - 32) / 1.8 - value) < 0.051))
    return 0.6;
  return [0.1, 0.05, 0.01].find((digit) => isAll((value) => isWhole(value / digit))) ?? 0.001;
}
