import { cautionsFor } from "../cautions/cautionsFor.ts";
import type { Confounding } from "./Confounding.ts";
import { confoundingOf } from "./confoundingOf.ts";
import { reportedDifferences } from "./differences.ts";
import type { FiringInNumbers } from "./FiringFact.ts";
import type { FiringStudy } from "./FiringStudy.ts";
import { firingFacts } from "./firingFacts.ts";
import { firstPings } from "./firstPings.ts";
import type { GlazeStudy } from "./GlazeStudy.ts";
import { glazesCompared } from "./glazesCompared.ts";
import type { KnownKiln } from "./KnownKiln.ts";
import { namedApart } from "./namedApart.ts";
import { nextTestOf } from "./nextTestOf.ts";
import type { PlannedFiring } from "./PlannedFiring.ts";
import { studyFits } from "./studyFits.ts";
import { studyGlaze } from "./studyGlaze.ts";
import type { Tile } from "./Tile.ts";
import { tileCauses } from "./tileCauses.ts";
import type { NamedWare } from "./tileFits.ts";
import { tilesOf } from "./tilesOf.ts";

/** Seed of the draws in tests of labels, so that a report reads the same every time. */
const SEED = 1;

/** Standard deviations on either side that hold 95 of 100. */
const NORMAL_95 = 1.96;

/** What a study may lean on beside its firings. */
export interface StudyWishes {
  /** Files of glazes and bodies that were found; without them nothing is said of fit. */
  readonly named?: NamedWare;
  /** The user's own kiln, for the next firing; without it the reference kiln stands in. */
  readonly known?: KnownKiln;
}

/**
 * What firings and their trial tiles say together: what differed, which causes cannot be told apart,
 * what governs the spacing, how the glazes fit, and which test would tell more. Firings without
 * trials are compared too.
 */
export function studyFirings(
  given: readonly PlannedFiring[],
  asked: StudyWishes = {},
): FiringStudy {
  const firings = namedApart(given);
  const facts = firingFacts(firings);
  const tiles = tilesOf(firings.flatMap(({ record }) => record ?? []));
  const telling = tiles.tiles.filter(({ spacing }) => spacing.kind !== "not measured");
  const confounding = telling.length === 0 ? null : confoundedIn(telling, facts);
  const glazes = studiedGlazes(tiles.tiles);
  return {
    firings: facts,
    differences: reportedDifferences(facts),
    tiles,
    confounding,
    glazes,
    glazesCompared: glazesCompared(tiles.tiles, SEED),
    fits:
      asked.named === undefined || tiles.tiles.length === 0
        ? null
        : studyFits(tiles.tiles, asked.named, firstPings(firings)),
    next:
      tiles.tiles.length === 0
        ? null
        : nextTestOf({
            firings,
            facts,
            tiles: tiles.tiles,
            confounding,
            scatter: scatterOf(glazes, telling),
            known: asked.known,
          }),
    cautions: cautionsFor({ crackle: tiles.tiles.length > 0 }),
  };
}

function confoundedIn(tiles: readonly Tile[], facts: readonly FiringInNumbers[]): Confounding {
  return confoundingOf(tileCauses(tiles, facts), tiles.length);
}

function studiedGlazes(tiles: readonly Tile[]): readonly GlazeStudy[] {
  const count = (glaze: string) => tiles.filter((tile) => tile.glaze === glaze).length;
  return [...new Set(tiles.map(({ glaze }) => glaze))]
    .toSorted((a, b) => count(b) - count(a))
    .map((glaze) => studyGlaze(glaze, tiles, SEED));
}

/**
 * Scatter of ln spacing that a new tile has to be expected with, of the glaze with most tiles that
 * can be fitted: between like tiles, from misread coats and from counting. Null when none
 * is fitted, or when misread coats hide what scatter there is.
 */
function scatterOf(glazes: readonly GlazeStudy[], tiles: readonly Tile[]): number | null {
  const fits = glazes.flatMap(({ spacing, sizes }) =>
    spacing !== null && sizes.scatterIs === "measured" ? [spacing] : [],
  );
  const [fit] = fits.toSorted((a, b) => b.tiles - a.tiles);
  if (fit === undefined) return null;
  const own = tiles.filter(({ glaze }) => glaze === fit.glaze);
  const coat = own.map(({ coat: { sigmaMm, firedMm } }) => sigmaMm / firedMm);
  const counting = own.map(({ spacing }) =>
    spacing.kind === "measured" && spacing.lowMm !== null && spacing.highMm !== null
      ? Math.log(spacing.highMm / spacing.lowMm) / (2 * NORMAL_95)
      : 0,
  );
  return Math.hypot(
    fit.tileSigma,
    fit.exponent.value * rootMeanSquare(coat),
    rootMeanSquare(counting),
  );
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / Math.max(1, values.length));
}
