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

/** What the witness cones of one firing allow a thermocouple to be out by [K]; null = no bound on that side. */
interface OffsetBounds {
  readonly lowK: number | null;
  readonly highK: number | null;
}

/** How a thermocouple's offset moved over a row of firings. */
export interface OffsetTrend {
  /** Of the straight line from the first pinned firing to the last [K]; above 0 it reads lower than it did. */
  readonly driftK: number;
  /** One sigma of it [K]. */
  readonly sigmaK: number;
  /** Firings whose cones pin the offset from both sides. */
  readonly firings: number;
  /** It stands out from what the cones leave open. */
  readonly isPlain: boolean;
}

/** Fewer firings make no row. */
export const FEWEST_PINNED = 4;
/** A cone bends a little otherwise in each firing and place, beside what it allows [K]; our own estimate. */
const FIRING_SIGMA_K = 5;
/** A drift is plain from so many sigmas on, and from so much on [K]. */
const PLAIN_SIGMAS = 3;
const PLAIN_K = 8;

/**
 * The drift of a thermocouple over firings in their order, one of equal weight after the other: a line
 * through the middles of what their cones allow, each as sure as its interval is narrow. Many firings
 * together tell what no two of them can.
 *
 * @returns null when fewer than four firings pin the offset from both sides.
 */
export function offsetTrend(bounds: readonly OffsetBounds[]): OffsetTrend | null {
  const pinned = bounds.flatMap(({ lowK, highK }, at) =>
    lowK === null || highK === null
      ? []
      : [
          {
            at,
            middleK: (lowK + highK) / 2,
            // Anywhere in the interval is equally likely.
            sigmaK: Math.hypot((highK - lowK) / Math.sqrt(12), FIRING_SIGMA_K),
          },
        ],
  );
  const [first, last] = [pinned[0], pinned.at(-1)];
  if (pinned.length < FEWEST_PINNED || first === undefined || last === undefined) return null;
  const sum = (of: (point: (typeof pinned)[number]) => number) =>
    pinned.reduce((all, point) => all + of(point) / point.sigmaK ** 2, 0);
  const weight = sum(() => 1);
  const meanAt = sum(({ at }) => at) / weight;
  const meanK = sum(({ middleK }) => middleK) / weight;
  const spread = sum(({ at }) => (at - meanAt) ** 2);
  const slope = sum(({ at, middleK }) => (at - meanAt) * (middleK - meanK)) / spread;
  const scatter = sum(({ at, middleK }) => (middleK - meanK - slope * (at - meanAt)) ** 2);
  // Firings that scatter more than their intervals say are believed, not the intervals.
  const excess = Math.max(1, Math.sqrt(scatter / (pinned.length - 2)));
  const driftK = slope * (last.at - first.at);
  const sigmaK = (excess * (last.at - first.at)) / Math.sqrt(spread);
  const isPlain = Math.abs(driftK) > Math.max(PLAIN_K, PLAIN_SIGMAS * sigmaK);
  return { driftK, sigmaK, firings: pinned.length, isPlain };
}
