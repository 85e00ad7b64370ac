import { failed, ok, type Result } from "../problem.ts";
import type { Decision, LogOptions, SplitQuoted } from "./LogReading.ts";
import { cellSplitter } from "./text/cells.ts";
import { decodeText } from "./text/decodeText.ts";
import { decideDialect, delimiterName } from "./text/dialect.ts";
import { findLayout } from "./text/layout.ts";
import { widened } from "./text/longLayout.ts";
import { type PreambleFacts, preambleFacts } from "./text/preamble.ts";
import { type Records, recordsOf } from "./text/records.ts";
import { readTable, type Table } from "./text/table.ts";

/** A log as a table of typed columns, with no meaning given to them yet. */
export interface OpenedLog {
  readonly records: Records;
  readonly table: Table;
  readonly preamble: PreambleFacts;
  readonly decisions: readonly Decision[];
}

/** Characters after which a quote may open a cell, whatever the delimiter turns out to be. */
const OPENERS = ",;\t|";

/**
 * Bytes as a table of typed columns.
 * @returns the table, or `log/empty`, `log/not-text`, `log/unknown-encoding`, `log/no-table`, `log/one-row`.
 */
export function openLog(
  bytes: Uint8Array,
  options: LogOptions,
  splitQuoted: SplitQuoted,
): Result<OpenedLog> {
  const text = decodeText(bytes, options);
  if (!text.ok) return text;
  const records = recordsOf(text.value.text, options.delimiter ?? OPENERS);
  const dialect = decideDialect(records.texts, options, splitQuoted);
  const split = cellSplitter(dialect.delimiter, splitQuoted);
  const layout = findLayout(records.texts, split, dialect.decimal);
  if (layout === null)
    return failed({
      code: "log/no-table",
      what: `holds no rows of numbers (${records.texts.length} lines, cut at the ${delimiterName(dialect.delimiter)})`,
      where: options.name,
      expected: "rows with a time and at least one temperature",
      fix: "check that this is the log and not its description, or say --delimiter and --decimal",
    });
  const table = readTable(records, layout, { split, decimal: dialect.decimal });
  if (table.rowCount < 2)
    return failed({
      code: "log/one-row",
      what: `holds ${table.rowCount === 1 ? "one row" : "no row"} of readings`,
      where: options.name,
      expected: "at least two rows, at two times",
      fix: "export the whole firing, not its last reading",
    });
  const wide = widened(table);
  return ok({
    records,
    table: wide?.table ?? table,
    preamble: preambleFacts(layout.preamble),
    decisions: [
      text.value.decision,
      ...dialect.decisions,
      layout.decision,
      ...(wide === null ? [] : [wide.decision]),
    ],
  });
}
