import { describe, expect, it } from "vitest";
import {
  drawnIntercept,
  hexagonNet,
  parallelLines,
  poissonLines,
  recursiveDivision,
  type Segment,
  squareNet,
  voronoi,
} from "../../support/mosaics.ts";
import { cracksIn, INTERCEPT_PX, SIZE } from "./measuredMosaic.ts";

const ELL = INTERCEPT_PX;
const voronoiOf = (seed: number) => voronoi(SIZE, (Math.PI / 4 / ELL) ** 2, seed);

function expectShare(found: number, truth: number, tolerance: number): void {
  expect(Math.abs(found / truth - 1), `${found.toFixed(1)} for ${truth.toFixed(1)}`).toBeLessThan(
    tolerance,
  );
}

describe("the mean intercept of a drawn pattern is found within 3 % (half a pixel at each crack, and the edge)", () => {
  it.each([
    ["square cells: π d/4", squareNet(SIZE, (ELL * 4) / Math.PI, 0.37)],
    ["square cells that lie straight", squareNet(SIZE, (ELL * 4) / Math.PI, 0)],
    ["hexagons: 1.36035 s", hexagonNet(SIZE, ELL / 1.36035, 0.2)],
    ["parallel cracks: π p/2", parallelLines(SIZE, (ELL * 2) / Math.PI, 0.6)],
  ])("%s", (_, segments: readonly Segment[]) => {
    expectShare(cracksIn(segments).interceptPx, ELL, 0.03);
  });
});

describe("patterns left to chance are found as they were drawn, within 4 % (cracks run together)", () => {
  it.each([
    ["cells of scattered points", voronoiOf(3)],
    ["straight lines strewn by chance", poissonLines(SIZE, Math.PI / 2 / ELL, 4)],
    ["pieces divided again and again", recursiveDivision(SIZE, 2 * ELL, 5)],
  ])("%s", (_, segments: readonly Segment[]) => {
    expectShare(cracksIn(segments).interceptPx, drawnIntercept(segments, SIZE), 0.04);
  });
});

describe("over twelve random nets", () => {
  const runs = Array.from({ length: 12 }, (_, seed) => cracksIn(voronoiOf(100 + seed), { seed }));

  it("the mean is π/(4 √density) within 4 % (scatter of a net 6 %, over √12, twice)", () => {
    const mean = runs.reduce((sum, run) => sum + run.interceptPx / 12, 0);
    expectShare(mean, ELL, 0.04);
  });

  it("the 95 % interval holds the truth ten times or more", () => {
    const held = runs.filter(
      ({ intervalMm }) => intervalMm.low <= ELL / 10 && intervalMm.high >= ELL / 10,
    );
    expect(held.length).toBeGreaterThanOrEqual(10);
  });

  it("no direction is claimed more than twice", () => {
    expect(runs.filter(({ direction }) => direction?.isDirectional).length).toBeLessThanOrEqual(2);
  });
});

describe("what a photograph may be like", () => {
  const segments = voronoiOf(3);
  const truth = drawnIntercept(segments, SIZE);

  it.each([
    ["noise of 12 grey levels", { noise: 12 }],
    ["a blur of 1.5 pixels", { blur: 1.5 }],
    ["light that falls off by half", { falloff: 0.5 }],
    ["cracks a fifth darker than the ground", { contrast: 0.2 }],
    ["wide cracks, 6 pixels", { lineWidth: 6 }],
    ["all at once", { noise: 6, blur: 1.2, falloff: 0.4, contrast: 0.4 }],
  ])("%s: within 6 %", (_, shot) => {
    expectShare(cracksIn(segments, shot).interceptPx, truth, 0.06);
  });

  it("the width of a crack is found within a tenth", () => {
    expectShare(cracksIn(segments, { lineWidth: 5 }).profile.width, 5, 0.1);
  });
});

describe("direction", () => {
  const stretched = voronoi(SIZE, (Math.PI / 4 / (0.7 * ELL)) ** 2, 8).map(
    ({ ax, ay, bx, by }) => ({ ax: 2 * ax, ay, bx: 2 * bx, by }),
  );

  it("is told of cells twice as long as wide, along their length", () => {
    const { direction } = cracksIn(stretched);
    expect(direction?.isDirectional).toBe(true);
    expect(Math.min(direction?.alongDeg ?? 90, 180 - (direction?.alongDeg ?? 90))).toBeLessThan(16);
    expect(direction?.ratio).toBeGreaterThan(1.4);
    expect(direction?.ratio).toBeLessThan(2.6);
  });

  it("makes parallel cracks of what hardly any line along them meets, and gives their pitch", () => {
    const pitch = 30;
    const found = cracksIn(parallelLines(SIZE, pitch, 0.6));
    expect(found.pattern).toBe("parallel");
    expectShare(found.pitchMm, pitch / 10, 0.03);
  });

  it("can be overruled", () => {
    const net = cracksIn(parallelLines(SIZE, 30, 0.6), {}, { pattern: "net" });
    expectShare(net.pitchMm, 6, 0.03);
  });
});
