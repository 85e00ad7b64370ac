import { centred, type DesignColumn, sharedShare } from "../math/linearSystem.ts";
import {
  type Cause,
  type CausePair,
  type ChangedTogether,
  type Coexisting,
  type Confounding,
  coexisting,
  confoundedWords,
  type Telling,
} from "./Confounding.ts";

/** From here on nothing but rounding is left to tell two causes apart. */
const WHOLLY = 1 - 1e-9;

/** Of amounts that are read with an error, this much shared is as good as all; our own choice. */
const ALL_BUT = 0.95;

/** Up to here two causes are said to be told apart; our own choice. */
const HARDLY = 0.1;

/**
 * Which causes these tiles tell apart and which they cannot, because they changed together.
 * Kinds are coded by their levels and amounts by their logarithm, about their means; two causes
 * cannot be told apart when a direction of the one is a direction of the other.
 */
export function confoundingOf(causes: readonly Cause[], tiles: number): Confounding {
  const all = Array.from({ length: tiles }, (_, tile) => tile);
  const levels = causes.map((cause) => levelsOn(cause, all));
  const varied = causes.filter((cause, at) => isVaried(levels[at]!, cause, tiles));
  const looked = varied.flatMap((first, i) =>
    varied.slice(i + 1).map((second) => pairOf({ first, second }, all)),
  );
  const pairs = looked.map(({ pair }) => pair);
  return {
    tiles,
    causes: varied.map((cause) => ({ name: cause.name, levels: levelsOn(cause, all) })),
    pairs,
    together: togetherOf(varied, looked),
    jointly: jointlyOf(varied, pairs, all),
    constant: causes.flatMap((cause, at) => {
      const [level, another] = levels[at]!;
      return level === undefined || another !== undefined
        ? []
        : [{ name: cause.name, level: cause.sayTile(level) }];
    }),
    everyOwn: causes
      .filter((cause, at) => isEveryOwn(levels[at]!, cause, tiles))
      .map(({ name }) => name),
    unknown: causes.filter((_, at) => levels[at]?.length === 0).map(({ name }) => name),
  };
}

function isEveryOwn(levels: readonly string[], cause: Cause, tiles: number): boolean {
  return (
    cause.amounts === null && cause.of === "tile" && levels.length > 2 && levels.length === tiles
  );
}

function isVaried(levels: readonly string[], cause: Cause, tiles: number): boolean {
  return levels.length > 1 && !isEveryOwn(levels, cause, tiles);
}

interface Looked {
  readonly pair: CausePair;
  /** Each level of the one goes with one of the other and the other way round. */
  readonly isOneToOne: boolean;
}

function pairOf(
  pair: { readonly first: Cause; readonly second: Cause },
  all: readonly number[],
): Looked {
  const { first, second } = pair;
  const tiles = all.filter((tile) => first.levels[tile] != null && second.levels[tile] != null);
  const groups = coexisting(pair, tiles);
  const isContained =
    [first, second].some(({ of }) => of === "firing") &&
    [first, second].some(({ of }) => of === "part of the firing");
  const shared = sharedOf(pair, tiles, groups);
  const telling = isContained ? "contained" : tellingOf(shared, pair);
  return {
    pair: {
      first: first.name,
      second: second.name,
      telling,
      shared,
      because: telling === "apart" ? [] : confoundedWords(pair, groups),
      tiles: tiles.length,
    },
    isOneToOne: isOneToOne(groups),
  };
}

function sharedOf(
  { first, second }: { readonly first: Cause; readonly second: Cause },
  tiles: readonly number[],
  groups: readonly Coexisting[],
): number {
  // Of two kinds the groups decide exactly; columns would leave it to rounding.
  if (groups.length > 1 && first.amounts === null && second.amounts === null) return 1;
  return sharedShare(designColumns(first, tiles), designColumns(second, tiles));
}

function isOneToOne(groups: readonly Coexisting[]): boolean {
  return (
    groups.length > 1 &&
    groups.every(({ first, second }) => first.length === 1 && second.length === 1)
  );
}

function tellingOf(
  shared: number,
  { first, second }: { readonly first: Cause; readonly second: Cause },
): Telling {
  const isRead = first.amounts !== null || second.amounts !== null;
  if (shared > (isRead ? ALL_BUT : WHOLLY)) return "cannot";
  return shared > HARDLY ? "partly" : "apart";
}

/** Kinds of two causes in the order in which they are put into words. */
const SAID_FIRST = [
  "tile tile",
  "firing tile",
  "part of the firing tile",
  "part of the firing part of the firing",
];

/** Causes that go wholly with each other, gathered into groups. */
function togetherOf(
  causes: readonly Cause[],
  looked: readonly Looked[],
): readonly ChangedTogether[] {
  const groups: string[][] = [];
  const taken = new Set<string>();
  const linked = looked.filter(
    ({ pair, isOneToOne }) =>
      isOneToOne && (pair.telling === "cannot" || pair.telling === "contained"),
  );
  for (const { name } of causes) {
    if (taken.has(name)) continue;
    const group = causes
      .map((other) => other.name)
      .filter(
        (other) =>
          other === name ||
          linked.some(
            ({ pair }) =>
              (pair.first === name && pair.second === other) ||
              (pair.second === name && pair.first === other),
          ),
      );
    if (group.length < 2) continue;
    for (const each of group) taken.add(each);
    groups.push(group);
  }
  return groups.flatMap((names) => {
    const of = (name: string) => causes.find((cause) => cause.name === name)?.of;
    // A firing with its own parts is no discovery.
    const isFiringAlone = names.filter((name) => of(name) !== "firing").length < 2;
    if (isFiringAlone && names.every((name) => of(name) !== "tile")) return [];
    const said = linked.filter(
      ({ pair }) =>
        names.includes(pair.first) && names.includes(pair.second) && pair.because.length > 0,
    );
    const kind = ({ pair }: Looked) => [pair.first, pair.second].map(of).toSorted().join(" ");
    // What tiles had together says most; then in which firing; firings among themselves last.
    const told = SAID_FIRST.flatMap((each) => said.find((one) => kind(one) === each) ?? []);
    const because = told.slice(0, 2).flatMap(({ pair }) => pair.because);
    return [{ causes: names, because: [...new Set(because)] }];
  });
}

/** Causes of the tiles that several others explain together while none does alone. */
function jointlyOf(
  causes: readonly Cause[],
  pairs: readonly CausePair[],
  all: readonly number[],
): Confounding["jointly"] {
  const whole = causes.filter(
    ({ of, levels }) => of !== "part of the firing" && all.every((tile) => levels[tile] != null),
  );
  return whole.flatMap((cause) => {
    const isBound = pairs.some(
      ({ first, second, telling }) =>
        telling === "cannot" && (first === cause.name || second === cause.name),
    );
    const others = whole.filter((other) => other !== cause);
    if (isBound || explained(cause, others, all) <= WHOLLY) return [];
    const few = others.reduce<readonly Cause[]>((kept, other) => {
      const rest = kept.filter((each) => each !== other);
      return explained(cause, rest, all) > WHOLLY ? rest : kept;
    }, others);
    return [{ cause: cause.name, others: few.map(({ name }) => name) }];
  });
}

function explained(cause: Cause, others: readonly Cause[], tiles: readonly number[]): number {
  return sharedShare(
    designColumns(cause, tiles),
    others.flatMap((other) => designColumns(other, tiles)),
  );
}

/** A cause as centred columns over some tiles: one for an amount, one less than its levels for a kind. */
function designColumns(cause: Cause, tiles: readonly number[]): readonly DesignColumn[] {
  const { amounts, levels } = cause;
  if (amounts) return [centred(tiles.map((tile) => amounts[tile]!))];
  const kinds = levelsOn(cause, tiles);
  return kinds
    .slice(1)
    .map((kind) => centred(tiles.map((tile) => (levels[tile] === kind ? 1 : 0))));
}

/** The levels of a cause on some tiles, in the order met; unknown ones are no level. */
function levelsOn({ levels }: Cause, tiles: readonly number[]): readonly string[] {
  return [...new Set(tiles.flatMap((tile) => levels[tile] ?? []))];
}
