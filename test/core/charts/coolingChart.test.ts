import { describe, expect, it } from "vitest";
import { type CoolingChartInput, coolingChart } from "../../../src/core/charts/coolingChart.ts";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { layersOf, rangeOf, wordsOf } from "../../support/samples/chartsRead.ts";

const band = { name: "quartz inversion", lowC: 550, highC: 600 };
/** Up to 1000 °C in 2 h, then down at 100 °C/h to 200 °C, a point every 3 min. */
const steady = makeCurve(
  Array.from({ length: 201 }, (_, i) => i * 180),
  Array.from({ length: 201 }, (_, i) => (i <= 40 ? i * 25 : 1000 - (i - 40) * 5)),
);
const one: CoolingChartInput = {
  title: "t",
  zones: [{ name: "top", curve: steady }],
  planned: null,
  limits: [],
  unit: "C",
};

describe("coolingChart", () => {
  it("reads in the order it happens, hot at the left", () => {
    const [left, right] = rangeOf(coolingChart(one), "x") as [number, number];
    expect(left).toBeGreaterThan(right);
  });

  it("shows only the cooling after the peak, at its rate", () => {
    const rows = layersOf(coolingChart(one), "line")[0]?.rows ?? [];
    const away = rows.filter((row) => Number(row.tempC) < 980);
    expect(Math.min(...rows.map((row) => Number(row.elapsedHours)))).toBeGreaterThanOrEqual(2);
    for (const row of away) expect(row.coolingCPerHour).toBeCloseTo(100, 3);
  });

  it("gives the rate in °F/h by scale only", () => {
    const rows = layersOf(coolingChart({ ...one, unit: "F" }), "line")[0]?.rows ?? [];
    expect(rows.at(-1)?.coolingFPerHour).toBeCloseTo(180, 3);
  });

  it("marks where it was over a guide, only inside the band", () => {
    const limits = [{ band, limitCPerHour: 80, label: "guide", isBroken: true }];
    const spec = coolingChart({ ...one, limits });
    const temps = layersOf(spec, "point")[0]?.rows.map((row) => Number(row.tempC)) ?? [];
    expect(temps.length).toBeGreaterThan(2);
    for (const tempC of temps) {
      expect(tempC).toBeGreaterThanOrEqual(550);
      expect(tempC).toBeLessThanOrEqual(600);
    }
    expect(wordsOf(spec)).toContain("over the guide");
    expect(wordsOf(spec)).toContain("guide: 80 °C/h");
  });

  it("marks nothing where the ware bore what was done, however fast it was for a while", () => {
    const limits = [{ band, limitCPerHour: 80, label: "guide", isBroken: false }];
    expect(layersOf(coolingChart({ ...one, limits }), "point")).toEqual([]);
  });

  it("marks nothing when the guide was kept", () => {
    const spec = coolingChart({
      ...one,
      limits: [{ band, limitCPerHour: 120, label: "guide", isBroken: true }],
    });
    expect(layersOf(spec, "point")).toEqual([]);
    expect(wordsOf(spec)).not.toContain("over the guide");
  });

  it("holds the limits against the plan when nothing was measured", () => {
    const planned = makeCurve([0, 7200, 36000], [0, 1000, 200]);
    const limits = [{ band, limitCPerHour: 80, label: "guide", isBroken: true }];
    const spec = coolingChart({ ...one, zones: [], planned, limits });
    expect(layersOf(spec, "point")[0]?.rows.length).toBeGreaterThan(2);
  });

  it("shows a plan as exact steps", () => {
    const planned = makeCurve([0, 3600, 7200, 10800], [0, 1000, 700, 650]);
    const rows = layersOf(coolingChart({ ...one, zones: [], planned }), "line")[0]?.rows ?? [];
    expect([...new Set(rows.map((row) => row.coolingCPerHour))]).toEqual([300, 50]);
  });

  it("shows a plan of many short pieces as a bent line", () => {
    const planned = makeCurve([0, 3600, 4200, 4800, 5400], [0, 1000, 960, 930, 910]);
    const rows = layersOf(coolingChart({ ...one, zones: [], planned }), "line")[0]?.rows;
    expect(rows).toMatchObject([
      { tempC: 980, coolingCPerHour: 240 },
      { tempC: 945, coolingCPerHour: 180 },
      { tempC: 920, coolingCPerHour: 120 },
    ]);
  });

  it("says so when fast cooling above red heat leaves the chart", () => {
    const crash = makeCurve(
      Array.from({ length: 201 }, (_, i) => i * 180),
      Array.from({ length: 201 }, (_, i) =>
        i <= 40 ? i * 25 : i <= 50 ? 1000 - (i - 40) * 30 : 700 - (i - 50) * 3,
      ),
    );
    const spec = coolingChart({
      ...one,
      zones: [{ name: "top", curve: crash }],
      limits: [{ band, limitCPerHour: 50, label: "guide", isBroken: true }],
    });
    expect(rangeOf(spec, "y")[1]).toBeLessThan(600);
    expect(wordsOf(spec).some((text) => /^↑ up to 600 °C\/h at \d+ °C$/.test(text))).toBe(true);
  });

  it("breaks the line where the slope was not measured", () => {
    const curve = makeCurve(
      [...steady.timesSeconds.subarray(0, 100), ...steady.timesSeconds.subarray(110)],
      [...steady.tempsC.subarray(0, 100), ...steady.tempsC.subarray(110)],
      [{ fromSeconds: 99 * 180, toSeconds: 110 * 180 }],
    );
    const rows = layersOf(coolingChart({ ...one, zones: [{ name: "top", curve }] }), "line")[0]
      ?.rows;
    expect(new Set(rows?.map((row) => row.piece)).size).toBe(2);
  });

  it("says that there is no cooling yet", () => {
    const zones = [{ name: "top", curve: makeCurve([0, 3600], [20, 100]) }];
    expect(wordsOf(coolingChart({ ...one, zones }))).toContain("no cooling after the peak yet");
  });
});
