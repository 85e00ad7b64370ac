import { html, type TemplateResult } from "lit-html";
import type { TopLevelSpec } from "vega-lite";

/** Rows that a table behind a chart shows at most for each line. */
const MOST_ROWS = 48;

type Row = Readonly<Record<string, number | string>>;

/** A part of a chart, as far as its numbers are read. */
interface Part {
  readonly mark?: string | { readonly type?: string };
  readonly data?: { readonly values?: readonly Row[]; readonly name?: string };
  readonly encoding?: Readonly<
    Record<string, { readonly field?: string; readonly title?: unknown }>
  >;
  readonly layer?: readonly Part[];
  readonly vconcat?: readonly Part[];
}

/** The lines of a chart as tables of their numbers, thinned evenly, ends kept. */
export function chartTable(spec: TopLevelSpec, description: string): TemplateResult {
  const lines = linesOf(spec as unknown as Part);
  if (lines.length === 0) return html`<p>This chart has no lines; its description says it all.</p>`;
  return html`${lines.map((line, index) => lineTable(line, `${description}, line ${index + 1}`))}`;
}

interface Line {
  readonly rows: readonly Row[];
  readonly x: string;
  readonly y: string;
}

function linesOf(part: Part): readonly Line[] {
  const inside = [...(part.layer ?? []), ...(part.vconcat ?? [])].flatMap(linesOf);
  const type = typeof part.mark === "string" ? part.mark : part.mark?.type;
  const x = part.encoding?.x?.field;
  const y = part.encoding?.y?.field;
  const rows = part.data?.values ?? [];
  if (type !== "line" || x === undefined || y === undefined || rows.length < 2) return inside;
  return [...inside, { rows, x, y }];
}

function lineTable({ rows, x, y }: Line, caption: string): TemplateResult {
  const step = Math.max(1, (rows.length - 1) / (MOST_ROWS - 1));
  const count = Math.min(rows.length, MOST_ROWS);
  const kept = Array.from({ length: count }, (_, i) => rows[Math.round(i * step)] as Row);
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
};

/** A field as a heading: words where it is known, else its name with spaces. */
function headOf(field: string): string {
  return HEADS[field] ?? field.replaceAll(/([A-Z])/g, " $1").toLowerCase();
}

function shown(value: number | string | undefined): string {
  return typeof value === "number" ? String(Number(value.toFixed(2))) : (value ?? "");
}
