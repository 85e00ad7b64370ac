import type { Curve } from "../../curve/Curve.ts";

/** Raw clay on its way up, in a plan or in a firing that was. */
export interface RawWare {
  readonly curve: Curve;
  /** Null when nobody says whether the ware was raw. */
  readonly isRaw: boolean | null;
  readonly isDamp: boolean;
  /** Null when not known. */
  readonly thickestMm: number | null;
  readonly peakC: number;
  readonly tense: "plan" | "past";
}

/** From this peak on ware of which nothing is said is taken for glazed [°C]. */
const GLAZE_FROM_C = 1100;

/** A log of which nothing is said is a bisque from this peak on; cooler firings are decals and lustres [°C]. */
const BISQUE_FROM_C = 850;

/** Whether the ware may be raw at all. */
export function mayBeRaw({ isRaw, peakC, tense }: RawWare): boolean {
  if (isRaw !== null) return isRaw;
  return peakC < GLAZE_FROM_C && (tense === "plan" || peakC >= BISQUE_FROM_C);
}
