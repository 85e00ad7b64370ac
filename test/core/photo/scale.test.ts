import { describe, expect, it } from "vitest";
import { squaredPicture } from "../../../src/core/photo/flattened.ts";
import { parseCrop, parsePhotoScale } from "../../../src/core/photo/photoScale.ts";
import { drawnIntercept, photographed, voronoi } from "../../support/mosaics.ts";
import { INTERCEPT_PX, measured, SIDE, SIZE } from "./measuredMosaic.ts";

describe("parsePhotoScale", () => {
  it("reads two places and their distance", () => {
    expect(parsePhotoScale({ scale: "120,80 1320,84 5 cm" })).toEqual({
      ok: true,
      value: { kind: "points", a: { x: 120, y: 80 }, b: { x: 1320, y: 84 }, distanceMm: 50 },
    });
  });

  it("reads a width, and four corners", () => {
    expect(parsePhotoScale({ width: "4in" })).toMatchObject({ value: { widthMm: 101.6 } });
    expect(parsePhotoScale({ corners: "0,0 100,10 90,110 5,100 100mm 90mm" })).toMatchObject({
      value: { kind: "corners", widthMm: 100, heightMm: 90 },
    });
  });

  it.each([
    [{}, "photo/no-scale"],
    [{ scale: "1,1 200,1 5mm", width: "9mm" }, "photo/several-scales"],
    [{ scale: "120 80 1320 84 50mm" }, "photo/scale"],
    [{ scale: "120,80 150,84 5mm" }, "photo/scale-too-short"],
    [{ scale: "120,80 1320,84 5 furlongs" }, "units/not-a-length"],
    [{ corners: "0,0 100,10 90,110 100mm 90mm" }, "photo/corners"],
    [{ corners: "0,0 5,100 90,110 100,10 100mm 90mm" }, "photo/corners"],
  ])("refuses %j", (written, code) => {
    expect(parsePhotoScale(written)).toMatchObject({ ok: false, problems: [{ code }] });
  });

  it("reads a crop, and refuses half of one", () => {
    expect(parseCrop("10,20,300,400")).toEqual({
      ok: true,
      value: { x: 10, y: 20, width: 300, height: 400 },
    });
    expect(parseCrop("10,20,300")).toMatchObject({ problems: [{ code: "photo/crop" }] });
  });
});

describe("a slanting photograph with four corners", () => {
  /** The tile seen from below: a point (u, v) of the unit square, by a projection of our own. */
  const seen = (x: number, y: number) => {
    const [u, v] = [x / SIDE, y / SIDE];
    const depth = 1.35 - 0.35 * v;
    return { x: 500 + ((u - 0.5) * 860) / depth, y: 60 + (v * 700) / depth };
  };
  const net = voronoi(SIZE, (Math.PI / 4 / INTERCEPT_PX) ** 2, 3);
  const slanting = net.map(({ ax, ay, bx, by }) => {
    const [a, b] = [seen(ax, ay), seen(bx, by)];
    return { ax: a.x, ay: a.y, bx: b.x, by: b.y };
  });
  const picture = photographed(slanting, { width: 1000, height: 800, lineWidth: 4.5 });
  const corners = [seen(0, 0), seen(SIDE, 0), seen(SIDE, SIDE), seen(0, SIDE)] as const;

  it("is measured as if seen straight on, within 5 % (cracks differ in width)", () => {
    const squared = squaredPicture(picture, {
      corners: [...corners],
      widthMm: SIDE / 10,
      heightMm: SIDE / 10,
    });
    const result = measured(squared.picture, {}, { mmPerPx: squared.mmPerPx });
    if (!result.ok) throw new Error(result.problems[0]?.what);
    const truthMm = drawnIntercept(net, SIZE) / 10;
    expect(Math.abs((result.value.cracks?.interceptMm ?? 0) / truthMm - 1)).toBeLessThan(0.05);
  });

  it("keeps an upright rectangle as it is", () => {
    const plain = { width: 4, height: 2, grey: Uint8Array.from([1, 2, 3, 4, 5, 6, 7, 8]) };
    const squared = squaredPicture(plain, {
      corners: [
        { x: 0, y: 0 },
        { x: 4, y: 0 },
        { x: 4, y: 2 },
        { x: 0, y: 2 },
      ],
      widthMm: 8,
      heightMm: 4,
    });
    expect(squared.mmPerPx).toBe(2);
    expect([...squared.picture.grey]).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it("cannot be taken from corners in one line", () => {
    const corners = [0, 1, 2, 3].map((x) => ({ x, y: x })) as never;
    expect(() => squaredPicture(picture, { corners, widthMm: 1, heightMm: 1 })).toThrow(RangeError);
  });
});
