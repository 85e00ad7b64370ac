import type { LeachedWare } from "../cautions/leachLimits.ts";
import type { SourceId } from "../sources/bibliography.ts";
import type { LeachAmount } from "../units/amounts.ts";
import type { Body, Property } from "../ware/Ware.ts";
import type { Glazing } from "./laminate.ts";
import type { OxideAmounts } from "./oxides.ts";

/** Mean linear expansion of a fired glaze, measured or worked out, with its spread. */
export interface GlazeExpansion {
  /** Mean coefficient from `fromC` to `toC` [1/K]. */
  readonly meanPerK: number;
  /** One standard deviation of the absolute value [1/K]. */
  readonly sigmaPerK: number;
  /** One standard deviation of a difference to a close relative worked out alike [1/K]. */
  readonly relativeSigmaPerK: number;
  readonly fromC: number;
  readonly toC: number;
  /** A measured value rules over a computed one. */
  readonly from: "measured" | "computed";
  readonly source: string;
}

/** Temperature below which a glaze carries stress on cooling. */
export interface SetPoint {
  readonly valueC: number;
  /** One standard deviation [K]. */
  readonly sigmaK: number;
  readonly from: "given" | "computed" | "assumed";
  readonly source: string;
}

/**
 * A glaze as far as its fired properties are known: composition, expansion, set point, stiffness.
 * What rests on it (stress, cracking) needs to know nothing of recipes.
 */
export interface Glaze {
  readonly name: string;
  /** Share of each oxide by moles, all together 1; also of those that a model leaves out. */
  readonly oxides: OxideAmounts;
  readonly expansion: GlazeExpansion;
  readonly setPoint: SetPoint;
  readonly youngGPa: Property;
  readonly poisson: Property;
  /** Resistance against a crack that runs on [MPa·√m]. */
  readonly toughnessMPaRootM: Property;
  /** Of the fired glaze [kg/m³]. */
  readonly firedDensityKgPerM3: Property;
}

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

/** A line of a recipe. */
export interface RecipeLine {
  /** As the file writes it. */
  readonly name: string;
  readonly material: Material;
  /** Parts by weight, above 0; of calcined material when it is weighed so. */
  readonly parts: number;
  /** Weighed after its loss has been fired off. */
  readonly calcined: boolean;
}

/** A glaze as one weighs it: the base, meant to be 100 parts, and what is added on top. */
export interface Recipe {
  readonly base: readonly RecipeLine[];
  readonly additions: readonly RecipeLine[];
}

/** What a laboratory found given off by one fired piece. */
export interface LeachTest {
  readonly ware: LeachedWare;
  readonly lead: LeachAmount | null;
  readonly cadmium: LeachAmount | null;
  /** Who tested it, and when. */
  readonly source: string;
}

/** A wall with its coat. */
export interface GlazedPiece {
  /** Wall without glaze [mm]. */
  readonly wallMm: number;
  /** Fired coat on a face [mm]. */
  readonly coatMm: number;
  /** One standard deviation of the coat, as a share of it; 0.15 is common where it is read off. */
  readonly coatSigma: number;
  readonly glazing: Glazing;
  /** Water absorption of the fired body [%]; null when it was not measured. */
  readonly absorptionPercent: number | null;
}

/** A first ping on cooling, and how it was heard. */
export interface MeasuredPing {
  /** Of the piece that pinged [mm]; it may differ from the piece in hand. */
  readonly coatMm: number;
  readonly onsetC: number;
  /** One standard deviation of that temperature [K], above 0. */
  readonly sigmaK: number;
  /** A draught or an open door cracks glaze by itself. */
  readonly kiln: "shut" | "opened" | "not noted";
}

/** What was measured of cracks on a piece of this glaze, body and wall. */
export interface MeasuredCracks {
  /** Whether the coat in hand cracked; null when nobody looked. */
  readonly cracked: boolean | null;
  readonly spacing: {
    readonly meanMm: number;
    /** The 10 and 90 % points of the mean [mm]. */
    readonly lowMm: number;
    readonly highMm: number;
    /** Lengths between cracks along random lines, or the pitch of cells. */
    readonly counted: "along lines" | "pitch";
  } | null;
  readonly pings: readonly MeasuredPing[];
}
