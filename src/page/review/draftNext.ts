import { html, nothing, type TemplateResult } from "lit-html";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import type { Bench } from "../bench/store.ts";
import type { ReviewAnswer } from "../worker/ReviewAnswer.ts";
import { showReview } from "./changeReview.ts";

/** A button that lays the schedule for the next firing on the Draft table, its kiln beside it. */
export function draftNext(bench: Bench, answer: ReviewAnswer): TemplateResult | typeof nothing {
  const text = answer.nextSchedule;
  if (text === null) return nothing;
  return html`<div class="actions">
    <button type="button" class="chief" @click=${() => draft(bench, text, answer.nextByKiln)}>Draft this next</button>
  </div>
  <p class="hint">Opens the Draft table with that schedule${answer.nextByKiln ? ", for the kiln as these logs show it" : ""}. Undo brings back what lies there now.${answer.nextByOffset ? " It allows for what the witness cones say of this thermocouple; the Draft table judges it without that." : ""}</p>`;
}

function draft(bench: Bench, text: string, byKiln: boolean): void {
  const schedule = parseSchedule(text, "the schedule for next time");
  if (!schedule.ok) {
    showReview(bench, { refused: schedule.problems });
    return;
  }
  const { log, record, earlier } = bench.state().work.review;
  const kilnFiles = byKiln ? [...earlier, log, record].flatMap((file) => file ?? []) : [];
  bench.change("drafting the next firing", (work) => ({
    ...work,
    draft: { ...work.draft, schedule: schedule.value, kilnFiles },
  }));
  bench.show((state) => ({
    ...state,
    table: "draft",
    said: "The next firing lies on the Draft table.",
  }));
  requestAnimationFrame(() => document.getElementById("tab-draft")?.focus());
}
