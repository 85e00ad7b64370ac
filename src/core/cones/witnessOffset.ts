import type { Curve } from "../curve/Curve.ts";
import { levelsOf, peaksOf } from "./budget.ts";
import type { ConeSeries } from "./cone.ts";
import { type ConeModel, coneModel } from "./coneModel.ts";
import { followCone, heatworkAtClock } from "./followCone.ts";
import { CHART_SIGMA_K } from "./heatwork.ts";
import { type KilnOffset, offsetFor } from "./usualOffset.ts";

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

/** What witness cones say about the thermocouple, together with what kilns are usually out by. */
export interface WitnessOffset {
  readonly series: ConeSeries;
  /** Add to the readings [K]. */
  readonly offsetK: number;
  /** One sigma of it [K]; never more than without witness cones. */
  readonly sigmaK: number;
  /** What was expected before a cone was looked at. */
  readonly usual: KilnOffset;
  /** What the cones by themselves allow [K]; null = no bound on that side. */
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
    /** It cannot be right if the offset is; not counted where cones contradict one another. */
    readonly leftOut: boolean;
  })[];
}

/** Offsets beyond this are not a thermocouple's error but another mistake [K]. */
const LARGEST_OFFSET_K = 200;
/** Where heatwork is solved to [K]. */
const SOLVED_K = 1e-4;
/** One sigma of how a bend is read and where the cone stood [K]; with 3 K of the model, 4 K in all. */
const READING_SIGMA_K = 2.65;

/**
 * Offset of the readings by the witness cones of the same place and by what kilns are usually out by.
 * The usual offset is the prior; a partly bent cone is worth a measurement (± 4 K at the chart's
 * rates, more where its bend says less), a flat cone (heatwork at least 1) and an upright one (at
 * most 0.5) are bounds. So a bracket that holds the usual offset moves nothing and only narrows;
 * where it does not hold it, the nearest offset that it allows is taken.
 *
 * @param input.usual What is expected without cones; that of `usualOffset` unless said.
 * @throws RangeError for a cone that the series does not have; parse names first.
 */
export function witnessOffset(input: {
  readonly curve: Curve;
  readonly series: ConeSeries;
  readonly witnesses: readonly Witness[];
  readonly usual?: KilnOffset;
}): SolvedWitnessOffset {
  const { series, curve } = input;
  const usual = input.usual ?? offsetFor(curve, {});
  const offsetAt = offsetSolver(curve);
  const asked = input.witnesses.map(({ cone, said, bend }) => {
    const wanted = wantedHeatwork(bend);
    const solve = (heatwork: number | null) =>
      heatwork === null ? null : offsetAt(coneModel(series, cone), heatwork);
    const [middle, low, high] = [wanted.middle, wanted.low, wanted.high].map(solve);
    return { cone, said, ...boundsOf(middle ?? null, low ?? null, high ?? null) };
  });
  const best = bestOffset(usual, asked);
  const witnesses = asked.map(({ cone, said, impliedK, lowK, highK, sigmaK }) => ({
    cone,
    said,
    impliedK,
    lowK,
    highK,
    leftOut: beyondK({ impliedK, lowK, highK }, best.offsetK) > LEFT_OUT_SIGMAS * sigmaK,
  }));
  const lowest = witnesses.flatMap(({ lowK }) => lowK ?? []);
  const highest = witnesses.flatMap(({ highK }) => highK ?? []);
  const ends = [
    lowest.length === 0 ? null : Math.max(...lowest),
    highest.length === 0 ? null : Math.min(...highest),
  ] as const;
  const isCrossed = ends[0] !== null && ends[1] !== null && ends[0] > ends[1];
  return {
    series,
    ...best,
    usual,
    lowK: isCrossed ? ends[1] : ends[0],
    highK: isCrossed ? ends[0] : ends[1],
    agree: witnesses.every(({ leftOut }) => !leftOut),
    witnesses,
  };
}

/** An offset with the cone model's sigma there [K]. */
interface SolvedAt {
  readonly offsetK: number;
  readonly marginSigmaK: number;
}

/** What one cone is worth: its own offset or bounds, and one sigma [K]. */
interface Asked {
  readonly impliedK: number | null;
  readonly lowK: number | null;
  readonly highK: number | null;
  readonly sigmaK: number;
}

function boundsOf(middle: SolvedAt | null, low: SolvedAt | null, high: SolvedAt | null): Asked {
  const modelK = Math.max(...[middle, low, high].map((each) => each?.marginSigmaK ?? 0));
  const readK = Math.hypot(READING_SIGMA_K, modelK);
  if (middle === null)
    return {
      impliedK: null,
      lowK: low?.offsetK ?? null,
      highK: high?.offsetK ?? null,
      sigmaK: readK,
    };
  const at = middle.offsetK;
  const spreadK = ((high?.offsetK ?? at) - (low?.offsetK ?? at)) / 2;
  const sigmaK = Math.hypot(readK, spreadK);
  return { impliedK: at, lowK: at - sigmaK, highK: at + sigmaK, sigmaK };
}

/** How far an offset lies from what a cone asks for [K]; 0 inside its bounds. */
function beyondK(asked: Omit<Asked, "sigmaK">, offsetK: number): number {
  const { impliedK, lowK, highK } = asked;
  if (impliedK !== null) return Math.abs(offsetK - impliedK);
  if (lowK !== null && offsetK < lowK) return lowK - offsetK;
  return highK !== null && offsetK > highK ? offsetK - highK : 0;
}

/** Beyond so many sigmas a cone and an offset cannot both be right. */
const LEFT_OUT_SIGMAS = 2.5;
/** Share of witness cones whose number, place or bend was noted wrongly; own estimate. */
const MISTAKEN_CONES = 0.002;
/** Share of thermocouples that are out by far more than usual, and by how much [K]; own estimate. */
const FAR_OUT = { share: 0.2, sigmaK: 50 } as const;
/** How firmly the offset itself keeps to a bound [K]; its uncertainty counts the cone's own sigma. */
const FIRM_K = 1;
/** Steps in which offsets are weighed [K]. */
const STEP_K = 0.1;

/**
 * The most probable offset, and the root of its mean square error about it.
 * Usual offset and cones both have wide tails, so that one cone with a wrong number does not carry
 * the rest along, and a thermocouple that is far out is believed when cones say so.
 */
function bestOffset(
  usual: KilnOffset,
  cones: readonly Asked[],
): { readonly offsetK: number; readonly sigmaK: number } {
  const { offsetK: usualK } = usual;
  const logFits = (offsetK: number, boundSigmaK: number | null): number =>
    cones.reduce((sum, cone) => {
      const sigmaK = cone.impliedK === null && boundSigmaK !== null ? boundSigmaK : cone.sigmaK;
      const fits = gaussian(beyondK(cone, offsetK) / sigmaK);
      return sum + Math.log((1 - MISTAKEN_CONES) * fits + MISTAKEN_CONES);
    }, 0);
  const logUsual = (offsetK: number): number => {
    const near = gaussian((offsetK - usualK) / usual.sigmaK);
    const far = (usual.sigmaK / FAR_OUT.sigmaK) * gaussian((offsetK - usualK) / FAR_OUT.sigmaK);
    return Math.log((1 - FAR_OUT.share) * near + FAR_OUT.share * far);
  };
  const steps = Array.from(
    { length: 2 * Math.round(LARGEST_OFFSET_K / STEP_K) + 1 },
    (_, i) => i * STEP_K - LARGEST_OFFSET_K,
  );
  const corners = cones.flatMap(({ impliedK, lowK, highK }) =>
    impliedK === null ? [...(lowK === null ? [] : [lowK]), ...(highK === null ? [] : [highK])] : [],
  );
  let offsetK = usualK;
  let most = Number.NEGATIVE_INFINITY;
  for (const each of [usualK, ...corners, ...steps]) {
    const weight = logUsual(each) + logFits(each, FIRM_K);
    if (weight > most + 1e-9) [offsetK, most] = [each, weight];
  }
  // Where the cones lead far from the usual, the usual says little of how far the offset may be out.
  const aroundK = Math.max(usual.sigmaK, Math.abs(offsetK - usualK) / 2);
  const top = logFits(offsetK, null);
  let sum = 0;
  let squares = 0;
  for (const each of steps) {
    const weight = gaussian((each - usualK) / aroundK) * Math.exp(logFits(each, null) - top);
    sum += weight;
    squares += weight * (each - offsetK) ** 2;
  }
  const sigmaK = Math.sqrt(squares / sum);
  return { offsetK, sigmaK: Math.min(usual.sigmaK, Math.max(CHART_SIGMA_K, sigmaK)) };
}

function gaussian(sigmas: number): number {
  return Math.exp(-0.5 * sigmas ** 2);
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

/** Offset at which a cone of this Curve reaches a heatwork; null beyond the largest offset. */
function offsetSolver(curve: Curve): (model: ConeModel, heatwork: number) => SolvedAt | null {
  const peaks = peaksOf(curve.tempsC);
  const peaksC = peaks.before;
  const levels = levelsOf(curve.tempsC);
  const scratch = new Float64Array(peaksC.length);
  return (model, heatwork) => {
    const stateAt = (offsetK: number) =>
      followCone(model, { curve, offsetK, peaksC, levels, peaks }, scratch).state;
    const missK = (offsetK: number): number =>
      model.perFoldK * Math.log(stateAt(offsetK).heatwork / heatwork);
    const offsetK = risingRoot(missK, LARGEST_OFFSET_K);
    return offsetK === null ? null : { offsetK, marginSigmaK: stateAt(offsetK).marginSigmaK };
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
