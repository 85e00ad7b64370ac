import { type Curve, lastAtOrBefore } from "../curve/Curve.ts";
import { kelvinFromCelsius } from "../units/temperature.ts";
import type { ConeModel } from "./coneModel.ts";
import { arrheniusRate, scaledArrheniusIntegral } from "./kinetics.ts";

/** A piece that rises or falls less than this [K] counts as flat; error below 1e−9 of the piece. */
const FLAT_K = 1e-3;
/** Pieces colder than this many e-folds below cone and peak add less than 1e−6 to a budget. */
const IGNORED_FOLDS = 14;
/** Counting stops here: a cone that took this many budgets is a puddle, and its number means nothing. */
const MOST_BUDGETS = 10_000;

/**
 * Heatwork of one straight piece: exact on a ramp, and the same rising and falling.
 * @returns Share of the cone's budget; 1 = down in the bare model.
 */
export function pieceBudget(
  model: ConeModel,
  piece: { readonly fromK: number; readonly toK: number; readonly seconds: number },
): number {
  const { activationKJ, logPreFactor } = model;
  const { fromK, toK } = piece;
  const hours = piece.seconds / 3600;
  if (Math.abs(toK - fromK) < FLAT_K)
    return hours * arrheniusRate(0.5 * (fromK + toK), activationKJ, logPreFactor);
  const rise =
    scaledArrheniusIntegral(toK, activationKJ, logPreFactor) -
    scaledArrheniusIntegral(fromK, activationKJ, logPreFactor);
  return (hours * rise) / (toK - fromK);
}

/**
 * Budget of a cone from the start to each point of a Curve, written into `into`.
 * Nothing is added across gaps. Never falls; stops at 10 000 budgets.
 *
 * @param heat The Curve, K to add to its readings, its highest reading [°C], and its levels if known.
 * @param into As long as the Curve; the last value is the budget of the whole.
 */
export function cumulateBudget(model: ConeModel, heat: BudgetHeat, into: Float64Array): void {
  const { first, last } = warmBudget(model, heat, into);
  into.fill(0, 0, first);
  into.fill(into[last]!, last + 1);
}

/** What a budget is taken from: the Curve, K to add to its readings, its highest reading [°C]. */
interface BudgetHeat {
  readonly curve: Curve;
  readonly offsetK: number;
  readonly peakC: number;
  /** The different readings, when they are known to be few. */
  readonly levels?: Levels | null;
  /** The highest readings up to and from each point, when they are known. */
  readonly peaks?: Peaks;
}

/**
 * The same, written only at the points between which the budget changes: 0 before the first of
 * them, and after the last as it is there. For most cones that is a small part of a firing.
 */
export function warmBudget(
  model: ConeModel,
  heat: BudgetHeat,
  into: Float64Array,
): { readonly first: number; readonly last: number } {
  const { timesSeconds, gaps } = heat.curve;
  const peakK = kelvinFromCelsius(heat.peakC) + heat.offsetK;
  const coldK = Math.min(model.endPoint60K, peakK) - IGNORED_FOLDS * model.perFoldK;
  const warm = warmPieces(heat, coldK);
  const known = knownLevels(model, heat, warm);
  let first = warm.first;
  let budget = 0;
  for (const gap of gaps) {
    const end = lastAtOrBefore(timesSeconds, gap.toSeconds);
    if (end < first || end > warm.last) continue;
    const last = addPieces(known, { first, last: end - 1, coldK, budget }, into);
    budget = last < warm.first ? 0 : into[last]!;
    if (budget >= MOST_BUDGETS) return { first: warm.first, last };
    into[end] = budget;
    first = end + 1;
  }
  const last = addPieces(known, { first, last: warm.last, coldK, budget }, into);
  return { first: warm.first, last: Math.max(last, warm.first) };
}

/** A cone on a log: what it makes of the levels of the readings. */
interface KnownLevels {
  readonly model: ConeModel;
  readonly curve: Curve;
  readonly offsetK: number;
  readonly levelOf: Int32Array;
  /** By level: the scaled integral, and the rate where a flat piece was met; 0 where not worked out. */
  readonly integrals: Float64Array;
  readonly rates: Float64Array;
}

function knownLevels(
  model: ConeModel,
  { curve, offsetK, levels }: BudgetHeat,
  warm: { readonly first: number; readonly last: number },
): KnownLevels {
  const levelOf = levels?.levelOf ?? Int32Array.from(curve.tempsC, (_, i) => i);
  const count = levels?.tempsC.length ?? curve.tempsC.length;
  const integrals = new Float64Array(count);
  const rates = new Float64Array(count);
  const known = { model, curve, offsetK, levelOf, integrals, rates };
  workOut(known, warm);
  return known;
}

/** Works out the integrals of the levels that some readings have. */
function workOut(
  { model, curve, offsetK, levelOf, integrals }: KnownLevels,
  { first, last }: { readonly first: number; readonly last: number },
): void {
  const { tempsC } = curve;
  const { activationKJ, logPreFactor } = model;
  for (let i = first - 1; i <= last; i++) {
    const level = levelOf[i]!;
    if (integrals[level] !== 0) continue;
    const tempK = kelvinFromCelsius(tempsC[i]!) + offsetK;
    integrals[level] = scaledArrheniusIntegral(tempK, activationKJ, logPreFactor);
  }
}

/**
 * Adds the pieces that end at some readings, no gap among them, each as `pieceBudget` does.
 * One plain loop: every reading of a log passes here for every cone.
 * @returns the last reading that was come to; its budget is 10 000 when it is not the last asked for.
 */
function addPieces(
  known: KnownLevels,
  on: {
    readonly first: number;
    readonly last: number;
    readonly coldK: number;
    readonly budget: number;
  },
  into: Float64Array,
): number {
  const { curve, offsetK, levelOf, integrals } = known;
  const { timesSeconds, tempsC } = curve;
  const { last, coldK } = on;
  let { budget } = on;
  let fromSeconds = timesSeconds[on.first - 1]!;
  let fromK = kelvinFromCelsius(tempsC[on.first - 1]!) + offsetK;
  let from = integrals[levelOf[on.first - 1]!] as number;
  for (let i = on.first; i <= last; i++) {
    const toSeconds = timesSeconds[i]!;
    const toK = kelvinFromCelsius(tempsC[i]!) + offsetK;
    const to = integrals[levelOf[i]!] as number;
    if (fromK >= coldK || toK >= coldK) {
      const hours = (toSeconds - fromSeconds) / 3600;
      const riseK = toK - fromK;
      if (Math.abs(riseK) < FLAT_K) budget += hours * flatRate(known, i, riseK);
      else budget += (hours * (to - from)) / riseK;
      if (budget >= MOST_BUDGETS) {
        into[i] = MOST_BUDGETS;
        return i;
      }
    }
    into[i] = budget;
    fromSeconds = toSeconds;
    fromK = toK;
    from = to;
  }
  return last;
}

/** Rate of heatwork [1/h] on a flat piece; of one level, worked out once. */
function flatRate(known: KnownLevels, index: number, riseK: number): number {
  const { model, curve, offsetK, levelOf, rates } = known;
  const level = levelOf[index]!;
  if (riseK === 0 && rates[level] !== 0) return rates[level]!;
  const toK = kelvinFromCelsius(curve.tempsC[index]!) + offsetK;
  const fromK = kelvinFromCelsius(curve.tempsC[index - 1]!) + offsetK;
  const rate = arrheniusRate(0.5 * (fromK + toK), model.activationKJ, model.logPreFactor);
  if (riseK === 0) rates[level] = rate;
  return rate;
}

/** The pieces, by the readings at their ends, outside which all are too cold to count. */
function warmPieces(
  heat: { readonly curve: Curve; readonly offsetK: number; readonly peaks?: Peaks },
  coldK: number,
): { readonly first: number; readonly last: number } {
  const { before, after } = heat.peaks ?? peaksOf(heat.curve.tempsC);
  const isCold = (tempC: number) => kelvinFromCelsius(tempC) + heat.offsetK < coldK;
  const first = partition(before.length, (i) => isCold(before[i]!));
  const last = partition(after.length, (i) => !isCold(after[i]!)) - 1;
  return { first: Math.max(1, first), last: Math.min(before.length - 1, last + 1) };
}

/** The first place, of so many, at which something no longer holds that holds up to there. */
function partition(count: number, holds: (place: number) => boolean): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Highest readings up to and from each point [°C], by which the warm part of a Curve is found. */
export interface Peaks {
  readonly before: Float64Array;
  readonly after: Float64Array;
}

/** The highest readings up to and from each point. */
export function peaksOf(tempsC: Float64Array): Peaks {
  const after = new Float64Array(tempsC.length);
  let peakC = Number.NEGATIVE_INFINITY;
  for (let i = tempsC.length - 1; i >= 0; i--) {
    if (tempsC[i]! > peakC) peakC = tempsC[i]!;
    after[i] = peakC;
  }
  return { before: runningPeakC(tempsC), after };
}

/** Highest temperature up to each point [°C]; the last value is the peak. */
export function runningPeakC(tempsC: Float64Array): Float64Array {
  const peaksC = new Float64Array(tempsC.length);
  let peakC = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < tempsC.length; i++) {
    if (tempsC[i]! > peakC) peakC = tempsC[i]!;
    peaksC[i] = peakC;
  }
  return peaksC;
}

/** The different readings of a Curve: far fewer than readings, since an instrument shows steps. */
export interface Levels {
  /** Number of each reading's level. */
  readonly levelOf: Int32Array;
  /** Temperature of each level [°C]. */
  readonly tempsC: Float64Array;
}

/** With fewer readings nothing is won. */
const FEWEST_READINGS = 2000;
/** Readings to each level from which it is worth to look a level up. */
const LEAST_SHARE = 4;
/** Places of the table of levels; a power of two. */
const PLACES = 1 << 17;

const NUMBER = new Float64Array(1);
const HALVES = new Int32Array(NUMBER.buffer);

/** The levels of readings, or null when nearly every reading is another one. */
export function levelsOf(tempsC: Float64Array): Levels | null {
  const most = Math.min(PLACES / 2, Math.floor(tempsC.length / LEAST_SHARE));
  if (tempsC.length < FEWEST_READINGS) return null;
  const levelOf = new Int32Array(tempsC.length);
  const levels = new Float64Array(most);
  const table = new Int32Array(PLACES).fill(-1);
  let count = 0;
  for (let i = 0; i < tempsC.length; i++) {
    const tempC = tempsC[i]!;
    let place = placeOf(tempC);
    while (table[place]! >= 0 && levels[table[place]!] !== tempC)
      place = (place + 1) & (PLACES - 1);
    if (table[place]! < 0) {
      if (count === most) return null;
      table[place] = count;
      levels[count++] = tempC;
    }
    levelOf[i] = table[place]!;
  }
  return { levelOf, tempsC: levels.subarray(0, count) };
}

/** Where a level is looked for first; the same for 0 and −0. */
function placeOf(tempC: number): number {
  NUMBER[0] = tempC + 0;
  const mixed = Math.imul(HALVES[0]! ^ HALVES[1]!, 0x9e37_79b1);
  return (mixed >>> 15) & (PLACES - 1);
}
