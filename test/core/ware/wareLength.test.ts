import { describe, expect, it } from "vitest";
import { wareLength, wareOf } from "../../../src/core/ware/givenWare.ts";
import { wareStrain } from "../../../src/core/ware/wareStrain.ts";
import { sampleWare, straightFall } from "./sampleWare.ts";

const said = (name: Parameters<typeof wareLength>[1]["name"], value: number | string) => {
  const read = wareLength(value, { name, where: "here" });
  return read.ok ? read.value : read.problems.map(({ code, fix }) => `${code} ${fix}`).join();
};

describe("wareLength", () => {
  it.each(["wall", "base", "thickest", "shelf"] as const)(
    "takes a %s from 1 to 100 mm, and names the nearest for any other",
    (name) => {
      expect(said(name, 1)).toBe(1);
      expect(said(name, "100 mm")).toBe(100);
      expect(said(name, 0.99)).toMatch(/^ware\/thickness .*nearest possible is 1 mm/);
      expect(said(name, "0.5 mm")).toMatch(/^ware\/thickness .*nearest possible is 1 mm/);
      // 4 in are 101.6 mm.
      expect(said(name, "4 in")).toMatch(/^ware\/thickness .*nearest possible is 100 mm/);
    },
  );

  it("takes air under the foot from 0.1 to 100 mm, and says what flat on the shelf is", () => {
    expect(said("footGap", 0.1)).toBe(0.1);
    for (const flat of [0, "0", "0 mm", "0.0 in"])
      expect(said("footGap", flat)).toMatch(
        /^ware\/foot-gap .*is 0\.1 mm \(a foot that stands flat/,
      );
    expect(said("footGap", "11 cm")).toMatch(/^ware\/foot-gap .*nearest possible is 100 mm/);
  });

  it("refuses what is no length", () => {
    expect(said("wall", "thin")).toContain("units/not-a-length");
    expect(said("wall", -3)).toContain("units/not-a-length");
    expect(said("wall", "0.5.5")).toContain("units/not-a-length");
  });
});

describe("the least gap under a foot", () => {
  it("is computed, and holds the base nearer to its shelf than more air does", () => {
    const gapK = (footGapMm: number) => {
      const strain = wareStrain(straightFall(100, 100), sampleWare("stoneware", 6, { footGapMm }));
      return Math.max(
        ...strain.baseC.map((baseC, i) => Math.abs(baseC - (strain.shelfC[i] as number))),
      );
    };
    const [least, usual, most] = [gapK(0.1), gapK(3), gapK(100)];
    expect(Number.isFinite(least)).toBe(true);
    expect(least).toBeLessThan(usual);
    expect(usual).toBeLessThan(most);
  });
});

describe("wareOf", () => {
  const given = { wallMm: 6, baseMm: 10, widestMm: 150 };

  it("takes shelf, gap and glaze as given", () => {
    const { ware } = wareOf({ ...given, shelfMm: 25, footGapMm: 1, glazedSides: "both" });
    expect(ware.geometry).toMatchObject({ shelfMm: 25, footGapMm: 1, glazedSides: "both" });
  });

  it.each([
    [{}, "cordierite shelf of 16 mm and 3 mm of air under the foot assumed"],
    [{ shelfMm: 25 }, "cordierite shelf and 3 mm of air under the foot assumed"],
    [{ footGapMm: 1 }, "cordierite shelf of 16 mm assumed"],
    [{ shelfMm: 25, footGapMm: 1 }, "cordierite shelf assumed"],
  ])("says what is still assumed of what it stands on (%#)", (more, sentence) => {
    expect(wareOf({ ...given, ...more }).assumed.at(-2)).toBe(sentence);
  });

  it("throws for a shelf or a gap that is none", () => {
    expect(() => wareOf({ ...given, shelfMm: 0 })).toThrow(RangeError);
    expect(() => wareOf({ ...given, footGapMm: Number.NaN })).toThrow(RangeError);
  });
});
