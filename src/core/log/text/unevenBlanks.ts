import { beginsAsRow } from "./beginsAsRow.ts";
import { cellKind } from "./cellKind.ts";
import { commonLength } from "./dialectScore.ts";

/** Share of rows by which cutting at single blanks must make more of one length than at wide ones. */
const UNEVEN_SHARE = 0.05;

/** Whether rows differ in how many blanks stand between the same cells, so that single ones must be cut as well. */
export function areBlanksUneven(rows: readonly string[]): boolean {
  const begun = rows.filter(beginsAsRow).map((row) => row.trim());
  const shareOf = (blanks: RegExp) => {
    const kinds = begun.map((row) => row.split(blanks).map((cell) => cellKind(cell, ".")));
    const length = commonLength(kinds);
    return kinds.filter((row) => row.length === length).length / Math.max(1, kinds.length);
  };
  return shareOf(/\s+/) > shareOf(/\s{2,}/) + UNEVEN_SHARE;
}
