import type { Bend } from "./cone.ts";

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
export function bendOf(heatwork: number): Bend {
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
