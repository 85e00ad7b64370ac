import type { Layout } from "./layout.ts";
import type { Column } from "./logTable.ts";
import type { Stamp } from "./stamp.ts";

/** A column of numbers that is being filled. */
export interface NumberStore {
  readonly kind: "number";
  readonly values: Growing<Float64Array>;
  /** Cells by the scale written in them. */
  readonly suffixes: { C: number; F: number; K: number };
  /** Words that stood where a number should, with their number. */
  readonly missing: Map<string, number>;
  /** First and last row of these; −1 of none. */
  readonly missingRows: { first: number; last: number };
  /** Such a word in the row that is being read; empty when there is none. */
  word: string;
}

/** A column of written times that is being filled. */
export interface StampStore {
  readonly kind: "stamp";
  readonly seconds: Growing<Float64Array>;
  readonly formOf: Growing<Int32Array>;
  readonly known: StampForms;
}

/** A column of words that is being filled. */
export interface TextStore {
  readonly kind: "text";
  readonly words: WordStore;
}

/** A column that is being filled. */
export type ColumnStore = NumberStore | StampStore | TextStore;

/** An empty column for cells of a kind; columns without any kind may still bring numbers. */
export function columnStore(kind: Layout["kinds"][number]): ColumnStore {
  if (kind === "stamp")
    return { kind, seconds: growingFloats(), formOf: growingInts(), known: stampForms() };
  if (kind === "text") return { kind, words: wordStore() };
  return {
    kind: "number",
    values: growingFloats(),
    suffixes: { C: 0, F: 0, K: 0 },
    missing: new Map(),
    missingRows: { first: -1, last: -1 },
    word: "",
  };
}

/** Begins a new block in a column. */
export function turnBlock(store: ColumnStore): void {
  if (store.kind === "number") nextBlock(store.values);
  else if (store.kind === "stamp") {
    nextBlock(store.seconds);
    nextBlock(store.formOf);
  } else nextBlock(store.words.codes);
}

/** The column when all its rows are there. */
export function finishedColumn(
  store: ColumnStore,
  index: number,
  { layout, count }: { readonly layout: Layout; readonly count: number },
): Column {
  return {
    index,
    name: layout.names[index]!,
    unitText: layout.units[index] ?? "",
    kind: store.kind,
    numbers: store.kind === "number" ? gathered(store.values, count) : new Float64Array(0),
    stamps:
      store.kind === "stamp"
        ? {
            seconds: gathered(store.seconds, count),
            formOf: gathered(store.formOf, count),
            forms: store.known.forms,
          }
        : NO_STAMPS,
    words: store.kind === "text" ? store.words.finish(count) : NO_WORDS,
    suffix: store.kind === "number" ? suffixOf(store.suffixes) : null,
    missingWords: store.kind === "number" ? store.missing : new Map(),
    missingRows: store.kind === "number" ? store.missingRows : { first: -1, last: -1 },
    otherSuffix: store.kind === "number" ? otherSuffixOf(store.suffixes) : null,
  };
}

function suffixOf({ C, F, K }: NumberStore["suffixes"]): Column["suffix"] {
  const most = Math.max(C, F, K);
  return most === 0 ? null : most === C ? "C" : most === F ? "F" : "K";
}

/** Fewest cells, and share of all with one, from which another scale in a column is no slip of a letter. */
const MIXED = { cells: 2, share: 0.02 };

/** The scale that is written in cells of a column beside a more frequent one; null when there is none. */
function otherSuffixOf({ C, F, K }: NumberStore["suffixes"]): Column["otherSuffix"] {
  const most = suffixOf({ C, F, K });
  const least = Math.max(MIXED.cells, MIXED.share * (C + F + K));
  const counts = { C, F, K };
  return (["C", "F", "K"] as const).find((unit) => unit !== most && counts[unit] >= least) ?? null;
}

/** Counts a word that stood for a number in a row that is kept. */
export function keepWord(store: ColumnStore, row: number): void {
  if (store.kind !== "number" || store.word === "") return;
  store.missing.set(store.word, (store.missing.get(store.word) ?? 0) + 1);
  if (store.missingRows.first < 0) store.missingRows.first = row;
  store.missingRows.last = row;
}

/** Rows in one block; a power of two. */
const BLOCK_ROWS = 8_192;

/** A row's place in its block is its number and this. */
export const SLOT_MASK = BLOCK_ROWS - 1;

/** The kinds of array that grow. */
type Values = Float64Array | Int32Array;

/** Values of one column that grow by blocks, so that no value is copied while they come. */
interface Growing<A extends Values> {
  /** The block being filled; written by whoever has the row. */
  block: A;
  readonly full: A[];
  readonly make: (length: number) => A;
}

/** An empty column of floating-point numbers. */
function growingFloats(): Growing<Float64Array> {
  const make = (length: number) => new Float64Array(length);
  return { block: make(BLOCK_ROWS), full: [], make };
}

/** An empty column of whole numbers. */
export function growingInts(): Growing<Int32Array> {
  const make = (length: number) => new Int32Array(length);
  return { block: make(BLOCK_ROWS), full: [], make };
}

/** Puts the full block away and begins the next. */
export function nextBlock<A extends Values>(values: Growing<A>): void {
  values.full.push(values.block);
  values.block = values.make(BLOCK_ROWS);
}

/** All values in one array; the blocks are let go of. */
export function gathered<A extends Values>(values: Growing<A>, count: number): A {
  if (values.full.length === 0) return values.block.subarray(0, count) as A;
  const all = values.make(count);
  let at = 0;
  for (const block of values.full.splice(0)) {
    all.set(block, at);
    at += block.length;
  }
  all.set(values.block.subarray(0, count - at), at);
  values.block = values.make(0);
  return all;
}

/** The cells of a column of words; only a few different words are kept, which is all that is asked of them. */
export interface Words {
  /** Place of each row's word in `known`; empty when there are too many different ones. */
  readonly wordOf: Int32Array;
  /** The different words as they first come; null when there are too many. */
  readonly known: readonly string[] | null;
}

/** Different words of a column that are kept; a column that names channels has fewer. */
const MOST_WORDS = 64;

/** The words of a column that holds none. */
const NO_WORDS: Words = { wordOf: new Int32Array(0), known: [] };

/** Takes the words of a column, row by row. */
interface WordStore {
  readonly codes: Growing<Int32Array>;
  /** Number of a word; −1 when it is one too many. */
  readonly codeOf: (word: string) => number;
  readonly finish: (count: number) => Words;
}

/** An empty column of words. */
function wordStore(): WordStore {
  const codes = growingInts();
  const numbers = new Map<string, number>();
  let tooMany = false;
  return {
    codes,
    codeOf: (word) => {
      const known = numbers.get(word);
      if (known !== undefined) return known;
      if (numbers.size === MOST_WORDS) {
        tooMany = true;
        return -1;
      }
      // Joined and split, the word no longer holds on to the text that it was cut from.
      numbers.set(word.split("").join(""), numbers.size);
      return numbers.size - 1;
    },
    finish: (count) =>
      tooMany
        ? { wordOf: new Int32Array(0), known: null }
        : { wordOf: gathered(codes, count), known: [...numbers.keys()] },
  };
}

/** All of a written time but its seconds; thousands of rows share one. */
export type StampForm = Omit<Stamp, "seconds">;

/** The written times of a column. */
export interface Stamps {
  /** Seconds after midnight, or elapsed; NaN without a time [s]. */
  readonly seconds: Float64Array;
  /** Place of each row's form in `forms`; −1 where the cell holds no time. */
  readonly formOf: Int32Array;
  /** The different forms, as they first come. */
  readonly forms: readonly StampForm[];
}

/** The stamps of a column that is not written times. */
const NO_STAMPS: Stamps = {
  seconds: new Float64Array(0),
  formOf: new Int32Array(0),
  forms: [],
};

/** A row's written time as one object; null where there is none. */
export function stampAt(stamps: Stamps, row: number): Stamp | null {
  const form = stamps.forms[stamps.formOf[row] ?? -1];
  return form === undefined ? null : { ...form, seconds: stamps.seconds[row]! };
}

/** The first written time of a column; null when there is none. */
export function firstStamp(stamps: Stamps): Stamp | null {
  return stampAt(
    stamps,
    stamps.formOf.findIndex((form) => form >= 0),
  );
}

/** Share of all rows whose written time has a form with a property; 0 of no rows. */
export function formShare(stamps: Stamps, test: (form: StampForm) => boolean): number {
  const met = stamps.forms.map(test);
  const { formOf } = stamps;
  let count = 0;
  for (let row = 0; row < formOf.length; row++) if (met[formOf[row]!] === true) count++;
  return count / Math.max(1, formOf.length);
}

/** Finds the number of a form, giving new forms the next one. */
interface StampForms {
  readonly forms: readonly StampForm[];
  readonly numberOf: (form: StampForm) => number;
}

/** An empty collection of forms. */
function stampForms(): StampForms {
  const forms: StampForm[] = [];
  const numbers = new Map<string, number>();
  return {
    forms,
    numberOf: (form) => {
      const key = keyOf(form);
      const known = numbers.get(key);
      if (known !== undefined) return known;
      numbers.set(key, forms.length);
      return forms.push(form) - 1;
    },
  };
}

function keyOf(form: StampForm): string {
  const date = [form.first, form.second, form.third].join("/");
  const clock = [form.clockFields, form.half, form.offsetMinutes, form.isSpan].join("/");
  return `${date} ${form.order} ${form.separator} ${clock}`;
}
