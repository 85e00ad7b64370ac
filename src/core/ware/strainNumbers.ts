import { fillStrainTable, newStrainTable } from "./bodyExpansion.ts";
import { SHELF_DENSITY, SHELF_HEAT_CAPACITY } from "./heatExchange.ts";
import type { Body, Ware, WareGeometry } from "./Ware.ts";

/**
 * Stress at the junction of wall and base over Young's modulus times strain.
 * A thin shell on a disc gives 0.90 to 0.95 and up to 1.4 on a very thick base; the temperature
 * step is blurred over the foot, hence 0.8, between 0.4 and 1.6.
 */
export const JUNCTION = { value: 0.8, low: 0.4, high: 1.6 } as const;

/**
 * Tensile strength over modulus of rupture: 1/[2(m + 1)²]^(1/m) by Weibull's theory with m = 10.
 * From memory; 0.5 to 0.68.
 */
const TENSILE_OVER_RUPTURE = 0.58;

/** Poisson's ratio of fired bodies; 0.17 to 0.24, from memory. */
const POISSON = 0.2;

/** The properties of a body as plain numbers, one draw of them. */
export interface BodyNumbers {
  densityKgPerM3: number;
  heatCapacityJPerKgK: number;
  conductivityWPerMK: number;
  youngGPa: number;
  ruptureMPa: number;
  quartzFraction: number;
  cristobaliteFraction: number;
  matrixExpansionPerK: number;
}

/** A piece as the integration sees it; filled again for every draw. */
export interface StrainNumbers {
  /** Heat held at 573 °C [J/m²K]. */
  wallHeat: number;
  baseHeat: number;
  shelfHeat: number;
  footGapM: number;
  footprintRadiusM: number;
  /** Lag of the middle of the wall, and of the face of the base on the shelf, at 573 °C [s]. */
  wallCoreSeconds: number;
  baseCoreSeconds: number;
  /** Ratio of stress to strength for a strain between wall and base, and through a wall. */
  acrossPerStrain: number;
  throughPerStrain: number;
  /** Free strain of the body against temperature. */
  readonly strain: Float64Array;
}

/** Empty numbers for `fillStrainNumbers`. */
export function newStrainNumbers(): StrainNumbers {
  return {
    wallHeat: 0,
    baseHeat: 0,
    shelfHeat: 0,
    footGapM: 0,
    footprintRadiusM: 0,
    wallCoreSeconds: 0,
    baseCoreSeconds: 0,
    acrossPerStrain: 0,
    throughPerStrain: 0,
    strain: newStrainTable(),
  };
}

/** The middle value of every property. */
export function middleNumbers(body: Body): BodyNumbers {
  return {
    densityKgPerM3: body.densityKgPerM3.value,
    heatCapacityJPerKgK: body.heatCapacityJPerKgK.value,
    conductivityWPerMK: body.conductivityWPerMK.value,
    youngGPa: body.youngGPa.value,
    ruptureMPa: body.ruptureMPa.value,
    quartzFraction: body.quartzFraction.value,
    cristobaliteFraction: body.cristobaliteFraction.value,
    matrixExpansionPerK: body.matrixExpansionPerK.value,
  };
}

/** Works a body and a shape out into the numbers of the integration; nothing is allocated. */
export function fillStrainNumbers(
  numbers: StrainNumbers,
  of: {
    readonly body: BodyNumbers;
    readonly geometry: WareGeometry;
    readonly junction: number;
  },
): void {
  const { body, geometry } = of;
  const [wallM, baseM] = [geometry.wallMm / 1000, geometry.baseMm / 1000];
  const heat = body.densityKgPerM3 * body.heatCapacityJPerKgK;
  const strengthMPa = TENSILE_OVER_RUPTURE * body.ruptureMPa;
  const youngMPa = body.youngGPa * 1000;
  numbers.wallHeat = heat * wallM;
  numbers.baseHeat = heat * baseM;
  numbers.shelfHeat = (SHELF_DENSITY * SHELF_HEAT_CAPACITY * geometry.shelfMm) / 1000;
  numbers.footGapM = geometry.footGapMm / 1000;
  numbers.footprintRadiusM = geometry.footprintRadiusMm / 1000;
  numbers.wallCoreSeconds = (heat * wallM * wallM) / (8 * body.conductivityWPerMK);
  numbers.baseCoreSeconds = (heat * baseM * baseM) / (2 * body.conductivityWPerMK);
  numbers.acrossPerStrain = (of.junction * youngMPa) / strengthMPa;
  numbers.throughPerStrain = youngMPa / (1 - POISSON) / strengthMPa;
  fillStrainTable(numbers.strain, {
    quartz: body.quartzFraction,
    cristobalite: body.cristobaliteFraction,
    matrixPerK: body.matrixExpansionPerK,
  });
}

/** A piece in the numbers of the integration, every property at its middle value. */
export function wareNumbers(ware: Ware): StrainNumbers {
  const numbers = newStrainNumbers();
  fillStrainNumbers(numbers, {
    body: middleNumbers(ware.body),
    geometry: ware.geometry,
    junction: JUNCTION.value,
  });
  return numbers;
}
