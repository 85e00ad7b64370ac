import { fourthPowerK } from "./heatExchange.ts";
import { CRISTOBALITE_BAND } from "./inversionBands.ts";
import { type StrainNumbers, wareNumbers } from "./strainNumbers.ts";
import type { Ware } from "./Ware.ts";
import { advanceWare, BASE, STATE_SIZE, type Surroundings, strainRatio } from "./wareState.ts";

/** How ware comes into the cold: the lid is opened over it, or it is lifted out on its shelf. */
export type OpeningWay = "lid opened" | "lifted out";

/** Air of the room [°C]. */
const ROOM_C = 20;

/**
 * Share of what the ware sees that is still hot kiln; the rest is the room. Half under an opened
 * lid is our own estimate; out of the kiln there is only the room to be seen.
 */
const KILN_SEEN: Readonly<Record<OpeningWay, number>> = { "lid opened": 0.5, "lifted out": 0 };

/** With the lid off the inside of a pot looks out as freely as its outside. */
const INSIDE_SHARE_OPEN = 1;

/** Step of the integration [s]. */
const STEP_SECONDS = 5;

/** Watched this long; the worst comes within half an hour, later only on very thick bases [s]. */
const WATCHED_SECONDS = 2 * 3600;

/** Places at which a kiln that is open already is looked at again on its way down [K]. */
const LOOK_EVERY_K = 10;

/** Where ware that is being cooled in the open is at its worst. */
interface WorstOpening {
  readonly ratio: number;
  /** Temperature of the ware when it came into the cold, by which it is worst [°C]. */
  readonly fromC: number;
}

/**
 * Worst stress over strength after the lid of a kiln is opened and left open, or after the ware is
 * lifted out, in either case on its shelf, which stays hot under it.
 * Everything is as hot as the kiln to begin with; then the air is that of a room at 20 °C. Under an
 * opened lid half of what the ware sees is the room and half the kiln as it was; lifted out, it
 * sees the room alone. Since an open kiln falls too, the worst of this temperature, rounded up to
 * 10 K, and of all below it counts: opening hotter is never better.
 * What strained the ware before is left out, and so is the lag over the width of the piece: an
 * opened load cools from all its surfaces at once. A cold table under the foot, wet hands and a
 * draught are not in it. Good to a factor of two either way.
 *
 * @param tempC Temperature of kiln and ware when it is opened [°C]; 0 comes back at 20 and below.
 */
export function openingRatio(ware: Ware, tempC: number, way: OpeningWay = "lid opened"): number {
  return worstOpening(wareNumbers(ware), tempC, way).ratio;
}

/** The same for a piece that is already worked out, with the temperature from which it is worst. */
export function worstOpening(numbers: StrainNumbers, tempC: number, way: OpeningWay): WorstOpening {
  let worst: WorstOpening = { ratio: 0, fromC: ROOM_C };
  const hottest = Math.ceil(tempC / LOOK_EVERY_K) * LOOK_EVERY_K;
  for (let fromC = hottest; fromC > ROOM_C; fromC -= LOOK_EVERY_K) {
    const ratio = ratioFrom(numbers, fromC, way);
    if (ratio > worst.ratio) worst = { ratio, fromC };
  }
  return worst;
}

/** Worst stress over strength of ware that comes into the cold at one temperature [°C] alone. */
export function ratioFrom(numbers: StrainNumbers, fromC: number, way: OpeningWay): number {
  const state = new Float64Array(STATE_SIZE).fill(fromC);
  const seen = KILN_SEEN[way];
  const around: Surroundings = {
    airC: ROOM_C,
    radiantK4: seen * fourthPowerK(fromC) + (1 - seen) * fourthPowerK(ROOM_C),
    insideShare: INSIDE_SHARE_OPEN,
  };
  const by = { around, seconds: STEP_SECONDS };
  let worst = 0;
  for (let seconds = 0; seconds < WATCHED_SECONDS; seconds += STEP_SECONDS) {
    advanceWare(state, numbers, by);
    const baseC = state[BASE] as number;
    const ratio = strainRatio(state, numbers, baseC);
    worst = Math.max(worst, ratio);
    if (baseC < CRISTOBALITE_BAND.lowC && ratio < worst / 2) break;
  }
  return worst;
}
