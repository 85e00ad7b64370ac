import { html, type TemplateResult } from "lit-html";
import { ref } from "lit-html/directives/ref.js";
import type { Place } from "../../core/photo/PhotoMeasurement.ts";
import type { DecodedPhoto } from "../state/decodePhoto.ts";
import { areaOf, endsOf, type PhotoArea } from "../state/photoState.ts";
import type { Bench } from "../state/state.ts";
import { changePart, changePhoto, leaveOut, showPhoto, strokeDone } from "./changePhoto.ts";
import { followPointer, photoLens, photoMarks, photoPoint, placeUnder } from "./photoPoint.ts";

/** Longest side of the drawing of a picture on the page [px]. */
const LONGEST_PX = 2000;
/** How near to a crossing or a line a touch has to be [px of the screen]. */
const TOUCH_PX = 14;
/** How near to a crossing a stroke has to pass, half of its width as it is drawn [px of the screen]. */
const STROKE_PX = 6;
/** Least side of an area [px of the picture]. */
const LEAST_AREA_PX = 4;

/** The photograph with what was found drawn over it, and the points that are moved by hand. */
export function photoStage(bench: Bench, photo: DecodedPhoto): TemplateResult {
  const { desk, size } = { desk: bench.state().photo, size: photo.picture };
  const { name } = photo.file;
  const wide = `--ratio: ${size.width / size.height}; --zoom: ${desk.zoom}`;
  return html`<div class="photo-frame">
    <div class="photo-scroll" tabindex="0" role="group" aria-label=${`The picture ${name}`}>
      <div class="photo-stage ${desk.tool === "points" ? "" : "is-drawing"}" .style=${wide}>
        <canvas role="img" aria-label=${`${name}, as it is measured`} ${ref((element) => draw(element as HTMLCanvasElement | undefined, photo))}></canvas>
        ${photoMarks(bench, size)}
        <div class="photo-glass" @pointerdown=${(event: PointerEvent) => stroke(bench, photo, event)}></div>
        ${points(bench, photo)}
      </div>
    </div>
    ${photoLens(photo, desk.lens)}
  </div>`;
}

const DRAWN = new WeakMap<HTMLCanvasElement, DecodedPhoto>();

function draw(canvas: HTMLCanvasElement | undefined, photo: DecodedPhoto): void {
  if (canvas === undefined || DRAWN.get(canvas) === photo) return;
  DRAWN.set(canvas, photo);
  const { width, height } = photo.bitmap;
  const share = Math.min(1, LONGEST_PX / Math.max(width, height));
  canvas.width = Math.round(width * share);
  canvas.height = Math.round(height * share);
  canvas.getContext("2d")?.drawImage(photo.bitmap, 0, 0, canvas.width, canvas.height);
}

/** The points that the chosen tool moves. */
function points(bench: Bench, photo: DecodedPhoto): readonly TemplateResult[] {
  const { tool } = bench.state().photo;
  if (tool === "points") return [...scalePoints(bench, photo), ...regionPoints(bench, photo)];
  return tool === "leave" ? leftOutPoints(bench, photo) : [];
}

function scalePoints(bench: Bench, { picture }: DecodedPhoto): readonly TemplateResult[] {
  if (bench.state().work.photo.scaleBy !== "points") return [];
  const ends = () => endsOf(bench.state().work.photo, picture);
  return ([0, 1] as const).map((at) => {
    const name = at === 0 ? "First place on the ruler" : "Second place on the ruler";
    const move = (to: Place) => {
      const moved = at === 0 ? ([to, ends()[1]] as const) : ([ends()[0], to] as const);
      changePhoto(bench, "moving a place on the ruler", { ends: moved }, { merge: `end ${at}` });
    };
    return photoPoint(bench, {
      id: `photo-end-${at}`,
      name,
      place: () => ends()[at],
      size: picture,
      look: "cross",
      onMove: move,
    });
  });
}

function regionPoints(bench: Bench, { picture }: DecodedPhoto): readonly TemplateResult[] {
  if (bench.state().work.photo.region === null) return [];
  return cornersOf(bench, {
    id: "photo-part",
    name: "of the part to measure",
    area: () => areaOf(bench.state().work.photo, picture),
    size: picture,
    onChange: (region) =>
      changePart(bench, { what: "moving the part to measure", merge: "photo part" }, { region }),
  });
}

function leftOutPoints(bench: Bench, { picture }: DecodedPhoto): readonly TemplateResult[] {
  const areas = () => bench.state().work.photo.leftOut;
  return areas().flatMap((drawn, at) =>
    cornersOf(bench, {
      id: `photo-left-${at}`,
      name: `of area ${at + 1} that is left out`,
      area: () => areas()[at] ?? drawn,
      size: picture,
      onChange: (changed) => {
        const next = areas().map((each, i) => (i === at ? changed : each));
        changePhoto(bench, "moving an area", { leftOut: next }, { merge: `area ${at}` });
      },
    }),
  );
}

/** Two opposite corners of an area; neither can be moved past the other. */
function cornersOf(
  bench: Bench,
  of: {
    readonly id: string;
    readonly name: string;
    readonly area: () => PhotoArea;
    readonly size: { readonly width: number; readonly height: number };
    readonly onChange: (area: PhotoArea) => void;
  },
): readonly TemplateResult[] {
  const first = () => ({ x: of.area().x, y: of.area().y });
  const last = () => ({ x: of.area().x + of.area().width, y: of.area().y + of.area().height });
  const moveFirst = (to: Place) => {
    const end = last();
    const place = {
      x: Math.min(to.x, end.x - LEAST_AREA_PX),
      y: Math.min(to.y, end.y - LEAST_AREA_PX),
    };
    return between(place, end);
  };
  const moveLast = (to: Place) => {
    const { x, y } = first();
    return between(
      { x, y },
      { x: Math.max(to.x, x + LEAST_AREA_PX), y: Math.max(to.y, y + LEAST_AREA_PX) },
    );
  };
  return [
    { key: "a", name: `Upper left corner ${of.name}`, place: first, area: moveFirst },
    { key: "b", name: `Lower right corner ${of.name}`, place: last, area: moveLast },
  ].map(({ key, name, place, area }) =>
    photoPoint(bench, {
      id: `${of.id}-${key}`,
      name,
      place,
      size: of.size,
      look: "corner",
      onMove: (to) => of.onChange(area(to)),
    }),
  );
}

function between(a: Place, b: Place): PhotoArea {
  const [left, right] = [Math.min(a.x, b.x), Math.max(a.x, b.x)];
  const [top, bottom] = [Math.min(a.y, b.y), Math.max(a.y, b.y)];
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** A touch or a stroke with the tool in hand. */
function stroke(bench: Bench, photo: DecodedPhoto, event: PointerEvent): void {
  const { tool, measured } = bench.state().photo;
  if (tool === "points" || measured?.found.cracks == null || event.button !== 0) return;
  event.preventDefault();
  const glass = event.currentTarget as HTMLElement;
  const size = photo.picture;
  const reachPx = (TOUCH_PX * size.width) / glass.getBoundingClientRect().width;
  const from = placeUnder(event, glass, size);
  showPhoto(bench, { stroke: { from, to: from } });
  const move = (moved: PointerEvent) => {
    const to = placeUnder(moved, glass, size);
    const isTouch = Math.hypot(to.x - from.x, to.y - from.y) < reachPx / 2;
    showPhoto(bench, { stroke: { from, to: isTouch ? from : to } });
  };
  const drop = () => {
    const drawn = bench.state().photo.stroke;
    const isTouch = drawn?.from === drawn?.to;
    const share = isTouch ? 1 : STROKE_PX / TOUCH_PX;
    if (drawn !== null) done(bench, tool, { ...drawn, reachPx: share * reachPx });
    showPhoto(bench, { stroke: null });
  };
  followPointer(event, { move, drop });
}

function done(
  bench: Bench,
  tool: "take" | "add" | "leave",
  drawn: { readonly from: Place; readonly to: Place; readonly reachPx: number },
): void {
  if (tool !== "leave") {
    strokeDone(bench, tool, drawn.reachPx);
    return;
  }
  const area = between(drawn.from, drawn.to);
  if (Math.min(area.width, area.height) >= LEAST_AREA_PX) leaveOut(bench, area);
}

/** An area in the middle of what is measured, to be moved by its corners. */
export function newArea(bench: Bench, photo: DecodedPhoto): void {
  const { x, y, width, height } = areaOf(bench.state().work.photo, photo.picture);
  leaveOut(bench, {
    x: Math.round(x + 0.45 * width),
    y: Math.round(y + 0.45 * height),
    width: Math.round(0.1 * width),
    height: Math.round(0.1 * height),
  });
}
