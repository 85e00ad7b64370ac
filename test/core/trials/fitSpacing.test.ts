import { describe, expect, it } from "vitest";
import { fitSpacing } from "../../../src/core/trials/fitSpacing.ts";
import { labelTest } from "../../../src/core/trials/permutationTest.ts";
import { sampleSizes } from "../../../src/core/trials/sampleSizes.ts";
import { glazesCompared, throughCracks } from "../../../src/core/trials/studyFirings.ts";
import type { Tile } from "../../../src/core/trials/Tile.ts";
import {
  coatRead,
  crackleStudy,
  PLAIN_TRUTH,
  TWO_CLAYS,
  tile,
} from "../../support/crackleStudies.ts";
import { spacingAlone } from "./someTile.ts";

/** A tile with a coat known for certain and a spacing. */
function measured(piece: string, coatMm: number, pitchMm: number, more: Partial<Tile> = {}): Tile {
  return {
    ...tile(piece),
    coat: coatRead(coatMm, 1e-6),
    spacing: spacingAlone(pitchMm),
    cracked: "crackle",
    ...more,
  };
}

function fitOf(tiles: readonly Tile[]) {
  const fit = fitSpacing(tiles, 1);
  if (!fit.ok) throw new Error(fit.problems.map(({ what }) => what).join());
  return fit.value;
}

const codesOf = (tiles: readonly Tile[]) => {
  const fit = fitSpacing(tiles, 1);
  return fit.ok ? [] : fit.problems.map(({ code }) => code);
};

describe("spacing against coat", () => {
  it("is least squares with Student's t where coats are known and nothing is counted", () => {
    // By hand: ln coats -1, 0, 1 twice over, ln pitches with mean 0.7; slope 0.4 (1.6 over 4); four
    // degrees of freedom, t 2.776.
    const logs = [
      [-1, 0],
      [0, 1],
      [1, 1],
      [-1, 0.2],
      [0, 1.2],
      [1, 0.8],
    ] as const;
    const fit = fitOf(logs.map(([x, y], i) => measured(`${i}`, Math.exp(x), Math.exp(y))));
    const squares = logs.reduce((sum, [x, y]) => sum + (y - 0.7 - 0.4 * x) ** 2, 0);
    const error = Math.sqrt(squares / 4 / 4);
    expect(fit.exponent.value).toBeCloseTo(0.4, 5);
    expect(fit.exponent.high - fit.exponent.value).toBeCloseTo(2.776 * error, 2);
    expect(fit.exponent.value - fit.exponent.low).toBeCloseTo(2.776 * error, 2);
    expect(fit.tileSigma).toBeCloseTo(Math.sqrt(squares / 4), 3);
    expect(fit).toMatchObject({ tiles: 6, uncracked: 0, countingErrorUnknown: 6, icc: null });
  });

  it("gives no more than it has: a curve over the coats measured, and no ratio of one group", () => {
    const fit = fitOf(crackleStudy(PLAIN_TRUTH, { ...TWO_CLAYS, clays: ["buff"] }, 3));
    expect(fit.ratios).toEqual([]);
    expect(fit.curve[0]?.coatMm).toBeCloseTo(fit.coatsMm.least, 9);
    expect(fit.curve.at(-1)?.coatMm).toBeCloseTo(fit.coatsMm.most, 9);
    for (const { lowMm, pitchMm, highMm } of fit.curve) {
      expect(lowMm).toBeLessThan(pitchMm);
      expect(pitchMm).toBeLessThan(highMm);
    }
  });

  it("says that two things changed together, and whose ratio that is", () => {
    const tiles = crackleStudy(PLAIN_TRUTH, TWO_CLAYS, 5).map((each) => ({
      ...each,
      firing: each.clay === "buff" ? "a" : "b",
    }));
    const fit = fitOf(tiles);
    expect(fit.untold).toEqual([{ factor: "firing", level: "b", against: "a" }]);
    expect(fit.ratios).toMatchObject([{ factor: "clay", isShared: true, test: null }]);
  });

  it("warns of uncracked tiles too thin to crack, and gives the exponent without them", () => {
    const study = crackleStudy(PLAIN_TRUTH, { ...TWO_CLAYS, clays: ["buff"] }, 3);
    const thin: Tile = {
      ...tile("thin"),
      coat: coatRead(0.05, 0.15),
      spacing: { kind: "uncracked", atLeastMm: 100, from: "size" },
      cracked: "none",
    };
    const [without, fit] = [fitOf(study), fitOf([...study, thin])];
    expect(without).toMatchObject({ thinUncracked: 0, exponentWithoutThin: null });
    expect(fit).toMatchObject({ uncracked: 1, thinUncracked: 1 });
    expect(fit.exponent.value).toBeLessThan(0);
    expect(fit.exponentWithoutThin?.value).toBeCloseTo(without.exponent.value, 6);
  });

  it("shows the exponent of each group by itself", () => {
    const { slopes } = fitOf(crackleStudy(PLAIN_TRUTH, TWO_CLAYS, 7));
    expect(slopes.map(({ level, tiles }) => [level, tiles])).toEqual([
      ["buff", 12],
      ["white", 12],
    ]);
  });

  it("asks for more tiles, for coats that differ, and for a cracked tile in every group", () => {
    const few = [0.3, 0.6, 1.2].map((coat, i) => measured(`${i}`, coat, 5));
    expect(codesOf(few)).toEqual(["trials/too-few-tiles"]);
    const alike = Array.from({ length: 8 }, (_, i) => ({
      ...measured(`${i}`, 0.6 + 0.01 * i, 5 + (i % 3)),
      coat: coatRead(0.6 + 0.01 * i, 0.15),
    }));
    expect(codesOf(alike)).toEqual(["trials/coats-alike"]);
    const whole: Tile[] = [0.3, 0.6, 1.2].map((coat, i) => ({
      ...measured(`w${i}`, coat, 5, { clay: "white" }),
      spacing: { kind: "uncracked", atLeastMm: 100, from: "size" },
    }));
    const cracked = [0.3, 0.5, 0.6, 0.8, 1, 1.2].map((coat, i) => measured(`${i}`, coat, 5 + i));
    expect(codesOf([...cracked, ...whole])).toEqual(["trials/group-uncracked"]);
  });
});

describe("a test of labels", () => {
  it("keeps to dealings within firings", () => {
    // Two firings of 2 + 2: 6 × 6 dealings, the least p 2/36.
    const labels = [true, true, false, false, true, true, false, false];
    const firings = ["a", "a", "a", "a", "b", "b", "b", "b"];
    const scores = [10, 11, 1, 2, 110, 111, 101, 102];
    const test = labelTest({ scores, labels, firings, columns: [] }, 1);
    expect(test).toMatchObject({ dealings: 36, looked: 36 });
    expect(test?.leastP).toBeCloseTo(2 / 36, 12);
    expect(test?.p).toBeCloseTo(2 / 36, 12);
  });

  it("says nothing where every firing has one group", () => {
    const tiles = { scores: [1, 2], labels: [true, false], firings: ["a", "b"], columns: [] };
    expect(labelTest(tiles, 1)).toBeNull();
  });

  it("draws dealings when there are too many, the same for the same seed", () => {
    const labels = Array.from({ length: 24 }, (_, i) => i % 2 === 0);
    const scores = labels.map((_, i) => (i * 7919) % 101);
    const of = (seed: number) =>
      labelTest({ scores, labels, firings: labels.map(() => "a"), columns: [] }, seed);
    expect(of(1)?.looked).toBe(5000);
    expect(of(1)).toEqual(of(1));
    expect(Math.abs((of(1)?.p ?? 0) - (of(2)?.p ?? 1))).toBeLessThan(0.05);
  });
});

describe("numbers of tiles", () => {
  it("name how many a lonely tile needs beside it", () => {
    const tiles = [
      ...crackleStudy(PLAIN_TRUTH, { ...TWO_CLAYS, clays: ["buff"], repeats: 1 }, 3),
      { ...tile("x"), clay: "white" },
    ];
    const { problems, needed, scatterIs } = sampleSizes(tiles, null);
    expect(scatterIs).toBe("assumed");
    expect(needed.map(({ tiles: count }) => count)).toEqual([21, 8, 4]);
    expect(problems).toMatchObject([
      {
        code: "trials/group-of-one",
        what: "one tile with clay white",
        expected: "2 tiles to compare at all, 4 for a test of labels, 8 to see a ratio of 1.5",
      },
    ]);
  });
});

describe("the scatter of like tiles", () => {
  const truths = [0.1, 0.2, 0.4];

  it.each(truths)("of %f is the measured one, with a fit and without", (tileSigma) => {
    const truth = { ...PLAIN_TRUTH, tileSigma, coatSigma: 0.02 };
    const tiles = crackleStudy(truth, { ...TWO_CLAYS, repeats: 6 }, 11);
    for (const fit of [fitOf(tiles), null]) {
      const { scatter, scatterIs } = sampleSizes(tiles, fit);
      expect(scatterIs).toBe("measured");
      // 48 tiles: their standard deviation is known to a tenth; counting adds a little without a fit.
      expect(scatter / tileSigma).toBeGreaterThan(0.7);
      expect(scatter).toBeLessThan(Math.hypot(tileSigma, 0.15) * 1.3);
    }
  });

  it("leaves out coats too thin to crack", () => {
    const tiles = crackleStudy({ ...PLAIN_TRUTH, tileSigma: 0.1 }, TWO_CLAYS, 5);
    const thin = ["y", "z"].map((piece) => ({
      ...tile(piece),
      clay: "buff",
      coat: coatRead(0.05, 0.1),
      spacing: { kind: "uncracked", atLeastMm: 80, from: "size" } as const,
      cracked: "none" as const,
    }));
    const fit = fitOf([...tiles, ...thin]);
    expect(fit.tileSigmaWithoutThin).toBeCloseTo(fitOf(tiles).tileSigma, 6);
    const { scatter, scatterIs } = sampleSizes([...tiles, ...thin], fit);
    expect(scatterIs).toBe("measured");
    expect(scatter).toBeCloseTo(Math.max(0.05, fitOf(tiles).tileSigma), 6);
  });
});

describe("glazes against each other", () => {
  const named = (glaze: string, times: number, seed: number) =>
    crackleStudy({ ...PLAIN_TRUTH, pitchAt1Mm: 7 * times }, TWO_CLAYS, seed).map((each) => ({
      ...each,
      glaze,
    }));

  it("have the ratio that they were made with inside its range, in about 95 of 100 studies", () => {
    const seeds = Array.from({ length: 12 }, (_, i) => i + 1);
    const inside = seeds.filter((seed) => {
      const found = glazesCompared(
        [...named("ice", 1, seed), ...named("moss", 1.4, seed + 500)],
        1,
      );
      const [ratio] = found?.ratios ?? [];
      const times = ratio?.level === "moss" ? 1.4 : 1 / 1.4;
      const { low = 0, high = 0 } = ratio?.ratio ?? {};
      return low < times && times < high;
    });
    // Binomial, 12 at 0.95: fewer than 9 come twice in 1000.
    expect(inside.length).toBeGreaterThanOrEqual(9);
  });

  it("are not parted where each had a clay of its own, and not compared by single tiles", () => {
    const apart = [
      ...named("ice", 1, 1).filter(({ clay }) => clay === "buff"),
      ...named("moss", 1.4, 2).filter(({ clay }) => clay === "white"),
    ];
    const found = glazesCompared(apart, 1);
    expect(found?.ratios.every(({ isShared }) => isShared)).toBe(true);
    expect(
      glazesCompared([...named("ice", 1, 1), ...named("moss", 1, 2).slice(0, 1)], 1),
    ).toBeNull();
    expect(glazesCompared(named("ice", 1, 1), 1)).toBeNull();
  });
});

describe("the error of the gauge", () => {
  it("is asked for first, with the power both ways, where it was not noted", () => {
    const tiles = crackleStudy(PLAIN_TRUTH, TWO_CLAYS, 7).map((each) => ({
      ...each,
      coat: { ...each.coat, sigmaIs: "assumed" as const },
    }));
    const fit = fitOf(tiles);
    expect(fit.coatErrorAssumed).toBe(24);
    expect(fit.exponentIfExact.value).toBeCloseTo(fit.exponentAsRead, 9);
    // Error taken out of coats makes the power larger by about 1 over the reliability.
    expect(fit.exponent.value / fit.exponentIfExact.value).toBeCloseTo(1 / fit.reliability, 1);
  });
});

describe("through cracks", () => {
  it("are a share with its limits, group by group, of the tiles looked at", () => {
    const sides = (count: number, glazedSides: Tile["glazedSides"], throughCrack: boolean | null) =>
      Array.from({ length: count }, (_, i) => ({
        ...tile(`${glazedSides}${i}`),
        glazedSides,
        throughCrack,
      }));
    const found = throughCracks([
      ...sides(4, "one", true),
      ...sides(4, "both", false),
      ...sides(3, "both", null),
    ]);
    expect(found).toMatchObject({ all: { found: 4, of: 8 }, notLooked: 3 });
    expect(found?.byFactor.map(({ factor }) => factor)).toEqual(["sides"]);
    // 2 over the ways to choose 4 of 8.
    expect(found?.byFactor[0]?.p).toBeCloseTo(2 / 70, 10);
  });

  it("are nothing when nobody looked", () => {
    expect(throughCracks([{ ...tile("a"), throughCrack: null }])).toBeNull();
  });
});
