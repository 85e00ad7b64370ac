import { type Curve, peakOf } from "../curve/Curve.ts";
import { seededNormal } from "../math/distributions.ts";
import { type Spread, spreadOf } from "../math/statistics.ts";
import { fillStrainTable, newStrainTable } from "./bodyExpansion.ts";
import {
  type Alteration,
  barStress,
  strainedBar,
  strainPiece,
  UNALTERED,
  WEIBULL,
} from "./pieceStress.ts";
import { type StrainNumbers, wareNumbers } from "./strainNumbers.ts";
import { strainRunner, WATCHED } from "./strainRunner.ts";
import type { Body, Property, Ware } from "./Ware.ts";
import { strainSteps } from "./wareStrain.ts";

/** Where the uncertainty of a ratio comes from, as shares of its variance that add up to 1. */
export interface SpreadShares {
  /** Free silica, expansion, heat and conduction of the body. */
  readonly body: number;
  /** Strain at which it breaks, and its scatter. */
  readonly strength: number;
  /** Handles, feet, uneven walls: what a smooth round piece has not. */
  readonly shape: number;
  /** How heat passes between piece, shelf and kiln. */
  readonly kiln: number;
}

/** How uncertain a computed ratio is. */
export interface RatioSpread extends Spread {
  readonly shares: SpreadShares;
}

/** How uncertain the worst moment of a passage is. */
interface WorstSpread extends RatioSpread {
  readonly band: string;
  readonly direction: "heating" | "cooling";
}

/** How often to draw, and from which seed. */
export interface Draws {
  /** At least 10. */
  readonly runs: number;
  readonly seed: number;
}

/** A stiff body is a strong one: how far the two go together; our own estimate. */
const STIFF_AND_STRONG = 0.8;

/** Stress in a real piece over that in a smooth round one; our own estimate. */
const SHAPE: Pick<Property, "value" | "low" | "high"> = { value: 1, low: 0.75, high: 1.4 };

/**
 * Lags in a real kiln over those computed: emissivity 0.7 to 0.92, what the faces see, the foot
 * gap, the shelf; our own estimate.
 */
const EXCHANGE: Pick<Property, "value" | "low" | "high"> = { value: 1, low: 0.7, high: 1.35 };

/**
 * Strain at which the body breaks at the inversion over that when cold: stiffness falls by a tenth
 * there, strength by more or less than that; our own estimate.
 */
const HOT_STRAIN: Pick<Property, "value" | "low" | "high"> = { value: 1, low: 0.8, high: 1.25 };

/** Quartz and cristobalite together never take more of a body than this. */
const MOST_SILICA = 0.95;

/**
 * What the uncertainty of body, strength, shape and kiln makes of the worst ratio of each passage
 * of a Curve. Same seed, same answer. What the model leaves out stays left out.
 *
 * @throws RangeError when fewer than 10 runs are asked for.
 */
export function strainSpread(curve: Curve, ware: Ware, draws: Draws): readonly WorstSpread[] {
  const runner = strainRunner(strainSteps(curve), peakOf(curve).seconds);
  runner.run(wareNumbers(ware));
  return WATCHED.flatMap(({ band, direction }, i) => {
    const moments = runner.moments(i);
    if (moments.length === 0) return [];
    return [{ band: band.name, direction, ...ratioSpread(ware, moments, draws) }];
  });
}

/**
 * Spread of the worst ratio among a few states of a piece.
 * Each property is moved to its 10 and to its 90 % point by itself; what that does to the logarithm of
 * the ratio is drawn from for all of them together. Strength and stiffness are drawn together.
 *
 * @throws RangeError when fewer than 10 runs are asked for, or there are no states.
 */
export function ratioSpread(
  ware: Ware,
  moments: readonly Float64Array[],
  { runs, seed }: Draws,
): RatioSpread {
  if (!(runs >= 10)) throw new RangeError(`ratioSpread: ${runs} runs`);
  if (moments.length === 0) throw new RangeError("ratioSpread: no states");
  const numbers = wareNumbers(ware);
  const bars = worstBars(numbers, moments);
  const ratio = bars.value / numbers.strainToFailure;
  if (!(ratio > 0))
    return { low: 0, median: 0, high: 0, shares: { body: 0, strength: 0, shape: 0, kiln: 0 } };
  const effects = effectsOf(ware, bars, (by) => worstBar(numbers, moments, by));
  const normal = seededNormal(seed);
  const ratios = new Float64Array(runs);
  for (let run = 0; run < runs; run++) {
    let log = 0;
    for (const { low, high } of effects) {
      const sigmas = normal();
      log += (Math.abs(sigmas) / SIGMAS_TO_90) * (sigmas < 0 ? low : high);
    }
    ratios[run] = ratio * Math.exp(log + strengthDrawn(ware.body, normal));
  }
  return { ...spreadOf(ratios), shares: sharesOf(effects, ware.body) };
}

/** What a property at its 10 and at its 90 % point does to the logarithm of the ratio. */
interface Effect {
  readonly of: keyof SpreadShares;
  readonly low: number;
  readonly high: number;
}

function effectsOf(
  { body }: Ware,
  bars: Readonly<Record<keyof typeof WEIBULL, number>>,
  altered: (by: Altered) => number,
): readonly Effect[] {
  const log = (bar: number) => Math.log(bar / bars.value);
  const effect = (of: keyof SpreadShares, at: (end: "low" | "high") => Altered): Effect => ({
    of,
    low: log(altered(at("low"))),
    high: log(altered(at("high"))),
  });
  const lag = (property: Pick<Property, "value" | "low" | "high">) => (end: "low" | "high") => ({
    alteration: { ...UNALTERED, lag: property[end] / property.value },
  });
  const linear = (of: keyof SpreadShares, property: typeof SHAPE): Effect => ({
    of,
    low: Math.log(property.low),
    high: Math.log(property.high),
  });
  const table = (name: Mixed) => (end: "low" | "high") => ({ table: dilation(body, name, end) });
  return [
    effect("body", table("quartzFraction")),
    effect("body", table("cristobaliteFraction")),
    effect("body", table("matrixExpansionPerK")),
    effect("body", lag(body.densityKgPerM3)),
    effect("body", lag(body.heatCapacityJPerKgK)),
    effect("body", (end) => ({
      alteration: {
        ...UNALTERED,
        deep: body.conductivityWPerMK.value / body.conductivityWPerMK[end],
      },
    })),
    effect("kiln", lag(EXCHANGE)),
    { of: "strength", low: log(bars.low), high: log(bars.high) },
    linear("strength", HOT_STRAIN),
    linear("shape", SHAPE),
  ];
}

/** What is different from the middle of a body. */
interface Altered {
  readonly table?: Float64Array;
  readonly alteration?: Alteration;
}

function worstBar(
  numbers: StrainNumbers,
  moments: readonly Float64Array[],
  altered: Altered,
): number {
  const by = { table: numbers.strain, ...altered };
  return Math.max(...moments.map((state) => strainedBar(state, numbers, by)));
}

/** The worst bar at each modulus of Weibull, of the stresses that they have in common. */
function worstBars(numbers: StrainNumbers, moments: readonly Float64Array[]) {
  const worst = { low: 0, value: 0, high: 0 };
  for (const state of moments) {
    strainPiece(state, numbers, { table: numbers.strain });
    for (const at of ["low", "value", "high"] as const)
      worst[at] = Math.max(worst[at], barStress(numbers.stress.elastic, WEIBULL[at]));
  }
  return worst;
}

type Mixed = "quartzFraction" | "cristobaliteFraction" | "matrixExpansionPerK";

/** Free strain of a body with one property at an end of its range. */
function dilation(body: Body, moved: Mixed, end: "low" | "high"): Float64Array {
  const at = (name: Mixed) => body[name][name === moved ? end : "value"];
  const silica = at("quartzFraction") + at("cristobaliteFraction");
  const fit = silica > MOST_SILICA ? MOST_SILICA / silica : 1;
  const table = newStrainTable();
  fillStrainTable(table, {
    quartz: at("quartzFraction") * fit,
    cristobalite: at("cristobaliteFraction") * fit,
    matrixPerK: at("matrixExpansionPerK"),
  });
  return table;
}

/** Logarithm of the strain to failure at its middle over one that is drawn. */
function strengthDrawn({ youngGPa, ruptureMPa }: Body, normal: () => number): number {
  const stiff = normal();
  const strong =
    STIFF_AND_STRONG * stiff + Math.sqrt(1 - STIFF_AND_STRONG * STIFF_AND_STRONG) * normal();
  return (
    Math.log(drawn(youngGPa, stiff) / youngGPa.value) -
    Math.log(drawn(ruptureMPa, strong) / ruptureMPa.value)
  );
}

function sharesOf(effects: readonly Effect[], body: Body): SpreadShares {
  const variances = { body: 0, strength: strengthVariance(body), shape: 0, kiln: 0 };
  for (const { of, low, high } of effects) variances[of] += ((high - low) / 2 / SIGMAS_TO_90) ** 2;
  const whole = variances.body + variances.strength + variances.shape + variances.kiln;
  return {
    body: variances.body / whole,
    strength: variances.strength / whole,
    shape: variances.shape / whole,
    kiln: variances.kiln / whole,
  };
}

/** Variance of the logarithm of the strain to failure. */
function strengthVariance({ youngGPa, ruptureMPa }: Body): number {
  const sigma = ({ low, high }: Property) =>
    low > 0 && high > 0 ? Math.log(high / low) / 2 / SIGMAS_TO_90 : 0;
  const [stiff, strong] = [sigma(youngGPa), sigma(ruptureMPa)];
  return stiff * stiff + strong * strong - 2 * STIFF_AND_STRONG * stiff * strong;
}

/** Sigmas between the middle of a normal spread and its 90 % point. */
const SIGMAS_TO_90 = 1.2815515655446004;

/**
 * A value so many sigmas from the middle, by the property's 10 and 90 % points; each side has its
 * own width. Log-normal, or straight and cut off at 0 where the range reaches down to 0.
 */
export function drawn(
  { value, low, high }: Pick<Property, "value" | "low" | "high">,
  sigmas: number,
): number {
  const share = Math.abs(sigmas) / SIGMAS_TO_90;
  const end = sigmas < 0 ? low : high;
  // A power by `**` is not the same to the last digit in every engine; exp and log are.
  if (low > 0) return value * Math.exp(share * Math.log(end / value));
  return Math.max(0, value + (end - value) * share);
}
