import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { fullSpeed } from "./fullRamp.ts";
import type { Expansion, TimelineRow } from "./Schedule.ts";

/** Longest temperature step when a ramp's power is added up [K]. */
const STEP_K = 10;

const JOULES_PER_KWH = 3.6e6;

/**
 * Electricity that a row of a timeline takes [kWh]: what the kiln stores and what it loses,
 * C·(dT/dt + fall by itself), and nothing while the elements are off.
 *
 * @returns null when the kiln's heat capacity is not known.
 */
export function rowKWh(row: TimelineRow, kiln: AssumedKiln): number | null {
  const { heatCapacityJPerK } = kiln;
  if (heatCapacityJPerK === undefined) return null;
  if (row.assumedRate && row.toC < row.fromC) return 0;
  const seconds = row.endSeconds - row.startSeconds;
  const steps = Math.max(1, Math.ceil(Math.abs(row.toC - row.fromC) / STEP_K));
  let kelvins = 0;
  for (let k = 0; k < steps; k++) {
    const tempC = row.fromC + ((row.toC - row.fromC) * (k + 0.5)) / steps;
    const loss = kiln.naturalCoolingCPerHour(tempC);
    const stepC = (row.toC - row.fromC) / steps;
    const hours = row.assumedRate
      ? Math.abs(stepC) / fullSpeed(kiln, tempC, true)
      : seconds / steps / 3600;
    kelvins += Math.max(0, stepC + loss * hours);
  }
  return (kelvins * heatCapacityJPerK) / JOULES_PER_KWH;
}

/** Electricity of a whole schedule [kWh]; null when the kiln's heat capacity is not known. */
export function energyKWh(expansion: Expansion, kiln: AssumedKiln): number | null {
  let sum = 0;
  for (const row of expansion.timeline) {
    const kWh = rowKWh(row, kiln);
    if (kWh === null) return null;
    sum += kWh;
  }
  return sum;
}
