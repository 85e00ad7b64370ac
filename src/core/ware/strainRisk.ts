import type { Band, Direction } from "../curve/edgeTimes.ts";
import type { Severity } from "../findings/Finding.ts";
import { fourthPowerK } from "./heatExchange.ts";
import { CRISTOBALITE_BAND, hasCristobalite, QUARTZ_BAND } from "./inversions.ts";
import { stressRatio } from "./pieceStress.ts";
import { type StrainNumbers, wareNumbers } from "./strainNumbers.ts";
import { atRest, mismatch, spacedMoments } from "./strainRunner.ts";
import type { Body, Ware } from "./Ware.ts";
import { advanceWare, BASE, LOAD, meanC, STATE_SIZE, shutKiln, WALL } from "./wareState.ts";

/**
 * Computed stress over strength that limits are taken at: half the strength, because the
 * computation is good to a factor of two. Our own estimate.
 */
export const SAFE_RATIO = 0.5;

/** No faster rate is ever named [°C/h]. */
const FASTEST_C_PER_HOUR = 3000;

/** Slowest rate that is told from standing still [°C/h]. */
const SLOWEST_C_PER_HOUR = 0.1;

/** The search ends when the ratio is this near to the one asked, as a share of it. */
const NEAR = 0.002;
const MOST_TRIES = 24;

/** Ware falls from so far above what is looked at, in steps of this much of the kiln [K]. */
const FROM_ABOVE_K = 250;
const STEP_K = 4;

/**
 * Steady cooling rate at which stress over strength reaches `ratio` inside a band [°C/h, positive].
 * The kiln falls at this rate from 250 K above the band until the last of the ware has left it, so
 * that a cooling at this rate has the ratio that `wareStrain` works out, within 3 %. At most 3000.
 *
 * @throws RangeError when the ratio is not above 0.
 */
export function limitingRate(
  ware: Ware,
  at: { readonly band: Band; readonly ratio: number },
): number {
  const numbers = wareNumbers(ware);
  return rateReaching(at.ratio, (rate) => worstFalling(numbers, at.band, rate));
}

/**
 * Steady cooling rate at which stress over strength reaches `ratio` while the wall is at one
 * temperature [°C/h, positive]; at most 3000. The limit already falls above an inversion, where
 * the wall is about to go through it, and stays low below it for as long as the base has yet to.
 * Above some 700 °C the glass in a body gives way and the limit means little.
 *
 * @throws RangeError when the ratio is not above 0.
 */
export function limitingRateAt(
  ware: Ware,
  at: { readonly tempC: number; readonly ratio: number },
): number {
  const numbers = wareNumbers(ware);
  return rateReaching(at.ratio, (rate) => {
    const state = new Float64Array(STATE_SIZE);
    for (const _ of falling(state, numbers, at.tempC + FROM_ABOVE_K, rate))
      if (meanC(state, WALL) <= at.tempC) break;
    return stressRatio(state, numbers);
  });
}

/** Worst stress over strength inside a band while the kiln falls at one rate [°C/h, positive]. */
function worstFalling(numbers: StrainNumbers, band: Band, rateCPerHour: number): number {
  const state = new Float64Array(STATE_SIZE);
  const states: Float64Array[] = [];
  for (const kilnC of falling(state, numbers, band.highC + FROM_ABOVE_K, rateCPerHour)) {
    if (kilnC > band.highC) continue;
    if (Math.max(kilnC, state[WALL]!, state[BASE]! + state[LOAD]!) < band.lowC) break;
    states.push(state.slice());
  }
  const mismatches = Float64Array.from(states, (each) => mismatch(each, numbers));
  const moments = spacedMoments([...states.keys()], mismatches);
  return Math.max(0, ...moments.map((step) => stressRatio(states[step]!, numbers)));
}

/** Lets a kiln fall at one rate, step by step, down to the room; the state is moved on. */
function* falling(
  state: Float64Array,
  numbers: StrainNumbers,
  fromC: number,
  rateCPerHour: number,
): Generator<number> {
  atRest(state, fromC);
  const around = shutKiln();
  const by = { around, seconds: (STEP_K * 3600) / rateCPerHour };
  for (let kilnC = fromC - STEP_K; kilnC > COLD_C; kilnC -= STEP_K) {
    around.airC = kilnC;
    around.radiantK4 = fourthPowerK(kilnC);
    advanceWare(state, numbers, by);
    yield kilnC;
  }
  // The kiln is cold; the ware follows.
  by.seconds = 120;
  for (let minutes = 0; minutes < 24 * 60; minutes += 2) {
    advanceWare(state, numbers, by);
    yield COLD_C;
  }
}

/** The kiln falls to the room [°C]. */
const COLD_C = 20;

/** The rate at which a rising ratio reaches its mark, by false position on logarithmic scales. */
function rateReaching(mark: number, ratioOf: (rateCPerHour: number) => number): number {
  if (!(mark > 0)) throw new RangeError(`limitingRate: ratio ${mark}`);
  let high = { rate: FASTEST_C_PER_HOUR, ratio: ratioOf(FASTEST_C_PER_HOUR) };
  if (high.ratio <= mark) return FASTEST_C_PER_HOUR;
  let low = { rate: SLOWEST_C_PER_HOUR, ratio: ratioOf(SLOWEST_C_PER_HOUR) };
  if (low.ratio >= mark) return SLOWEST_C_PER_HOUR;
  let rate = 0;
  for (let i = 0; i < MOST_TRIES; i++) {
    const whole = Math.log(high.rate / low.rate);
    const guess = Math.log(mark / low.ratio) / Math.log(high.ratio / low.ratio);
    // Never quite at an end, and in the middle every third time, so that it cannot stick.
    const share = i % 3 === 2 ? 0.5 : Math.min(0.95, Math.max(0.05, guess));
    rate = low.rate * Math.exp(whole * share);
    const ratio = ratioOf(rate);
    if (Math.abs(ratio / mark - 1) < NEAR) return rate;
    if (ratio > mark) high = { rate, ratio };
    else low = { rate, ratio };
  }
  return rate;
}

/** Where the limit is computed, and how finely [°C]. */
const FROM_C = 700;
const TO_C = 100;
const PLAIN_TO_C = 300;
const STEP_C = 10;

/** One place of a limit curve. */
export interface LimitPoint {
  readonly tempC: number;
  /** Signed: falling is negative [°C/h]. */
  readonly rateCPerHour: number;
}

/**
 * The cooling rate at which ware reaches half its strength, hot end first: from 700 to 100 °C with
 * cristobalite, without it to 300 °C, below which the computation is too strict for such ware.
 */
export function limitCurve(ware: Ware): readonly LimitPoint[] {
  const toC = hasCristobalite(ware.body) ? TO_C : PLAIN_TO_C;
  return Array.from({ length: (FROM_C - toC) / STEP_C + 1 }, (_, i) => {
    const tempC = FROM_C - i * STEP_C;
    return { tempC, rateCPerHour: 0 - limitingRateAt(ware, { tempC, ratio: SAFE_RATIO }) };
  });
}

/**
 * Pieces in the order of what they stand, the weakest first: the one with the lowest computed limit
 * in either inversion, the lower one only with cristobalite. Pieces that stand the same keep their order.
 */
export function weakestFirst<Piece extends { readonly ware: Ware }>(
  pieces: readonly Piece[],
): readonly Piece[] {
  return pieces
    .map((piece) => ({ piece, limit: lowestLimit(piece.ware) }))
    .toSorted((a, b) => a.limit - b.limit)
    .map(({ piece }) => piece);
}

function lowestLimit(ware: Ware): number {
  const bands = hasCristobalite(ware.body) ? [QUARTZ_BAND, CRISTOBALITE_BAND] : [QUARTZ_BAND];
  return Math.min(...bands.map((band) => limitingRate(ware, { band, ratio: SAFE_RATIO })));
}

/**
 * Computed stress over strength from which ware is clearly at risk: a caution. Below it lie the
 * everyday firings that come out whole, and what the computation cannot tell from them; our own mark.
 */
const AT_RISK = 0.7;

/** From here a piece is likelier to break than not: a warning. */
const LIKELY_TO_BREAK = 1;

/** What a ratio of stress over strength is called. */
export type StrainRisk = "low" | "watch" | "high";

/** The words and where they come from, as a sentence. */
export const STRAIN_RISK_WORDS = `Low is below ${AT_RISK} of the strength, watch from there to ${LIKELY_TO_BREAK}, high from ${LIKELY_TO_BREAK} on, where a piece is likelier to break than not; guides are taken at ${SAFE_RATIO}. The marks are our own`;

/** How much a computed stress over strength matters: the one place where a verdict on ware is made. */
export function strainSeverity(ratio: number): Severity {
  return ratio >= LIKELY_TO_BREAK ? "warning" : ratio >= AT_RISK ? "caution" : "note";
}

/**
 * The same for a rate beside its guide, both positive [°C/h], where the stress is not known yet: while
 * a kiln is still falling. Stress rises no faster than the rate, and is at `SAFE_RATIO` at the guide.
 */
export function rateSeverity(rateCPerHour: number, guideCPerHour: number): Severity {
  return strainSeverity((SAFE_RATIO * rateCPerHour) / guideCPerHour);
}

/** The word for a ratio. Never a promise. */
export function strainRisk(ratio: number): StrainRisk {
  const severity = strainSeverity(ratio);
  return severity === "warning" ? "high" : severity === "caution" ? "watch" : "low";
}

/**
 * Whether the computed stress of a passage is fit to judge ware by. On the way up porous ware bears
 * more than its strength says; and below the quartz inversion the computation is too strict for a
 * body without cristobalite, which is cooled and opened daily where it fears for it.
 */
export function isJudged(
  passage: { readonly band: string; readonly direction: Direction },
  body: Body,
): boolean {
  if (passage.direction === "heating") return false;
  return passage.band !== CRISTOBALITE_BAND.name || hasCristobalite(body);
}

/** The word for the ratio of a passage; null where it is not fit to judge by. */
export function passageRisk(
  passage: { readonly band: string; readonly direction: Direction; readonly ratio: number },
  body: Body,
): StrainRisk | null {
  return isJudged(passage, body) ? strainRisk(passage.ratio) : null;
}
