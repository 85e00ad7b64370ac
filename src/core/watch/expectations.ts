import { runningPeakC } from "../cones/budget.ts";
import type { ConeSeries, ConeState } from "../cones/cone.ts";
import { coneModel } from "../cones/coneModel.ts";
import { followCone } from "../cones/followCone.ts";
import { totalSigmaK } from "../cones/heatwork.ts";
import { type Curve, makeCurve, sliced, temperatureAt } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/edgeTimes.ts";
import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import { type CourseAhead, secondsToFall } from "./courseAhead.ts";
import type { OwnFall } from "./recentRate.ts";
import type {
  CooledBy,
  CoolingExpectation,
  ExpectedMoment,
  RecentRate,
  WantedCone,
} from "./WatchState.ts";

/** Further ahead than this nothing is said of a present rate [s]. */
const HORIZON_SECONDS = 12 * 3600;

/** What an expectation of a cone is made from. */
export interface ConeOutlook {
  readonly curve: Curve;
  readonly cone: string;
  readonly series: ConeSeries;
  /** Added to every reading [K], and one sigma of it. */
  readonly offsetK: number;
  readonly offsetSigmaK: number;
  /** The rate that goes on; null while there is none, or while the kiln is falling. */
  readonly goingOn: RecentRate | null;
  readonly by: "plan" | "present rate";
  /** The course ahead, with so much added to the rate that goes on [°C/h]. */
  readonly courseWith: (moreCPerHour: number) => CourseAhead;
}

/**
 * When a cone will be down, if the kiln goes on as it does or as its plan has it.
 * The span holds two of three: one sigma of the rate, and one of the cone, its thermocouple and its
 * place in the kiln, each worked out by the cone's own kinetics and added in quadrature.
 */
export function expectedDown(outlook: ConeOutlook): Pick<WantedCone, "expected" | "whyNot"> {
  const { curve, goingOn } = outlook;
  if (goingOn === null) throw new RangeError("expectedDown: nothing goes on");
  const nowSeconds = curve.timesSeconds.at(-1)!;
  const whole = joined(curve, outlook.courseWith(0));
  const atSeconds = downAt(whole, outlook, 0);
  const lastSeconds = nowSeconds + horizonOf(outlook);
  if (atSeconds === null || atSeconds > lastSeconds)
    return { expected: null, whyNot: whyNot(outlook.by) };
  const cut = sliced(whole, whole.timesSeconds[0]!, atSeconds) ?? whole;
  const { marginSigmaK } = coneIn(cut, outlook, 0);
  const sigmaK = totalSigmaK(outlook.offsetSigmaK, marginSigmaK);
  const sooner = [
    downAt(whole, outlook, sigmaK),
    downAt(joined(curve, outlook.courseWith(goingOn.sigmaCPerHour)), outlook, 0),
  ].map((seconds) => atSeconds - Math.max(nowSeconds, seconds ?? atSeconds));
  const later = [
    downAt(whole, outlook, -sigmaK),
    downAt(joined(curve, outlook.courseWith(-goingOn.sigmaCPerHour)), outlook, 0),
  ].map((seconds) => (seconds ?? Number.POSITIVE_INFINITY) - atSeconds);
  const latest = atSeconds + Math.hypot(...later);
  return {
    expected: {
      atSeconds,
      earliestSeconds: Math.max(nowSeconds, atSeconds - Math.hypot(...sooner)),
      latestSeconds: latest > lastSeconds ? null : latest,
      atC: temperatureAt(whole, atSeconds) ?? whole.tempsC.at(-1)!,
    },
    whyNot: null,
  };
}

/** How far ahead is looked; a plan says itself when it ends. */
function horizonOf({ by }: ConeOutlook): number {
  return by === "plan" ? Number.MAX_VALUE : HORIZON_SECONDS;
}

/** A Curve with the course ahead behind it. */
export function joined(curve: Curve, { curve: ahead }: CourseAhead): Curve {
  if (ahead === null) return curve;
  return makeCurve(
    [...curve.timesSeconds, ...ahead.timesSeconds.subarray(1)],
    [...curve.tempsC, ...ahead.tempsC.subarray(1)],
    curve.gaps,
  );
}

function whyNot(by: "plan" | "present rate"): string {
  return by === "plan"
    ? "the plan, as it is going, ends before it is down"
    : "not within 12 h at this rate";
}

type Which = Pick<ConeOutlook, "cone" | "series" | "offsetK">;

function downAt(curve: Curve, which: Which, warmerK: number): number | null {
  return coneIn(curve, which, warmerK).downAtSeconds;
}

/** One cone's state at the end of a Curve. */
function coneIn(curve: Curve, which: Which, warmerK: number): ConeState {
  const heat = {
    curve,
    offsetK: which.offsetK + warmerK,
    peaksC: runningPeakC(curve.tempsC),
  };
  const scratch = new Float64Array(curve.tempsC.length);
  return followCone(coneModel(which.series, which.cone), heat, scratch).state;
}

/** Temperatures to which one waits before opening and unloading [°C]. */
const WAITED_FOR_C = [200, 100, 50] as const;

/**
 * One sigma of the time of a fall, as a factor either way; our own estimates, held against the demo
 * logs by a test. Studio logs of unknown kilns differ by a factor of two.
 */
const FACTORS = { learnedAndSeen: 1.1, learned: 1.2, seen: 1.3, assumed: 2 } as const;

/** What an expectation of the cooling is made from. */
export interface CoolingOutlook {
  readonly curve: Curve;
  readonly peakAtSeconds: number;
  readonly kiln: AssumedKiln;
  readonly isLearned: boolean;
  readonly own: OwnFall | null;
  /** What is programmed and goes before the fall by itself; it may hold nothing. */
  readonly course: CourseAhead;
  readonly from: CoolingExpectation["from"];
  /** When the course ends, where that is itself uncertain; null where the course says it. */
  readonly ends: ExpectedMoment | null;
}

/** When a kiln will have cooled to 200, 100 and 50 °C, lid shut: as programmed, then by itself. */
export function coolingExpectation(outlook: CoolingOutlook): CoolingExpectation {
  const factor = factorOf(outlook);
  return {
    cooledBy: WAITED_FOR_C.flatMap((tempC) => cooledBy(tempC, outlook, factor)),
    from: outlook.from,
    kiln: outlook.isLearned ? "learned" : "reference",
    ownShare: outlook.own?.share ?? null,
    openedAtSeconds: outlook.own?.openedAtSeconds ?? null,
    factor,
    basis: basisOf(outlook),
  };
}

function factorOf({ isLearned, own }: CoolingOutlook): number {
  if (own?.isDoubtful) return FACTORS.assumed;
  if (isLearned) return own === null ? FACTORS.learned : FACTORS.learnedAndSeen;
  return own === null ? FACTORS.assumed : FACTORS.seen;
}

function cooledBy(tempC: number, outlook: CoolingOutlook, factor: number): readonly CooledBy[] {
  const { curve, course } = outlook;
  const read = lastFallTo(curve, tempC);
  if (read !== null && read > outlook.peakAtSeconds && curve.tempsC.at(-1)! < tempC)
    return [
      { tempC, atSeconds: read, earliestSeconds: read, latestSeconds: read, isMeasured: true },
    ];
  const programmed = course.curve && lastFallTo(course.curve, tempC);
  const left = programmed ?? fallenAt(tempC, outlook);
  if (left === null) return [];
  const alone = course.aloneUntil(left) + Math.max(0, left - course.endSeconds);
  const { ends } = outlook;
  const soonerBy = Math.hypot(
    alone - alone / factor,
    ends ? ends.atSeconds - ends.earliestSeconds : 0,
  );
  const laterBy = Math.hypot(alone * factor - alone, ends ? laterEnd(ends) : 0);
  return [
    {
      tempC,
      atSeconds: left,
      earliestSeconds: Math.max(left - soonerBy, curve.timesSeconds.at(-1)!),
      latestSeconds: Number.isFinite(laterBy) ? left + laterBy : null,
      isMeasured: false,
    },
  ];
}

function laterEnd({ atSeconds, latestSeconds }: ExpectedMoment): number {
  return latestSeconds === null ? Number.POSITIVE_INFINITY : latestSeconds - atSeconds;
}

/** By itself from the end of the course on [s]; null when the kiln never quite gets there. */
function fallenAt(tempC: number, { course, kiln }: CoolingOutlook): number | null {
  const alone = secondsToFall(kiln, { fromC: course.endC, toC: tempC });
  return alone === null ? null : course.endSeconds + alone;
}

function lastFallTo(curve: Curve, tempC: number): number | null {
  const falls = crossingTimes(curve, tempC).filter(({ direction }) => direction === "cooling");
  return falls.at(-1)?.seconds ?? null;
}

function basisOf({ kiln, isLearned, own }: CoolingOutlook): string {
  const whose = isLearned ? kiln.basis : "a middling stand-in kiln";
  if (own === null)
    return isLearned ? whose : `${whose}, for yours is not known (--kiln): good to a factor of two`;
  const share = Math.round(100 * own.share);
  if (own.openedAtSeconds !== null)
    return `the speed of the last minutes, ${share} % of that of ${whose}, as an opened kiln falls: good to a factor of two`;
  const doubt = own.isDoubtful ? "; so slow that the elements may be holding it back" : "";
  return `this log's own fall of the last hours, ${share} % of the speed of ${whose}${doubt}`;
}
