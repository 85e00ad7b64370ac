import { parseRecordFile } from "../../core/firing/record.ts";
import type { FiringRecordFile } from "../../core/firing/recordFormat.ts";
import { recordYaml } from "../../core/firing/recordYaml.ts";
import type { Problem } from "../../core/problem.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import type { Work } from "../bench/state.ts";
import type { Bench } from "../bench/store.ts";
import { remembered } from "../parts/remembered.ts";
import { textOf } from "../worker/readGroup.ts";
import { NOTHING_TOLD, type ReviewDesk, type ReviewWork, type ToldOfLog } from "./reviewState.ts";

/** Changes what lies on the Review table, as one step to undo. */
export function changeReview(bench: Bench, what: string, change: Partial<ReviewWork>): void {
  showReview(bench, { refused: [] });
  bench.change(what, (work) => ({ ...work, review: { ...work.review, ...change } }));
}

/** Changes what is only shown on the Review table. */
export function showReview(bench: Bench, change: Partial<ReviewDesk>): void {
  bench.show((state) => ({ ...state, review: { ...state.review, ...change } }));
}

/** Says how the log is to be read, which reads it anew. */
export function tellOfLog(bench: Bench, what: string, told: Partial<ToldOfLog>): void {
  const { review } = bench.state().work;
  changeReview(bench, what, { told: { ...review.told, ...told } });
}

const fileRead = remembered((file: KeptFile | null): FiringRecordFile | null => {
  const text = file === null ? null : textOf(file);
  if (file === null || text === null || !text.ok) return null;
  const read = parseRecordFile(text.value, file.name);
  return read.ok ? read.value : null;
});

/** The record on the table as its file writes it; an empty one, in the page's unit, when there is none. */
export function recordOf({ unit, review }: Pick<Work, "unit" | "review">): FiringRecordFile {
  const title = stemOf(review.log?.name ?? "A firing");
  return fileRead(review.record) ?? { formatVersion: 1, title, unit };
}

/** What is wrong with a record as it would be after a change; nothing when it can be saved. */
export function wrongWithRecord(file: FiringRecordFile): readonly Problem[] {
  const read = parseRecordFile(recordYaml(file, null), "the record");
  return read.ok ? [] : read.problems;
}

/** Writes another record in the place of the one on the table, its comments kept. */
export function writeRecord(bench: Bench, what: string, file: FiringRecordFile): void {
  const { review } = bench.state().work;
  changeReview(bench, what, { record: recordFile(review, file) });
}

/** Moves what was said of the log into the record, where the command finds it too. */
export function rememberTold(bench: Bench): void {
  const { work } = bench.state();
  const { review } = work;
  const file = recordOf(work);
  const { columns, ...rest } = logOptions(review.told);
  const log = { ...file.log, ...rest, ...(columns && { columns: [...columns] }) };
  const next = { ...file, log };
  changeReview(bench, "remembering it in the record", {
    record: recordFile(review, next),
    told: NOTHING_TOLD,
  });
}

/** What was said of the log as the reader takes it. */
export function logOptions(told: ToldOfLog) {
  return {
    ...(told.unit !== null && { unit: told.unit }),
    ...(told.columns !== null && { columns: told.columns }),
    ...(told.timeColumn !== null && { timeColumn: told.timeColumn }),
    ...(told.timeUnit !== null && { timeUnit: told.timeUnit }),
    ...(told.dayFirst !== null && { dayFirst: told.dayFirst }),
    ...(told.delimiter !== null && { delimiter: told.delimiter }),
    ...(told.decimal !== null && { decimal: told.decimal }),
    ...(told.encoding !== null && { encoding: told.encoding }),
    ...(told.intervalSeconds !== null && { intervalSeconds: told.intervalSeconds }),
  };
}

function recordFile(review: ReviewWork, file: FiringRecordFile): KeptFile {
  const was = review.record === null ? null : textOf(review.record);
  const text = recordYaml(file, was?.ok ? was.value : null);
  return { name: recordName(review), bytes: new Uint8Array(new TextEncoder().encode(text)) };
}

/** Name of the record's file: its own, or that of the log. */
export function recordName({ record, log }: ReviewWork): string {
  return record?.name ?? `${stemOf(log?.name ?? "firing")}.yaml`;
}

/** A file's name without its ending. */
export function stemOf(name: string): string {
  return name.replace(/(\.[^.]+)?(\.gz)?$/, "");
}
