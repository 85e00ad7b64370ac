import { html, type TemplateResult } from "lit-html";
import type { ChartSpecs } from "../parts/chart.ts";
import { drawnPair } from "./drawnPair.ts";

/** How glazes fit their clays as ranges beside each other; the numbers stand in the table above it. */
export function fitsFigure(specs: ChartSpecs, description: string): TemplateResult {
  return html`<figure class="chart">
    <div class="stage" role="group" tabindex="0" aria-label=${description}>${drawnPair(specs)}</div>
    <figcaption>${description}</figcaption>
  </figure>`;
}
