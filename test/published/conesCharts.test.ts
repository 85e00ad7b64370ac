import { describe, expect, it } from "vitest";
import { CONE_TABLES, type ConeSeries } from "../../src/core/cones/cone.ts";
import { endPointC } from "../../src/core/cones/endPoint.ts";
import { anchorsOf, risesWithRate } from "../../src/core/cones/fitKinetics.ts";
import { heatworkOf } from "../../src/core/cones/heatwork.ts";
import type { ConesSourceId } from "../../src/core/sources/cones.ts";
import { firing, ramp } from "../core/cones/rampsAndHolds.ts";

/** Read by eye from the copies, apart from the way the tables were copied. */
const cells: readonly (readonly [ConesSourceId, ConeSeries, string, number, number])[] = [
  ["cones-ort-c1", "self-supporting", "018", 60, 715],
  ["cones-chart-f", "self-supporting", "06", 60, 998],
  ["cones-chart-f", "self-supporting", "5", 60, 1186],
  ["cones-chart-f", "self-supporting", "6", 150, 1243],
  ["cones-clay06a", "self-supporting", "6", 15, 1185],
  ["cones-chart-f", "self-supporting", "10", 60, 1285],
  ["cones-large-c", "large", "6", 60, 1220],
  ["cones-large-c", "large", "10", 150, 1303],
  ["cones-ort-c1", "self-supporting-iron-free", "08", 60, 946],
  ["cones-ort-c2016", "small", "018", 300, 752],
];

function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}

function worst(values: readonly number[]): number {
  return Math.max(...values.map(Math.abs));
}

/** Margin of a cone [K] after the plain ramp of a printed cell; 0 would be the cell exactly. */
function marginsAtPrintedCells(series: ConeSeries, smallestColumns: number): readonly number[] {
  return CONE_TABLES[series].rows.flatMap(({ cone }) => {
    const anchors = anchorsOf(CONE_TABLES[series], cone);
    if (anchors.length < smallestColumns || !risesWithRate(anchors)) return [];
    return anchors.map(({ rateCPerHour, tempC }) => {
      const { cones } = heatworkOf(firing(ramp(rateCPerHour, tempC)), { series });
      return cones.find((state) => state.cone === cone)?.marginK ?? Number.NaN;
    });
  });
}

describe("the printed charts", () => {
  it.each(cells)(
    "%s: %s cone %s at %d °C/h is printed as %d °C",
    (source, series, cone, rate, tempC) => {
      const result = endPointC({ series, cone, rateCPerHour: rate });
      expect(result).toMatchObject({ ok: true, value: { tempC, basis: "printed" } });
      const row = CONE_TABLES[series].rows.find((each) => each.cone === cone);
      const column = CONE_TABLES[series].ratesCPerHour.indexOf(rate);
      expect(row?.endPoints[column]?.sources).toContain(source);
    },
  );

  it("come back from the anchored model: three-rate self-supporting rows", () => {
    const margins = marginsAtPrintedCells("self-supporting", 3);
    expect(margins).toHaveLength(105);
    // Not zero because the anchoring sees a ramp about 4 % too fast (its first-order rate).
    expect(rms(margins)).toBeLessThan(0.12);
    expect(worst(margins)).toBeLessThan(0.34);
  });

  it.each([
    ["self-supporting", 2, 0.45],
    ["self-supporting-iron-free", 3, 0.45],
    ["large", 2, 0.45],
    ["large-iron-free", 2, 0.45],
    ["small", 1, 0.01],
  ] as const)(
    "come back from the anchored model: %s, within %d columns and %d K",
    (series, columns, toleranceK) => {
      // Steeper shifts between two columns make the same 4 % cost more; one column costs nothing.
      expect(worst(marginsAtPrintedCells(series, columns))).toBeLessThan(toleranceK);
    },
  );
});
