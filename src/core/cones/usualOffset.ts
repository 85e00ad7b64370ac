import type { Curve } from "../curve/Curve.ts";
import type { ConeSeries, Heatwork } from "./cone.ts";
import { heatworkOf } from "./heatwork.ts";

/** What to add to a thermocouple's readings before cones are judged, and how well that is known. */
export interface KilnOffset {
  /** Add to the readings [K]. */
  readonly offsetK: number;
  /** One sigma [K]: thermocouple, place in the kiln and cone model together, as at the chart's rates. */
  readonly sigmaK: number;
}

/** Hottest reading up to which any chart rate leaves cone 04 or less: 1077 °C at 150 °C/h [°C]. */
const BISQUE_UP_TO_C = 1075;
/** Reading from which on every chart rate makes cone 1 or more: 1109 °C at 15 °C/h, offset added [°C]. */
const GLAZE_FROM_C = 1105;

/** Below cone 1: too few reported firings to tell a mean from 0. */
const BISQUE: KilnOffset = { offsetK: 0, sigmaK: 14 };
/** From cone 1 up: mean and scatter of the firings that {@link USUAL_OFFSET_BASIS} tells of. */
const GLAZE: KilnOffset = { offsetK: 8, sigmaK: 12 };

/** Where the usual offset is from, for a person to read. */
export const USUAL_OFFSET_BASIS =
  "17 firings reported with the cones that fell, by potters on discussion lists, in books and on their own pages: their cones stood as if the readings had been 8.0 °C (14 °F) hotter on average, with a standard deviation of 12.1 °C (22 °F); the few below cone 1 show no such lead";

/** One sigma of an offset that was told, or found by witness cones in other firings [K]; own estimate. */
export const TOLD_SIGMA_K = 6;

/**
 * What thermocouples are usually out by where no witness cone checks them: kilns mostly run a little
 * hotter for the cone than they read. +8 ± 12 K from cone 1 up, 0 ± 14 K up to cone 04, and a smooth
 * way between. From reported firings, most of them in electric kilns with a sheathed thermocouple;
 * the scatter holds the cone model's own error at the chart's rates.
 *
 * @param peakC Highest reading of the firing, nothing added [°C].
 */
export function usualOffset(peakC: number): KilnOffset {
  const way = (peakC - BISQUE_UP_TO_C) / (GLAZE_FROM_C - BISQUE_UP_TO_C);
  const inside = Math.min(1, Math.max(0, way));
  const share = inside * inside * (3 - 2 * inside);
  return {
    offsetK: BISQUE.offsetK + share * (GLAZE.offsetK - BISQUE.offsetK),
    sigmaK: BISQUE.sigmaK + share * (GLAZE.sigmaK - BISQUE.sigmaK),
  };
}

/** What is known of the thermocouple of a Curve. */
export interface KnownOffset {
  /** Added to every reading [K]; null or left out for the usual one. */
  readonly offsetK?: number | null;
  /** One sigma of it [K]; left out for the usual one, or that of an offset that was told. */
  readonly offsetSigmaK?: number;
}

/** The offset to judge the cones of a Curve by: what is known, else the usual one at its peak. */
export function offsetFor(curve: Curve, known: KnownOffset): KilnOffset {
  const { offsetK } = known;
  const { offsetSigmaK } = known;
  if (offsetK !== undefined && offsetK !== null)
    return { offsetK, sigmaK: offsetSigmaK ?? TOLD_SIGMA_K };
  let peakC = Number.NEGATIVE_INFINITY;
  for (const tempC of curve.tempsC) if (tempC > peakC) peakC = tempC;
  const usual = usualOffset(peakC);
  return { offsetK: usual.offsetK, sigmaK: offsetSigmaK ?? usual.sigmaK };
}

/**
 * What the cones in a kiln will have seen of a Curve that its thermocouple read, or will read:
 * `heatworkOf` with the offset that is known, or else with the usual one.
 */
export function kilnHeatworkOf(
  curve: Curve,
  known: KnownOffset & { readonly series: ConeSeries },
): Heatwork {
  const { offsetK, sigmaK } = offsetFor(curve, known);
  const isKnown = known.offsetK !== undefined && known.offsetK !== null;
  return heatworkOf(curve, {
    series: known.series,
    offsetK,
    offsetSigmaK: sigmaK,
    offsetIs: isKnown ? "known" : "usual",
  });
}
