import { seededEven, seededNormal } from "../../src/core/math/distributions.ts";
import type { TrialCoat, TrialSpacing } from "../../src/core/record/FiringRecord.ts";
import { spacingOfLines } from "../../src/core/record/spacingOfLines.ts";
import type { Tile } from "../../src/core/trials/Tile.ts";

/** What governs the spacing in an invented study; ratios are of pitch. */
export interface CrackleTruth {
  readonly exponent: number;
  /** Pitch on a coat of 1 mm, first clay, one side, first firing [mm]. */
  readonly pitchAt1Mm: number;
  readonly clayRatio: number;
  readonly sidesRatio: number;
  readonly firingRatio: number;
  /** One standard deviation between like tiles, in logarithms. */
  readonly tileSigma: number;
  /** One standard deviation of a coat as read, in logarithms. */
  readonly coatSigma: number;
  /** Variance of a count over the count. */
  readonly countScatter: number;
  /** Side of the square tiles [mm]; a wider pitch shows no crack. */
  readonly sizeMm: number;
}

/** A study as a potter might make it, with nothing but the coat that matters. */
export const PLAIN_TRUTH: CrackleTruth = {
  exponent: 0.5,
  pitchAt1Mm: 7,
  clayRatio: 1,
  sidesRatio: 1,
  firingRatio: 1,
  tileSigma: 0.2,
  coatSigma: 0.15,
  countScatter: 0.34,
  sizeMm: 100,
};

/** How the tiles of a study differ; every combination is made, `repeats` times over. */
export interface CrackleDesign {
  readonly coatsMm: readonly number[];
  readonly clays: readonly string[];
  readonly sides: readonly Tile["glazedSides"][];
  readonly firings: readonly string[];
  readonly repeats: number;
  readonly lines: number;
}

/** Two clays, four coats, three of each: 24 tiles of one firing. */
export const TWO_CLAYS: CrackleDesign = {
  coatsMm: [0.3, 0.48, 0.76, 1.2],
  clays: ["buff", "white"],
  sides: ["one"],
  firings: ["a"],
  repeats: 3,
  lines: 5,
};

/** The tiles of an invented study, with scatter between tiles, of counts and of coats. */
export function crackleStudy(
  truth: CrackleTruth,
  design: CrackleDesign,
  seed: number,
): readonly Tile[] {
  const normal = seededNormal(seed);
  const even = seededEven(seed + 1);
  const plan = design.firings.flatMap((firing) =>
    design.clays.flatMap((clay) =>
      design.sides.flatMap((glazedSides) =>
        design.coatsMm.flatMap((coatMm) =>
          Array.from({ length: design.repeats }, () => ({ firing, clay, glazedSides, coatMm })),
        ),
      ),
    ),
  );
  return plan.map(({ firing, clay, glazedSides, coatMm }, i) => {
    const ratio =
      (clay === design.clays[1] ? truth.clayRatio : 1) *
      (glazedSides === design.sides[1] ? truth.sidesRatio : 1) *
      (firing === design.firings[1] ? truth.firingRatio : 1);
    const pitchMm =
      truth.pitchAt1Mm * coatMm ** truth.exponent * ratio * Math.exp(truth.tileSigma * normal());
    return {
      ...tile(`${firing}${i + 1}`),
      firing,
      clay,
      glazedSides,
      coat: coatRead(coatMm * Math.exp(truth.coatSigma * normal()), truth.coatSigma),
      spacing: counted(pitchMm, { truth, lines: design.lines, normal, even }),
      cracked: pitchMm > truth.sizeMm ? "none" : "crackle",
    };
  });
}

/** A coat as read on a tile [mm], with its error as a share. */
export function coatRead(firedMm: number, share: number): TrialCoat {
  return {
    firedMm,
    sigmaMm: share * firedMm,
    sigmaIs: "noted",
    how: "fired",
    sharedSigma: 0,
    taken: [],
  };
}

/** A tile with a mark and nothing found on it. */
export function tile(piece: string): Tile {
  return {
    firing: "a",
    firingTitle: "an invented firing",
    kiln: null,
    piece,
    clay: "buff",
    glaze: "pond ice",
    body: null,
    coat: coatRead(0.6, 0.1),
    glazedSides: "one",
    shape: "flat",
    wallMm: null,
    spacing: { kind: "not measured", why: "no crack spacing is noted" },
    cracked: null,
    throughCrack: false,
    pings: null,
    place: null,
    stain: null,
    invented: true,
  };
}

function counted(
  pitchMm: number,
  on: {
    readonly truth: CrackleTruth;
    readonly lines: number;
    readonly normal: () => number;
    readonly even: () => number;
  },
): TrialSpacing {
  const { sizeMm, countScatter } = on.truth;
  const none: TrialSpacing = { kind: "uncracked", atLeastMm: sizeMm, from: "size" };
  if (pitchMm > sizeMm) return none;
  // Lines in all directions over a net of square cells meet 4/π cracks for every pitch.
  const mean = (4 * sizeMm) / (Math.PI * pitchMm);
  // A whole number by chance rounding, which keeps the mean and adds about a sixth of variance.
  const scatter = Math.sqrt(Math.max(0, countScatter * mean - 1 / 6));
  const lines = Array.from({ length: on.lines }, () => ({
    lengthMm: sizeMm,
    crossings: Math.max(0, Math.floor(mean + scatter * on.normal() + on.even())),
    direction: null,
  }));
  return lines.some(({ crossings }) => crossings > 0) ? spacingOfLines(lines, "net") : none;
}
