import { type Spread, spreadOf } from "../math/statistics.ts";
import { strainIn } from "../ware/bodyExpansion.ts";
import type { Draws } from "../ware/strainSpread.ts";
import { crackedWall, leastSpacingMm, moistureGrowth } from "./crackedWall.ts";
import { interceptOfPitch, MEAN_OVER_LEAST } from "./crackSpacing.ts";
import { type FitDraw, fitDraws, type GlazedWall, middleDraw } from "./fitDraws.ts";
import { type FitRun, fitRun, type TwoCoats, twoCoats } from "./fitRun.ts";
import type { GlazedPiece, MeasuredCracks, MeasuredPing } from "./Glaze.ts";
import {
  type CrazingPart,
  type DelayedPart,
  fitLimits,
  type MismatchPart,
  type SpacingPart,
  type Standing,
  type StressPart,
  type ThroughPart,
  throughReasons,
} from "./GlazeFitParts.ts";
import { greatestMismatch, toughnessOf } from "./laminate.ts";
import { type MeasuredFits, measuredFits } from "./measuredFit.ts";

/** A glaze on a body, what was measured on it, and how to draw what is uncertain. */
export interface GlazeFitInput extends GlazedWall {
  readonly measured: MeasuredCracks;
  readonly draws: Draws;
}

/** How a glaze fits its body: stress, cracks, depth, time; every number with its spread. */
export interface GlazeFit {
  readonly piece: GlazedPiece;
  readonly roomC: number;
  readonly runs: number;
  readonly seed: number;
  readonly mismatch: MismatchPart;
  readonly stress: StressPart;
  readonly crazing: CrazingPart;
  /** Null when too few draws crack. */
  readonly spacing: SpacingPart | null;
  readonly through: ThroughPart;
  readonly delayed: DelayedPart;
  readonly measured: MeasuredFits;
  readonly twoCoats: readonly TwoCoats[];
  /** Where the answer leaves what is known, in words. */
  readonly limits: readonly string[];
}

/** A draw and what it comes to. */
interface Drawn {
  readonly draw: FitDraw;
  readonly run: FitRun;
}

/** Fewest share of draws that a spread is given for. */
const LEAST_SHARE = 0.05;

/** Share of draws from which on they speak for something; against it below the rest. */
const SPEAKING_SHARE = 0.8;

/**
 * Fit of a glaze on a body as a wall.
 * Draws the expansion of glaze and body, the set point, stiffness, toughness and coat apart from
 * each other. Elastic; no reaction layer, bubbles, crystals, cooling gradients or repeated firings:
 * it ranks glazes and coats, it does not foretell one pot. Same input, same answer.
 *
 * @throws RangeError for sizes that are not above 0 or fewer than 10 runs.
 */
export function glazeFit(input: GlazeFitInput): GlazeFit {
  const { piece, roomC, draws, measured } = input;
  const drawn = fitDraws(input, draws).map((draw) => ({
    draw,
    run: fitRun(draw, piece.glazing, roomC),
  }));
  const cracking = drawn.filter(({ run }) => run.overThreshold >= 1);
  const on = {
    draws: drawn.map(({ draw }) => draw),
    runs: drawn.map(({ run }) => run),
    glazing: piece.glazing,
    roomC,
    coatMm: piece.coatMm,
    coatSigma: piece.coatSigma,
    seed: draws.seed + 1,
  };
  return {
    piece,
    roomC,
    runs: draws.runs,
    seed: draws.seed,
    mismatch: mismatchPart(input, drawn),
    stress: stressPart(piece, drawn),
    crazing: crazingPart(drawn, cracking),
    spacing: spacingPart(input, drawn, cracking),
    through: throughPart(input, drawn, cracking),
    delayed: delayedPart(input, drawn),
    measured: measuredFits(measured, on),
    twoCoats: pairsOf(measured.pings).map((pair, i) =>
      twoCoats(on.draws, pair, { ...on, seed: draws.seed + 1000 + i }),
    ),
    limits: fitLimits(input),
  };
}

function mismatchPart(wall: GlazedWall, drawn: readonly Drawn[]): MismatchPart {
  const { pair } = middleDraw(wall);
  const shrunk = strainIn(pair.body, 500) - strainIn(pair.body, wall.roomC);
  const bodyTo500PerK = shrunk / (500 - wall.roomC);
  return {
    setC: spread(drawn, ({ draw }) => draw.pair.setC),
    strain: spread(drawn, ({ run }) => run.mismatch),
    perK: spread(drawn, ({ run }) => run.mismatchPerK),
    glazePerK: spread(drawn, ({ draw }) => draw.pair.glazePerK),
    bodyPerK: spread(drawn, ({ run }) => run.bodyPerK),
    silicaStrain: spread(drawn, ({ draw }) => draw.silicaStrain),
    bodyTo500PerK,
    strainByMeanTo500: (pair.glazePerK - bodyTo500PerK) * (pair.setC - wall.roomC),
    greatest: {
      strain: spread(drawn, ({ run }) => run.greatestMismatch),
      tempC: spread(drawn, ({ run }) => run.greatestAtC),
    },
    knownFromC: wall.glaze.expansion.fromC,
    knownToC: wall.glaze.expansion.toC,
  };
}

function stressPart({ glazing }: GlazedPiece, drawn: readonly Drawn[]): StressPart {
  return {
    glazeMPa: spread(drawn, ({ run }) => run.glazeMPa),
    thickBodyMPa: spread(drawn, ({ run }) => run.thickBodyMPa),
    underGlazeMPa: spread(drawn, ({ run }) => run.underGlazeMPa),
    bareFaceMPa:
      glazing === "both faces" ? null : spread(drawn, ({ run }) => run.bareFaceMPa as number),
    bowMm: glazing === "one face, free to bend" ? spread(drawn, ({ run }) => run.bowMm) : null,
  };
}

function crazingPart(drawn: readonly Drawn[], cracking: readonly Drawn[]): CrazingPart {
  const share = cracking.length / drawn.length;
  const coats = drawn.filter(({ run }) => run.crazingCoatMm !== null);
  return {
    share,
    standing: standingOf(share),
    thresholdMPa: spread(drawn, ({ run }) => run.thresholdMPa),
    overThreshold: spread(drawn, ({ run }) => run.overThreshold),
    coatShare: coats.length / drawn.length,
    leastCoatMm: spreadOfSome(drawn, ({ run }) => run.crazingCoatMm),
    firstPingC: spreadOfSome(drawn, ({ run }) => run.pingC),
  };
}

function spacingPart(
  wall: GlazedWall,
  drawn: readonly Drawn[],
  cracking: readonly Drawn[],
): SpacingPart | null {
  const leastMm = spreadOfSome(drawn, ({ run }) => run.leastSpacingMm);
  if (leastMm === null) return null;
  const share = (past: FitRun["spacingPast"]) =>
    cracking.filter(({ run }) => run.spacingPast === past).length / cracking.length;
  const late = spreadOfSome(drawn, ({ run }) => run.lateSpacingMm);
  const meanMm = times(leastMm, MEAN_OVER_LEAST);
  return {
    leastMm,
    meanMm,
    widestMm: times(leastMm, 2),
    alongLinesMm: times(meanMm, interceptOfPitch(1)),
    lateMeanMm: late === null ? null : times(late, MEAN_OVER_LEAST),
    thickerCoat: thickerCoat(wall),
    fineShare: share("fine"),
    wideShare: share("wide"),
  };
}

/** Slope of spacing against coat, both in logarithms, that still counts as none. */
const FLAT_SLOPE = 0.1;

function thickerCoat(wall: GlazedWall): SpacingPart["thickerCoat"] {
  const draw = middleDraw(wall);
  const { mismatch } = greatestMismatch(draw.pair, wall.roomC);
  const spacingAt = (factor: number) => {
    const layers = { ...draw.layers, coatMm: draw.layers.coatMm * factor };
    const coated = { ...draw, layers, glazing: wall.piece.glazing };
    const { load, overThreshold } = crackedWall(coated, mismatch);
    return overThreshold < 1 ? null : leastSpacingMm(coated, load).mm;
  };
  const [thinner, thicker] = [spacingAt(1), spacingAt(1.1)];
  if (thinner === null || thicker === null) return null;
  const slope = Math.log(thicker / thinner) / Math.log(1.1);
  if (Math.abs(slope) <= FLAT_SLOPE) return "hardly changes";
  return slope < 0 ? "closer" : "wider";
}

function throughPart(
  wall: GlazedWall,
  drawn: readonly Drawn[],
  cracking: readonly Drawn[],
): ThroughPart {
  const through = cracking.filter(({ run }) => run.stopsAtMm === null);
  const share = through.length / drawn.length;
  const stopped = (each: Drawn) => (each.run.overThreshold >= 1 ? each.run.stopsAtMm : null);
  const overToughness = spread(drawn, ({ run }) => run.pullOverToughness);
  return {
    pullMPaRootM: spread(drawn, ({ run }) => run.pullMPaRootM),
    bodyToughnessMPaRootM: spread(drawn, ({ draw }) => draw.bodyToughnessMPaRootM),
    toughnessSource: toughnessOf(wall.body).source,
    overToughness,
    share,
    standing: standingOf(share),
    stopsAtMm: spreadOfSome(drawn, stopped),
    reasons: throughReasons(wall, overToughness),
    bodyPullMPa: spread(drawn, ({ run }) => run.bodyPullMPa),
    bodyPullOverRupture: spread(drawn, ({ run }) => run.bodyPullOverRupture),
    rimPullMPa: spread(drawn, ({ run }) => run.rimPullMPa),
    rimPullOverRupture: spread(drawn, ({ run }) => run.rimPullOverRupture),
  };
}

function delayedPart({ body, piece }: GlazedWall, drawn: readonly Drawn[]): DelayedPart {
  const whole = drawn.filter(({ run }) => run.overThreshold < 1);
  const years = (each: Drawn) => (each.run.overThreshold < 1 ? each.run.moistureYears : null);
  return {
    growth: spread(drawn, ({ draw }) => draw.growth),
    growthSource: moistureGrowth(body, piece.absorptionPercent).source,
    addedMPa: spread(drawn, ({ run }) => run.moistureMPa),
    moistureShare: whole.filter(({ run }) => run.moistureYears !== null).length / drawn.length,
    moistureYears: spreadOfSome(drawn, years),
    slowShare: drawn.filter(({ run }) => run.growsSlowly).length / drawn.length,
    slowFromMm: spreadOfSome(drawn, ({ run }) => run.delayedFromMm),
  };
}

function pairsOf(
  pings: readonly MeasuredPing[],
): readonly (readonly [MeasuredPing, MeasuredPing])[] {
  const fair = pings.filter(({ kiln }) => kiln !== "opened");
  return fair.flatMap((first, i) =>
    fair
      .slice(i + 1)
      .filter((second) => second.coatMm !== first.coatMm)
      .map((second) => [first, second] as const),
  );
}

function standingOf(share: number): Standing {
  if (share >= SPEAKING_SHARE) return "speaks for";
  return share <= 1 - SPEAKING_SHARE ? "speaks against" : "open";
}

function spread(drawn: readonly Drawn[], pick: (each: Drawn) => number): Spread {
  return spreadOf(Float64Array.from(drawn, pick));
}

/** Spread of those that have a number; null when they are too few to say. */
function spreadOfSome(
  drawn: readonly Drawn[],
  pick: (each: Drawn) => number | null,
): Spread | null {
  const values = drawn.map(pick).filter((value) => value !== null);
  return values.length < LEAST_SHARE * drawn.length ? null : spreadOf(Float64Array.from(values));
}

function times({ low, median, high }: Spread, factor: number): Spread {
  return { low: low * factor, median: median * factor, high: high * factor };
}
