import type { Finding } from "../findings/Finding.ts";
import { ok, type Result } from "../problem.ts";
import { type AppenExpansion, type SecondOpinion, secondOpinions } from "./expansionModels.ts";
import { alkaliFindings, firedGlaze } from "./firedGlaze.ts";
import type { Glaze, ParsedGlaze } from "./Glaze.ts";
import {
  crystalFindings,
  expansionFindings,
  leachFindings,
  recipeFindings,
  setPointFindings,
} from "./glazeFindings.ts";
import {
  ALKALIS,
  FLUXES,
  mapAmounts,
  OXIDES,
  type OxideAmounts,
  scaledTo,
  totalOf,
  weightsOf,
} from "./oxides.ts";
import { type OutsideRange, stiffTemperature } from "./setPointModel.ts";
import { toxicFindings } from "./toxicFindings.ts";

/**
 * Works out a glaze: formula, expansion, set point and findings.
 *
 * @param where What to call the file in problems.
 * @returns `glaze/no-expansion` when no oxide has a factor and none was measured.
 */
export function workOutGlaze(parsed: ParsedGlaze, where: string): Result<GlazeSheet> {
  const { moles, own } = parsed;
  const fired = firedGlaze(parsed, where);
  if (!fired.ok) return fired;
  const { glaze, computed, outside } = fired.value;
  const molPercent = scaledTo(100, moles);
  const stiff = stiffTemperature(moles);
  const unity = unityFormula(moles);
  return ok({
    parsed,
    glaze,
    unity,
    wtPercent: scaledTo(100, weightsOf(moles)),
    molPercent,
    computed,
    opinions: secondOpinions(moles),
    stiff,
    findings: [
      ...toxicFindings(parsed),
      ...leachFindings(parsed.leachTests),
      ...expansionFindings(glaze, { computed, outside }),
      ...alkaliFindings(molPercent, computed !== null && own.expansion === null),
      ...crystalFindings(molPercent),
      ...setPointFindings(glaze.setPoint, stiff),
      ...recipeFindings(parsed),
    ],
  });
}

/** All that is worked out about one glaze. */
export interface GlazeSheet {
  readonly parsed: ParsedGlaze;
  readonly glaze: Glaze;
  /** null when it holds no flux. */
  readonly unity: UnityFormula | null;
  readonly wtPercent: OxideAmounts;
  readonly molPercent: OxideAmounts;
  /** By the Appen set, also where a measured value rules; null when no oxide has a factor. */
  readonly computed: AppenExpansion | null;
  /** Values of other sets, comparable only among themselves. */
  readonly opinions: readonly SecondOpinion[];
  /** Temperature at 10^12 Pa·s, and what lies outside its model. */
  readonly stiff: { readonly tempC: number; readonly outside: readonly OutsideRange[] };
  readonly findings: readonly Finding[];
}

/** A glaze counted in moles for one mole of fluxes. */
interface UnityFormula {
  /** Moles of each oxide for R₂O + RO = 1; colouring oxides stand beside and are not counted to 1. */
  readonly moles: OxideAmounts;
  /** Share of alkalis in the fluxes, 0 to 1. */
  readonly alkaliShare: number;
  /** Silica to alumina by moles; null without alumina. */
  readonly silicaToAlumina: number | null;
}

/** The unity formula (R₂O + RO = 1) of a glaze by moles; null when it holds no flux. */
export function unityFormula(moles: OxideAmounts): UnityFormula | null {
  const fluxes = totalOf(moles, FLUXES);
  if (!(fluxes > 0)) return null;
  const alumina = moles.Al2O3 ?? 0;
  return {
    moles: mapAmounts(moles, (amount) => amount / fluxes),
    alkaliShare: totalOf(moles, ALKALIS) / fluxes,
    silicaToAlumina: alumina > 0 ? (moles.SiO2 ?? 0) / alumina : null,
  };
}

/** Largest difference in one oxide between close relatives [mol %]; our own judgement. */
const CLOSE_MOL_PERCENT = 5;

/** A glaze set against the first one. */
export interface GlazeDifference {
  readonly name: string;
  /** Expansion of this one less that of the first [1/K]. */
  readonly differencePerK: number;
  /** One standard deviation of it [1/K]. */
  readonly sigmaPerK: number;
  /** Whether no oxide differs by more than 5 mol %, so that most errors are common to both. */
  readonly areRelatives: boolean;
  /** Whether a measured value stands against a computed one, or their ranges differ. */
  readonly isMixed: boolean;
}

/** Every glaze after the first, set against the first. */
export function compareGlazes(glazes: readonly Glaze[]): readonly GlazeDifference[] {
  const [first, ...others] = glazes;
  if (first === undefined) return [];
  return others.map((other) => {
    const [a, b] = [first.expansion, other.expansion];
    const isMixed = a.from !== b.from || a.fromC !== b.fromC || a.toC !== b.toC;
    const areRelatives = areClose(first, other);
    const isRelative = areRelatives && !isMixed && a.from === "computed";
    return {
      name: other.name,
      differencePerK: b.meanPerK - a.meanPerK,
      sigmaPerK: isRelative
        ? Math.max(a.relativeSigmaPerK, b.relativeSigmaPerK)
        : Math.hypot(a.sigmaPerK, b.sigmaPerK),
      areRelatives,
      isMixed,
    };
  });
}

function areClose(a: Glaze, b: Glaze): boolean {
  return OXIDES.every(
    (oxide) => 100 * Math.abs((a.oxides[oxide] ?? 0) - (b.oxides[oxide] ?? 0)) <= CLOSE_MOL_PERCENT,
  );
}
