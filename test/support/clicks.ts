import { seededEven, seededNormal } from "../../src/core/math/distributions.ts";
import { listener } from "../../src/core/pings/listener.ts";
import { type PingSettings, USUAL_SETTINGS } from "../../src/core/pings/Ping.ts";

/** A decaying click as it is put into a sound. */
export interface MadeClick {
  readonly atSeconds: number;
  readonly pitchHz: number;
  /** Greatest value, full scale 1. */
  readonly peak: number;
  /** Time in which it dies away by a factor e [s]. */
  readonly dyingSeconds: number;
}

/** A sound of so many seconds, silent. */
export function silence(seconds: number, sampleRateHz: number): Float64Array {
  return new Float64Array(Math.round(seconds * sampleRateHz));
}

/** Adds decaying tones, each starting at once. */
export function addClicks(
  sound: Float64Array,
  sampleRateHz: number,
  clicks: readonly MadeClick[],
): void {
  for (const { atSeconds, pitchHz, peak, dyingSeconds } of clicks) {
    const first = Math.ceil(atSeconds * sampleRateHz);
    const last = Math.min(sound.length, first + Math.ceil(10 * dyingSeconds * sampleRateHz));
    for (let i = first; i < last; i++) {
      const t = i / sampleRateHz - atSeconds;
      sound[i] =
        (sound[i] as number) +
        peak * Math.exp(-t / dyingSeconds) * Math.sin(2 * Math.PI * pitchHz * t);
    }
  }
}

/** Adds mains hum with eight harmonics, the n-th 1/n as strong. */
export function addHum(
  sound: Float64Array,
  sampleRateHz: number,
  { mainsHz, peak }: { readonly mainsHz: 50 | 60; readonly peak: number },
): void {
  const period = Float64Array.from({ length: humPeriod(sampleRateHz, mainsHz) }, (_, i) => {
    let value = 0;
    for (let n = 1; n <= 8; n++)
      value += (peak / n) * Math.sin((2 * Math.PI * n * mainsHz * i) / sampleRateHz + n);
    return value;
  });
  for (let i = 0; i < sound.length; i++)
    sound[i] = (sound[i] as number) + (period[i % period.length] as number);
}

/** Samples after which hum comes again to the last digit: the rate over what both have in common. */
function humPeriod(sampleRateHz: number, mainsHz: number): number {
  let [a, b] = [sampleRateHz, mainsHz];
  while (b > 0) [a, b] = [b, a % b];
  return sampleRateHz / a;
}

/** Adds even (white) noise of a root mean square. */
export function addHiss(sound: Float64Array, rms: number, seed: number): void {
  const normal = seededNormal(seed);
  for (let i = 0; i < sound.length; i++) sound[i] = (sound[i] as number) + rms * normal();
}

/** Adds pink noise of about a root mean square: white noise through six first-order filters (P. Kellet). */
export function addPink(sound: Float64Array, rms: number, seed: number): void {
  const normal = seededNormal(seed);
  const poles = [0.99886, 0.99332, 0.969, 0.8665, 0.55, -0.7616];
  const gains = [0.0555179, 0.0750759, 0.153852, 0.3104856, 0.5329522, -0.016898];
  const state = new Float64Array(6);
  for (let i = 0; i < sound.length; i++) {
    const white = normal();
    let sum = white * 0.5362;
    for (let k = 0; k < 6; k++) {
      state[k] = (poles[k] as number) * (state[k] as number) + (gains[k] as number) * white;
      sum += state[k] as number;
    }
    sound[i] = (sound[i] as number) + (rms / 2.2) * sum;
  }
}

/** Adds a fan: noise whose loudness goes up and down by a third with the blades. */
export function addFan(
  sound: Float64Array,
  sampleRateHz: number,
  { rms, seed }: { readonly rms: number; readonly seed: number },
): void {
  const normal = seededNormal(seed);
  let slow = 0;
  for (let i = 0; i < sound.length; i++) {
    slow += 0.15 * (normal() - slow);
    const blades = 1 + 0.33 * Math.sin((2 * Math.PI * 23 * i) / sampleRateHz);
    sound[i] = (sound[i] as number) + rms * 3.5 * slow * blades;
  }
}

/** Adds what has the shape of speech: syllables of a buzz with three formants, swelling in 25 ms. */
export function addSpeech(
  sound: Float64Array,
  sampleRateHz: number,
  given: {
    readonly from: number;
    readonly to: number;
    readonly peak: number;
    readonly seed: number;
  },
): void {
  const even = seededEven(given.seed);
  let at = given.from;
  while (at < given.to) {
    const length = 0.12 + 0.12 * even();
    const voice = 100 + 60 * even();
    const formants = [400 + 400 * even(), 1100 + 900 * even(), 2300 + 600 * even()];
    for (let i = Math.ceil(at * sampleRateHz); i < (at + length) * sampleRateHz; i++) {
      if (i >= sound.length) return;
      const t = i / sampleRateHz - at;
      const swell = Math.min(1, t / 0.025, (length - t) / 0.04);
      const pulse = ((t * voice) % 1) / voice;
      let value = 0;
      formants.forEach((hz, n) => {
        value += (Math.exp(-pulse * 300) * Math.sin(2 * Math.PI * hz * pulse)) / (n + 1);
      });
      sound[i] = (sound[i] as number) + given.peak * 0.6 * swell * value;
    }
    at += length + 0.05 + 0.1 * even();
  }
}

/** Clicks at seeded times at least so far apart, their pitch and dying time from lists in turn. */
export function clicksAt(given: {
  readonly count: number;
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly apartSeconds: number;
  readonly peak: number;
  readonly pitchesHz: readonly number[];
  readonly seed: number;
}): readonly MadeClick[] {
  const even = seededEven(given.seed);
  const free = given.toSeconds - given.fromSeconds - given.apartSeconds * given.count;
  if (free <= 0) throw new RangeError("clicksAt: no room");
  return Array.from({ length: given.count }, () => even() * free)
    .sort((a, b) => a - b)
    .map((t, i) => ({
      atSeconds: given.fromSeconds + t + i * given.apartSeconds,
      pitchHz: given.pitchesHz[i % given.pitchesHz.length] as number,
      peak: given.peak,
      dyingSeconds: 0.004 + 0.008 * even(),
    }));
}

/** A sound as heard in blocks of so many samples. */
export function heard(
  sound: Float64Array,
  sampleRateHz: number,
  settings: PingSettings = USUAL_SETTINGS,
  block = 7000,
) {
  const ear = listener({ sampleRateHz, leastEnergy: 1e-11, settings });
  for (let i = 0; i < sound.length; i += block) ear.push(sound.subarray(i, i + block));
  return ear.finish();
}

/** How many of the made clicks were heard, how many of the heard ones were made, and the worst time [s]. */
export function scored(
  made: readonly MadeClick[],
  found: readonly { readonly atSeconds: number }[],
  withinSeconds = 0.01,
): { readonly recall: number; readonly precision: number; readonly worstSeconds: number } {
  const nearest = (at: number, times: readonly number[]) =>
    times.reduce((least, time) => Math.min(least, Math.abs(time - at)), Number.POSITIVE_INFINITY);
  const madeTimes = made.map((click) => click.atSeconds);
  const foundTimes = found.map((ping) => ping.atSeconds);
  const off = madeTimes.map((at) => nearest(at, foundTimes));
  const hits = off.filter((each) => each <= withinSeconds);
  const right = foundTimes.filter((at) => nearest(at, madeTimes) <= withinSeconds);
  return {
    recall: hits.length / made.length,
    precision: found.length === 0 ? 1 : right.length / found.length,
    worstSeconds: Math.max(0, ...hits),
  };
}
