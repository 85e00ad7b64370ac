import { decision } from "../reading/LogReading.ts";
import type { DecimalMark } from "./cellKind.ts";
import type { SplitCells } from "./cells.ts";
import { COMMENT, cutsOf, datePair, paired, temperatureUnitIn } from "./headerCells.ts";
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
  const text = headerAt === "none" ? "" : records[headerAt]!;
  const pair = datePair(split(records[bodyStart]!));
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

/**
 * Whether a row is the header again, with another scale of temperature in it: as a logger writes that
 * was switched from °C to °F and goes on in the same file.
 */
export function isHeaderInOtherUnits(
  cells: readonly string[],
  { names, units, hasHeader }: Pick<Layout, "names" | "units" | "hasHeader">,
): boolean {
  if (!hasHeader || cells.length < 2) return false;
  let changed = 0;
  for (let c = 0; c < names.length; c++) {
    const name = names[c]!;
    const cell = (cells[c] ?? "").trim().replace(/^"|"$/g, "");
    if (plain(cell) !== plain(name)) return false;
    const unit = temperatureUnitIn(`${name} ${units[c] ?? ""}`);
    const now = temperatureUnitIn(cell);
    if (unit !== null && now !== null && now !== unit) changed++;
  }
  return changed > 0;
}

/** A name without its unit, in small letters. */
function plain(name: string): string {
  return name
    .replace(/[([][^)\]]*[)\]]/g, "")
    .replace(/[°º˚�]\s?[CFK]\b|\b(?:deg\.?\s?[CFK]|celsius|fahrenheit|kelvin)\b/gi, "")
    .replace(/[\s_]+/g, "")
    .toLowerCase();
}
