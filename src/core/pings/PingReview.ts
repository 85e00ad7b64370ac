import type { Caution } from "../cautions/Caution.ts";
import type { Finding } from "../findings/Finding.ts";
import type { Listening } from "./listener.ts";
import type { Ping } from "./Ping.ts";
import type { PingBurst } from "./pingBurst.ts";
import type { PingKinds } from "./pingKinds.ts";
import type { PingLaw } from "./pingLaw.ts";

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
