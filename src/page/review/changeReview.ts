import type { Problem, Result } from "../../core/problem.ts";
import { parseRecordFile } from "../../core/record/parseRecord.ts";
import type { FiringRecordFile } from "../../core/record/recordFormat.ts";
import { recordYaml } from "../../core/record/recordYaml.ts";
import { remembered } from "../parts/controls.ts";
import { download } from "../parts/files.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import {
  NOTHING_TOLD,
  type ReviewDesk,
  type ReviewWork,
  type ToldOfLog,
} from "../state/reviewState.ts";
import { type Bench, type BenchState, followedUnit, type Work } from "../state/state.ts";
import type { ReviewAnswer } from "../worker/answers.ts";
import { hire } from "../worker/hire.ts";
import { textOf } from "../worker/readGroup.ts";

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

const looker = hire();

/** What is handed over of a log to name its columns [bytes]. */
const HEAD_BYTES = 65_536;

/** The names of a log's columns, or why it is no log; null when another log was asked about since. */
export function columnsOf(
  log: KeptFile,
  { delimiter, decimal, encoding }: ToldOfLog,
): Promise<Result<readonly string[]> | null> {
  const head = { name: log.name, bytes: log.bytes.slice(0, HEAD_BYTES) };
  return looker.run("columns", { log: head, delimiter, decimal, encoding });
}

/** Saves the record on the table as its file, comments and all. */
export function saveRecord(bench: Bench): void {
  const { work } = bench.state();
  const { review } = work;
  const name = recordName(review);
  const kept = review.record === null ? null : textOf(review.record);
  const text = kept?.ok ? kept.value : recordYaml(recordOf(work), null);
  download(name, text, name.endsWith(".json") ? "application/json" : "application/yaml");
}

const reader = hire();

/** Parts of the report that are laid out one a frame, so that no frame takes long. */
const ALL_PARTS = 24;

/** Reads the firing on the Review table anew whenever a file or a decision about it changes. */
export function watchReview(bench: Bench): void {
  bench.listen((before) => {
    const was = before.work.review;
    const is = bench.state().work.review;
    if (is.log !== was.log)
      showReview(bench, { answer: null, columns: [], piece: 0, parts: 0, isFollowed: false });
    if (is.log !== was.log || is.told !== was.told) void nameColumns(bench);
    if (is !== was || lacksCharts(before, bench.state())) void readFiring(bench);
  });
}

/** Another unit, or a screen gone dark: its charts are not drawn yet. */
function lacksCharts(before: BenchState, now: BenchState): boolean {
  const { answer } = now.review;
  if (answer === null) return false;
  if (now.work.unit !== before.work.unit) return answer.charts.unit !== now.work.unit;
  return now.dark && !before.dark && answer.charts.dark === null;
}

/** Stops the reading that is under way. */
export function stopReading(bench: Bench): void {
  reader.stop();
  showReview(bench, { busy: null, isStopped: true });
}

/** Reads the log on the table and what lies beside it; an earlier reading that still runs is ended. */
export async function readFiring(bench: Bench): Promise<void> {
  const { work, dark } = bench.state();
  const { log, record, schedule, earlier, told } = work.review;
  reader.stop();
  const idle = { busy: null, isStopped: false, problems: [] };
  if (log === null) {
    showReview(bench, { ...idle, answer: null, marked: null });
    return;
  }
  showReview(bench, { busy: { fraction: 0, at: `handing over ${log.name}` }, isStopped: false });
  const unit = work.unitChosen || work.unit === "F" ? work.unit : null;
  const asked = { log, record, schedule, earlier, told: logOptions(told), unit, dark };
  const answer = await reader.run("review", asked, (fraction, at) =>
    showReview(bench, { busy: { fraction, at } }),
  );
  if (answer === null) return;
  if (!answer.ok) {
    showReview(bench, { ...idle, answer: null, problems: answer.problems, marked: null });
    bench.show((state) => ({ ...state, said: `${log.name} cannot be read as it is.` }));
    return;
  }
  layOut(bench, { ...idle, answer: answer.value });
  const isFollowed = followUnit(bench, answer.value);
  const said = `${log.name} is read.${isFollowed ? " It is in °F, and so is the page now." : ""}`;
  bench.show((state) => ({ ...state, said }));
  if (answer.value.charts.unit !== bench.state().work.unit) void readFiring(bench);
}

/** Shows the page in the unit of the log, whose charts come in it; whether that was a change. */
function followUnit(bench: Bench, { logUnit }: ReviewAnswer): boolean {
  const { work } = bench.state();
  const next = followedUnit(work, logUnit);
  if (next === work) return false;
  bench.show((state) => ({
    ...state,
    work: next,
    review: { ...state.review, isFollowed: true },
  }));
  return true;
}

/** Shows an answer; a mark stands for a place in its list, so that other findings lose it. */
function layOut(bench: Bench, change: Parameters<typeof showReview>[1]): void {
  const { answer, marked } = bench.state().review;
  const isSame = JSON.stringify(answer?.findings) === JSON.stringify(change.answer?.findings);
  showReview(bench, { ...change, marked: isSame ? marked : null });
  const more = () => {
    const { parts } = bench.state().review;
    if (parts >= ALL_PARTS) return;
    showReview(bench, { parts: parts + 1 });
    requestAnimationFrame(more);
  };
  more();
}

async function nameColumns(bench: Bench): Promise<void> {
  const { log, told } = bench.state().work.review;
  if (log === null) return;
  const columns = await columnsOf(log, told);
  if (columns?.ok) showReview(bench, { columns: columns.value });
}
