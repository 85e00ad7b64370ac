import type { Curve } from "../curve/Curve.ts";
import { heatworkAtClock } from "./bend.ts";
import { peaksOf } from "./budget.ts";
import type { ConeSeries } from "./cone.ts";
import { type ConeModel, coneModel } from "./coneModel.ts";
import { followCone } from "./followCone.ts";
import { levelsOf } from "./levels.ts";

/** How far a witness cone bent, as the record says. */
export type WitnessBend =
  | { readonly kind: "upright" }
  | { readonly kind: "down" }
  /** Hour hand of the tip: 12 or 0 upright, 3 half-way, 6 level with the base. */
  | { readonly kind: "clock"; readonly oClock: number }
  /** Angular degrees of the tip: 0 upright, 90 level with the base. */
  | { readonly kind: "degrees"; readonly degrees: number };

/** One witness cone of a firing. */
export interface Witness {
  readonly cone: string;
  /** The record's own words, for showing. */
  readonly said: string;
  readonly bend: WitnessBend;
}

/** What witness cones say about the thermocouple. */
export interface WitnessOffset {
  readonly series: ConeSeries;
  /** Add to the readings [K]: middle of the interval that the cones allow. */
  readonly offsetK: number;
  readonly lowK: number | null;
  readonly highK: number | null;
  readonly witnesses: readonly WitnessReading[];
}

/** What one witness cone says. */
interface WitnessReading {
  readonly cone: string;
  readonly said: string;
  /** Offset that this cone alone asks for [K]; null when it only bounds, or asks for over 200 K. */
  readonly impliedK: number | null;
}

/** The same with what each cone allows, and whether they can all be right. */
export interface SolvedWitnessOffset extends WitnessOffset {
  /** False when no one offset satisfies every cone; the interval then spans the contradiction. */
  readonly agree: boolean;
  /** Bounds that each cone sets [K]; null = none on that side. */
  readonly witnesses: readonly (WitnessReading & {
    readonly lowK: number | null;
    readonly highK: number | null;
  })[];
}

/** Offsets beyond this are not a thermocouple's error but another mistake [K]. */
const LARGEST_OFFSET_K = 200;
/** Where heatwork is solved to [K]. */
const SOLVED_K = 1e-4;

/**
 * Offset that makes the readings agree with the witness cones of the same place.
 * A partly bent cone pins it, with the spread of its bending level; an upright cone (heatwork below
 * 0.5 at most) bounds it above, a flat one (heatwork at least 1) below. The interval is what all
 * cones allow together; with bounds on one side only, the allowed offset nearest to 0 is taken.
 *
 * @throws RangeError for a cone that the series does not have; parse names first.
 */
export function witnessOffset(input: {
  readonly curve: Curve;
  readonly series: ConeSeries;
  readonly witnesses: readonly Witness[];
}): SolvedWitnessOffset {
  const { series } = input;
  const offsetFor = offsetSolver(input.curve);
  const witnesses = input.witnesses.map(({ cone, said, bend }) => {
    const wanted = wantedHeatwork(bend);
    const solve = (heatwork: number | null) =>
      heatwork === null ? null : offsetFor(coneModel(series, cone), heatwork);
    return {
      cone,
      said,
      impliedK: solve(wanted.middle),
      lowK: solve(wanted.low),
      highK: solve(wanted.high),
    };
  });
  const lowest = witnesses.flatMap(({ lowK }) => lowK ?? []);
  const highest = witnesses.flatMap(({ highK }) => highK ?? []);
  const lowK = lowest.length === 0 ? null : Math.max(...lowest);
  const highK = highest.length === 0 ? null : Math.min(...highest);
  return { series, ...settled(lowK, highK), witnesses };
}

function settled(
  lowK: number | null,
  highK: number | null,
): Pick<SolvedWitnessOffset, "offsetK" | "lowK" | "highK" | "agree"> {
  if (lowK === null || highK === null) {
    const offsetK = Math.min(Math.max(0, lowK ?? 0), highK ?? Number.POSITIVE_INFINITY);
    return { offsetK, lowK, highK, agree: true };
  }
  return {
    offsetK: 0.5 * (lowK + highK),
    lowK: Math.min(lowK, highK),
    highK: Math.max(lowK, highK),
    agree: lowK <= highK,
  };
}

/** Heatwork that a bend stands for: its middle, and the lowest and highest it can mean. */
function wantedHeatwork(bend: WitnessBend): {
  readonly middle: number | null;
  readonly low: number | null;
  readonly high: number | null;
} {
  if (bend.kind === "down") return { middle: null, low: 1, high: null };
  const oClock = clockOf(bend);
  if (oClock <= 0) return { middle: null, low: null, high: heatworkAtClock(0).high };
  if (oClock > 6) return { middle: null, low: 1, high: null };
  const { heatwork, low, high } = heatworkAtClock(oClock);
  return { middle: heatwork, low, high };
}

function clockOf(bend: Exclude<WitnessBend, { kind: "down" }>): number {
  if (bend.kind === "upright") return 0;
  if (bend.kind === "degrees") return bend.degrees / 15;
  return bend.oClock >= 12 ? bend.oClock - 12 : bend.oClock;
}

/** Offset [K] at which a cone of this Curve reaches a heatwork; null beyond the largest offset. */
function offsetSolver(curve: Curve): (model: ConeModel, heatwork: number) => number | null {
  const peaks = peaksOf(curve.tempsC);
  const peaksC = peaks.before;
  const levels = levelsOf(curve.tempsC);
  const scratch = new Float64Array(peaksC.length);
  return (model, heatwork) => {
    const missK = (offsetK: number): number => {
      const { state } = followCone(model, { curve, offsetK, peaksC, levels, peaks }, scratch);
      return model.perFoldK * Math.log(state.heatwork / heatwork);
    };
    return risingRoot(missK, LARGEST_OFFSET_K);
  };
}

/** Root of a rising function of slope near 1, within ± a limit; secant steps kept inside a bracket. */
function risingRoot(miss: (x: number) => number, limit: number): number | null {
  let low = -limit;
  let high = limit;
  let x = 0;
  for (let round = 0; round < 60; round++) {
    const value = miss(x);
    if (Math.abs(value) < SOLVED_K) return x;
    if (value < 0) low = x;
    else high = x;
    if (high <= -limit || low >= limit) return null;
    const next = x - value;
    x = next > low && next < high ? next : nextInside(low, high, next);
    if (high - low < SOLVED_K) return x;
  }
  return x;
}

function nextInside(low: number, high: number, wanted: number): number {
  return wanted <= low ? low : wanted >= high ? high : 0.5 * (low + high);
}
