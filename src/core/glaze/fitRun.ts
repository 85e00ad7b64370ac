import { seededNormal } from "../math/distributions.ts";
import { type Spread, spreadOf } from "../math/statistics.ts";
import { strainIn } from "../ware/bodyExpansion.ts";
import {
  crackedWall,
  crackingMismatch,
  crazingCoatMm,
  delayedCoatMm,
  firstPingC,
  LONG_TERM_YEARS,
  leastSpacingMm,
  yearsUntilGrowth,
} from "./crackedWall.ts";
import type { FitDraw } from "./fitDraws.ts";
import type { MeasuredPing } from "./Glaze.ts";
import { type Glazing, greatestMismatch, layerStress, mismatchAt } from "./laminate.ts";
import { leastPull, stoppingDepthMm } from "./throughCrack.ts";

/** What one draw comes to. */
export interface FitRun {
  /** Length over length, from the set point to the room. */
  readonly mismatch: number;
  readonly mismatchPerK: number;
  /** The most on the way down, and where [°C]. */
  readonly greatestMismatch: number;
  readonly greatestAtC: number;
  readonly bodyPerK: number;
  /** At room temperature, as the stresses below. */
  readonly glazeMPa: number;
  /** What the same mismatch would make on a wall that does not give. */
  readonly thickBodyMPa: number;
  readonly underGlazeMPa: number;
  readonly bareFaceMPa: number | null;
  /** Bow of 100 mm of the wall [mm], hollow on the glazed face. */
  readonly bowMm: number;
  readonly thresholdMPa: number;
  /** Greatest stress on the way down over the threshold. */
  readonly overThreshold: number;
  readonly crazingCoatMm: number | null;
  readonly leastSpacingMm: number | null;
  readonly spacingPast: "fine" | "wide" | null;
  /** Least spacing once slow growth has had its time. */
  readonly lateSpacingMm: number | null;
  /** At the greatest stress on the way down. */
  readonly pullMPaRootM: number;
  readonly pullOverToughness: number;
  readonly stopsAtMm: number | null;
  /** Greatest pull in the body [MPa], 0 when it is squeezed throughout. */
  readonly bodyPullMPa: number;
  readonly bodyPullOverRupture: number;
  /** The same at a rim or a cut, where a held wall can bend. */
  readonly rimPullMPa: number;
  readonly rimPullOverRupture: number;
  readonly moistureMPa: number;
  /** Years until moisture makes it craze; null when it crazes at once or not in ten years. */
  readonly moistureYears: number | null;
  readonly delayedFromMm: number | null;
  /** Not cracked at once, but when cold above the standstill of slow crack growth. */
  readonly growsSlowly: boolean;
  readonly pingC: number | null;
}

/** Least spacing of cracks at the greatest mismatch on the way down [mm]; null where the coat stays whole. */
export function leastSpacingOf(draw: FitDraw, glazing: Glazing, roomC: number): number | null {
  const { layers, pair, toughnessMPaRootM } = draw;
  const wall = { layers, glazing, toughnessMPaRootM };
  const { overThreshold, load } = crackedWall(wall, greatestMismatch(pair, roomC).mismatch);
  return overThreshold >= 1 ? leastSpacingMm(wall, load).mm : null;
}

/** Takes one draw through stress, cracks, depth and time. */
export function fitRun(draw: FitDraw, glazing: Glazing, roomC: number): FitRun {
  const { layers, pair, toughnessMPaRootM } = draw;
  const wall = { layers, glazing, toughnessMPaRootM };
  const mismatch = mismatchAt(pair, roomC);
  const greatest = greatestMismatch(pair, roomC);
  const cracked = crackedWall(wall, greatest.mismatch);
  const cold = crackedWall(wall, mismatch);
  const fallK = pair.setC - roomC;
  const cracks = cracked.overThreshold >= 1;
  const lateLoad = Math.max(cracked.load, cold.load / draw.standstill ** 2);
  const spacing = cracks ? leastSpacingMm(wall, cracked.load) : null;
  const coldCoatMm = crazingCoatMm(wall, mismatch);
  return {
    mismatch,
    mismatchPerK: mismatch / fallK,
    greatestMismatch: greatest.mismatch,
    greatestAtC: greatest.tempC,
    bodyPerK: (strainIn(pair.body, pair.setC) - strainIn(pair.body, roomC)) / fallK,
    glazeMPa: cold.stress.glazeMPa,
    thickBodyMPa: (1000 * layers.glazeGPa * mismatch) / (1 - layers.glazePoisson),
    underGlazeMPa: cold.stress.underGlazeMPa,
    bareFaceMPa: cold.stress.bareFaceMPa,
    bowMm: (cold.stress.curvaturePerM * 0.1 ** 2 * 1000) / 8,
    thresholdMPa: cracked.thresholdMPa,
    overThreshold: cracked.overThreshold,
    crazingCoatMm: crazingCoatMm(wall, greatest.mismatch),
    leastSpacingMm: spacing?.mm ?? null,
    spacingPast: spacing?.past ?? null,
    lateSpacingMm: cracks ? leastSpacingMm(wall, lateLoad).mm : null,
    ...depthOf(draw, glazing, cracked.stress.glazeMPa),
    ...bodyPullOf(draw, glazing, mismatch),
    ...moistureOf(draw, mismatch, {
      perStrainMPa: cracked.stressPerStrainMPa,
      needed: crackingMismatch(cracked),
    }),
    delayedFromMm: coldCoatMm === null ? null : delayedCoatMm(coldCoatMm, draw.standstill),
    growsSlowly: cold.overThreshold >= draw.standstill && !cracks,
    pingC: firstPingC(pair, crackingMismatch(cracked), roomC),
  };
}

function depthOf(draw: FitDraw, glazing: Glazing, glazeMPa: number) {
  const { coatMm, wallMm, bodyGPa, glazeGPa } = draw.layers;
  if (!(glazeMPa > 0)) return { pullMPaRootM: 0, pullOverToughness: 0, stopsAtMm: 0 };
  const coat = { glazeMPa, coatMm, wallMm, glazing, stiffnessRatio: bodyGPa / glazeGPa };
  const pull = leastPull(coat).mPaRootM;
  return {
    pullMPaRootM: pull,
    pullOverToughness: pull / draw.bodyToughnessMPaRootM,
    stopsAtMm: stoppingDepthMm(coat, draw.bodyToughnessMPaRootM),
  };
}

function bodyPullOf({ layers, ruptureMPa }: FitDraw, glazing: Glazing, mismatch: number) {
  const inWall = greatestPull(layerStress(layers, glazing, mismatch));
  const atRim =
    glazing === "both faces"
      ? inWall
      : greatestPull(layerStress(layers, "one face, free to bend", mismatch));
  return {
    bodyPullMPa: inWall,
    bodyPullOverRupture: inWall / ruptureMPa,
    rimPullMPa: atRim,
    rimPullOverRupture: atRim / ruptureMPa,
  };
}

function greatestPull(stress: {
  readonly underGlazeMPa: number;
  readonly bareFaceMPa: number | null;
}): number {
  return Math.max(0, stress.underGlazeMPa, stress.bareFaceMPa ?? 0);
}

function moistureOf(
  { growth }: FitDraw,
  mismatch: number,
  { perStrainMPa, needed }: { readonly perStrainMPa: number; readonly needed: number },
) {
  const missing = needed - mismatch;
  const years = growth > 0 && missing > 0 ? yearsUntilGrowth(missing, growth) : null;
  return {
    moistureMPa: perStrainMPa * growth,
    moistureYears: years !== null && years <= LONG_TERM_YEARS ? years : null,
  };
}

/** Whether two coats of one glaze tell the same story. */
export interface TwoCoats {
  /** Thinner coat first [mm]. */
  readonly coatsMm: readonly [number, number];
  /** Fall to the first ping × √coat of the thinner over that of the thicker; 1 when both agree. */
  readonly ratio: Spread;
  readonly agree: boolean;
}

/** Share of draws on one side of 1 from which on two coats disagree. */
const ONE_SIDED = 0.95;

/**
 * Checks two first pings of different coats of one glaze on one wall against each other.
 * The fall from the set point to the first ping goes as 1/√coat, so fall × √coat must agree; what
 * the wall gives, and its Z, are counted in. Coats and readings are drawn apart.
 */
export function twoCoats(
  draws: readonly FitDraw[],
  pings: readonly [MeasuredPing, MeasuredPing],
  how: { readonly glazing: Glazing; readonly coatSigma: number; readonly seed: number },
): TwoCoats {
  const [thin, thick] = pings.toSorted((a, b) => a.coatMm - b.coatMm) as [
    MeasuredPing,
    MeasuredPing,
  ];
  const normal = seededNormal(how.seed);
  const ratios = Float64Array.from(draws, (draw) => {
    const [first, second] = [thin, thick].map((ping) => {
      const coatMm = ping.coatMm * Math.exp(how.coatSigma * normal());
      const onsetC = ping.onsetC + ping.sigmaK * normal();
      return fallTimesRoot(draw, { coatMm, onsetC, glazing: how.glazing });
    });
    return (first as number) / (second as number);
  });
  const over = ratios.filter((ratio) => ratio > 1).length / ratios.length;
  return {
    coatsMm: [thin.coatMm, thick.coatMm],
    ratio: spreadOf(ratios),
    agree: over > 1 - ONE_SIDED && over < ONE_SIDED,
  };
}

/** Fall over the mismatch that the coat needs: equal for all coats of one glaze; a kelvin at least. */
function fallTimesRoot(
  draw: FitDraw,
  at: { readonly coatMm: number; readonly onsetC: number; readonly glazing: Glazing },
): number {
  const { thresholdMPa, stressPerStrainMPa } = crackedWall(
    {
      layers: { ...draw.layers, coatMm: at.coatMm },
      glazing: at.glazing,
      toughnessMPaRootM: draw.toughnessMPaRootM,
    },
    0,
  );
  return (Math.max(1, draw.pair.setC - at.onsetC) * stressPerStrainMPa) / thresholdMPa;
}
