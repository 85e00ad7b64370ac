import { parse } from "csv-parse/sync";

/**
 * Cells of one record that holds quotes, or null when its quotes do not close.
 * A quote inside a cell that none opened stands for itself; nothing is trimmed.
 */
export function splitQuoted(record: string, delimiter: string): readonly string[] | null {
  try {
    const rows: string[][] = parse(record, {
      delimiter,
      relax_quotes: true,
      relax_column_count: true,
      // A record may hold line ends inside its quotes; the reader has taken zero bytes out before.
      record_delimiter: "\0",
    });
    const [cells] = rows;
    return rows.length === 1 && cells !== undefined ? cells : null;
  } catch {
    return null;
  }
}
