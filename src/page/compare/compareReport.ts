import { html, nothing, type TemplateResult } from "lit-html";
import type { TopLevelSpec } from "vega-lite";
import { parseAlignmentTemperature } from "../../core/review/alignment.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import { inert } from "../../core/text/escape.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { typedTemperature } from "../draft/segmentTable.ts";
import { narrowChart } from "../drawing/narrowChart.ts";
import { type BlockCharts, blockList, blockSections } from "../parts/blockList.ts";
import { quantityField, remembered } from "../parts/controls.ts";
import { download, fileStem } from "../parts/files.ts";
import type { Bench, ChosenAlignment } from "../state/state.ts";
import type { CompareAnswer } from "../worker/answers.ts";
import { changeCompare, showCompare } from "./changeCompare.ts";
import { firingPanels } from "./firingPanels.ts";
import { fitsFigure } from "./fitsFigure.ts";
import { spacingFigure } from "./spacingFigure.ts";

const WAYS: Readonly<Record<ChosenAlignment["at"], string>> = {
  peak: "at the peak",
  start: "at the first reading",
  rising: "on the way up, at",
  falling: "on the way down, at",
};

/** Where the firings are laid over each other, to choose. */
function alignPanel(bench: Bench): TemplateResult {
  const { align } = bench.state().work.compare;
  const { unit } = bench.state().work;
  const choice = (at: ChosenAlignment["at"]) =>
    html`<label><input type="radio" name="align" .checked=${align.at === at}
      @change=${() => changeCompare(bench, `lining up ${WAYS[at].replace(",", "")}`, { align: { ...align, at } })}><span>${WAYS[at]}</span></label>`;
  return html`<div class="align-panel">
    <fieldset class="boxes answers"><legend>Line the firings up</legend>${(Object.keys(WAYS) as ChosenAlignment["at"][]).map(choice)}</fieldset>
    ${
      align.at === "rising" || align.at === "falling"
        ? quantityField({
            id: "align-temperature",
            label: `Temperature (°${unit})`,
            value: typedTemperature(align.tempC, unit),
            parse: (typed) => parseAlignmentTemperature(typed, { unit, where: "the temperature" }),
            onValue: (tempC) =>
              changeCompare(bench, `lining up at ${text(tempC, unit)}`, {
                align: { ...align, tempC },
              }),
          })
        : nothing
    }
  </div>`;
}

function text(tempC: number, unit: TemperatureUnit): string {
  return `${typedTemperature(tempC, unit)} °${unit}`;
}

/** The core's grid of causes, as far as it is read. */
interface Grid {
  readonly title: { readonly text: string; readonly subtitle: readonly string[] };
  readonly layer: readonly {
    readonly data: { readonly values: readonly Cell[] };
    readonly encoding: { readonly x: Axis; readonly y: Axis };
  }[];
}

interface Axis {
  readonly scale: { readonly domain: readonly string[] };
}

interface Cell {
  readonly first: string;
  readonly second: string;
  readonly telling: string;
  readonly word: string;
}

/** What moved with what as a table: the words of the core's grid, its fillings as shades. */
function causesGrid(spec: TopLevelSpec, description: string): TemplateResult {
  const { title, layer } = spec as unknown as Grid;
  const [first] = layer;
  const across = first?.encoding.x.scale.domain ?? [];
  const down = first?.encoding.y.scale.domain ?? [];
  const cells = new Map(
    layer.flatMap(({ data }) =>
      data.values.map((cell) => [`${cell.first}\n${cell.second}`, cell] as const),
    ),
  );
  return html`<figure class="causes">
    <div class="table" role="group" aria-label=${description} tabindex="0"><table>
      <caption>${title.text}: ${title.subtitle.join("; ")}</caption>
      <thead><tr><td></td>${across.map((name) => html`<th scope="col">${inert(name)}</th>`)}</tr></thead>
      <tbody>${down.map(
        (name) =>
          html`<tr><th scope="row">${inert(name)}</th>${across.map((column) => {
            const cell = cells.get(`${column}\n${name}`);
            return html`<td class=${cell === undefined ? "no-pair" : `is-${cell.telling}`}>${cell?.word ?? nothing}</td>`;
          })}</tr>`,
      )}</tbody>
    </table></div>
    <figcaption>${description}</figcaption>
  </figure>`;
}

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
    <div id="compare-screen">${blockList(answer.screen[work.unit], "compare-screen-part")}</div>
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

/** What can be done with the schedule of the next test: draft it, or take it away as a file. */
function nextActions(
  bench: Bench,
  { nextSchedule }: CompareAnswer,
): TemplateResult | typeof nothing {
  if (nextSchedule === null) return nothing;
  return html`${kilnChoice(bench)}<div class="actions">
    <button type="button" class="chief" @click=${() => draft(bench, nextSchedule)}>Draft this next</button>
    <button type="button" @click=${() => save(nextSchedule)}>Save its schedule (.yaml)</button>
  </div>
  <p class="hint next-hint">Opens the Draft table with that schedule. Undo brings back what lies there now.</p>`;
}

/** Whether the next test is fitted to the kiln that the Draft table was taught. */
function kilnChoice(bench: Bench): TemplateResult {
  const { work, draft: desk } = bench.state();
  if (desk.kiln === null)
    return html`<p class="hint next-kiln">To have this test fitted to your own kiln, lay logs of it on the Draft table, under “Kiln”.</p>`;
  const { onKiln } = work.compare;
  return html`<p class="next-kiln"><label class="tick"><input type="checkbox" .checked=${onKiln}
    @change=${() => changeCompare(bench, onKiln ? "the next test for any kiln" : "fitting the next test to your kiln", { onKiln: !onKiln })}>
    <span>Fit it to the kiln that the Draft table was taught</span></label></p>`;
}

function draft(bench: Bench, text: string): void {
  const schedule = parseSchedule(text, "the schedule of the next test");
  if (!schedule.ok) {
    showCompare(bench, { refused: schedule.problems });
    return;
  }
  bench.change("drafting the next test", (work) => ({
    ...work,
    draft: { ...work.draft, schedule: schedule.value },
  }));
  bench.show((state) => ({
    ...state,
    table: "draft",
    said: "The next test lies on the Draft table.",
  }));
  requestAnimationFrame(() => document.getElementById("tab-draft")?.focus());
}

function save(text: string): void {
  const schedule = parseSchedule(text, "the schedule of the next test");
  const stem = fileStem(schedule.ok ? schedule.value.title : "next test");
  download(`${stem}.yaml`, text, "application/yaml");
}
