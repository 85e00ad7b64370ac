import { medianInPlace } from "../math/statistics.ts";
import type { SoundFrames } from "./soundFrames.ts";

/** One click that was heard. */
export interface Ping {
  /** From the start of the recording to its onset [s]; good to 10 ms, to 3 ms when it stands out by 20 dB. */
  readonly atSeconds: number;
  /** Loudness over the quiet level of the band in which it stands out most [dB]. */
  readonly overFloorDb: number;
  /** Its highest peak above the hum, full scale being 0 [dBFS]. */
  readonly levelDbfs: number;
  /** Middle of its tones [Hz]. */
  readonly pitchHz: number;
  /** Time in which it dies away by 20 dB [ms]; null when it sinks into the quiet level too soon to tell. */
  readonly decayMs: number | null;
  /** Whether it reaches full scale, so that it was louder than recorded. */
  readonly isClipped: boolean;
}

/** Sounds that stood out and were not taken for pings, by the reason. */
export interface OtherSounds {
  /** Swelled instead of starting at once: speech, wind, a passing car. */
  readonly slow: number;
  /** Started at once and stayed: a motor, a tap. */
  readonly lasting: number;
  /** Mostly below 350 Hz: a door, a step. */
  readonly thuds: number;
  /** Sharp, but within a second of other noise: consonants of speech, rattling. */
  readonly amongNoise: number;
}

/** How clicks are told from the rest; what was not given is found from the recording or our own choice. */
export interface PingSettings {
  /** A click stands out by this many dB in a band; null: from the scatter of the quiet level itself. */
  readonly thresholdDb: number | null;
  /** Clicks closer than this are one [s]. */
  readonly apartSeconds: number;
  /** A click is louder by this much than what was there 6 to 20 ms before [dB]. */
  readonly attackDb: number;
  /** The quiet level is taken over this time [s]. */
  readonly floorSeconds: number;
}

/**
 * Our own choices, tried on made-up sounds only: clicks 60 ms apart so that the echo of a room is
 * no second click; 7 dB in 6 ms, which voices, fans and footsteps stay below.
 */
export const USUAL_SETTINGS: PingSettings = {
  thresholdDb: null,
  apartSeconds: 0.06,
  attackDb: 7,
  floorSeconds: 10,
};

/** Pieces about the peak that hold the body of a click. */
const BEFORE = 1;
const AFTER = 4;

/** The onset is the first piece with this share of the peak's energy. */
const ONSET_SHARE = 0.1;

/** A band is used for the tone when the click stands out of it by this [dB]. */
const HEARD_DB = 3;

/** The dying away is followed until this near the quiet level [dB], for at most so long [s]. */
const DECAY_END_DB = 6;
const DECAY_SECONDS = 0.3;
const LEAST_DECAY_DB = 8;

/** A click as it is reported, from where it is loudest. */
export function measuredPing(stretch: Stretch, onset: Onset): Ping {
  const { frames, levels, startSeconds, count } = stretch;
  const { frame, band } = onset;
  const floor = quietBefore(levels, band, frame);
  const from = Math.max(0, frame - BEFORE);
  const to = Math.min(count, frame + AFTER + 1);
  return {
    atSeconds: startSeconds + onsetFrame(stretch, onset) * frames.hopSeconds,
    overFloorDb: (levels.levelsDb[band]?.[frame] as number) - floor,
    levelDbfs: 20 * Math.log10(greatest(frames.peaks, from, to) + 1e-9),
    pitchHz: pitchOf(stretch, onset, { from, to }),
    decayMs: decayOf(stretch, onset, floor),
    isClipped: greatest(frames.fullScale, from, to) > 0,
  };
}

function onsetFrame({ frames }: Stretch, { frame, band }: Onset): number {
  const energies = frames.energies[band]!;
  const from = Math.max(0, frame - 4);
  const enough = ONSET_SHARE * greatest(energies, from, Math.min(energies.length, frame + 2));
  for (let i = from; i < frame; i++) if (energies[i]! >= enough) return i;
  return frame;
}

/**
 * Middle of the tones [Hz]: in each band that the click stands out of, the tone from the energy of
 * the steps between samples over that of the samples, 4 sin²(π f / rate) of a pure tone, without
 * what is there in quiet; between the bands the mean of the logarithm, by energy.
 */
function pitchOf(
  { frames, levels }: Stretch,
  { frame }: Onset,
  { from, to }: { readonly from: number; readonly to: number },
): number {
  let weights = 0;
  let sum = 0;
  frames.bands.forEach(({ lowHz, highHz }, b) => {
    const quiet = 10 ** (quietBefore(levels, b, frame) / 10) * (to - from);
    const middle = Math.sqrt(lowHz * highHz);
    const energy = total(frames.energies[b]!, from, to);
    if (energy < quiet * 10 ** (HEARD_DB / 10)) return;
    const inQuiet = quiet * 4 * Math.sin((Math.PI * middle) / frames.sampleRateHz) ** 2;
    const steps = total(frames.steps[b]!, from, to) - inQuiet;
    const ratio = Math.max(0, steps) / (energy - quiet);
    const tone = (frames.sampleRateHz / Math.PI) * Math.asin(Math.min(1, Math.sqrt(ratio) / 2));
    weights += energy - quiet;
    sum += (energy - quiet) * Math.log(Math.min(Math.max(tone, lowHz / 2), highHz * 1.5));
  });
  if (weights > 0) return Math.exp(sum / weights);
  const { lowHz, highHz } = frames.bands[0] as { lowHz: number; highHz: number };
  return Math.sqrt(lowHz * highHz);
}

/** Time to die away by 20 dB [ms], from the straight line through the levels while they fall. */
function decayOf({ frames, levels, count }: Stretch, onset: Onset, floor: number): number | null {
  const level = levels.levelsDb[onset.band]!;
  const peak = level[onset.frame]!;
  const last = Math.min(count, onset.frame + Math.round(DECAY_SECONDS / frames.hopSeconds));
  let end = onset.frame + 1;
  while (end < last && level[end]! > floor + DECAY_END_DB) end++;
  const n = end - onset.frame;
  if (n < 4 || peak - level[end - 1]! < LEAST_DECAY_DB) return null;
  let moment = 0;
  let spread = 0;
  for (let i = 0; i < n; i++) {
    const x = i - (n - 1) / 2;
    moment += x * level[onset.frame + i]!;
    spread += x * x;
  }
  const dbPerFrame = moment / spread;
  return dbPerFrame < 0 ? (-20 / dbPerFrame) * frames.hopSeconds * 1000 : null;
}

function greatest(values: Float64Array, from: number, to: number): number {
  let most = 0;
  for (let i = from; i < to; i++) most = Math.max(most, values[i]!);
  return most;
}

function total(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i]!;
  return sum;
}

/** A stretch of sound with its quiet level, and the part of it in which to look. */
export interface Stretch {
  readonly frames: SoundFrames;
  readonly levels: QuietLevels;
  /** Pieces in use. */
  readonly count: number;
  /** First piece to look at, and the first not to. */
  readonly from: number;
  readonly to: number;
  /** When piece 0 began [s]. */
  readonly startSeconds: number;
}

/** Where a sound is loudest within a few ms of its onset. */
export interface Onset {
  readonly frame: number;
  readonly band: number;
}

/** The second that holds a piece; the last one when it lies in the rest after it. */
export function secondAt({ floorsDb, secondFrames }: QuietLevels, i: number): number {
  return Math.min(Math.floor(i / secondFrames), floorsDb[0]!.length - 1);
}

/**
 * Quiet level of a band just before a piece [dB]: the lower one of its second and the second before,
 * so that a noise that begins is not measured against itself.
 */
export function quietBefore(levels: QuietLevels, band: number, i: number): number {
  const floors = levels.floorsDb[band]!;
  const second = secondAt(levels, i);
  return Math.min(floors[second]!, floors[Math.max(0, second - 1)]!);
}

/** The quiet level of one band and what stands out of it, second by second. */
export interface QuietLevels {
  /** Loudness of each piece, over it and the next [dB, full scale 0]. */
  readonly levelsDb: readonly Float64Array[];
  /** Quiet level of each band in each second [dB]. */
  readonly floorsDb: readonly Float64Array[];
  /** How far a click must stand out of it [dB]. */
  readonly thresholdsDb: readonly Float64Array[];
  /** Pieces in a second. */
  readonly secondFrames: number;
}

/** Threshold in units of the scatter (median absolute deviation); our own choice, see the tests. */
export const SCATTER_FACTOR = 6.5;

/** However even the quiet level, a click stands out by this [dB]; our own choice. */
export const LEAST_THRESHOLD_DB = 9;

/**
 * The quiet level: in each band, the median loudness of a second, then the median of those over
 * some seconds about it, so that clicks and words do not lift it. The threshold is the scatter
 * about it (median absolute deviation, treated alike) times {@link SCATTER_FACTOR}.
 *
 * @param count Pieces in use.
 * @param leastEnergy Mean square that the samples themselves cannot go below (their rounding).
 */
export function quietLevels(
  frames: SoundFrames,
  count: number,
  using: { readonly settings: PingSettings; readonly leastEnergy: number },
): QuietLevels {
  const secondFrames = framesInSecond(frames.hopSeconds);
  const around = Math.max(1, Math.round(using.settings.floorSeconds / 2));
  const bands = frames.energies.map((energies, b) => {
    const band = frames.bands[b] as { lowHz: number; highHz: number };
    const share = (band.highHz - band.lowHz) / (frames.sampleRateHz / 2);
    const levels = levelsOf(energies, count, using.leastEnergy * share);
    const seconds = secondsOf(levels, secondFrames);
    const floors = smoothed(seconds.medians, around);
    const scatters = smoothed(seconds.scatters, around);
    const thresholds = scatters.map(
      (scatter) =>
        using.settings.thresholdDb ?? Math.max(LEAST_THRESHOLD_DB, SCATTER_FACTOR * scatter),
    );
    return { levels, floors, thresholds };
  });
  return {
    levelsDb: bands.map(({ levels }) => levels),
    floorsDb: bands.map(({ floors }) => floors),
    thresholdsDb: bands.map(({ thresholds }) => thresholds),
    secondFrames,
  };
}

/** Pieces in a second, to the nearest whole one. */
export function framesInSecond(hopSeconds: number): number {
  return Math.round(1 / hopSeconds);
}

function levelsOf(energies: Float64Array, count: number, least: number): Float64Array {
  const levels = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const next = energies[Math.min(i + 1, count - 1)]!;
    levels[i] = 10 * Math.log10((energies[i]! + next) / 2 + least);
  }
  return levels;
}

function secondsOf(levels: Float64Array, secondFrames: number) {
  const count = Math.max(1, Math.floor(levels.length / secondFrames));
  const medians = new Float64Array(count);
  const scatters = new Float64Array(count);
  for (let s = 0; s < count; s++) {
    const piece = levels.slice(s * secondFrames, (s + 1) * secondFrames);
    const middle = medianInPlace(piece);
    medians[s] = middle;
    scatters[s] = medianInPlace(piece.map((level) => Math.abs(level - middle)));
  }
  return { medians, scatters };
}

/** Running median over so many values to either side, fewer at the ends. */
function smoothed(values: Float64Array, around: number): Float64Array {
  return values.map((_, i) => medianInPlace(values.slice(Math.max(0, i - around), i + around + 1)));
}
