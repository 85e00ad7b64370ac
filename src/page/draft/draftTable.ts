import { html, type TemplateResult } from "lit-html";
import { inert } from "../../core/reports/inert.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import type { Bench } from "../bench/store.ts";
import { problemList } from "../parts/problemList.ts";
import { still } from "../parts/still.ts";
import { answerPanel } from "./answerPanel.ts";
import { changeDraft, changeSchedule } from "./changeDraft.ts";
import { changePanel } from "./changePanel.ts";
import { clockPanel } from "./clockPanel.ts";
import { curveEditor } from "./curveEditor.ts";
import { draftReport } from "./draftReport.ts";
import { kilnAsked } from "./kilnAsked.ts";
import { kilnCard } from "./kilnCard.ts";
import { kilnPanel } from "./kilnPanel.ts";
import { lightDraft } from "./lightDraft.ts";
import { savePanel } from "./savePanel.ts";
import { segmentTable } from "./segmentTable.ts";
import { startView } from "./startView.ts";
import { warePanel } from "./warePanel.ts";

/** The Draft table: a schedule to change by typing or by dragging, and what it does at once. */
export function draftTable(bench: Bench): TemplateResult {
  const { schedule } = bench.state().work.draft;
  return schedule === null ? startView(bench) : scheduleView(bench, schedule);
}

function scheduleView(bench: Bench, schedule: Schedule): TemplateResult {
  const state = bench.state();
  const { unit, draft } = state.work;
  const light = lightDraft(schedule, draft.start, kilnAsked(state.draft.kiln, draft.offset));
  return html`<div class="draft">
    <div class="draft-title">${title(bench, schedule)}</div>
    <div class="draft-problems">${problemList(state.draft.problems)}</div>
    <div class="draft-sheet">
      ${curveEditor(bench, { draft: light.draft, unit })}
      ${segmentTable(bench, light.draft, unit)}
    </div>
    <div class="draft-answer">
      ${still(answerPanel(light, unit))}
    </div>
    <div class="draft-panels">
      ${changePanel(bench, schedule)}
      ${warePanel(bench, schedule)}
      ${kilnPanel(bench)}
      ${clockPanel(bench, light.draft)}
      ${savePanel(bench, schedule)}
    </div>
    <details class="draft-report" ?open=${!state.narrow}><summary>The whole report</summary>${draftReport(state)}</details>
  </div>${still(kilnCard(light.draft, unit, state.draft.kiln))}`;
}

function title(bench: Bench, schedule: Schedule): TemplateResult {
  return html`<h2 class="out-of-sight">${inert(schedule.title)}</h2>
    <label class="out-of-sight" for="title">Title</label>
    <textarea id="title" class="title-field" rows="1" maxlength="200" .value=${inert(schedule.title)}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key !== "Enter") return;
        event.preventDefault();
        (event.target as HTMLTextAreaElement).blur();
      }}
      @change=${(event: Event) => {
        const text = (event.target as HTMLTextAreaElement).value.replaceAll(/\s+/g, " ").trim();
        if (text !== "")
          changeSchedule(bench, { ...schedule, title: text }, { what: "changing the title" });
      }}></textarea>
    <button type="button" @click=${() => changeDraft(bench, "clearing the Draft table", { schedule: null })}>Take it off the table</button>`;
}
