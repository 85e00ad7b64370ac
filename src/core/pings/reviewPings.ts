import { cautionsFor } from "../cautions/cautionsFor.ts";
import { medianInPlace } from "../curve/median.ts";
import { hearingFindings } from "./hearingFindings.ts";
import { lawFindings } from "./lawFindings.ts";
import type { Listening } from "./listener.ts";
import type { PingReview, PingSpan, RecordingStart, SoundFacts } from "./PingReview.ts";
import { pingBurst } from "./pingBurst.ts";
import { pingKinds } from "./pingKinds.ts";
import { pingLaw } from "./pingLaw.ts";
import { type LogBeside, pingTemperatures, wareTemperature } from "./pingTemperatures.ts";
import { temperatureFindings } from "./temperatureFindings.ts";

/** Fewer pings show no trend; our own choice. */
const FEWEST_FOR_TREND = 10;

/** What a recording says: how many pings, when, how they thin out, and how hot it was. */
export function reviewPings(input: {
  readonly sound: SoundFacts;
  readonly heard: Listening;
  readonly started: RecordingStart;
  readonly log: LogBeside | null;
}): PingReview {
  const { sound, heard, started, log } = input;
  const { seconds } = heard;
  const pings = heard.pings.map((ping) => ({
    ...ping,
    tempC: log === null ? null : wareTemperature(log, ping.atSeconds),
  }));
  const times = pings.map(({ atSeconds }) => atSeconds);
  const law = pingLaw(times, seconds);
  const review = {
    sound,
    heard,
    started,
    pings,
    spans: pingSpans(times, seconds),
    law,
    earliness: earlinessOf(times, seconds),
    burst: pingBurst(times, seconds),
    kinds: pingKinds(pings),
    isBegun: isBegun(times),
    temperatures: log === null ? null : pingTemperatures(pings, seconds, log),
  };
  return {
    ...review,
    findings: [...hearingFindings(review), ...lawFindings(review), ...temperatureFindings(review)],
    cautions: cautionsFor({ listening: true, crackle: true }),
  };
}

/** The test of Laplace: even times have their mean in the middle, with a sigma of T/√(12 n). */
function earlinessOf(times: readonly number[], seconds: number): number | null {
  if (times.length < FEWEST_FOR_TREND) return null;
  const mean = times.reduce((sum, time) => sum + time, 0) / times.length;
  return (seconds / 2 - mean) / (seconds / Math.sqrt(12 * times.length));
}

/** Whether the first ping came no later than pings then followed each other, three times that at most. */
function isBegun(times: readonly number[]): boolean {
  if (times.length < 6) return false;
  const steps = times.slice(1, 6).map((time, i) => time - times[i]!);
  return times[0]! < 3 * medianInPlace(steps);
}

const MINUTE = 60;
const HOUR = 3600;
const EDGES = [0, 10 * MINUTE, HOUR, 4 * HOUR, 24 * HOUR];

/** Pings in the first 10 minutes, to 1 hour, to 4, to 24 and day by day after, as far as the recording goes. */
export function pingSpans(times: readonly number[], seconds: number): readonly PingSpan[] {
  const edges = [...EDGES];
  while (edges.at(-1)! < seconds) edges.push(edges.at(-1)! + 24 * HOUR);
  return edges.slice(1).flatMap((edge, i) => {
    const fromSeconds = edges[i]!;
    const toSeconds = Math.min(edge, seconds);
    if (toSeconds <= fromSeconds) return [];
    const count = times.filter((time) => time >= fromSeconds && time < edge).length;
    return [
      {
        fromSeconds,
        toSeconds,
        count,
        share: times.length === 0 ? 0 : count / times.length,
        perHour: (count * HOUR) / (toSeconds - fromSeconds),
      },
    ];
  });
}
