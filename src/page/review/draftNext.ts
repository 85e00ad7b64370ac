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
    <button type="button" class="chief" @click=${() => draft(bench, text, answer)}>Draft this next</button>
  </div>
  <p class="hint">Opens the Draft table with that schedule${answer.nextByKiln ? ", for the kiln as these logs show it" : ""}. Undo brings back what lies there now.${answer.nextOffsetK === null ? "" : " What the witness cones say of this thermocouple goes with it."}</p>`;
}

function draft(bench: Bench, text: string, { nextByKiln, nextOffsetK }: ReviewAnswer): void {
  const schedule = parseSchedule(text, "the schedule for next time");
  if (!schedule.ok) {
    showReview(bench, { refused: schedule.problems });
    return;
  }
  const { log, record, earlier } = bench.state().work.review;
  const kilnFiles = nextByKiln ? [...earlier, log, record].flatMap((file) => file ?? []) : [];
  const from = log?.name ?? "the firing";
  const offset = nextOffsetK === null ? null : { offsetK: nextOffsetK, from };
  bench.change("drafting the next firing", (work) => ({
    ...work,
    draft: { ...work.draft, schedule: schedule.value, kilnFiles, offset },
  }));
  bench.show((state) => ({
    ...state,
    table: "draft",
    said: "The next firing lies on the Draft table.",
  }));
  requestAnimationFrame(() => document.getElementById("tab-draft")?.focus());
}
