import type { GridColumn } from "./gridColumns.ts";

/** Least change of a programme by which a person could know it [K]. */
const LEAST_RANGE_C = 60;
/** Places at which the kiln must visibly leave the line that its programme keeps to. */
const LEAST_PLACES = 6;
/** Rows from which, looked at one in so many, a line can be seen at all. */
const FEWEST_LOOKED_AT = 20;

/**
 * Whether a person could tell a set point from the kiln by the numbers alone: it moves, and at some
 * width of view each measured column leaves the line through its neighbours by more than two last
 * digits at several places at which the set point keeps to it. Worked out from the truth.
 * @param digitC Last digit of the log [K].
 */
export function isTellable(
  setPoint: GridColumn,
  columns: readonly GridColumn[],
  { elapsed, digitC }: { readonly elapsed: readonly number[]; readonly digitC: number },
): boolean {
  const values = setPoint.tempsC;
  if (values.length < 3 || Math.max(...values) - Math.min(...values) < LEAST_RANGE_C) return false;
  const zones = columns.filter(({ role }) => role === "temperature");
  return zones.every((zone) => {
    for (let stride = 1; stride === 1 || values.length / stride > FEWEST_LOOKED_AT; stride *= 2)
      if (placesOff(zone.tempsC, values, { elapsed, digitC, stride }) >= LEAST_PLACES) return true;
    return false;
  });
}

/** Places at which a zone leaves the line through the readings about it while the programme does not. */
function placesOff(
  zone: Float64Array,
  programme: Float64Array,
  view: { readonly elapsed: readonly number[]; readonly digitC: number; readonly stride: number },
): number {
  let count = 0;
  for (let at = view.stride; at + view.stride < zone.length; at += view.stride) {
    const isOff = offLine(zone, at, view) > 2 * view.digitC;
    if (isOff && offLine(programme, at, view) <= 1.01 * view.digitC) count++;
  }
  return count;
}

function offLine(
  values: Float64Array,
  at: number,
  { elapsed, stride }: { readonly elapsed: readonly number[]; readonly stride: number },
): number {
  const [before, after] = [at - stride, at + stride];
  const share =
    ((elapsed[at] as number) - (elapsed[before] as number)) /
    ((elapsed[after] as number) - (elapsed[before] as number));
  const line =
    (values[before] as number) + share * ((values[after] as number) - (values[before] as number));
  return Math.abs((values[at] as number) - line);
}
