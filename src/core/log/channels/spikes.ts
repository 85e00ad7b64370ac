import { median } from "../../math/statistics.ts";

/** Readings to each side that make the local line. */
const REACH = 5;
/**
 * Standard deviations off the line, by the median of absolute deviations. Hampel's usual three drops
 * true readings of a lively kiln; a true reading lost costs more than a small spike kept.
 */
const LIMIT = 5 * 1.4826;
/** Near the ends of a log the line is only known on one side, and the limit is as much wider. */
const END_TIMES = 2;
/** The first or last reading of all has only one neighbour: it must leave by this many usual steps. Own choice. */
const LAST_TIMES = 5;
/** Least departure worth the name [K]; below it no result of a firing changes. */
const LEAST_K = 5;
/** Least departure from the line that is called a spike, in usual second differences, and in digits. */
const NOISE_TIMES = 8;
const DIGITS = 4;

/**
 * Indices of readings far off the line of their neighbours: a Hampel identifier on the robust local
 * line (Theil–Sen), floored at the resolution and at the channel's own noise, so that quantised
 * holds and lively channels lose nothing.
 */
export function findSpikes(times: Float64Array, temps: Float64Array): readonly number[] {
  if (temps.length < 2 * REACH + 1) return [];
  const floor = departureFloor(temps);
  const spikes: number[] = [];
  for (const at of suspects(temps, floor))
    if (isSpike(times, temps, { at, floor })) spikes.push(at);
  return spikes;
}

function departureFloor(temps: Float64Array): number {
  const bends: number[] = [];
  let resolution = Number.POSITIVE_INFINITY;
  const stride = Math.max(1, Math.floor(temps.length / 5000));
  for (let i = 1; i + 1 < temps.length; i += stride) {
    const before = temps[i - 1]!;
    const here = temps[i]!;
    const after = temps[i + 1]!;
    bends.push(Math.abs(here - (before + after) / 2));
    const step = Math.abs(here - before);
    if (step > 1e-9 && step < resolution) resolution = step;
  }
  const coarse = Number.isFinite(resolution) ? resolution : 0;
  return Math.max(NOISE_TIMES * median(bends), DIGITS * Math.min(coarse, 2), LEAST_K);
}

/** Readings near a step that is larger than the floor; the others need no look. */
function suspects(temps: Float64Array, floor: number): readonly number[] {
  const found: number[] = [];
  let next = 0;
  for (let i = 1; i < temps.length; i++) {
    if (Math.abs(temps[i]! - temps[i - 1]!) <= floor / 2) continue;
    const to = Math.min(temps.length - 1, i + 2);
    for (let k = Math.max(next, i - 3); k <= to; k++) found.push(k);
    next = Math.max(next, to + 1);
  }
  return found;
}

function isSpike(
  times: Float64Array,
  temps: Float64Array,
  { at, floor }: { readonly at: number; readonly floor: number },
): boolean {
  const from = Math.max(0, Math.min(at - REACH, temps.length - 2 * REACH - 1));
  const to = from + 2 * REACH + 1;
  if (isBesideGap(times.subarray(from, to), at - from)) return false;
  const slopes: number[] = [];
  for (let i = from; i < to; i++)
    for (let k = i + 1; k < to; k++) slopes.push((temps[k]! - temps[i]!) / (times[k]! - times[i]!));
  const slope = median(slopes);
  const origin = times[at]!;
  const offs: number[] = [];
  for (let i = from; i < to; i++) offs.push(temps[i]! - slope * (times[i]! - origin));
  const middle = median(offs);
  const spread = median(offs.map((off) => Math.abs(off - middle)));
  const departures = offs.map((off) => off - middle);
  const here = at - from;
  const departure = Math.abs(departures[here]!);
  const isAtEnd = at < 3 || at >= temps.length - 3;
  const limit = Math.max(LIMIT * spread, floor) * (isAtEnd ? END_TIMES : 1);
  if (departure <= limit || !comesHome(departures, here)) return false;
  const isLast = at === 0 || at === temps.length - 1;
  return isLast
    ? departure > LAST_TIMES * largestStep(temps, { at, from, to })
    : isSudden(times.subarray(from, to), departures, here);
}

/** A time step of this many usual ones is a gap, across which no line is known. Own choice. */
const GAP_TIMES = 8;
/** Fewest readings of the stretch between two gaps by which one of them can be judged. Own choice. */
const LEAST_STRETCH = 6;

/** Whether too few readings lie on a reading's own side of the gaps about it to judge it by. */
function isBesideGap(times: Float64Array, at: number): boolean {
  const steps = times.subarray(1).map((time, i) => time - times[i]!);
  const most = GAP_TIMES * median(steps);
  let stretch = 1;
  for (let i = at; i < steps.length && steps[i]! <= most; i++) stretch++;
  for (let i = at - 1; i >= 0 && steps[i]! <= most; i--) stretch++;
  return stretch < Math.min(LEAST_STRETCH, times.length);
}

/**
 * A spike comes back: on each side of it that the log has, within three readings, lies a way home.
 * Where the rate of a firing changes, the readings only go further off.
 */
function comesHome(departures: readonly number[], at: number): boolean {
  const here = departures[at]!;
  const comesBack = (step: 1 | -1) => {
    for (let k = 1; k <= 3; k++) {
      const other = departures[at + step * k];
      if (other === undefined) return true;
      if ((here - other) * Math.sign(here) > Math.abs(here) / 2) return true;
    }
    return false;
  };
  return comesBack(1) && comesBack(-1);
}

/** Largest step between the readings about one, without those to and from it. */
function largestStep(
  temps: Float64Array,
  { at, from, to }: { readonly at: number; readonly from: number; readonly to: number },
): number {
  let most = 0;
  for (let i = from + 1; i < to; i++) {
    const step = Math.abs(temps[i]! - temps[i - 1]!);
    if (i !== at && i - 1 !== at && step > most) most = step;
  }
  return most;
}

/** Share of a spike's departure that one step near it makes at least, beyond the slope there; at the turn of a firing none does. */
const SUDDEN_SHARE = 0.7;

/** A spike is left or reached in one step; a sharp peak in a coarse log is climbed in several. */
function isSudden(times: Float64Array, departures: readonly number[], at: number): boolean {
  const from = Math.max(1, at - 2);
  const to = Math.min(departures.length - 1, at + 3);
  const least = SUDDEN_SHARE * Math.abs(departures[at]!);
  const spans: number[] = [];
  for (let i = from; i <= to; i++) spans.push(times[i]! - times[i - 1]!);
  const usual = Math.min(...spans);
  return spans.some((span, k) => {
    const step = departures[from + k]! - departures[from + k - 1]!;
    // Where readings are lacking, a large step is no sudden one.
    return span < 2 * usual && Math.abs(step) > least;
  });
}
