import { totalSigmaK } from "../cones/conePosition.ts";
import type { Curve } from "../curve/Curve.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import type { Finding } from "../findings/Finding.ts";
import { kilnFiringOf } from "../firing/kilnFiringOf.ts";
import { outputMean } from "../kiln/outputMean.ts";
import type { LogReading } from "../log/LogReading.ts";
import { HOLDING_C_PER_HOUR, PAST_PEAK_K, setPointOf } from "./phaseOf.ts";
import { recentRate } from "./recentRate.ts";
import type { WatchFacts } from "./watchFindings.ts";

/** Topic of the finding that a climb is stalled. */
export const STALLED = "stalled climb";

/** A climb that has made nothing for so long is stalled [s]; our own estimate, like all below. */
const STALLED_SECONDS = 1200;
/** A slow planned ramp is slower than this and tells nothing [°C/h]. */
const TELLING_PLAN_C_PER_HOUR = 20;
/** Elements asked for as much as this are fully on. */
const FULLY_ON = 0.95;
/** So far below its set point a kiln is behind it [K]. */
const BEHIND_SET_POINT_K = 20;
/** A fall of this much before the cone is down needs a word [K]. */
const FALLEN_K = 15;
/** Below this a kiln that stands still has not begun [°C]. */
const BEGUN_C = 100;

const BASIS = "least squares over the last 20 min; the limits are our own estimates";

/** A kiln that should climb and does not, or lags behind its set point. */
export function climbFindings(facts: WatchFacts): readonly Finding[] {
  const stalled = stalledFinding(facts);
  return stalled ? [stalled] : [...fallenFindings(facts), ...setPointFindings(facts)];
}

function stalledFinding({ state, reading, curve, place }: WatchFacts): Finding | null {
  const { tempC, peakC, nowSeconds, phase } = state;
  const line = lineOver(curve);
  if (line === null || phase === "climbing" || tempC < BEGUN_C || peakC - tempC > PAST_PEAK_K)
    return null;
  const evidence: Finding["evidence"] = [
    { name: "at", value: tempC, kind: "temperature" },
    { name: "for", value: STALLED_SECONDS, kind: "duration" },
  ];
  const isFlatOut = isFullyOn(reading, nowSeconds);
  const why = reasonToClimb({ reading, nowSeconds, tempC, place });
  if (why === null || line.rateCPerHour > HOLDING_C_PER_HOUR) return null;
  return {
    topic: STALLED,
    severity: "warning",
    statement: `It has not climbed for {for}, at {at}, ${why}.`,
    evidence,
    basis: BASIS,
    advice: isFlatOut
      ? "Go and look, and do not trust the reading: the thermocouple may have slipped out, and the kiln may be far hotter. If its colour says so, switch it off by hand. Mains, relays and elements are for a licensed electrician under your local code."
      : "Go and look: the lid, the breaker, the thermocouple. Mains, relays and elements are for a licensed electrician under your local code.",
    zone: null,
    span: { fromSeconds: nowSeconds - STALLED_SECONDS, toSeconds: nowSeconds },
  };
}

/** Why the kiln should be climbing, as a clause; null when nothing says that it should. */
function reasonToClimb(at: {
  readonly reading: LogReading;
  readonly nowSeconds: number;
  readonly tempC: number;
  readonly place: WatchFacts["place"];
}): string | null {
  const { reading, nowSeconds, tempC, place } = at;
  if (isFullyOn(reading, nowSeconds)) return "with the elements fully on";
  const wanted = setPointAt(reading, nowSeconds);
  if (wanted !== null && wanted.nowC - tempC > BEHIND_SET_POINT_K && wanted.nowC >= wanted.beforeC)
    return "while its set point stands higher";
  const isRamp = place?.row.kind === "ramp" && place.row.rateCPerHour > TELLING_PLAN_C_PER_HOUR;
  return isRamp && place.lateSeconds > STALLED_SECONDS / 2 ? "where the plan climbs" : null;
}

/** Whether the elements were asked for everything over the last minutes. */
function isFullyOn(reading: LogReading, nowSeconds: number): boolean {
  const output = kilnFiringOf(reading, null)?.output ?? null;
  const on = output && outputMean(output, nowSeconds - STALLED_SECONDS, nowSeconds);
  return on !== null && on >= FULLY_ON;
}

/** A fall before the cone is down that nothing asks for. */
function fallenFindings({ state, place, reading }: WatchFacts): readonly Finding[] {
  const { wanted, heatwork, peakC, tempC, phase, nowSeconds, peakAtSeconds } = state;
  if (phase !== "falling" || wanted === null || wanted.downAtSeconds !== null) return [];
  const isAsked = place !== null && place.row.toC < place.row.fromC;
  if (peakC - tempC < FALLEN_K) return [];
  const reached = heatwork.cones.find((each) => each.cone === wanted.cone);
  const shortK = -(reached?.marginK ?? 0);
  const sigmaK = totalSigmaK(heatwork.offsetSigmaK, reached?.marginSigmaK ?? 0);
  const point = setPointAt(reading, nowSeconds);
  const isLed = isAsked || (point !== null && point.nowC <= tempC + FALLEN_K);
  return [
    {
      topic: "falling before the cone is down",
      severity: shortK > sigmaK ? "warning" : "caution",
      statement: `It has fallen by {fallen} from its highest, {peak}, and cone ${wanted.cone} is not down.`,
      evidence: [
        { name: "fallen", value: peakC - tempC, kind: "difference" },
        { name: "peak", value: peakC, kind: "temperature" },
      ],
      basis:
        "cone kinetics on the readings so far; a warning when the cone is short by more than one sigma of cone and thermocouple",
      advice: isLed
        ? "See by the witness cones what was reached."
        : "Go and look: did the kiln switch off, was it stopped, or did the power fail?",
      zone: null,
      span: { fromSeconds: peakAtSeconds, toSeconds: nowSeconds },
    },
  ];
}

function setPointFindings({ reading, state }: WatchFacts): readonly Finding[] {
  const point = setPointAt(reading, state.nowSeconds);
  const behindK = point === null ? 0 : point.nowC - state.tempC;
  if (point === null || behindK < BEHIND_SET_POINT_K || point.nowC < point.beforeC) return [];
  return [
    {
      topic: "behind the set point",
      severity: "caution",
      statement: "It is {behind} below its set point of {set}.",
      evidence: [
        { name: "behind", value: behindK, kind: "difference" },
        { name: "set", value: point.nowC, kind: "temperature" },
      ],
      basis: "the set point in the log; the limit is our own estimate",
      advice: "The kiln cannot keep up: the cone comes later than programmed.",
      zone: null,
      span: null,
    },
  ];
}

/** Set point at a moment and 20 min before; null when the log has none. */
function setPointAt(
  reading: LogReading,
  seconds: number,
): { readonly nowC: number; readonly beforeC: number } | null {
  const curve = setPointOf(reading);
  const nowC = curve ? temperatureAt(curve, seconds) : null;
  const beforeC = curve ? temperatureAt(curve, seconds - STALLED_SECONDS) : null;
  return nowC === null || beforeC === null ? null : { nowC, beforeC };
}

function lineOver(curve: Curve) {
  return recentRate(curve, STALLED_SECONDS / 3);
}
