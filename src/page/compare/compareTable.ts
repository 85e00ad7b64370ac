import { html, type TemplateResult } from "lit-html";
import type { Bench } from "../bench/store.ts";

/** The Compare table. */
export function compareTable(_bench: Bench): TemplateResult {
  return html`<h2>Compare</h2>`;
}
