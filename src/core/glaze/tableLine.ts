/** A value read off a table, and whether the table reaches that far. */
export interface TableValue {
  readonly value: number;
  /** Which end was passed; the value is then that of the end. */
  readonly past: "low end" | "high end" | null;
}

/**
 * Value of a table straight between its rows; past an end it is that end's value, and says so.
 *
 * @param rows At least one, place first, rising.
 */
export function tableLine(
  rows: readonly (readonly [place: number, value: number])[],
  place: number,
): TableValue {
  const first = rows[0];
  const last = rows.at(-1);
  if (first === undefined || last === undefined || Number.isNaN(place))
    throw new RangeError(`tableLine: ${rows.length} rows at ${place}`);
  if (place < first[0]) return { value: first[1], past: "low end" };
  if (place > last[0]) return { value: last[1], past: "high end" };
  let [below, upper] = [-1, rows.length - 1];
  while (upper - below > 1) {
    const middle = (below + upper) >> 1;
    if ((rows[middle] as readonly [number, number])[0] < place) below = middle;
    else upper = middle;
  }
  const [toPlace, to] = rows[upper] as readonly [number, number];
  if (toPlace === place) return { value: to, past: null };
  const [fromPlace, from] = rows[upper - 1] as readonly [number, number];
  return { value: from + ((to - from) * (place - fromPlace)) / (toPlace - fromPlace), past: null };
}
