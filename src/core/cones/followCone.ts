import type { Curve } from "../curve/Curve.ts";
import { kelvinFromCelsius } from "../units/temperature.ts";
import { type Levels, type Peaks, pieceBudget, warmBudget } from "./budget.ts";
import type { Bend, ConeState } from "./cone.ts";
import { anchored, type ConeModel, logEffectiveRate, marginSigmaK } from "./coneModel.ts";

/** Budgets below this are as good as none; keeps logarithms finite. */
const NOTHING = 1e-300;

/** A Curve made ready for following many cones. */
export interface Heat {
  readonly curve: Curve;
  /** Added to every reading [K]. */
  readonly offsetK: number;
  /** Highest reading up to each point [°C], offset not added. */
  readonly peaksC: Float64Array;
  /** The different readings, when they are known to be few. */
  readonly levels?: Levels | null;
  /** The highest readings up to and from each point, when they are known. */
  readonly peaks?: Peaks;
}

/** A cone's state with the model it came from. */
export interface FollowedCone {
  readonly model: ConeModel;
  /** Natural logarithm of the bare budget, before anchoring. */
  readonly logHeatwork: number;
  readonly state: ConeState;
}

/** Follows one cone through a Curve; `scratch` is as long as the Curve and overwritten. */
export function followCone(model: ConeModel, heat: Heat, scratch: Float64Array): FollowedCone {
  const peakC = heat.peaksC.at(-1)!;
  const { curve, offsetK, levels, peaks } = heat;
  const warm = warmBudget(
    model,
    { curve, offsetK, peakC, levels: levels ?? null, ...(peaks && { peaks }) },
    scratch,
  );
  const downAtSeconds = timeDown(model, heat, { budget: scratch, ...warm });
  const logHeatwork = logOf(scratch[warm.last]!);
  const peakK = kelvinFromCelsius(peakC) + heat.offsetK;
  const atEnd = anchored(model, peakK, logHeatwork);
  const isDown = downAtSeconds !== null;
  const heatwork = isDown ? Math.max(1, atEnd.heatwork) : atEnd.heatwork;
  return {
    model,
    logHeatwork,
    state: {
      cone: model.cone,
      heatwork,
      marginK: isDown ? Math.max(0, atEnd.marginK) : atEnd.marginK,
      marginSigmaK: marginSigmaK(model, logEffectiveRate(model, peakK, logHeatwork)),
      bend: bendOf(heatwork),
      downAtSeconds,
    },
  };
}

/** Logarithm of a budget, finite even when nothing was counted. */
export function logOf(budget: number): number {
  return Math.log(Math.max(budget, NOTHING));
}

/** First moment [s] at which the anchored margin reaches 0, or null. */
function timeDown(model: ConeModel, heat: Heat, { budget, first, last }: WarmPart): number | null {
  const shiftsK = model.shifts.map((shift) => shift.shiftK);
  const enough = Math.exp((2 * Math.min(0, ...shiftsK)) / model.perFoldK);
  for (let i = firstAtLeast({ budget, first, last }, enough); i <= last; i++) {
    // Where nothing was added and no peak passed, the margin is that of the reading before.
    const before = i === first ? 0 : budget[i - 1]!;
    if (budget[i] === before && heat.peaksC[i] === heat.peaksC[i - 1]) continue;
    const marginK = marginAt(model, heat, { budget: budget[i]!, index: i });
    if (marginK >= 0) return timeInPiece(model, heat, { before, after: budget[i]!, index: i });
  }
  return null;
}

function marginAt(
  model: ConeModel,
  heat: Heat,
  at: { readonly budget: number; readonly index: number },
): number {
  const peakK = kelvinFromCelsius(heat.peaksC[at.index]!) + heat.offsetK;
  return anchored(model, peakK, logOf(at.budget)).marginK;
}

/** Moment inside the piece that ends at a point; the end itself when nothing was measured in it. */
function timeInPiece(
  model: ConeModel,
  { curve, offsetK, peaksC }: Heat,
  at: { readonly before: number; readonly after: number; readonly index: number },
): number {
  const { timesSeconds, tempsC } = curve;
  const start = timesSeconds[at.index - 1]!;
  const end = timesSeconds[at.index]!;
  const { before } = at;
  if (before === at.after) return end;
  const fromK = kelvinFromCelsius(tempsC[at.index - 1]!) + offsetK;
  const endK = kelvinFromCelsius(tempsC[at.index]!) + offsetK;
  const peakBeforeK = kelvinFromCelsius(peaksC[at.index - 1]!) + offsetK;
  let low = 0;
  let high = 1;
  while (high - low > 1e-9) {
    const share = 0.5 * (low + high);
    const toK = fromK + share * (endK - fromK);
    const soFar = before + pieceBudget(model, { fromK, toK, seconds: share * (end - start) });
    const isDown = anchored(model, Math.max(peakBeforeK, toK), logOf(soFar)).marginK >= 0;
    if (isDown) high = share;
    else low = share;
  }
  return start + high * (end - start);
}

/** Budgets of a cone at the points between which they change. */
interface WarmPart {
  readonly budget: Float64Array;
  readonly first: number;
  readonly last: number;
}

/** First of these points whose budget is at least the wanted one. */
function firstAtLeast({ budget, first, last }: WarmPart, wanted: number): number {
  let low = first;
  let high = last + 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (budget[middle]! < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** One level of bending: how far, and the heatwork at which it is seen, with its spread. */
interface BendLevel {
  /** Hour hand: 0 (12 o'clock) upright, 6 tip level with the base. */
  readonly oClock: number;
  readonly heatwork: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Heatwork at four positions of the tip. Inferred, not measured: from bending that lasts 15–25 min
 * and from 1–2 degrees between 4 o'clock and touching (notes printed with the chart). The spread at
 * 3 o'clock and at 6 o'clock is this project's reading of the same notes.
 */
const LEVELS: readonly [BendLevel, ...BendLevel[]] = [
  { oClock: 0, heatwork: 0.4, low: 0.3, high: 0.5 },
  { oClock: 3, heatwork: 0.8, low: 0.74, high: 0.86 },
  { oClock: 4, heatwork: 0.945, low: 0.93, high: 0.96 },
  { oClock: 6, heatwork: 1, low: 0.985, high: 1.015 },
];

/** Clearly over: touching and beyond. */
const WELL_PAST = 1.2;
/** Between 3 and 4 o'clock, 3.5: nearer down than half-way. */
const NEARLY_DOWN = 0.9;

/** How far a cone has bent at a share of its heatwork budget, in words. */
function bendOf(heatwork: number): Bend {
  if (heatwork < 0.4) return "upright";
  if (heatwork < 0.8) return "starting to bend";
  if (heatwork < NEARLY_DOWN) return "half down";
  if (heatwork < 1) return "nearly down";
  return heatwork > WELL_PAST ? "well past down" : "down";
}

/**
 * Heatwork of a partly bent cone, with its spread; straight in ln heatwork between known positions.
 *
 * @param oClock Hour hand of the tip, 0–6: 0 or 12 = upright, 3 = half-way, 6 = level with the base.
 * 90 angular degrees are 6 o'clock, so one clock hour is 15 degrees.
 */
export function heatworkAtClock(oClock: number): {
  readonly heatwork: number;
  readonly low: number;
  readonly high: number;
} {
  const upper = LEVELS.findIndex((level) => level.oClock >= oClock);
  const to = LEVELS[upper] ?? LEVELS.at(-1) ?? LEVELS[0];
  const from = LEVELS[upper - 1] ?? to;
  const share = to === from ? 0 : (oClock - from.oClock) / (to.oClock - from.oClock);
  const between = (a: number, b: number) => Math.exp(Math.log(a) + share * Math.log(b / a));
  return {
    heatwork: between(from.heatwork, to.heatwork),
    low: between(from.low, to.low),
    high: between(from.high, to.high),
  };
}
