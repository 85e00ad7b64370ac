import type { ConePosition, ConeSeries, ConeState } from "./cone.ts";
import { coneIndex, wholeCones } from "./coneName.ts";

/** A position, and its uncertainty once the offset's is known. */
export interface PlacedPosition {
  readonly position: ConePosition;
  /** One sigma of the model alone, in cones; null outside the series. */
  readonly modelSigmaCones: number | null;
  /** One sigma in cones for that of the offset [K]; null outside the series. */
  readonly sigmaCones: (offsetSigmaK: number) => number | null;
}

/** What the model is out by where charts are best [K]; reported firings hold it already. */
export const CHART_SIGMA_K = 3;

/** Where the margins stand among the whole cones: the last one down, and the share of the way on. */
export function conePosition(series: ConeSeries, states: readonly ConeState[]): PlacedPosition {
  const whole = new Set(wholeCones(series));
  const cones = states.filter((state) => whole.has(state.cone));
  const last = cones.findLastIndex((state) => state.marginK >= 0);
  const below = cones[last];
  const above = cones[last + 1];
  if (below === undefined) return outside(`below cone ${above?.cone}`, null, above?.cone ?? null);
  if (above === undefined) return outside(`cone ${below.cone} or more`, below.cone, null);
  const spacingK = below.marginK - above.marginK;
  const fraction = below.marginK / spacingK;
  const from = coneIndex(below.cone);
  const modelSigmaK = Math.max(below.marginSigmaK, above.marginSigmaK);
  return {
    position: {
      cone: below.cone,
      fraction,
      next: above.cone,
      label: `cone ${below.cone} + ${Math.min(99, Math.round(fraction * 100))} %`,
      index: from + fraction * (coneIndex(above.cone) - from),
    },
    modelSigmaCones: halfSpread(cones, modelSigmaK),
    sigmaCones: (offsetSigmaK) => halfSpread(cones, totalSigmaK(offsetSigmaK, modelSigmaK)),
  };
}

/** One sigma of offset and model together [K]: what the model is worse than at the chart's rates is added. */
export function totalSigmaK(offsetSigmaK: number, marginSigmaK: number): number {
  return Math.sqrt(offsetSigmaK ** 2 + Math.max(0, marginSigmaK ** 2 - CHART_SIGMA_K ** 2));
}

/** Half of how far the position moves between so much less and so much more heat [cones]. */
function halfSpread(cones: readonly ConeState[], sigmaK: number): number | null {
  const high = indexAt(cones, sigmaK);
  const low = indexAt(cones, -sigmaK);
  const here = indexAt(cones, 0);
  if (here === null) return null;
  if (high !== null && low !== null) return (high - low) / 2;
  return high !== null ? high - here : low !== null ? here - low : null;
}

/** Position with so much added to every margin [K], straight between cones; null outside the series. */
function indexAt(cones: readonly ConeState[], moreK: number): number | null {
  const last = cones.findLastIndex((state) => state.marginK + moreK >= 0);
  const below = cones[last];
  const above = cones[last + 1];
  if (below === undefined || above === undefined) return null;
  const from = coneIndex(below.cone);
  const fraction = (below.marginK + moreK) / (below.marginK - above.marginK);
  return from + fraction * (coneIndex(above.cone) - from);
}

function outside(label: string, cone: string | null, next: string | null): PlacedPosition {
  return {
    position: { cone, fraction: null, next, label, index: null },
    modelSigmaCones: null,
    sigmaCones: () => null,
  };
}
