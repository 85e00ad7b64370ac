import { type DecimalMark, isMissingWord, patientNumber, plainNumber } from "./cellKind.ts";
import { atSingleBlanks, type SplitCells } from "./cells.ts";
import {
  type ColumnStore,
  columnStore,
  finishedColumn,
  gathered,
  growingInts,
  keepWord,
  type NumberStore,
  nextBlock,
  SLOT_MASK,
  type StampStore,
  turnBlock,
} from "./columnStores.ts";
import type { Layout } from "./layout.ts";
import { rejectionList, type Table } from "./logTable.ts";
import { type QuickRow, quickRow } from "./quickRow.ts";
import { parseStamp } from "./stamp.ts";
import { isHeaderInOtherUnits } from "./toldLayout.ts";

/** How rows become cells and cells numbers, and where the table begins. */
export interface TableForm {
  readonly layout: Layout;
  readonly delimiter: string;
  readonly decimal: DecimalMark;
  readonly split: SplitCells;
  /** Characters after which a quote opens a cell. */
  readonly openers: string;
  /** The beginning of the record that begins on a line; empty when that is not kept. */
  readonly textAt: (line: number) => string;
}

/** What became of the rows so far. */
export interface RowCounts {
  /** Rows with a number or a time. */
  readonly rows: number;
  readonly rejected: number;
  /** Rows that do not read as the columns ask: as many strange words as numbers and times, or more. */
  readonly misfits: number;
  /** First line of the longest run of such rows; 0 when there is none. */
  readonly misfitLine: number;
  /** Line on which the header stands again with other units; 0 when it does not. */
  readonly otherUnitLine: number;
}

/** Takes the records of a log's body, one after the other, into typed columns. */
export interface TableBuilder {
  /**
   * Takes the row at a place when it is written plainly.
   * @returns the place of its line end, or −1: the record is then to be given as text.
   */
  readonly addBytes: (bytes: Uint8Array, from: number, line: number) => number;
  readonly addText: (text: string, line: number) => void;
  /** A record that is left out without being read. */
  readonly leaveOut: (text: string, line: number, reason: string) => void;
  /** Begins to watch for misfits anew. */
  readonly watchMisfits: () => void;
  readonly counts: () => RowCounts;
  readonly finish: () => Table;
}

/** An empty table of a form. */
export function tableBuilder(form: TableForm): TableBuilder {
  const { layout, split, decimal } = form;
  const stores = layout.kinds.map(columnStore);
  const lines = growingInts();
  const rejections = rejectionList();
  const quick: QuickRow =
    quickRow(stores, { ...form, headerText: layout.headerText }) ?? (() => -1);
  let rows = 0;
  let rejected = 0;
  const isAtWideBlanks = form.delimiter === "  " && split("a  b").length > 1;
  let otherUnitLine = 0;
  const misfits = misfitWatch();
  // Where no column is written times, rows may have to be counted, those without a reading as well.
  const counts = stores.every(({ kind }) => kind !== "stamp");

  function accept(line: number): void {
    lines.block[rows & SLOT_MASK] = line;
    rows++;
    if ((rows & SLOT_MASK) !== 0) return;
    for (const store of stores) turnBlock(store);
    nextBlock(lines);
  }

  function leaveOut(text: string, line: number, reason: string): void {
    rejected++;
    rejections.add(reason, () => ({ line, text }));
  }

  return {
    addBytes: (bytes, from, line) => {
      const end = quick(bytes, from, rows & SLOT_MASK);
      if (end < 0) return -1;
      accept(line);
      misfits.fits();
      return end;
    },
    addText: (text, line) => {
      if (text.trim() === "") return;
      const remark = remarkReason(text, layout);
      if (remark !== null) return leaveOut(text, line, remark);
      const whole = split(text);
      const cells = isAtWideBlanks ? atSingleBlanks(text, whole, stores.length) : whole;
      const filled = fillRow(stores, cells, { slot: rows & SLOT_MASK, decimal });
      if (filled.fits) misfits.fits();
      else misfits.found(line);
      const isCounted = counts && (filled.isBlankRow || isLostReading(filled, text));
      if (filled.values === 0 && !isCounted) {
        if (otherUnitLine === 0 && isHeaderInOtherUnits(cells, layout)) otherUnitLine = line;
        return leaveOut(text, line, reasonOf(text, "no number and no time in it"));
      }
      if (!filled.isReading && !isCounted)
        return leaveOut(text, line, reasonOf(text, "words where numbers belong"));
      for (const store of stores) keepWord(store, rows);
      accept(line);
    },
    leaveOut,
    watchMisfits: misfits.restart,
    counts: () => ({ rows, rejected, otherUnitLine, ...misfits.now() }),
    finish: () => {
      const lineOfRow = gathered(lines, rows);
      return {
        columns: stores.map((store, index) =>
          finishedColumn(store, index, { layout, count: rows }),
        ),
        rowCount: rows,
        lineOf: (row) => lineOfRow[row]!,
        textOf: (row) => form.textAt(lineOfRow[row]!),
        rejected: rejections,
        rejectedCount: rejected,
        cutRow: -1,
      };
    },
  };
}

/** Why a row is left out; a remark may begin with a mark that elsewhere is a delimiter. */
function reasonOf(text: string, reason: string): string {
  return /^\s*[;!]/.test(text) ? "a comment" : reason;
}

/** Whether a row without a value begins with a number all the same: a reading that cannot be read, and is counted. */
function isLostReading({ values }: Filled, text: string): boolean {
  return values === 0 && /^\s*"?[+-]?\d/.test(text);
}

function remarkReason(text: string, layout: Layout): string | null {
  if (/^\s*(?:#(?!(?:DIV|N\/A|REF|VALUE|NUM|NULL|NAME|WERT))|\/\/|%)/i.test(text))
    return "a comment";
  return layout.headerText !== "" && text === layout.headerText ? "the header again" : null;
}

/** Counts rows that do not read as asked, and finds where the longest run of them begins. */
function misfitWatch() {
  let misfits = 0;
  let line = 0;
  let longest = 0;
  let runLine = 0;
  let run = 0;
  return {
    fits: (): void => {
      run = 0;
    },
    found: (at: number): void => {
      misfits++;
      if (run++ === 0) runLine = at;
      if (run > longest) {
        longest = run;
        line = runLine;
      }
    },
    restart: (): void => {
      misfits = line = longest = run = 0;
    },
    now: (): Pick<RowCounts, "misfits" | "misfitLine"> => ({ misfits, misfitLine: line }),
  };
}

interface Filled {
  /** Cells that held a number or a time. */
  readonly values: number;
  /** Whether it holds more of them than strange words where a number should be. */
  readonly fits: boolean;
  /** Whether it has all its cells and each is blank or a word for a missing reading. */
  readonly isBlankRow: boolean;
  /** Whether it has a written time, or is not mostly words: totals under a table are. */
  readonly isReading: boolean;
}

/** Puts the cells of a row into a slot of their columns. */
function fillRow(
  stores: readonly ColumnStore[],
  cells: readonly string[],
  { slot, decimal }: { readonly slot: number; readonly decimal: DecimalMark },
): Filled {
  const found: Record<Found, number> = { number: 0, time: 0, strange: 0, nothing: 0 };
  for (let c = 0; c < stores.length; c++) {
    const store = stores[c]!;
    const cell = cells[c] ?? "";
    if (store.kind === "number") found[fillNumber(store, cell, { slot, decimal })]++;
    else if (store.kind === "stamp") found[fillStamp(store, cell, slot)]++;
  }
  const values = found.number + found.time;
  if (values > 0) fillWords(stores, cells, slot);
  const fits = values > found.strange;
  // As many words as numbers, and more or fewer cells than columns or a colon (`Readings: 208`): totals, not a row with a bad time.
  const isOther = cells.length !== stores.length || /:\s*$/.test(cells[0] ?? "");
  const isTotal = found.strange > values || (!fits && isOther);
  const isWhole = cells.length === stores.length || cells.some(isMissingWord);
  const isBlankRow = values === 0 && found.strange === 0 && isWhole;
  return { values, fits, isBlankRow, isReading: found.time > 0 || !isTotal };
}

/** What a cell held: `strange` is a word that stands for no missing reading either. */
type Found = "number" | "time" | "strange" | "nothing";

function fillStamp(store: StampStore, cell: string, slot: number): Found {
  const stamp = parseStamp(cell);
  store.seconds.block[slot] = stamp?.seconds ?? Number.NaN;
  store.formOf.block[slot] = stamp === null ? -1 : store.known.numberOf(stamp);
  return stamp === null ? "nothing" : "time";
}

function fillNumber(
  store: NumberStore,
  cell: string,
  { slot, decimal }: { readonly slot: number; readonly decimal: DecimalMark },
): Found {
  const plain = plainNumber(cell, decimal);
  const number = Number.isNaN(plain) ? patientNumber(cell, decimal) : null;
  const value = number?.value ?? plain;
  store.values.block[slot] = value;
  store.word = "";
  if (number !== null && number.suffix !== null) store.suffixes[number.suffix]++;
  if (!Number.isNaN(value)) return "number";
  const word = cell.trim().slice(0, 16);
  if (word === "") return "nothing";
  const isMissing = isMissingWord(word);
  store.word = isMissing ? word : "other words";
  return isMissing ? "nothing" : "strange";
}

function fillWords(stores: readonly ColumnStore[], cells: readonly string[], slot: number): void {
  stores.forEach((store, c) => {
    if (store.kind === "text") store.words.codes.block[slot] = store.words.codeOf(cells[c] ?? "");
  });
}
