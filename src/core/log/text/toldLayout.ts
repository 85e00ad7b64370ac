import { decision } from "../decision.ts";
import type { DecimalMark } from "./cellKind.ts";
import type { SplitCells } from "./cells.ts";
import { COMMENT, cutsOf, datePair, paired } from "./headerCells.ts";
import { findLayout, HEADER_OPTION, type Layout, uniqueNames } from "./layout.ts";

/** The layout of a table whose header is told: a record of the file, or that there is none. */
export function toldLayout(
  records: readonly string[],
  split: SplitCells,
  told: { readonly decimal: DecimalMark; readonly headerAt: number | "none" },
): Layout | null {
  const { decimal, headerAt } = told;
  const above = headerAt === "none" ? 0 : headerAt + 1;
  const found = findLayout(records.slice(above), split, decimal);
  if (found === null) return null;
  const width = found.kinds.length;
  const bodyStart = above + found.bodyStart;
  const text = headerAt === "none" ? "" : (records[headerAt] as string);
  const pair = datePair(split(records[bodyStart] as string));
  const isNamed = headerAt !== "none";
  return {
    ...found,
    bodyStart,
    names: uniqueNames(isNamed ? namesIn(text, split, { width, pair }) : [], width),
    hasHeader: isNamed,
    headerText: text,
    headerAt: isNamed ? headerAt : null,
    preamble: records.slice(0, isNamed ? headerAt : bodyStart),
    decision: decision("header", isNamed ? "a row of names" : "none; columns are numbered from 1", {
      confidence: "told",
      because: `it was given as an option; the readings begin at record ${bodyStart + 1}`,
      option: HEADER_OPTION,
    }),
  };
}

/** The cells of a header, cut at wider blanks where that fits, else as the rows are. */
function namesIn(
  text: string,
  split: SplitCells,
  table: { readonly width: number; readonly pair: number },
): readonly string[] {
  const bare = split(text.replace(COMMENT, ""));
  const isAtBlanks = split("a b").length > 1;
  for (const cells of [...cutsOf({ text, cells: bare }, isAtBlanks), split(text)]) {
    const fitting = paired(cells, table);
    if (fitting !== null) return fitting;
  }
  return bare;
}
