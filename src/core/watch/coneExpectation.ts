import { runningPeakC } from "../cones/budget.ts";
import type { ConeSeries, ConeState } from "../cones/cone.ts";
import { coneModel } from "../cones/coneModel.ts";
import { totalSigmaK } from "../cones/conePosition.ts";
import { followCone } from "../cones/followCone.ts";
import { type Curve, makeCurve } from "../curve/Curve.ts";
import { sliced } from "../curve/moved.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import type { CourseAhead } from "./courseAhead.ts";
import type { RecentRate, WantedCone } from "./WatchState.ts";

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
