import { html, nothing, svg, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import { ref } from "lit-html/directives/ref.js";
import type { Mask } from "../../core/photo/aboveThreshold.ts";
import { type LineCrossing, placeAlong } from "../../core/photo/correctedPhoto.ts";
import type { Crossings } from "../../core/photo/crossingsAlong.ts";
import type { Place } from "../../core/photo/Picture.ts";
import type { Stroke } from "../../core/photo/underStroke.ts";
import type { BenchState } from "../bench/state.ts";
import type { Bench } from "../bench/store.ts";
import { crossingsOn, isShown, type ListedCrossing } from "./correctCount.ts";
import { areaOf, endsOf } from "./measuredPart.ts";
import type { PhotoArea, PhotoDesk, PhotoWork } from "./photoState.ts";

/** Colour of a crack that was found, as in the overlay of the command, and opaque. */
const CRACK = [214, 40, 40, 255] as const;

type Measured = NonNullable<PhotoDesk["measured"]>;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** What lies over the picture: cracks, test lines, crossings, areas and the scale. */
export function photoMarks(bench: Bench, size: Size): TemplateResult {
  const state = bench.state();
  const { measured, shown, stroke, tool, line, crossing } = state.photo;
  const work = state.work.photo;
  return html`${measured === null ? nothing : cracks(measured, size)}
    <svg class="photo-marks" viewBox="0 0 ${size.width} ${size.height}" preserveAspectRatio="none" aria-hidden="true">
      ${work.region === null ? nothing : shade(areaOf(work, size), size)}
      ${measured === null ? nothing : guard([measured, shown, work.takenAway, work.added], () => lineMarks(measured, state))}
      ${measured === null || line === null ? nothing : oneLine(measured, line, crossing)}
      ${work.leftOut.map((area, at) => leftOut(area, at))}
      ${work.scaleBy === "points" && tool === "points" ? svg`<path class="photo-scale" d=${path(endsOf(work, size))}></path>` : nothing}
      ${stroke === null ? nothing : strokeMark(stroke, tool)}
    </svg>`;
}

/** Everything but the part to measure, under a veil. */
function shade({ x, y, width, height }: PhotoArea, size: Size): TemplateResult {
  return svg`<path class="photo-veil" fill-rule="evenodd" d=${`M0 0H${size.width}V${size.height}H0ZM${x} ${y}h${width}v${height}h${-width}Z`}></path>
    <rect class="photo-part" x=${x} y=${y} width=${width} height=${height}></rect>`;
}

function leftOut({ x, y, width, height }: PhotoArea, at: number): TemplateResult {
  return svg`<g class="photo-left"><rect x=${x} y=${y} width=${width} height=${height}></rect>
    <path d=${`M${x} ${y}L${x + width} ${y + height}M${x + width} ${y}L${x} ${y + height}`}></path>
    <title>${`area ${at + 1}, left out`}</title></g>`;
}

function strokeMark({ from, to }: Stroke, tool: PhotoDesk["tool"]): TemplateResult {
  if (tool !== "leave") return svg`<path class="photo-stroke" d=${path([from, to])}></path>`;
  const [x, y] = [Math.min(from.x, to.x), Math.min(from.y, to.y)];
  return svg`<rect class="photo-stroke" x=${x} y=${y} width=${Math.abs(to.x - from.x)} height=${Math.abs(to.y - from.y)}></rect>`;
}

function lineMarks(measured: Measured, state: BenchState): TemplateResult {
  const { counted } = measured.found.found;
  const work: PhotoWork = state.work.photo;
  const lines = counted.flatMap((each, at) => (isShown(state.photo.shown, each) ? [at] : []));
  const listed = lines.flatMap((at) => crossingsOn(counted, at, work));
  const dots = (is: ListedCrossing["is"]) =>
    listed
      .filter((each) => each.is === is)
      .map((each) => dot(measured, each))
      .join("");
  return svg`<path class="photo-line" d=${lines.map((at) => linePath(measured, counted[at] as Crossings)).join("")}></path>
    ${(["found", "added", "taken away"] as const).map((is) => {
      const d = dots(is);
      const kind = is.replace(" ", "-");
      return svg`<path class="photo-dots is-${kind} is-edge" d=${d}></path><path class="photo-dots is-${kind}" d=${d}></path>`;
    })}`;
}

function oneLine(measured: Measured, at: number, crossing: LineCrossing | null): TemplateResult {
  const line = measured.found.found.counted[at];
  if (line === undefined) return svg``;
  const mark = crossing?.line === at ? dot(measured, crossing) : "";
  return svg`<path class="photo-line is-chosen" d=${linePath(measured, line)}></path>
    <path class="photo-dots is-chosen" d=${mark}></path>`;
}

/** A place of the mask in the picture. */
function inPicture({ found, part }: Measured, { x, y }: Place): Place {
  const { factor } = found.found;
  return { x: part.area.x + x * factor, y: part.area.y + y * factor };
}

function linePath(measured: Measured, { line }: Crossings): string {
  return path([inPicture(measured, line.from), inPicture(measured, line.to)]);
}

function dot(measured: Measured, { line, along }: LineCrossing): string {
  const on = measured.found.found.counted[line] as Crossings;
  const { x, y } = inPicture(measured, placeAlong(on, along));
  return `M${x.toFixed(1)} ${y.toFixed(1)}h0`;
}

function path([a, b]: readonly [Place, Place]): string {
  return `M${a.x.toFixed(1)} ${a.y.toFixed(1)}L${b.x.toFixed(1)} ${b.y.toFixed(1)}`;
}

function cracks(measured: Measured, size: Size): TemplateResult {
  const { area } = measured.part;
  const { factor, lines } = measured.found.found;
  const share = (value: number, of: number) => `${(100 * value) / of}%`;
  const at = `left: ${share(area.x, size.width)}; top: ${share(area.y, size.height)}; width: ${share(lines.width * factor, size.width)}; height: ${share(lines.height * factor, size.height)}`;
  return html`<canvas class="photo-cracks" aria-hidden="true" .style=${at} ${ref((element) => drawMask(element as HTMLCanvasElement | undefined, lines))}></canvas>`;
}

const DRAWN = new WeakMap<HTMLCanvasElement, Mask>();

function drawMask(canvas: HTMLCanvasElement | undefined, mask: Mask): void {
  if (canvas === undefined || DRAWN.get(canvas) === mask) return;
  DRAWN.set(canvas, mask);
  const { width, height, bits } = mask;
  canvas.width = width;
  canvas.height = height;
  const pixels = new ImageData(width, height);
  for (let i = 0; i < bits.length; i++) if (bits[i] === 1) pixels.data.set(CRACK, 4 * i);
  canvas.getContext("2d")?.putImageData(pixels, 0, 0);
}
