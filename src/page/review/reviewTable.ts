import { html, nothing, type TemplateResult } from "lit-html";
import type { Bench } from "../bench/store.ts";
import { problemList } from "../parts/problemList.ts";
import { changeReview } from "./changeReview.ts";
import { earlierPanel, filesPanel } from "./filesPanel.ts";
import { problemControls } from "./logControls.ts";
import { toldActions } from "./readingPanel.ts";
import { recordForm } from "./recordForm.ts";
import { reviewReport } from "./reviewReport.ts";
import { EMPTY_REVIEW } from "./reviewState.ts";
import { readFiring, stopReading } from "./watchReview.ts";

/** The Review table: a firing that happened, its log, its record, and what they say. */
export function reviewTable(bench: Bench): TemplateResult {
  const { review, work } = bench.state();
  const { answer, problems, refused, isStopped } = review;
  const hasLog = work.review.log !== null;
  return html`<h2 class=${hasLog ? "out-of-sight" : ""}>Review</h2>
    ${filesPanel(bench)}
    ${problemList(refused)}
    ${progress(bench)}
    ${isStopped ? html`<p>The reading was stopped. <button type="button" @click=${() => readFiring(bench)}>Read it after all</button></p>` : nothing}
    ${problems.length === 0 ? nothing : asked(bench)}
    ${answer === null ? nothing : reviewReport(bench, answer)}
    ${hasLog && answer === null && problems.length > 0 ? recordForm(bench) : nothing}
    ${hasLog ? earlierPanel(bench) : nothing}
    ${hasLog ? html`<div class="actions"><button type="button" class="grave" @click=${() => changeReview(bench, "clearing the Review table", EMPTY_REVIEW.work)}>Clear this table</button></div>` : nothing}`;
}

/** How far the reading is, with a way to stop it. */
function progress(bench: Bench): TemplateResult {
  const { busy } = bench.state().review;
  return html`<div class="reading-progress" role="status">${
    busy === null
      ? nothing
      : html`<label>${busy.at} <progress max="1" .value=${busy.fraction}></progress></label>
        <button type="button" @click=${() => stopReading(bench)}>Cancel</button>`
  }</div>`;
}

/** What the reader asks, in its own words, with the answers to choose from. */
function asked(bench: Bench): TemplateResult {
  return html`<section aria-label="What the log leaves open">
    ${problemList(bench.state().review.problems)}
    ${problemControls(bench, bench.state().review.problems)}
    ${toldActions(bench)}
  </section>`;
}
