import { seededNormal } from "../ware/seededNormal.ts";
import { type Spread, spreadOf } from "../ware/spreadOf.ts";
import { crackedWall } from "./crackedWall.ts";
import type { FitDraw } from "./fitDraws.ts";
import type { MeasuredPing } from "./GlazedPiece.ts";
import type { Glazing } from "./laminate.ts";

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
