import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import type { Problem } from "../problem.ts";
import { printDuration, printRate, printTemperature } from "../units/print.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { WantedCooling } from "./newCooling.ts";

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
