/**
 * Whether the tiles tell two causes apart: `cannot` when they changed together, `partly` when they
 * lean on each other, `apart` when each has tiles of its own, `contained` when one is part of the other.
 */
export type Telling = "cannot" | "partly" | "apart" | "contained";

/** Two causes, and how far the tiles tell them apart. */
export interface CausePair {
  readonly first: string;
  readonly second: string;
  readonly telling: Telling;
  /** Share of the one that the other explains on these tiles, at its worst [0–1]. */
  readonly shared: number;
  /** What changed with what: `every one-sided tile is Tarrow white`; empty when nothing did. */
  readonly because: readonly string[];
  /** Tiles on which both are known. */
  readonly tiles: number;
}

/** Causes that changed together and stand for one and the same change. */
export interface ChangedTogether {
  readonly causes: readonly string[];
  readonly because: readonly string[];
}

/** Which causes the tiles tell apart. */
export interface Confounding {
  /** Tiles it is worked out from. */
  readonly tiles: number;
  /** Causes that varied, in the order of the grid. */
  readonly causes: readonly { readonly name: string; readonly levels: readonly string[] }[];
  /** Every two of them. */
  readonly pairs: readonly CausePair[];
  /** Groups of causes of which each goes wholly with the others. */
  readonly together: readonly ChangedTogether[];
  /** A cause that no single other explains, but several do together. */
  readonly jointly: readonly { readonly cause: string; readonly others: readonly string[] }[];
  /** Had one level on all tiles, so the tiles say nothing of them. */
  readonly constant: readonly { readonly name: string; readonly level: string }[];
  /** A level of its own on every tile, so nothing can be compared. */
  readonly everyOwn: readonly string[];
  /** Noted on no tile. */
  readonly unknown: readonly string[];
}

/** Levels of two causes that are linked through tiles, and through no tile with any other group. */
export interface Coexisting {
  readonly first: readonly string[];
  readonly second: readonly string[];
}

/**
 * The groups into which the levels of two causes fall when levels that meet on a tile are linked.
 * With more than one group the difference between groups belongs to both causes at once: one less
 * than the groups is the number of contrasts that no analysis can tell apart.
 */
export function coexisting(
  pair: { readonly first: Cause; readonly second: Cause },
  tiles: readonly number[],
): readonly Coexisting[] {
  const groups: { first: Set<string>; second: Set<string> }[] = [];
  for (const tile of tiles) {
    const a = pair.first.levels[tile];
    const b = pair.second.levels[tile];
    if (a == null || b == null) continue;
    const [home, ...others] = groups.filter(({ first, second }) => first.has(a) || second.has(b));
    const group = home ?? { first: new Set<string>(), second: new Set<string>() };
    if (home === undefined) groups.push(group);
    group.first.add(a);
    group.second.add(b);
    for (const other of others) {
      for (const level of other.first) group.first.add(level);
      for (const level of other.second) group.second.add(level);
      groups.splice(groups.indexOf(other), 1);
    }
  }
  return groups.map(({ first, second }) => ({ first: [...first], second: [...second] }));
}

/** Levels that are named one by one at most. */
const MOST_SAID = 3;

/** What changed with what, as sentences without a full stop: `every one-sided tile is Tarrow white`. */
export function confoundedWords(
  pair: { readonly first: Cause; readonly second: Cause },
  groups: readonly Coexisting[],
): readonly string[] {
  if (groups.length < 2) return [];
  const { first, second } = pair;
  if (first.of !== "tile" && second.of !== "tile") return [alikeInFirings(first, groups)];
  const said = groups.slice(0, MOST_SAID).map((group) => sentence(pair, group));
  const more = groups.length - said.length;
  return more > 0 ? [...said, `and so on for ${more} more`] : said;
}

function sentence(
  { first, second }: { readonly first: Cause; readonly second: Cause },
  group: Coexisting,
): string {
  // What is said of a tile comes first, where the tile stood or was fired after it.
  return first.of === "tile" && first.name !== "coat"
    ? `every ${spoken(group.first.map(first.sayTile))} tile is ${spoken(group.second.map(second.sayOf))}`
    : `every ${spoken(group.second.map(second.sayTile))} tile is ${spoken(group.first.map(first.sayOf))}`;
}

/** Which firings were alike in two parts at once. */
function alikeInFirings(cause: Cause, groups: readonly Coexisting[]): string {
  const members = groups.map(({ first }) =>
    first.flatMap((level) => cause.sayTile(level).split(" and ")),
  );
  if (members.every(({ length }) => length === 1))
    return "no two firings were alike in any of them";
  return members
    .map((firings) =>
      firings.length === 1
        ? `${firings[0]} stands by itself`
        : `${firings.slice(0, -1).join(", ")} and ${firings.at(-1)} are alike in each`,
    )
    .join("; ");
}

function spoken(words: readonly string[]): string {
  return words.length < 2
    ? (words[0] ?? "")
    : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}

/** Something that may govern the crack spacing, with its level on every tile. */
export interface Cause {
  /** In words: `clay`, `cooling through quartz`. */
  readonly name: string;
  /** What the tile itself has, the firing as a whole, or a part of the firing. */
  readonly of: "tile" | "firing" | "part of the firing";
  /** One for each tile, in order; null where it is not known. */
  readonly levels: readonly (string | null)[];
  /** Of a measured amount, as it enters the analysis (logarithm of the coat); null for kinds. */
  readonly amounts: readonly number[] | null;
  /** A tile of this level in words, to end "every one-sided tile is …": `Tarrow white`. */
  readonly sayOf: (level: string) => string;
  /** The level in front of "tile": `one-sided`, `Tarrow white`. */
  readonly sayTile: (level: string) => string;
}
