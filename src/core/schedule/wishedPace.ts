import { bandPassage } from "../curve/bandPassage.ts";
import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { parseRate } from "../units/parseRate.ts";
import { parseTemperature } from "../units/parseTemperature.ts";
import { printRate } from "../units/print.ts";
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../units/temperature.ts";
import { expandSchedule } from "./expandSchedule.ts";
import { untilCool, WINDOW_REACH_HOURS } from "./mends/cooling.ts";
import { paced } from "./paced.ts";
import type { Schedule } from "./Schedule.ts";
import { temperatureDown, temperatureUp } from "./wholeUnits.ts";

/** A stretch of the firing and the most that somebody wants it travelled at. */
export interface WishedPace {
  /** In the order of travel: rising on the way up, falling on the way down [°C]. */
  readonly fromC: number;
  readonly toC: number;
  /** Positive [°C/h]. */
  readonly mostCPerHour: number;
}

/** A measured rate of 50.01 keeps to 50. */
const ROUNDING = 1.01;

/** A schedule that travels no stretch faster than is wished, nor the window by which a rate is measured. */
export function keptTo(
  schedule: Schedule,
  by: { readonly paces: readonly WishedPace[]; readonly kiln: AssumedKiln },
): Schedule {
  return by.paces.reduce((each, pace) => {
    const { unit } = each;
    const { fromC, toC, mostCPerHour } = pace;
    const rising = toC > fromC;
    const roomK = mostCPerHour * WINDOW_REACH_HOURS;
    const why = `no faster than ${printRate(mostCPerHour, unit)} here, as asked`;
    return paced(
      rising ? each : untilCool(each),
      {
        fromC: rising ? temperatureDown(fromC - roomK, unit) : temperatureUp(fromC + roomK, unit),
        toC: rising ? temperatureUp(toC + roomK, unit) : temperatureDown(toC - roomK, unit),
        mostCPerHour,
        why,
      },
      by.kiln,
    );
  }, schedule);
}

/** Whether a schedule, laid out for a kiln, keeps to a pace; so does one that never goes there. */
export function keepsTo(schedule: Schedule, pace: WishedPace, kiln: AssumedKiln): boolean {
  const { fromC, toC, mostCPerHour } = pace;
  const rising = toC > fromC;
  const { curve } = expandSchedule(rising ? schedule : untilCool(schedule), { kiln });
  const band = { name: "asked", lowC: Math.min(fromC, toC), highC: Math.max(fromC, toC) };
  const { fastestCPerHour } = bandPassage(curve, band, rising ? "heating" : "cooling");
  return fastestCPerHour === null || Math.abs(fastestCPerHour) <= ROUNDING * mostCPerHour;
}

const FORM = /^(.+?)\s+from\s+(.+?)\s+to\s+(.+)$/i;

/**
 * A pace as the command line says it: `66 C/h from 620 C to 520 C`; bare numbers are in the unit.
 *
 * @returns `schedule/pace` for anything else, and the problems of its three quantities.
 */
export function parsePace(
  text: string,
  context: { readonly unit: TemperatureUnit; readonly where: string },
): Result<WishedPace> {
  const parts = FORM.exec(text.trim());
  if (parts === null) return failed(notAPace(text, context.where, "it has no rate, from and to"));
  const [, rate = "", from = "", to = ""] = parts;
  const most = parseRate(rate, context);
  const [fromC, toC] = [parseTemperature(from, context), parseTemperature(to, context)];
  if (!most.ok || !fromC.ok || !toC.ok)
    return failed(...[most, fromC, toC].flatMap((part) => (part.ok ? [] : part.problems)));
  if (most.value <= 0) return failed(notAPace(text, context.where, "its rate is not above 0"));
  if (Math.abs(fromC.value - toC.value) < 1)
    return failed(notAPace(text, context.where, "it goes nowhere"));
  return ok({ fromC: fromC.value, toC: toC.value, mostCPerHour: most.value });
}

function notAPace(text: string, where: string, why: string): Problem {
  return {
    code: "schedule/pace",
    where,
    what: `"${text.trim().slice(0, 60)}" is no rate with where it holds: ${why}`,
    expected: "the most that a stretch may be travelled at, in the order of travel",
    fix: `${where} "60 C/h from 620 C to 520 C"`,
  };
}

/** A pace as the command line takes it, in whole degrees of a unit: `119F/h from 1148F to 968F`. */
export function paceWords(pace: WishedPace, unit: TemperatureUnit): string {
  const degrees = (tempC: number) =>
    `${Math.round(unit === "C" ? tempC : fahrenheitFromCelsius(tempC))}${unit}`;
  const rate =
    unit === "C" ? pace.mostCPerHour : fahrenheitDeltaFromCelsiusDelta(pace.mostCPerHour);
  return `${Number(rate.toFixed(1))}${unit}/h from ${degrees(pace.fromC)} to ${degrees(pace.toC)}`;
}
