import type { ConeSeries } from "../cones/cone.ts";
import { type AssumedKiln, REFERENCE_KILN } from "../kiln/AssumedKiln.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { printDifference, printDuration, printRate, printTemperature } from "../units/print.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Body } from "../ware/Ware.ts";
import { isDemanding } from "../ware/WareSize.ts";
import type { LimitFor } from "./coolingLimits.ts";
import { expandSchedule } from "./expandSchedule.ts";
import { cooled, type WantedCooling } from "./newCooling.ts";
import { type Climb, climb } from "./newHeating.ts";
import { HOTTEST_C } from "./parseSegments.ts";
import { limitsFor } from "./pieceOf.ts";
import { repairSchedule } from "./repairSchedule.ts";
import type { Schedule, Segment } from "./Schedule.ts";
import { solveSchedule } from "./solveSchedule.ts";
import { temperatureUp } from "./wholeUnits.ts";

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
  /** Longest that it may take from the start to 100 °C [s], or null. */
  readonly withinSeconds: number | null;
  readonly kiln?: AssumedKiln;
  /** What the ware stands; without it what is published. */
  readonly limitFor?: LimitFor;
  /** Added to the planned temperatures, from witness cones [K]. */
  readonly offsetK?: number;
}

/** Thinnest and thickest ware that anything is known about [mm]. */
const THINNEST_MM = 1;
const THICKEST_MM = 100;

/** Widest piece that a studio kiln takes [mm]. */
const WIDEST_MM = 3000;

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
 * `schedule/kiln-too-weak`, `schedule/too-little-time` with the nearest that is possible.
 */
export function newSchedule(input: NewScheduleInput): Result<Schedule> {
  const wrong = wareProblems(input.ware);
  if (wrong.length > 0) return failed(...wrong);
  const wanted = drafted(input, { cooling: input.cooling, ease: EASY });
  if (!wanted.ok || fits(wanted.value, input)) return wanted;
  const tight = drafted(input, { cooling: input.cooling, ease: TIGHT });
  if (!tight.ok || fits(tight.value, input)) return tight;
  const natural = drafted(input, { cooling: { kind: "natural" }, ease: TIGHT });
  return failed(tooLittleTime(input, tight.value, natural.ok ? natural.value : tight.value));
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
  if (how.cooling.kind === "hold" && how.cooling.atC > peakC - 20)
    return failed(holdTooHot(input, how.cooling.atC, peakC));
  const schedule = shaped(input, climbFor(input, peakC, how.ease));
  const falling = cooled(schedule, {
    cooling: how.cooling,
    share: how.ease.coolingShare,
    kiln,
    limitFor,
  });
  const solved = solveSchedule({ ...input, schedule: falling, solve: "peak" });
  if (!solved.ok) return solved;
  const solvedC = highestC(solved.value);
  const whole = solved.value.segments.map((segment) =>
    segment.toC === solvedC ? { ...segment, toC: temperatureUp(solvedC, unit) } : segment,
  );
  const { after } = repairSchedule({
    schedule: { ...solved.value, cone, segments: whole },
    limitFor,
    offsetK: input.offsetK ?? 0,
    ...(input.kiln && { kiln: input.kiln }),
  });
  return ok(after);
}

function peakOf(input: NewScheduleInput, schedule: Schedule): Result<number> {
  const solved = solveSchedule({ ...input, schedule, solve: "peak" });
  return solved.ok ? ok(temperatureUp(highestC(solved.value), input.unit)) : solved;
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
    kiln: input.kiln ?? REFERENCE_KILN,
  });
}

function shaped(input: NewScheduleInput, rising: Climb): Schedule {
  const { cone, series, unit, ware } = input;
  const size = sizeOf(input);
  const body = ware.body === null ? "" : `, ${ware.body.name.replace(/ cone \S+/, "")}`;
  const offset = input.offsetK ?? 0;
  const told =
    Math.abs(offset) < 0.5
      ? []
      : [
          `The peak allows for a thermocouple that reads ${printDifference(Math.abs(offset), unit)} too ${offset > 0 ? "low" : "high"}.`,
        ];
  return {
    title: `Cone ${cone}${body}, up to ${Math.round(size.thickestMm)} mm thick`,
    unit,
    cone,
    series,
    startC: START_C,
    segments: rising.segments,
    ware: {
      ...(ware.body && { body: ware.body, wallMm: ware.wallMm, baseMm: ware.baseMm }),
      thickestMm: size.thickestMm,
      widestMm: size.widestMm,
      state: rising.state,
      crackle: false,
    },
    notes: told.length === 0 ? null : told.join(" "),
    basis: `Worked out for cone ${cone} by the cone model, hold and cooling counted; climbs after published ranges; cooling limits of this ware.`,
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

function wareProblems(ware: NewScheduleInput["ware"]): readonly Problem[] {
  const problems: Problem[] = [];
  const sizes = [
    ["--wall", ware.wallMm],
    ["--base", ware.baseMm],
  ] as const;
  for (const [where, mm] of sizes)
    if (!(mm >= THINNEST_MM && mm <= THICKEST_MM))
      problems.push({
        code: "schedule/ware-thickness",
        what: `clay ${Number(mm.toPrecision(3))} mm thick`,
        where,
        expected: `a thickness from ${THINNEST_MM} to ${THICKEST_MM} mm`,
        fix: `check the number; the nearest that can be drafted is ${where} ${mm < THINNEST_MM ? THINNEST_MM : THICKEST_MM}`,
      });
  const thickestMm = Math.max(ware.wallMm, ware.baseMm);
  if (ware.widestMm !== null && !(ware.widestMm >= thickestMm && ware.widestMm <= WIDEST_MM))
    problems.push({
      code: "schedule/ware-width",
      what: `a piece ${Math.round(ware.widestMm)} mm wide with clay ${Math.round(thickestMm)} mm thick`,
      where: "--width",
      expected: `a width from its thickness, ${Math.round(thickestMm)} mm, to ${WIDEST_MM} mm`,
      fix: "give the widest dimension of the largest piece, like --width 150mm",
    });
  return problems;
}

function holdTooHot(input: NewScheduleInput, atC: number, peakC: number): Problem {
  const { unit } = input;
  return {
    code: "schedule/hold-too-hot",
    what: `a hold at ${printTemperature(atC, unit)} on the way down, with a peak of ${printTemperature(peakC, unit)}`,
    where: "--cooling",
    expected: `a temperature at least ${unit === "C" ? "20 °C" : "36 °F"} below the peak`,
    fix: `--cooling "hold ${printTemperature(peakC - 20, unit).replace(" °", "")} 1h" at most`,
  };
}

function tooLittleTime(input: NewScheduleInput, wished: Schedule, natural: Schedule): Problem {
  const { unit } = input;
  const takes = totalSeconds(wished, input);
  const least = totalSeconds(natural, input);
  const within = input.withinSeconds ?? 0;
  const kiln = input.kiln ?? REFERENCE_KILN;
  const way =
    input.cooling.kind === "natural" ? "natural cooling" : `${input.cooling.kind} cooling`;
  const hours = (seconds: number) => `${Math.ceil(seconds / 3600)}h`;
  return {
    code: "schedule/too-little-time",
    what: `this cone with ${way} takes ${printDuration(takes)} from the start to ${printTemperature(100, unit)} at the least, not ${printDuration(within)}`,
    where: "--within",
    expected: `a limit that the ware and the kiln allow; at ${printTemperature(500, unit)} the kiln falls at ${printRate(kiln.naturalCoolingCPerHour(500), unit)} by itself`,
    fix:
      least <= within
        ? `--cooling natural, which takes ${printDuration(least)}; or --within ${hours(takes)}`
        : least < takes - 60
          ? `--within ${hours(takes)}; with --cooling natural, --within ${hours(least)}`
          : `--within ${hours(takes)}`,
  };
}
