import { html, nothing, type TemplateResult } from "lit-html";
import { repeat } from "lit-html/directives/repeat.js";
import type { TopLevelSpec } from "vega-lite";
import type { Block } from "../../core/reports/Block.ts";
import { CRACKS_HEADING, TELL_MORE_HEADING } from "../../core/reports/sections/diagnosisBlocks.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { Bench } from "../bench/store.ts";
import { blockList } from "../parts/blockList.ts";
import { type BlockSection, blockSections } from "../parts/blockSections.ts";
import type { ChartSpecs } from "../parts/chart.ts";
import { download } from "../parts/download.ts";
import { remembered } from "../parts/remembered.ts";
import { CHART_NAMES, type ReviewAnswer } from "../worker/ReviewAnswer.ts";
import { stemOf } from "./changeReview.ts";
import { chartMarks } from "./chartMarks.ts";
import { crackQuestions } from "./crackQuestions.ts";
import { draftNext } from "./draftNext.ts";
import { findingList } from "./findingList.ts";
import { readingPanel } from "./readingPanel.ts";
import { recordForm } from "./recordForm.ts";
import { reportParts } from "./reportParts.ts";

const READING = "How the log was read";

/**
 * The report of a firing in the words of the command, with its controls where they belong. What is typed into
 * has a place of its own, so that no new answer takes it away from under the fingers.
 */
export function reviewReport(bench: Bench, answer: ReviewAnswer): TemplateResult {
  const { unit } = bench.state().work;
  const charts = chartsOf(bench, answer);
  const { log } = bench.state().work.review;
  const json = () =>
    download(`${stemOf(log?.name ?? "firing")}.json`, `${answer.json}\n`, "application/json");
  const { parts } = bench.state().review;
  const blocks = answer.blocks[unit];
  const [first, findings, ...rest] = blockSections(blocks);
  const alarms = blocks.filter(({ kind }) => kind === "alarm");
  const head = first && { ...first, blocks: first.blocks.filter(({ kind }) => kind !== "alarm") };
  const cracks = rest.filter(({ heading }) => heading === CRACKS_HEADING);
  const others = rest.filter(({ heading }) => heading !== CRACKS_HEADING);
  const reading = others.findIndex(({ heading }) => heading === READING);
  const each = (sections: readonly BlockSection[], from: number) =>
    repeat(
      sections.filter((_, at) => from + at < parts),
      ({ heading }) => heading,
      (section) => part(bench, answer, { section, charts }),
    );
  const isWhole = 5 + others.length <= parts;
  return html`<div id="review-report" aria-busy=${!isWhole}>
    ${blockList(alarms, "review-alarm")}
    ${reportParts([findings, ...rest].map((section) => section?.heading ?? null))}
    ${answer.remarks.map((remark) => html`<p class="paint-caution">${remark}</p>`)}
    <div class="side-by-side">
      <div class="beside">${each(head === undefined ? [] : [head], 0)}</div>
      <div>${each(findings === undefined ? [] : [findings], 1)}</div>
    </div>
    <div id="cracks" aria-live="polite">${each(cracks, 2)}</div>
    ${parts > 3 ? crackQuestions(bench, answer.diagnosis) : nothing}
    ${each(others.slice(0, reading), 4)}
    ${parts > 4 + reading ? recordForm(bench) : nothing}
    ${each(others.slice(reading), 5 + reading)}
    <div class="actions">
      <button type="button" @click=${() => print()}>Print this sheet</button>
      <button type="button" @click=${json}>Save the numbers (JSON)</button>
    </div>
  </div>`;
}

interface Place {
  readonly section: BlockSection;
  readonly charts: ReadonlyMap<string, ChartSpecs>;
}

/** A section of the report, or what stands in its place on the page. */
function part(bench: Bench, answer: ReviewAnswer, { section, charts }: Place): TemplateResult {
  const { heading, blocks } = section;
  const id = `review-${heading?.toLowerCase().replaceAll(" ", "-") ?? "head"}`;
  const shown = (which: readonly Block[]) => blockList(which, id, charts);
  switch (heading) {
    case "Findings":
      return html`${shown(blocks.filter(({ kind }) => kind !== "finding"))}
        ${findingList(
          bench,
          blocks.filter((block) => block.kind === "finding"),
          answer.findings,
        )}`;
    case TELL_MORE_HEADING:
      return html``;
    case "What to change next time":
      return html`${shown(blocks)}${draftNext(bench, answer)}`;
    case READING:
      return html`${shown(blocks.filter(({ kind }) => kind !== "facts"))}
        ${readingPanel(bench, answer.decisions)}`;
    default:
      return shown(blocks);
  }
}

/** Charts that were drawn before and have not changed are not drawn again. */
const KNOWN = new Map<string, TopLevelSpec>();

function specFrom(text: string): TopLevelSpec {
  const spec = KNOWN.get(text) ?? (JSON.parse(text) as TopLevelSpec);
  KNOWN.delete(text);
  KNOWN.set(text, spec);
  for (const old of KNOWN.keys()) if (KNOWN.size > 2 * CHART_NAMES.length) KNOWN.delete(old);
  return spec;
}

const specsOf = remembered(({ charts }: ReviewAnswer, unit: TemperatureUnit, isDark: boolean) => {
  if (charts.unit !== unit) return [];
  return CHART_NAMES.flatMap((name) => {
    const light = charts.light[name];
    const dark = isDark ? charts.dark?.[name] : undefined;
    if (light === undefined) return [];
    return [{ name, light: specFrom(light), dark: dark === undefined ? null : specFrom(dark) }];
  });
});

function chartsOf(bench: Bench, answer: ReviewAnswer): ReadonlyMap<string, ChartSpecs> {
  const { work, dark } = bench.state();
  return new Map(
    specsOf(answer, work.unit, dark).map(({ name, ...specs }): [string, ChartSpecs] => {
      const marks = chartMarks(bench, name, specs.light);
      return [name, { ...specs, ...(marks !== undefined && { marks }) }];
    }),
  );
}
