import type { Problem } from "../../core/problem.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import type { Work } from "../bench/state.ts";
import type { Bench } from "../bench/store.ts";
import type { DraftDesk, DraftWork } from "./draftState.ts";

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
