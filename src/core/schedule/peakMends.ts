import { printDuration, printRate, printTemperature } from "../text/quantities.ts";
import { peakSegment } from "./coneAim.ts";
import { LONG_HOLD_SECONDS } from "./coneCheck.ts";
import { paced, rateDown, temperatureUp } from "./paced.ts";
import type { Schedule } from "./Schedule.ts";
import { solveSchedule } from "./solveSchedule.ts";
import type { Mend } from "./wishedPace.ts";

/** Holds this near the peak count as holding the peak [K], as the check counts them. */
const NEAR_PEAK_K = 5;

/** Fastest rate of the cone chart, that of small cones left aside [°C/h]. */
const CHART_C_PER_HOUR = 150;

/** A peak that is held for too long. */
export const MEND_PEAK_HOLD: Mend = {
  topic: "hold at the peak",
  mend: (schedule) => {
    const peakC = highestC(schedule);
    const near = (toC: number) => toC >= peakC - NEAR_PEAK_K;
    const sum = schedule.segments.reduce(
      (seconds, { toC, holdSeconds }) => seconds + (near(toC) ? holdSeconds : 0),
      0,
    );
    const share = LONG_HOLD_SECONDS / sum;
    return {
      ok: true,
      schedule: {
        ...schedule,
        segments: schedule.segments.map((segment) =>
          near(segment.toC) && segment.holdSeconds > 0
            ? {
                ...segment,
                holdSeconds: Math.floor((segment.holdSeconds * share) / 60) * 60,
                why: `held for ${printDuration(LONG_HOLD_SECONDS)} at most: glazes run`,
              }
            : segment,
        ),
      },
      did: `hold at the peak shortened to ${printDuration(LONG_HOLD_SECONDS)}`,
    };
  },
};

/** The last 100 °C climbed faster than the chart goes. */
export const MEND_LAST_HUNDRED: Mend = {
  topic: "the last 100 degrees",
  mend: (schedule, findings, { kiln }) => {
    const { unit } = schedule;
    const rate = findings[0]?.evidence.find((item) => item.name === "rate")?.value ?? 0;
    const peakC = highestC(schedule);
    const mostCPerHour = rateDown(CHART_C_PER_HOUR, unit);
    if (rate < mostCPerHour)
      return {
        ok: false,
        why: "The last climb is slower than the cone chart goes: a hold stands in it, or the kiln gives no more. Trust the witness cones.",
      };
    const why = `the last climb inside the cone chart: ${printRate(mostCPerHour, unit)} at most`;
    return {
      ok: true,
      schedule: paced(
        schedule,
        { fromC: temperatureUp(peakC - 101, unit), toC: peakC, mostCPerHour, why },
        kiln,
      ),
      did: `last climb slowed to ${printRate(mostCPerHour, unit)}`,
    };
  },
};

/** A cone that is missed or overshot. */
export const MEND_CONE: Mend = {
  topic: "cone wanted",
  mend: (schedule, _, { kiln, offsetK }) => {
    const { cone, unit } = schedule;
    const solved =
      cone === null ? null : solveSchedule({ schedule, cone, solve: "peak", kiln, offsetK });
    const peak = peakSegment(schedule);
    if (solved === null || peak === null)
      return { ok: false, why: "The schedule names no cone, or has no climb to a peak." };
    if (!solved.ok) {
      const [problem] = solved.problems;
      return {
        ok: false,
        why: `Cone ${cone}: ${problem?.what}. What would help: ${problem?.fix}.`,
      };
    }
    const peakC = temperatureUp(highestC(solved.value), unit);
    return {
      ok: true,
      schedule: {
        ...schedule,
        segments: schedule.segments.map((segment, index) =>
          index === peak.index ? { ...segment, toC: peakC, why: `peak for cone ${cone}` } : segment,
        ),
      },
      did: `peak moved from ${printTemperature(highestC(schedule), unit)} to ${printTemperature(peakC, unit)}`,
    };
  },
};

function highestC(schedule: Schedule): number {
  return Math.max(...schedule.segments.map((segment) => segment.toC));
}
