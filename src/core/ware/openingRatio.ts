import { fourthPowerK } from "./heatExchange.ts";
import { type StrainNumbers, wareNumbers } from "./strainNumbers.ts";
import type { Ware } from "./Ware.ts";
import { advanceWare, BASE, STATE_SIZE, type Surroundings, strainRatio } from "./wareState.ts";

/** Air of the room [°C]. */
const ROOM_C = 20;

/** Share of what the ware sees that is still hot kiln; the rest is the room. Our own estimate. */
const KILN_SEEN = 0.5;

/** With the lid off the inside of a pot looks out as freely as its outside. */
const INSIDE_SHARE_OPEN = 1;

/** Step of the integration [s]. */
const STEP_SECONDS = 5;

/** Watched this long; the worst comes within half an hour, later only on very thick bases [s]. */
const WATCHED_SECONDS = 2 * 3600;

/** Places at which a kiln that is open already is looked at again on its way down [K]. */
const LOOK_EVERY_K = 10;

/**
 * Worst stress over strength after the lid of a kiln is opened and left open, ware on its shelf.
 * Everything is as hot as the kiln to begin with; then the air is that of a room at 20 °C and half
 * of what the ware sees is the room, half the kiln as it was. Since an open kiln falls too, the
 * worst of this temperature, rounded up to 10 K, and of all below it counts: opening hotter is never
 * better.
 * What strained the ware before is left out, and so is the lag over the width of the piece: an
 * opened load cools from all its surfaces at once. Good to a factor of two either way.
 *
 * @param tempC Temperature of kiln and ware when it is opened [°C]; 0 comes back at 20 and below.
 */
export function openingRatio(ware: Ware, tempC: number): number {
  const numbers = wareNumbers(ware);
  let worst = 0;
  const hottest = Math.ceil(tempC / LOOK_EVERY_K) * LOOK_EVERY_K;
  for (let falls = hottest; falls > ROOM_C; falls -= LOOK_EVERY_K)
    worst = Math.max(worst, openedAt(numbers, falls));
  return worst;
}

function openedAt(numbers: StrainNumbers, tempC: number): number {
  const state = new Float64Array(STATE_SIZE).fill(tempC);
  const around: Surroundings = {
    airC: ROOM_C,
    radiantK4: KILN_SEEN * fourthPowerK(tempC) + (1 - KILN_SEEN) * fourthPowerK(ROOM_C),
    insideShare: INSIDE_SHARE_OPEN,
  };
  const by = { around, seconds: STEP_SECONDS };
  let worst = 0;
  for (let seconds = 0; seconds < WATCHED_SECONDS; seconds += STEP_SECONDS) {
    advanceWare(state, numbers, by);
    worst = Math.max(worst, strainRatio(state, numbers, state[BASE] as number));
  }
  return worst;
}
