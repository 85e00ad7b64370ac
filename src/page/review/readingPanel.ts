import { html, nothing, type TemplateResult } from "lit-html";
import type { Decision } from "../../core/log/LogReading.ts";
import { inert } from "../../core/reports/inert.ts";
import type { Bench } from "../bench/store.ts";
import { logOptions, rememberTold, tellOfLog } from "./changeReview.ts";
import { decisionControls } from "./logControls.ts";
import { NOTHING_TOLD } from "./reviewState.ts";

const CONFIDENCE: Readonly<Record<Decision["confidence"], string>> = {
  told: "as you said",
  certain: "certain",
  likely: "likely",
  guessed: "a guess",
};

/** What was decided about the log, each with its reason, and a control to decide otherwise. */
export function readingPanel(bench: Bench, decisions: readonly Decision[]): TemplateResult {
  return html`<ul class="decisions">${decisions.map((each) => decisionItem(bench, each))}</ul>
    ${toldActions(bench)}`;
}

function decisionItem(bench: Bench, decision: Decision): TemplateResult {
  const { about, choice, confidence, because, runnerUp } = decision;
  return html`<li class="decision is-${confidence}">
    <div>
      <p><span class="decision-about">${about}</span> <strong>${inert(choice)}</strong> <span class="sureness">${CONFIDENCE[confidence]}</span></p>
      <p class="hint">${inert(because)}${runnerUp === null ? nothing : html`; next best: ${inert(runnerUp)}`}</p>
    </div>
    <div class="decision-controls">${decisionControls(bench, decision)}</div>
  </li>`;
}

/** What is done with what a person said: into the record, or forgotten. */
export function toldActions(bench: Bench): TemplateResult | typeof nothing {
  const { told } = bench.state().work.review;
  if (Object.keys(logOptions(told)).length === 0) return nothing;
  return html`<div class="actions">
    <button type="button" class="chief" @click=${() => rememberTold(bench)}>Remember this in the record</button>
    <button type="button" @click=${() => tellOfLog(bench, "reading the log as it says itself", NOTHING_TOLD)}>Read it as it says itself</button>
  </div>`;
}
