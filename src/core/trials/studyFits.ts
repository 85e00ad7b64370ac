import type { MeasuredFit } from "../glaze/measuredFit.ts";
import type { FitStudy, FoundMismatch, GlazeOnClay } from "./FiringStudy.ts";
import type { Tile } from "./Tile.ts";
import {
  expectedSpacings,
  type FirstPingOf,
  type NamedWare,
  type TileFit,
  tileFits,
  tileKind,
} from "./tileFits.ts";

/** Points of a curve of expected spacing. */
const CURVE_POINTS = 9;

/** The curve reaches beyond the coats by this factor. */
const BEYOND = 1.1;

/** Most tiles that a fit is worked out for, so that an answer takes seconds. */
const MOST_TILES = 400;

/**
 * Fit of each glaze on each clay by their files, beside what cracks and pings of its tiles say of it.
 * Tiles beyond the first 400 are left out, and said to be.
 */
export function studyFits(
  tiles: readonly Tile[],
  named: NamedWare,
  firstPingOf: FirstPingOf,
): FitStudy {
  const { fits, leftOut } = tileFits(tiles.slice(0, MOST_TILES), named, firstPingOf);
  const keys = [...new Set(fits.map(pairKey))];
  const beyond = tiles.slice(MOST_TILES).map(({ firing, piece }) => ({
    firing,
    piece,
    why: `fit is worked out for the first ${MOST_TILES} tiles`,
  }));
  return {
    fits,
    leftOut: [...leftOut, ...beyond],
    pairs: keys
      .map((key) =>
        pairOf(
          fits.filter((fit) => pairKey(fit) === key),
          tiles,
          named,
        ),
      )
      .toSorted((a, b) => b.tiles - a.tiles),
  };
}

function pairKey({ glaze, clay, bodyName }: TileFit): string {
  return [glaze, clay, bodyName].join("\n");
}

function pairOf(fits: readonly TileFit[], tiles: readonly Tile[], named: NamedWare): GlazeOnClay {
  const { glaze, clay, bodyName, computedPerK } = fits[0]!;
  const own = tiles.filter((tile) =>
    fits.some(({ firing, piece }) => tile.firing === firing && tile.piece === piece),
  );
  const both = own.filter(({ glazedSides }) => glazedSides === "both").length;
  const expectedIsFor = 2 * both > own.length ? "both" : "one";
  const like = own.find(({ glazedSides }) => glazedSides === expectedIsFor) as Tile;
  const kind = tileKind(like, named);
  if (typeof kind === "string") throw new RangeError(`studyFits: ${kind}`);
  return {
    glaze,
    clay,
    bodyName,
    expansionFrom: kind.glaze.expansion.from,
    tiles: fits.length,
    computedPerK,
    found: foundIn(fits.flatMap(({ measured }) => measured)),
    foundOverExpected: foundAgainst(fits),
    expected: expectedSpacings(kind, curveCoats(own)),
    expectedIsFor,
  };
}

function foundAgainst(fits: readonly TileFit[]): GlazeOnClay["foundOverExpected"] {
  const both = fits.flatMap(({ foundMm, expected: { lowMm, medianMm, highMm } }) =>
    foundMm === null || lowMm === null || medianMm === null
      ? []
      : [{ foundMm, lowMm, medianMm, highMm: highMm ?? Number.POSITIVE_INFINITY }],
  );
  if (both.length === 0) return null;
  const ratios = both.map(({ foundMm, medianMm }) => foundMm / medianMm).toSorted(rising);
  return {
    tiles: both.length,
    within: both.filter((each) => each.lowMm <= each.foundMm && each.foundMm <= each.highMm).length,
    least: ratios[0]!,
    median: middleOf(ratios),
    most: ratios.at(-1)!,
  };
}

function curveCoats(tiles: readonly Tile[]): readonly number[] {
  const coats = tiles.map(({ coat }) => coat.firedMm);
  const [low, high] = [Math.min(...coats) / BEYOND, Math.max(...coats) * BEYOND];
  return Array.from(
    { length: CURVE_POINTS },
    (_, i) => low * (high / low) ** (i / (CURVE_POINTS - 1)),
  );
}

/** One entry for each kind of evidence, and apart where it is only a bound. */
function foundIn(measured: readonly MeasuredFit[]): readonly FoundMismatch[] {
  const kindOf = ({ from, holds }: MeasuredFit) => `${from}\n${holds}`;
  return [...new Set(measured.map(kindOf))].map((kind) => {
    const own = measured
      .filter((each) => kindOf(each) === kind)
      .toSorted((a, b) => a.mismatchPerK.median - b.mismatchPerK.median);
    const { from, holds } = own[0]!;
    const middles = own.map(({ mismatchPerK }) => mismatchPerK.median);
    const [least, most] = [middles[0]!, middles.at(-1)!];
    const end = (of: "low" | "median" | "high") =>
      middleOf(own.map(({ mismatchPerK }) => mismatchPerK[of]).toSorted(rising));
    const binding = holds === "at least" ? own.at(-1) : own[0];
    return {
      from,
      holds,
      tiles: own.length,
      perK:
        holds === "about"
          ? { low: end("low"), median: end("median"), high: end("high") }
          : (binding as MeasuredFit).mismatchPerK,
      leastPerK: least,
      mostPerK: most,
      agreeing: own.filter(({ agrees }) => agrees).length,
    };
  });
}

function middleOf(sorted: readonly number[]): number {
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
}

function rising(a: number, b: number): number {
  return a - b;
}
