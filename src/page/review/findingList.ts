import { html, nothing, type TemplateResult } from "lit-html";
import type { Block } from "../../core/reports/Block.ts";
import type { Bench } from "../bench/store.ts";
import { finding } from "../parts/blockList.ts";
import type { FindingPlace } from "../worker/ReviewAnswer.ts";
import { findingId, goToMark, markFinding, showMarkedChart } from "./markFinding.ts";

type FindingBlock = Extract<Block, { readonly kind: "finding" }>;

/** The findings, numbered as in the charts; one that holds at a time marks itself there. */
export function findingList(
  bench: Bench,
  blocks: readonly FindingBlock[],
  places: readonly FindingPlace[],
): TemplateResult {
  const { marked } = bench.state().review;
  return html`<ol class="findings">${blocks.map((block, at) => {
    const place = places[at];
    const isMarked = marked === at;
    const canMark = place !== undefined && place.hours !== null;
    const mark = (event: UIEvent) => {
      markFinding(bench, isMarked ? null : at);
      if (isMarked) return;
      if (event.detail === 0) goToMark(at);
      else showMarkedChart();
    };
    return html`<li id=${findingId(at)} class=${isMarked ? "is-marked" : ""} @click=${(event: UIEvent) => canMark && isPlainClick(event) && mark(event)}>
      ${finding(block)}
      ${canMark ? html`<button type="button" class="slim" aria-pressed=${isMarked} @click=${mark}>${isMarked ? "Take the mark away" : "Mark in the charts"}<span class="out-of-sight">: finding ${at + 1}</span></button>` : nothing}
    </li>`;
  })}</ol>`;
}

/** Not a click on a button of the finding, and not the end of marking its words. */
function isPlainClick(event: Event): boolean {
  return !(event.target as Element).closest("button") && String(getSelection() ?? "") === "";
}
