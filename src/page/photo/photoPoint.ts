import { html, nothing, svg, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import { ref } from "lit-html/directives/ref.js";
import { type LineCrossing, placeAlong, type Stroke } from "../../core/photo/correctedPhoto.ts";
import type { Mask } from "../../core/photo/crackLines.ts";
import type { Crossings } from "../../core/photo/crossings.ts";
import type { Place } from "../../core/photo/PhotoMeasurement.ts";
import type { DecodedPhoto } from "../state/decodePhoto.ts";
import {
  areaOf,
  endsOf,
  type PhotoArea,
  type PhotoDesk,
  type PhotoWork,
} from "../state/photoState.ts";
import type { Bench, BenchState } from "../state/state.ts";
import { crossingsOn, isShown, type ListedCrossing, showPhoto } from "./changePhoto.ts";

/** A point on the picture that can be moved. */
interface PhotoPointOptions {
  readonly id: string;
  readonly name: string;
  /** Where it is now; the drawing may be a frame behind. */
  readonly place: () => Place;
  readonly size: { readonly width: number; readonly height: number };
  /** A cross for a place on the ruler, a corner for that of an area. */
  readonly look: "cross" | "corner";
  readonly onMove: (to: Place) => void;
}

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** A point to be dragged, or moved by the arrow keys: by one pixel of the picture, with Shift by ten. */
export function photoPoint(bench: Bench, options: PhotoPointOptions): TemplateResult {
  const { id, name, size, look } = options;
  const place = options.place();
  const x = Math.round(place.x);
  const y = Math.round(place.y);
  const words = `${x} across, ${y} down, in pixels`;
  const at = `left: ${(100 * place.x) / size.width}%; top: ${(100 * place.y) / size.height}%`;
  return html`<div class="photo-point is-${look}" id=${id} tabindex="0" role="slider" aria-label=${name}
    aria-valuetext=${words} aria-valuenow=${x} aria-valuemin="0" aria-valuemax=${size.width} .style=${at}
    @focus=${() => showPhoto(bench, { lens: options.place() })} @blur=${() => leave(bench)}
    @keydown=${(event: KeyboardEvent) => key(bench, options, event)}
    @pointerdown=${(event: PointerEvent) => drag(bench, options, event)}></div>`;
}

function leave(bench: Bench): void {
  bench.settle();
  showPhoto(bench, { lens: null });
}

function moveTo(bench: Bench, { size, onMove }: PhotoPointOptions, to: Place): void {
  const kept = inside({ x: Math.round(to.x), y: Math.round(to.y) }, size);
  onMove(kept);
  showPhoto(bench, { lens: kept });
}

function key(bench: Bench, options: PhotoPointOptions, event: KeyboardEvent): void {
  const step = STEPS[event.key];
  if (step === undefined || event.ctrlKey || event.metaKey) return;
  event.preventDefault();
  const many = event.shiftKey ? 10 : 1;
  const { x, y } = options.place();
  moveTo(bench, options, { x: x + many * step[0], y: y + many * step[1] });
}

/** The point keeps its distance to the finger, so that it does not jump under it. */
function drag(bench: Bench, options: PhotoPointOptions, event: PointerEvent): void {
  event.preventDefault();
  event.stopPropagation();
  const element = event.currentTarget as HTMLElement;
  const stage = element.parentElement as HTMLElement;
  element.focus({ preventScroll: true });
  const { size } = options;
  const place = options.place();
  const began = placeUnder(event, stage, size);
  const off = { x: place.x - began.x, y: place.y - began.y };
  followPointer(event, {
    move: (moved) => {
      const under = placeUnder(moved, stage, size);
      moveTo(bench, options, { x: under.x + off.x, y: under.y + off.y });
    },
    drop: bench.settle,
  });
}

/** Pixels of the picture across the lens, and pixels of the lens for each. */
const ACROSS = 41;
const TIMES = 4;

/** The picture about a place, four times as large, on the side of the stage where the place is not. */
export function photoLens(
  photo: DecodedPhoto,
  place: Place | null,
): TemplateResult | typeof nothing {
  if (place === null) return nothing;
  const side = place.x > photo.bitmap.width / 2 ? "is-left" : "is-right";
  return html`<canvas class="photo-lens ${side}" width=${ACROSS * TIMES} height=${ACROSS * TIMES} aria-hidden="true"
    ${ref((element) => look(element as HTMLCanvasElement | undefined, photo, place))}></canvas>`;
}

function look(canvas: HTMLCanvasElement | undefined, { bitmap }: DecodedPhoto, place: Place): void {
  const pen = canvas?.getContext("2d");
  if (!pen) return;
  const side = ACROSS * TIMES;
  const half = ACROSS / 2;
  pen.fillStyle = "#8f8071";
  pen.fillRect(0, 0, side, side);
  pen.imageSmoothingEnabled = false;
  pen.drawImage(bitmap, place.x - half, place.y - half, ACROSS, ACROSS, 0, 0, side, side);
  for (const [colour, width] of [
    ["#fff", 4],
    ["#0b3c5d", 1.5],
  ] as const) {
    pen.strokeStyle = colour;
    pen.lineWidth = width;
    pen.beginPath();
    for (const [from, to] of [
      [0, 0.42],
      [0.58, 1],
    ] as const) {
      pen.moveTo(side * from, side / 2);
      pen.lineTo(side * to, side / 2);
      pen.moveTo(side / 2, side * from);
      pen.lineTo(side / 2, side * to);
    }
    pen.stroke();
  }
}

/** The place in the picture that a pointer is over [px], kept inside it. */
export function placeUnder(
  event: { readonly clientX: number; readonly clientY: number },
  stage: Element,
  size: { readonly width: number; readonly height: number },
): Place {
  const { left, top, width, height } = stage.getBoundingClientRect();
  return inside(
    {
      x: ((event.clientX - left) / width) * size.width,
      y: ((event.clientY - top) / height) * size.height,
    },
    size,
  );
}

/** The nearest place in the picture. */
function inside(
  { x, y }: Place,
  { width, height }: { readonly width: number; readonly height: number },
): Place {
  return { x: Math.min(width, Math.max(0, x)), y: Math.min(height, Math.max(0, y)) };
}

/** Follows a pointer that is down until it is lifted. */
export function followPointer(
  event: PointerEvent,
  on: { readonly move: (moved: PointerEvent) => void; readonly drop: () => void },
): void {
  const element = event.currentTarget as HTMLElement | SVGElement;
  element.setPointerCapture(event.pointerId);
  const move = (moved: Event) => on.move(moved as PointerEvent);
  element.addEventListener("pointermove", move);
  element.addEventListener(
    "lostpointercapture",
    () => {
      element.removeEventListener("pointermove", move);
      on.drop();
    },
    { once: true },
  );
}

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
  return svg`<path class="photo-line" d=${lines.map((at) => linePath(measured, counted[at]!)).join("")}></path>
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
  const on = measured.found.found.counted[line]!;
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
