import { type ConeSeries, coneIndex, wholeCones } from "../cones/cone.ts";
import { type AssumedKiln, REFERENCE_KILN } from "../kiln/LearnedKiln.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { printDifference, printDuration, printMm, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type Body, isDemanding } from "../ware/Ware.ts";
import { type LimitFor, limitsFor } from "./coolingLimits.ts";
import { draftSchedule } from "./draftSchedule.ts";
import { expandSchedule } from "./expandSchedule.ts";
import {
  BELOW_PEAK_K,
  COOLEST_HOLD_C,
  cooled,
  holdTooCool,
  holdTooHot,
  type ShortOfTime,
  tooLittleTime,
  type WantedCooling,
} from "./newCooling.ts";
import { type Climb, climb } from "./newHeating.ts";
import { temperatureDown } from "./paced.ts";
import { repairSchedule } from "./repairSchedule.ts";
import type { Schedule, Segment } from "./Schedule.ts";
import { HOTTEST_C } from "./segments.ts";
import { solveSchedule } from "./solveSchedule.ts";
import { keptTo, type WishedPace, wareSizeProblems } from "./wishedPace.ts";

/** What a new schedule is wanted for. */
export interface NewScheduleInput {
  /** As `parseCone` gives it. */
  readonly cone: string;
  readonly series: ConeSeries;
  readonly unit: TemperatureUnit;
  readonly ware: {
    /** Null when unknown. */
    readonly body: Body | null;
    /** From 1 to 100 [mm]. */
    readonly wallMm: number;
    readonly baseMm: number;
    readonly widestMm: number | null;
    readonly damp: boolean;
  };
  readonly cooling: WantedCooling;
  /** Stretches and the most that they may be travelled at. */
  readonly paces?: readonly WishedPace[];
  /** Longest that it may take from the start to 100 °C [s], or null. */
  readonly withinSeconds: number | null;
  readonly kiln?: AssumedKiln;
  /** What the ware stands; without it what is published. */
  readonly limitFor?: LimitFor;
  /** Added to the planned temperatures, from witness cones [K]; left out for the usual. */
  readonly offsetK?: number | null;
}

/** What a cone of each series is called. */
const SERIES_WORDS: Readonly<Record<ConeSeries, string>> = {
  "self-supporting": "cone",
  "self-supporting-iron-free": "iron-free cone",
  large: "large cone",
  "large-iron-free": "large iron-free cone",
  small: "small cone",
};

/** Room temperature [°C]; 68 °F. */
const START_C = 20;

/** From this peak on ware is taken to be glazed on bisque, below it raw [°C]. */
const GLAZE_PEAK_C = 1100;

/** A climb to begin with, before the cone's own peak is known. */
const PLAIN_RAMP: Segment = { toC: HOTTEST_C, rateCPerHour: 60, holdSeconds: 900, why: null };

/**
 * A schedule for a cone, a piece of ware and a kiln, with a reason for every segment.
 * The peak is worked out with hold and cooling counted and rounded up to a whole degree; what the
 * kiln or the ware does not stand is slowed until nothing is left to object to.
 *
 * @returns `schedule/ware-thickness`, `schedule/ware-width`, `schedule/hold-too-hot`,
 * `schedule/hold-too-cool`, `schedule/kiln-too-weak`, `schedule/too-little-time` with the nearest that is possible.
 */
export function newSchedule(input: NewScheduleInput): Result<Schedule> {
  const { cooling, ware } = input;
  const wrong = [...wareSizeProblems(ware), ...holdTooCool(cooling, input.unit)];
  if (wrong.length > 0) return failed(...wrong);
  const wanted = drafted(input, { cooling, ease: EASY });
  if (!wanted.ok) return failed(...wanted.problems.map((problem) => withWayOut(problem, input)));
  if (fits(wanted.value, input)) return wanted;
  const tight = drafted(input, { cooling, ease: TIGHT });
  if (!tight.ok || fits(tight.value, input)) return tight;
  return failed(tooLittleTime(timesOf(input, tight.value)));
}

/** What a firing would take that is to fit into less. */
function timesOf(input: NewScheduleInput, wished: Schedule): ShortOfTime {
  const { cooling, unit, withinSeconds } = input;
  const natural = drafted(input, { cooling: { kind: "natural" }, ease: TIGHT });
  const takesSeconds = totalSeconds(wished, input);
  return {
    cooling,
    unit,
    withinSeconds: withinSeconds ?? 0,
    takesSeconds,
    naturalSeconds: natural.ok ? totalSeconds(natural.value, input) : takesSeconds,
    kiln: input.kiln ?? REFERENCE_KILN,
    canHold: (seconds) => {
      if (cooling.kind !== "hold") return false;
      const shorter = drafted(input, { cooling: { ...cooling, seconds }, ease: TIGHT });
      return shorter.ok && fits(shorter.value, input);
    },
  };
}

/** A problem of the working out, said of the wish that made it, with the nearest wish that works. */
function withWayOut(problem: Problem, input: NewScheduleInput): Problem {
  const { cooling, series } = input;
  if (problem.code === "schedule/hold-too-hot" && cooling.kind === "hold")
    return { ...problem, fix: coolerHold(input, cooling) };
  if (problem.code !== "schedule/kiln-too-weak") return { ...problem, where: "--cone" };
  const reached = wholeCones(series)
    .filter((cone) => coneIndex(cone) < coneIndex(input.cone))
    .findLast((cone) => drafted({ ...input, cone }, { cooling, ease: EASY }).ok);
  const nearest = reached === undefined ? "" : `--cone ${reached}, which it reaches; or `;
  return {
    ...problem,
    where: "--cone",
    what: `${problem.what}; that is ${(input.kiln ?? REFERENCE_KILN).basis}`,
    fix: `${nearest}help the kiln: by common practice new elements, a lighter load and fewer shelves`,
  };
}

/** The hottest hold of this length that leaves the peak above it, in steps of ten degrees. */
function coolerHold(
  input: NewScheduleInput,
  { atC, seconds }: Extract<WantedCooling, { kind: "hold" }>,
): string {
  const { unit } = input;
  const works = (tempC: number) =>
    drafted(input, { cooling: { kind: "hold", atC: tempC, seconds }, ease: EASY }).ok;
  let low = Math.ceil(COOLEST_HOLD_C / 10);
  let high = Math.ceil(Math.min(atC, HOTTEST_C) / 10);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (works(temperatureDown(10 * middle, unit, 10))) low = middle;
    else high = middle;
  }
  const nearestC = temperatureDown(10 * low, unit, 10);
  return `--cooling "hold ${printTemperature(nearestC, unit).replace(" °", "")} ${printDuration(seconds)}", the hottest that leaves the peak above it`;
}

/** How far below the limit of the ware slow cooling goes. */
interface Ease {
  readonly coolingShare: number;
  readonly climbFactor: number;
}

const EASY: Ease = { coolingShare: 0.8, climbFactor: 1 };
const TIGHT: Ease = { coolingShare: 1, climbFactor: 1.25 };

function drafted(
  input: NewScheduleInput,
  how: { readonly cooling: WantedCooling; readonly ease: Ease },
): Result<Schedule> {
  const { unit, cone } = input;
  const kiln = input.kiln ?? REFERENCE_KILN;
  const limitFor =
    input.limitFor ?? limitsFor({ ...input.ware, ...sizeOf(input), state: null, crackle: false });
  const guess = peakOf(input, shaped(input, { state: null, segments: [PLAIN_RAMP] }));
  if (!guess.ok) return guess;
  // The peak decides the stages before it, and they hardly move the peak: once more is enough.
  const second = peakOf(input, shaped(input, climbFor(input, guess.value, how.ease)));
  if (!second.ok) return second;
  const peakC = second.value;
  const held = how.cooling.kind === "hold" ? how.cooling : null;
  if (held && held.atC > peakC - BELOW_PEAK_K) return failed(holdTooHot(held, peakC, unit));
  const schedule = shaped(input, climbFor(input, peakC, how.ease));
  const falling = cooled(schedule, {
    cooling: how.cooling,
    share: how.ease.coolingShare,
    kiln,
    limitFor,
  });
  const kept = keptTo(falling, { paces: input.paces ?? [], kiln });
  const solved = solveSchedule({ ...input, schedule: kept, solve: "peak" });
  if (!solved.ok) return held ? failed(holdTooHot(held, peakC, unit)) : solved;
  const { after } = repairSchedule({
    schedule: { ...solved.value, cone },
    limitFor,
    offsetK: input.offsetK ?? null,
    ...(input.kiln && { kiln: input.kiln }),
  });
  return held && overshoots(after, input) ? failed(holdTooHot(held, peakC, unit)) : ok(after);
}

/** The hold on the way down, which the peak is not solved for, takes the cone too far by itself. */
function overshoots(schedule: Schedule, input: NewScheduleInput): boolean {
  const { findings } = draftSchedule({
    schedule,
    start: null,
    offsetK: input.offsetK ?? null,
    findingsOnly: true,
    ...(input.kiln && { kiln: input.kiln }),
  });
  return findings.some(({ topic, severity }) => topic === "cone wanted" && severity === "warning");
}

function peakOf(input: NewScheduleInput, schedule: Schedule): Result<number> {
  const solved = solveSchedule({ ...input, schedule, solve: "peak" });
  return solved.ok ? ok(highestC(solved.value)) : solved;
}

function climbFor(input: NewScheduleInput, peakC: number, ease: Ease): Climb {
  const { unit, ware } = input;
  const size = sizeOf(input);
  return climb({
    unit,
    peakC,
    raw: ware.damp || peakC < GLAZE_PEAK_C,
    damp: ware.damp,
    thickestMm: size.thickestMm,
    demanding: isDemanding(size),
    factor: ease.climbFactor,
    charted: input.series !== "small",
    kiln: input.kiln ?? REFERENCE_KILN,
  });
}

function shaped(input: NewScheduleInput, rising: Climb): Schedule {
  const { cone, series, unit, ware } = input;
  const size = sizeOf(input);
  const kind = SERIES_WORDS[series];
  const body = ware.body === null ? "" : `, ${ware.body.name.replace(/ cone \S+/, "")}`;
  const offset = input.offsetK ?? 0;
  const told =
    Math.abs(offset) < 0.5
      ? []
      : [
          `The peak allows for a thermocouple that reads ${printDifference(Math.abs(offset), unit)} too ${offset > 0 ? "low" : "high"}.`,
        ];
  return {
    title: `${kind.replace(/^\w/, (letter) => letter.toUpperCase())} ${cone}${body}, up to ${printMm(size.thickestMm)} thick`,
    unit,
    cone,
    series,
    startC: START_C,
    segments: rising.segments,
    ware: {
      ...(ware.body && { body: ware.body }),
      wallMm: ware.wallMm,
      baseMm: ware.baseMm,
      thickestMm: size.thickestMm,
      widestMm: size.widestMm,
      state: rising.state,
      crackle: false,
    },
    notes: told.length === 0 ? null : told.join(" "),
    basis: `Worked out by the cone model so that ${kind} ${cone} falls by the end of the top hold; climbs after published ranges; cooling limits of this ware.`,
  };
}

function sizeOf({ ware }: NewScheduleInput): {
  readonly thickestMm: number;
  readonly widestMm: number | null;
} {
  return { thickestMm: Math.max(ware.wallMm, ware.baseMm), widestMm: ware.widestMm };
}

function fits(schedule: Schedule, input: NewScheduleInput): boolean {
  return input.withinSeconds === null || totalSeconds(schedule, input) <= input.withinSeconds;
}

function totalSeconds(schedule: Schedule, input: NewScheduleInput): number {
  const { timeline } = expandSchedule(schedule, input.kiln ? { kiln: input.kiln } : {});
  return timeline.at(-1)?.endSeconds ?? 0;
}

function highestC(schedule: Schedule): number {
  return Math.max(...schedule.segments.map((segment) => segment.toC));
}
