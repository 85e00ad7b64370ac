import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { printRate } from "../units/print.ts";
import { COOLING_BANDS, type LimitFor } from "./coolingLimits.ts";
import { freeSpeed } from "./freeRamp.ts";
import { untilCool, WINDOW_REACH_HOURS } from "./mends/cooling.ts";
import { paced } from "./paced.ts";
import type { Schedule, Segment } from "./Schedule.ts";
import { rateDown, temperatureDown, temperatureUp } from "./wholeUnits.ts";

/** What is called slow, however much the ware bears: the textbook rule [°C/h]. @see SOURCES["fraser-1986"] */
const SLOW_C_PER_HOUR = 50;

/** How a new schedule is to cool. */
export type WantedCooling =
  | { readonly kind: "natural" }
  | { readonly kind: "slow" }
  /** Held on the way down; where the glaze is still soft, so that crystals grow. */
  | { readonly kind: "hold"; readonly atC: number; readonly seconds: number };

/** Cooler than this a glaze is taken to be too stiff for crystals; our own estimate [°C]. */
const CRYSTALS_FROM_C = 700;

/** Slow cooling begins and ends at least this far outside a band [K], rounded outwards to 10 degrees. */
const ROOM_K = 10;

/**
 * A schedule with its cooling added, down to 100 °C.
 * Slow cooling goes at a share of the guide through the inversions, and at the textbook rule at most;
 * the others are left to the kiln, and what the ware does not bear is for the mends.
 */
export function cooled(
  schedule: Schedule,
  by: {
    readonly cooling: WantedCooling;
    /** Share of the limit that slow cooling goes at, 0–1. */
    readonly share: number;
    readonly kiln: AssumedKiln;
    readonly limitFor: LimitFor;
  },
): Schedule {
  const { cooling } = by;
  const held: readonly Segment[] =
    cooling.kind === "hold"
      ? [
          {
            toC: cooling.atC,
            rateCPerHour: "free",
            holdSeconds: cooling.seconds,
            why:
              cooling.atC >= CRYSTALS_FROM_C ? "crystals grow in the glaze" : "the ware evens out",
          },
        ]
      : [];
  const start = untilCool({ ...schedule, segments: [...schedule.segments, ...held] });
  const slow = cooling.kind === "slow" ? slowly(start, by) : start;
  return {
    ...slow,
    segments: slow.segments.map((segment) =>
      segment.why === null ? { ...segment, why: "falls by itself, lid shut" } : segment,
    ),
  };
}

/**
 * The slow ramps, written down whether or not the ware would need them: where the kiln is slower by
 * itself they cost nothing. The reason says what the ware bears and what the kiln does.
 */
function slowly(
  schedule: Schedule,
  by: { readonly share: number; readonly kiln: AssumedKiln; readonly limitFor: LimitFor },
): Schedule {
  const { unit } = schedule;
  return COOLING_BANDS.reduce((each, band) => {
    const guide = by.limitFor(band);
    if (guide === null) return each;
    const { limitCPerHour, meantFor } = guide;
    const eased =
      by.share < 1 ? Math.min(SLOW_C_PER_HOUR, limitCPerHour * by.share) : limitCPerHour;
    const mostCPerHour = rateDown(eased, unit);
    const roomK = Math.max(ROOM_K, mostCPerHour * WINDOW_REACH_HOURS);
    const natural = freeSpeed(by.kiln, band.highC, false);
    const bears = `${printRate(limitCPerHour, unit)} is the guide for ${meantFor}`;
    const unneeded =
      natural <= limitCPerHour
        ? `; it would not need it, for by itself the kiln falls at ${printRate(natural, unit)} here`
        : "";
    return paced(
      each,
      {
        fromC: temperatureUp(band.highC + roomK, unit, 10),
        toC: temperatureDown(band.lowC - roomK, unit, 10),
        mostCPerHour,
        why: `${band.name}, slow as asked: ${bears}${unneeded}`,
        isAsked: true,
      },
      by.kiln,
    );
  }, schedule);
}
