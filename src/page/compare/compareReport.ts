import { html, nothing, type TemplateResult } from "lit-html";
import type { TopLevelSpec } from "vega-lite";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { Bench } from "../bench/store.ts";
import { narrowChart } from "../drawing/narrowChart.ts";
import { type BlockCharts, blockList } from "../parts/blockList.ts";
import { blockSections } from "../parts/blockSections.ts";
import { download } from "../parts/download.ts";
import { remembered } from "../parts/remembered.ts";
import type { CompareAnswer } from "../worker/CompareAnswer.ts";
import { alignPanel } from "./alignPanel.ts";
import { causesGrid } from "./causesGrid.ts";
import { firingPanels } from "./firingPanels.ts";
import { fitsFigure } from "./fitsFigure.ts";
import { nextActions } from "./nextActions.ts";
import { spacingFigure } from "./spacingFigure.ts";

const NEXT = "Which test next";

/** The comparison in the words of the command, with its controls where they belong. */
export function compareReport(bench: Bench, answer: CompareAnswer): TemplateResult {
  const { work, dark, narrow } = bench.state();
  const charts = chartsOf(answer, work.unit, dark, narrow);
  const sections = blockSections(answer.blocks[work.unit]);
  const json = () => download("comparison.json", `${answer.json}\n`, "application/json");
  const { parts } = bench.state().compare;
  const isWhole = parts >= sections.length;
  return html`<div id="compare-report" aria-busy=${!isWhole}>
    <h2>${answer.title}</h2>
    ${alignPanel(bench)}
    ${sections.slice(0, parts).map(
      ({ heading, blocks }) =>
        html`${blockList(blocks, `compare-${heading?.toLowerCase().replaceAll(" ", "-") ?? "head"}`, charts)}
        ${heading === NEXT ? nextActions(bench, answer) : nothing}`,
    )}
    ${
      isWhole
        ? html`<div class="actions">
      <button type="button" @click=${() => window.print()}>Print the comparison</button>
      <button type="button" @click=${json}>Save the numbers (JSON)</button>
    </div>`
        : nothing
    }
  </div>`;
}

type ShownChart = BlockCharts extends ReadonlyMap<infer Name, infer Shown> ? [Name, Shown] : never;

const chartsOf = remembered(
  (
    { charts }: CompareAnswer,
    unit: TemperatureUnit,
    isDark: boolean,
    isNarrow: boolean,
  ): BlockCharts => {
    if (charts.unit !== unit) return new Map();
    return new Map(
      Object.entries(charts.light).map(([name, text]): ShownChart => {
        const night = isDark ? charts.dark?.[name] : undefined;
        const drawn = isNarrow && !WIDE.has(name) ? narrowSpecOf : specOf;
        const specs = { light: drawn(text), dark: night === undefined ? null : drawn(night) };
        if (name === "firings")
          return [name, (description: string) => firingPanels(specs, description)];
        if (name === "fits") return [name, (description: string) => fitsFigure(specs, description)];
        if (name.startsWith("spacing: "))
          return [name, (description: string) => spacingFigure(specs, description)];
        if (name === "causes")
          return [name, (description: string) => causesGrid(specs.light, description)];
        return [name, specs];
      }),
    );
  },
);

/** Charts that suit a telephone as they are. */
const WIDE: ReadonlySet<string> = new Set(["firings", "causes"]);

const MOST_KNOWN = 40;

const specOf = known((text) => JSON.parse(text) as TopLevelSpec);
const narrowSpecOf = known((text) => narrowChart(specOf(text)));

/** Charts that have not changed are the same objects again, and so are not drawn again. */
function known(make: (text: string) => TopLevelSpec): (text: string) => TopLevelSpec {
  const made = new Map<string, TopLevelSpec>();
  return (text) => {
    const spec = made.get(text) ?? make(text);
    made.delete(text);
    made.set(text, spec);
    for (const old of made.keys()) if (made.size > MOST_KNOWN) made.delete(old);
    return spec;
  };
}
