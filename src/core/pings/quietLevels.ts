import { medianInPlace } from "../curve/median.ts";
import type { PingSettings } from "./Ping.ts";
import type { SoundFrames } from "./soundFrames.ts";

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
