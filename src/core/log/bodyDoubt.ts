import { failed, ok, type Result } from "../problem.ts";
import type { Decision } from "./LogReading.ts";
import type { RowCounts } from "./text/tableBuilder.ts";

/** Rows by which more of the later rows may fail to fit than of the first, in shares of them. */
const DOUBT_SHARE = 0.01;
const PROBLEM_SHARE = 0.5;

/**
 * Whether the rows after the first bytes still read as was decided on these.
 * Up to 1 % more rows that do not fit is the usual rubbish, and they are listed as left out. Beyond
 * that the decision about the delimiter is called a guess, with where to look. When the greater part
 * of the later rows does not fit, nothing that was decided holds for them.
 *
 * @param head The rows of the first bytes; null when these were the whole file.
 * @returns how to put the decision about the delimiter, or `log/changes-midway`.
 */
export function bodyDoubt({
  name,
  head,
  all,
}: {
  readonly name: string;
  readonly head: RowCounts | null;
  /** All rows, with the misfits after the head only. */
  readonly all: RowCounts;
}): Result<(decision: Decision) => Decision> {
  const rest = head === null ? 0 : all.rows + all.rejected - head.rows - head.rejected;
  if (head === null || rest === 0) return ok((decision) => decision);
  const usual = head.misfits / Math.max(1, head.rows + head.rejected);
  const more = all.misfits / rest - usual;
  if (more <= DOUBT_SHARE) return ok((decision) => decision);
  const what = `${all.misfits} of the ${rest} rows after the first 4 MB do not read as the rows before them`;
  if (more <= PROBLEM_SHARE)
    return ok((decision) => ({
      ...decision,
      confidence: "guessed",
      because: `${decision.because}; but ${what}, most of them in a row from line ${all.misfitLine}`,
    }));
  return failed({
    code: "log/changes-midway",
    what,
    where: `${name}: line ${all.misfitLine}`,
    expected: "rows written in one way from the first to the last",
    fix: `look at line ${all.misfitLine}, cut the file before it, and review each part by itself`,
  });
}
