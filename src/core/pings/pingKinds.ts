import { seededEven } from "../math/distributions.ts";
import { fitOmori, omoriShare } from "./omoriLaw.ts";
import type { Ping } from "./Ping.ts";

/** One group of pings by the height of their tone. */
interface PingKind {
  readonly count: number;
  /** Which pings, by their place in the list. */
  readonly members: readonly number[];
  /** Middle of the tones [Hz], and by what factor they scatter (one sigma). */
  readonly pitchHz: number;
  readonly pitchFactor: number;
  /** Mean loudness over the quiet level [dB]. */
  readonly overFloorDb: number;
}

/** Deep and light pings, told apart only as far as their tones allow. */
export interface PingKinds {
  /** One kind, or the deep and the light. */
  readonly kinds: readonly PingKind[];
  /** By how much two groups explain the tones better than one, the cost of more numbers paid (BIC); null when there are too few. */
  readonly evidence: number | null;
  /** Distance of the groups in units of their scatter (Ashman's D); null as well. */
  readonly separation: number | null;
  /** Of two kinds, the share that would fall in the wrong one; null for one kind. */
  readonly mixedShare: number | null;
}

/** Fewer pings are never split; our own choice. */
const FEWEST_FOR_KINDS = 20;

/** BIC difference called very strong, and the separation asked of groups; see the sources of pings. */
const STRONG_EVIDENCE = 10;
const CLEAR_SEPARATION = 2;

/** A group holds this share of the pings at least; our own choice. */
const LEAST_SHARE = 0.1;

/** Narrowest scatter of a group in octaves, so that a few equal tones are no group for that alone. */
const LEAST_SIGMA = 0.05;

interface Group {
  readonly weight: number;
  readonly mean: number;
  readonly sigma: number;
}

/** Splits pings by tone when two bell curves explain the logarithms of the tones far better than one. */
export function pingKinds(pings: readonly Ping[]): PingKinds {
  const octaves = pings.map(({ pitchHz }) => Math.log2(pitchHz));
  const all = pings.map((_, i) => i);
  if (pings.length < FEWEST_FOR_KINDS)
    return { kinds: kindOf(pings, all), evidence: null, separation: null, mixedShare: null };
  const one = [groupOf(octaves, () => 1)];
  const two = fitTwo(octaves);
  const evidence = 2 * (logOf(octaves, two) - logOf(octaves, one)) - 3 * Math.log(octaves.length);
  const [deep, light] = two as readonly [Group, Group];
  const separation = (Math.SQRT2 * (light.mean - deep.mean)) / Math.hypot(light.sigma, deep.sigma);
  const isSplit =
    evidence > STRONG_EVIDENCE &&
    separation > CLEAR_SEPARATION &&
    Math.min(deep.weight, light.weight) >= LEAST_SHARE;
  if (!isSplit) return { kinds: kindOf(pings, all), evidence, separation, mixedShare: null };
  const shares = octaves.map((octave) => shareOfSecond(octave, two));
  const mixedShare =
    shares.reduce((sum, share) => sum + Math.min(share, 1 - share), 0) / shares.length;
  const split = [all.filter((i) => shares[i]! < 0.5), all.filter((i) => shares[i]! >= 0.5)];
  return {
    kinds: split.flatMap((members) => kindOf(pings, members)),
    evidence,
    separation,
    mixedShare,
  };
}

function kindOf(pings: readonly Ping[], members: readonly number[]): readonly PingKind[] {
  if (members.length === 0) return [];
  const own = members.map((i) => pings[i]!);
  const group = groupOf(
    own.map(({ pitchHz }) => Math.log2(pitchHz)),
    () => 1,
  );
  return [
    {
      count: own.length,
      members,
      pitchHz: 2 ** group.mean,
      pitchFactor: 2 ** group.sigma,
      overFloorDb: own.reduce((sum, ping) => sum + ping.overFloorDb, 0) / own.length,
    },
  ];
}

/** Two bell curves by expectation and maximisation, begun from the lower and the upper half. */
function fitTwo(values: readonly number[]): readonly Group[] {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = (sorted[0]! + sorted.at(-1)!) / 2;
  let groups: readonly Group[] = [
    groupOf(values, (value) => (value < middle ? 0.9 : 0.1)),
    groupOf(values, (value) => (value < middle ? 0.1 : 0.9)),
  ];
  for (let turn = 0; turn < 200; turn++) {
    const held = groups;
    groups = [
      groupOf(values, (value) => 1 - shareOfSecond(value, held)),
      groupOf(values, (value) => shareOfSecond(value, held)),
    ];
  }
  return groups.toSorted((a, b) => a.mean - b.mean);
}

function groupOf(values: readonly number[], weightOf: (value: number) => number): Group {
  let total = 1e-12;
  let sum = 0;
  for (const value of values) {
    total += weightOf(value);
    sum += weightOf(value) * value;
  }
  const mean = sum / total;
  const squares = values.reduce((all, value) => all + weightOf(value) * (value - mean) ** 2, 0);
  return {
    weight: total / values.length,
    mean,
    sigma: Math.max(LEAST_SIGMA, Math.sqrt(squares / total)),
  };
}

function density({ weight, mean, sigma }: Group, value: number): number {
  return (
    (weight * Math.exp(-((value - mean) ** 2) / (2 * sigma ** 2))) /
    (sigma * Math.sqrt(2 * Math.PI))
  );
}

function shareOfSecond(value: number, [first, second]: readonly Group[]): number {
  const a = density(first as Group, value);
  const b = density(second as Group, value);
  return a + b === 0 ? 0.5 : b / (a + b);
}

function logOf(values: readonly number[], groups: readonly Group[]): number {
  return values.reduce(
    (sum, value) =>
      sum + Math.log(groups.reduce((all, group) => all + density(group, value), 0) + 1e-300),
    0,
  );
}

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
