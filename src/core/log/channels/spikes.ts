import { median } from "../statistics.ts";

/** Readings to each side that make the local line. */
const REACH = 5;
/**
 * Standard deviations off the line, by the median of absolute deviations. Hampel's usual three drops
 * true readings of a lively kiln; a true reading lost costs more than a small spike kept.
 */
const LIMIT = 5 * 1.4826;
/** Near the ends of a log the line is only known on one side, and the limit is as much wider. */
const END_TIMES = 2;
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
    const [before, here, after] = [temps[i - 1], temps[i], temps[i + 1]] as [
      number,
      number,
      number,
    ];
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
    if (Math.abs((temps[i] as number) - (temps[i - 1] as number)) <= floor / 2) continue;
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
  const slopes: number[] = [];
  for (let i = from; i < to; i++)
    for (let k = i + 1; k < to; k++)
      slopes.push(
        ((temps[k] as number) - (temps[i] as number)) /
          ((times[k] as number) - (times[i] as number)),
      );
  const slope = median(slopes);
  const origin = times[at] as number;
  const offs: number[] = [];
  for (let i = from; i < to; i++)
    offs.push((temps[i] as number) - slope * ((times[i] as number) - origin));
  const middle = median(offs);
  const spread = median(offs.map((off) => Math.abs(off - middle)));
  const departure = Math.abs((temps[at] as number) - middle);
  const isAtEnd = at < 3 || at >= temps.length - 3;
  const limit = Math.max(LIMIT * spread, floor) * (isAtEnd ? END_TIMES : 1);
  return departure > limit && isAlone(temps, at, departure);
}

/** A spike comes back: on at least one side of it, within three readings, lies a way home. */
function isAlone(temps: Float64Array, at: number, departure: number): boolean {
  const here = temps[at] as number;
  const comesBack = (step: 1 | -1) => {
    for (let k = 1; k <= 3; k++) {
      const other = temps[at + step * k];
      if (other === undefined) return true;
      if (Math.abs(other - here) > departure / 2) return true;
    }
    return false;
  };
  return comesBack(1) && comesBack(-1);
}
