import { describe, expect, it } from "vitest";
import { lineIntercept } from "../../../src/core/crackle/lineIntercept.ts";
import { type Segment, voronoi } from "../../support/mosaics.ts";

const FIVE_LINES = [18, 22, 19, 25, 20].map((crossings) => ({ lengthMm: 100, crossings }));

describe("derived: made-up counts by the formulas of the lineal intercept (E112, from memory), five lines of 100 mm with 18, 22, 19, 25 and 20 crossings", () => {
  const { interceptMm, ofLines } = lineIntercept(FIVE_LINES);

  it("give a mean of 4.8728 mm, within 0.00005 (four places)", () => {
    expect(Math.abs((ofLines?.meanMm ?? 0) - 4.8728)).toBeLessThan(5e-5);
  });

  it("have a 95 % interval of ± 0.7613 mm, within 0.00015 (t printed to three places)", () => {
    expect(Math.abs((ofLines?.halfWidthMm ?? 0) - 0.7613)).toBeLessThan(1.5e-4);
  });

  it("have a relative accuracy of 15.62 %, within 0.005 %", () => {
    expect(Math.abs(100 * (ofLines?.relativeAccuracy ?? 0) - 15.62)).toBeLessThan(0.005);
  });

  it("pool to 500/104 = 4.8077 mm, within 0.00005", () => {
    expect(Math.abs((interceptMm ?? 0) - 4.8077)).toBeLessThan(5e-5);
  });
});

describe("derived: Meijering: cells of points strewn at a density λ", () => {
  // 400 by 400 mm at 0.25 points a mm², counted along 40 lines across; the mean is π/(4 √λ).
  const SIDE = 400;
  const cracks = voronoi({ width: SIDE, height: SIDE }, 0.25, 7);
  const lines = Array.from({ length: 40 }, (_, i) => ({
    lengthMm: SIDE,
    crossings: crossingsAt(cracks, ((i + 0.5) * SIDE) / 40 + 0.013),
  }));

  it("λ 0.25: 1.5708 mm along lines, within three times the scatter of so many crossings (0.58/√n)", () => {
    const { interceptMm } = lineIntercept(lines);
    const count = lines.reduce((sum, { crossings }) => sum + crossings, 0);
    expect(Math.abs((interceptMm ?? 0) / 1.5708 - 1)).toBeLessThan((3 * 0.58) / Math.sqrt(count));
  });
});

/** Cracks that a level line cuts. */
function crossingsAt(cracks: readonly Segment[], y: number): number {
  return cracks.filter(({ ay, by, ax, bx }) => {
    if (ay > y === by > y) return false;
    const x = ax + ((y - ay) / (by - ay)) * (bx - ax);
    return x >= 0 && x <= 400;
  }).length;
}
