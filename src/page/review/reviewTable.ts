import { html, nothing, type TemplateResult } from "lit-html";
import { repeat } from "lit-html/directives/repeat.js";
import type { TopLevelSpec } from "vega-lite";
import type { Block } from "../../core/reports/Block.ts";
import { CRACKS_HEADING, TELL_MORE_HEADING } from "../../core/reports/diagnosisBlocks.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { type BlockSection, blockList, blockSections } from "../parts/blockList.ts";
import type { ChartSpecs } from "../parts/chart.ts";
import { problemList, remembered } from "../parts/controls.ts";
import { download } from "../parts/files.ts";
import { EMPTY_REVIEW } from "../state/reviewState.ts";
import type { Bench } from "../state/state.ts";
import { CHART_NAMES, type ReviewAnswer } from "../worker/answers.ts";
import { changeReview, readFiring, showReview, stemOf, stopReading } from "./changeReview.ts";
import { chartMarks } from "./chartMarks.ts";
import { crackQuestions } from "./crackQuestions.ts";
import { earlierPanel, filesPanel } from "./filesPanel.ts";
import { findingList, reportParts } from "./findingList.ts";
import { problemControls, readingPanel, toldActions } from "./logControls.ts";
import { recordForm } from "./recordForm.ts";

/** The Review table: a firing that happened, its log, its record, and what they say. */
export function reviewTable(bench: Bench): TemplateResult {
  const { review, work } = bench.state();
  const { answer, problems, refused, isStopped } = review;
  const hasLog = work.review.log !== null;
  return html`<h2 class=${hasLog ? "out-of-sight" : ""}>Review</h2>
    ${filesPanel(bench)}
    ${problemList(refused)}
    ${progress(bench)}
    ${isStopped ? html`<p>The reading was stopped. <button type="button" @click=${() => readFiring(bench)}>Read it after all</button></p>` : nothing}
    ${problems.length === 0 ? nothing : asked(bench)}
    ${answer === null ? nothing : reviewReport(bench, answer)}
    ${hasLog && answer === null && problems.length > 0 ? recordForm(bench) : nothing}
    ${hasLog ? earlierPanel(bench) : nothing}
    ${hasLog ? html`<div class="actions"><button type="button" class="grave" @click=${() => changeReview(bench, "clearing the Review table", EMPTY_REVIEW.work)}>Clear this table</button></div>` : nothing}`;
}

/** How far the reading is, with a way to stop it. */
function progress(bench: Bench): TemplateResult {
  const { busy } = bench.state().review;
  return html`<div class="reading-progress" role="status">${
    busy === null
      ? nothing
      : html`<label>${busy.at} <progress max="1" .value=${busy.fraction}></progress></label>
        <button type="button" @click=${() => stopReading(bench)}>Cancel</button>`
  }</div>`;
}

/** What the reader asks, in its own words, with the answers to choose from. */
function asked(bench: Bench): TemplateResult {
  return html`<section aria-label="What the log leaves open">
    ${problemList(bench.state().review.problems)}
    ${problemControls(bench, bench.state().review.problems)}
    ${toldActions(bench)}
  </section>`;
}

const READING = "How the log was read";

/**
 * The report of a firing in the words of the command, with its controls where they belong. What is typed into
 * has a place of its own, so that no new answer takes it away from under the fingers.
 */
function reviewReport(bench: Bench, answer: ReviewAnswer): TemplateResult {
  const { unit } = bench.state().work;
  const charts = chartsOf(bench, answer);
  const { log } = bench.state().work.review;
  const json = () =>
    download(`${stemOf(log?.name ?? "firing")}.json`, `${answer.json}\n`, "application/json");
  const { parts } = bench.state().review;
  const blocks = answer.blocks[unit];
  const [first, findings, ...rest] = blockSections(blocks);
  const { screen } = answer;
  const head = first && { ...first, blocks: first.blocks.filter(({ kind }) => kind === "chart") };
  const figures = first?.blocks.filter(({ kind }) => kind !== "chart" && kind !== "alarm") ?? [];
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
    ${reportParts([findings, ...rest].map((section) => section?.heading ?? null))}
    ${answer.remarks.map((remark) => html`<p class="paint-caution">${remark}</p>`)}
    <div class="side-by-side">
      <div id="review-screen">${blockList(screen[unit], "review-screen-part")}</div>
      <div class="beside">${each(head === undefined ? [] : [head], 0)}</div>
    </div>
    <details class="room"><summary>In figures</summary>${blockList(figures, "review-figures")}</details>
    ${each(findings === undefined ? [] : [findings], 1)}
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

/** Parts that stand closed until somebody asks for them. */
const FOLDED: ReadonlySet<string> = new Set([
  "Piece by piece",
  "Why this counts",
  "How to tell which",
  "Through the inversions",
  "Stress in the ware",
  "Cones",
  "Against the plan",
  "Ramps and holds",
  "Where in the kiln",
  "From the firing record",
  "What was heard",
  "What the witness cones say",
  "What the ware was taken to be",
  "What this rests on",
]);

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
      return heading !== null && FOLDED.has(heading)
        ? html`<details class="room" id=${`${id}-1`}><summary>${heading}</summary>${shown(blocks.slice(1))}</details>`
        : shown(blocks);
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

/** A button that lays the schedule for the next firing on the Draft table, its kiln beside it. */
function draftNext(bench: Bench, answer: ReviewAnswer): TemplateResult | typeof nothing {
  const text = answer.nextSchedule;
  if (text === null) return nothing;
  return html`<div class="actions">
    <button type="button" class="chief" @click=${() => draft(bench, text, answer)}>Draft this next</button>
  </div>
  <p class="hint">Opens the Draft table with that schedule${answer.nextByKiln ? ", for the kiln as these logs show it" : ""}. Undo brings back what lies there now.${answer.nextOffsetK === null ? "" : " What the witness cones say of this thermocouple goes with it."}</p>`;
}

function draft(bench: Bench, text: string, { nextByKiln, nextOffsetK }: ReviewAnswer): void {
  const schedule = parseSchedule(text, "the schedule for next time");
  if (!schedule.ok) {
    showReview(bench, { refused: schedule.problems });
    return;
  }
  const { log, record, earlier } = bench.state().work.review;
  const kilnFiles = nextByKiln ? [...earlier, log, record].flatMap((file) => file ?? []) : [];
  const from = log?.name ?? "the firing";
  const offset = nextOffsetK === null ? null : { offsetK: nextOffsetK, from };
  bench.change("drafting the next firing", (work) => ({
    ...work,
    draft: { ...work.draft, schedule: schedule.value, kilnFiles, offset },
  }));
  bench.show((state) => ({
    ...state,
    table: "draft",
    said: "The next firing lies on the Draft table.",
  }));
  requestAnimationFrame(() => document.getElementById("tab-draft")?.focus());
}
