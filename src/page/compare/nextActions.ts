import { html, nothing, type TemplateResult } from "lit-html";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import type { Bench } from "../bench/store.ts";
import { download, fileStem } from "../parts/download.ts";
import type { CompareAnswer } from "../worker/CompareAnswer.ts";
import { changeCompare, showCompare } from "./changeCompare.ts";

/** What can be done with the schedule of the next test: draft it, or take it away as a file. */
export function nextActions(
  bench: Bench,
  { nextSchedule }: CompareAnswer,
): TemplateResult | typeof nothing {
  if (nextSchedule === null) return nothing;
  return html`${kilnChoice(bench)}<div class="actions">
    <button type="button" class="chief" @click=${() => draft(bench, nextSchedule)}>Draft this next</button>
    <button type="button" @click=${() => save(nextSchedule)}>Save its schedule (.yaml)</button>
  </div>
  <p class="hint next-hint">Opens the Draft table with that schedule. Undo brings back what lies there now.</p>`;
}

/** Whether the next test is fitted to the kiln that the Draft table was taught. */
function kilnChoice(bench: Bench): TemplateResult {
  const { work, draft: desk } = bench.state();
  if (desk.kiln === null)
    return html`<p class="hint next-kiln">To have this test fitted to your own kiln, lay logs of it on the Draft table, under “Kiln”.</p>`;
  const { onKiln } = work.compare;
  return html`<p class="next-kiln"><label class="tick"><input type="checkbox" .checked=${onKiln}
    @change=${() => changeCompare(bench, onKiln ? "the next test for any kiln" : "fitting the next test to your kiln", { onKiln: !onKiln })}>
    <span>Fit it to the kiln that the Draft table was taught</span></label></p>`;
}

function draft(bench: Bench, text: string): void {
  const schedule = parseSchedule(text, "the schedule of the next test");
  if (!schedule.ok) {
    showCompare(bench, { refused: schedule.problems });
    return;
  }
  bench.change("drafting the next test", (work) => ({
    ...work,
    draft: { ...work.draft, schedule: schedule.value },
  }));
  bench.show((state) => ({
    ...state,
    table: "draft",
    said: "The next test lies on the Draft table.",
  }));
  requestAnimationFrame(() => document.getElementById("tab-draft")?.focus());
}

function save(text: string): void {
  const schedule = parseSchedule(text, "the schedule of the next test");
  const stem = fileStem(schedule.ok ? schedule.value.title : "next test");
  download(`${stem}.yaml`, text, "application/yaml");
}
