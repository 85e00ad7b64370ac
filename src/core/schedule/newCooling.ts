import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import type { Problem } from "../problem.ts";
import { printDuration, printRate, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { UNLOAD_C } from "./coolingChecks.ts";
import { COOLING_BANDS, type LimitFor } from "./coolingLimits.ts";
import { freeSpeed } from "./expandSchedule.ts";
import { paced, rateDown, temperatureDown, temperatureUp } from "./paced.ts";
import type { Schedule, Segment } from "./Schedule.ts";
import { untilCool, WINDOW_REACH_HOURS } from "./wishedPace.ts";

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

/** A hold on the way down lies at least this far below the peak [K]. */
export const BELOW_PEAK_K = 20;

/** A new schedule ends here, so no hold on the way down is cooler [°C]. */
export const COOLEST_HOLD_C = UNLOAD_C;

/** A hold asked for on the way down. */
type Hold = Extract<WantedCooling, { kind: "hold" }>;

/** The problem of a hold hotter than the peak, or so near to it or so long that it makes the cone by itself. */
export function holdTooHot(hold: Hold, peakC: number, unit: TemperatureUnit): Problem {
  const near = hold.atC > peakC - BELOW_PEAK_K;
  const at = `${printDuration(hold.seconds)} at ${printTemperature(hold.atC, unit)}`;
  const peak = printTemperature(peakC, unit);
  return {
    code: "schedule/hold-too-hot",
    what: near
      ? `a hold of ${at} on the way down, and the peak of this cone is ${peak}`
      : `a hold of ${at} on the way down makes more of the cone than it may: no peak above it is left`,
    where: "--cooling",
    expected: near
      ? `a hold at least ${unit === "C" ? "20 °C" : "36 °F"} below the peak, for its heat works on the cone too`
      : `a hold that leaves the peak above it, which is ${peak} before the hold is counted`,
    fix: "a cooler hold",
  };
}

/** The problem of a hold below the end of the schedule; none for another cooling. */
export function holdTooCool(cooling: WantedCooling, unit: TemperatureUnit): readonly Problem[] {
  if (cooling.kind !== "hold" || cooling.atC > COOLEST_HOLD_C) return [];
  return [
    {
      code: "schedule/hold-too-cool",
      what: `a hold at ${printTemperature(cooling.atC, unit)} on the way down`,
      where: "--cooling",
      expected: `a temperature above ${printTemperature(COOLEST_HOLD_C, unit)}, where the schedule ends`,
      fix: `crystals in a glaze want a hold like --cooling "hold ${unit === "C" ? "900C" : "1650F"} ${printDuration(cooling.seconds)}"`,
    },
  ];
}

/** A firing that takes longer than it may. */
export interface ShortOfTime {
  readonly cooling: WantedCooling;
  readonly unit: TemperatureUnit;
  readonly withinSeconds: number;
  /** As wished, at the least, down to 100 °C [s]. */
  readonly takesSeconds: number;
  /** With nothing on the way down but what ware and kiln ask for [s]. */
  readonly naturalSeconds: number;
  readonly kiln: AssumedKiln;
  /** Whether a hold of this length [s] would fit; false without a hold. */
  readonly canHold: (seconds: number) => boolean;
}

/** Holds are shortened in such steps [s]. */
const HOLD_STEP_SECONDS = 900;

/** Times nearer than this are alike [s]. */
const ALIKE_SECONDS = 60;

const WAYS = {
  natural: "natural cooling",
  slow: "slow cooling",
  hold: "this hold on the way down",
} as const;

/** The problem of too little time: what the wish takes, and the nearest wishes that fit. */
export function tooLittleTime(short: ShortOfTime): Problem {
  const { cooling, unit, kiln, takesSeconds, withinSeconds } = short;
  const fall = printRate(kiln.naturalCoolingCPerHour(500), unit);
  return {
    code: "schedule/too-little-time",
    what: `this cone with ${WAYS[cooling.kind]} takes ${printDuration(takesSeconds)} from the start to ${printTemperature(100, unit)} at the least, not ${printDuration(withinSeconds)}`,
    where: "--within",
    expected: `a limit that ware and kiln allow; at ${printTemperature(500, unit)} the kiln falls at ${fall} by itself; that is ${kiln.basis}`,
    fix: nearestWishes(short),
  };
}

function nearestWishes(short: ShortOfTime): string {
  const { naturalSeconds, takesSeconds, withinSeconds } = short;
  const longer = `--within ${hours(takesSeconds)}`;
  if (naturalSeconds <= withinSeconds) {
    const held = longestHold(short);
    const first =
      held ?? `--cooling natural, which takes ${printDuration(naturalSeconds)} at the least`;
    return `${first}; or ${longer}`;
  }
  return naturalSeconds < takesSeconds - ALIKE_SECONDS
    ? `${longer}; or --cooling natural --within ${hours(naturalSeconds)}`
    : longer;
}

/** The hold, shortened until it fits; null when none of a quarter of an hour does. */
function longestHold({ cooling, takesSeconds, withinSeconds, canHold, unit }: ShortOfTime) {
  if (cooling.kind !== "hold") return null;
  const rest = cooling.seconds - (takesSeconds - withinSeconds);
  const seconds = Math.floor(rest / HOLD_STEP_SECONDS) * HOLD_STEP_SECONDS;
  if (seconds < HOLD_STEP_SECONDS || !canHold(seconds)) return null;
  const at = printTemperature(cooling.atC, unit).replace(" °", "");
  return `--cooling "hold ${at} ${printDuration(seconds)}"`;
}

function hours(seconds: number): string {
  return `${Math.ceil(seconds / 3600)}h`;
}
