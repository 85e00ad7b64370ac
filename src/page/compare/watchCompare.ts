import { ok, type Result } from "../../core/problem.ts";
import type { Alignment } from "../../core/review/alignment.ts";
import type { PlannedFiring } from "../../core/trials/NextTest.ts";
import { kilnAsked } from "../draft/changeDraft.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import type { Bench, BenchState, ChosenAlignment } from "../state/state.ts";
import type { ComparedLog, KilnAsked } from "../worker/answers.ts";
import type { StudyAnswer } from "../worker/compareJob.ts";
import { hire } from "../worker/hire.ts";
import type { FiringGroup } from "../worker/readGroup.ts";
import { compareGroups, showCompare, wareFiles } from "./changeCompare.ts";

const reader = hire();
const comparer = hire();

/** More parts than a report has. */
const ALL_PARTS = 16;

/** What was read of a log, with the files that it was read with. */
interface Read {
  readonly group: FiringGroup;
  readonly result: Result<ComparedLog>;
}

const READS = new WeakMap<KeptFile, Read>();

/** Reads what is new on the Compare table and compares again whenever something about it changes. */
export function watchCompare(bench: Bench): void {
  bench.listen((before) => {
    const was = before.work.compare;
    const is = bench.state().work.compare;
    if (is.files !== was.files) void readFirings(bench);
    else if (
      is !== was ||
      hasOtherKiln(before, bench.state()) ||
      lacksCharts(before, bench.state())
    )
      void compare(bench);
  });
}

/** Another unit, or a screen gone dark: its charts are not drawn yet. */
function lacksCharts(before: BenchState, now: BenchState): boolean {
  const { answer } = now.compare;
  if (answer === null) return false;
  if (now.work.unit !== before.work.unit) return answer.charts.unit !== now.work.unit;
  return now.dark && !before.dark && answer.charts.dark === null;
}

/** The kiln of the Draft table, to which the next test is fitted, is another. */
function hasOtherKiln(before: BenchState, now: BenchState): boolean {
  return now.compare.answer !== null && nextKiln(before) !== nextKiln(now);
}

/** The kiln that the next test is fitted to; null for the one that is assumed. */
function nextKiln({ work, draft }: BenchState): KilnAsked | null {
  return work.compare.onKiln && draft.kiln !== null
    ? kilnAsked(draft.kiln, work.draft.offset)
    : null;
}

/** Stops the reading that is under way; what was read by then is compared. */
export function stopReadingFirings(bench: Bench): void {
  reader.stop();
  showCompare(bench, { busy: null, isStopped: true });
  void compare(bench);
}

/** Reads every log that was not read yet with the files that lie beside it now, then compares. */
export async function readFirings(bench: Bench): Promise<void> {
  reader.stop();
  comparer.stop();
  const groups = compareGroups(bench.state().work.compare.files);
  const unread = groups.filter((group) => readOf(group) === null);
  showCompare(bench, { reads: readsOf(groups), isStopped: false, busy: null });
  for (const [index, group] of unread.entries()) {
    const busy = (fraction: number, at: string) =>
      showCompare(bench, { busy: { fraction: (index + fraction) / unread.length, at } });
    busy(0, `handing over ${group.log.name}`);
    const result = await reader.run("compareRead", group, busy);
    if (result === null) return;
    READS.set(group.log, { group, result });
    showCompare(bench, { reads: readsOf(groups) });
  }
  showCompare(bench, { busy: null });
  await compare(bench);
}

function readOf({ log, record, others }: FiringGroup): Read | null {
  const read = READS.get(log);
  if (read === undefined || read.group.record !== record) return null;
  const { others: before } = read.group;
  const isSame = others.length === before.length && others.every((file, at) => file === before[at]);
  return isSame ? read : null;
}

function readsOf(groups: readonly FiringGroup[]): ReadonlyMap<KeptFile, Result<ComparedLog>> {
  return new Map(
    groups.flatMap((group) => {
      const read = readOf(group);
      return read === null ? [] : [[group.log, read.result] as const];
    }),
  );
}

async function compare(bench: Bench): Promise<void> {
  const { work, dark, compare: desk } = bench.state();
  const { files, base, align } = work.compare;
  const read = compareGroups(files).flatMap(({ log }) => {
    const result = desk.reads.get(log);
    return result?.ok ? [{ log, ...result.value }] : [];
  });
  comparer.stop();
  if (read.length === 0 || desk.busy !== null) {
    if (read.length === 0) showCompare(bench, { answer: null, problems: [] });
    return;
  }
  const planned = read.map(({ planned: each }) => each);
  const study = await studied(planned, wareFiles(files), nextKiln(bench.state()));
  if (study === null) return;
  if (!study.ok) {
    showCompare(bench, { answer: null, problems: study.problems });
    return;
  }
  const answer = await comparer.run("compare", {
    parts: read.map(({ part }, at) =>
      at === 0 || at === read.length - 1 ? part : { ...part, zones: [] },
    ),
    study: study.value.study,
    hasTrials: planned.some(({ record }) => (record?.trials.length ?? 0) > 0),
    alignment: alignmentOf(align),
    base: Math.max(
      0,
      read.findIndex(({ log }) => log.name === base),
    ),
    unit: work.unit,
    dark,
  });
  if (answer === null) return;
  if (!answer.ok) {
    showCompare(bench, { answer: null, problems: answer.problems });
    return;
  }
  const said = `${answer.value.title}.`;
  const before = bench.state().compare.answer;
  const { uses } = study.value;
  showCompare(bench, {
    answer: answer.value,
    uses,
    problems: [],
    ...(before === null && { parts: 0 }),
  });
  if (answer.value.title !== before?.title) bench.show((state) => ({ ...state, said }));
  layOut(bench);
}

/** The study as it was last made, and of what. */
let last: {
  readonly planned: readonly PlannedFiring[];
  readonly ware: readonly KeptFile[];
  readonly kiln: KilnAsked | null;
  readonly answer: StudyAnswer;
} | null = null;

/** The study of these firings; the one of before while nothing about it has changed. */
async function studied(
  planned: readonly PlannedFiring[],
  ware: readonly KeptFile[],
  kiln: KilnAsked | null,
): Promise<Result<StudyAnswer> | null> {
  const isSame =
    last !== null && last.kiln === kiln && isLike(last.planned, planned) && isLike(last.ware, ware);
  if (last !== null && isSame) return ok(last.answer);
  const answer = await comparer.run("study", { planned, ware, kiln });
  if (answer?.ok) last = { planned, ware, kiln, answer: answer.value };
  return answer;
}

function isLike<T>(some: readonly T[], others: readonly T[]): boolean {
  return some.length === others.length && some.every((each, at) => each === others[at]);
}

/** Lays the report out part by part, one a frame. */
function layOut(bench: Bench): void {
  const { parts } = bench.state().compare;
  if (parts >= ALL_PARTS) return;
  showCompare(bench, { parts: parts + 1 });
  requestAnimationFrame(() => layOut(bench));
}

function alignmentOf({ at, tempC }: ChosenAlignment): Alignment {
  return at === "peak" || at === "start" ? { at } : { at, tempC };
}
