import type { Curve } from "../curve/Curve.ts";
import type { WareStrain } from "../ware/Ware.ts";
import { drawn, type Row } from "./chartSpec.ts";

/** One way through an inversion, and how uncertain its worst moment is. */
export interface StrainPassage {
  readonly band: string;
  readonly direction: "heating" | "cooling";
  /** Worst stress over strength in it. */
  readonly ratio: number;
  readonly atSeconds: number;
  /** From when the kiln enters the band until the last part of the ware has left it [s]. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** What the ratio is to be multiplied by for its 10 and 90 % points. */
  readonly lowFactor: number;
  readonly highFactor: number;
}

/** Points that the line keeps at most. */
const POINTS = 800;

/** The uncertainty where no passage gives one. */
const FACTOR_OF_TWO = { lowFactor: 0.5, highFactor: 2 };

/**
 * Stress over strength as rows of a chart, the most of each stretch of time, with the range about it.
 * The range has the factors of the nearest passages, in between by the logarithm over time.
 */
export function strainRows(
  strain: WareStrain,
  curve: Curve,
  passages: readonly StrainPassage[],
): readonly Row[] {
  const { timesSeconds, ratio } = strain;
  const gapEnds = new Set(curve.gaps.map((gap) => gap.toSeconds));
  const stride = Math.max(1, Math.ceil(timesSeconds.length / POINTS));
  const kept = new Map<string, { i: number; piece: number }>();
  let piece = 0;
  for (let i = 0; i < timesSeconds.length; i++) {
    if (gapEnds.has(timesSeconds[i] as number)) piece += 1;
    const stretch = `${piece} ${Math.floor(i / stride)}`;
    const best = kept.get(stretch);
    if (!best || (ratio[i] as number) > (ratio[best.i] as number)) kept.set(stretch, { i, piece });
  }
  return [...kept.values()].map(({ i, piece: of }) => {
    const seconds = timesSeconds[i] as number;
    const middle = ratio[i] as number;
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

/**
 * The strain from a moment on [s]: on the way up a piece is not yet the fired body whose properties
 * are known, so charts begin at the peak.
 */
export function strainSince(strain: WareStrain, fromSeconds: number): WareStrain {
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

function factorsAt(passages: readonly StrainPassage[], seconds: number) {
  const before = passages.findLast((passage) => passage.atSeconds <= seconds);
  const after = passages.find((passage) => passage.atSeconds > seconds);
  if (!before || !after) return before ?? after ?? FACTOR_OF_TWO;
  const share = (seconds - before.atSeconds) / (after.atSeconds - before.atSeconds);
  const between = (from: number, to: number) => from * (to / from) ** share;
  return {
    lowFactor: between(before.lowFactor, after.lowFactor),
    highFactor: between(before.highFactor, after.highFactor),
  };
}
