import { html, nothing, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import { unsafeHTML } from "lit-html/directives/unsafe-html.js";
import type { TopLevelSpec } from "vega-lite";
import { drawnChart } from "../drawing/drawnChart.ts";
import type { ChartSpecs } from "../parts/chart.ts";

let drawings = 0;

/** A chart drawn for paper and light screens, and for dark ones where the screen is dark. */
export function drawnPair({ light, dark }: ChartSpecs): TemplateResult {
  return html`<div class="paper-drawing ${dark === null ? "" : "has-dark"}">${drawing(light)}</div>
    ${dark === null ? nothing : html`<div class="dark-drawing">${drawing(dark)}</div>`}`;
}

/** A drawing of our own making, every word in it escaped. */
function drawing(spec: TopLevelSpec): unknown {
  return guard([spec], () => {
    drawings += 1;
    return unsafeHTML(drawnChart(spec, `compared-${drawings}`));
  });
}
