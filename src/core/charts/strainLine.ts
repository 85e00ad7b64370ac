import type { Curve } from "../curve/Curve.ts";
import type { ComputedPassage, PieceStrain } from "../ware/pieceStrain.ts";
import { isJudged } from "../ware/strainRisk.ts";
import type { WareStrain } from "../ware/Ware.ts";
import { drawn, type Row } from "./chartSpec.ts";

/** A computed way through an inversion, as it is drawn. */
export interface DrawnPassage extends ComputedPassage {
  readonly band: string;
  readonly direction: "heating" | "cooling";
}

/** Points that the line keeps at most. */
const POINTS = 800;

/** The uncertainty where no passage gives one. */
const FACTOR_OF_TWO = { lowFactor: 0.5, highFactor: 2 };

/** Smallest factor, so that a range that reaches down to 0 can still be drawn between two passages. */
const LEAST_FACTOR = 0.01;

/** The passages of a piece that are drawn, in the order in which they happened: those on the way down. */
export function drawnPassages(strained: PieceStrain): readonly DrawnPassage[] {
  return strained.passages.flatMap(({ band, direction, computed }) =>
    computed === null ||
    direction === "heating" ||
    !isJudged({ band, direction }, strained.ware.body)
      ? []
      : [{ band, direction, ...computed }],
  );
}

/**
 * Stress over strength as rows of a chart, the most of each stretch of time, with the range about it.
 * The range has the factors of the nearest passages, in between by the logarithm over time.
 */
export function strainRows(
  strain: WareStrain,
  curve: Curve,
  passages: readonly DrawnPassage[],
): readonly Row[] {
  const { timesSeconds, ratio } = strain;
  const gapEnds = new Set(curve.gaps.map((gap) => gap.toSeconds));
  const stride = Math.max(1, Math.ceil(timesSeconds.length / POINTS));
  const kept = new Map<string, { i: number; piece: number }>();
  let piece = 0;
  for (let i = 0; i < timesSeconds.length; i++) {
    if (gapEnds.has(timesSeconds[i]!)) piece += 1;
    const stretch = `${piece} ${Math.floor(i / stride)}`;
    const best = kept.get(stretch);
    if (!best || ratio[i]! > ratio[best.i]!) kept.set(stretch, { i, piece });
  }
  return [...kept.values()].map(({ i, piece: of }) => {
    const seconds = timesSeconds[i]!;
    const middle = ratio[i]!;
    const { lowFactor, highFactor } = factorsAt(passages, seconds);
    return {
      elapsedHours: drawn(seconds / 3600),
      strain: drawn(middle),
      low: drawn(middle * lowFactor),
      high: drawn(middle * highFactor),
      piece: of,
    };
  });
}

/** The strain as far as it is drawn: from the peak on. On the way up nothing is judged by it. */
export function drawnStrain(strained: PieceStrain, peakSeconds: number): WareStrain {
  return since(strained.strain, peakSeconds);
}

/** The strain from a moment on [s]. */
function since(strain: WareStrain, fromSeconds: number): WareStrain {
  const from = strain.timesSeconds.findIndex((seconds) => seconds >= fromSeconds);
  return {
    timesSeconds: strain.timesSeconds.subarray(from),
    ratio: strain.ratio.subarray(from),
    wallC: strain.wallC.subarray(from),
    baseC: strain.baseC.subarray(from),
    shelfC: strain.shelfC.subarray(from),
    worst: strain.worst.filter(({ direction }) => direction === "cooling"),
  };
}

function factorsAt(passages: readonly DrawnPassage[], seconds: number) {
  const before = passages.findLast((passage) => passage.atSeconds <= seconds);
  const after = passages.find((passage) => passage.atSeconds > seconds);
  if (!before || !after) return factorsOf(before ?? after);
  const [from, to] = [factorsOf(before), factorsOf(after)];
  const share = (seconds - before.atSeconds) / (after.atSeconds - before.atSeconds);
  const between = (low: number, high: number) => low * (high / low) ** share;
  return {
    lowFactor: between(from.lowFactor, to.lowFactor),
    highFactor: between(from.highFactor, to.highFactor),
  };
}

/** What a ratio near a passage is to be multiplied by for its 10 and 90 % points. */
function factorsOf(passage: DrawnPassage | undefined) {
  if (passage === undefined || passage.ratio <= 0) return FACTOR_OF_TWO;
  return {
    lowFactor: Math.max(LEAST_FACTOR, passage.low / passage.ratio),
    highFactor: passage.high / passage.ratio,
  };
}
