import { failed, ok, type Result } from "../problem.ts";
import {
  bodyDoubt,
  noSuchLine,
  noTable,
  notLong,
  oneRow,
  otherUnits,
  tooManyColumns,
  tooManyRows,
  withoutCutCell,
} from "./openProblems.ts";
import type { Decision, LogOptions, SplitQuoted } from "./reading/LogReading.ts";
import { type ByteText, byteHead, byteTape, byteText } from "./text/bytes.ts";
import type { DecimalMark } from "./text/cellKind.ts";
import { cellSplitter, delimiterName, type SplitCells } from "./text/cells.ts";
import { type DecodedText, decodeText } from "./text/decodeText.ts";
import { decideDialect } from "./text/dialect.ts";
import { type PreambleFacts, preambleFacts } from "./text/headerCells.ts";
import { findLayout, type Layout } from "./text/layout.ts";
import type { Table } from "./text/logTable.ts";
import { widened } from "./text/longLayout.ts";
import { type RecordScanner, recordScanner } from "./text/recordScanner.ts";
import { recordsOf } from "./text/records.ts";
import { type RowCounts, type TableBuilder, tableBuilder } from "./text/tableBuilder.ts";
import { toldLayout } from "./text/toldLayout.ts";

/** A log as a table of typed columns, with no meaning given to them yet. */
export interface OpenedLog {
  readonly table: Table;
  readonly preamble: PreambleFacts;
  readonly decisions: readonly Decision[];
}

/** Opens a log that comes in parts. */
export interface LogOpener {
  /**
   * The next bytes; they are not kept.
   * @returns false when no more are needed, since the log cannot be read.
   */
  readonly push: (bytes: Uint8Array) => boolean;
  /** The table, once all bytes were given. */
  readonly end: () => Result<OpenedLog>;
}

/** Characters after which a quote may open a cell, whatever the delimiter turns out to be. */
const OPENERS = ",;\t|";

/** Rows that a log may have: 231 days at one a second. Own choice, to bound the memory. */
const MOST_ROWS = 20_000_000;
/** Columns that a log may have, for the same reason. Own choice. */
const MOST_COLUMNS = 256;

/** What is looked at of one record [characters]: room for each of so many columns. */
const LONGEST_LOOKED_AT = 128 * MOST_COLUMNS;

/** What was decided on the first bytes, and what takes the rest by it. */
interface Opened {
  readonly text: DecodedText;
  readonly layout: Layout;
  readonly decisions: readonly Decision[];
  readonly bytes: ByteText;
  readonly builder: TableBuilder;
  readonly scanner: RecordScanner;
  readonly split: SplitCells;
  readonly decimal: DecimalMark;
  /** Rows among the first bytes when more follow; null when these were all. */
  readonly head: RowCounts | null;
}

/**
 * Bytes as a table of typed columns: encoding, delimiter, decimal mark and header are decided on the
 * first 4 MB, or on the whole when it is smaller; then the rows go by and only their values are kept.
 * @param note Told of each decision as it falls, for when none comes after it.
 * @returns by `end`: the table, or `log/empty`, `log/not-text`, `log/unknown-encoding`, `log/no-table`,
 * `log/one-row`, `log/too-many-rows`, `log/too-many-columns`, `log/changes-midway`.
 */
export function logOpener(
  options: LogOptions,
  splitQuoted: SplitQuoted,
  note: (decisions: readonly Decision[]) => void,
): LogOpener {
  const head = byteHead();
  let opened: Result<Opened> | null = null;

  function begin(isWhole: boolean): Result<Opened> {
    return decided(head, { options, splitQuoted, isWhole, note });
  }

  function feed(bytes: Uint8Array): boolean {
    if (opened === null || !opened.ok) return opened === null;
    const { scanner, builder } = opened.value;
    scanner.push(opened.value.bytes.plain(bytes, false));
    if (builder.counts().rows > MOST_ROWS) opened = failed(tooManyRows(options.name, MOST_ROWS));
    return opened.ok;
  }

  return {
    push: (bytes) => {
      if (opened !== null) return feed(bytes);
      const rest = head.add(bytes);
      if (!head.isFull()) return true;
      opened = begin(false);
      return feed(rest);
    },
    end: () => {
      opened ??= begin(true);
      return opened.ok ? closed(opened.value, options) : opened;
    },
  };
}

/** Decides on the first bytes and puts these into the table. */
function decided(
  head: ReturnType<typeof byteHead>,
  {
    options,
    splitQuoted,
    isWhole,
    note,
  }: {
    readonly options: LogOptions;
    readonly splitQuoted: SplitQuoted;
    readonly isWhole: boolean;
    readonly note: (decisions: readonly Decision[]) => void;
  },
): Result<Opened> {
  const text = decodeText(isWhole ? head.bytes() : head.wholeLines(), options);
  if (!text.ok) return text;
  const openers = options.delimiter ?? OPENERS;
  note([text.value.decision]);
  const { texts: whole, lines } = recordsOf(text.value.text, openers);
  // What is too long for a row is none, and nothing is to be learned from all of it.
  const texts = whole.map((each) => each.slice(0, LONGEST_LOOKED_AT));
  const dialect = decideDialect(texts, options, splitQuoted);
  note(dialect.decisions);
  if (dialect.problem !== null) return failed(dialect.problem);
  const split = cellSplitter(dialect.delimiter, splitQuoted, dialect.columns);
  const headerAt = typeof options.header === "number" ? lines.indexOf(options.header) : "none";
  if (headerAt === -1) return failed(noSuchLine(options, lines));
  const layout =
    options.header === undefined
      ? findLayout(texts, split, dialect.decimal)
      : toldLayout(texts, split, { decimal: dialect.decimal, headerAt });
  if (layout === null)
    return failed(noTable(options.name, texts.length, delimiterName(dialect.delimiter)));
  if (layout.names.length > MOST_COLUMNS) return failed(tooManyColumns(options.name, MOST_COLUMNS));
  const header = layout.headerAt === null ? "none" : lines[layout.headerAt]!;
  const layoutDecision: Decision = { ...layout.decision, says: { header } };
  note([layoutDecision]);
  const bytes = byteText(text.value.encoding, options.encoding !== undefined);
  // A splitter of its own, since some look at the rows before.
  const rowSplit = cellSplitter(dialect.delimiter, splitQuoted, dialect.columns);
  const tape = byteTape();
  const textAt = (line: number) =>
    recordsOf(bytes.decode(tape.fromLine(line)), openers).texts[0] ?? "";
  const builder = tableBuilder({ ...dialect, layout, split: rowSplit, openers, textAt });
  const scanner = recordScanner(bodySink(builder, layout.bodyStart), {
    decode: bytes.decode,
    openers,
    tape,
  });
  scanner.push(bytes.plain(head.bytes(), isWhole));
  head.letGo();
  const counts = isWhole ? null : builder.counts();
  builder.watchMisfits();
  return ok({
    text: { ...text.value, text: "" },
    layout,
    decisions: [...dialect.decisions, layoutDecision],
    bytes,
    builder,
    scanner,
    split,
    decimal: dialect.decimal,
    head: counts,
  });
}

/** Passes over the records above the body. */
function bodySink(builder: TableBuilder, bodyStart: number): Parameters<typeof recordScanner>[0] {
  let record = 0;
  return {
    quick: (bytes, from, line) => {
      if (record < bodyStart) return -1;
      return builder.addBytes(bytes, from, line);
    },
    text: (text, line) => {
      if (record++ >= bodyStart) builder.addText(text, line);
    },
    tooLong: (beginning, line) => {
      if (record++ >= bodyStart) builder.leaveOut(beginning, line, "a line far too long for a row");
    },
  };
}

function closed(opened: Opened, options: LogOptions): Result<OpenedLog> {
  const { bytes, scanner, builder, layout, head } = opened;
  scanner.push(bytes.plain(new Uint8Array(0), true));
  const openLine = scanner.end();
  const doubt = bodyDoubt({ name: options.name, head, all: builder.counts() });
  if (!doubt.ok) return doubt;
  const { otherUnitLine } = builder.counts();
  if (otherUnitLine > 0) return failed(otherUnits(options.name, otherUnitLine));
  const table = withoutCutCell(builder.finish(), { ...opened, openLine });
  if (table.rowCount < 2) return failed(oneRow(options.name, table.rowCount));
  const wide = options.layout === "wide" ? null : widened(table, options.layout === "long");
  if (options.layout === "long" && wide === null) return failed(notLong(options.name, table));
  return ok({
    table: wide?.table ?? table,
    preamble: preambleFacts(layout.preamble),
    decisions: [
      encodingDecision(opened),
      ...opened.decisions.map((each) => (each.about === "delimiter" ? doubt.value(each) : each)),
      ...(wide === null ? [] : [wide.decision]),
    ],
  });
}

/** The decision about the encoding, with what later rows showed. */
function encodingDecision(opened: Opened): Decision {
  const decision = ofAllRows(opened);
  const zeros = opened.scanner.zeros();
  if (zeros === 0) return decision;
  const taken = zeros === 1 ? "1 zero byte was" : `${zeros} zero bytes were`;
  return {
    ...decision,
    because: `${decision.because}; ${taken} taken out, as a power cut leaves them`,
  };
}

function ofAllRows({ text, bytes, head }: Opened): Decision {
  const { decision } = text;
  const { beyondAscii, malformed } = bytes.seen();
  if (head === null || text.encoding !== "utf-8" || decision.confidence !== "certain")
    return decision;
  if (malformed > 0)
    return {
      ...decision,
      confidence: "likely",
      because: `the first rows are well-formed UTF-8; ${malformed} later ${malformed === 1 ? "record is" : "records are"} not, and read as windows-1252; only words can be affected`,
    };
  return beyondAscii ? { ...decision, because: "every byte is well-formed UTF-8" } : decision;
}
