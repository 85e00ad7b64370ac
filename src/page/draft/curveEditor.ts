import { html, svg, type TemplateResult } from "lit-html";
import { clockText, startOfDayOf } from "../../core/reports/moments.ts";
import { COOLING_BANDS } from "../../core/schedule/coolingLimits.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { FASTEST_C_PER_HOUR, HOTTEST_C } from "../../core/schedule/segments.ts";
import { printDuration, printElapsed, printTemperature } from "../../core/text/quantities.ts";
import {
  celsiusDeltaFromFahrenheitDelta,
  celsiusFromFahrenheit,
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../../core/units/temperature.ts";
import {
  type EditorFrame,
  editorFrame,
  hourSteps,
  NARROW_SHEET,
  tempSteps,
  WIDE_SHEET,
} from "../state/editorFrame.ts";
import type { Bench } from "../state/state.ts";
import { changeSchedule, deskDraft } from "./changeDraft.ts";
import { type SegmentChange, withSegment } from "./segmentTable.ts";

/** A finger on a corner moves the corner; the page does not scroll under it, in any browser. */
const HOLD_THE_PAGE = {
  handleEvent: (event: TouchEvent) => {
    if (event.touches.length === 1) event.preventDefault();
  },
  passive: false,
};

/** What the editor shows. */
interface CurveEditorOptions {
  readonly draft: Draft;
  readonly unit: TemperatureUnit;
}

/** The curve of the schedule, its corners to be dragged, or moved with the arrow keys. */
export function curveEditor(bench: Bench, { draft, unit }: CurveEditorOptions): TemplateResult {
  const { curve } = draft.expansion;
  const sheet = bench.state().narrow ? NARROW_SHEET : WIDE_SHEET;
  const frame = bench.state().draft.heldFrame ?? editorFrame(curve, sheet);
  const { timesSeconds, tempsC } = curve;
  const path = Array.from(timesSeconds, (seconds, i) => {
    const { x, y } = frame.at(seconds, tempsC[i]!);
    return `${i === 0 ? "M" : "L"}${x.toFixed(1)},${y.toFixed(1)}`;
  }).join("");
  const corners = cornersOf(draft);
  return html`<figure class="editor">
    <svg viewBox=${`0 0 ${sheet.width} ${sheet.height}`} role="group" aria-label="The schedule as a curve; its corners can be moved with the arrow keys">
      ${bands(frame)}${grid(frame, { draft, unit })}
      <path class="editor-curve" d=${path}></path>
      ${bandNames(frame, unit)}
      ${corners.map((corner) => handle(bench, corner, { frame, draft, unit }))}
    </svg>
    <figcaption>Drag a corner: up and down for the temperature, sideways for the rate; a diamond ends a hold. With the keyboard: Tab to a corner, then the arrows; with Shift, or Page up and Page down, in larger steps.</figcaption>
  </figure>`;
}

function bands(frame: EditorFrame): TemplateResult {
  const { margin } = frame.sheet;
  return svg`${COOLING_BANDS.map(({ lowC, highC }) => {
    const top = frame.at(0, highC).y;
    const height = frame.at(0, lowC).y - top;
    return svg`<rect class="editor-band" x=${margin.left} y=${top} width=${frame.width} height=${height}></rect>`;
  })}`;
}

/** Names of the inversions, with their limits where there is room and short where there is little. */
function bandNames(frame: EditorFrame, unit: TemperatureUnit): TemplateResult {
  const { width, margin } = frame.sheet;
  const isNarrow = frame.sheet === NARROW_SHEET;
  return svg`${COOLING_BANDS.map(({ name, lowC, highC }) => {
    const limits = `${printTemperature(lowC, unit).replace(/ .*/, "")} to ${printTemperature(highC, unit)}`;
    return svg`<text class="editor-note" x=${width - margin.right - 6} y=${frame.at(0, highC).y - 5} text-anchor="end">${isNarrow ? name.replace(/ inversion$/, "") : `${name}, ${limits}`}</text>`;
  })}`;
}

function grid(frame: EditorFrame, { draft, unit }: CurveEditorOptions): TemplateResult {
  const { sheet } = frame;
  const { margin } = sheet;
  const right = sheet.width - margin.right;
  const bottom = sheet.height - margin.bottom;
  const startOfDay = startOfDayOf(draft.start);
  return svg`
    ${tempSteps(frame, unit).map(({ tempC, label }) => {
      const { y } = frame.at(0, tempC);
      return svg`<line class="editor-grid" x1=${margin.left} x2=${right} y1=${y} y2=${y}></line>
        <text class="editor-label" x=${margin.left - 8} y=${y + 5} text-anchor="end">${label}</text>`;
    })}
    ${hourSteps(frame).map((hours) => {
      const { x } = frame.at(hours * 3600, 0);
      const clock = clockText(startOfDay, hours * 3600);
      return svg`<text class="editor-label" x=${x} y=${bottom + 20} text-anchor="middle">${hours}</text>
        ${clock === null ? null : svg`<text class="editor-label editor-clock" x=${x} y=${bottom + 37} text-anchor="middle">${clock.slice(0, 5)}</text>`}`;
    })}
    <line class="editor-base" x1=${margin.left} x2=${right} y1=${bottom} y2=${bottom}></line>
    <text class="editor-label" x=${margin.left - 44} y=${margin.top - 16}>°${unit}</text>
    <text class="editor-label" x=${right} y=${bottom + 20} text-anchor="end" dx="14">h</text>`;
}

function handle(
  bench: Bench,
  corner: Corner,
  { frame, draft, unit }: CurveEditorOptions & { readonly frame: EditorFrame },
): TemplateResult {
  const { x, y } = frame.at(corner.seconds, corner.tempC);
  const { schedule } = draft;
  const number = corner.segment + 1;
  const words =
    corner.kind === "hold"
      ? `End of the hold of segment ${number}: ${printDuration(schedule.segments[corner.segment]?.holdSeconds ?? 0)}`
      : `End of segment ${number}: ${printTemperature(corner.tempC, unit)} after ${printElapsed(corner.seconds)} h`;
  const shape =
    corner.kind === "hold"
      ? svg`<rect x="-6" y="-6" width="12" height="12" transform="rotate(45)"></rect>`
      : svg`<circle r="7.5"></circle>`;
  return svg`<g class="editor-corner" id=${`corner-${corner.segment}-${corner.kind}`} tabindex="0" role="slider" aria-label=${words}
    aria-valuetext=${words} aria-valuenow=${Math.round(corner.kind === "hold" ? corner.seconds / 60 : corner.tempC)}
    aria-valuemin=${corner.kind === "hold" ? 0 : -20} aria-valuemax=${corner.kind === "hold" ? 100000 : 1400}
    transform="translate(${x},${y})"
    @keydown=${(event: KeyboardEvent) => keyCorner(bench, corner, event)}
    @touchstart=${HOLD_THE_PAGE}
    @pointerdown=${(event: PointerEvent) => dragCorner(bench, corner, { event, frame })}>
    <circle class="editor-reach" r="20"></circle>${shape}</g>`;
}

/** A corner of the curve that can be moved: the end of a ramp, or of a hold. */
interface Corner {
  readonly segment: number;
  readonly kind: "ramp" | "hold";
  readonly seconds: number;
  readonly tempC: number;
  /** Where its ramp or hold begins. */
  readonly fromSeconds: number;
  readonly fromC: number;
}

/** Every corner of a drafted schedule, in the order of the firing. */
function cornersOf({ expansion }: Draft): readonly Corner[] {
  return expansion.timeline.map((row) => ({
    segment: row.segment,
    kind: row.kind,
    seconds: row.endSeconds,
    tempC: row.toC,
    fromSeconds: row.startSeconds,
    fromC: row.fromC,
  }));
}

/** Nearest that a corner comes to where its ramp begins [K]: a ramp has to lead somewhere. */
const NEAREST_K = 1;

/** Longest hold that can be dragged to [s]; longer ones are typed. */
const LONGEST_HOLD_SECONDS = 24 * 3600;

/** Follows the pointer with a corner until it is let go; the whole way is one step to undo. */
function dragCorner(
  bench: Bench,
  corner: Corner,
  { event, frame }: { readonly event: PointerEvent; readonly frame: EditorFrame },
): void {
  const element = event.currentTarget as SVGGElement;
  const sheet = element.ownerSVGElement;
  if (sheet === null || event.button !== 0) return;
  event.preventDefault();
  element.focus();
  element.setPointerCapture(event.pointerId);
  deskDraft(bench, { heldFrame: frame });
  const toSheet = sheet.getScreenCTM()?.inverse();
  const move = (moved: PointerEvent) => {
    const { x, y } = new DOMPoint(moved.clientX, moved.clientY).matrixTransform(toSheet);
    moveTo(bench, corner, frame.from(x, y));
  };
  const drop = () => {
    element.removeEventListener("pointermove", move);
    bench.settle();
    deskDraft(bench, { heldFrame: null });
  };
  element.addEventListener("pointermove", move);
  element.addEventListener("lostpointercapture", drop, { once: true });
}

function moveTo(
  bench: Bench,
  corner: Corner,
  to: { readonly seconds: number; readonly tempC: number },
): void {
  const { unit, draft } = bench.state().work;
  if (draft.schedule === null) return;
  const lasts = to.seconds - corner.fromSeconds;
  if (corner.kind === "hold") {
    const minutes = Math.max(0, Math.round(lasts / 60));
    move(bench, corner, { holdSeconds: Math.min(LONGEST_HOLD_SECONDS, minutes * 60) });
    return;
  }
  const toC = targetFor(draft.schedule, corner, wholeTemperature(to.tempC, unit));
  const isFree = draft.schedule.segments[corner.segment]?.rateCPerHour === "free";
  const rate = (Math.abs(toC - corner.fromC) * 3600) / Math.max(60, lasts);
  move(bench, corner, isFree ? { toC } : { toC, rateCPerHour: wholeRate(rate, unit) });
}

type Step = (schedule: Schedule, corner: Corner, size: number) => SegmentChange;

const UP: Step = (schedule, corner, size) => ({
  toC: targetFor(schedule, corner, (schedule.segments[corner.segment]?.toC ?? corner.tempC) + size),
});
const FASTER: Step = (schedule, { segment }, size) => {
  const { rateCPerHour } = schedule.segments[segment] ?? {};
  return typeof rateCPerHour !== "number"
    ? {}
    : { rateCPerHour: clamp(Math.abs(rateCPerHour) + size, 1, FASTEST_C_PER_HOUR) };
};
const LONGER: Step = (schedule, { segment }, size) => {
  const { holdSeconds = 0 } = schedule.segments[segment] ?? {};
  return { holdSeconds: clamp(holdSeconds + size * 60, 0, LONGEST_HOLD_SECONDS) };
};
const SHORTER: Step = (schedule, corner, size) => LONGER(schedule, corner, -size);
const SLOWER: Step = (schedule, corner, size) => FASTER(schedule, corner, -size);
const DOWN: Step = (schedule, corner, size) => UP(schedule, corner, -size);

const RAMP_KEYS: Readonly<Record<string, Step>> = {
  ArrowUp: UP,
  ArrowDown: DOWN,
  ArrowLeft: FASTER,
  ArrowRight: SLOWER,
};
const HOLD_KEYS: Readonly<Record<string, Step>> = {
  ArrowUp: LONGER,
  ArrowRight: LONGER,
  ArrowDown: SHORTER,
  ArrowLeft: SHORTER,
};

/** Keys that stand for an arrow with Shift. */
const LARGE_KEYS: Readonly<Record<string, string>> = { PageUp: "ArrowUp", PageDown: "ArrowDown" };

/** Moves a corner with the arrow keys: by a degree, a degree an hour or a minute; with Shift or a Page key by ten. */
function keyCorner(bench: Bench, corner: Corner, event: KeyboardEvent): void {
  const { unit, draft } = bench.state().work;
  const large = LARGE_KEYS[event.key];
  const step = (corner.kind === "hold" ? HOLD_KEYS : RAMP_KEYS)[large ?? event.key];
  if (step === undefined || draft.schedule === null) return;
  event.preventDefault();
  const many = event.shiftKey || large !== undefined ? 10 : 1;
  const size =
    corner.kind === "hold" || unit === "C" ? many : celsiusDeltaFromFahrenheitDelta(many);
  move(bench, corner, step(draft.schedule, corner, size));
}

function move(bench: Bench, corner: Corner, change: SegmentChange): void {
  const { schedule } = bench.state().work.draft;
  if (schedule === null) return;
  const what = `moving the end of ${corner.kind === "hold" ? "the hold of " : ""}segment ${corner.segment + 1}`;
  const merge = `corner ${corner.segment} ${corner.kind}`;
  changeSchedule(bench, withSegment(schedule, corner.segment, change), { what, merge });
}

/** A target that keeps its ramp, and the one after it, going the way they went. */
function targetFor(schedule: Schedule, corner: Corner, wantedC: number): number {
  const { segments } = schedule;
  const here = segments[corner.segment]?.toC ?? corner.tempC;
  const next = segments[corner.segment + 1];
  const rises = here > corner.fromC;
  let low = rises ? corner.fromC + NEAREST_K : -20;
  let high = rises ? HOTTEST_C : corner.fromC - NEAREST_K;
  if (next !== undefined && next.toC > here) high = Math.min(high, next.toC - NEAREST_K);
  if (next !== undefined && next.toC < here) low = Math.max(low, next.toC + NEAREST_K);
  return clamp(wantedC, low, high);
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

function wholeTemperature(tempC: number, unit: TemperatureUnit): number {
  return unit === "C"
    ? Math.round(tempC)
    : celsiusFromFahrenheit(Math.round(fahrenheitFromCelsius(tempC)));
}

function wholeRate(rateCPerHour: number, unit: TemperatureUnit): number {
  const rate = clamp(rateCPerHour, 1, FASTEST_C_PER_HOUR);
  return unit === "C"
    ? Math.round(rate)
    : celsiusDeltaFromFahrenheitDelta(
        Math.max(1, Math.round(fahrenheitDeltaFromCelsiusDelta(rate))),
      );
}
