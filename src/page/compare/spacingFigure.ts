import { html, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import type { TopLevelSpec } from "vega-lite";
import { chartRead, type LayerRead } from "../drawing/ChartRead.ts";
import type { ChartSpecs } from "../parts/chart.ts";
import { chartTable } from "../parts/chartTable.ts";
import { drawnPair } from "./drawnPair.ts";

/** Crack spacing against coat; the table behind it gives its lines in millimetres, not as logarithms. */
export function spacingFigure(specs: ChartSpecs, description: string): TemplateResult {
  return html`<figure class="chart">
    <div class="stage" role="group" tabindex="0" aria-label=${description}>${drawnPair(specs)}</div>
    <figcaption>${description}</figcaption>
    <details class="as-table"><summary>As a table</summary>
      <p class="hint">The lines of the chart; its points are the tiles below.</p>
      ${guard([specs.light], () => chartTable(inMillimetres(specs.light), description))}
    </details>
  </figure>`;
}

/** The same chart with its lines placed by amounts. */
function inMillimetres(spec: TopLevelSpec): TopLevelSpec {
  const { layer, ...whole } = chartRead(spec);
  return { ...whole, layer: layer.map(lineInMillimetres) } as unknown as TopLevelSpec;
}

function lineInMillimetres(layer: LayerRead): LayerRead {
  if (layer.mark.type !== "line" || !layer.mark.clip) return layer;
  const { x, y } = layer.encoding;
  const values = layer.data.values.map((row) => ({
    ...row,
    firedCoatInMm: 10 ** Number(row[x.field]),
    crackSpacingInMm: 10 ** Number(row[y.field]),
  }));
  const encoding = {
    ...layer.encoding,
    x: { ...x, field: "firedCoatInMm" },
    y: { ...y, field: "crackSpacingInMm" },
  };
  return { ...layer, data: { values }, encoding };
}
