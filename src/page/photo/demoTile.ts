import { seededEven } from "../../core/ware/seededEven.ts";
import type { PhotoWork } from "./photoState.ts";

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
export async function demoTile(): Promise<Partial<PhotoWork>> {
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
