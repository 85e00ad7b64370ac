import { cautionsFor } from "../cautions/cautions.ts";
import { temperatureAt } from "../curve/Curve.ts";
import { hottestZone } from "../firing/FiringFacts.ts";
import { placedOnce, placedUnloading } from "../firing/placedMoments.ts";
import type { MeasuredPing } from "../glaze/Glaze.ts";
import { type ShareInterval, shareInterval } from "../math/distributions.ts";
import type { Confounding } from "./Confounding.ts";
import { confoundingOf } from "./confoundingOf.ts";
import { reportedDifferences } from "./differences.ts";
import type {
  FiringInNumbers,
  FiringStudy,
  GlazeStudy,
  GroupRatio,
  GroupSlope,
  SpacingFit,
} from "./FiringStudy.ts";
import { tileCauses } from "./firingCauses.ts";
import { firingFacts, type NotedFiring } from "./firingFacts.ts";
import { fitSpacing } from "./fitSpacing.ts";
import type { KnownKiln, PlannedFiring } from "./NextTest.ts";
import { namedApart, nextTestOf } from "./nextTestOf.ts";
import { fisherExact } from "./permutationTest.ts";
import { sampleSizes } from "./sampleSizes.ts";
import { type FactorName, levelOf } from "./spacingFactors.ts";
import { studyFits } from "./studyFits.ts";
import { type Tile, tilesOf } from "./Tile.ts";
import type { FirstPingOf, NamedWare } from "./tileFits.ts";

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

/**
 * Spacing, through cracks and numbers of tiles of one glaze.
 *
 * @param seed Of drawn dealings of labels; the same gives the same.
 */
function studyGlaze(glaze: string, all: readonly Tile[], seed: number): GlazeStudy {
  const tiles = all.filter((tile) => tile.glaze === glaze);
  const looked = tiles.filter(({ spacing }) => spacing.kind !== "not measured");
  const fit = fitSpacing(looked, seed);
  const spacing = fit.ok ? fit.value : null;
  const sizes = sampleSizes(looked, spacing);
  return {
    glaze,
    spacing,
    problems: [...(fit.ok ? [] : fit.problems), ...sizes.problems],
    through: throughCracks(tiles),
    sizes,
  };
}

/** Tiles that cracked through, group by group. */
export interface ThroughCracks {
  readonly all: ShareInterval;
  readonly byFactor: readonly {
    readonly factor: FactorName;
    readonly groups: readonly { readonly level: string; readonly share: ShareInterval }[];
    /** Fisher's exact test of two groups; null with more. */
    readonly p: number | null;
  }[];
  /** Tiles on which nobody looked. */
  readonly notLooked: number;
}

const FACTORS: readonly FactorName[] = ["clay", "sides", "shape", "firing"];

/** Shares of tiles that cracked through the wall, over all tiles looked at; null without any. */
export function throughCracks(tiles: readonly Tile[]): ThroughCracks | null {
  const looked = tiles.filter(({ throughCrack }) => throughCrack !== null);
  if (looked.length === 0) return null;
  return {
    all: shareOf(looked),
    byFactor: FACTORS.flatMap((factor) => {
      const levels = [...new Set(looked.flatMap((tile) => levelOf(tile, factor) ?? []))];
      if (levels.length < 2) return [];
      const groups = levels.map((level) => ({
        level,
        share: shareOf(looked.filter((tile) => levelOf(tile, factor) === level)),
      }));
      return [{ factor, groups, p: testOf(groups.map(({ share }) => share)) }];
    }),
    notLooked: tiles.length - looked.length,
  };
}

function shareOf(tiles: readonly Tile[]): ShareInterval {
  return shareInterval(tiles.filter(({ throughCrack }) => throughCrack).length, tiles.length);
}

function testOf(shares: readonly ShareInterval[]): number | null {
  const [one, other, ...more] = shares.map(({ found, of }) => ({ yes: found, of }));
  return one === undefined || other === undefined || more.length > 0
    ? null
    : fisherExact(one, other);
}

/** Measured tiles from which a glaze is put beside others. */
const FEWEST = 2;

/** Glazes held against each other on all of their tiles, coats, clays, sides and firings made equal. */
export interface GlazesCompared {
  /** Of glazes alone: pitch of `level` over that of `against`, the glaze with most tiles. */
  readonly ratios: readonly GroupRatio[];
  /** Glazes that changed together with something else, so that no ratio is theirs. */
  readonly untold: SpacingFit["untold"];
  /** Power of the coat of each glaze by itself, where there are enough tiles. */
  readonly slopes: readonly GroupSlope[];
  readonly tiles: number;
}

/**
 * One glaze against another by one fit over the tiles of all, the power of the coat in common.
 * Glazes of which fewer than two tiles have a spacing are left out.
 *
 * @param seed Of the draws in tests of labels.
 * @returns null with fewer than two glazes, or too few tiles to fit them together.
 */
export function glazesCompared(all: readonly Tile[], seed: number): GlazesCompared | null {
  const measured = (glaze: string) =>
    all.filter((tile) => tile.glaze === glaze && tile.spacing.kind === "measured").length;
  const glazes = new Set(all.map(({ glaze }) => glaze).filter((each) => measured(each) >= FEWEST));
  if (glazes.size < 2) return null;
  const tiles = all.filter(
    ({ glaze, spacing }) => glazes.has(glaze) && spacing.kind !== "not measured",
  );
  const fit = fitSpacing(tiles, seed);
  if (!fit.ok) return null;
  const ofGlazes = <Group extends { readonly factor: string }>(groups: readonly Group[]) =>
    groups.filter(({ factor }) => factor === "glaze");
  return {
    ratios: ofGlazes(fit.value.ratios),
    untold: ofGlazes(fit.value.untold),
    slopes: ofGlazes(fit.value.slopes),
    tiles: fit.value.tiles,
  };
}

/** One sigma of thermocouple and place against the tile [K]; our own estimate. */
const TILE_K = 15;

/** A ping is written down to this [s], one sigma; our own estimate. */
const NOTED_SECONDS = 120;

/**
 * The first ping of each tile on the way down, with the temperature that the log had then.
 * A ping before the peak, outside the log or in a gap of it gives none. It counts as heard with the
 * kiln shut when the record says that it was unloaded later.
 */
export function firstPings(firings: readonly NotedFiring[]): FirstPingOf {
  const byRecord = new Map(
    firings.flatMap((firing) => (firing.record === null ? [] : [[firing.record.name, firing]])),
  );
  return (tile) => {
    const firing = byRecord.get(tile.firing);
    return firing === undefined ? null : pingOf(tile, firing);
  };
}

function pingOf({ pings, coat }: Tile, { review, record }: NotedFiring): MeasuredPing | null {
  const zone = hottestZone(review.zones);
  const cooling = (pings?.moments ?? [])
    .map((moment) => placedOnce(moment, review.reading, zone, "pinging")?.seconds ?? null)
    .filter((seconds) => seconds !== null && seconds > zone.peakAtSeconds);
  const first = Math.min(...cooling.map(Number));
  const at = (seconds: number) => temperatureAt(zone.curve, seconds);
  const onsetC = cooling.length === 0 ? null : at(first);
  if (onsetC === null) return null;
  const [before, after] = [at(first - NOTED_SECONDS), at(first + NOTED_SECONDS)];
  const noted = before === null || after === null ? 0 : Math.abs(before - after) / 2;
  const unloading = placedUnloading(review.reading, zone, record);
  const openedAt = unloading.ok ? (unloading.value?.atSeconds ?? null) : null;
  return {
    coatMm: coat.firedMm,
    onsetC,
    sigmaK: Math.hypot(TILE_K, noted),
    kiln: openedAt === null ? "not noted" : first < openedAt ? "shut" : "opened",
  };
}
