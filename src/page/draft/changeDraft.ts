import type { Problem } from "../../core/problem.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { remembered } from "../parts/controls.ts";
import type { DeskKiln, DraftDesk, DraftWork } from "../state/draftState.ts";
import type { Bench, BenchState, Work } from "../state/state.ts";
import type { KilnAsked } from "../worker/answers.ts";
import { hire } from "../worker/hire.ts";

/** Changes what lies on the Draft table, as a step that can be undone. */
export function changeDraft(bench: Bench, what: string, change: Partial<DraftWork>): void {
  bench.change(what, (work) => ({ ...work, draft: { ...work.draft, ...change } }));
}

/** Changes the schedule on the table; changes in a row with one `merge` are one step to undo. */
export function changeSchedule(
  bench: Bench,
  schedule: Schedule,
  { what, merge }: { readonly what: string; readonly merge?: string },
): void {
  const change = (work: Work): Work => ({ ...work, draft: { ...work.draft, schedule } });
  bench.change(what, change, merge === undefined ? {} : { merge });
}

/** Puts another schedule on the table; what was offered or wrong about the one before is gone. */
export function laySchedule(bench: Bench, what: string, schedule: Schedule): void {
  changeDraft(bench, what, { schedule });
  deskDraft(bench, { problems: [], offer: null, busy: null });
}

/** Sets what is worked out beside the table. */
export function deskDraft(bench: Bench, change: Partial<DraftDesk>): void {
  bench.show((state) => ({ ...state, draft: { ...state.draft, ...change } }));
}

/** Shows problems on the Draft table. */
export function draftProblems(bench: Bench, problems: readonly Problem[]): void {
  deskDraft(bench, { problems, busy: null });
}

/** The kiln that schedules on the Draft table are laid out for, as a worker is told it. */
export const kilnAsked = remembered(
  (kiln: DeskKiln | null, offset: DraftWork["offset"]): KilnAsked => {
    const learned = kiln?.learned ?? null;
    const past = kiln?.offset ?? null;
    if (offset !== null || past === null) return { learned, offsetK: offset?.offsetK ?? null };
    return { learned, offsetK: past.offsetK, offsetSigmaK: past.sigmaK };
  },
);

/** The whole draft of the schedule as it stands now; null while the slow part is still being worked out. */
export function restedDraft({ draft, work }: BenchState): Draft | null {
  const { full } = draft;
  if (full === null || full.kiln !== draft.kiln) return null;
  const { schedule, start, offset } = work.draft;
  if (full.offset !== offset) return null;
  return full.draft.schedule === schedule && full.draft.start === start ? full.draft : null;
}

/** How long a schedule has to rest before the slow part is worked out [ms]. */
const REST_MS = 250;

/** Keeps what is worked out beside the Draft table in step with what lies on it. */
export function watchDraft(bench: Bench): void {
  watchSchedule(bench);
  watchKiln(bench);
  watchEmpty(bench);
}

/** A schedule on an empty table is seen from its head, however far down the page it was picked. */
function watchEmpty(bench: Bench): void {
  bench.listen((before) => {
    if (before.work.draft.schedule === null && bench.state().work.draft.schedule !== null)
      requestAnimationFrame(() => scrollTo({ top: 0 }));
  });
}

/** The stress with its spread, worked out when the schedule rests. */
function watchSchedule(bench: Bench): void {
  const lane = hire();
  let timer = 0;
  bench.listen((before) => {
    if (!needsDraft(before, bench.state())) return;
    lane.stop();
    clearTimeout(timer);
    const { schedule, start, offset } = bench.state().work.draft;
    if (schedule === null) return;
    timer = window.setTimeout(async () => {
      const { kiln } = bench.state().draft;
      const draft = await lane.run("draft", {
        schedule,
        start,
        kiln: kilnAsked(kiln, offset),
      });
      if (draft === null) return;
      if (draft.ok)
        deskDraft(bench, { full: { draft: { ...draft.value, schedule }, kiln, offset } });
      else deskDraft(bench, { problems: draft.problems });
    }, REST_MS);
  });
}

function needsDraft(before: BenchState, now: BenchState): boolean {
  return (
    before.work.draft.schedule !== now.work.draft.schedule ||
    before.work.draft.start !== now.work.draft.start ||
    before.work.draft.offset !== now.work.draft.offset ||
    before.draft.kiln !== now.draft.kiln
  );
}

/** The kiln, learned anew when its logs or its plate change. */
function watchKiln(bench: Bench): void {
  const lane = hire();
  bench.listen(async (before) => {
    const was = before.work.draft;
    const is = bench.state().work.draft;
    const same =
      was.kilnFiles === is.kilnFiles &&
      was.powerWatt === is.powerWatt &&
      was.tariffPerKWh === is.tariffPerKWh;
    if (same) return;
    lane.stop();
    if (is.kilnFiles.length === 0) {
      deskDraft(bench, { kiln: null, kilnBusy: null, kilnProblems: [] });
      return;
    }
    deskDraft(bench, { kilnBusy: "learning the kiln", kilnProblems: [] });
    const { kilnFiles: files, powerWatt, tariffPerKWh } = is;
    const learned = await lane.run("learn", { files, powerWatt, tariffPerKWh }, (_, at) =>
      deskDraft(bench, { kilnBusy: at }),
    );
    if (learned === null) return;
    if (learned.ok) deskDraft(bench, { kiln: learned.value, kilnBusy: null });
    else deskDraft(bench, { kiln: null, kilnBusy: null, kilnProblems: learned.problems });
  });
}
