import {
  airConductivity,
  CONVECTION_W_PER_M2K,
  capacityFactor,
  EMISSIVITY,
  GAP_EMISSIVITY,
  INSIDE_SHARE,
  loadLagSeconds,
  radiationWPerM2K,
  UNDERSIDE_SHARE,
} from "./heatExchange.ts";
import type { StrainNumbers } from "./strainNumbers.ts";

/** How far behind each part is for every °C/h of a steady fall [K per °C/h]. */
export interface SteadyLags {
  /** Behind the kiln. */
  readonly wall: number;
  readonly base: number;
  readonly shelf: number;
  /** Middle of the load behind its edge. */
  readonly load: number;
  /** Middle behind surface: of the wall, of the base on its shelf. */
  readonly wallCore: number;
  readonly baseCore: number;
}

/** Lags under a steady ramp about one temperature, per °C/h; radiation taken as linear there. */
export function steadyLags(numbers: StrainNumbers, tempC: number): SteadyLags {
  const perSecond = 1 / 3600;
  const heat = perSecond * capacityFactor(tempC);
  const face = radiationWPerM2K(tempC) + CONVECTION_W_PER_M2K;
  const gap =
    (radiationWPerM2K(tempC) * GAP_EMISSIVITY) / EMISSIVITY +
    airConductivity(tempC) / numbers.footGapM;
  const baseRow = face * INSIDE_SHARE + gap;
  const shelfRow = face * UNDERSIDE_SHARE + gap;
  const determinant = baseRow * shelfRow - gap * gap;
  const [base, shelf] = [numbers.baseHeat * heat, numbers.shelfHeat * heat];
  return {
    wall: (numbers.wallHeat * heat) / (face * (1 + INSIDE_SHARE)),
    base: (base * shelfRow + gap * shelf) / determinant,
    shelf: (shelf * baseRow + gap * base) / determinant,
    load: loadLagSeconds(numbers.footprintRadiusM, tempC) * perSecond,
    wallCore: numbers.wallCoreSeconds * heat,
    baseCore: numbers.baseCoreSeconds * heat,
  };
}
