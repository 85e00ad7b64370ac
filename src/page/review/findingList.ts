import { html, nothing, type TemplateResult } from "lit-html";
import type { Block } from "../../core/reports/Block.ts";
import { finding } from "../parts/blockList.ts";
import type { Bench } from "../state/state.ts";
import type { FindingPlace } from "../worker/answers.ts";
import { showReview } from "./changeReview.ts";

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

/** Id of a finding in the list. */
function findingId(finding: number): string {
  return `finding-${finding + 1}`;
}

/** Marks a finding in the charts, or takes the mark away again. */
export function markFinding(bench: Bench, finding: number | null): void {
  showReview(bench, { marked: finding });
}

/** Brings a finding before the reader, the keyboard with it. */
export function goToFinding(finding: number): void {
  const item = document.getElementById(findingId(finding));
  item?.scrollIntoView({ block: "center" });
  item?.querySelector<HTMLElement>("button")?.focus({ preventScroll: true });
}

/** Brings the mark of a finding before the reader, the keyboard with it: Escape leads back. */
function goToMark(finding: number): void {
  requestAnimationFrame(() => {
    const mark = document.querySelector<SVGGElement>(
      `#review-report .mark[data-finding="${finding}"]`,
    );
    mark?.focus();
  });
}

/** Brings the chart that shows the marks before the reader, when it is out of sight. */
function showMarkedChart(): void {
  requestAnimationFrame(() => {
    document.querySelector("#review-report figure.chart")?.scrollIntoView({ block: "nearest" });
  });
}

/** Goes to a place of the page by its id, opened where it is closed, with the keyboard in its first field. */
export function goToPart(event: Event, id: string): void {
  event.preventDefault();
  const place = document.getElementById(id);
  for (let each = place; each !== null; each = each.parentElement)
    if (each instanceof HTMLDetailsElement) each.open = true;
  place?.scrollIntoView({ block: place.tagName === "H3" ? "start" : "center" });
  const field =
    place instanceof HTMLInputElement ? place : place?.querySelector<HTMLElement>("input, summary");
  (field ?? place)?.focus({ preventScroll: true });
}

/** The way to the parts that a long report is looked through for. */
export function reportParts(headings: readonly (string | null)[]): TemplateResult {
  const links = LINKS.filter(({ heading }) => heading === null || headings.includes(heading));
  return html`<nav class="report-parts" aria-label="In this report">
    ${links.map(
      ({ id, words }) =>
        html`<a href=${`#${id}`} @click=${(event: Event) => goToPart(event, id)}>${words}</a>`,
    )}
  </nav>`;
}

/** Ids of headings are those that `blockList` gives; null where the page adds the part itself. */
const LINKS = [
  { words: "Findings", heading: "Findings", id: "review-findings-1" },
  { words: "Ask the pieces", heading: null, id: "questions-title" },
  {
    words: "What to change next time",
    heading: "What to change next time",
    id: "review-what-to-change-next-time-1",
  },
  {
    words: "How the log was read",
    heading: "How the log was read",
    id: "review-how-the-log-was-read-1",
  },
  { words: "The record", heading: null, id: "record" },
] as const;
