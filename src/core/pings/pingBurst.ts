import { seededEven } from "../ware/seededEven.ts";
import { fitOmori } from "./fitOmori.ts";
import { omoriShare } from "./omoriLaw.ts";

/** A time in which far more clicks came than their thinning out explains. */
export interface PingBurst {
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly count: number;
  /** Clicks that the law of the whole recording expects in it. */
  readonly expected: number;
}

/** With fewer clicks a burst and chance cannot be told apart; our own choice. */
const FEWEST = 20;

/** It begins after this share of the clicks, else it is the beginning itself. */
const AFTER_SHARE = 0.1;

/** A burst has this share of the clicks at most. */
const MOST_SHARE = 0.5;

/** Made-up even catalogues that it must beat, all of them: one chance in two hundred. */
const CATALOGUES = 199;

/** Clicks are taken together in this many steps at most, to keep the work small. */
const STEPS = 150;

/**
 * The clearest second burst, or null.
 * The law fitted to the whole stretches time so that the clicks would fall evenly; then every
 * window is weighed by how much likelier its count is with a rate of its own, and the best window
 * must beat the best of every seeded even catalogue. A burst bends the fitted law towards itself,
 * so that weak ones are missed rather than made up.
 */
export function pingBurst(times: readonly number[], seconds: number): PingBurst | null {
  if (times.length < FEWEST) return null;
  const law = fitOmori(times, seconds);
  const places = times.map((time) => omoriShare(law, time, seconds));
  const found = densest(places);
  if (found === null) return null;
  const even = seededEven(2 * times.length + 1);
  for (let i = 0; i < CATALOGUES; i++) {
    const made = Array.from({ length: times.length }, () => even()).sort((a, b) => a - b);
    if ((densest(made)?.weight ?? 0) >= found.weight) return null;
  }
  const { first, last } = found;
  return {
    fromSeconds: times[first]!,
    toSeconds: times[last]!,
    count: last - first + 1,
    expected: times.length * (places[last]! - places[first]!),
  };
}

interface Window {
  readonly first: number;
  readonly last: number;
  readonly weight: number;
}

/** The window of places in 0 to 1 whose count is likeliest to have a rate of its own. */
function densest(places: readonly number[]): Window | null {
  const step = Math.max(1, Math.ceil(places.length / STEPS));
  let best: Window | null = null;
  for (let first = Math.ceil(AFTER_SHARE * places.length); first < places.length; first += step)
    for (
      let last = first + Math.max(4, step);
      last < Math.min(places.length, first + MOST_SHARE * places.length);
      last += step
    ) {
      const width = places[last]! - places[first]!;
      const weight = weightOf((last - first) / places.length, width) * places.length;
      if (weight > (best?.weight ?? 0)) best = { first, last, weight };
    }
  return best;
}

/** Log of the likelihood ratio of a click, for a share of the clicks in a share of the time. */
function weightOf(clicks: number, time: number): number {
  if (clicks <= time) return 0;
  const width = Math.max(time, 1e-9);
  return clicks * Math.log(clicks / width) + (1 - clicks) * Math.log((1 - clicks) / (1 - width));
}
