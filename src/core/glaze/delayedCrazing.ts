import { cited } from "../sources/basedOn.ts";
import type { Body, Property } from "../ware/Ware.ts";

/** Span that long-term moisture expansion is taken for [years]; our own choice. */
export const LONG_TERM_YEARS = 10;

/**
 * Linear growth of fired bodies by moisture over the long term [length over length].
 * @see SOURCES["hall-wilson-hoff-2011"]
 */
const POROUS: Property = {
  value: 0.001,
  low: 0.0005,
  high: 0.002,
  source: `${cited("hall-wilson-hoff-2011")}; ${cited("four-porous-bodies")}`,
};
const SLIGHTLY_POROUS: Property = {
  value: 0.0002,
  low: 0.00005,
  high: 0.0005,
  source: "our own estimate",
};
const DENSE: Property = { value: 0, low: 0, high: 0.00005, source: cited("morgan-1941") };

/**
 * Growth of a body by moisture over ten years [length over length].
 * By water absorption [%]: under 0.5 dense, from 6 porous; where it is not known, by the kind in
 * the body's name: porcelain dense, earthenware porous, anything else between.
 */
export function moistureGrowth(body: Body, absorptionPercent: number | null): Property {
  if (absorptionPercent !== null) {
    if (!(absorptionPercent >= 0)) throw new RangeError(`moistureGrowth: ${absorptionPercent} %`);
    if (absorptionPercent < 0.5) return DENSE;
    return absorptionPercent < 6 ? SLIGHTLY_POROUS : POROUS;
  }
  const name = body.name.toLowerCase();
  if (/porcelain/.test(name)) return DENSE;
  return /earthenware|terracotta|red clay|majolica|raku/.test(name) ? POROUS : SLIGHTLY_POROUS;
}

/**
 * Years until moisture growth reaches a strain, when it grows with the fourth root of time.
 * @see SOURCES["wilson-2003"]
 */
export function yearsUntilGrowth(needed: number, longTermGrowth: number): number {
  return LONG_TERM_YEARS * (needed / longTermGrowth) ** 4;
}

/**
 * Toughness below which a crack in wet glass stands still, over toughness: 0.25 of 0.70 MPa·√m.
 * @see SOURCES["glass-slow-growth"]
 */
export const STANDSTILL: Property = {
  value: 0.25 / 0.7,
  low: 0.2 / 0.7,
  high: 0.35 / 0.7,
  source: cited("glass-slow-growth"),
};

/** Least coat that may still craze in time [mm], from the coat that crazes at once. */
export function delayedCoatMm(thresholdMm: number, standstill: number): number {
  return thresholdMm * standstill ** 2;
}
