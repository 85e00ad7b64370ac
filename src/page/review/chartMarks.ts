import { html, nothing, svg } from "lit-html";
import { ref } from "lit-html/directives/ref.js";
import type { TopLevelSpec } from "vega-lite";
import { inert } from "../../core/reports/inert.ts";
import type { Bench } from "../bench/store.ts";
import { chartRead } from "../drawing/ChartRead.ts";
import type { ChartSpecs } from "../parts/chart.ts";
import type { ChartName, FindingPlace } from "../worker/ReviewAnswer.ts";
import { goToFinding, markFinding } from "./markFinding.ts";

/** A stretch along the horizontal axis of a chart [px of the plot]. */
interface Stretch {
  readonly finding: number;
  readonly place: FindingPlace;
  readonly from: number;
  readonly to: number;
  /** Row of the strip in which it has room. */
  readonly lane: number;
}

/** Narrowest stretch that a finger or a mouse can hit [px]. */
const NARROWEST = 14;
const LANE_HEIGHT = 16;

/**
 * Where the findings hold: a strip of marks under a chart, and the marked one laid over its drawing.
 * A click on a mark goes to its finding; with the keyboard the way is from the finding.
 */
export function chartMarks(bench: Bench, name: ChartName, spec: TopLevelSpec): ChartSpecs["marks"] {
  const { answer, marked } = bench.state().review;
  const stretches = stretchesOf(answer?.findings ?? [], name, spec, bench.state().work.unit);
  if (stretches.length === 0) return undefined;
  const { height } = chartRead(spec);
  const lanes = Math.max(...stretches.map(({ lane }) => lane)) + 1;
  const shown = stretches.find(({ finding }) => finding === marked);
  const on = html`
    <svg class="marked-stretch" aria-hidden="true" ${ref((element) => sized(element, "over"))}><g>
      ${
        shown === undefined
          ? nothing
          : svg`<rect class="is-${shown.place.severity}" x=${shown.from} y="0" width=${shown.to - shown.from} height=${height}
          @click=${() => goToFinding(shown.finding)}></rect>`
      }
    </g></svg>
    <svg class="mark-strip" aria-hidden="true" data-height=${lanes * LANE_HEIGHT + 4} ${ref((element) => sized(element, "under"))}><g>
      ${stretches.map(
        (
          each,
        ) => svg`<g class="mark is-${each.place.severity} ${each.finding === marked ? "is-marked" : ""}" data-finding=${each.finding}
            @click=${() => follow(bench, each.finding)}>
          <rect x=${each.from} y=${each.lane * LANE_HEIGHT + 2} width=${each.to - each.from} height=${LANE_HEIGHT - 4} rx="2"></rect>
          <text x=${each.from + 3} y=${each.lane * LANE_HEIGHT + 12}>${each.finding + 1}</text>
          <title>${each.finding + 1}: ${inert(each.place.statement)}</title>
        </g>`,
      )}
    </g></svg>`;
  const below = html`<p class="mark-hint hint">Numbers under the chart are the findings: click one to go to it.
    ${
      shown === undefined
        ? nothing
        : html`<button type="button" class="slim" @click=${() => goToFinding(shown.finding)}>Back to finding ${shown.finding + 1}</button>`
    }</p>`;
  return { on, below };
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
    return [{ finding, place, from, to, lane }];
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

/** Gives marks the measure of the drawing above them, so that both grow and shrink alike. */
function sized(element: Element | undefined, place: "over" | "under"): void {
  if (element === undefined) return;
  queueMicrotask(() => {
    const drawing = element.closest("figure")?.querySelector(".paper-drawing svg");
    const shift = drawing?.querySelector(":scope > g")?.getAttribute("transform") ?? "";
    const [, x, y] = /translate\(([-\d.]+),([-\d.]+)\)/.exec(shift) ?? [];
    const [width, height] = ["width", "height"].map((name) => drawing?.getAttribute(name) ?? "0");
    const tall = place === "over" ? height : (element as SVGElement).dataset.height;
    element.setAttribute("viewBox", `0 0 ${width} ${tall}`);
    element.setAttribute("width", String(width));
    element.setAttribute("height", String(tall));
    const down = place === "over" ? y : 0;
    element.firstElementChild?.setAttribute("transform", `translate(${x ?? 0},${down ?? 0})`);
  });
}
