import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { HOTTEST_C } from "./parseSegments.ts";

/** Slowest climb that the cone charts cover [°C/h]. */
const SLOWEST_C_PER_HOUR = 15;

/** Hottest that a kiln climbs to at a rate that the cone charts still cover, in steps of 5 °C; 1400 at most. */
export function kilnReachC(kiln: AssumedKiln): number {
  let reachC = 0;
  while (reachC < HOTTEST_C && kiln.fullHeatingCPerHour(reachC + 5) >= SLOWEST_C_PER_HOUR)
    reachC += 5;
  return reachC;
}
