import { peakOf } from "../curve/Curve.ts";
import type { Finding } from "../findings/Finding.ts";
import { clockAt } from "./clock.ts";
import { finding } from "./Judged.ts";
import type { OwnKilnFiring } from "./ownKilnFiring.ts";
import type { Expansion } from "./Schedule.ts";

/** Hours in which people sleep [h of the day]. */
const NIGHT: Hours = { fromHour: 22, toHour: 6 };

/** A start that is advised keeps an hour from them: the kiln may be early or late. */
const NEAR_NIGHT: Hours = { fromHour: 21, toHour: 7 };

/** From an hour of the evening to one of the morning. */
interface Hours {
  readonly fromHour: number;
  readonly toHour: number;
}

/** Starts are looked for in steps of a quarter of an hour, a day either way [s]. */
const STEP_SECONDS = 900;
const DAY_SECONDS = 86_400;

/** Within so much of its peak a kiln is at its top [K]. */
const AT_TOP_K = 2;

/** A top between ten at night and six in the morning, when it has to be watched; empty without a start. */
export function hoursFindings(
  start: string | null,
  expansion: Expansion,
  own: OwnKilnFiring | null,
): readonly Finding[] {
  const top = topOf(expansion, own);
  if (start === null || !isAt(NIGHT, start, top)) return [];
  const shift = dayShift(start, top);
  const other =
    shift === null
      ? ""
      : `, or start ${shift < 0 ? "earlier" : "later"}, at ${dayAndTime(start, shift)}: the top then comes at ${time(start, top.fromSeconds + shift)}`;
  return [
    finding({
      topic: "top at night",
      severity: "caution",
      statement: `The top comes at ${time(start, top.fromSeconds)} and the kiln should switch off at ${time(start, top.toSeconds)}: at night, when nobody looks.`,
      basis: "between 22:00 and 06:00, by the start; common practice is to be there at the top",
      advice: `Be there at ${time(start, top.fromSeconds)}, and see that it switches off${other}.`,
      evidence: [],
      span: top,
    }),
  ];
}

/** From when the kiln is at its top until it leaves it. */
interface Top {
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

function topOf({ curve }: Expansion, own: OwnKilnFiring | null): Top {
  const { timesSeconds, tempsC } = own?.firing.curve ?? curve;
  const peakC = peakOf(own?.firing.curve ?? curve).tempC;
  const isTop = (tempC: number) => tempC >= peakC - AT_TOP_K;
  return {
    fromSeconds: timesSeconds[tempsC.findIndex(isTop)]!,
    toSeconds: timesSeconds[tempsC.findLastIndex(isTop)]!,
  };
}

function isAt(hours: Hours, start: string, { fromSeconds, toSeconds }: Top): boolean {
  return isHour(hours, start, fromSeconds) || isHour(hours, start, toSeconds);
}

function isHour({ fromHour, toHour }: Hours, start: string, seconds: number): boolean {
  const hour = Number(clockAt(start, seconds).slice(11, 13));
  return hour >= fromHour || hour < toHour;
}

/** The nearest start, by day, from which the top comes by day too [s]; by night if it must be; null when there is none. */
function dayShift(start: string, top: Top): number | null {
  const shifts = Array.from(
    { length: DAY_SECONDS / STEP_SECONDS },
    (_, i) => (i + 1) * STEP_SECONDS,
  )
    .flatMap((seconds) => [-seconds, seconds])
    .map((seconds) => seconds - untilQuarter(start))
    .filter((seconds) => !isAt(NEAR_NIGHT, start, moved(top, seconds)));
  return shifts.find((seconds) => !isHour(NIGHT, start, seconds)) ?? shifts[0] ?? null;
}

function moved({ fromSeconds, toSeconds }: Top, seconds: number): Top {
  return { fromSeconds: fromSeconds + seconds, toSeconds: toSeconds + seconds };
}

/** Seconds that a start is past a quarter of an hour. */
function untilQuarter(start: string): number {
  return (Number(start.slice(14, 16)) * 60 + Number(start.slice(17, 19))) % STEP_SECONDS;
}

function time(start: string, seconds: number): string {
  return clockAt(start, seconds).slice(11, 16);
}

/** `2026-12-02 08:30`. */
function dayAndTime(start: string, seconds: number): string {
  return clockAt(start, seconds).slice(0, 16).replace("T", " ");
}
