import { bandPassage } from "../curve/bandPassage.ts";
import type { Band } from "../curve/edgeTimes.ts";
import type { Finding } from "../findings/Finding.ts";
import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { printRate } from "../text/quantities.ts";
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  parseRate,
  parseTemperature,
  type TemperatureUnit,
} from "../units/temperature.ts";
import { UNLOAD_C } from "./coolingChecks.ts";
import { COOLING_BANDS, type CoolingLimit, type LimitFor } from "./coolingLimits.ts";
import { expandSchedule } from "./expandSchedule.ts";
import { paced, rateDown, temperatureDown, temperatureUp } from "./paced.ts";
import type { Schedule } from "./Schedule.ts";

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

/** Thinnest and thickest ware that anything is known about [mm]. */
const THINNEST_MM = 1;
const THICKEST_MM = 100;

/** Widest piece that a studio kiln takes [mm]. */
const WIDEST_MM = 3000;

/**
 * What is impossible about the sizes of a piece [mm], as options of the command name them.
 * `schedule/ware-thickness` out of 1 to 100 mm, said once where wall and base are alike;
 * `schedule/ware-width` when it is thinner than its own clay or wider than 3 m.
 */
export function wareSizeProblems(ware: {
  readonly wallMm: number | null;
  readonly baseMm: number | null;
  readonly widestMm: number | null;
}): readonly Problem[] {
  const { wallMm, baseMm, widestMm } = ware;
  const thick = [
    ...thicknessProblems("--wall", wallMm),
    ...(baseMm === wallMm ? [] : thicknessProblems("--base", baseMm)),
  ];
  const thickestMm = Math.max(wallMm ?? 0, baseMm ?? 0);
  if (thick.length > 0 || widestMm === null) return thick;
  if (widestMm >= thickestMm && widestMm <= WIDEST_MM) return [];
  return [
    {
      code: "schedule/ware-width",
      what: `a piece ${Math.round(widestMm)} mm wide with clay ${Math.round(thickestMm)} mm thick`,
      where: "--width",
      expected: `a width from its thickness, ${Math.round(thickestMm)} mm, to ${WIDEST_MM} mm`,
      fix: "give the widest dimension of the largest piece, like --width 150mm",
    },
  ];
}

function thicknessProblems(where: string, mm: number | null): readonly Problem[] {
  if (mm === null || (mm >= THINNEST_MM && mm <= THICKEST_MM)) return [];
  const thin = mm < THINNEST_MM;
  return [
    {
      code: "schedule/ware-thickness",
      what: `clay ${Number(mm.toPrecision(3))} mm thick`,
      where,
      expected: `a thickness from ${THINNEST_MM} to ${THICKEST_MM} mm; a bare number is in millimetres`,
      fix: thin
        ? `inches want their unit, like ${where} 1/4in; the thinnest that can be drafted is ${where} ${THINNEST_MM}`
        : `check the number; the thickest that can be drafted is ${where} ${THICKEST_MM}`,
    },
  ];
}

/** What a schedule is mended for. */
export interface MendContext {
  readonly kiln: AssumedKiln;
  readonly limitFor: LimitFor;
  /** Added to the planned temperatures before cones are judged [K]; null for the usual. */
  readonly offsetK: number | null;
}

/** What a mend makes of a schedule. */
export type Mended =
  | { readonly ok: true; readonly schedule: Schedule; readonly did: string }
  /** It cannot be mended; why, as a sentence. */
  | { readonly ok: false; readonly why: string };

/** Mends what one topic of findings complains of. */
export interface Mend {
  /** Topic of the findings, as the checks name it. */
  readonly topic: string;
  readonly mend: (schedule: Schedule, findings: readonly Finding[], context: MendContext) => Mended;
}

/** Half the window in which a rate counts as sustained, and a little [h]: it reaches out of the band. */
export const WINDOW_REACH_HOURS = 0.14;

/** Cooling through each inversion. */
export const MEND_COOLING: readonly Mend[] = COOLING_BANDS.map((band) => ({
  topic: coolingTopic(band),
  mend: (schedule, _, { kiln, limitFor }) => {
    const limit = limitFor(band);
    if (limit === null) return { ok: true, schedule, did: "left as it is" };
    const slowed = cooledWithin(untilCool(schedule), { band, kiln, limitFor });
    return {
      ok: true,
      schedule: slowed,
      did: `held to ${printRate(pace(limit, schedule), schedule.unit)} through the ${band.name}`,
    };
  },
}));

/** What the check calls cooling through a band. */
export function coolingTopic(band: Band): string {
  return `cooling through ${band.name.replace(" inversion", "")}`;
}

/** A schedule that goes through a band no faster than its guide, edges included; as it is without one. */
function cooledWithin(
  schedule: Schedule,
  by: { readonly band: Band; readonly kiln: AssumedKiln; readonly limitFor: LimitFor },
): Schedule {
  const { band, kiln, limitFor } = by;
  const { unit } = schedule;
  const limit = limitFor(band);
  if (limit === null) return schedule;
  const mostCPerHour = pace(limit, schedule);
  const padK = mostCPerHour * WINDOW_REACH_HOURS;
  return paced(
    schedule,
    {
      fromC: temperatureUp(band.highC + padK, unit),
      toC: temperatureDown(band.lowC - padK, unit),
      mostCPerHour,
      why: `${band.name}: ${printRate(mostCPerHour, unit)} for ${limit.meantFor}`,
    },
    kiln,
  );
}

/** The schedule with the fall by itself to 100 °C written down, when it ends hotter. */
export function untilCool(schedule: Schedule): Schedule {
  const endC = schedule.segments.at(-1)?.toC ?? schedule.startC;
  if (endC <= UNLOAD_C + 0.5) return schedule;
  const fall = { toC: UNLOAD_C, rateCPerHour: "free", holdSeconds: 0, why: null } as const;
  return { ...schedule, segments: [...schedule.segments, fall] };
}

function pace({ limitCPerHour }: CoolingLimit, schedule: Schedule): number {
  return rateDown(limitCPerHour, schedule.unit);
}
