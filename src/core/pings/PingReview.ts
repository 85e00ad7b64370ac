import { type Caution, cautionsFor } from "../cautions/cautions.ts";
import type { Finding } from "../findings/Finding.ts";
import { medianInPlace } from "../math/statistics.ts";
import { lawFindings } from "./lawFindings.ts";
import type { Listening } from "./listener.ts";
import { type PingLaw, pingLaw } from "./omoriLaw.ts";
import type { Ping } from "./Ping.ts";
import { hearingFindings } from "./pingFindings.ts";
import { type PingBurst, type PingKinds, pingBurst, pingKinds } from "./pingKinds.ts";
import { temperatureFindings } from "./pingTemperatureFindings.ts";
import { type LogBeside, pingTemperatures, wareTemperature } from "./pingTemperatures.ts";

/** A ping with how hot the kiln was. */
export interface PlacedPing extends Ping {
  /** Of the log [°C]; null without a log, outside it, in its gaps and once the ware was taken out. */
  readonly tempC: number | null;
}

/** How many pings came in a span of the recording. */
export interface PingSpan {
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly count: number;
  /** Of all pings heard, 0 to 1. */
  readonly share: number;
  readonly perHour: number;
}

/** How many pings came while the kiln stood between two temperatures. */
export interface PingBand {
  /** Name of the inversion that it is, or null. */
  readonly name: string | null;
  readonly lowC: number;
  readonly highC: number;
  readonly count: number;
  /** Time for which the recording heard it [s]. */
  readonly seconds: number;
  readonly perHour: number;
}

/** Ware taken out of the kiln: from then on the log does not say how hot it is. */
interface PingUnloading {
  /** Of the recording [s]; before 0 when the recording began later, or past its end. */
  readonly atSeconds: number;
  /** Of the kiln at that moment [°C]; null when it is not known. */
  readonly tempC: number | null;
  /** Pings from then on. */
  readonly count: number;
  /** Time for which the recording heard on [s]. */
  readonly seconds: number;
}

/** What a log adds: how hot it was at each ping. */
export interface PingTemperatures {
  readonly logName: string;
  readonly channel: string;
  /** Start of the recording in the log [s]. */
  readonly startedSeconds: number;
  /** Share of the recording for which a temperature is known. */
  readonly knownShare: number;
  /** Coldest moment of the recording that has a temperature [°C]. */
  readonly coldestC: number | null;
  /** When the ware was taken out; null when nobody noted it. */
  readonly unloading: PingUnloading | null;
  /** Between the hottest and the coldest moment of the recording [K]; 0 when none is known. */
  readonly rangeK: number;
  /** Steps of 20 °C, of 50 over a range of more than 150; hottest first, only those that were heard. */
  readonly steps: readonly PingBand[];
  readonly inversions: readonly PingBand[];
  /** Of the first ping with a temperature [°C], and of the third, in case the first was a shelf. */
  readonly firstC: number | null;
  readonly thirdC: number | null;
  /** Pings while the kiln changed by less than 5 °C/h, and for how long that was. */
  readonly steady: { readonly count: number; readonly seconds: number };
}

/** What is known of the recording itself. */
export interface SoundFacts {
  readonly name: string;
  /** `16-bit whole numbers, 2 channels, 44100 Hz`. */
  readonly format: string;
  /** What was chosen or left out in reading it, as sentences. */
  readonly notes: readonly string[];
}

/** When the recording began, as far as it is known. */
export interface RecordingStart {
  /** Time of day [s after midnight]. */
  readonly secondsOfDay: number | null;
  /** Since the start of the log or the firing [s]. */
  readonly elapsedSeconds: number | null;
}

/** What a recording of clicks says. */
export interface PingReview {
  readonly sound: SoundFacts;
  readonly heard: Listening;
  readonly started: RecordingStart;
  readonly pings: readonly PlacedPing[];
  readonly spans: readonly PingSpan[];
  /** Null up to 50 pings. */
  readonly law: PingLaw | null;
  /** Sigmas by which the middle of the times lies before the middle of the recording (Laplace); null under 10 pings. */
  readonly earliness: number | null;
  readonly burst: PingBurst | null;
  readonly kinds: PingKinds;
  /** Whether the first ping came so soon that the beginning was missed. */
  readonly isBegun: boolean;
  readonly temperatures: PingTemperatures | null;
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
}

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
