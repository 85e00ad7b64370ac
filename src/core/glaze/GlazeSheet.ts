import type { Finding } from "../findings/Finding.ts";
import type { AppenExpansion } from "./appenExpansion.ts";
import type { Glaze } from "./Glaze.ts";
import type { OxideAmounts } from "./oxides.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";
import type { OutsideRange } from "./setPointModel.ts";
import type { UnityFormula } from "./unityFormula.ts";
import type { SecondOpinion } from "./weightFactorSets.ts";

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
