import { html, nothing, render, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import { ref } from "lit-html/directives/ref.js";
import { unsafeHTML } from "lit-html/directives/unsafe-html.js";
import type { TopLevelSpec } from "vega-lite";
import { chartRead } from "../drawing/ChartRead.ts";
import { drawnChart } from "../drawing/drawnChart.ts";
import { chartCurves } from "./chartCurves.ts";
import { chartTable } from "./chartTable.ts";
import { overDrawing } from "./overDrawing.ts";
import { type ReadOptions, readByKey, readByPointer } from "./readChart.ts";

/** A chart for paper and light screens, and for dark ones where the screen is dark. */
export interface ChartSpecs {
  readonly light: TopLevelSpec;
  readonly dark: TopLevelSpec | null;
  /** What lies over the drawing and along its axis, what stands below, and how it bears on reading the chart. */
  readonly marks?: {
    readonly on: unknown;
    readonly below: unknown;
    readonly reading: Omit<ReadOptions, "spec">;
  };
}

let drawings = 0;

/**
 * A chart with its description, and its numbers as a table behind it. Its curves are read with the
 * arrow keys, or where the pointer is.
 * Hand in the same specs again as long as they mean the same: new ones are drawn anew.
 */
export function chart({ light, dark, marks }: ChartSpecs, description: string): TemplateResult {
  const drawn = html`<div class="paper-drawing ${dark === null ? "" : "has-dark"}">${drawing(light)}</div>
    ${dark === null ? null : html`<div class="dark-drawing">${drawing(dark)}</div>`}`;
  const read = { spec: light, ...(marks?.reading ?? { from: null, leave: null }) };
  return html`<figure class="chart">
    <div class="stage">${canRead(light) ? reader(drawn, read, description) : plain(drawn, description)}${marks?.on}</div>
    ${canRead(light) ? html`<p class="chart-reading" aria-live="polite"></p>` : nothing}
    ${marks?.below}
    <figcaption>${description}</figcaption>
    ${asTable(light, description)}
  </figure>`;
}

/** The numbers of a chart, laid out once somebody wants to see them. */
function asTable(light: TopLevelSpec, description: string): TemplateResult {
  const fill = (place: Element | null | undefined) => {
    if (place?.closest("details")?.open)
      render(chartTable(light, description), place as HTMLElement);
  };
  return html`<details class="as-table" @toggle=${({ currentTarget }: Event) => fill((currentTarget as Element).lastElementChild)}>
    <summary>As a table</summary><div ${ref(fill)}></div></details>`;
}

function canRead(spec: TopLevelSpec): boolean {
  return chartCurves(spec).length > 0;
}

function plain(drawn: TemplateResult, description: string): TemplateResult {
  return html`<div role="group" tabindex="0" aria-label=${description}>${drawn}</div>`;
}

/** The drawing with a cursor over it; screens are read in another mode here, so that arrows come through. */
function reader(drawn: TemplateResult, read: ReadOptions, description: string): TemplateResult {
  const { height } = chartRead(read.spec);
  return html`<div class="chart-reader" role="application" aria-roledescription="chart to read" tabindex="0"
      aria-label=${`${description}. Left and right read along the curve, up and down change to another, Home and End go to its ends.`}
      @keydown=${(event: KeyboardEvent) => readByKey(event, read)}
      @pointermove=${(event: PointerEvent) => readByPointer(event, read.spec)}
      @pointerdown=${(event: PointerEvent) => readByPointer(event, read.spec)}>
    ${drawn}
    <svg class="reading-cursor" aria-hidden="true" ${ref((element) => overDrawing(element))}><g><g><line y1="0" y2=${height}></line><circle r="5"></circle></g></g></svg>
  </div>`;
}

/** A drawing of our own making, every word in it escaped. */
function drawing(spec: TopLevelSpec): unknown {
  return guard([spec], () => {
    drawings += 1;
    return unsafeHTML(drawnChart(spec, `drawing-${drawings}`));
  });
}
