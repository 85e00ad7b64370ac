import {
  notNought,
  printDifference,
  printDuration,
  printElapsed,
  printRate,
  printTemperature,
} from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type {
  CooledBy,
  CoolingExpectation,
  ExpectedMoment,
  PlanStanding,
  WantedCone,
  WatchState,
} from "../watch/WatchState.ts";
import type { PaintStyle } from "./Block.ts";
import { clockText } from "./moments.ts";

/** What one look at a growing log has to show. */
export interface WatchView {
  /** File name without its folder. */
  readonly log: string;
  /** Null while there are no readings. */
  readonly state: WatchState | null;
  /** What is waited for, or why the log cannot be read now, as a sentence; null when all is well. */
  readonly why: string | null;
  /** The watch ends with this look. */
  readonly isLast: boolean;
  /** The file, as the look found it. */
  readonly file: {
    readonly change: "grown" | "same" | "anew" | "missing";
    /** How often it was replaced or cut, and so began anew. */
    readonly restarts: number;
    /** How long it has not changed [s]. */
    readonly stillSeconds: number;
    /** A last line without its end stands in it and is not read yet. */
    readonly hasHalfLine: boolean;
    /** Usual step between readings [s]; null while it is not known. */
    readonly intervalSeconds: number | null;
  };
  /** The watch ends when the file has been still for so long [s]. */
  readonly untilStillSeconds: number;
}

/** One thing that the screen says, with its label. */
export interface WatchFact {
  readonly label: string;
  readonly text: string;
  readonly style?: PaintStyle;
}

/** On time is anything nearer to the plan than this [s]. */
const ON_TIME_SECONDS = 150;

/** A firing often slows down for its last hundred degrees [K]. */
const LAST_RAMP_K = 60;

/** Which log, and the moment of its last reading. */
export function headText({ log, state }: WatchView): string {
  if (state === null) return `${log} · no readings yet`;
  const clock = clockText(state.startOfDaySeconds, state.nowSeconds);
  const elapsed = `${printElapsed(state.nowSeconds)} after the start`;
  return [log, ...(clock === null ? [] : [`last reading ${clock}`]), elapsed].join(" · ");
}

/** All that is known of a firing that is still going, findings apart. */
export function watchFacts(
  { why }: Pick<WatchView, "why">,
  state: WatchState,
  unit: TemperatureUnit,
): readonly WatchFact[] {
  const { wanted, plan, cooling } = state;
  return [
    { label: why === null ? "Now" : "Last read", text: nowText(state, unit), style: "strong" },
    ...zoneFacts(state, unit),
    { label: "Reached", text: reachedText(state, unit) },
    ...(wanted === null ? [] : under(`Cone ${wanted.cone}`, wantedTexts(wanted, state, unit))),
    ...(plan === null ? [] : under("Plan", planTexts(plan, state, unit))),
    ...(cooling === null ? [] : coolingFacts(cooling, state, unit)),
  ];
}

/** Texts below each other, the label before the first. */
function under(label: string, texts: readonly string[]): readonly WatchFact[] {
  return texts.map((text, i) => ({ label: i === 0 ? label : "", text }));
}

const WORDS = {
  climbing: "climbing at",
  holding: "holding, drifting",
  falling: "falling at",
} as const;

function nowText(
  { tempC, rate, phase, peakC, nowSeconds, peakAtSeconds }: WatchState,
  unit: TemperatureUnit,
): string {
  const temp = printTemperature(tempC, unit);
  const peak =
    phase === "climbing" || peakC - tempC < 5
      ? ""
      : `; peak ${printTemperature(peakC, unit)} ${printDuration(nowSeconds - peakAtSeconds)} ago`;
  if (rate === null || phase === null) return `${temp}; too few readings for a rate${peak}`;
  const sigma = notNought(printRate(rate.sigmaCPerHour, unit));
  const way = phase === "holding" ? (rate.rateCPerHour < 0 ? " down" : " up") : "";
  const over = `over ${printDuration(rate.overSeconds)}`;
  return `${temp}, ${WORDS[phase]}${way} ${printRate(rate.rateCPerHour, unit)} ± ${sigma} ${over}${peak}`;
}

/** The other thermocouples, when there are several. */
function zoneFacts({ zones, zone }: WatchState, unit: TemperatureUnit): readonly WatchFact[] {
  if (zones.length < 2) return [];
  const texts = zones.map(({ name, tempC }) => `${name} ${printTemperature(tempC, unit)}`);
  return [{ label: "", text: `${texts.join(", ")}; all else is about ${zone}, the hottest` }];
}

function reachedText({ heatwork }: WatchState, unit: TemperatureUnit): string {
  const { position, sigmaCones, offsetK, offsetIs } = heatwork;
  const sigma = sigmaCones === null ? "" : ` ± ${sigmaCones.toFixed(1)} cones`;
  const offset =
    Math.abs(offsetK) < 0.5
      ? ""
      : `, with ${printDifference(Math.abs(offsetK), unit)} ${offsetK < 0 ? "taken off" : "added"} ${offsetIs === "usual" ? "as kilns usually run hotter than they read" : "by past witness cones"}`;
  return `${position.label}${sigma}${offset}`;
}

function wantedTexts(
  wanted: WantedCone,
  state: WatchState,
  unit: TemperatureUnit,
): readonly string[] {
  if (wanted.downAtSeconds !== null) {
    const at = whenText(state, wanted.downAtSeconds);
    return [`${wanted.bend} by the readings, since ${at}`];
  }
  const percent = Math.floor(100 * wanted.heatwork);
  const so =
    wanted.bend === "upright" && percent < 1
      ? "upright"
      : `${wanted.bend}, ${percent} % of its heatwork`;
  if (wanted.expected === null) return [`${so}; no time to expect: ${wanted.whyNot}`];
  const { atSeconds } = wanted.expected;
  const ahead = printDuration(atSeconds - state.nowSeconds);
  return [
    `down about ${whenText(state, atSeconds)}, in ${ahead}; ${spanText(state, wanted.expected)}`,
    `${conditionText(wanted, state, unit)}; now ${so}`,
  ];
}

/** On what an expectation hangs. */
function conditionText(wanted: WantedCone, state: WatchState, unit: TemperatureUnit): string {
  if (wanted.by === "plan") return "if the plan is kept";
  if (state.phase === "holding") return "if it goes on holding";
  const { rateCPerHour, overSeconds } = wanted.goingOn as NonNullable<WantedCone["goingOn"]>;
  const isFar = (wanted.expected?.atC ?? 0) - state.tempC > LAST_RAMP_K;
  const slower = isFar ? ", later if a slower ramp follows" : "";
  return `if it goes on at ${printRate(rateCPerHour, unit)}, as for ${printDuration(overSeconds)}${slower}`;
}

function planTexts(
  plan: PlanStanding,
  state: WatchState,
  unit: TemperatureUnit,
): readonly string[] {
  const ends = `the programme ends ${whenText(state, plan.endSeconds)}`;
  const doing = doingText(plan, unit);
  if (state.phase === "falling") return [`${doing}; ${ends}`];
  const peak =
    plan.peakAtSeconds === null
      ? ""
      : `; peak ${printTemperature(plan.peakC, unit)} at ${whenText(state, plan.peakAtSeconds)}`;
  const sigma = plan.finalSigmaCones === null ? "" : ` ± ${plan.finalSigmaCones.toFixed(1)} cones`;
  return [
    `${doing}, ${lateText(plan.lateSeconds)}${peak}`,
    `${ends} and would leave ${plan.finalCone}${sigma}`,
  ];
}

function lateText(seconds: number): string {
  if (Math.abs(seconds) < ON_TIME_SECONDS) return "on time";
  return `${printDuration(Math.abs(seconds))} ${seconds > 0 ? "behind" : "ahead"}`;
}

function doingText(plan: PlanStanding, unit: TemperatureUnit): string {
  const to = printTemperature(plan.toC, unit);
  if (plan.doing === "holding") return `hold at ${to}, ${printDuration(plan.leftSeconds)} left`;
  const way = plan.doing === "climbing" ? "up" : "down";
  const rate =
    plan.asked === "free" ? "as fast as the kiln goes" : `at ${printRate(plan.asked, unit)}`;
  return `${way} to ${to} ${plan.asked === "free" && way === "down" ? "by itself" : rate}`;
}

function coolingFacts(
  cooling: CoolingExpectation,
  state: WatchState,
  unit: TemperatureUnit,
): readonly WatchFact[] {
  const { cooledBy } = cooling;
  const isOver = cooledBy.every(({ isMeasured }) => isMeasured);
  const from = {
    now: state.phase === "falling" ? "" : " if it is switched off now",
    "end of the plan": " after the plan",
    "cone down": " if it is switched off when the cone is down",
  }[cooling.from];
  const lid = cooling.openedAtSeconds === null ? "lid shut" : "left as it is";
  return [
    ...cooledBy.map((each, i) => ({
      label: i === 0 ? "Cold" : "",
      text: cooledText(each, state, unit),
    })),
    ...(isOver ? [] : [{ label: "", text: `${lid}${from}, by ${cooling.basis}` }]),
  ];
}

function cooledText(cooled: CooledBy, state: WatchState, unit: TemperatureUnit): string {
  const at = `${printTemperature(cooled.tempC, unit)} ${cooled.isMeasured ? "at" : "about"} ${whenText(state, cooled.atSeconds)}`;
  return cooled.isMeasured ? `${at}, as read` : `${at}; ${spanText(state, cooled)}`;
}

/** The span in which two of three such moments lie. */
function spanText(state: WatchState, { earliestSeconds, latestSeconds }: ExpectedMoment): string {
  const from = whenText(state, earliestSeconds);
  if (latestSeconds === null) return `not before ${from}, perhaps not at all`;
  const to = whenText(state, latestSeconds);
  const [time = from, day] = from.split(/ (?=\D)/);
  return `${day !== undefined && to.endsWith(` ${day}`) ? time : from} to ${to}`;
}

/** A moment by the clock, its day told from that of the last reading; else since the start. */
function whenText({ startOfDaySeconds, nowSeconds }: WatchState, atSeconds: number): string {
  const clock = clockText(startOfDaySeconds, atSeconds);
  if (clock === null) return `${printElapsed(atSeconds)} after the start`;
  const [time = clock] = clock.split(", ");
  const days = dayOf(startOfDaySeconds, atSeconds) - dayOf(startOfDaySeconds, nowSeconds);
  if (days === 0) return time;
  const near = { [-1]: "yesterday", 1: "tomorrow" }[days];
  return near ? `${time} ${near}` : `${time} ${days > 0 ? `in ${days} days` : `${-days} days ago`}`;
}

/** Day of a moment, rounded to the minute as the clock is. */
function dayOf(startOfDaySeconds: number | null, atSeconds: number): number {
  return Math.floor((Math.round(((startOfDaySeconds ?? 0) + atSeconds) / 60) * 60) / 86_400);
}
