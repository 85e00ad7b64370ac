import { cited } from "../sources/basedOn.ts";
import type { Property } from "../ware/Ware.ts";
import type { AppenExpansion } from "./appenExpansion.ts";
import type { Glaze, GlazeExpansion, SetPoint } from "./Glaze.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";
import { MODEL_SIGMA_K, stiffTemperature } from "./setPointModel.ts";

/** One standard deviation of a computed expansion [1/K]: 0.48 over 16 measured glasses. */
const SIGMA_PER_K = 0.5e-6;

/** The same outside the ranges of the set; our own estimate [1/K]. */
const SIGMA_OUTSIDE_PER_K = 1e-6;

/** Of the difference of two close relatives; our own judgement [1/K]. */
const RELATIVE_SIGMA_PER_K = 0.2e-6;

/** How far below 10^12 Pa·s a kiln-cooled glaze begins to hold stress, and how surely [K]. */
const BELOW_STIFF_K = 20;
const BELOW_STIFF_SIGMA_K = 20;

/** Where a computed set point is still believable for a glaze [°C]. */
const BELIEVABLE_C = [350, 850] as const;

/** Taken where the model fails; our own estimate. */
const ASSUMED_SET: SetPoint = {
  valueC: 560,
  sigmaK: 60,
  from: "assumed",
  source: "our own estimate, for want of a model",
};

const USUAL: Readonly<Record<"young" | "poisson" | "toughness" | "density", Property>> = {
  young: { value: 65, low: 55, high: 75, source: cited("glaze-elastic") },
  poisson: { value: 0.21, low: 0.18, high: 0.25, source: cited("glaze-elastic") },
  toughness: { value: 0.7, low: 0.6, high: 0.8, source: cited("glaze-elastic") },
  density: { value: 2.45, low: 2.4, high: 2.6, source: cited("glaze-elastic") },
};

/**
 * The fired glaze of a file: what it gives of its own rules, the rest is computed or assumed.
 *
 * @param computed What the Appen set makes of it; null only when the file measured the expansion,
 * else RangeError.
 * @param isOutside Whether the composition lies outside that set's ranges.
 */
export function glazeOf(
  parsed: ParsedGlaze,
  computed: AppenExpansion | null,
  isOutside: boolean,
): Glaze {
  const { own } = parsed;
  return {
    name: parsed.title,
    oxides: parsed.moles,
    expansion: own.expansion ?? computedExpansion(computed, isOutside),
    setPoint: own.setPoint ?? computedSetPoint(parsed),
    youngGPa: own.youngGPa ?? USUAL.young,
    poisson: own.poisson ?? USUAL.poisson,
    toughnessMPaRootM: own.toughnessMPaRootM ?? USUAL.toughness,
    firedDensityKgPerM3: inKgPerM3(own.firedDensityGPerCm3 ?? USUAL.density),
  };
}

function computedExpansion(computed: AppenExpansion | null, isOutside: boolean): GlazeExpansion {
  if (computed === null) throw new RangeError("glazeOf: neither measured nor computed expansion");
  return {
    meanPerK: computed.meanPerK,
    sigmaPerK: isOutside ? SIGMA_OUTSIDE_PER_K : SIGMA_PER_K,
    relativeSigmaPerK: isOutside ? SIGMA_OUTSIDE_PER_K : RELATIVE_SIGMA_PER_K,
    fromC: 20,
    toC: 400,
    from: "computed",
    source: cited("appen-1974"),
  };
}

function computedSetPoint({ moles }: ParsedGlaze): SetPoint {
  const { tempC, outside } = stiffTemperature(moles);
  const valueC = tempC - BELOW_STIFF_K;
  const [least, most] = BELIEVABLE_C;
  if (!(valueC >= least && valueC <= most)) return ASSUMED_SET;
  const sigmaK = Math.hypot(BELOW_STIFF_SIGMA_K, MODEL_SIGMA_K);
  return {
    valueC,
    sigmaK: outside.length > 0 ? 2 * sigmaK : sigmaK,
    from: "computed",
    source: `${cited("fluegel-2007")}; ${cited("set-point-viscosity")}`,
  };
}

function inKgPerM3({ value, low, high, source }: Property): Property {
  return { value: value * 1000, low: low * 1000, high: high * 1000, source };
}
