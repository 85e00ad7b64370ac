import type { Ping } from "./Ping.ts";
import { type Onset, quietBefore, type Stretch } from "./stretch.ts";

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
