import { medianInPlace } from "../math/statistics.ts";
import { blurred, type Picture, type Place, type Plane, reduced } from "./PhotoMeasurement.ts";
import type { Crop } from "./photoScale.ts";

/** Standard deviation of the background, in squares of the coarse picture that it is taken from. */
const COARSE_SIGMA = 4;

/** Least grey that a picture is divided by: below it, a background is as good as black. */
const LEAST_GREY = 1;

/** Most values that the middle is taken from. */
const SAMPLED = 200_000;

/**
 * A picture divided by its own background, so that even ground is 1 whatever the light: a crack of
 * half the ground's brightness is 0.5. The background is a wide Gauss curve over the
 * picture, raised so that the middle of all places is ground.
 *
 * @param sigma Standard deviation of the background [px], at least 4.
 */
export function flattened(picture: Picture, sigma: number): Plane {
  const { width, height } = picture;
  const grey: Plane = { width, height, values: new Float32Array(picture.grey) };
  const factor = Math.max(1, Math.floor(sigma / COARSE_SIGMA));
  const fits = Math.min(width, height) >= 2 * factor;
  const coarse = fits ? reduced(grey, factor) : grey;
  const ground = blurred(coarse, fits ? sigma / factor : COARSE_SIGMA);
  divide(grey, ground, fits ? factor : 1);
  const middle = middleOf(grey.values);
  for (let i = 0; i < grey.values.length; i++) grey.values[i] = grey.values[i]! / middle;
  return grey;
}

/** The middle value, which is even ground where cracks cover less than half of it. */
function middleOf(values: Float32Array): number {
  const stride = Math.max(1, Math.floor(values.length / SAMPLED));
  const sample = new Float64Array(Math.ceil(values.length / stride));
  for (let i = 0; i < sample.length; i++) sample[i] = values[i * stride]!;
  return Math.max(Number.EPSILON, medianInPlace(sample));
}

/** Divides in place by a coarse plane, read between its squares. */
function divide(plane: Plane, ground: Plane, factor: number): void {
  const columns = Array.from({ length: plane.width }, (_, x) => between(x, factor, ground.width));
  const line = new Float32Array(ground.width);
  for (let y = 0; y < plane.height; y++) {
    const { low, high, share } = between(y, factor, ground.height);
    for (let x = 0; x < ground.width; x++) {
      const top = ground.values[low * ground.width + x]!;
      const bottom = ground.values[high * ground.width + x]!;
      line[x] = top + share * (bottom - top);
    }
    for (let x = 0; x < plane.width; x++) {
      const column = columns[x]!;
      const left = line[column.low]!;
      const here = left + column.share * (line[column.high]! - left);
      const i = y * plane.width + x;
      plane.values[i] = plane.values[i]! / Math.max(LEAST_GREY, here);
    }
  }
}

interface Between {
  readonly low: number;
  readonly high: number;
  readonly share: number;
}

function between(at: number, factor: number, count: number): Between {
  const place = Math.min(count - 1, Math.max(0, (at + 0.5) / factor - 0.5));
  const low = Math.min(count - 1, Math.floor(place));
  return { low, high: Math.min(count - 1, low + 1), share: place - low };
}

/** Shares of red, green and blue light in brightness. */
const RED = Math.fround(0.2126);
const GREEN = Math.fround(0.7152);
const BLUE = Math.fround(0.0722);

/** Light of each level of a colour, 0–1, worked out in single precision. */
const LIGHT = Float32Array.from({ length: 256 }, (_, level) => {
  const round = Math.fround;
  const share = round(level / 255);
  if (share <= 0.04045) return share / round(12.92);
  return round(round(share + round(0.055)) / round(1.055)) ** 2.4;
});

/** Grey level of each 255th of light, the last one twice for the step beyond it. */
const LEVEL = Float32Array.from({ length: 257 }, (_, at) => {
  const light = Math.min(1, at / 255);
  return Math.round(
    255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055),
  );
});

/**
 * Grey levels 0 to 255 from red, green, blue and opacity, level by level as the picture library of
 * the command makes them: light summed by its brightness, then back by steps of a 255th. A few
 * colours in a million come out one level off, where single precision rounds otherwise. Grey stays
 * as it is; opacity is not looked at.
 *
 * @see SOURCES["srgb-1999"]
 */
export function greyOfRgba(rgba: Uint8ClampedArray | Uint8Array): Uint8Array {
  const grey = new Uint8Array(rgba.length / 4);
  for (let i = 0; i < grey.length; i++) {
    const r = rgba[4 * i]!;
    const g = rgba[4 * i + 1]!;
    const b = rgba[4 * i + 2]!;
    grey[i] = r === g && g === b ? r : greyOf(r, g, b);
  }
  return grey;
}

function greyOf(r: number, g: number, b: number): number {
  const round = Math.fround;
  const red = round(RED * LIGHT[r]!);
  const green = round(GREEN * LIGHT[g]!);
  const blue = round(BLUE * LIGHT[b]!);
  const light = round(255 * round(round(red + green) + blue));
  const step = Math.floor(light);
  const level = LEVEL[step]!;
  const rise = LEVEL[step + 1]! - level;
  return toEven(round(level + round(rise * round(light - step))));
}

/** The nearest whole number; of two as near, the even one. */
function toEven(value: number): number {
  const down = Math.floor(value);
  const rest = value - down;
  return rest === 0.5 ? down + (down % 2) : Math.round(value);
}

/**
 * A part of a picture; the part's numbers are cut down to whole pixels.
 *
 * @throws RangeError for a part that reaches outside.
 */
export function cutPicture(picture: Picture, crop: Crop): Picture {
  const [left, top, width, height] = [crop.x, crop.y, crop.width, crop.height].map(Math.floor) as [
    number,
    number,
    number,
    number,
  ];
  if (left < 0 || top < 0 || left + width > picture.width || top + height > picture.height)
    throw new RangeError("cutPicture: the part reaches outside the picture");
  const grey = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    const from = (top + y) * picture.width + left;
    grey.set(picture.grey.subarray(from, from + width), y * width);
  }
  return { width, height, grey };
}

/** A four-sided piece of a picture, and the rectangle that it shows. */
interface Slanted {
  /** Top left, top right, bottom right, bottom left [px]. */
  readonly corners: readonly [Place, Place, Place, Place];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A rectangle seen straight on, at the finest scale that its slanted picture has. */
export interface SquaredPicture {
  readonly picture: Picture;
  readonly mmPerPx: number;
}

/**
 * The slant taken out of a picture of a flat rectangle, by the projection that maps its corners.
 *
 * @throws RangeError when the corners lie in one line.
 */
export function squaredPicture(picture: Picture, slanted: Slanted): SquaredPicture {
  const { corners, widthMm, heightMm } = slanted;
  const side = (a: 0 | 1 | 2 | 3, b: 0 | 1 | 2 | 3) =>
    Math.hypot(corners[a].x - corners[b].x, corners[a].y - corners[b].y);
  const pxPerMm = Math.max(
    Math.max(side(0, 1), side(3, 2)) / widthMm,
    Math.max(side(0, 3), side(1, 2)) / heightMm,
  );
  const width = Math.floor(widthMm * pxPerMm);
  const height = Math.floor(heightMm * pxPerMm);
  const grey = new Float32Array(width * height);
  const place = projection(corners);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      grey[y * width + x] = greyAt(picture, place((x + 0.5) / width, (y + 0.5) / height));
  return { picture: { width, height, grey }, mmPerPx: 1 / pxPerMm };
}

/** Maps the unit square, its corners first, onto the four corners. */
function projection(corners: Slanted["corners"]): (u: number, v: number) => Place {
  const [p, q, r, s] = corners;
  const [d1x, d1y] = [q.x - r.x, q.y - r.y];
  const [d2x, d2y] = [s.x - r.x, s.y - r.y];
  const [ex, ey] = [p.x - q.x + r.x - s.x, p.y - q.y + r.y - s.y];
  const area = d1x * d2y - d2x * d1y;
  if (area === 0) throw new RangeError("squaredPicture: the corners lie in one line");
  const g = (ex * d2y - d2x * ey) / area;
  const h = (d1x * ey - ex * d1y) / area;
  return (u, v) => {
    const depth = g * u + h * v + 1;
    return {
      x: ((q.x - p.x + g * q.x) * u + (s.x - p.x + h * s.x) * v + p.x) / depth,
      y: ((q.y - p.y + g * q.y) * u + (s.y - p.y + h * s.y) * v + p.y) / depth,
    };
  };
}

/** Grey at a place, between the middles of four pixels. */
function greyAt({ width, height, grey }: Picture, { x, y }: Place): number {
  const left = Math.min(width - 2, Math.max(0, Math.floor(x - 0.5)));
  const top = Math.min(height - 2, Math.max(0, Math.floor(y - 0.5)));
  const dx = Math.min(1, Math.max(0, x - 0.5 - left));
  const dy = Math.min(1, Math.max(0, y - 0.5 - top));
  const at = top * width + left;
  const upper = grey[at]! * (1 - dx) + grey[at + 1]! * dx;
  const lower = grey[at + width]! * (1 - dx) + grey[at + width + 1]! * dx;
  return upper * (1 - dy) + lower * dy;
}
