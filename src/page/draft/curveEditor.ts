import { html, svg, type TemplateResult } from "lit-html";
import { clockText, startOfDayOf } from "../../core/reports/moments.ts";
import { COOLING_BANDS } from "../../core/schedule/coolingLimits.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import { printDuration, printElapsed, printTemperature } from "../../core/units/print.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { Bench } from "../bench/store.ts";
import { type Corner, cornersOf, dragCorner, keyCorner } from "./corners.ts";
import {
  type EditorFrame,
  editorFrame,
  hourSteps,
  NARROW_SHEET,
  tempSteps,
  WIDE_SHEET,
} from "./editorFrame.ts";

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
    const { x, y } = frame.at(seconds, tempsC[i] as number);
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
