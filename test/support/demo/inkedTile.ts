import { deflateSync } from "node:zlib";
import { photographed, type Rendered, recursiveDivision, type Segment } from "../mosaics.ts";

/** The picture is 1080 by 1180 pixels; the tile's 100 mm are 1000 pixels. */
const SIZE = { width: 1080, height: 1180 };
const TILE = { x: 40, y: 40, side: 1000 };
const RULER = { y: 1080, height: 60 };
const PX_PER_MM = TILE.side / 100;
const SEED = 20_260_523;

/** Grey levels that are kept, of 255; fewer make a smaller file. */
const GREY_STEP = 8;

/** Name of the demo picture in its folder. */
export const DEMO_PHOTO = "inked-tile.png";

/** How the demo picture is measured: ends of the ruler's 100 mm, and the tile. */
export const DEMO_SCALE = "40,1110 1040,1110 100mm";
export const DEMO_CROP = "46,46,988,988";

/** The cracks of the invented tile, in pixels of the tile: pieces cut in two, bent a little. */
export function tileCracks(): readonly Segment[] {
  const straight = recursiveDivision({ width: TILE.side, height: TILE.side }, 92, SEED);
  return straight.flatMap(({ ax, ay, bx, by }) => {
    const count = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / 8));
    const bent = Array.from({ length: count + 1 }, (_, i) => {
      const share = i / count;
      return warped(ax + share * (bx - ax), ay + share * (by - ay));
    });
    return bent.slice(1).map((to, i) => {
      const from = bent[i] as { readonly x: number; readonly y: number };
      return { ax: from.x, ay: from.y, bx: to.x, by: to.y };
    });
  });
}

function warped(x: number, y: number): { readonly x: number; readonly y: number } {
  return {
    x: x + 14 * Math.sin(y / 61 + 1.3) + 9 * Math.sin((x + y) / 37) + 22 * Math.sin(y / 210),
    y: y + 14 * Math.sin(x / 67 + 0.4) + 9 * Math.sin((x - y) / 41 + 2) + 22 * Math.sin(x / 190),
  };
}

/** The invented photograph: a crackled tile, its cracks dark from tea, on a dark table above a ruler. */
export function inkedTile(): Rendered {
  const tile = photographed(tileCracks(), {
    width: TILE.side,
    height: TILE.side,
    lineWidth: 4,
    contrast: 0.55,
    blur: 0.8,
    noise: 2.5,
    falloff: 0.25,
    seed: SEED,
  });
  const grey = new Float32Array(SIZE.width * SIZE.height).fill(70);
  for (let y = 0; y < TILE.side; y++)
    grey.set(
      tile.grey.subarray(y * TILE.side, (y + 1) * TILE.side),
      (y + TILE.y) * SIZE.width + TILE.x,
    );
  drawRuler(grey);
  return { ...SIZE, grey: grey.map((value) => GREY_STEP * Math.round(value / GREY_STEP)) };
}

function drawRuler(grey: Float32Array): void {
  const set = (x: number, y: number, value: number) => {
    grey[y * SIZE.width + x] = value;
  };
  for (let y = RULER.y; y < RULER.y + RULER.height; y++)
    for (let x = TILE.x - 20; x < TILE.x + TILE.side + 20; x++) set(x, y, 235);
  for (let mm = 0; mm <= 100; mm++) {
    const length = mm % 10 === 0 ? 40 : mm % 5 === 0 ? 28 : 16;
    const x = TILE.x + mm * PX_PER_MM;
    for (let y = RULER.y; y < RULER.y + length; y++) for (const dx of [-1, 0]) set(x + dx, y, 30);
  }
}

/** A grey picture as the bytes of a PNG file; the same pixels always, the same bytes from the same zlib. */
export function greyPng({ width, height, grey }: Rendered): Uint8Array {
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) rows[y * (width + 1) + 1 + x] = grey[y * width + x] as number;
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  return Buffer.concat([
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(rows, { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(type: string, content: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, "latin1"), content]);
  const out = Buffer.alloc(named.length + 8);
  out.writeUInt32BE(content.length, 0);
  named.copy(out, 4);
  out.writeUInt32BE(crc(named), named.length + 4);
  return out;
}

/** Cyclic redundancy check of the PNG specification, bit by bit. */
function crc(bytes: Buffer): number {
  let check = 0xffffffff;
  for (const byte of bytes) {
    check ^= byte;
    for (let bit = 0; bit < 8; bit++) check = check & 1 ? (check >>> 1) ^ 0xedb88320 : check >>> 1;
  }
  return (check ^ 0xffffffff) >>> 0;
}
