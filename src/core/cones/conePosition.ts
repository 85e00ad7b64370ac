import type { ConePosition, ConeSeries, ConeState } from "./cone.ts";
import { coneIndex, wholeCones } from "./coneName.ts";

/** A position, and its uncertainty once the sensor's is known. */
export interface PlacedPosition {
  readonly position: ConePosition;
  /** One sigma in cones, the sensor's [K] added in quadrature; null outside the series. */
  readonly sigmaCones: (sensorSigmaK: number) => number | null;
}

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
    sigmaCones: (sensorSigmaK) => Math.hypot(modelSigmaK, sensorSigmaK) / spacingK,
  };
}

function outside(label: string, cone: string | null, next: string | null): PlacedPosition {
  return {
    position: { cone, fraction: null, next, label, index: null },
    sigmaCones: () => null,
  };
}
