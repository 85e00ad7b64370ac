import type { SourceId } from "../sources/bibliography.ts";
import type { OxideAmounts } from "./oxides.ts";

/** A raw material of a glaze, as it is weighed. */
export interface Material {
  /** `potash feldspar`, or the words of the file. */
  readonly name: string;
  /** Ideal formula; null for an analysis of one's own. */
  readonly formula: string | null;
  /** Grams of each oxide that stay in the glaze from one gram as weighed. */
  readonly oxides: OxideAmounts;
  /** Share of the weighed mass that fires away, 0 to 1. */
  readonly lossFraction: number;
  /** Of the solid [g/cm³]; null when not known. */
  readonly densityGPerCm3: number | null;
  /** Where the oxides come from: a source of ours, or the words of the file. */
  readonly source: SourceId | { readonly yours: string };
}
