import { interpolated } from "./interpolated.ts";

/**
 * Where cristobalite inverts in a clay body [°C]: the middle of the trade's 220 to 226 °C.
 * Published between 200 °C (with aluminium and sodium) and 270 °C (pure, heating).
 */
export const CRISTOBALITE_INVERSION_C = 225;

/** Spread of the inversion over the grains of one body, one sigma [K]; an assumption. */
const CRISTOBALITE_SPREAD_K = 12;

/**
 * Cold form, linear expansion from 20 °C [%]: cell of 4.9709 and 6.9278 Å, slope of 30.5 millionths
 * per kelvin from memory.
 * @see SOURCES["fei-1995"]
 */
export const ALPHA_CRISTOBALITE: readonly (readonly [number, number])[] = [
  [20, 0],
  [100, 0.244],
  [150, 0.396],
  [200, 0.547],
  [225, 0.622],
];

/**
 * Hot form, linear expansion from 20 °C [%], through 27.4 cm³/mol at 750 K; almost flat.
 * @see SOURCES["bourova-richet-1998"]
 */
export const BETA_CRISTOBALITE: readonly (readonly [number, number])[] = [
  [225, 2.026],
  [250, 2.031],
  [270, 2.036],
  [300, 2.042],
  [400, 2.062],
  [477, 2.078],
  [600, 2.103],
  [800, 2.144],
  [1000, 2.184],
];

/** Slope of the cold form [%/K], to carry it on above its last row. */
const ALPHA_SLOPE_PERCENT_PER_K = (0.622 - 0.547) / 25;

/**
 * Linear expansion from 20 °C [%] of the cristobalite in a cooling body, its step spread out.
 * Weaker than the quartz table: the cold slope is from memory, and published sizes of the step run
 * from 2.8 to 7 % of volume (about 4 % here). No hysteresis: on heating it steps later.
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
