import type { WitnessOffset } from "../cones/witnessOffset.ts";
import { medianInPlace } from "../curve/median.ts";

/** What the witness cones of past firings say of a thermocouple, taken together. */
export interface PastOffset {
  /** Add to the readings of the next firing [K]. */
  readonly offsetK: number;
  /** One sigma of it, for the next firing [K]. */
  readonly sigmaK: number;
  /** Lowest and highest of the firings, or what the cones of the only one allow [K]. */
  readonly lowK: number;
  readonly highK: number;
  readonly firings: number;
}

/** What one kiln differs by from firing to firing, load and place [K]; own estimate. */
const BETWEEN_FIRINGS_K = 5;
/** A firing this far from the middle of the others counts for less [K]. */
const ODD_ONE_OUT_K = 15;
/** Precision below which witness cones told nothing beyond the usual offset [1/K²]. */
const NOTHING_TOLD = 1e-5;

/**
 * The usual offset once, and what the witness cones of each firing add to it, each by its own
 * precision; of one firing it is that firing's offset. A firing far from the others counts for less.
 * Firings in which cones bound the offset on one side only are left out.
 *
 * @returns null when no firing bounds an offset on both sides.
 */
export function pastOffset(offsets: readonly WitnessOffset[]): PastOffset | null {
  const bounded = offsets.flatMap((each) => {
    const { lowK, highK } = each;
    return lowK === null || highK === null ? [] : [{ ...each, lowK, highK }];
  });
  const [first] = bounded;
  if (first === undefined) return null;
  const { usual } = first;
  const told = bounded.flatMap(({ offsetK, sigmaK, usual: before }) => {
    const precision = sigmaK ** -2 - before.sigmaK ** -2;
    if (precision < NOTHING_TOLD) return [];
    return [{ precision, aloneK: aloneOf({ offsetK, sigmaK }, before, precision) }];
  });
  const middleK = medianInPlace(told.map(({ aloneK }) => aloneK));
  let precision = usual.sigmaK ** -2;
  let sum = usual.offsetK * precision;
  for (const each of told) {
    const awayK = told.length > 2 ? Math.abs(each.aloneK - middleK) : 0;
    const weight = each.precision * Math.min(1, ODD_ONE_OUT_K / awayK) ** 2;
    precision += weight;
    sum += weight * each.aloneK;
  }
  const all = bounded.map(({ offsetK }) => offsetK);
  return {
    offsetK: sum / precision,
    sigmaK: Math.min(usual.sigmaK, Math.hypot(precision ** -0.5, BETWEEN_FIRINGS_K)),
    lowK: bounded.length === 1 ? first.lowK : Math.min(...all),
    highK: bounded.length === 1 ? first.highK : Math.max(...all),
    firings: bounded.length,
  };
}

/** What a firing's cones say by themselves, the usual offset taken out of what both say together. */
function aloneOf(
  both: { readonly offsetK: number; readonly sigmaK: number },
  usual: { readonly offsetK: number; readonly sigmaK: number },
  precision: number,
): number {
  return (both.offsetK * both.sigmaK ** -2 - usual.offsetK * usual.sigmaK ** -2) / precision;
}
