import { dayNumber, weekday } from "../../../src/core/log/text/calendar.ts";
import { type Seeded, seeded } from "../../support/demo/seeded.ts";
import type { Levels } from "./axes.ts";
import { TIME_STYLES } from "./timeStyles.ts";

/** One sample of a log: when it was taken, and what the logger's clock showed. */
interface SampleTime {
  /** True time since the first sample [s]. */
  readonly elapsed: number;
  /** What the clock of the logger showed [s since 1970]. */
  readonly shown: number;
}

/** The samples of a log, in the order in which they were taken. */
export interface SampledTimes {
  readonly samples: readonly SampleTime[];
  readonly stepSeconds: number;
  /** First sample after the clock was changed or set; -1 without. */
  readonly changeAt: number;
}

const DAY = 86_400;

/** When the samples of a log were taken, with the defect of its clock. */
export function sampledTimes(levels: Levels, seed: number): SampledTimes {
  const random = seeded(seed);
  const stepSeconds = Number.parseInt(levels.step, 10);
  const count = Math.round(Number(levels.rows) * (0.85 + 0.3 * random.even()));
  const elapsed = elapsedTimes(levels, { random, stepSeconds, count });
  const changeAt = isChanged(levels) ? Math.floor(count * (0.2 + 0.6 * random.even())) : -1;
  const start = startOf(levels, { random, stepSeconds, lead: elapsed[changeAt] ?? 0 });
  const shift = shiftOf(levels, random, start);
  const samples = elapsed.map((seconds, i) => ({
    elapsed: seconds,
    shown: start + seconds + (changeAt >= 0 && i >= changeAt ? shift : 0),
  }));
  return { samples, stepSeconds, changeAt };
}

function isChanged(levels: Levels): boolean {
  return levels.clock.startsWith("summer") || levels.clock === "reset";
}

function elapsedTimes(
  levels: Levels,
  plan: { readonly random: Seeded; readonly stepSeconds: number; readonly count: number },
): readonly number[] {
  const { random, stepSeconds, count } = plan;
  const gapAt = levels.clock === "gap" ? Math.floor(count * (0.2 + 0.6 * random.even())) : -1;
  const gap = stepSeconds * Math.ceil(Math.max(12, 900 / stepSeconds) * (1 + random.even()));
  return Array.from({ length: count }, (_, i) => {
    const late = gapAt >= 0 && i >= gapAt ? gap : 0;
    const sway =
      levels.clock === "jitter" && i > 0
        ? Math.round((random.even() - 0.5) * 0.4 * stepSeconds)
        : 0;
    return i * stepSeconds + late + sway;
  });
}

/** Wall clock of the first sample [s since 1970]. */
function startOf(
  levels: Levels,
  plan: { readonly random: Seeded; readonly stepSeconds: number; readonly lead: number },
): number {
  const { random, stepSeconds, lead } = plan;
  if (levels.clock.startsWith("summer")) {
    const start = changeMoment(levels, random) - lead;
    // Clock times from midnight on could be elapsed time, in which there is no change to see.
    return start % DAY < 60 ? start - 600 : start;
  }
  const day = dayNumber(2019, 1, 1) + Math.floor(random.even() * 2800);
  const { quantum } = TIME_STYLES[levels.time];
  const grain = Math.max(1, Math.min(quantum, stepSeconds));
  const ofDay = 5 * 3600 + Math.floor((random.even() * 12 * 3600) / grain) * grain;
  return day * DAY + ofDay;
}

/** 02:00 or 03:00 in the small hours of a Sunday in March or October: the European dates. */
function changeMoment(levels: Levels, random: Seeded): number {
  const ends = levels.clock === "summer time ends";
  const year = 2019 + Math.floor(random.even() * 7);
  let day = dayNumber(year, ends ? 10 : 3, 31);
  while (weekday(day) !== 0) day--;
  return day * DAY + (ends ? 3 : 2) * 3600;
}

function shiftOf(levels: Levels, random: Seeded, start: number): number {
  if (levels.clock === "summer time ends") return -3600;
  if (levels.clock === "summer time begins") return 3600;
  const resetDay = random.even() < 0.5 ? dayNumber(2000, 1, 1) : dayNumber(2015, 1, 1);
  return resetDay * DAY - start;
}
