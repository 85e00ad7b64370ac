import { readFileSync } from "node:fs";
import { type Curve, makeCurve, sliced } from "../../src/core/curve/Curve.ts";
import type { LogReading } from "../../src/core/log/reading/LogReading.ts";
import { readLog } from "../../src/core/log/readLog.ts";
import type { WatchView } from "../../src/core/reports/watchWords.ts";
import type { WatchState } from "../../src/core/watch/WatchState.ts";
import { type WatchInput, watched } from "../../src/core/watch/watched.ts";
import { splitQuoted } from "../../src/node/readLogChunks.ts";
import { seeded } from "./demo/seeded.ts";
import { readingOf } from "./firings.ts";
import { valued } from "./schedules.ts";

/** A firing as it stands at the end of a reading, with nothing known of it unless a test says so. */
export function watchedReading(reading: LogReading, known: Partial<WatchInput> = {}): WatchState {
  return valued(
    watched({
      reading,
      record: null,
      plan: null,
      cone: null,
      kiln: null,
      offsetK: null,
      lines: 0,
      ...known,
    }),
  );
}

/** The same of one Curve, up to a moment [h from its start], its thermocouple taken to be right. */
export function watchedAt(
  curve: Curve,
  hours: number,
  known: Partial<WatchInput> = {},
): WatchState {
  const until = sliced(curve, curve.timesSeconds[0] as number, hours * 3600) as Curve;
  return watchedReading(readingOf({ kiln: until }), { offsetK: 0, ...known });
}

/** A Curve whose readings scatter about it by one sigma [K], the same every time. */
export function noisy(curve: Curve, sigmaK: number): Curve {
  const random = seeded(1186);
  return makeCurve(
    curve.timesSeconds,
    curve.tempsC.map((temp) => temp + sigmaK * random.normal()),
    curve.gaps,
  );
}

/** A demo log as it was read when its last reading was so many seconds after its first. */
export function demoLogUntil(name: string, seconds: number): LogReading {
  const whole = demoLog(name);
  const rows = whole.channels[0]?.curve?.timesSeconds.filter((time) => time <= seconds).length ?? 0;
  const lines = readFileSync(`logs/${name}.csv`, "utf8").split("\n");
  const head = lines.length - 1 - whole.rows.total;
  const text = `${lines.slice(0, head + rows).join("\n")}\n`;
  return valued(readLog(new TextEncoder().encode(text), { name: `${name}.csv` }, splitQuoted));
}

/** A whole demo log. */
export function demoLog(name: string): LogReading {
  return valued(readLog(readFileSync(`logs/${name}.csv`), { name: `${name}.csv` }, splitQuoted));
}

/** A span with numbers at both ends [s]. */
interface Span {
  readonly atSeconds: number;
  readonly earliestSeconds: number;
  readonly latestSeconds: number;
}

/** When the cone is expected; an end that may never come lies infinitely far off. */
export function expectedOf({ wanted }: WatchState): Span {
  const moment = wanted?.expected;
  if (!moment) throw new Error(`nothing is expected: ${wanted?.whyNot}`);
  return { ...moment, latestSeconds: moment.latestSeconds ?? Number.POSITIVE_INFINITY };
}

/** When the kiln is at a temperature; an end that may never come lies infinitely far off. */
export function cooledOf({ cooling }: WatchState, tempC: number): Span {
  const moment = cooling?.cooledBy.find((each) => each.tempC === tempC);
  if (!moment) throw new Error(`nothing is said of ${tempC} °C`);
  return { ...moment, latestSeconds: moment.latestSeconds ?? Number.POSITIVE_INFINITY };
}

/** Whether a moment lies within so many times a span. */
export function isWithin(seconds: number, span: Span, times: number): boolean {
  const { atSeconds, earliestSeconds, latestSeconds } = span;
  return (
    seconds > atSeconds - times * (atSeconds - earliestSeconds) &&
    seconds < atSeconds + times * (latestSeconds - atSeconds)
  );
}

/** A look at a log that grew 12 s ago, with what a test cares about put in. */
export function lookAt(state: WatchState | null, parts: Partial<WatchView> = {}): WatchView {
  return {
    log: "firing.csv",
    state,
    why: null,
    isLast: false,
    file: {
      change: "grown",
      restarts: 0,
      stillSeconds: 12,
      hasHalfLine: false,
      intervalSeconds: 60,
    },
    untilStillSeconds: 1800,
    ...parts,
  };
}
