import { html, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import type { TopLevelSpec } from "vega-lite";
import { inert } from "../../core/text/escape.ts";
import type { ChartSpecs } from "../parts/chart.ts";
import { chartTable } from "../parts/chartTable.ts";
import { remembered } from "../parts/controls.ts";
import { drawnPair } from "./drawnPair.ts";

/** A chart made of small ones, as far as it is taken apart. */
interface SmallCharts {
  readonly title: { readonly subtitle?: string };
  readonly concat: readonly { readonly title: { readonly text: string | readonly string[] } }[];
}

/** Small charts beside each other, as many in a row as there is room for, with their numbers behind them. */
export function firingPanels({ light, dark }: ChartSpecs, description: string): TemplateResult {
  const panels = panelsOf(light, dark);
  const { subtitle = "" } = (light as unknown as SmallCharts).title;
  return html`<figure class="chart">
    <p class="hint">${subtitle}.</p>
    <div class="panels" role="group" aria-label=${description}>${panels.map(
      ({ title, specs }) => html`<div class="panel-chart">
        <p class="panel-title">${title}</p>
        <div>${drawnPair(specs)}</div>
      </div>`,
    )}</div>
    <figcaption>${description}</figcaption>
    <details class="as-table"><summary>As a table</summary>${guard([light], () =>
      panels.map(({ title, specs }) => chartTable(specs.light, title)),
    )}</details>
  </figure>`;
}

interface Panel {
  readonly title: string;
  readonly specs: ChartSpecs;
}

const panelsOf = remembered((light: TopLevelSpec, dark: TopLevelSpec | null): readonly Panel[] => {
  const nights = dark === null ? [] : apart(dark);
  return apart(light).map(({ title, spec }, at) => ({
    title,
    specs: { light: spec, dark: nights[at]?.spec ?? null },
  }));
});

/** Each small chart as one by itself, in the look of the whole; its title stands over it. */
function apart(
  spec: TopLevelSpec,
): readonly { readonly title: string; readonly spec: TopLevelSpec }[] {
  const { concat, ...whole } = spec as unknown as SmallCharts;
  return concat.map((panel) => {
    const title = inert([panel.title.text].flat().join(" "));
    const alone = { ...whole, ...panel, description: title, title: { text: "" } };
    return { title, spec: alone as unknown as TopLevelSpec };
  });
}
