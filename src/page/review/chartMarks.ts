import { html, nothing, type SVGTemplateResult, svg } from "lit-html";
import { ref } from "lit-html/directives/ref.js";
import type { TopLevelSpec } from "vega-lite";
import { inert } from "../../core/text/escape.ts";
import { chartRead } from "../drawing/ChartRead.ts";
import type { ChartSpecs } from "../parts/chart.ts";
import { overDrawing } from "../parts/overDrawing.ts";
import type { Bench } from "../state/state.ts";
import type { ChartName, FindingPlace } from "../worker/answers.ts";
import { goToFinding, markFinding } from "./findingList.ts";

/** A stretch along the horizontal axis of a chart [px of the plot]. */
interface Stretch {
  readonly finding: number;
  readonly place: FindingPlace;
  readonly from: number;
  readonly to: number;
  /** Where the finding itself begins; its mark may be wider, to be hit. */
  readonly begins: number;
  /** Row of the strip in which it has room. */
  readonly lane: number;
}

/** Smallest mark that a finger or a mouse can hit [px]. */
const NARROWEST = 24;
const LANE_HEIGHT = 26;

/**
 * Where the findings hold: a strip of marks under a chart, and the marked one laid over its drawing.
 * A click on a mark goes to its finding. With the keyboard the marks of a chart are one stop: arrows go
 * from one to the next, Enter and Escape to its finding.
 */
export function chartMarks(bench: Bench, name: ChartName, spec: TopLevelSpec): ChartSpecs["marks"] {
  const { answer, marked } = bench.state().review;
  const stretches = stretchesOf(answer?.findings ?? [], name, spec, bench.state().work.unit);
  if (stretches.length === 0) return undefined;
  const { height } = chartRead(spec);
  const lanes = Math.max(...stretches.map(({ lane }) => lane)) + 1;
  const shown = stretches.find(({ finding }) => finding === marked);
  const on = html`
    <svg class="marked-stretch" aria-hidden="true" ${ref((element) => overDrawing(element))}><g>
      ${
        shown === undefined
          ? nothing
          : svg`<rect class="is-${shown.place.severity}" x=${shown.from} y="0" width=${shown.to - shown.from} height=${height}
          @click=${() => goToFinding(shown.finding)}></rect>`
      }
    </g></svg>
    <svg class="mark-strip" role="group" aria-label="Findings along this chart" ${ref((element) => overDrawing(element, lanes * LANE_HEIGHT + 4))}><g>
      ${stretches.map((each) => mark(bench, each, each === (shown ?? stretches[0])))}
    </g></svg>`;
  const below = html`<p class="mark-hint hint">Numbers under the chart are the findings: each leads to its own.
    ${
      shown === undefined
        ? nothing
        : html`<button type="button" class="slim" @click=${() => goToFinding(shown.finding)}>Back to finding ${shown.finding + 1}</button>`
    }</p>`;
  const leave = shown === undefined ? null : () => goToFinding(shown.finding);
  return { on, below, reading: { from: shown?.begins ?? null, leave } };
}

function mark(bench: Bench, each: Stretch, isStop: boolean): SVGTemplateResult {
  const { finding, place, lane, from, to } = each;
  const isMarked = finding === bench.state().review.marked;
  const words = `Finding ${finding + 1}, ${place.severity}: ${inert(place.statement)}`;
  return svg`<g class="mark is-${place.severity} ${isMarked ? "is-marked" : ""}" data-finding=${finding}
      role="button" tabindex=${isStop ? 0 : -1} aria-label=${words} aria-pressed=${isMarked}
      @click=${() => follow(bench, finding)} @keydown=${(event: KeyboardEvent) => onKey(bench, finding, event)}>
    <rect x=${from} y=${lane * LANE_HEIGHT + 2} width=${to - from} height=${LANE_HEIGHT - 4} rx="2"></rect>
    <text x=${from + 5} y=${lane * LANE_HEIGHT + 18}>${finding + 1}</text>
    <title>${words}</title>
  </g>`;
}

function onKey(bench: Bench, finding: number, event: KeyboardEvent): void {
  const way = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  const isBack = ["Enter", " ", "Escape"].includes(event.key);
  if (way === undefined && !isBack) return;
  event.preventDefault();
  if (way === undefined) follow(bench, finding);
  else goAlong(bench, event.currentTarget as Element, way);
}

/** The next mark of the same chart, marked and with the keyboard on it; past the last comes the first. */
function goAlong(bench: Bench, from: Element, way: number): void {
  const all = [...(from.parentElement?.querySelectorAll<SVGGElement>(".mark") ?? [])];
  const next = all[(all.indexOf(from as SVGGElement) + way + all.length) % all.length];
  if (next === undefined) return;
  markFinding(bench, Number(next.dataset.finding));
  next.focus();
}

function follow(bench: Bench, finding: number): void {
  markFinding(bench, finding);
  goToFinding(finding);
}

function stretchesOf(
  findings: readonly FindingPlace[],
  name: ChartName,
  spec: TopLevelSpec,
  unit: "C" | "F",
): readonly Stretch[] {
  const chart = chartRead(spec);
  const domain = chart.layer[0]?.encoding.x.scale.domain;
  if (domain === undefined) return [];
  const at = (value: number) => {
    const share = (value - domain[0]) / (domain[1] - domain[0]);
    return chart.width * Math.min(1, Math.max(0, share));
  };
  const ends: number[] = [];
  return findings.flatMap((place, finding) => {
    const range = name === "cooling" ? inUnit(place.coolingC, unit) : place.hours;
    if (range === null || isOutside(range, domain)) return [];
    const { from, to } = widened(at(range[0]), at(range[1]), chart.width);
    const free = ends.findIndex((end) => end + 2 <= from);
    const lane = free === -1 ? ends.length : free;
    ends[lane] = to;
    return [{ finding, place, from, to, lane, begins: at(range[0]) }];
  });
}

function isOutside(range: readonly [number, number], domain: readonly [number, number]): boolean {
  const low = Math.min(...domain);
  const high = Math.max(...domain);
  return Math.max(...range) < low || Math.min(...range) > high;
}

function inUnit(range: FindingPlace["coolingC"], unit: "C" | "F"): FindingPlace["coolingC"] {
  if (range === null || unit === "C") return range;
  return [range[0] * 1.8 + 32, range[1] * 1.8 + 32];
}

function widened(a: number, b: number, width: number) {
  const from = Math.min(a, b);
  const to = Math.max(a, b);
  if (to - from >= NARROWEST) return { from, to };
  const start = Math.min(Math.max(0, (from + to - NARROWEST) / 2), width - NARROWEST);
  return { from: start, to: start + NARROWEST };
}
