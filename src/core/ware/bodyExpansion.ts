import { cristobaliteExpansionPercent } from "./cristobalite.ts";
import { quartzExpansionPercent } from "./quartz.ts";
import type { Body } from "./Ware.ts";

/** Spread of the quartz inversion over the grains of one body, one sigma [K]; 3 to 12, our own estimate. */
const QUARTZ_SPREAD_K = 6;

/**
 * Share of a cristobalite grain's growth that the body around it feels: taken from quartz, where
 * the c axis grows 0.66 of the mean over the inversion.
 * @see SOURCES["carpenter-1998"]
 */
const CRISTOBALITE_FELT = 0.66;

/** Coolest temperature of a strain table [°C]; a row a kelvin from here on. */
const COOLEST_C = -50;

/** Rows of a strain table: up to 1450 °C. */
const ROWS = 1501;

/** What a body is made of, as far as its expansion goes. */
export interface BodyMixture {
  /** Free quartz, share of volume 0–1. */
  readonly quartz: number;
  readonly cristobalite: number;
  /** Linear expansion of the rest [1/K]. */
  readonly matrixPerK: number;
}

/** Strain of both silica minerals from 20 °C, a row a kelvin, as a body around them feels it. */
interface FeltMinerals {
  readonly quartz: Float64Array;
  readonly cristobalite: Float64Array;
}

let felt: FeltMinerals | null = null;

/**
 * Free strain of a fired body from 20 °C [length over length].
 * The matrix expands evenly, quartz grains act along their c axis with the inversion smeared by
 * 6 K, cristobalite with two thirds of its growth about 225 ± 12 K. Same path up and down: the
 * lag of the real inversions on heating is left out.
 */
export function bodyStrain(body: Body, tempC: number): number {
  const minerals = feltMinerals();
  return mixed(
    {
      quartz: body.quartzFraction.value,
      cristobalite: body.cristobaliteFraction.value,
      matrixPerK: body.matrixExpansionPerK.value,
    },
    tempC,
    {
      quartz: strainIn(minerals.quartz, tempC),
      cristobalite: strainIn(minerals.cristobalite, tempC),
    },
  );
}

/** An empty table for `fillStrainTable`. */
export function newStrainTable(): Float64Array {
  return new Float64Array(ROWS);
}

/** Writes the free strain of a body into a table that `strainIn` reads; nothing is allocated. */
export function fillStrainTable(table: Float64Array, mixture: BodyMixture): void {
  const { quartz, cristobalite } = feltMinerals();
  const matrix = (1 - mixture.quartz - mixture.cristobalite) * mixture.matrixPerK;
  for (let row = 0; row < ROWS; row++)
    table[row] =
      matrix * (COOLEST_C + row - 20) +
      mixture.quartz * (quartz[row] as number) +
      mixture.cristobalite * (cristobalite[row] as number);
}

/** Strain at a temperature, straight between rows and beyond the ends of the table. */
export function strainIn(table: Float64Array, tempC: number): number {
  const place = tempC - COOLEST_C;
  const row = place < 0 ? 0 : place > ROWS - 2 ? ROWS - 2 : Math.floor(place);
  const low = table[row] as number;
  return low + ((table[row + 1] as number) - low) * (place - row);
}

function mixed(
  mixture: BodyMixture,
  tempC: number,
  minerals: { readonly quartz: number; readonly cristobalite: number },
): number {
  return (
    (1 - mixture.quartz - mixture.cristobalite) * mixture.matrixPerK * (tempC - 20) +
    mixture.quartz * minerals.quartz +
    mixture.cristobalite * minerals.cristobalite
  );
}

function feltMinerals(): FeltMinerals {
  felt ??= {
    quartz: Float64Array.from({ length: ROWS }, (_, row) => smearedQuartz(COOLEST_C + row)),
    cristobalite: Float64Array.from(
      { length: ROWS },
      (_, row) => (CRISTOBALITE_FELT * cristobaliteExpansionPercent(COOLEST_C + row)) / 100,
    ),
  };
  return felt;
}

/** The c axis of quartz, averaged over grains whose inversions are spread normally. */
function smearedQuartz(tempC: number): number {
  let sum = 0;
  let weights = 0;
  for (let sigmas = -3.5; sigmas <= 3.5; sigmas += 0.25) {
    const weight = Math.exp((-sigmas * sigmas) / 2);
    sum += weight * quartzExpansionPercent(tempC + sigmas * QUARTZ_SPREAD_K, "c");
    weights += weight;
  }
  return sum / weights / 100;
}
