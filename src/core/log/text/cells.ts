import type { SplitQuoted } from "../LogReading.ts";
import { recordsOf } from "./records.ts";

/** Splits a record into cells; a delimiter of one blank stands for any run of blanks. */
export type SplitCells = (record: string) => readonly string[];

/** The splitter for a delimiter; records that hold quotes go through `splitQuoted`. */
export function cellSplitter(delimiter: string, splitQuoted: SplitQuoted): SplitCells {
  if (delimiter === " ") return splitAtBlanks;
  return (record) => {
    if (!record.includes('"')) return record.split(delimiter);
    return splitQuoted(record, delimiter) ?? record.split(delimiter);
  };
}

/** All records of a text as cells, as they stand: no trimming, no typing. */
export function cellRows(
  text: string,
  delimiter: string,
  splitQuoted: SplitQuoted,
): readonly (readonly string[])[] {
  return recordsOf(text, delimiter).texts.map(cellSplitter(delimiter, splitQuoted));
}

function splitAtBlanks(record: string): readonly string[] {
  const trimmed = record.trim();
  if (trimmed === "") return [""];
  if (!trimmed.includes('"')) return trimmed.split(/\s+/);
  return (trimmed.match(/"[^"]*"|\S+/g) ?? [""]).map((cell) => cell.replaceAll('"', ""));
}
