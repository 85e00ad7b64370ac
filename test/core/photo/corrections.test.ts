import { describe, expect, it } from "vitest";
import {
  correctedPhoto,
  crossingsUnder,
  type LineCrossing,
  linesUnder,
  type PhotoCorrections,
} from "../../../src/core/photo/correctedPhoto.ts";
import type { Crossings } from "../../../src/core/photo/crossings.ts";
import type { PhotoMeasurement } from "../../../src/core/photo/PhotoMeasurement.ts";

/** Twenty level and twenty upright lines of 1000 pixels, 50 apart, a crossing every 50 along each. */
const EVERY = 50;
const MIDDLES = Array.from({ length: 20 }, (_, i) => 25 + EVERY * i);

function lineAt(angleDeg: 0 | 90, middle: number): Crossings {
  const place = (along: number) =>
    angleDeg === 0 ? { x: along, y: middle } : { x: middle, y: along };
  return {
    line: { from: place(0), to: place(1000), angleDeg },
    lengthPx: 1000,
    places: MIDDLES.map(place),
    near: 0,
  };
}

const LINES = ([0, 90] as const).flatMap((angle) => MIDDLES.map((at) => lineAt(angle, at)));

const INPUT = {
  name: "tile.png",
  wishes: { pattern: "net" },
  isSquared: true,
  isWhole: false,
} as const;

/** 800 crossings on 4000 mm, so one every 5 mm. */
const FOUND: PhotoMeasurement = {
  name: "tile.png",
  widthMm: 100,
  heightMm: 100,
  mmPerPx: 0.1,
  scaleFrom: "a ruler",
  choices: [],
  corrected: null,
  cracks: {
    profile: { width: 4, contrast: 0.5, softness: 0.2, measured: 100 },
    crossings: 800,
    lengthMm: 4000,
    interceptMm: 5,
    intervalMm: { low: 5, high: 5 },
    relativeAccuracy: 0,
    testLines: 40,
    hiddenShare: 0,
    direction: null,
    pattern: "net",
    pitchMm: (4 / Math.PI) * 5,
    pitchIntervalMm: { low: 5, high: 8 },
    cellsAcross: 15,
    checkLines: [],
  },
  leastVisibleMm: 0.1,
  findings: [],
  cautions: [],
  found: {
    lines: { width: 1000, height: 1000, bits: new Uint8Array(0) },
    factor: 1,
    counted: LINES,
    margin: 0,
    mergePx: 5,
  },
};

function corrected(corrections: Partial<PhotoCorrections>): PhotoMeasurement {
  const none = { takenAway: [], added: [], leftOut: [] };
  const result = correctedPhoto(FOUND, { ...none, ...corrections }, INPUT);
  if (!result.ok) throw new Error(result.problems[0]?.what);
  return result.value;
}

function cracksOf(corrections: Partial<PhotoCorrections>) {
  const { cracks } = corrected(corrections);
  if (cracks === null) throw new Error("no cracks");
  return cracks;
}

const at = (line: number, along: number): LineCrossing => ({ line, along });
const touch = (x: number, y: number) => ({ from: { x, y }, to: { x, y } });

describe("a count corrected by hand", () => {
  it("is the same object when nothing was corrected", () => {
    expect(corrected({})).toBe(FOUND);
  });

  it("has all the length over the crossings that are left: 4000 mm over 800 - 2 + 1", () => {
    const cracks = cracksOf({ takenAway: [at(0, 25), at(3, 75)], added: [at(7, 50)] });
    expect(cracks.crossings).toBe(799);
    expect(cracks.interceptMm).toBeCloseTo(4000 / 799, 9);
    expect(cracks.pitchMm).toBeCloseTo((4 / Math.PI) * (4000 / 799), 9);
  });

  it("says how many were taken away and added", () => {
    const { findings, corrected: said } = corrected({
      takenAway: [at(0, 25), at(3, 75)],
      added: [at(7, 50)],
    });
    expect(said).toMatchObject({ takenAway: 2, added: 1, areas: 0, lost: 0 });
    expect(findings[0]?.statement).toContain("2 crossings taken away and 1 added by hand");
  });

  it("has its interval from strips: one crossing of 20 lines gone in the first of five", () => {
    const takenAway = MIDDLES.map((_, line) => at(line, 25));
    const { interceptMm, intervalMm } = cracksOf({ takenAway });
    // Upright strips of 800 mm hold 140, 160, 160, 160, 160; their mean is 156, their squares 320.
    const error = Math.sqrt((5 / 4) * 320) / 780;
    expect(interceptMm).toBeCloseTo(4000 / 780, 9);
    // Student's t of four degrees of freedom, printed with three places: 2.776.
    expect(intervalMm.high / interceptMm).toBeCloseTo(Math.exp(2.776 * error), 4);
    expect(intervalMm.low / interceptMm).toBeCloseTo(Math.exp(-2.776 * error), 4);
  });

  it("leaves an area out with its length: the right half takes half of both", () => {
    const leftOut = [{ x: 500, y: 0, width: 500, height: 1000 }];
    const { cracks, corrected: said } = corrected({ leftOut });
    expect(cracks?.crossings).toBe(400);
    expect(cracks?.lengthMm).toBeCloseTo(2000, 6);
    expect(cracks?.interceptMm).toBeCloseTo(5, 6);
    expect(said?.leftOutShare).toBeCloseTo(0.5, 6);
  });

  it("takes crossings added in an area that is left out as never there", () => {
    const added = [at(0, 601), at(0, 611)];
    const leftOut = [{ x: 600, y: 0, width: 40, height: 40 }];
    expect(cracksOf({ added, leftOut }).crossings).toBe(cracksOf({ leftOut }).crossings);
  });

  it("allows for hidden cracks where an added one lies just beyond the nearest: 1 in 802", () => {
    const cracks = cracksOf({ added: [at(0, 32)] });
    expect(cracks.hiddenShare).toBeCloseTo(1 / 802, 9);
    expect(cracks.interceptMm).toBeCloseTo((4000 / 801) * (801 / 802), 9);
  });

  it("keeps two crossings that a person tells apart, however close", () => {
    expect(cracksOf({ added: [at(0, 26)] }).crossings).toBe(801);
  });

  it("tells of a correction that meets nothing any more", () => {
    const { corrected: said, findings } = corrected({ takenAway: [at(0, 40)], added: [at(99, 3)] });
    expect(said).toMatchObject({ takenAway: 0, added: 0, lost: 2 });
    expect(findings[0]?.severity).toBe("caution");
  });

  it("is refused where too little is left to bear a spacing", () => {
    const takenAway = LINES.flatMap((_, line) => MIDDLES.map((along) => at(line, along)));
    const result = correctedPhoto(FOUND, { takenAway, added: [], leftOut: [] }, INPUT);
    expect(result).toMatchObject({ ok: false, problems: [{ code: "photo/too-few-cells" }] });
  });
});

describe("a stroke over the picture", () => {
  const all = () => true;

  it("as a touch means the nearest crossing within reach, and none beyond it", () => {
    const under = (x: number, y: number) =>
      crossingsUnder(LINES, {
        stroke: touch(x, y),
        reach: 10,
        isMeant: ({ line }) => line.angleDeg === 0,
      });
    expect(under(77, 28)).toEqual([at(0, 75)]);
    expect(under(100, 25)).toEqual([]);
  });

  it("as a line means every crossing beside it, on all lines", () => {
    const stroke = { from: { x: 20, y: 25 }, to: { x: 130, y: 25 } };
    const found = crossingsUnder(LINES, { stroke, reach: 2, isMeant: () => false });
    expect(found).toEqual([at(0, 25), at(0, 75), at(0, 125), at(20, 25), at(21, 25), at(22, 25)]);
  });

  it("adds where it meets each line, at the very place", () => {
    const stroke = { from: { x: 30, y: 0 }, to: { x: 60, y: 60 } };
    const added = linesUnder(LINES, { stroke, reach: 2, isMeant: all });
    expect(added).toEqual([at(0, 42.5)]);
  });

  it("adds one at the foot of a touch on the nearest line that is shown", () => {
    const meant = { isMeant: ({ line }: Crossings) => line.angleDeg === 0 };
    expect(linesUnder(LINES, { stroke: touch(333, 79), reach: 5, ...meant })).toEqual([at(1, 333)]);
    expect(linesUnder(LINES, { stroke: touch(333, 100), reach: 5, ...meant })).toEqual([]);
  });
});
