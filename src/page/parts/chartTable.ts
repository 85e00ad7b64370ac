import { html, type TemplateResult } from "lit-html";
import type { TopLevelSpec } from "vega-lite";
import { type ChartCurve, chartCurves } from "./chartCurves.ts";

/** Rows that a table behind a chart shows at most for each curve. */
const MOST_ROWS = 48;

/** The curves of a chart as tables of their numbers, thinned evenly, ends kept. */
export function chartTable(spec: TopLevelSpec, description: string): TemplateResult {
  const curves = chartCurves(spec);
  if (curves.length === 0)
    return html`<p>This chart has no lines; its description says it all.</p>`;
  return html`${curves.map((curve) => curveTable(curve, `${description}: ${curve.name}`))}`;
}

function curveTable({ rows, x, y }: ChartCurve, caption: string): TemplateResult {
  const step = Math.max(1, (rows.length - 1) / (MOST_ROWS - 1));
  const count = Math.min(rows.length, MOST_ROWS);
  const kept = Array.from({ length: count }, (_, i) => rows[Math.round(i * step)]!);
  const dropped = rows.length - kept.length;
  return html`<div class="table" role="group" aria-label=${caption} tabindex="0"><table>
    <caption>${caption}${dropped > 0 ? `; ${kept.length} of its ${rows.length} points` : ""}</caption>
    <thead><tr><th scope="col" class="right">${headOf(x)}</th><th scope="col" class="right">${headOf(y)}</th></tr></thead>
    <tbody>${kept.map((row) => html`<tr><th scope="row" class="right">${shown(row[x])}</th><td class="right">${shown(row[y])}</td></tr>`)}</tbody>
  </table></div>`;
}

const HEADS: Readonly<Record<string, string>> = {
  elapsedHours: "hours",
  hoursFromPeak: "hours from the peak",
  tempC: "°C",
  tempF: "°F",
  rateCPerHour: "°C/h",
  rateFPerHour: "°F/h",
  coolingCPerHour: "°C/h down",
  coolingFPerHour: "°F/h down",
};

/** A field as a heading: words where it is known, else its name with spaces. */
function headOf(field: string): string {
  return HEADS[field] ?? field.replaceAll(/([A-Z])/g, " $1").toLowerCase();
}

function shown(value: number | string | undefined): string {
  return typeof value === "number" ? String(Number(value.toFixed(2))) : (value ?? "");
}
