import { html, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import { unsafeHTML } from "lit-html/directives/unsafe-html.js";
import type { TopLevelSpec } from "vega-lite";
import { drawnChart } from "../drawing/drawnChart.ts";
import { chartTable } from "./chartTable.ts";

/** A chart for paper and light screens, and for dark ones where the screen is dark. */
export interface ChartSpecs {
  readonly light: TopLevelSpec;
  readonly dark: TopLevelSpec | null;
  /** What lies over the drawing and along its axis, and what stands below. */
  readonly marks?: { readonly on: unknown; readonly below: unknown };
}

let drawings = 0;

/**
 * A chart with its description, and its numbers as a table behind it.
 * Hand in the same specs again as long as they mean the same: new ones are drawn anew.
 */
export function chart({ light, dark, marks }: ChartSpecs, description: string): TemplateResult {
  return html`<figure class="chart">
    <div class="stage" role="group" tabindex="0" aria-label=${description}>
    <div class="paper-drawing ${dark === null ? "" : "has-dark"}">${drawing(light)}</div>
    ${dark === null ? null : html`<div class="dark-drawing">${drawing(dark)}</div>`}
    ${marks?.on}
    </div>
    ${marks?.below}
    <figcaption>${description}</figcaption>
    <details class="as-table"><summary>As a table</summary>${guard([light], () => chartTable(light, description))}</details>
  </figure>`;
}

/** A drawing of our own making, every word in it escaped. */
function drawing(spec: TopLevelSpec): unknown {
  return guard([spec], () => {
    drawings += 1;
    return unsafeHTML(drawnChart(spec, `drawing-${drawings}`));
  });
}
