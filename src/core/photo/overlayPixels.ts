import type { PhotoMeasurement } from "./PhotoMeasurement.ts";
import type { Picture } from "./Picture.ts";

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
export function overlayFactor({ width, height }: Picture): number {
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
      const grey = picture.grey[y * step * picture.width + x * step] as number;
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
