import { kelvinFromCelsius } from "../units/temperature.ts";
import { CARPENTER_C_AXIS, CARPENTER_MEAN } from "./quartzTables.ts";
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
      mixture.quartz * quartz[row]! +
      mixture.cristobalite * cristobalite[row]!;
}

/** Strain at a temperature, straight between rows and beyond the ends of the table. */
export function strainIn(table: Float64Array, tempC: number): number {
  const place = tempC - COOLEST_C;
  const row = place < 0 ? 0 : place > ROWS - 2 ? ROWS - 2 : Math.floor(place);
  const low = table[row]!;
  return low + (table[row + 1]! - low) * (place - row);
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

/**
 * Where cristobalite inverts in a clay body [°C]: the middle of the trade's 220 to 226 °C.
 * Published between 200 °C (with aluminium and sodium) and 270 °C (pure, heating).
 */
export const CRISTOBALITE_INVERSION_C = 225;

/** Spread of the inversion over the grains of one body, one sigma [K]; an assumption. */
const CRISTOBALITE_SPREAD_K = 12;

/**
 * Cold form, linear expansion from 20 °C [%], a slope of 30.6 millionths per kelvin: from the cell of
 * 4.9717 and 6.9223 Å at room temperature.
 * @see SOURCES["downs-palmer-1994"]
 */
export const ALPHA_CRISTOBALITE: readonly (readonly [number, number])[] = [
  [20, 0],
  [100, 0.245],
  [150, 0.398],
  [200, 0.551],
  [225, 0.627],
];

/**
 * Hot form, linear expansion from 20 °C [%], above the cold one by a step of 4.2 % of volume; almost flat.
 * @see SOURCES["graetsch-2003"] for the step, SOURCES["bourova-richet-1998"] for the volume at 750 K
 */
export const BETA_CRISTOBALITE: readonly (readonly [number, number])[] = [
  [225, 2.017],
  [250, 2.022],
  [270, 2.027],
  [300, 2.033],
  [400, 2.053],
  [477, 2.069],
  [600, 2.094],
  [800, 2.135],
  [1000, 2.175],
];

/** Slope of the cold form [%/K], to carry it on above its last row. */
const ALPHA_SLOPE_PERCENT_PER_K = (0.627 - 0.551) / 25;

/**
 * Linear expansion from 20 °C [%] of the cristobalite in a cooling body, its step spread out.
 * Weaker than the quartz table: published sizes of the step run from 2.8 to 7 % of volume (4.2 % here). No hysteresis: on heating it steps later.
 */
export function cristobaliteExpansionPercent(tempC: number): number {
  const share = normalShareBelow((tempC - CRISTOBALITE_INVERSION_C) / CRISTOBALITE_SPREAD_K);
  return (1 - share) * alphaPercent(tempC) + share * betaPercent(tempC);
}

function alphaPercent(tempC: number): number {
  const beyondK = Math.max(0, tempC - CRISTOBALITE_INVERSION_C);
  return interpolated(ALPHA_CRISTOBALITE, tempC) + beyondK * ALPHA_SLOPE_PERCENT_PER_K;
}

function betaPercent(tempC: number): number {
  return interpolated(BETA_CRISTOBALITE, tempC);
}

/** Share of a normal spread that lies below `sigmas` (Abramowitz & Stegun 7.1.26, error under 2e−7). */
function normalShareBelow(sigmas: number): number {
  const x = Math.abs(sigmas) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const series =
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = (series * Math.exp(-x * x)) / 2;
  return sigmas < 0 ? tail : 1 - tail;
}

/** Direction in a quartz crystal: the mean of all, or along c, which is what a body feels. */
type QuartzAxis = "mean" | "c";

/**
 * Linear expansion of quartz from 20 °C [%], straight between measured points.
 * A pure crystal: in a body the step at 573 °C is smeared by some 6 K and scaled by the free
 * quartz. Above 900 °C the last value is kept; quartz hardly moves there.
 *
 * @see SOURCES["carpenter-1998"]
 */
export function quartzExpansionPercent(tempC: number, axis: QuartzAxis): number {
  const table = axis === "c" ? CARPENTER_C_AXIS : CARPENTER_MEAN;
  return interpolated(table.rows, tempC);
}

/** Molar volume of quartz at 25 °C [cm³/mol]. */
const VOLUME_25C = 22.69;
/** Size of the volume that the order parameter takes up [cm³/mol]. */
const VOLUME_MAX = 1.188;
/** Temperature at which the order is gone [K]. */
const CRITICAL_K = 847;

/**
 * Molar volume of quartz [cm³/mol] by the closed form of a Landau transition, flat above 847 K.
 * Its mean expansion stays within 0.09 % of length of the measured table up to 700 °C; it has no
 * jump at the inversion, only a vertical tangent, so use the table where the step matters.
 *
 * @see SOURCES["holland-powell-2011"]
 */
export function quartzMolarVolume(tempC: number): number {
  return VOLUME_25C + VOLUME_MAX * (order(25) - order(tempC));
}

/** Mean linear expansion of quartz from 20 °C [%] by the closed form. */
export function quartzExpansionByFormulaPercent(tempC: number): number {
  return (Math.cbrt(quartzMolarVolume(tempC) / quartzMolarVolume(20)) - 1) * 100;
}

function order(tempC: number): number {
  return Math.sqrt(Math.max(0, 1 - kelvinFromCelsius(tempC) / CRITICAL_K));
}

/**
 * Value of a table at a temperature, straight between its rows.
 * Below the first row it goes on with the first slope; above the last it keeps the last value.
 *
 * @param rows At least two, temperature [°C] first, coolest first.
 * @throws RangeError when there are fewer than two rows.
 */
export function interpolated(
  rows: readonly (readonly [tempC: number, value: number])[],
  tempC: number,
): number {
  const last = rows.at(-1);
  if (last === undefined || rows.length < 2)
    throw new RangeError(`interpolated: ${rows.length} rows`);
  if (tempC >= last[0]) return last[1];
  const found = rows.findIndex(([rowC]) => rowC > tempC);
  const upper = Math.max(1, found);
  const [lowC, low] = rows[upper - 1] as readonly [number, number];
  const [highC, high] = rows[upper] as readonly [number, number];
  return low + ((high - low) * (tempC - lowC)) / (highC - lowC);
}
