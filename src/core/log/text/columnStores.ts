import { NO_STAMPS, type StampForms, stampForms } from "../time/stamps.ts";
import { type Growing, gathered, growingFloats, growingInts, nextBlock } from "./growing.ts";
import type { Layout } from "./layout.ts";
import type { Column } from "./table.ts";
import { NO_WORDS, type WordStore, wordStore } from "./words.ts";

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
    name: layout.names[index] as string,
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
