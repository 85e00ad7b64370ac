import type { Draft } from "../../core/schedule/draftSchedule.ts";
import type { BenchState } from "../bench/state.ts";

/** The whole draft of the schedule as it stands now; null while the slow part is still being worked out. */
export function restedDraft({ draft, work }: BenchState): Draft | null {
  const { full } = draft;
  if (full === null || full.kiln !== draft.kiln) return null;
  const { schedule, start, offset } = work.draft;
  if (full.offset !== offset) return null;
  return full.draft.schedule === schedule && full.draft.start === start ? full.draft : null;
}
