import {
  measuredPing,
  type Onset,
  type OtherSounds,
  type Ping,
  type PingSettings,
  quietBefore,
  type Stretch,
  secondAt,
} from "./Ping.ts";

/** What was heard in a stretch. */
export interface Clicks {
  readonly pings: readonly Ping[];
  readonly others: OtherSounds;
}

/** Times about an onset, all our own choices, tried on made-up sounds. */
const ATTACK_FROM_SECONDS = 0.02;
const ATTACK_TO_SECONDS = 0.006;
const PEAK_SECONDS = 0.008;
const GONE_FROM_SECONDS = 0.06;
const GONE_TO_SECONDS = 0.26;
/** A click is this much quieter once within that time, or as good as gone [dB]. */
const GONE_DB = 8;
const AS_GOOD_AS_GONE_DB = 4;
/** A thud at least doubles what is below the bands, hum and all, and has this many times the energy of the bands. */
const THUD_SECONDS = 0.04;
const THUD_RISE = 2;
const THUD_TIMES = 4;
const AROUND_SECONDS = 0.5;
const OWN_SECONDS = 0.12;
/** Noise about: this share of the pieces within half a second stands out by so much [dB]. */
const NOISY_SHARE = 0.3;
const NOISY_DB = 6;

type Verdict = "ping" | keyof OtherSounds;

/** Clicks in a stretch of sound: what starts at once, stands out, dies away, and has quiet about it. */
export function clicksIn(stretch: Stretch, settings: PingSettings): Clicks {
  const { hopSeconds } = stretch.frames;
  const apart = Math.max(1, Math.round(settings.apartSeconds / hopSeconds));
  const pings: Ping[] = [];
  const others = { slow: 0, lasting: 0, thuds: 0, amongNoise: 0 };
  let lastLoud = Number.NEGATIVE_INFINITY;
  for (let i = stretch.from; i < stretch.to; i++) {
    const band = loudestOver(stretch, i);
    if (band === null) continue;
    const isNew = i - lastLoud > apart;
    lastLoud = i;
    if (riseDb(stretch, band, i) < settings.attackDb) {
      if (isNew) others.slow += 1;
      continue;
    }
    const onset = peakNear(stretch, i);
    const verdict = judged(stretch, onset);
    if (verdict === "ping") pings.push(measuredPing(stretch, onset));
    else others[verdict] += 1;
    i = Math.max(i, onset.frame) + apart - 1;
    lastLoud = i;
  }
  return { pings, others };
}

/** The band in which a piece stands out most over its threshold; null when in none. */
function loudestOver({ levels }: Stretch, i: number): number | null {
  const second = secondAt(levels, i);
  let best: number | null = null;
  let most = 0;
  for (let b = 0; b < levels.levelsDb.length; b++) {
    const over =
      (levels.levelsDb[b]?.[i] as number) -
      (levels.floorsDb[b]?.[second] as number) -
      (levels.thresholdsDb[b]?.[second] as number);
    if (over > most) {
      most = over;
      best = b;
    }
  }
  return best;
}

/** How much louder a band is than shortly before [dB]. */
function riseDb({ frames, levels, count }: Stretch, band: number, i: number): number {
  const from = Math.max(0, i - Math.round(ATTACK_FROM_SECONDS / frames.hopSeconds));
  const to = i - Math.round(ATTACK_TO_SECONDS / frames.hopSeconds);
  const energies = frames.energies[band]!;
  const level = levels.levelsDb[band]!;
  const ahead = Math.min(count - 1, i + 2);
  let now = level[i]!;
  for (let j = i + 1; j <= ahead; j++) now = Math.max(now, level[j]!);
  if (to <= from) return now - (levels.floorsDb[band]?.[0] as number);
  const before = Math.max(
    10 * Math.log10(mean(energies, from, to) + 1e-30),
    quietBefore(levels, band, i),
  );
  return now - before;
}

function peakNear(stretch: Stretch, i: number): Onset {
  const { levels, frames, count } = stretch;
  const to = Math.min(count - 1, i + Math.round(PEAK_SECONDS / frames.hopSeconds));
  let best = { frame: i, band: 0 };
  let most = Number.NEGATIVE_INFINITY;
  for (let b = 0; b < levels.levelsDb.length; b++)
    for (let j = i; j <= to; j++) {
      const over = (levels.levelsDb[b]?.[j] as number) - quietBefore(levels, b, i);
      if (over > most) {
        most = over;
        best = { frame: j, band: b };
      }
    }
  return best;
}

function judged(stretch: Stretch, onset: Onset): Verdict {
  if (isThud(stretch, onset)) return "thuds";
  if (!diesAway(stretch, onset)) return "lasting";
  return noisyShare(stretch, onset) > NOISY_SHARE ? "amongNoise" : "ping";
}

function isThud({ frames, count }: Stretch, { frame }: Onset): boolean {
  const wide = Math.round(THUD_SECONDS / frames.hopSeconds);
  const to = Math.min(count, frame + wide);
  const before = Math.max(0, frame - 5 * wide);
  const gain = (energies: Float64Array) => {
    const usual = mean(energies, before, Math.max(before + 1, frame - 3));
    const now = mean(energies, frame, to);
    return now > THUD_RISE * usual ? now - usual : 0;
  };
  const inBands = frames.energies.reduce((sum, energies) => sum + gain(energies), 0);
  return gain(frames.low) > THUD_TIMES * inBands;
}

function diesAway({ frames, levels, count }: Stretch, { frame, band }: Onset): boolean {
  const energies = frames.energies[band]!;
  const step = Math.round(0.02 / frames.hopSeconds);
  const last = Math.min(count, frame + Math.round(GONE_TO_SECONDS / frames.hopSeconds));
  const floor = quietBefore(levels, band, frame);
  const gone = Math.max(
    (levels.levelsDb[band]?.[frame] as number) - GONE_DB,
    floor + AS_GOOD_AS_GONE_DB,
  );
  for (
    let i = frame + Math.round(GONE_FROM_SECONDS / frames.hopSeconds);
    i + step <= last;
    i += step
  )
    if (10 * Math.log10(mean(energies, i, i + step) + 1e-30) <= gone) return true;
  // The recording ends before it could die away: the doubt is in its favour.
  return last === count;
}

/** Share of the pieces within half a second that stand out in the bands where voices are. */
function noisyShare({ levels, frames, count }: Stretch, { frame }: Onset): number {
  const around = Math.round(AROUND_SECONDS / frames.hopSeconds);
  const own = Math.round(OWN_SECONDS / frames.hopSeconds);
  const voices = levels.levelsDb
    .slice(0, 2)
    .map((level, b) => ({ level, loud: quietBefore(levels, b, frame) + NOISY_DB }));
  let noisy = 0;
  let seen = 0;
  for (let i = Math.max(0, frame - around); i < Math.min(count, frame + own + around); i++) {
    if (i >= frame - 3 && i < frame + own) continue;
    seen++;
    if (voices.some(({ level, loud }) => level[i]! > loud)) noisy++;
  }
  return seen === 0 ? 0 : noisy / seen;
}

function mean(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i]!;
  return sum / Math.max(1, to - from);
}
