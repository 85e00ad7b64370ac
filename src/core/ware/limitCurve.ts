import { hasCristobalite } from "./inversionBands.ts";
import { limitingRateAt, SAFE_RATIO } from "./limitingRate.ts";
import type { Ware } from "./Ware.ts";

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
