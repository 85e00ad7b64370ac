import { medianInPlace } from "../math/statistics.ts";
import { clicksIn } from "./detectOnsets.ts";
import {
  framesInSecond,
  type OtherSounds,
  type Ping,
  type PingSettings,
  type QuietLevels,
  quietLevels,
} from "./Ping.ts";
import {
  emptyFrames,
  frameMeter,
  hopSamples,
  type SoundBand,
  type SoundFrames,
} from "./soundFrames.ts";

/** A recording as heard. */
export interface Listening {
  readonly pings: readonly Ping[];
  readonly others: OtherSounds;
  /** Length of what was heard [s]. */
  readonly seconds: number;
  readonly sampleRateHz: number;
  readonly settings: PingSettings;
  /** Of each band over the whole recording, medians of its seconds. */
  readonly bands: readonly (SoundBand & {
    readonly floorDbfs: number;
    readonly thresholdDb: number;
  })[];
  /** Seconds in which noise kept the ear duller than usual by 12 dB or more in half of the bands. */
  readonly noisySeconds: number;
  /** Shares of all samples: at full scale, and exactly 0. */
  readonly fullScaleShare: number;
  readonly zeroShare: number;
  /** Highest peak above the hum [dBFS]; null when there is nothing at all. */
  readonly peakDbfs: number | null;
}

/** Listens to a recording block by block, in little memory however long it is. */
export interface Listener {
  readonly push: (samples: Float64Array) => void;
  /** What was heard; nothing may be pushed after. */
  readonly finish: () => Listening;
}

/** Whole seconds that are judged at a time; beside them as many are kept as the quiet level needs. */
const STRETCH_SECONDS = 60;

/** Ear duller than usual by this [dB] counts as noisy; our own choice. */
const DULL_DB = 12;

/**
 * A listener for one channel of a recording.
 *
 * @param given.leastEnergy Mean square that the samples cannot go below, from their rounding.
 * @throws RangeError when the sample rate carries no band.
 */
export function listener(given: {
  readonly sampleRateHz: number;
  readonly leastEnergy: number;
  readonly settings: PingSettings;
}): Listener {
  const { sampleRateHz, settings } = given;
  const hop = hopSamples(sampleRateHz);
  const second = framesInSecond(hop / sampleRateHz);
  const margin = (Math.ceil(settings.floorSeconds / 2) + 2) * second;
  const room = STRETCH_SECONDS * second + 2 * margin;
  const frames = emptyFrames(sampleRateHz, room);
  if (frames.bands.length === 0) throw new RangeError(`listener: ${sampleRateHz} Hz`);
  const meter = frameMeter(sampleRateHz);
  const tally = emptyTally(frames.bands.length);
  let pending = new Float64Array(0);
  let count = 0;
  let first = 0;
  let from = 0;

  function judge(to: number): void {
    const levels = quietLevels(frames, count, given);
    const startSeconds = (first * hop) / sampleRateHz;
    const heard = clicksIn({ frames, levels, count, from, to, startSeconds }, settings);
    addTo(tally, heard, settings);
    rememberSeconds(tally, levels, { from, to });
    countSamples(tally, frames, { from, to });
  }

  function makeRoom(): void {
    judge(count - margin);
    const dropped = count - 2 * margin;
    for (const values of arraysOf(frames)) values.copyWithin(0, dropped, count);
    first += dropped;
    count = 2 * margin;
    from = margin;
  }

  function add(block: Float64Array): void {
    let at = 0;
    while (at < block.length) {
      if (count === room) makeRoom();
      const pieces = Math.min(room - count, (block.length - at) / hop);
      meter.measure(block.subarray(at, at + pieces * hop), frames, count);
      count += pieces;
      at += pieces * hop;
    }
  }

  return {
    push(samples) {
      const all = new Float64Array(pending.length + samples.length);
      all.set(pending);
      all.set(samples, pending.length);
      const whole = Math.floor(all.length / hop) * hop;
      add(all.subarray(0, whole));
      pending = all.slice(whole);
    },
    finish() {
      if (count > 0) judge(count);
      return listened(tally, frames, { seconds: ((first + count) * hop) / sampleRateHz, settings });
    },
  };
}

interface Tally {
  readonly pings: Ping[];
  others: OtherSounds;
  /** Quiet level and threshold of each band, second by second. */
  readonly floors: number[][];
  readonly thresholds: number[][];
  samples: number;
  fullScale: number;
  zeros: number;
  peak: number;
}

function emptyTally(bands: number): Tally {
  return {
    pings: [],
    others: { slow: 0, lasting: 0, thuds: 0, amongNoise: 0 },
    floors: Array.from({ length: bands }, () => []),
    thresholds: Array.from({ length: bands }, () => []),
    samples: 0,
    fullScale: 0,
    zeros: 0,
    peak: 0,
  };
}

function addTo(
  tally: Tally,
  heard: { readonly pings: readonly Ping[]; readonly others: OtherSounds },
  { apartSeconds }: PingSettings,
): void {
  for (const ping of heard.pings) {
    const last = tally.pings.at(-1);
    // Found once on either side of a cut between stretches.
    if (last === undefined || ping.atSeconds - last.atSeconds >= apartSeconds)
      tally.pings.push(ping);
  }
  const { slow, lasting, thuds, amongNoise } = tally.others;
  tally.others = {
    slow: slow + heard.others.slow,
    lasting: lasting + heard.others.lasting,
    thuds: thuds + heard.others.thuds,
    amongNoise: amongNoise + heard.others.amongNoise,
  };
}

function rememberSeconds(
  tally: Tally,
  { floorsDb, thresholdsDb, secondFrames }: QuietLevels,
  { from, to }: { readonly from: number; readonly to: number },
): void {
  floorsDb.forEach((floors, b) => {
    const last = Math.min(floors.length, Math.ceil(to / secondFrames));
    for (let s = Math.floor(from / secondFrames); s < last; s++) {
      tally.floors[b]?.push(floors[s]!);
      tally.thresholds[b]?.push(thresholdsDb[b]?.[s] as number);
    }
  });
}

function countSamples(
  tally: Tally,
  { fullScale, zeros, peaks, hopSeconds, sampleRateHz }: SoundFrames,
  { from, to }: { readonly from: number; readonly to: number },
): void {
  for (let i = from; i < to; i++) {
    tally.fullScale += fullScale[i]!;
    tally.zeros += zeros[i]!;
    tally.peak = Math.max(tally.peak, peaks[i]!);
  }
  tally.samples += (to - from) * Math.round(hopSeconds * sampleRateHz);
}

function listened(
  tally: Tally,
  frames: SoundFrames,
  { seconds, settings }: { readonly seconds: number; readonly settings: PingSettings },
): Listening {
  const bands = frames.bands.map((band, b) => ({
    ...band,
    floorDbfs: medianInPlace([...(tally.floors[b] ?? [])]),
    thresholdDb: medianInPlace([...(tally.thresholds[b] ?? [])]),
  }));
  const isDull = (_: number, s: number) => {
    const dull = bands.filter(({ floorDbfs, thresholdDb }, b) => {
      const needed = (tally.floors[b]?.[s] as number) + (tally.thresholds[b]?.[s] as number);
      return needed >= floorDbfs + thresholdDb + DULL_DB;
    });
    return 2 * dull.length >= bands.length;
  };
  return {
    pings: tally.pings,
    others: tally.others,
    seconds,
    sampleRateHz: frames.sampleRateHz,
    settings,
    bands,
    noisySeconds: (tally.floors[0] ?? []).filter(isDull).length,
    fullScaleShare: tally.fullScale / Math.max(1, tally.samples),
    zeroShare: tally.zeros / Math.max(1, tally.samples),
    peakDbfs: tally.peak > 0 ? 20 * Math.log10(tally.peak) : null,
  };
}

function arraysOf(frames: SoundFrames): readonly Float64Array[] {
  return [
    ...frames.energies,
    ...frames.steps,
    frames.low,
    frames.peaks,
    frames.fullScale,
    frames.zeros,
  ];
}
