import { lastAsked } from "../math/memo.ts";
import { fourthPowerK } from "./heatExchange.ts";
import { stressRatio } from "./pieceStress.ts";
import { type StrainNumbers, wareNumbers } from "./strainNumbers.ts";
import { atRest, mismatch, spacedMoments } from "./strainRunner.ts";
import { type Draws, ratioSpread, type SpreadShares } from "./strainSpread.ts";
import type { Ware } from "./Ware.ts";
import { advanceWare, STATE_SIZE, type Surroundings } from "./wareState.ts";

/** What opening the kiln at a temperature does to a piece. */
export interface OpeningStrain {
  readonly way: OpeningWay;
  /** Temperature of kiln and ware at the opening [°C]. */
  readonly tempC: number;
  /** Worst computed stress over strength; good to a factor of two either way. */
  readonly ratio: number;
  /** The 10 and 90 % points of what body, strength, shape and kiln may be. */
  readonly low: number;
  readonly high: number;
  /** What that range comes from. */
  readonly shares: SpreadShares;
}

const WAYS: readonly OpeningWay[] = ["lid opened", "lifted out"];

const NOTHING: SpreadShares = { body: 0, strength: 0, shape: 0, kiln: 0 };

const OPENINGS = lastAsked<OpeningStrain>(200);

/**
 * What a piece suffers when the lid is opened, and when it is lifted out, at each temperature.
 * In the order of the temperatures, the lid first. The spread is that of `ratioSpread`, from the
 * temperature at which the middle of it is worst.
 *
 * @throws RangeError when fewer than 10 runs are asked for.
 */
export function openingStrains(
  ware: Ware,
  tempsC: readonly number[],
  draws: Draws,
): readonly OpeningStrain[] {
  const piece = JSON.stringify([ware, draws]);
  return tempsC.flatMap((tempC) =>
    WAYS.map((way) =>
      OPENINGS.of(`${way} ${tempC} ${piece}`, () => openingStrain(ware, { tempC, way }, draws)),
    ),
  );
}

function openingStrain(
  ware: Ware,
  { tempC, way }: { readonly tempC: number; readonly way: OpeningWay },
  draws: Draws,
): OpeningStrain {
  const { ratio, moments } = worstOpening(wareNumbers(ware), tempC, way);
  if (moments.length === 0) return { way, tempC, ratio, low: 0, high: 0, shares: NOTHING };
  const { low, high, shares } = ratioSpread(ware, moments, draws);
  return { way, tempC, ratio, low: Math.min(low, ratio), high: Math.max(high, ratio), shares };
}

/** How ware comes into the cold: the lid is opened over it, or it is lifted out on its shelf. */
type OpeningWay = "lid opened" | "lifted out";

/** Air of the room [°C]. */
const ROOM_C = 20;

/**
 * Share of what the ware sees that is still hot kiln; the rest is the room. Half under an opened
 * lid is our own estimate; out of the kiln there is only the room to be seen.
 */
const KILN_SEEN: Readonly<Record<OpeningWay, number>> = { "lid opened": 0.5, "lifted out": 0 };

/** Heat carried by the air that rises from an open kiln or about a shelf in a room [W/m²K]; 5 to 15, from memory. */
const OPEN_AIR_W_PER_M2K = 8;

/** Steps of the integration, short at first [s]. */
const SHORTEST_SECONDS = 5;
const LONGEST_SECONDS = 60;

/** Watched this long; the worst comes within half an hour, later only on very thick bases [s]. */
const WATCHED_SECONDS = 2 * 3600;

/** Places at which a kiln that is open already is looked at again on its way down [K]. */
const LOOK_EVERY_K = 20;

/** Where ware that is being cooled in the open is at its worst. */
export interface WorstOpening {
  readonly ratio: number;
  /** Temperature of the ware when it came into the cold, by which it is worst [°C]. */
  readonly fromC: number;
  /** States of the piece about that moment. */
  readonly moments: readonly Float64Array[];
}

/**
 * Worst stress over strength after the lid of a kiln is opened and left open, or after the ware is
 * lifted out, in either case on its shelf, which stays hot under it.
 * Everything is as hot as the kiln to begin with; then the air is that of a room at 20 °C. Under an
 * opened lid half of what the ware sees is the room and half the kiln as it was; lifted out, it
 * sees the room alone. Since an open kiln falls too, the worst of this temperature and of all below
 * it, 20 K apart, counts: opening hotter is never better.
 * What strained the ware before is left out, and so is the lag over the width of the piece: an
 * opened load cools from all its surfaces at once. A cold table under the foot and wet hands are
 * not in it. Good to a factor of two either way.
 *
 * @param tempC Temperature of kiln and ware when it is opened [°C]; 0 comes back at 20 and below.
 */
export function openingRatio(ware: Ware, tempC: number, way: OpeningWay = "lid opened"): number {
  return worstOpening(wareNumbers(ware), tempC, way).ratio;
}

/** The same for a piece that is already worked out, with the temperature from which it is worst. */
function worstOpening(numbers: StrainNumbers, tempC: number, way: OpeningWay): WorstOpening {
  let worst: WorstOpening = { ratio: 0, fromC: ROOM_C, moments: [] };
  for (let fromC = tempC; fromC > ROOM_C; fromC -= LOOK_EVERY_K) {
    const found = openedAt(numbers, fromC, way);
    if (found.ratio > worst.ratio) worst = found;
  }
  return worst;
}

/** Worst stress over strength of ware that comes into the cold at one temperature [°C] alone. */
export function openedAt(piece: StrainNumbers, fromC: number, way: OpeningWay): WorstOpening {
  // The load lags no more than the piece: all of it stands in the open.
  const numbers = { ...piece, stackShare: 0 };
  const state = new Float64Array(STATE_SIZE);
  atRest(state, fromC);
  const seen = KILN_SEEN[way];
  const around: Surroundings = {
    airC: ROOM_C,
    radiantK4: seen * fourthPowerK(fromC) + (1 - seen) * fourthPowerK(ROOM_C),
    airWPerM2K: OPEN_AIR_W_PER_M2K,
    upShare: 1,
  };
  const by = { around, seconds: SHORTEST_SECONDS };
  const states: Float64Array[] = [];
  for (let seconds = 0; seconds < WATCHED_SECONDS; seconds += by.seconds) {
    by.seconds = Math.min(LONGEST_SECONDS, Math.max(SHORTEST_SECONDS, seconds / 20));
    advanceWare(state, numbers, by);
    states.push(state.slice());
  }
  const mismatches = Float64Array.from(states, (each) => mismatch(each, numbers));
  const moments = spacedMoments([...states.keys()], mismatches).map((step) => states[step]!);
  const ratio = Math.max(0, ...moments.map((each) => stressRatio(each, numbers)));
  return { ratio, fromC, moments };
}
