import { ok, type Result } from "../../core/problem.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import type { Bench } from "../bench/store.ts";
import { changeReview, showReview, stemOf } from "./changeReview.ts";
import { columnsOf } from "./columnsOf.ts";
import { NOTHING_TOLD } from "./reviewState.ts";
import { sortFiles } from "./sortFiles.ts";

/** Lays dropped files on the table; a wrong drop changes nothing and says why. */
export async function layFiles(bench: Bench, files: Result<readonly KeptFile[]>): Promise<void> {
  const sorted = files.ok ? sortFiles(files.value) : files;
  const log = sorted.ok ? sorted.value.log : null;
  const looked = log === null ? ok([]) : await columnsOf(log, NOTHING_TOLD);
  if (looked === null) return;
  if (!sorted.ok || !looked.ok) {
    showReview(bench, {
      refused: [sorted, looked].flatMap((part) => (part.ok ? [] : part.problems)),
    });
    return;
  }
  const { record, schedule } = sorted.value;
  const now = bench.state().work.review;
  const isOther = log !== null && now.log !== null && stemOf(log.name) !== stemOf(now.log.name);
  const names = [log, record, schedule].flatMap((file) => file?.name ?? []);
  changeReview(bench, `laying down ${names.join(", ")}`, {
    ...(log !== null && { log, told: NOTHING_TOLD }),
    ...(isOther && { record: null, schedule: null }),
    ...(record !== null && { record }),
    ...(schedule !== null && { schedule }),
  });
}
