import { ok, type Result } from "../../core/problem.ts";
import { type KeptFile, sameFiring } from "../bench/KeptFile.ts";
import type { Bench } from "../bench/store.ts";
import { changeReview, showReview } from "./changeReview.ts";
import { columnsOf } from "./columnsOf.ts";
import { NOTHING_TOLD } from "./reviewState.ts";
import { type SortedFiles, sortFiles } from "./sortFiles.ts";

/**
 * Lays dropped files on the table; a wrong drop changes nothing and says why.
 * A record belongs to the log that it was laid down with: when the log of another firing comes,
 * whatever its name, the old record goes with the old log, which is asked about first.
 */
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
  const now = bench.state().work.review;
  const isOther = log !== null && now.log !== null && !sameFiring(log, now.log);
  const lay = () => laid(bench, sorted.value, isOther);
  if (isOther && now.record !== null && sorted.value.record === null) askFirst(bench, log, lay);
  else lay();
}

function laid(bench: Bench, { log, record, schedule }: SortedFiles, isOther: boolean): void {
  const now = bench.state().work.review;
  const isSame = log !== null && now.log !== null && !isOther;
  const names = [log, record, schedule].flatMap((file) => file?.name ?? []);
  changeReview(bench, `laying down ${names.join(", ")}`, {
    ...(log !== null && { log, told: isSame ? now.told : NOTHING_TOLD }),
    ...(isOther && { record: null, schedule: null }),
    ...(record !== null && { record }),
    ...(schedule !== null && { schedule }),
  });
}

function askFirst(bench: Bench, log: KeptFile, lay: () => void): void {
  const { review } = bench.state().work;
  const [old, record] = [review.log?.name ?? "the log", review.record?.name ?? "its record"];
  const twin = old === log.name ? "another firing of the same name" : "another firing";
  bench.show((state) => ({
    ...state,
    question: {
      title: "Lay down another firing?",
      text: `${log.name} is the log of ${twin}. The record that lies here, ${record}, belongs to ${old} and is put away with it, your answers included. Save the record first if you want it as a file; Undo brings both back while the page is open.`,
      yes: "Lay it down",
      onYes: lay,
    },
  }));
}
