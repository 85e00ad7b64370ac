import { followedUnit } from "../bench/followedUnit.ts";
import type { BenchState } from "../bench/state.ts";
import type { Bench } from "../bench/store.ts";
import { hire } from "../worker/hire.ts";
import type { ReviewAnswer } from "../worker/ReviewAnswer.ts";
import { logOptions, showReview } from "./changeReview.ts";
import { columnsOf } from "./columnsOf.ts";

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
