import { describe, expect, it } from "vitest";
import { strainChart } from "../../../src/core/charts/strainChart.ts";
import { drawnPassages, drawnStrain, strainRows } from "../../../src/core/charts/strainLine.ts";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { wareOf } from "../../../src/core/ware/givenWare.ts";
import { pieceStrain, type StrainedPiece } from "../../../src/core/ware/pieceStrain.ts";
import { sampleWare } from "../ware/sampleWare.ts";

const PEAK_SECONDS = 6 * 3600;
const FIRING = makeCurve([0, PEAK_SECONDS, 14 * 3600], [20, 900, 60]);
const { ware } = wareOf({ wallMm: 8, baseMm: 10, widestMm: 200 });

const strained = (state: StrainedPiece["state"], curve = FIRING) =>
  pieceStrain(curve, { name: "bowls", ware, state });
const FIRED = strained("bisqued");
const RAW = strained("bone dry");

const texts = (of: typeof FIRED) =>
  JSON.stringify(strainChart({ title: "Stress", curve: FIRING, strained: of }));

describe("the chart of stress", () => {
  it.each([
    ["fired before", FIRED],
    ["raw", RAW],
  ])("begins at the peak for ware that was %s, and shows the way down alone", (_, piece) => {
    const from = drawnStrain(piece, PEAK_SECONDS).timesSeconds[0] as number;
    expect(Math.abs(from - PEAK_SECONDS)).toBeLessThanOrEqual(60);
    expect(texts(piece)).not.toContain('"text":"heating"');
    expect(texts(piece)).toContain("from the peak on");
  });

  it("names both inversions only for ware that holds cristobalite, each with its range in words", () => {
    const names = (of: typeof FIRED) => drawnPassages(of).map(({ band }) => band);
    expect(names(FIRED)).toEqual(["quartz inversion"]);
    const rich = pieceStrain(FIRING, {
      name: "bowls",
      ware: sampleWare("cristobalitic", 8),
      state: null,
    });
    expect(names(rich)).toEqual(["quartz inversion", "cristobalite inversion"]);
    const { description } = strainChart({ title: "Stress", curve: FIRING, strained: rich });
    expect(description?.match(/8 in 10 between/g)).toHaveLength(2);
  });

  it("draws the range through the 10 and 90 % points at each worst moment", () => {
    const passages = drawnPassages(FIRED);
    const rows = strainRows(FIRED.strain, FIRING, passages);
    for (const { atSeconds, ratio, low, high } of passages) {
      const row = rows.find(
        ({ elapsedHours }) => Math.abs(Number(elapsedHours) - atSeconds / 3600) < 0.002,
      );
      expect(Number(row?.strain)).toBeCloseTo(ratio, 2);
      expect(Number(row?.low)).toBeCloseTo(low, 2);
      expect(Number(row?.high)).toBeCloseTo(high, 2);
    }
  });

  it("does not join its line across a gap", () => {
    const gap = { fromSeconds: 8 * 3600, toSeconds: 9 * 3600 };
    const curve = makeCurve(
      [0, PEAK_SECONDS, gap.fromSeconds, gap.toSeconds, 14 * 3600],
      [20, 900, 690, 585, 60],
      [gap],
    );
    const broken = strained("bisqued", curve);
    const rows = strainRows(broken.strain, curve, drawnPassages(broken));
    expect(new Set(rows.map(({ piece }) => piece)).size).toBe(2);
    expect(
      rows.some(({ elapsedHours }) => Number(elapsedHours) > 8.01 && Number(elapsedHours) < 8.99),
    ).toBe(false);
  });
});
