import type { ConeSeries, ConeState, Heatwork } from "../cones/cone.ts";
import { CONE_MODELS, coneModel } from "../cones/coneModel.ts";
import {
  type KilnOffset,
  kilnHeatworkOf,
  TOLD_SIGMA_K,
  usualOffset,
} from "../cones/usualOffset.ts";
import type { Curve } from "../curve/Curve.ts";
import { ordered } from "../findings/Finding.ts";
import { firedCrossings, firedPieces } from "../firing/firedPieces.ts";
import { firmPeak } from "../firing/zoneReview.ts";
import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import type { FiringRecord } from "../record/FiringRecord.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { celsiusFromKelvin } from "../units/temperature.ts";
import type { CourseAhead } from "./courseAhead.ts";
import { coolingExpectation, expectedDown } from "./expectations.ts";
import { type Ahead, courseOf, goingOf, placeOnPlan } from "./going.ts";
import { PAST_PEAK_K, planStanding } from "./planPlace.ts";
import { recentRate } from "./recentRate.ts";
import type {
  CoolingExpectation,
  PlanStanding,
  WantedCone,
  WatchedZone,
  WatchState,
} from "./WatchState.ts";
import { watchFindings } from "./watchFindings.ts";

/** A firing that is still going, and what is known beside its log. */
export interface WatchInput {
  readonly reading: LogReading;
  readonly record: FiringRecord | null;
  /** The schedule that is being fired. */
  readonly plan: Schedule | null;
  /** The cone that is wanted; else the plan's, else the record's. */
  readonly cone: string | null;
  /** The user's own kiln, learned from its logs; the reference kiln stands in for null. */
  readonly kiln: AssumedKiln | null;
  /** Added to every reading before a cone is worked out [K]; null for what kilns are usually out by. */
  readonly offsetK: number | null;
  /** Whole lines of the log so far, by which rows at its end that gave no reading are told. */
  readonly lines: number;
}

/** A kiln that falls faster than programmed by this factor is not programmed any more; our own estimate. */
const LET_GO = 1.4;

/**
 * A firing as it stands at its last reading: cone, rate, what is to be expected, and what is wrong.
 * All of it is about the hottest thermocouple. It knows no clock: its now is the last reading.
 * @returns `watch/no-temperature` or `watch/no-such-cone`.
 */
export function watched(input: WatchInput): Result<WatchState> {
  const { reading, record, plan } = input;
  const series = record?.series ?? plan?.series ?? "self-supporting";
  const cone = input.cone ?? plan?.cone ?? record?.cone ?? null;
  const followed = followedChannel(reading);
  if (followed === null) return failed(noTemperature(reading));
  if (cone !== null && !CONE_MODELS[series].some((model) => model.cone === cone))
    return failed(noSuchCone(cone, series));
  const going = goingOf(followed.curve, input);
  const heatwork = kilnHeatworkOf(followed.curve, { series, offsetK: input.offsetK });
  const place = placeOnPlan(going);
  const ahead = { ...going, place, series };
  const wanted = cone === null ? null : wantedCone(cone, ahead, heatwork);
  const standing = standingOf(ahead);
  const { curve } = followed;
  const state: WatchState = {
    name: reading.name,
    start: reading.start,
    startOfDaySeconds: reading.startOfDaySeconds,
    readings: reading.rows.accepted,
    rejectedRows: reading.rows.total - reading.rows.accepted,
    nowSeconds: going.nowSeconds,
    zone: followed.name,
    zones: zonesOf(reading),
    tempC: going.tempC,
    peakC: going.peakC,
    peakAtSeconds: going.peakAtSeconds,
    rate: going.rate,
    phase: going.phase,
    heatwork,
    wanted,
    plan: standing,
    cooling: coolingOf(ahead, wanted),
    findings: [],
  };
  const crossings = firedCrossings(curve, { pieces: firedPieces(record, plan) });
  return ok({
    ...state,
    findings: ordered(
      watchFindings({
        state,
        reading,
        curve,
        crossings,
        place,
        plan,
        kiln: going.kiln,
        lines: input.lines,
      }),
    ),
  });
}

function wantedCone(cone: string, going: Ahead, heatwork: Heatwork): WantedCone {
  const { curve, series, phase, steady, place } = going;
  const reached = heatwork.cones.find((each) => each.cone === cone) as ConeState;
  const said = {
    cone,
    series,
    heatwork: reached.heatwork,
    bend: reached.bend,
    downAtSeconds: reached.downAtSeconds,
  };
  const nothing = { ...said, expected: null, by: null, goingOn: null };
  if (reached.downAtSeconds !== null) return { ...nothing, whyNot: null };
  if (phase === null || steady === null)
    return { ...nothing, whyNot: "too few readings in the last minutes" };
  if (phase === "falling") return { ...nothing, whyNot: "the kiln is falling" };
  const { offsetK, sigmaK: offsetSigmaK } = coneOffset({ cone, series }, going.offsetK);
  const by = place === null ? "present rate" : "plan";
  const goingOn = steady;
  const found = expectedDown({
    curve,
    cone,
    series,
    offsetK,
    offsetSigmaK,
    goingOn,
    by,
    courseWith: (moreCPerHour) => courseOf(going, moreCPerHour),
  });
  return { ...said, ...found, by, goingOn };
}

/** The offset for a cone that is still to come: what is known, else what is usual where it falls. */
function coneOffset(
  which: { readonly cone: string; readonly series: ConeSeries },
  offsetK: number | null,
): KilnOffset {
  if (offsetK !== null) return { offsetK, sigmaK: TOLD_SIGMA_K };
  return usualOffset(celsiusFromKelvin(coneModel(which.series, which.cone).endPoint60K));
}

function standingOf(going: Ahead): PlanStanding | null {
  const { plan, place } = going;
  if (plan === null || place === null) return null;
  return planStanding({ ...plan, place }, { ...going, course: courseOf(going, 0) });
}

/** The cooling from now, from the end of the plan, or from where the cone goes down. */
function coolingOf(going: Ahead, wanted: WantedCone | null): CoolingExpectation | null {
  const { phase, place, tempC, peakC, nowSeconds } = going;
  if (phase === null) return null;
  if (place !== null && !isLetGo(going))
    return coolingExpectation({
      ...going,
      course: courseOf(going, 0),
      from: phase === "falling" ? "now" : "end of the plan",
      ends: null,
    });
  const isOver = phase === "falling" || peakC - tempC > PAST_PEAK_K;
  if (isOver || wanted?.downAtSeconds)
    return coolingExpectation({
      ...going,
      course: endAt(nowSeconds, tempC),
      from: "now",
      ends: null,
    });
  const down = wanted?.expected;
  if (!down) return null;
  const course = endAt(down.atSeconds, down.atC);
  return coolingExpectation({ ...going, course, from: "cone down", ends: down });
}

/** Whether the kiln falls much faster than its plan programmes here: stopped or opened, it no longer follows. */
function isLetGo({ phase, place, steady }: Ahead): boolean {
  if (phase !== "falling" || place === null || steady === null) return false;
  const { assumedRate, rateCPerHour } = place.row;
  return !assumedRate && steady.rateCPerHour < LET_GO * rateCPerHour;
}

/** A course of which nothing is left after a moment. */
function endAt(seconds: number, tempC: number): CourseAhead {
  return { curve: null, endSeconds: seconds, endC: tempC, aloneUntil: () => 0 };
}

interface Followed {
  readonly name: string;
  readonly curve: Curve;
}

function temperatureCurves(reading: LogReading): readonly Followed[] {
  return reading.channels.flatMap(({ name, role, curve }) =>
    role === "temperature" && curve !== null ? [{ name, curve }] : [],
  );
}

/** The thermocouple with the highest peak; the first of them when several are equal. */
function followedChannel(reading: LogReading): Followed | null {
  let best: (Followed & { readonly peakC: number }) | null = null;
  for (const each of temperatureCurves(reading)) {
    const peakC = firmPeak(each.curve).tempC;
    if (best === null || peakC > best.peakC) best = { ...each, peakC };
  }
  return best;
}

function zonesOf(reading: LogReading): readonly WatchedZone[] {
  return temperatureCurves(reading).map(({ name, curve }) => ({
    name,
    tempC: curve.tempsC.at(-1)!,
    atSeconds: curve.timesSeconds.at(-1)!,
    rateCPerHour: recentRate(curve, reading.intervalSeconds)?.rateCPerHour ?? null,
  }));
}

function noTemperature(reading: LogReading): Problem {
  const columns = reading.channels.map(({ name }) => name).join(", ");
  return {
    code: "watch/no-temperature",
    what: `no temperature was found among the columns ${columns || "(none)"}`,
    where: reading.name,
    expected: "at least one column of measured temperatures with two readings or more",
    fix: "name the column with --column",
  };
}

function noSuchCone(cone: string, series: ConeSeries): Problem {
  const known = CONE_MODELS[series].map((model) => model.cone);
  return {
    code: "watch/no-such-cone",
    what: `cone ${cone} has no model in the ${series} series`,
    where: "--cone, or the schedule or record that names it",
    expected: `a cone from ${known[0]} to ${known.at(-1)}`,
    fix: "name a cone of that series with --cone",
  };
}
