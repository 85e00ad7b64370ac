import { html, type TemplateResult } from "lit-html";
import type { Place } from "../../core/photo/Picture.ts";
import type { Bench } from "../bench/store.ts";
import { showPhoto } from "./changePhoto.ts";
import { followPointer, inside, placeUnder } from "./pointer.ts";

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
