import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import { sameFile } from "../bench/KeptFile.ts";
import type { Bench } from "../bench/store.ts";
import { stemOf } from "../review/changeReview.ts";
import { columnsOf } from "../review/columnsOf.ts";
import { NOTHING_TOLD } from "../review/reviewState.ts";
import { sortFiles } from "../review/sortFiles.ts";
import { withLaid } from "../worker/readGroup.ts";
import { bodyOfFile, glazeOfFile, wareKind } from "../worker/wareKind.ts";
import { changeCompare, showCompare } from "./changeCompare.ts";
import { otherKind } from "./compareGroups.ts";

const DOCUMENT = /\.(?:ya?ml|json)$/i;

/**
 * Lays dropped files on the table, each by itself: what cannot be of use here is left out and said.
 * A file of a name that lies there already takes its place.
 */
export async function layFirings(bench: Bench, files: Result<readonly KeptFile[]>): Promise<void> {
  if (!files.ok) {
    showCompare(bench, { refused: files.problems });
    return;
  }
  const refused: Problem[] = [];
  const laid: KeptFile[] = [];
  const near = [...bench.state().work.compare.files, ...files.value];
  for (const file of files.value) {
    const looked = await lookedAt(file, near);
    if (looked.ok) laid.push(file);
    else refused.push(...looked.problems);
  }
  const before = bench.state().work.compare.files;
  const changed = laid.filter((file) => !before.some((other) => sameFile(file, other)));
  const names = changed.map(({ name }) => name).join(", ");
  if (changed.length > 0)
    changeCompare(bench, `laying down ${names}`, { files: withLaid(before, changed) });
  const remark = replacedWords(changed, before);
  const said = laidWords(changed);
  showCompare(bench, { refused, remark });
  bench.show((state) => ({ ...state, said: `${said} ${remark}`.trim() }));
}

/** Whether a file may be of use: a log, or a document that stands beside one. */
async function lookedAt(file: KeptFile, near: readonly KeptFile[]): Promise<Result<null>> {
  if (!DOCUMENT.test(file.name)) {
    const columns = await columnsOf(file, NOTHING_TOLD);
    return columns === null || columns.ok ? ok(null) : columns;
  }
  const isOfLog = near.some(
    ({ name }) => !DOCUMENT.test(name) && stemOf(name) === stemOf(file.name),
  );
  const kind = otherKind(file);
  if (kind === "glaze" || kind === "body") return ok(null);
  const sorted = sortFiles([file]);
  if (sorted.ok || (isOfLog && sorted.problems.every(({ code }) => code !== "page/whole-bench")))
    return ok(null);
  const isBench = sorted.problems.some(({ code }) => code === "page/whole-bench");
  return isBench || kind !== "nothing" ? sorted : withoutUse(file);
}

/** What is wrong with a broken file of ware; of any other, that it has no use here. */
function withoutUse(file: KeptFile): Result<null> {
  const kind = wareKind(file);
  if (kind === null) return failed(noUse(file));
  const read = kind === "glaze" ? glazeOfFile(file) : bodyOfFile(file);
  return read.ok ? ok(null) : read;
}

function noUse({ name }: KeptFile): Problem {
  return {
    code: "page/no-use-here",
    where: name,
    what: "it is no record of a firing, no schedule, no glaze and no clay body, or a broken one, and no log of its name lies here",
    expected:
      "logs, each with the record of the same name, the schedules that the records name, and the files of the glazes and clays on the tiles",
    fix: "drop a record together with its log",
  };
}

function laidWords(laid: readonly KeptFile[]): string {
  const [first] = laid;
  if (first === undefined) return "Nothing new was laid down.";
  return `${laid.length === 1 ? first.name : `${laid.length} files`} laid down.`;
}

/** Says which files took the place of others; empty when none did. */
function replacedWords(laid: readonly KeptFile[], before: readonly KeptFile[]): string {
  const names = laid.flatMap(({ name }) =>
    before.some((other) => other.name === name) ? name : [],
  );
  return names.length === 0
    ? ""
    : `Another file of the same name was replaced: ${names.join(", ")}. Undo brings it back; to keep both, give one another name.`;
}
