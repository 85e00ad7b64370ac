/** A row that stands in time: where it is in the table and its moment [s]. */
export interface Moment {
  readonly row: number;
  readonly time: number;
}

/** The times of moments, in their order. */
export function timesOf(moments: readonly Moment[]): Float64Array {
  const times = new Float64Array(moments.length);
  for (let i = 0; i < times.length; i++) times[i] = (moments[i] as Moment).time;
  return times;
}
