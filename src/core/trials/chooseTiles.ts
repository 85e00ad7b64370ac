import {
  isUnknown,
  type Knowledge,
  knowingNothing,
  varianceOf,
  withTile,
} from "./informationMatrix.ts";

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
    if (row === undefined || !isUnknown(variances[best] as number))
      return { picked, known, fewest: null };
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
    while ((counts[at] as number) > 0) {
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
    for (let i = 0; i < (counts[at] as number); i++) more = withTile(more, row, scatter);
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
