import type { Column, Table } from "./text/logTable.ts";
import type { OrderedRows } from "./time/clockDefects.ts";
import { isCoarse, type Moments } from "./time/duplicates.ts";

/** Whether each row has a temperature: 1 or 0. */
export function measuredRows(table: Table, temperatures: readonly Column[]): Uint8Array {
  const measured = new Uint8Array(table.rowCount);
  for (const column of temperatures) {
    const { numbers } = column;
    for (let row = 0; row < measured.length; row++)
      if (!Number.isNaN(numbers[row]!)) measured[row] = 1;
  }
  return measured;
}

/** Rows without a temperature that were only kept for their place among rows of one coarse stamp, taken out. */
export function onlyMeasured(ordered: OrderedRows, measured: Uint8Array): OrderedRows {
  const { rows, seconds, rejected } = ordered;
  if (rows.every((row) => measured[row] === 1)) return ordered;
  const isMeasured = (place: number) => measured[rows[place]!] === 1;
  const reason = "no temperature in it";
  return {
    ...ordered,
    rows: rows.filter((_, place) => isMeasured(place)),
    seconds: seconds.filter((_, place) => isMeasured(place)),
    rejected: [
      ...rejected,
      ...Array.from(rows)
        .filter((row) => measured[row] === 0)
        .map((row) => ({ row, reason })),
    ],
  };
}

/** Times beyond this are none [s]: three thousand years from 1970 or from the start. */
const MOST_SECONDS = 1e11;

/**
 * Rows with a time and at least one temperature; the others are rejected for what they lack. Where
 * stamps are coarse, a row without a temperature still has its place among the rows of its stamp.
 */
export function usableRows(
  times: Float64Array,
  measured: Uint8Array,
  reject: (row: number, reason: string) => void,
): Moments {
  const rowCount = measured.length;
  const usable = { rows: new Int32Array(rowCount), times: new Float64Array(rowCount) };
  const keepsPlaces = isCoarse(times);
  let count = 0;
  for (let row = 0; row < rowCount; row++) {
    const time = times[row]!;
    const isTime = Math.abs(time) <= MOST_SECONDS;
    if (isTime && (measured[row] === 1 || keepsPlaces)) {
      usable.rows[count] = row;
      usable.times[count++] = time;
    } else reject(row, isTime ? "no temperature in it" : "no readable time");
  }
  if (count === rowCount) return { rows: usable.rows, times: times };
  return { rows: usable.rows.subarray(0, count), times: usable.times.subarray(0, count) };
}
