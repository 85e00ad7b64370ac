import type { BenchState } from "../bench/state.ts";
import type { Bench } from "../bench/store.ts";
import { hire } from "../worker/hire.ts";
import { deskDraft } from "./changeDraft.ts";
import { kilnAsked } from "./kilnAsked.ts";

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
