import type { Body, Property } from "../ware/Ware.ts";
import type { GlazeExpansion, SetPoint } from "./Glaze.ts";
import type { MeasuredCracks } from "./GlazedPiece.ts";
import type { LeachTest } from "./LeachTest.ts";
import type { Glazing } from "./laminate.ts";
import type { OxideAmounts } from "./oxides.ts";
import type { Recipe } from "./Recipe.ts";

/** How the file gives the glaze. */
type GivenAs =
  | {
      readonly kind: "oxides";
      readonly basis: "wt %" | "mol %" | "moles";
      /** Of the numbers as written. */
      readonly sum: number;
    }
  | { readonly kind: "recipe"; readonly recipe: Recipe; readonly lossFraction: number };

/** What lies under the glaze, and what was seen of it. */
export interface GlazedWare {
  readonly body: Body | null;
  readonly wallMm: number | null;
  /** Of the fired glaze, one side. */
  readonly coatMm: number | null;
  readonly glazing: Glazing | null;
  /** Water absorption of the fired body [%]. */
  readonly absorptionPercent: number | null;
  readonly cracks: MeasuredCracks;
}

/** A glaze file, understood. */
export interface ParsedGlaze {
  readonly title: string;
  readonly invented: boolean;
  readonly cone: string | null;
  readonly crackle: boolean;
  /** Share of each oxide by moles; all together 1. */
  readonly moles: OxideAmounts;
  readonly givenAs: GivenAs;
  /** What was read otherwise than written, in words. */
  readonly remarks: readonly string[];
  /** What the file says instead of what would be computed or assumed. */
  readonly own: {
    readonly expansion: GlazeExpansion | null;
    readonly setPoint: SetPoint | null;
    readonly youngGPa: Property | null;
    readonly poisson: Property | null;
    readonly toughnessMPaRootM: Property | null;
    readonly firedDensityGPerCm3: Property | null;
    readonly solidsDensityGPerCm3: number | null;
  };
  readonly ware: GlazedWare;
  readonly leachTests: readonly LeachTest[];
  readonly notes: string | null;
}
