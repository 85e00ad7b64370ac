import type { Band } from "../curve/Band.ts";
import { strainIn } from "./bodyExpansion.ts";
import { CRISTOBALITE_INVERSION_C } from "./cristobalite.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "./inversionBands.ts";
import { type SteadyLags, steadyLags } from "./steadyLags.ts";
import { type StrainNumbers, wareNumbers } from "./strainNumbers.ts";
import type { Ware } from "./Ware.ts";
import { tensileStrain } from "./wareState.ts";

/**
 * Where quartz inverts [°C].
 * @see SOURCES["antao-2016"]
 */
const QUARTZ_INVERSION_C = 573;

/** How far outside a band the worst place is looked for [K]. */
const BEYOND_K = 20;

/** Step between the places at which the worst is looked for [K]. */
const LOOK_STEP_K = 1;

/** A piece and its lags about some temperature. */
export interface Falling {
  readonly numbers: StrainNumbers;
  readonly lags: SteadyLags;
}

/**
 * Stress over strength while ware falls at a steady rate through a band, once all lags have settled.
 * Heat transfer is that of 573 °C for quartz, 225 °C for cristobalite, the middle for other bands.
 * Overstates what a firing does, by a quarter and more where lags are long: `wareStrain` follows
 * the temperatures themselves.
 *
 * @param at.rateCPerHour Positive [°C/h].
 */
export function steadyRatio(
  ware: Ware,
  at: { readonly band: Band; readonly rateCPerHour: number },
): number {
  const numbers = wareNumbers(ware);
  const lags = steadyLags(numbers, inversionC(at.band));
  return bandRatio({ numbers, lags }, at.band, at.rateCPerHour);
}

/** Where the heat transfer of a band is taken [°C]. */
export function inversionC(band: Band): number {
  if (band.name === QUARTZ_BAND.name) return QUARTZ_INVERSION_C;
  if (band.name === CRISTOBALITE_BAND.name) return CRISTOBALITE_INVERSION_C;
  return (band.lowC + band.highC) / 2;
}

/** Largest ratio of both kinds of stress inside a band, each at its own worst place. */
export function bandRatio(falling: Falling, band: Band, rateCPerHour: number): number {
  let across = 0;
  let through = 0;
  for (let tempC = band.lowC - BEYOND_K; tempC <= band.highC + BEYOND_K; tempC += LOOK_STEP_K) {
    across = Math.max(across, acrossAt(falling, tempC, rateCPerHour));
    through = Math.max(through, throughAt(falling, tempC, rateCPerHour));
  }
  return across + through;
}

/** The same at one temperature of the wall, without looking around for the worst. */
export function ratioAt(falling: Falling, tempC: number, rateCPerHour: number): number {
  return acrossAt(falling, tempC, rateCPerHour) + throughAt(falling, tempC, rateCPerHour);
}

/** Wall against base, in the middle of the load. */
function acrossAt({ numbers, lags }: Falling, wallC: number, rateCPerHour: number): number {
  const baseC = wallC + (lags.base - lags.wall + lags.load) * rateCPerHour;
  const difference = strainIn(numbers.strain, baseC) - strainIn(numbers.strain, wallC);
  return Math.abs(difference) * numbers.acrossPerStrain;
}

/** Through the base or the wall, whichever is worse. */
function throughAt({ numbers, lags }: Falling, surfaceC: number, rateCPerHour: number): number {
  const coreK = Math.max(lags.baseCore, lags.wallCore) * rateCPerHour;
  return tensileStrain(numbers.strain, surfaceC, coreK) * numbers.throughPerStrain;
}
