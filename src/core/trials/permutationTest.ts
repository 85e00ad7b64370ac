import { seededEven } from "../math/distributions.ts";
import { basisOf, type DesignColumn, dot } from "../math/linearSystem.ts";

/** What comes of dealing labels anew. */
export interface LabelTest {
  /** Share of dealings that part the groups at least as far, this one among them. */
  readonly p: number;
  /** The least that p can come to with so few tiles. */
  readonly leastP: number;
  /** Different dealings there are. */
  readonly dealings: number;
  /** Dealings looked at: all of them, or so many drawn. */
  readonly looked: number;
}

/** Tiles of two groups. */
export interface LabelledTiles {
  /** How far each tile lies off what is expected without the groups. */
  readonly scores: readonly number[];
  /** True for tiles of one group, false for those of the other. */
  readonly labels: readonly boolean[];
  /** The firing of each tile; labels stay within it. */
  readonly firings: readonly string[];
  /** What the scores are free of besides their mean: coat, other groups. */
  readonly columns: readonly DesignColumn[];
}

/** So many dealings are looked at one by one; of more, so many are drawn. */
const ALL_UP_TO = 20_000;
const DRAWN = 4_999;

/** Differences below this share are the same: rounding. */
const SAME = 1e-9;

/**
 * Permutation test of a two-sided difference between two groups of tiles, labels dealt anew within
 * each firing. Exact over all dealings when they are few; else over seeded draws. Without columns it
 * keeps its size exactly; with them nearly so.
 *
 * @returns null when no firing has tiles of both groups.
 * @see SOURCES["good-2005"]
 */
export function labelTest(tiles: LabelledTiles, seed: number): LabelTest | null {
  const groups = firingsOf(tiles);
  const dealings = groups.reduce((all, group) => all * choices(group.places.length, group.ones), 1);
  if (dealings <= 1) return null;
  const basis = basisOf([tiles.labels.map(() => 1), ...tiles.columns]);
  const scores = freeOf(tiles.scores, basis);
  const parting = (label: readonly number[]) => partingOf(label, scores, basis);
  const found = parting(tiles.labels.map(Number)) * (1 - SAME);
  const isEven = groups.every(({ places, ones }) => 2 * ones === places.length);
  const leastOf = (isEven ? 2 : 1) / dealings;
  if (dealings <= ALL_UP_TO) {
    const as = countAll(groups, tiles.labels.length, (label) => parting(label) >= found);
    return { p: as / dealings, leastP: leastOf, dealings, looked: dealings };
  }
  const as = countDrawn(groups, tiles.labels, { seed, counts: (label) => parting(label) >= found });
  const p = (as + 1) / (DRAWN + 1);
  return { p, leastP: Math.max(leastOf, 1 / (DRAWN + 1)), dealings, looked: DRAWN + 1 };
}

/** How far labels part the scores, over how much of the labels the columns leave free. */
function partingOf(
  label: readonly number[],
  scores: readonly number[],
  basis: readonly DesignColumn[],
): number {
  let free = dot(label, label);
  for (const unit of basis) free -= dot(unit, label) ** 2;
  return free < SAME ? 0 : Math.abs(dot(label, scores)) / Math.sqrt(free);
}

/** Tiles of one firing, and how many of them have the label. */
interface OfFiring {
  readonly places: readonly number[];
  readonly ones: number;
}

function firingsOf({ firings, labels }: LabelledTiles): readonly OfFiring[] {
  return [...new Set(firings)].map((firing) => {
    const places = firings.flatMap((each, i) => (each === firing ? [i] : []));
    return { places, ones: places.filter((i) => labels[i]).length };
  });
}

/** Ways to choose k of n. */
function choices(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i++) ways = (ways * (n - k + i)) / i;
  return Math.round(ways);
}

function freeOf(values: readonly number[], basis: readonly DesignColumn[]): readonly number[] {
  const shares = basis.map((unit) => dot(unit, values));
  return values.map(
    (value, i) => value - basis.reduce((sum, unit, b) => sum + shares[b]! * unit[i]!, 0),
  );
}

function countAll(
  groups: readonly OfFiring[],
  tiles: number,
  counts: (label: readonly number[]) => boolean,
): number {
  const label = new Array<number>(tiles).fill(0);
  const deal = (at: number): number => {
    const group = groups[at];
    if (group === undefined) return counts(label) ? 1 : 0;
    return chosen(group.places, group.ones).reduce((sum, places) => {
      for (const place of places) label[place] = 1;
      const found = deal(at + 1);
      for (const place of places) label[place] = 0;
      return sum + found;
    }, 0);
  };
  return deal(0);
}

/** All ways to choose so many of some places. */
function chosen(places: readonly number[], count: number): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return places.flatMap((place, i) =>
    chosen(places.slice(i + 1), count - 1).map((rest) => [place, ...rest]),
  );
}

function countDrawn(
  groups: readonly OfFiring[],
  labels: readonly boolean[],
  {
    seed,
    counts,
  }: { readonly seed: number; readonly counts: (label: readonly number[]) => boolean },
): number {
  const even = seededEven(seed);
  const label = labels.map(Number);
  const mixed = groups.map(({ places }) => places);
  let as = 0;
  for (let draw = 0; draw < DRAWN; draw++) {
    for (const places of mixed)
      for (let i = places.length - 1; i > 0; i--) {
        const a = places[i]!;
        const b = places[Math.floor(even() * (i + 1))]!;
        const held = label[a]!;
        label[a] = label[b]!;
        label[b] = held;
      }
    if (counts(label)) as++;
  }
  return as;
}

/** Yes among the tiles of a group. */
export interface YesOf {
  readonly yes: number;
  readonly of: number;
}

/** Tables as likely as the one found, but for rounding. */
const ROUNDING = 1 + 1e-9;

/**
 * Fisher's exact test of two shares, two-sided: chance of a table at most as likely as the one
 * found when the yeses fall on the tiles at random. 8 of 8 against 0 of 8 gives 2/12870.
 *
 * @see SOURCES["fisher-1934"]
 */
export function fisherExact(one: YesOf, other: YesOf): number {
  const yes = one.yes + other.yes;
  const all = choices(one.of + other.of, yes);
  const chance = (inOne: number) => (choices(one.of, inOne) * choices(other.of, yes - inOne)) / all;
  const found = chance(one.yes);
  let sum = 0;
  for (let inOne = Math.max(0, yes - other.of); inOne <= Math.min(one.of, yes); inOne++)
    if (chance(inOne) <= found * ROUNDING) sum += chance(inOne);
  return Math.min(1, sum);
}
