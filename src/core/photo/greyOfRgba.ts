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
    const r = rgba[4 * i] as number;
    const g = rgba[4 * i + 1] as number;
    const b = rgba[4 * i + 2] as number;
    grey[i] = r === g && g === b ? r : greyOf(r, g, b);
  }
  return grey;
}

function greyOf(r: number, g: number, b: number): number {
  const round = Math.fround;
  const red = round(RED * (LIGHT[r] as number));
  const green = round(GREEN * (LIGHT[g] as number));
  const blue = round(BLUE * (LIGHT[b] as number));
  const light = round(255 * round(round(red + green) + blue));
  const step = Math.floor(light);
  const level = LEVEL[step] as number;
  const rise = (LEVEL[step + 1] as number) - level;
  return toEven(round(level + round(rise * round(light - step))));
}

/** The nearest whole number; of two as near, the even one. */
function toEven(value: number): number {
  const down = Math.floor(value);
  const rest = value - down;
  return rest === 0.5 ? down + (down % 2) : Math.round(value);
}
