import type { Curve } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/crossingTimes.ts";
import { shifted } from "../curve/moved.ts";
import { peakOf } from "../curve/peakOf.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import { expandSchedule } from "../schedule/expandSchedule.ts";
import type { Expansion, Schedule } from "../schedule/Schedule.ts";
import type { PlanComparison, ZoneReview } from "./foundZone.ts";
import { NEAR_PEAK_K } from "./zoneReview.ts";

/** How far above the warmer of the two starts both are lined up [K]. */
const ABOVE_START_K = 30;

/** Step between the moments at which both are compared [s]; the area rule asks for 1 to 5 min. */
const STEP_SECONDS = 60;

/**
 * How far a zone went from its plan.
 * Both are lined up where they pass the same low temperature on the way up. Compared minute by
 * minute over the time that both have, up to the first fall that the plan leaves to the kiln: from
 * there on the plan's clock is only assumed. Area as in furnace-curve conformity,
 * (measured − planned) / planned, in °C · time.
 *
 * @returns null when they share no rise, or less than a minute of it.
 * @see SOURCES["imo-ftp-2010"], 8.3.1.3
 */
export function comparedWithPlan(zone: ZoneReview, plan: Schedule): PlanComparison | null {
  const expansion = expandSchedule(plan);
  const shiftSeconds = planShiftSeconds(zone.curve, expansion);
  if (shiftSeconds === null) return null;
  const planned = shifted(expansion.curve, shiftSeconds);
  const differences = differencesOf(zone.curve, planned, comparedSpan(expansion, shiftSeconds));
  if (differences === null) return null;
  return {
    title: plan.title,
    planned,
    shiftSeconds,
    zone: zone.name,
    ...differences,
    peakDeviationC: zone.peakC - peakOf(planned).tempC,
    peakDelaySeconds: firstNear(zone.curve, zone.peakC) - firstNear(planned, peakOf(planned).tempC),
  };
}

/** Seconds by which a plan is moved so that it passes a low temperature when the kiln did; null when they share no rise. */
export function planShiftSeconds(curve: Curve, expansion: Expansion): number | null {
  const startsC = [curve.tempsC[0]!, expansion.curve.tempsC[0]!];
  const assumed: number[] = [];
  for (const row of expansion.timeline) {
    if (!row.assumedRate) break;
    assumed.push(row.toC);
  }
  const lowC = Math.max(...startsC.map((tempC) => tempC + ABOVE_START_K), ...assumed);
  const rise = (of: Curve): number | undefined =>
    crossingTimes(of, lowC).find((crossing) => crossing.direction === "heating")?.seconds;
  const measured = rise(curve);
  const planned = rise(expansion.curve);
  return measured === undefined || planned === undefined ? null : measured - planned;
}

/** The part of the plan, on the log's clock, whose times are the plan's own. */
function comparedSpan(
  expansion: Expansion,
  shiftSeconds: number,
): { readonly fromSeconds: number; readonly toSeconds: number } {
  const firstOwn = expansion.timeline.find((row) => !row.assumedRate);
  const from = firstOwn?.startSeconds ?? 0;
  const firstFall = expansion.timeline.find(
    (row) => row.assumedRate && row.startSeconds > from && row.toC < row.fromC,
  );
  const end = firstFall?.startSeconds ?? expansion.curve.timesSeconds.at(-1)!;
  return { fromSeconds: from + shiftSeconds, toSeconds: end + shiftSeconds };
}

function differencesOf(
  curve: Curve,
  planned: Curve,
  span: { readonly fromSeconds: number; readonly toSeconds: number },
): Pick<
  PlanComparison,
  "largestDeviationC" | "largestDeviationAtSeconds" | "areaDeviation"
> | null {
  const from = Math.max(span.fromSeconds, curve.timesSeconds[0]!);
  let largest = { deviation: 0, seconds: from };
  let between = 0;
  let under = 0;
  for (let seconds = from; seconds <= span.toSeconds; seconds += STEP_SECONDS) {
    const measuredC = temperatureAt(curve, seconds);
    const plannedC = temperatureAt(planned, seconds);
    if (measuredC === null || plannedC === null) continue;
    const deviation = measuredC - plannedC;
    between += deviation;
    under += plannedC;
    if (Math.abs(deviation) > Math.abs(largest.deviation)) largest = { deviation, seconds };
  }
  if (!(under > 0)) return null;
  return {
    largestDeviationC: largest.deviation,
    largestDeviationAtSeconds: largest.seconds,
    areaDeviation: between / under,
  };
}

/** When a Curve first comes within 5 °C of a peak [s]. */
function firstNear(curve: Curve, peakC: number): number {
  return crossingTimes(curve, peakC - NEAR_PEAK_K)[0]?.seconds ?? peakOf(curve).seconds;
}
