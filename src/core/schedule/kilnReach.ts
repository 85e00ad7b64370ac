import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import type { LearnedKiln } from "../kiln/LearnedKiln.ts";
import { predictFiring } from "../kiln/predictFiring.ts";
import { HOTTEST_C } from "./parseSegments.ts";

/** Slowest climb that the cone charts cover [°C/h]. */
const SLOWEST_C_PER_HOUR = 15;

const STEP_C = 5;

/** What a simulation may lie below its goal [K]. */
const HAIR_K = 0.02;

/**
 * Hottest that a kiln climbs to at a rate that the cone charts still cover, in steps of 5 °C; 1400 at
 * most. A learned kiln is simulated at full power from cold.
 */
export function kilnReachC(kiln: AssumedKiln): number {
  if (kiln.learned !== undefined) return simulatedReachC(kiln.learned);
  let reachC = 0;
  while (reachC < HOTTEST_C && kiln.fullHeatingCPerHour(reachC + STEP_C) >= SLOWEST_C_PER_HOUR)
    reachC += STEP_C;
  return reachC;
}

function simulatedReachC(learned: LearnedKiln): number {
  const { curve } = predictFiring(learned, {
    segments: [{ toC: HOTTEST_C, rateCPerHour: "free", holdSeconds: 0 }],
  });
  const { timesSeconds, tempsC } = curve;
  let reachC = tempsC[0]!;
  for (let i = 1; i < tempsC.length; i++) {
    const climbedC = tempsC[i]! - tempsC[i - 1]!;
    const hours = (timesSeconds[i]! - timesSeconds[i - 1]!) / 3600;
    if (climbedC / hours < SLOWEST_C_PER_HOUR) break;
    reachC = tempsC[i]!;
  }
  return Math.floor((reachC + HAIR_K) / STEP_C) * STEP_C;
}
