import { parse } from "csv-parse/browser/esm/sync";

/**
 * Cells of one record that holds quotes, or null when its quotes do not close.
 * The same library and settings as the command's, in its build for browsers.
 */
export function splitQuoted(record: string, delimiter: string): readonly string[] | null {
  try {
    const rows: string[][] = parse(record, {
      delimiter,
      relax_quotes: true,
      relax_column_count: true,
      record_delimiter: "\0",
    });
    const [cells] = rows;
    return rows.length === 1 && cells !== undefined ? cells : null;
  } catch {
    return null;
  }
}
