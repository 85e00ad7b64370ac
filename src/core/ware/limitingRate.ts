import type { Band } from "../curve/Band.ts";
import { steadyLags } from "./steadyLags.ts";
import { bandRatio, inversionC, ratioAt } from "./steadyRatio.ts";
import { type StrainNumbers, wareNumbers } from "./strainNumbers.ts";
import type { Ware } from "./Ware.ts";

/** No faster rate is ever named [°C/h]. */
const FASTEST_C_PER_HOUR = 3000;

/** Slowest rate that is told from standing still [°C/h]. */
const SLOWEST_C_PER_HOUR = 0.01;

/** Halvings of the search, to a thousandth of the rate and better. */
const HALVINGS = 24;

/**
 * Steady cooling rate at which stress over strength reaches `ratio` inside a band [°C/h, positive].
 * By the steady formula, so on the safe side where lags are long; good to a factor of two either
 * way. At most 3000.
 *
 * @throws RangeError when the ratio is not above 0.
 */
export function limitingRate(
  ware: Ware,
  at: { readonly band: Band; readonly ratio: number },
): number {
  return limitingRateOf(wareNumbers(ware), at);
}

/** The same for a piece that is already worked out. */
export function limitingRateOf(
  numbers: StrainNumbers,
  at: { readonly band: Band; readonly ratio: number },
): number {
  const lags = steadyLags(numbers, inversionC(at.band));
  return rateReaching(at.ratio, (rate) => bandRatio({ numbers, lags }, at.band, rate));
}

/**
 * Steady cooling rate at which stress over strength reaches `ratio` while the wall is at one
 * temperature [°C/h, positive]; at most 3000. The limit already falls above an inversion, where
 * the wall is about to go through it, and stays low below it for as long as the base has yet to.
 * Above some 700 °C the glass in a body gives way and the limit means little.
 *
 * @throws RangeError when the ratio is not above 0.
 */
export function limitingRateAt(
  ware: Ware,
  at: { readonly tempC: number; readonly ratio: number },
): number {
  const numbers = wareNumbers(ware);
  const lags = steadyLags(numbers, at.tempC);
  return rateReaching(at.ratio, (rate) => ratioAt({ numbers, lags }, at.tempC, rate));
}

/** The rate at which a rising ratio reaches its mark, by halving on a logarithmic scale. */
function rateReaching(mark: number, ratioOf: (rateCPerHour: number) => number): number {
  if (!(mark > 0)) throw new RangeError(`limitingRate: ratio ${mark}`);
  if (ratioOf(FASTEST_C_PER_HOUR) <= mark) return FASTEST_C_PER_HOUR;
  let [low, high] = [SLOWEST_C_PER_HOUR, FASTEST_C_PER_HOUR];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = Math.sqrt(low * high);
    if (ratioOf(middle) > mark) high = middle;
    else low = middle;
  }
  return low;
}
