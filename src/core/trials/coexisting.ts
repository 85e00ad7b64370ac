import type { Cause } from "./Cause.ts";

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
