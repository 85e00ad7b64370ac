import type { TestLineInPicture } from "./crossings.ts";
import type { PhotoMeasurement, Picture } from "./PhotoMeasurement.ts";

/** Lengths that a scale bar may have [mm]. */
const BARS_MM = [1, 2, 5, 10, 20, 50, 100, 200];

const INK = "#0b3c5d";
const DOT = "#f2b705";

/**
 * Test lines, crossings and a scale bar as SVG, to lie over the overlay's pixels. Drawn are the
 * lines A and B and two of the directions; the others would hide the picture.
 */
export function overlayMarks(picture: Picture, measured: PhotoMeasurement): string {
  const step = overlayFactor(picture);
  const width = Math.floor(picture.width / step);
  const height = Math.floor(picture.height / step);
  const unit = Math.max(width, height) / 1000;
  const scale = measured.found.factor / step;
  const shownLines = measured.found.counted.filter(({ line }) => line.angleDeg % 90 === 45);
  const lines = shownLines.map(({ line }) => lineSvg(line, scale, 0.6 * unit)).join("");
  const dots = shownLines
    .flatMap(({ places }) => places)
    .map(({ x, y }) => dotSvg(x * scale, y * scale, 2.2 * unit))
    .join("");
  const checks = (measured.cracks?.checkLines ?? [])
    .map(({ name, crossings }) => {
      const { from } = crossings.line;
      const label = { x: from.x * scale + 12 * unit, y: from.y * scale + 12 * unit };
      return [
        lineSvg(crossings.line, scale, 2 * unit),
        ...crossings.places.map(({ x, y }) => dotSvg(x * scale, y * scale, 4 * unit)),
        textSvg(name, label, unit),
      ].join("");
    })
    .join("");
  const bar = barSvg({ width, height, unit, mmPerPx: measured.mmPerPx * step });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${lines}${dots}${checks}${bar}</svg>`;
}

function lineSvg({ from, to }: TestLineInPicture, scale: number, stroke: number): string {
  const [ax, ay, bx, by] = [from.x, from.y, to.x, to.y].map((value) => (value * scale).toFixed(1));
  return `<path d="M${ax} ${ay}L${bx} ${by}" stroke="${INK}" stroke-width="${stroke.toFixed(2)}"/>`;
}

function dotSvg(x: number, y: number, radius: number): string {
  return `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="${radius.toFixed(2)}" fill="${DOT}" stroke="${INK}" stroke-width="${(radius / 3).toFixed(2)}"/>`;
}

/** Dark letters on a white edge, to be read on any ground. */
function textSvg(
  text: string,
  at: { readonly x: number; readonly y: number },
  unit: number,
): string {
  return `<text x="${at.x.toFixed(1)}" y="${(at.y + 14 * unit).toFixed(1)}" font-family="Source Sans 3" font-weight="600" font-size="${(24 * unit).toFixed(1)}" fill="${INK}" stroke="#fff" stroke-width="${(5 * unit).toFixed(1)}" stroke-linejoin="round" paint-order="stroke">${text}</text>`;
}

function barSvg(frame: {
  readonly width: number;
  readonly height: number;
  readonly unit: number;
  readonly mmPerPx: number;
}): string {
  const { width, height, unit, mmPerPx } = frame;
  const lengthMm = BARS_MM.findLast((mm) => mm / mmPerPx <= 0.35 * width) ?? BARS_MM[0]!;
  const length = lengthMm / mmPerPx;
  const x = 20 * unit;
  const y = height - 26 * unit;
  const box = `<rect x="${(x - 10 * unit).toFixed(1)}" y="${(y - 34 * unit).toFixed(1)}" width="${(length + 20 * unit).toFixed(1)}" height="${(52 * unit).toFixed(1)}" fill="#fff" fill-opacity="0.85"/>`;
  const bar = `<rect x="${x.toFixed(1)}" y="${y.toFixed(1)}" width="${length.toFixed(1)}" height="${(7 * unit).toFixed(1)}" fill="${INK}"/>`;
  return `${box}${bar}${textSvg(`${lengthMm} mm`, { x, y: y - 22 * unit }, unit)}`;
}

/** A colour picture: red, green and blue of each place, row by row. */
export interface ColourPicture {
  readonly width: number;
  readonly height: number;
  readonly rgb: Uint8Array;
}

/** Longest side of an overlay [px]. */
const LONGEST_PX = 2000;

/** How much of the photograph's contrast is left, so that the lines stand out. */
const LEFT = 0.6;

/** Colour of a crack that was found. */
const CRACK = [214, 40, 40] as const;

/** Pixels of the picture that one of its overlay stands for: whole, 1 or more. */
function overlayFactor({ width, height }: Picture): number {
  return Math.max(1, Math.ceil(Math.max(width, height) / LONGEST_PX));
}

/** The photograph, paler, with the cracks that were found drawn over it. */
export function overlayPixels(
  picture: Picture,
  { lines, factor }: PhotoMeasurement["found"],
): ColourPicture {
  const step = overlayFactor(picture);
  const width = Math.floor(picture.width / step);
  const height = Math.floor(picture.height / step);
  const rgb = new Uint8Array(3 * width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const grey = picture.grey[y * step * picture.width + x * step]!;
      rgb.fill(Math.round(255 - LEFT * (255 - grey)), 3 * (y * width + x), 3 * (y * width + x) + 3);
    }
  for (let i = 0; i < lines.bits.length; i++) {
    if (lines.bits[i] === 0) continue;
    const [left, right] = [i % lines.width, (i % lines.width) + 1].map((x) => (x * factor) / step);
    const row = Math.floor(i / lines.width);
    const [top, bottom] = [row, row + 1].map((y) => (y * factor) / step);
    for (
      let y = Math.floor(top as number);
      y < Math.max((top as number) + 1, bottom as number);
      y++
    )
      for (
        let x = Math.floor(left as number);
        x < Math.max((left as number) + 1, right as number);
        x++
      )
        if (x < width && y < height) rgb.set(CRACK, 3 * (y * width + x));
  }
  return { width, height, rgb };
}
