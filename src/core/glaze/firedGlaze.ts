import type { Finding } from "../findings/Finding.ts";
import { failed, ok, type Result } from "../problem.ts";
import { basedOn, cited } from "../sources/bibliography.ts";
import type { Property } from "../ware/Ware.ts";
import { type AppenExpansion, appenExpansion, appenOutside } from "./expansionModels.ts";
import type { Glaze, GlazeExpansion, ParsedGlaze, SetPoint } from "./Glaze.ts";
import { glazeFinding, shareText } from "./glazeWords.ts";
import { ALKALIS, type OxideAmounts, scaledTo, totalOf } from "./oxides.ts";
import { MODEL_SIGMA_K, type OutsideRange, stiffTemperature } from "./setPointModel.ts";

/** A glaze as it is on the ware, and what its expansion rests on. */
interface FiredGlaze {
  readonly glaze: Glaze;
  /** By the Appen set; null when none of its oxides has a factor. */
  readonly computed: AppenExpansion | null;
  /** Oxides outside the ranges of that set. */
  readonly outside: readonly OutsideRange[];
}

/**
 * The fired glaze of a file.
 *
 * @param where What to call the file in problems.
 * @returns `glaze/no-expansion` when no oxide has a factor and none was measured.
 */
export function firedGlaze(parsed: ParsedGlaze, where: string): Result<FiredGlaze> {
  const { moles, own } = parsed;
  const computed = appenExpansion(moles);
  if (computed === null && own.expansion === null)
    return failed({
      code: "glaze/no-expansion",
      what: "no oxide of the glaze has a factor of expansion",
      where,
      expected: "silica and fluxes, or a measured expansion",
      fix: "check the oxides, or give expansion with value, to and how",
    });
  const outside = computed === null ? [] : appenOutside(computed);
  const isOutside = outside.length > 0 || totalOf(scaledTo(100, moles), ALKALIS) > MOST_ALKALIS;
  return ok({ glaze: glazeOf(parsed, computed, isOutside), computed, outside });
}

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
function glazeOf(parsed: ParsedGlaze, computed: AppenExpansion | null, isOutside: boolean): Glaze {
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

/** Alkalis above which a computed expansion is worth little [mol %]. */
const MOST_ALKALIS = 25;

/** What is to be said of a glaze with very much alkali. */
export function alkaliFindings(
  molPercent: OxideAmounts,
  usesComputed: boolean,
): readonly Finding[] {
  const alkalis = totalOf(molPercent, ALKALIS);
  if (alkalis <= MOST_ALKALIS) return [];
  return [
    glazeFinding("caution", "much alkali", {
      statement: `The alkalis make ${shareText(alkalis)} mol %.${usesComputed ? ` Above ${MOST_ALKALIS} the computed expansion is worth little.` : ""} Such glazes give way to water and acids.`,
      basis: basedOn("range of the set; wear is common knowledge of glass", "appen-1974"),
      advice: "Measure it, and keep such a surface dry and for show.",
    }),
  ];
}
