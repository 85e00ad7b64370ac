import type { Cause } from "./Confounding.ts";
import { differencesOf, type FactDifference } from "./differences.ts";
import type { FiringCause, FiringInNumbers } from "./FiringStudy.ts";
import type { Tile } from "./Tile.ts";

/** What each part of a firing is called. */
export const FIRING_CAUSE_WORDS: Readonly<Record<FiringCause, string>> = {
  heat: "heat",
  quartz: "cooling through quartz",
  cristobalite: "cooling near the end",
  coolingHold: "hold on the way down",
  opening: "opening",
};

/**
 * The firing as a whole, and each part of it that differed beyond its uncertainty between the
 * firings of these tiles. Firings that cannot be told apart in a part share its level.
 */
function firingCauses(
  tiles: readonly Tile[],
  firings: readonly FiringInNumbers[],
): readonly Cause[] {
  const used = firings.filter(({ record }) => tiles.some(({ firing }) => firing === record));
  const names = namesOf(tiles, firings);
  const whole: Cause = {
    name: "firing",
    of: "firing",
    levels: tiles.map(({ firing }) => firing),
    amounts: null,
    sayOf: (level) => `from ${names.get(level) ?? level}`,
    sayTile: (level) => names.get(level) ?? level,
  };
  const differences = differencesOf(used);
  const parts = (Object.keys(FIRING_CAUSE_WORDS) as FiringCause[]).flatMap((cause) => {
    const groups = levelsOf(
      used,
      differences.filter((each) => each.cause === cause),
    );
    return groups === null ? [] : [partOf(cause, { tiles, used, groups, names })];
  });
  return [whole, ...parts];
}

/** `firing 2` by its place in the order given. */
function namesOf(
  tiles: readonly Tile[],
  firings: readonly FiringInNumbers[],
): ReadonlyMap<string, string> {
  return new Map(
    tiles.map(({ firing, firingTitle }) => {
      const at = firings.findIndex(({ record }) => record === firing);
      return [firing, at < 0 ? `“${firingTitle}”` : `firing ${at + 1}`];
    }),
  );
}

function partOf(
  cause: FiringCause,
  given: {
    readonly tiles: readonly Tile[];
    readonly used: readonly FiringInNumbers[];
    readonly groups: readonly (string | null)[];
    readonly names: ReadonlyMap<string, string>;
  },
): Cause {
  const { tiles, used, groups, names } = given;
  const members = (level: string) =>
    used
      .filter((_, at) => groups[at] === level)
      .map(({ record }) => names.get(record ?? "") ?? record)
      .join(" and ");
  return {
    name: FIRING_CAUSE_WORDS[cause],
    of: "part of the firing",
    levels: tiles.map(
      ({ firing }) => groups[used.findIndex((each) => each.record === firing)] ?? null,
    ),
    amounts: null,
    sayOf: (level) => `from ${members(level)}`,
    sayTile: members,
  };
}

/**
 * A level for each firing, the same for firings between which nothing of the part differs, in a
 * chain; null for a firing that lacks a fact others have. Null for all when no two differ.
 */
function levelsOf(
  firings: readonly FiringInNumbers[],
  differences: readonly FactDifference[],
): readonly (string | null)[] | null {
  const differing = differences.filter(({ verdict }) => verdict === "differs");
  if (differing.length === 0) return null;
  const names = new Set(differing.map(({ name }) => name));
  const differs = (i: number, j: number) =>
    differing.some(({ low, high }) => (low === i && high === j) || (low === j && high === i));
  const isKnown = (at: number) =>
    [...names].some((name) =>
      firings[at]?.facts.some((fact) => fact.name === name && fact.value !== null),
    );
  const levels: number[][] = [];
  firings.forEach((_, at) => {
    if (!isKnown(at)) return;
    const home = levels.find((level) => level.every((other) => !differs(at, other)));
    if (home) home.push(at);
    else levels.push([at]);
  });
  return firings.map((_, at) => {
    const level = levels.findIndex((each) => each.includes(at));
    return level < 0 ? null : `level ${level + 1}`;
  });
}

/** All that may govern the spacing on these tiles: what the tiles have, and how they were fired. */
export function tileCauses(
  tiles: readonly Tile[],
  firings: readonly FiringInNumbers[],
): readonly Cause[] {
  const { levels, amounts } = coatBins(tiles.map(({ coat }) => coat.firedMm));
  return [
    ...firingCauses(tiles, firings),
    kind(
      "clay",
      tiles.map(({ clay }) => clay),
    ),
    kind(
      "glaze",
      tiles.map(({ glaze }) => glaze),
    ),
    {
      name: "coat",
      of: "tile",
      levels,
      amounts,
      sayOf: (level) => `${level} thick`,
      sayTile: (level) => level,
    },
    {
      ...kind(
        "sides",
        tiles.map(({ glazedSides }) => glazedSides),
      ),
      sayOf: (level) => `glazed on ${level === "one" ? "one side" : "both sides"}`,
      sayTile: (level) => (level === "one" ? "one-sided" : "two-sided"),
    },
    kind(
      "shape",
      tiles.map(({ shape }) => shape),
    ),
    {
      ...kind(
        "place",
        tiles.map(({ place }) => place),
      ),
      sayOf: (level) => `from ${level}`,
      sayTile: (level) => level,
    },
  ];
}

function kind(name: string, levels: readonly (string | null)[]): Cause {
  return {
    name,
    of: "tile",
    levels,
    amounts: null,
    sayOf: (level) => level,
    sayTile: (level) => level,
  };
}

/** Coats within this ratio of the thinnest of them cannot be told apart by a gauge; our own estimate. */
const ONE_BIN = 1.25;

/** Coats put into bins that a gauge can tell apart, and the logarithm of each bin's mean. */
export interface CoatBins {
  /** `0.9 mm` or `0.8 to 0.95 mm`, one for each coat given, in their order. */
  readonly levels: readonly string[];
  /** ln of the geometric mean of the bin, by mm. */
  readonly amounts: readonly number[];
}

/** Bins from the thinnest up: a new one begins where a coat is a quarter thicker than the first of the last. */
export function coatBins(coatsMm: readonly number[]): CoatBins {
  const bins: number[][] = [];
  for (const coat of [...coatsMm].toSorted((a, b) => a - b)) {
    const last = bins.at(-1);
    if (last?.[0] !== undefined && coat <= last[0] * ONE_BIN) last.push(coat);
    else bins.push([coat]);
  }
  const means = bins.map((bin) => bin.reduce((sum, coat) => sum + Math.log(coat), 0) / bin.length);
  const binOf = coatsMm.map((coat) => bins.findIndex((bin) => coat <= bin.at(-1)!));
  return {
    levels: binOf.map((bin) => rangeOf(bins[bin] as readonly number[])),
    amounts: binOf.map((bin) => means[bin]!),
  };
}

function rangeOf(sorted: readonly number[]): string {
  const [least, most] = [sorted[0], sorted.at(-1)].map((mm) => Number(mm?.toPrecision(3)));
  return least === most ? `${least} mm` : `${least} to ${most} mm`;
}
