import type { Problem } from "../../problem.ts";
import { cellKind } from "./cellKind.ts";
import type { SplitCells } from "./cells.ts";
import { commonLength, isBodyLike } from "./dialectScore.ts";
import { looseCommas } from "./looseCommas.ts";

/**
 * The problem of commas between cells and in numbers alike, seen in the rows of the beginning and, for
 * decimals that change slowly, in rows from all over the file; null when there is none.
 */
export function commaProblem(
  records: readonly string[],
  split: SplitCells,
  {
    name,
    spread,
    rows,
  }: { readonly name: string; readonly spread: readonly string[]; readonly rows: number },
): Problem | null {
  const looked = records.slice(0, rows).map(split);
  const kinds = looked.map(kindsOf);
  const length = commonLength(kinds.filter(isBodyLike));
  const isRow = (at: number) => looked[at]?.length === length && isBodyLike(kinds[at] ?? []);
  const first = looked.findIndex((_, at) => isRow(at) && isRow(at + 1));
  if (first < 0) return null;
  const above = looked.slice(Math.max(0, first - 4), first).filter(mayBeNames);
  const filled = (cells: readonly string[]) => cells.filter((cell) => cell.trim() !== "").length;
  const header = above.reduce<readonly string[] | null>(
    (most, cells) => (most === null || filled(cells) > filled(most) ? cells : most),
    null,
  );
  const near = looked.filter((_, at) => at >= first && isRow(at));
  // What is only seen further down: that decimals are more than one digit.
  const far = spread
    .map(split)
    .filter((cells) => cells.length === length && isBodyLike(kindsOf(cells)));
  return looseCommas([...near, ...far], header, name);
}

function kindsOf(cells: readonly string[]): ReturnType<typeof cellKind>[] {
  return cells.map((cell) => cellKind(cell, "."));
}

/** Whether the cells of a line above the readings may be names: several, none of them a number. */
function mayBeNames(cells: readonly string[]): boolean {
  const kinds = kindsOf(cells);
  return cells.length > 1 && !kinds.includes("number") && !isBodyLike(kinds);
}
