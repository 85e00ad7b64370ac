import { selected } from "./selected.ts";

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
