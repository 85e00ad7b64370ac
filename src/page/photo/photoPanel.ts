import { html, nothing, type TemplateResult } from "lit-html";
import { seededEven } from "../../core/math/distributions.ts";
import type { Problem, Result } from "../../core/problem.ts";
import { problemList } from "../parts/controls.ts";
import { fileDrop } from "../parts/files.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import type { DecodedPhoto } from "../state/decodePhoto.ts";
import type { PhotoDesk, PhotoWork } from "../state/photoState.ts";
import type { Bench } from "../state/state.ts";
import { correctedOf, layPhoto, showPhoto } from "./changePhoto.ts";
import { correctPanel, toolBar } from "./correctPanel.ts";
import { photoStage } from "./photoStage.ts";
import { resultLead, resultPanel } from "./resultPanel.ts";
import { scaleFields, stillMissing } from "./scaleFields.ts";
import { countCracks, stopCounting } from "./watchPhoto.ts";

/** Largest file that is laid down; the browser has to keep it [bytes]. */
const MOST_BYTES = 60 * 2 ** 20;

/** A photograph of an inked tile: its scale, the count of its cracks, and what is corrected by hand. */
export function photoPanel(bench: Bench): TemplateResult {
  const { photo, work } = bench.state();
  const { file } = work.photo;
  return html`<section class="photo" aria-labelledby="photo-title">
    <h2 id="photo-title">Measure a photograph of a tile</h2>
    ${file === null ? emptyPanel(bench) : html`${drop(bench, "Pick another photograph")}${fileLine(bench, file)}`}
    ${problemList(photo.problems)}
    ${busyLine(bench, photo)}
    ${photo.picture === null ? nothing : openPhoto(bench, photo.picture)}
  </section>`;
}

function drop(bench: Bench, button: string): TemplateResult {
  return fileDrop({
    id: "photo-file",
    button,
    hint: "or drop it here: PNG or JPEG",
    accept: ".png,.jpg,.jpeg,image/png,image/jpeg",
    onFiles: (files) => lay(bench, files),
  });
}

function emptyPanel(bench: Bench): TemplateResult {
  return html`<p class="lead">Lay down a photograph of a crackled tile, and have its cracks counted.</p>
    ${drop(bench, "Pick a photograph")}
    <p>Rub ink into the cracks and wipe the glaze clean; lay a ruler beside the tile, in its plane; photograph it from straight above, in focus and in even light, with ten cells across or more; five give a wide range.</p>
    <p><button type="button" @click=${() => void layDemo(bench)}>Try it with a demo tile</button>
      <span class="hint">invented: drawn by this page, with a ruler</span></p>`;
}

function fileLine(bench: Bench, file: KeptFile): TemplateResult {
  const { isInvented } = bench.state().work.photo;
  const { picture } = bench.state().photo;
  const was = picture?.was ?? null;
  return html`<ul class="files"><li><span class="file-kind">photograph</span> <span class="file-name">${file.name}</span>
      ${isInvented ? html`<span class="hint">invented, drawn by this page</span>` : nothing}
      <button type="button" class="slim" @click=${() => layPhoto(bench, `taking away ${file.name}`, {})}>Take away<span class="out-of-sight"> ${file.name}</span></button></li></ul>
    ${
      was === null || picture === null
        ? nothing
        : html`<p class="paint-caution">It has ${was.width} by ${was.height} pixels, more than this page measures; it was made smaller to ${picture.picture.width} by ${picture.picture.height}. Fine cracks can be lost by that: crop the picture to the tile, or measure it with the command.</p>`
    }`;
}

function lay(bench: Bench, files: Result<readonly KeptFile[]>): void {
  const [file] = files.ok ? files.value : [];
  const problems = files.ok ? [] : files.problems;
  const large = file !== undefined && file.bytes.length > MOST_BYTES ? tooLarge(file) : null;
  if (large !== null || file === undefined) {
    showPhoto(bench, { problems: large === null ? problems : [large] });
    return;
  }
  layPhoto(bench, `laying down ${file.name}`, { file });
}

function tooLarge({ name, bytes }: KeptFile): Problem {
  return {
    code: "file/too-large",
    where: name,
    what: `it has ${Math.round(bytes.length / 2 ** 20)} MB`,
    expected: `at most ${MOST_BYTES / 2 ** 20} MB`,
    fix: "save it as JPEG, or crop it to the tile",
  };
}

async function layDemo(bench: Bench): Promise<void> {
  const demo = await demoTile();
  layPhoto(bench, "laying down the demo tile", demo);
}

function busyLine(bench: Bench, { busy, isStopped }: PhotoDesk): TemplateResult | typeof nothing {
  if (busy !== null)
    return html`<p class="photo-busy" role="status"><progress max="1" .value=${busy.fraction} aria-label="How far it is"></progress> ${busy.at}…
      <button type="button" @click=${() => stopCounting(bench)}>Stop</button></p>`;
  if (!isStopped) return nothing;
  return html`<p class="photo-busy">Stopped. <button type="button" @click=${() => void countCracks(bench)}>Count the cracks</button></p>`;
}

function openPhoto(bench: Bench, picture: DecodedPhoto): TemplateResult {
  const { photo, work } = bench.state();
  const { measured } = photo;
  const { takenAway, added, leftOut } = work.photo;
  const corrected = measured === null ? null : correctedOf(measured, takenAway, added, leftOut);
  return html`<div class="photo-bench">
      <div class="photo-left-side">${toolBar(bench)}${photoStage(bench, picture)}</div>
      <div class="photo-right-side">${stillMissing(work.photo)}${corrected?.ok ? resultLead(bench, corrected.value) : nothing}${scaleFields(bench, picture)}${correctPanel(bench, picture)}</div>
    </div>
    ${corrected === null ? nothing : corrected.ok ? resultPanel(bench, corrected.value) : problemList(corrected.problems)}`;
}

/** Pixels a millimetre, the tile and its ruler in the picture [px]. */
const PX_PER_MM = 10;
const SIZE = { width: 940, height: 1000 };
const TILE = { x: 60, y: 40, side: 820 };
const RULER = { y: 900, height: 70, mm: 80 };
/** Side of the squares that each hold the middle of one cell, and width of a crack with its ink [px]. */
const CELL = 54;
const CRACK = 4.4;
const SEED = 11;

/** An invented tile to try the count with, its scale and its part already told. */
async function demoTile(): Promise<Partial<PhotoWork>> {
  const canvas = new OffscreenCanvas(SIZE.width, SIZE.height);
  const pen = canvas.getContext("2d");
  if (pen === null) throw new Error("no canvas");
  pen.putImageData(new ImageData(demoPixels(), SIZE.width, SIZE.height), 0, 0);
  const file = await canvas.convertToBlob({ type: "image/png" });
  const y = RULER.y + 20;
  return {
    file: { name: "invented-tile.png", bytes: new Uint8Array(await file.arrayBuffer()) },
    isInvented: true,
    ends: [
      { x: TILE.x, y },
      { x: TILE.x + RULER.mm * PX_PER_MM, y },
    ],
    distanceMm: RULER.mm,
    region: { x: TILE.x + 10, y: TILE.y + 10, width: TILE.side - 20, height: TILE.side - 20 },
  };
}

function demoPixels(): Uint8ClampedArray<ArrayBuffer> {
  const middles = scattered();
  const grain = seededEven(SEED + 1);
  const pixels = new Uint8ClampedArray(4 * SIZE.width * SIZE.height).fill(255);
  for (let y = 0; y < SIZE.height; y++)
    for (let x = 0; x < SIZE.width; x++) {
      const at = 4 * (y * SIZE.width + x);
      const noise = 5 * (grain() - 0.5);
      const [red, green, blue] = colourAt(x, y, middles);
      pixels[at] = red + noise;
      pixels[at + 1] = green + noise;
      pixels[at + 2] = blue + noise;
    }
  return pixels;
}

type Colour = readonly [number, number, number];

function colourAt(x: number, y: number, middles: Middles): Colour {
  const inX = x >= TILE.x && x < TILE.x + TILE.side;
  if (inX && y >= TILE.y && y < TILE.y + TILE.side) return glazeAt(x, y, middles);
  if (y < RULER.y || y >= RULER.y + RULER.height || x < TILE.x - 20 || x > TILE.x + TILE.side + 20)
    return [96, 84, 74];
  return isTick(x, y) ? [40, 38, 36] : [236, 228, 208];
}

function isTick(x: number, y: number): boolean {
  const mm = Math.round((x - TILE.x) / PX_PER_MM);
  const length = mm % 10 === 0 ? 40 : mm % 5 === 0 ? 28 : 16;
  const away = x - TILE.x - mm * PX_PER_MM;
  return mm >= 0 && mm <= RULER.mm && y < RULER.y + length && (away === 0 || away === -1);
}

/** Pale glaze in light that falls from the upper left, dark where a crack holds ink. */
function glazeAt(x: number, y: number, middles: Middles): Colour {
  const light = 1 - 0.00018 * (x + y);
  const ink = 1 / (1 + Math.exp((toCrack(x, y, middles) - CRACK / 2) / 0.5));
  const shade = light * (1 - 0.62 * ink);
  return [214 * shade, 219 * shade, 206 * shade];
}

type Middles = (column: number, row: number) => readonly [number, number];

/** One middle at a chance place in each square. */
function scattered(): Middles {
  const [columns, rows] = [SIZE.width, SIZE.height].map((side) => Math.ceil(side / CELL) + 6);
  const even = seededEven(SEED);
  const places = Array.from(
    { length: (columns as number) * (rows as number) },
    () => [0.1 + 0.8 * even(), 0.1 + 0.8 * even()] as const,
  );
  return (column, row) => {
    const [dx, dy] = places[(row + 3) * (columns as number) + column + 3] ?? [0.5, 0.5];
    return [(column + dx) * CELL, (row + dy) * CELL];
  };
}

/** Distance to the nearest border between the cells of two middles [px]. */
function toCrack(x: number, y: number, middles: Middles): number {
  const [column, row] = [Math.floor(x / CELL), Math.floor(y / CELL)];
  const near: (readonly [number, number])[] = [];
  for (let down = -2; down <= 2; down++)
    for (let across = -2; across <= 2; across++) near.push(middles(column + across, row + down));
  const square = ([mx, my]: readonly [number, number]) => (mx - x) ** 2 + (my - y) ** 2;
  const own = near.reduce((best, each) => (square(each) < square(best) ? each : best));
  let least = Number.POSITIVE_INFINITY;
  for (const other of near) {
    if (other === own) continue;
    const apart = Math.hypot(other[0] - own[0], other[1] - own[1]);
    least = Math.min(least, (square(other) - square(own)) / (2 * apart));
  }
  return least;
}
