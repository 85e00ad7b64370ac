import { html, nothing, type TemplateResult } from "lit-html";
import { parseCone } from "../../core/cones/cone.ts";
import { REFERENCE_KILN } from "../../core/kiln/LearnedKiln.ts";
import { asAssumedKiln } from "../../core/kiln/reach.ts";
import { ok } from "../../core/problem.ts";
import { mendingBlocks } from "../../core/reports/mendingBlocks.ts";
import type { Repair } from "../../core/schedule/repairSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { scheduleYaml } from "../../core/schedule/scheduleFile.ts";
import type { Solvable } from "../../core/schedule/solveSchedule.ts";
import { blockList } from "../parts/blockList.ts";
import { dialog, quantityField } from "../parts/controls.ts";
import type { Bench } from "../state/state.ts";
import type { KilnAsked } from "../worker/answers.ts";
import { hire } from "../worker/hire.ts";
import { changeSchedule, deskDraft, draftProblems, kilnAsked, laySchedule } from "./changeDraft.ts";

const SOLVES: readonly { readonly solve: Solvable; readonly label: string }[] = [
  { solve: "peak", label: "Find the peak" },
  { solve: "hold", label: "Find the hold" },
  { solve: "rate", label: "Find the last rate" },
];

/** Where changes that take a while are worked out. */
const LANE = hire();

/** The cone wanted, and what the page can change so that it goes down and nothing is left to object to. */
export function changePanel(bench: Bench, schedule: Schedule): TemplateResult {
  const { busy, offer } = bench.state().draft;
  return html`<section class="panel" aria-labelledby="change-title"><h3 id="change-title">Cone wanted</h3>
    <div class="fields">${quantityField<string | null>({
      id: "cone",
      label: "Cone",
      value: schedule.cone ?? "",
      placeholder: "none",
      parse: (text) =>
        text.trim() === ""
          ? ok(null)
          : parseCone(text, { series: schedule.series, where: "the cone" }),
      onValue: (cone) =>
        changeSchedule(bench, { ...schedule, cone }, { what: "changing the cone" }),
    })}</div>
    <div class="actions">
      ${SOLVES.map(
        ({ solve, label }) =>
          html`<button type="button" ?disabled=${schedule.cone === null || busy !== null} @click=${() => offerSolved(bench, schedule, { solve, label })}>${label}</button>`,
      )}
      <button type="button" ?disabled=${busy !== null} @click=${() => offerMended(bench, schedule)}>Mend every finding</button>
    </div>
    <p class="hint">${schedule.cone === null ? "Name the cone first; mending needs none." : `One thing is changed so that cone ${schedule.cone} falls by the end of the top hold. You see the change before you take it.`}</p>
    ${busy === null ? nothing : html`<p role="status">${busy}… <button type="button" @click=${() => stop(bench)}>Stop</button></p>`}
    ${offer === null ? nothing : offerSheet(bench, offer)}
  </section>`;
}

async function offerSolved(
  bench: Bench,
  schedule: Schedule,
  { solve, label }: { readonly solve: Solvable; readonly label: string },
): Promise<void> {
  const { cone } = schedule;
  if (cone === null) return;
  deskDraft(bench, { busy: `Looking for the ${solve}`, problems: [] });
  const kiln = kilnNow(bench);
  const solved = await LANE.run("solve", { schedule, cone, solve, kiln });
  if (solved === null) return;
  if (!solved.ok) draftProblems(bench, solved.problems);
  else offerChange(bench, schedule, { title: label, after: solved.value, repair: null });
}

function kilnNow(bench: Bench): KilnAsked {
  const { draft, work } = bench.state();
  return kilnAsked(draft.kiln, work.draft.offset);
}

async function offerMended(bench: Bench, schedule: Schedule): Promise<void> {
  deskDraft(bench, { busy: "Mending", problems: [] });
  const mended = await LANE.run("repair", { schedule, kiln: kilnNow(bench) });
  if (mended === null) return;
  if (!mended.ok) draftProblems(bench, mended.problems);
  else {
    const repair = mended.value;
    offerChange(bench, schedule, { title: "Mend every finding", after: repair.after, repair });
  }
}

function offerChange(
  bench: Bench,
  before: Schedule,
  {
    title,
    after,
    repair,
  }: { readonly title: string; readonly after: Schedule; readonly repair: Repair | null },
): void {
  const learned = bench.state().draft.kiln?.learned;
  const kiln = learned === undefined ? REFERENCE_KILN : asAssumedKiln(learned);
  deskDraft(bench, { busy: null, offer: { title, mending: { before, after, repair, kiln } } });
}

function stop(bench: Bench): void {
  LANE.stop();
  deskDraft(bench, { busy: null });
}

function offerSheet(
  bench: Bench,
  { title, mending }: NonNullable<ReturnType<Bench["state"]>["draft"]["offer"]>,
): TemplateResult {
  const take = {
    label: "Take this change",
    act: () => laySchedule(bench, title.toLowerCase(), mending.after),
  };
  return dialog({
    id: "offer",
    title,
    body: blockList(mendingBlocks(mending, bench.state().work.unit), "offer-part"),
    leave: "Cancel",
    onLeave: () => deskDraft(bench, { offer: null }),
    actions: scheduleYaml(mending.before) === scheduleYaml(mending.after) ? [] : [take],
  });
}
