import { type Curve, peakOf, shifted, temperatureAt } from "../curve/Curve.ts";
import { outputMean } from "../kiln/naturalFall.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import { expandSchedule } from "../schedule/expandSchedule.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { Row } from "./timeBins.ts";
import { planShiftSeconds } from "./zoneReview.ts";

/** What a log tells of the heat that a controller asks for. */
export interface Asked {
  /**
   * `programme`: a set point that moves, or that the kiln was brought to. `idle`: set point and
   * output stand at 0 throughout. `none`: no set point, or one that tells nothing.
   */
  readonly setPoint: "programme" | "idle" | "none";
  /** Highest set point [°C]; `over` after its last; null in a gap or before its first. */
  readonly setPointAt: (seconds: number) => number | "over" | null;
  /** Whether a set point is at the foot of its range, where a controller leaves it when it is off. */
  readonly isOff: (setPointC: number) => boolean;
  /** Greatest mean output of the columns between two moments, 0–1; null where none says. */
  readonly outputAt: (fromSeconds: number, toSeconds: number) => number | null;
  /** The output has told of heating while the kiln climbed. */
  readonly isOutputTelling: boolean;
  /** How long an output that switches must be at 0 before that is no chance [s]. */
  readonly silentSeconds: (rows: readonly Row[]) => number;
}

/** A set point that moves less than this is no programme [K]. */
const PROGRAMME_K = 50;
/** A controller that is off shows 0, in °F or °C, or the room. */
const OFF_C = 40;
/** Off at 0 °F at the lowest [°C], with a little room. */
const ZERO_F = -20;
/** A kiln within so much of a constant set point was brought to it [K]. */
const NEAR_K = 15;
/** Least mean output over a climb that tells of heating, and the time that it is looked at over [s]. */
const TELLING_OUTPUT = 0.05;
const TELLING_SECONDS = 1200;
/** So much output in a cold kiln that hardly climbs, and again in one that falls, is none. */
const INVERTED_OUTPUT = 0.7;
const COLD_C = 250;
const COLD_CLIMB_K = 50;
/** A switching output is at 0 by chance less often than this. */
const CHANCE = 1e-5;

/** What a log's set points and outputs ask for, and whether they tell anything. */
export function askedOf(reading: LogReading, curve: Curve): Asked {
  const { intervalSeconds } = reading;
  const setPoints = reading.channels.flatMap((channel) =>
    channel.role === "set-point" && channel.curve !== null ? [channel.curve] : [],
  );
  const outputs = reading.channels.flatMap(({ outputFraction }) => outputFraction ?? []);
  const range = rangeOf(setPoints);
  const isZero = outputs.length > 0 && outputs.every(({ fraction }) => fraction.every(isNone));
  const outputAt = (from: number, to: number) =>
    greatest(outputs.map((output) => outputMean(output, from, to)));
  return {
    setPoint: setPointKind({ setPoints, range, isZero, curve }),
    setPointAt: (seconds) => {
      const lasts = setPoints.map(({ timesSeconds }) => timesSeconds.at(-1)!);
      if (seconds > Math.max(...lasts) + 2 * intervalSeconds) return "over";
      return greatest(setPoints.map((setPoint) => temperatureAt(setPoint, seconds)));
    },
    isOff: (setPointC) => setPointC <= Math.max(OFF_C, range.leastC),
    outputAt,
    isOutputTelling: !isZero && isTelling(curve, outputAt),
    silentSeconds: (rows) => silentSeconds(rows),
  };
}

function setPointKind(known: {
  readonly setPoints: readonly Curve[];
  readonly range: { readonly leastC: number; readonly mostC: number };
  readonly isZero: boolean;
  readonly curve: Curve;
}): Asked["setPoint"] {
  const { setPoints, range, isZero, curve } = known;
  if (setPoints.length === 0) return "none";
  if (range.mostC - range.leastC > PROGRAMME_K) return "programme";
  if (range.mostC > OFF_C) {
    const reached = curve.tempsC.filter((tempC) => Math.abs(tempC - range.mostC) < NEAR_K);
    return range.mostC > 2 * OFF_C && reached.length > 0 ? "programme" : "none";
  }
  return isZero && range.leastC > ZERO_F ? "idle" : "none";
}

/**
 * Whether an output is on in some stretch of climbing. One that is high while a cold kiln climbs slowly
 * and high again while it falls from its peak means something else: a relay that opens, a fan.
 */
function isTelling(curve: Curve, outputAt: Asked["outputAt"]): boolean {
  const peak = peakOf(curve);
  const last = curve.timesSeconds.at(-1)!;
  let [tells, highCold, highFalling] = [false, false, false];
  for (let from = curve.timesSeconds[0]!; from < last; from += TELLING_SECONDS) {
    const to = Math.min(last, from + TELLING_SECONDS);
    const [fromC, toC] = [temperatureAt(curve, from), temperatureAt(curve, to)];
    const mean = outputAt(from, to);
    if (fromC === null || toC === null || mean === null) continue;
    if (toC > fromC + NEAR_K && mean > TELLING_OUTPUT) tells = true;
    if (mean < INVERTED_OUTPUT) continue;
    if (from < peak.seconds && toC < COLD_C && toC < fromC + COLD_CLIMB_K) highCold = true;
    if (from > peak.seconds && toC < fromC) highFalling = true;
  }
  return tells && !(highCold && highFalling);
}

/** By the share of moments with an output before the hottest: so many at 0 in a row, and no fewer, are no chance. */
function silentSeconds(rows: readonly Row[]): number {
  const known = rows.filter(({ output }) => output !== null);
  const on = known.filter(({ output }) => !isNone(output as number)).length;
  const share = Math.min(0.99, Math.max(0.01, on / Math.max(1, known.length)));
  const span =
    ((known.at(-1)?.seconds ?? 0) - (known[0]?.seconds ?? 0)) / Math.max(1, known.length);
  return (span * Math.log(CHANCE)) / Math.log(1 - share);
}

/** Where a plan lies on a log, and how long the kiln kept to it. */
interface PlannedCourse {
  readonly planned: Curve;
  readonly peakC: number;
  readonly peakAtSeconds: number;
  /** The plan itself climbs again after its peak. */
  readonly isClimbingAfterwards: boolean;
  /** Whether the kiln had kept to its plan before this moment, or before it left it upwards. */
  readonly keptUntil: (seconds: number) => boolean;
}

/** A controller keeps a kiln as near to its plan as this, for most of two hours or more; hands do not. */
const KEPT = { nearK: 15, share: 0.7, seconds: 7200 };

/** A plan laid on a log; null where they share no rise. */
export function plannedCourse(
  curve: Curve,
  rows: readonly Row[],
  plan: Schedule,
): PlannedCourse | null {
  const expansion = expandSchedule(plan);
  const shift = planShiftSeconds(curve, expansion);
  if (shift === null) return null;
  const planned = shifted(expansion.curve, shift);
  const peak = peakOf(planned);
  const after = expansion.timeline.filter((row) => row.startSeconds + shift >= peak.seconds);
  return {
    planned,
    peakC: peak.tempC,
    peakAtSeconds: peak.seconds,
    isClimbingAfterwards: after.some((row) => row.toC > row.fromC + NEAR_K),
    keptUntil: keptTo(planned, rows, peak.seconds),
  };
}

/** What is above the plan counts only when it has come back: a kiln that leaves its plan had kept to it. */
function keptTo(
  planned: Curve,
  rows: readonly Row[],
  peakAtSeconds: number,
): PlannedCourse["keptUntil"] {
  const seen = { compared: 0, kept: 0, above: 0 };
  const keptAt = new Map<number, boolean>();
  let isKept = false;
  for (const { seconds, tempC } of rows) {
    const planC = seconds > peakAtSeconds ? null : temperatureAt(planned, seconds);
    const first = rows[0]?.seconds ?? seconds;
    if (planC !== null && tempC > planC + KEPT.nearK) seen.above++;
    else if (planC !== null) {
      seen.compared += seen.above + 1;
      seen.above = 0;
      if (tempC > planC - KEPT.nearK) seen.kept++;
      isKept = seconds - first >= KEPT.seconds && seen.kept >= KEPT.share * seen.compared;
    }
    keptAt.set(seconds, isKept);
  }
  return (seconds) => keptAt.get(seconds) === true;
}

function rangeOf(curves: readonly Curve[]): { readonly leastC: number; readonly mostC: number } {
  let leastC = Number.POSITIVE_INFINITY;
  let mostC = Number.NEGATIVE_INFINITY;
  for (const { tempsC } of curves)
    for (const tempC of tempsC) {
      leastC = Math.min(leastC, tempC);
      mostC = Math.max(mostC, tempC);
    }
  return { leastC, mostC };
}

function greatest(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : Math.max(...known);
}

function isNone(fraction: number): boolean {
  return Number.isNaN(fraction) || fraction <= 0.005;
}
