import type { Curve } from "../curve/Curve.ts";
import { kelvinFromCelsius } from "../units/temperature.ts";
import { arrheniusRate, scaledArrheniusIntegral } from "./arrhenius.ts";
import type { ConeModel } from "./coneModel.ts";

/** A piece that rises or falls less than this [K] counts as flat; error below 1e−9 of the piece. */
const FLAT_K = 1e-3;
/** Pieces colder than this many e-folds below cone and peak add less than 1e−6 to a budget. */
const IGNORED_FOLDS = 14;
/** Counting stops here: a cone that took this many budgets is a puddle, and its number means nothing. */
const MOST_BUDGETS = 10_000;

/**
 * Heatwork of one straight piece: exact on a ramp, and the same rising and falling.
 * @returns Share of the cone's budget; 1 = down in the bare model.
 */
export function pieceBudget(
  model: ConeModel,
  piece: { readonly fromK: number; readonly toK: number; readonly seconds: number },
): number {
  const { activationKJ, logPreFactor } = model;
  const { fromK, toK } = piece;
  const hours = piece.seconds / 3600;
  if (Math.abs(toK - fromK) < FLAT_K)
    return hours * arrheniusRate(0.5 * (fromK + toK), activationKJ, logPreFactor);
  const rise =
    scaledArrheniusIntegral(toK, activationKJ, logPreFactor) -
    scaledArrheniusIntegral(fromK, activationKJ, logPreFactor);
  return (hours * rise) / (toK - fromK);
}

/**
 * Budget of a cone from the start to each point of a Curve, written into `into`.
 * Nothing is added across gaps. Never falls; stops at 10 000 budgets.
 *
 * @param heat The Curve, K to add to its readings, and its highest reading [°C].
 * @param into As long as the Curve; the last value is the budget of the whole.
 */
export function cumulateBudget(
  model: ConeModel,
  heat: { readonly curve: Curve; readonly offsetK: number; readonly peakC: number },
  into: Float64Array,
): void {
  const { timesSeconds, tempsC, gaps } = heat.curve;
  const { activationKJ, logPreFactor } = model;
  const peakK = kelvinFromCelsius(heat.peakC) + heat.offsetK;
  const coldK = Math.min(model.endPoint60K, peakK) - IGNORED_FOLDS * model.perFoldK;
  let gap = 0;
  let budget = 0;
  let fromK = kelvinFromCelsius(tempsC[0] as number) + heat.offsetK;
  let fromIntegral = Number.NaN;
  into[0] = 0;
  for (let i = 1; i < tempsC.length; i++) {
    const fromSeconds = timesSeconds[i - 1] as number;
    const toK = kelvinFromCelsius(tempsC[i] as number) + heat.offsetK;
    const inGap = gaps[gap]?.fromSeconds === fromSeconds;
    if (inGap) gap++;
    let toIntegral = Number.NaN;
    if (!inGap && (fromK >= coldK || toK >= coldK)) {
      const hours = ((timesSeconds[i] as number) - fromSeconds) / 3600;
      if (Math.abs(toK - fromK) < FLAT_K) {
        budget += hours * arrheniusRate(0.5 * (fromK + toK), activationKJ, logPreFactor);
      } else {
        if (Number.isNaN(fromIntegral))
          fromIntegral = scaledArrheniusIntegral(fromK, activationKJ, logPreFactor);
        toIntegral = scaledArrheniusIntegral(toK, activationKJ, logPreFactor);
        budget += (hours * (toIntegral - fromIntegral)) / (toK - fromK);
      }
    }
    if (budget >= MOST_BUDGETS) {
      into.fill(MOST_BUDGETS, i);
      return;
    }
    into[i] = budget;
    fromK = toK;
    fromIntegral = toIntegral;
  }
}

/** Highest temperature up to each point [°C]; the last value is the peak. */
export function runningPeakC(tempsC: Float64Array): Float64Array {
  let peakC = Number.NEGATIVE_INFINITY;
  return tempsC.map((tempC) => {
    if (tempC > peakC) peakC = tempC;
    return peakC;
  });
}
