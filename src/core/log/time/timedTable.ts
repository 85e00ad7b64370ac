import type { Column, Table } from "../text/table.ts";
import type { TimePlace } from "./timeColumn.ts";

/**
 * The table with no numbers in the rows that have no readable time: such rows are statistics under
 * the table or were cut off, and are not to speak for what the columns are.
 */
export function timedTable(table: Table, place: TimePlace): Table {
  const isTimed = timedTest(place);
  const untimed: number[] = [];
  for (let row = 0; row < table.rowCount; row++) if (!isTimed(row)) untimed.push(row);
  if (untimed.length === 0) return table;
  return { ...table, columns: table.columns.map((column) => withoutRows(column, untimed, place)) };
}

/** Whether a row has a time; every row has where there is no column of it. */
function timedTest(place: TimePlace): (row: number) => boolean {
  if (place.kind === "none") return () => true;
  if (place.kind === "number") return (row) => !Number.isNaN(place.column.numbers[row]);
  const column = place.clock ?? (place.date as Column);
  return (row) => (column.stamps.formOf[row] as number) >= 0;
}

function withoutRows(column: Column, rows: readonly number[], place: TimePlace): Column {
  if (column.kind !== "number" || (place.kind === "number" && place.column === column))
    return column;
  const numbers = column.numbers.slice();
  for (const row of rows) numbers[row] = Number.NaN;
  return { ...column, numbers };
}
