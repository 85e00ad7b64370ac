import type { Bench } from "../bench/store.ts";
import { NOTHING_TOLD } from "../review/reviewState.ts";
import type { FiringGroup } from "../worker/readGroup.ts";

/** Lays a firing on the Review table, where its reading can be told and its record written. */
export function reviewFiringAgain(bench: Bench, { log, record, others }: FiringGroup): void {
  const { review } = bench.state().work;
  const lies = review.log === log && review.record === record;
  if (!lies)
    bench.change(`reviewing ${log.name}`, (work) => ({
      ...work,
      review: { ...work.review, log, record, schedule: scheduleOf(others), told: NOTHING_TOLD },
    }));
  bench.show((state) => ({
    ...state,
    table: "review",
    said: `${log.name} lies on the Review table.`,
  }));
  requestAnimationFrame(() => document.getElementById("tab-review")?.focus());
}

/** The schedule that was dropped, when it is the only one. */
function scheduleOf(others: FiringGroup["others"]): FiringGroup["others"][number] | null {
  return others.length === 1 ? (others[0] ?? null) : null;
}
