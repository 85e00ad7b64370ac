import type { Curve } from "../curve/Curve.ts";
import type { Finding } from "../findings/Finding.ts";
import type { AssumedKiln, LearnedKiln } from "../kiln/LearnedKiln.ts";
import { predictFiring } from "../kiln/predictFiring.ts";
import { printRate, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { expandSchedule } from "./expandSchedule.ts";
import {
  CARBON,
  mostSteamCPerHour,
  QUICK_C_PER_HOUR,
  STEADY_C_PER_HOUR,
  STEAM,
} from "./heatingChecks.ts";
import { fastestPassage, wayUp } from "./Judged.ts";
import { LATE_SECONDS } from "./kilnChecks.ts";
import { paced, rateDown, temperatureDown } from "./paced.ts";
import type { Schedule, Segment } from "./Schedule.ts";
import { FASTEST_C_PER_HOUR } from "./segments.ts";
import type { Mend, Mended } from "./wishedPace.ts";

/** A stretch of the way up whose rate has a most. */
interface Stretch {
  /** null for the start of the schedule [°C]. */
  readonly fromC: number | null;
  readonly toC: number;
  readonly mostCPerHour: (schedule: Schedule) => number;
  /** How fast a Curve goes there [°C/h]; null when it does not go there. */
  readonly rateOf: (curve: Curve) => number | null;
  readonly reason: string;
}

/** Water leaving: the climb out of the cold. */
export const MEND_START: Mend = {
  topic: "water, rate of the start",
  mend: slowing({
    fromC: null,
    toC: 120,
    mostCPerHour: ({ ware }) => mostSteamCPerHour(ware.thickestMm),
    rateOf: (curve) => fastestPassage(curve, STEAM, STEAM.spanK)?.meanCPerHour ?? null,
    reason: "water leaves as steam",
  }),
};

/** Carbon burning out. */
export const MEND_CARBON: Mend = {
  topic: "carbon burning out",
  mend: slowing({
    fromC: 700,
    toC: 900,
    mostCPerHour: () => QUICK_C_PER_HOUR,
    rateOf: (curve) => fastestPassage(curve, CARBON, CARBON.spanK)?.meanCPerHour ?? null,
    reason: "carbon burns out",
  }),
};

/** Quartz on the way up, in thick or wide ware. */
export const MEND_QUARTZ_HEATING: Mend = {
  topic: "heating through quartz",
  mend: slowing({
    fromC: 520,
    toC: 620,
    mostCPerHour: () => STEADY_C_PER_HOUR,
    rateOf: (curve) => wayUp(curve, 520, 620)?.meanCPerHour ?? null,
    reason: "quartz inversion of thick or wide ware on the way up",
  }),
};

/** Where thick ware is held to dry [°C]: below boiling, as published holds are. */
const DRYING_C = 80;
const DRYING_F_IN_C = (180 - 32) / 1.8;

/** Time for thick or damp ware to dry. */
export const MEND_DRYING: Mend = {
  topic: "water, time to dry",
  mend: (schedule, findings) => {
    const missing = evidence(findings, "wanted") - evidence(findings, "time");
    const holdSeconds = Math.ceil(missing / 60) * 60;
    const why = "dries below boiling";
    const atC = schedule.unit === "C" ? DRYING_C : DRYING_F_IN_C;
    const segments = withHold(schedule, { atC, holdSeconds, why });
    return segments === null
      ? {
          ok: false,
          why: "The schedule does not pass below boiling, where thick or damp ware dries.",
        }
      : {
          ok: true,
          schedule: { ...schedule, segments },
          did: `held below boiling, at about ${printTemperature(atC, schedule.unit)}`,
        };
  },
};

/** Ramps that the user's own kiln cannot climb. */
export const MEND_REACH: Mend = {
  topic: "reach while heating",
  mend: (schedule, _, { kiln }) => {
    let fromC = schedule.startC;
    const simulated = kiln.learned === undefined ? null : lateFrom(schedule, kiln.learned);
    const segments = schedule.segments.flatMap((segment, index) => {
      const startC = fromC;
      fromC = segment.toC;
      const keepsUpToC =
        simulated === null
          ? keptUpTo(segment, startC, kiln)
          : (simulated.get(index) ?? segment.toC);
      return asFastAsItCan(segment, startC, temperatureDown(keepsUpToC, schedule.unit));
    });
    return {
      ok: true,
      schedule: { ...schedule, segments },
      did: "left to the kiln's full power where it cannot keep the rate",
    };
  },
};

function slowing(stretch: Stretch): Mend["mend"] {
  return (schedule, _, { kiln }): Mended => {
    const { unit } = schedule;
    const toC = stretch.toC;
    const fromC = stretch.fromC ?? schedule.startC;
    const pacedTo = (mostCPerHour: number) => {
      const why = `${stretch.reason}: ${printRate(mostCPerHour, unit)} at most`;
      return paced(schedule, { fromC, toC, mostCPerHour, why }, kiln);
    };
    const mostCPerHour = gentlest(unit, (rate) => {
      const went = stretch.rateOf(expandSchedule(pacedTo(rate), { kiln }).curve);
      return went === null || went <= stretch.mostCPerHour(schedule);
    });
    return {
      ok: true,
      schedule: pacedTo(mostCPerHour),
      did: `slowed to ${printRate(mostCPerHour, unit)} up to ${printTemperature(toC, unit)}`,
    };
  };
}

/** The fastest whole rate that is slow enough, by halving. */
function gentlest(unit: TemperatureUnit, isSlowEnough: (rateCPerHour: number) => boolean): number {
  let low = 1;
  let high = FASTEST_C_PER_HOUR;
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (isSlowEnough(rateDown(middle, unit))) low = middle;
    else high = middle;
  }
  return rateDown(low, unit);
}

function evidence(findings: readonly Finding[], name: string): number {
  const found = findings[0]?.evidence.find((item) => item.name === name);
  if (found === undefined) throw new RangeError(`mends: no evidence {${name}}`);
  return found.value;
}

function withHold(
  schedule: Schedule,
  hold: { readonly atC: number; readonly holdSeconds: number; readonly why: string },
): readonly Segment[] | null {
  const { atC, holdSeconds, why } = hold;
  let fromC = schedule.startC;
  for (const [index, segment] of schedule.segments.entries()) {
    if (segment.toC <= fromC) return null;
    const rest = schedule.segments.slice(index + 1);
    const before = schedule.segments.slice(0, index);
    if (segment.toC >= 65 && segment.toC <= 100)
      return [
        ...before,
        { ...segment, holdSeconds: segment.holdSeconds + holdSeconds, why: segment.why ?? why },
        ...rest,
      ];
    if (segment.toC > atC && fromC < atC)
      return [...before, { ...segment, toC: atC, holdSeconds, why }, segment, ...rest];
    fromC = segment.toC;
  }
  return null;
}

function asFastAsItCan(segment: Segment, startC: number, keepsUpToC: number): readonly Segment[] {
  if (segment.rateCPerHour === "free" || segment.toC <= startC || keepsUpToC >= segment.toC)
    return [segment];
  const full = { ...segment, rateCPerHour: "free" as const, why: "all the kiln gives" };
  return keepsUpToC - startC < 2 ? [full] : [{ ...segment, toC: keepsUpToC, holdSeconds: 0 }, full];
}

/** About how far up the kiln keeps the rate of a climb, to the degree below [°C]. */
function keptUpTo(segment: Segment, startC: number, kiln: AssumedKiln): number {
  const rate = segment.rateCPerHour;
  let keptC = startC;
  if (rate === "free") return keptC;
  while (keptC < segment.toC && kiln.fullHeatingCPerHour(keptC + 1) >= rate) keptC += 1;
  return Math.min(keptC, segment.toC);
}

/** The same by simulation, for the climbs that would be late: segment index to temperature [°C]. */
function lateFrom(schedule: Schedule, learned: LearnedKiln): ReadonlyMap<number, number> {
  const { segments } = predictFiring(learned, schedule);
  return new Map(
    segments.flatMap(({ segment, behindSeconds, behindFromC }) =>
      behindFromC === null || behindSeconds <= LATE_SECONDS
        ? []
        : [[segment, behindFromC] as const],
    ),
  );
}
