import sharp from "sharp";
import { drawnIntercept, photographed, recursiveDivision, type Segment } from "./mosaics.ts";

/** Side of the tile as drawn straight on [px]; it stands for 100 mm. */
const TILE_PX = 1200;
const TILE_MM = 100;

/** The photograph [px]. */
const PHOTO = { width: 1500, height: 1560 };

type Point = readonly [x: number, y: number];

/** What makes a photograph difficult; all of it at once unless said otherwise. */
export interface Trouble {
  readonly seed: number;
  /** How much nearer the lower edge is than the upper, as a share: camera held at a slant. */
  readonly slant?: number;
  /** Grey levels that the glare adds at its middle; 0 for none. */
  readonly glare?: number;
  /** Longest piece between cracks [px of the straight tile]. */
  readonly longest?: number;
  /** Width of an inked crack [px of the straight tile], and how dark it is, as a share. */
  readonly lineWidth?: number;
  readonly contrast?: number;
}

/** A photograph as a phone makes it of an inked tile, with what is true of it. */
export interface DifficultPhoto {
  readonly jpeg: Buffer;
  /** Length of crack in the square of the tile, in mm of line a crack: π A / (2 L). */
  readonly interceptMm: number;
  /** As `--corners` takes them: clockwise from top left, then the size. */
  readonly corners: string;
  /** As `--scale` takes it: the ruler's ends. */
  readonly scale: string;
  /** A box that lies inside the slanted tile, as `--crop` takes it. */
  readonly crop: string;
}

/**
 * A made-up photograph: tile with a celadon glaze, ink that has bled beside its cracks, glare of a
 * lamp, the corners of the lens darker, held at a slant over a wooden table with a ruler; JPEG 60.
 */
export async function difficultPhoto(trouble: Trouble): Promise<DifficultPhoto> {
  const { seed, slant = 0.08, glare = 140, longest = 110 } = trouble;
  const cracks = recursiveDivision({ width: TILE_PX, height: TILE_PX }, longest, seed);
  const corners = cornersOf(slant);
  const tile = tilePixels(cracks, trouble);
  const rgb = Buffer.alloc(PHOTO.width * PHOTO.height * 3);
  const toTile = homography(corners, [
    [0, 0],
    [TILE_PX, 0],
    [TILE_PX, TILE_PX],
    [0, TILE_PX],
  ]);
  for (let y = 0; y < PHOTO.height; y++)
    for (let x = 0; x < PHOTO.width; x++) {
      const ground = rulerAt(x, y) ?? tileAt(tile, toTile([x, y])) ?? tableAt(x, y);
      const lens =
        1 - 0.35 * (((x / PHOTO.width - 0.5) ** 2 + (y / PHOTO.height - 0.5) ** 2) / 0.5);
      const lamp = glare * Math.exp(-((x - 980) ** 2 + (y - 420) ** 2) / (2 * 90 ** 2));
      ground.forEach((value, channel) => {
        const bright = Math.round(value * lens + lamp);
        rgb[(y * PHOTO.width + x) * 3 + channel] = Math.min(255, Math.max(0, bright));
      });
    }
  const jpeg = await sharp(rgb, { raw: { ...PHOTO, channels: 3 } })
    .jpeg({ quality: 60 })
    .toBuffer();
  return {
    jpeg,
    interceptMm: drawnIntercept(cracks, { width: TILE_PX, height: TILE_PX }) * (TILE_MM / TILE_PX),
    corners: `${corners.map((point) => point.join(",")).join(" ")} ${TILE_MM}mm ${TILE_MM}mm`,
    scale: `150,${RULER.y + 30} 1350,${RULER.y + 30} ${TILE_MM}mm`,
    crop: "270,150,960,1150",
  };
}

const RULER = { y: 1430, height: 80 };

function cornersOf(slant: number): readonly [Point, Point, Point, Point] {
  const inset = Math.round((TILE_PX * slant) / 2);
  return [
    [150 + inset, 100],
    [1350 - inset, 112],
    [1350, 1360],
    [150, 1348],
  ];
}

/** Ink in the cracks and, fainter and wider, beside them. */
function tilePixels(cracks: readonly Segment[], trouble: Trouble): Float32Array {
  const { seed, lineWidth = 4, contrast = 0.5 } = trouble;
  const size = { width: TILE_PX, height: TILE_PX };
  const sharpInk = photographed(cracks, { ...size, lineWidth, contrast, blur: 1, noise: 3, seed });
  const bled = photographed(cracks, {
    ...size,
    lineWidth: 4 * lineWidth,
    contrast: 0.12,
    blur: 4,
    noise: 0,
    seed,
  });
  return sharpInk.grey.map((value, i) => (value * (bled.grey[i] as number)) / 205);
}

type Colour = readonly [number, number, number];

/** Celadon: less red than green, a little blue. */
function tileAt(tile: Float32Array, [x, y]: Point): Colour | null {
  if (x < 0 || y < 0 || x >= TILE_PX - 1 || y >= TILE_PX - 1) return null;
  const [left, top] = [Math.floor(x), Math.floor(y)];
  const [right, down] = [x - left, y - top];
  const at = (dx: number, dy: number) => tile[(top + dy) * TILE_PX + left + dx] as number;
  const grey =
    (at(0, 0) * (1 - right) + at(1, 0) * right) * (1 - down) +
    (at(0, 1) * (1 - right) + at(1, 1) * right) * down;
  return [0.72 * grey, 0.98 * grey, 0.86 * grey];
}

/** Planks, 90 px wide, with their grain. */
function tableAt(x: number, y: number): Colour {
  const grain = 12 * Math.sin(y / 7 + 3 * Math.sin(x / 190)) + (y % 90 < 3 ? -40 : 0);
  return [120 + grain, 85 + grain, 58 + grain];
}

function rulerAt(x: number, y: number): Colour | null {
  if (y < RULER.y || y >= RULER.y + RULER.height || x < 120 || x >= 1380) return null;
  const mm = Math.round((x - 150) / 12);
  const isMark = mm >= 0 && mm <= 100 && Math.abs(x - 150 - 12 * mm) <= 1;
  const length = mm % 10 === 0 ? 45 : mm % 5 === 0 ? 32 : 20;
  return isMark && y < RULER.y + length ? [35, 35, 40] : [232, 228, 215];
}

/** The map that takes four corners to four others. */
function homography(from: readonly Point[], to: readonly Point[]): (point: Point) => Point {
  const rows = from.flatMap(([x, y], i) => {
    const [u, v] = to[i] as Point;
    return [
      [x, y, 1, 0, 0, 0, -u * x, -u * y, u],
      [0, 0, 0, x, y, 1, -v * x, -v * y, v],
    ];
  });
  const [a, b, c, d, e, f, g, h] = solved(rows) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return ([x, y]) => {
    const below = g * x + h * y + 1;
    return [(a * x + b * y + c) / below, (d * x + e * y + f) / below];
  };
}

/** Unknowns of linear equations, the right side being the last column; by Gauss and Jordan. */
function solved(rows: readonly (readonly number[])[]): readonly number[] {
  const table = rows.map((row) => [...row]);
  for (let at = 0; at < table.length; at++) {
    const best = table
      .slice(at)
      .reduce((a, b) => (Math.abs(b[at] as number) > Math.abs(a[at] as number) ? b : a));
    table.splice(table.indexOf(best), 1);
    table.splice(at, 0, best);
    const head = best[at] as number;
    for (const row of table) {
      if (row === best) continue;
      const factor = (row[at] as number) / head;
      for (let i = at; i < row.length; i++)
        row[i] = (row[i] as number) - factor * (best[i] as number);
    }
  }
  return table.map((row, i) => (row.at(-1) as number) / (row[i] as number));
}
