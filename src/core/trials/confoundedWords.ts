import type { Cause } from "./Cause.ts";
import type { Coexisting } from "./coexisting.ts";

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
