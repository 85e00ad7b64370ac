import { html, nothing, type TemplateResult } from "lit-html";
import { ref } from "lit-html/directives/ref.js";
import type { Place } from "../../core/photo/Picture.ts";
import type { DecodedPhoto } from "./decodePhoto.ts";

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
