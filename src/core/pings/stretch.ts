import type { QuietLevels } from "./quietLevels.ts";
import type { SoundFrames } from "./soundFrames.ts";

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
