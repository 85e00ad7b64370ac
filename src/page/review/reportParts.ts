import { html, type TemplateResult } from "lit-html";
import { goToPart } from "./goToPart.ts";

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
