import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { seededEven } from "../../../src/core/math/distributions.ts";
import { cutPicture, greyOfRgba } from "../../../src/core/photo/flattened.ts";

/** The library that the command reads pictures with is the truth that the page has to meet. */
async function asTheCommand(rgba: Uint8Array, side: number): Promise<readonly number[]> {
  const raw = { width: side, height: side, channels: 4 as const };
  const png = await sharp(rgba, { raw }).removeAlpha().png().toBuffer();
  const { data, info } = await sharp(png)
    .flatten({ background: "white" })
    .toColourspace("b-w")
    .raw()
    .toBuffer({ resolveWithObject: true });
  return Array.from({ length: side * side }, (_, i) => data[i * info.channels] as number);
}

describe("grey from colours", () => {
  it("is that of the command, save one level in one of 10 000 colours (single precision)", async () => {
    const even = seededEven(5);
    const rgba = Uint8Array.from({ length: 4 * 200 * 200 }, () => 256 * even());
    const grey = greyOfRgba(rgba);
    const apart = (await asTheCommand(rgba, 200)).map((level, i) => level - (grey[i] as number));
    expect(apart.filter((difference) => difference !== 0).length).toBeLessThanOrEqual(4);
    expect(Math.max(...apart.map(Math.abs))).toBeLessThanOrEqual(1);
  });

  it("leaves every grey as it is, as the command does with a grey file", () => {
    const rgba = Uint8Array.from({ length: 4 * 256 }, (_, i) => (i % 4 === 3 ? 255 : i >> 2));
    expect([...greyOfRgba(rgba)]).toEqual(Array.from({ length: 256 }, (_, level) => level));
  });
});

describe("a part of a picture", () => {
  const picture = { width: 4, height: 3, grey: Uint8Array.from({ length: 12 }, (_, i) => i) };

  it("holds the pixels of its rows, in their order", () => {
    expect(cutPicture(picture, { x: 1, y: 1, width: 2, height: 2 })).toEqual({
      width: 2,
      height: 2,
      grey: Uint8Array.of(5, 6, 9, 10),
    });
  });

  it("may not reach outside", () => {
    expect(() => cutPicture(picture, { x: 3, y: 0, width: 2, height: 1 })).toThrow(RangeError);
  });
});
