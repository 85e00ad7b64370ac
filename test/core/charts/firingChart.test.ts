import { describe, expect, it } from "vitest";
import { type FiringChartInput, firingChart } from "../../../src/core/charts/firingChart.ts";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { layersOf, rangeOf, wordsOf } from "../../support/samples/chartsRead.ts";

const up = makeCurve([0, 3600, 7200], [20, 500, 1000]);
const nothing: FiringChartInput = {
  title: "t",
  zones: [],
  planned: null,
  bands: [],
  conesDown: [],
  events: [],
  startOfDaySeconds: null,
  unit: "C",
};

describe("firingChart", () => {
  it("starts its temperatures at 0 °C or 32 °F", () => {
    expect(rangeOf(firingChart({ ...nothing, planned: up }), "y")[0]).toBe(0);
    expect(rangeOf(firingChart({ ...nothing, planned: up, unit: "F" }), "y")[0]).toBe(32);
  });

  it("goes below 0 °C when the kiln began colder", () => {
    const cold = makeCurve([0, 3600], [-8, 900]);
    expect(rangeOf(firingChart({ ...nothing, planned: cold }), "y")[0]).toBe(-8);
  });

  it("shows a measured line solid and the plan dashed", () => {
    const lines = layersOf(
      firingChart({ ...nothing, zones: [{ name: "top", curve: up }], planned: up }),
      "line",
    ).filter((layer) => layer.mark.clip);
    expect(lines.map((line) => line.mark.strokeDash !== undefined)).toEqual([false, true]);
  });

  it("shows the plan as the solid main line when nothing was measured", () => {
    const [line] = layersOf(firingChart({ ...nothing, planned: up }), "line");
    expect(line?.mark.strokeDash).toBeUndefined();
  });

  it("shows what the kiln will make of a plan as a dashed line of its own, named", () => {
    const slower = makeCurve([0, 7200, 14400], [20, 500, 1000]);
    const spec = firingChart({ ...nothing, planned: up, predicted: slower });
    const lines = layersOf(spec, "line").filter((layer) => layer.mark.clip);
    expect(lines.map((line) => line.mark.strokeDash !== undefined)).toEqual([false, true]);
    expect(wordsOf(spec)).toContain("as your kiln will go");
    expect(rangeOf(spec, "x")[1]).toBe(4);
    expect(spec.description).toContain("as your kiln will go");
  });

  it("breaks the line at a gap and shades it", () => {
    const curve = makeCurve(
      [0, 3600, 10800, 14400],
      [20, 100, 300, 400],
      [{ fromSeconds: 3600, toSeconds: 10800 }],
    );
    const spec = firingChart({ ...nothing, zones: [{ name: "top", curve }] });
    expect(layersOf(spec, "line")[0]?.rows.map((row) => row.piece)).toEqual([0, 0, 1, 1]);
    expect(layersOf(spec, "rect")[0]?.rows).toMatchObject([{ elapsedHours: 1, endHours: 3 }]);
    expect(wordsOf(spec)).toContain("no readings");
  });

  it("converts to the reader's unit", () => {
    const [line] = layersOf(firingChart({ ...nothing, planned: up, unit: "F" }), "line");
    expect(line?.rows.map((row) => row.tempF)).toEqual([68, 932, 1832]);
  });

  it("writes the time of day when it is known, past midnight as well", () => {
    const conesDown = [{ cone: "06", atSeconds: 7140, tempC: 991 }];
    const words = wordsOf(
      firingChart({ ...nothing, planned: up, conesDown, startOfDaySeconds: 23 * 3600 }),
    );
    expect(words).toContain("23:00");
    expect(words).toContain("01:00");
    expect(words).toContain("cone 06 down at 00:59");
  });

  it("writes elapsed time when no clock is known", () => {
    const events = [{ label: "pinging heard", atSeconds: 5400 }];
    expect(wordsOf(firingChart({ ...nothing, planned: up, events }))).toContain(
      "pinging heard, 1:30 h",
    );
  });

  it("puts an event on the measured line, and at the foot when nothing was measured then", () => {
    const curve = makeCurve(
      [0, 3600, 7200],
      [0, 1000, 500],
      [{ fromSeconds: 3600, toSeconds: 7200 }],
    );
    const spec = firingChart({
      ...nothing,
      zones: [{ name: "top", curve }],
      events: [
        { label: "a", atSeconds: 1800 },
        { label: "b", atSeconds: 5400 },
      ],
    });
    expect(layersOf(spec, "point")[0]?.rows).toMatchObject([
      { elapsedHours: 0.5, tempC: 500 },
      { elapsedHours: 1.5, tempC: 0 },
    ]);
  });

  it("does not take the plan for what was measured when it places an event", () => {
    const spec = firingChart({
      ...nothing,
      zones: [{ name: "top", curve: makeCurve([0, 3600], [20, 500]) }],
      planned: up,
      events: [{ label: "a", atSeconds: 5400 }],
    });
    expect(layersOf(spec, "point")[0]?.rows).toMatchObject([{ elapsedHours: 1.5, tempC: 0 }]);
  });

  it("leaves out an event that lies outside the firing", () => {
    const spec = firingChart({ ...nothing, planned: up, events: [{ label: "a", atSeconds: 9e5 }] });
    expect(layersOf(spec, "point")).toEqual([]);
  });

  it("names bands with their edges", () => {
    const bands = [{ name: "quartz inversion", lowC: 550, highC: 600 }];
    expect(wordsOf(firingChart({ ...nothing, planned: up, bands }))).toContain(
      "quartz inversion, 550–600 °C",
    );
    expect(wordsOf(firingChart({ ...nothing, planned: up, bands, unit: "F" }))).toContain(
      "quartz inversion, 1022–1112 °F",
    );
  });

  it("needs something to show", () => {
    expect(() => firingChart(nothing)).toThrow("neither a measured nor a planned Curve");
  });
});
