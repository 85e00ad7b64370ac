import type { Property } from "../ware/Ware.ts";
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
