/** Rows that stand in time: two arrays of one length. */
export interface Moments {
  /** Where each is in the table. */
  readonly rows: Int32Array;
  /** [s]. */
  readonly times: Float64Array;
}

/** The moments from one place to before another, sharing their memory. */
export function momentsBetween({ rows, times }: Moments, from: number, to: number): Moments {
  return { rows: rows.subarray(from, to), times: times.subarray(from, to) };
}

/** The moments at some places, in their order. */
export function momentsAt({ rows, times }: Moments, places: Int32Array): Moments {
  return {
    rows: places.map((place) => rows[place] as number),
    times: Float64Array.from(places, (place) => times[place] as number),
  };
}
