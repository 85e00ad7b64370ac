import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  CRISTOBALITE_BAND,
  publishedLimit,
  QUARTZ_BAND,
} from "../../../src/core/ware/inversionBands.ts";

describe("publishedLimit", () => {
  it("allows 50 °C/h when cooling through quartz, and names the textbook and the practice", () => {
    const limit = publishedLimit(QUARTZ_BAND, "cooling");
    expect(limit?.limitCPerHour).toBe(50);
    expect(limit?.basis).toContain("H. Fraser, 1986, at second hand");
    expect(limit?.basis).toMatch(
      /60 °C\/h .* from 600 to 500 °C .* \(D\. Fortuna, 2000, at second hand\)/,
    );
  });

  it("says in so many words that nothing was published for cristobalite", () => {
    const limit = publishedLimit(CRISTOBALITE_BAND, "cooling");
    expect(limit?.basis).toMatch(/^weak: no published rate was found/);
    expect(limit?.basis).toContain("factor of two");
  });

  it("makes up no limit for heating", () => {
    expect(publishedLimit(QUARTZ_BAND, "heating")).toBeNull();
    expect(publishedLimit(CRISTOBALITE_BAND, "heating")).toBeNull();
  });

  it("has no limit for a band that is not an inversion", () => {
    const water = { name: "water", lowC: 90, highC: 120 };
    expect(publishedLimit(water, "cooling")).toBeNull();
  });

  it("gives walls of 12 mm the sanitary-ware rate, and thicker ones less in proportion", () => {
    const quartz = (thickestMm: number, widestMm: number | null = null) =>
      publishedLimit(QUARTZ_BAND, "cooling", { thickestMm, widestMm })?.limitCPerHour;
    expect(quartz(12)).toBe(60);
    expect(quartz(24)).toBe(30);
    expect(quartz(3)).toBe(150);
    expect(quartz(6, 400)).toBe(50);
  });

  it("never gives thicker or wider ware more, for any sizes", () => {
    const size = fc.double({ min: 1, max: 100, noNaN: true });
    const width = fc.double({ min: 10, max: 1000, noNaN: true });
    fc.assert(
      fc.property(size, size, width, width, (t1, t2, w1, w2) => {
        for (const band of [QUARTZ_BAND, CRISTOBALITE_BAND]) {
          const of = (thickestMm: number, widestMm: number) =>
            publishedLimit(band, "cooling", { thickestMm, widestMm })?.limitCPerHour as number;
          expect(of(Math.max(t1, t2), Math.max(w1, w2))).toBeLessThanOrEqual(
            of(Math.min(t1, t2), Math.min(w1, w2)),
          );
        }
      }),
    );
  });

  it("says whom it is for, and that it was scaled", () => {
    const limit = publishedLimit(QUARTZ_BAND, "cooling", { thickestMm: 8, widestMm: null });
    expect(limit?.meantFor).toBe("ware up to 8 mm thick");
    expect(limit?.basis).toContain("scaled to this ware from 60 °C/h");
  });
});
