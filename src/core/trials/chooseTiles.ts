import type { NextTile } from "./NextTest.ts";
import type { Tile } from "./Tile.ts";

/** A comparison that is wanted: a combination of effects, and how well it has to be known. */
export interface WantedDirection {
  readonly direction: readonly number[];
  /** Largest standard error that is good enough with so many tiles in all. */
  readonly needed: (tiles: number) => number;
}

/** What to choose from. */
export interface TileChoice {
  /** Design rows of the tiles there are. */
  readonly rows: readonly (readonly number[])[];
  /** Design rows of the kinds of tile that may be added, as often as wanted. */
  readonly candidates: readonly (readonly number[])[];
  readonly wanted: readonly WantedDirection[];
  readonly scatter: number;
  readonly most: number;
}

/** How many of each candidate. */
export interface ChosenTiles {
  readonly counts: readonly number[];
  readonly isEnough: boolean;
  /** With so many every wanted comparison is told at all; null when the candidates cannot. */
  readonly fewest: number | null;
  readonly before: Knowledge;
  readonly after: Knowledge;
}

/**
 * The tiles to add so that every wanted comparison is known well enough, as few as are found.
 * First those that make a comparison known that was not: each adds a direction, and by taking the
 * least known direction every time no smaller number can do. Then, one by one, the tile that brings
 * the comparisons nearest to what is needed; last, what turns out not to be needed is taken back.
 */
export function chooseTiles(choice: TileChoice): ChosenTiles {
  const { rows, candidates, wanted, scatter } = choice;
  const effects = wanted[0]?.direction.length ?? 0;
  const before = rows.reduce<Knowledge>(
    (known, row) => withTile(known, row, scatter),
    knowingNothing(effects),
  );
  const opened = openUp(choice, before);
  const filled = fillUp(choice, opened);
  const counts = takenBack(choice, filled.picked, before);
  const after = knowledgeOf(choice, counts, before);
  return {
    counts,
    isEnough: isEnough(choice, after, total(counts)),
    fewest: opened.fewest,
    before,
    after: candidates.length === 0 ? before : after,
  };
}

interface Picked {
  readonly picked: readonly number[];
  readonly known: Knowledge;
}

/** Least known direction first, until every wanted comparison is known at all. */
function openUp(
  { candidates, wanted, scatter, most }: TileChoice,
  before: Knowledge,
): Picked & { readonly fewest: number | null } {
  let known = before;
  const picked: number[] = [];
  const isOpen = () => wanted.some(({ direction }) => isUnknown(varianceOf(known, direction)));
  while (isOpen() && picked.length < most) {
    const variances = candidates.map((row) => varianceOf(known, row));
    const best = variances.indexOf(Math.max(...variances));
    const row = candidates[best];
    if (row === undefined || !isUnknown(variances[best]!)) return { picked, known, fewest: null };
    known = withTile(known, row, scatter);
    picked.push(best);
  }
  return { picked, known, fewest: isOpen() ? null : picked.length };
}

function fillUp(choice: TileChoice, opened: Picked): Picked {
  const { candidates, scatter, most } = choice;
  let { known } = opened;
  const picked = [...opened.picked];
  while (picked.length < most && !isEnough(choice, known, picked.length)) {
    const lacks = candidates.map((row) =>
      lacking(choice, withTile(known, row, scatter), picked.length + 1),
    );
    const best = lacks.indexOf(Math.min(...lacks));
    const row = candidates[best];
    if (row === undefined) break;
    known = withTile(known, row, scatter);
    picked.push(best);
  }
  return { picked, known };
}

/** Counts without the tiles that can be left out one by one. */
function takenBack(
  choice: TileChoice,
  picked: readonly number[],
  before: Knowledge,
): readonly number[] {
  let counts: readonly number[] = choice.candidates.map(
    (_, at) => picked.filter((each) => each === at).length,
  );
  if (!isEnough(choice, knowledgeOf(choice, counts, before), total(counts))) return counts;
  for (let at = 0; at < counts.length; at++)
    while (counts[at]! > 0) {
      const fewer = counts.map((count, i) => (i === at ? count - 1 : count));
      if (!isEnough(choice, knowledgeOf(choice, fewer, before), total(fewer))) break;
      counts = fewer;
    }
  return counts;
}

function knowledgeOf(
  { candidates, scatter }: TileChoice,
  counts: readonly number[],
  before: Knowledge,
): Knowledge {
  return candidates.reduce((known, row, at) => {
    let more = known;
    for (let i = 0; i < counts[at]!; i++) more = withTile(more, row, scatter);
    return more;
  }, before);
}

function isEnough(choice: TileChoice, known: Knowledge, added: number): boolean {
  return lacking(choice, known, added) <= 0;
}

/** How far the comparisons are from what is needed; 0 when all are there. */
function lacking({ wanted, rows }: TileChoice, known: Knowledge, added: number): number {
  return wanted.reduce((sum, { direction, needed }) => {
    const most = needed(rows.length + added);
    const excess = Math.sqrt(varianceOf(known, direction)) / Math.max(1e-6, most) - 1;
    return sum + Math.max(0, excess);
  }, 0);
}

function total(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count, 0);
}

/** What is known of the effects before any tile: standard deviation of ln spacing, so wide that it says nothing. */
const BEFOREHAND = 10;

/** Covariance of the effects of a design, brought up to date tile by tile. */
interface Knowledge {
  /** Row by row. */
  readonly covariance: readonly (readonly number[])[];
}

/** Nothing known of so many effects. */
function knowingNothing(effects: number): Knowledge {
  return {
    covariance: Array.from({ length: effects }, (_, i) =>
      Array.from({ length: effects }, (__, j) => (i === j ? BEFOREHAND ** 2 : 0)),
    ),
  };
}

/** The knowledge with one more tile of this design row, at this scatter of ln spacing. */
function withTile({ covariance }: Knowledge, row: readonly number[], scatter: number): Knowledge {
  const along = covariance.map((each) => product(each, row));
  const weight = scatter ** 2 + product(along, row);
  return {
    covariance: covariance.map((each, i) =>
      each.map((value, j) => value - (along[i]! * along[j]!) / weight),
    ),
  };
}

/** Variance of a combination of effects. */
export function varianceOf({ covariance }: Knowledge, contrast: readonly number[]): number {
  const variance = product(
    covariance.map((row) => product(row, contrast)),
    contrast,
  );
  // Rounding can take a variance of nothing below it.
  return Math.max(0, variance);
}

/** A variance above this is as good as nothing known. */
export function isUnknown(variance: number): boolean {
  return variance > (BEFOREHAND / 4) ** 2;
}

function product(one: readonly number[], other: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += one[i]! * other[i]!;
  return sum;
}

/** What a tile's kind is in a design; how many does not matter. */
export type TileKind = Omit<NextTile, "count">;

/** The causes that tiles themselves carry, by their names in the grid. */
export type TileCause = "clay" | "glaze" | "coat" | "sides" | "shape";

/** A model of ln spacing: the firing, clay, glaze, sides, shape and ln coat, each adding its effect. */
export interface TileDesign {
  /** Design row of a tile of a firing; the next firing has an effect of its own. */
  readonly rowOf: (kind: TileKind, firing: string | "next") => readonly number[];
  /** Every comparison that belongs to a cause: each two levels, or the exponent. */
  readonly contrastsOf: (cause: TileCause) => readonly DesignContrast[];
}

/** One comparison of a design. */
interface DesignContrast {
  /** `Mere buff against Tarrow white`, `exponent`. */
  readonly words: string;
  readonly direction: readonly number[];
}

/** A tile as its kind. */
export function kindOf({ clay, glaze, coat, glazedSides, shape }: Tile): TileKind {
  return { clay, glaze, coatMm: coat.firedMm, glazedSides, shape };
}

/** The design of these tiles with room for the levels of these candidates and for one more firing. */
export function tileDesign(tiles: readonly Tile[], candidates: readonly TileKind[]): TileDesign {
  const kinds = [...tiles.map(kindOf), ...candidates];
  const firings = [...new Set(tiles.map(({ firing }) => firing))];
  const middle =
    kinds.reduce((sum, { coatMm }) => sum + Math.log(coatMm), 0) / Math.max(1, kinds.length);
  const factors = FACTORS.map((factor) => ({
    ...factor,
    levels: [...new Set(kinds.map(factor.levelOf))],
  }));
  const firstAt = 2 + firings.length;
  const starts = factors.map((_, at) =>
    factors.slice(0, at).reduce((sum, { levels }) => sum + levels.length - 1, firstAt),
  );
  const effects = factors.reduce((sum, { levels }) => sum + levels.length - 1, firstAt);
  const coatRow = (lnCoat: number) => unit(effects, [[1, lnCoat - middle]]);
  return {
    rowOf: (kind, firing) => {
      // The first firing is the intercept; the last of the firing columns is the next firing.
      const place = firing === "next" ? firings.length : firings.indexOf(firing);
      const row = [...coatRow(Math.log(kind.coatMm))];
      row[0] = 1;
      if (place > 0) row[1 + place] = 1;
      factors.forEach(({ levels, levelOf }, at) => {
        const level = levels.indexOf(levelOf(kind));
        if (level > 0) row[starts[at]! + level - 1] = 1;
      });
      return row;
    },
    contrastsOf: (cause) => {
      if (cause === "coat") return [{ words: "exponent", direction: unit(effects, [[1, 1]]) }];
      const at = factors.findIndex(({ name }) => name === cause);
      const { levels, say } = factors[at]!;
      const sign = (level: number, weight: number): readonly (readonly [number, number])[] =>
        level === 0 ? [] : [[starts[at]! + level - 1, weight]];
      return levels.flatMap((one, i) =>
        levels.slice(i + 1).map((other, k) => ({
          words: `${say(other)} against ${say(one)}`,
          direction: unit(effects, [...sign(i, -1), ...sign(i + 1 + k, 1)]),
        })),
      );
    },
  };
}

const FACTORS: readonly {
  readonly name: TileCause;
  readonly levelOf: (kind: TileKind) => string;
  readonly say: (level: string) => string;
}[] = [
  { name: "clay", levelOf: ({ clay }) => clay, say: (level) => level },
  { name: "glaze", levelOf: ({ glaze }) => glaze, say: (level) => level },
  {
    name: "sides",
    levelOf: ({ glazedSides }) => glazedSides,
    say: (level) => (level === "one" ? "one side" : "both sides"),
  },
  { name: "shape", levelOf: ({ shape }) => shape ?? "not noted", say: (level) => level },
];

function unit(length: number, entries: readonly (readonly [number, number])[]): readonly number[] {
  const row = Array.from({ length }, () => 0);
  for (const [at, value] of entries) row[at] = value;
  return row;
}
