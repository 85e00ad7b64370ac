import { interpolated } from "./interpolated.ts";

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
