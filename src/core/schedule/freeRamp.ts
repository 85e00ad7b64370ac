import type { AssumedKiln } from "../kiln/AssumedKiln.ts";

/** Slowest that a `free` ramp is counted [°C/h]: near room temperature a kiln never quite arrives. */
export const SLOWEST_FREE_C_PER_HOUR = 1;

/** Longest step between points of a `free` ramp [s]. */
const STEP_SECONDS = 300;

/** Whether a rate as somebody wrote it leaves the ramp to the kiln; `full` is what older files say. */
export function isFreeRate(written: string): boolean {
  return /^\s*(free|full)\s*$/i.test(written);
}

/** A point of a ramp: time from the ramp's start [s] and temperature [°C]. */
export interface RampPoint {
  readonly seconds: number;
  readonly tempC: number;
}

/** Speed [°C/h, positive] of a kiln in the direction of a ramp, never under the slowest counted. */
export function freeSpeed(kiln: AssumedKiln, tempC: number, rising: boolean): number {
  const speed = rising ? kiln.fullHeatingCPerHour(tempC) : kiln.naturalCoolingCPerHour(tempC);
  if (!Number.isFinite(speed)) throw new RangeError(`freeSpeed: ${speed} °C/h at ${tempC} °C`);
  return Math.max(SLOWEST_FREE_C_PER_HOUR, speed);
}

/**
 * A ramp at `free`, from one temperature to another, without its first point; with a most, the ramp of
 * a controller that asks for so much and gets what the kiln does.
 * Time = ∫ dT / speed(T), by Simpson's rule on steps of about 5 minutes.
 */
export function freeRamp(ramp: {
  readonly fromC: number;
  readonly toC: number;
  readonly kiln: AssumedKiln;
  /** Positive [°C/h]. */
  readonly mostCPerHour?: number;
}): readonly RampPoint[] {
  const { fromC, toC, kiln, mostCPerHour = Number.POSITIVE_INFINITY } = ramp;
  const rising = toC > fromC;
  const sign = rising ? 1 : -1;
  const slowness = (tempC: number) => 3600 / Math.min(mostCPerHour, freeSpeed(kiln, tempC, rising));
  const points: RampPoint[] = [];
  let tempC = fromC;
  let seconds = 0;
  while (tempC !== toC) {
    const reach = (STEP_SECONDS / slowness(tempC)) * sign;
    const left = toC - tempC;
    // The last two steps share what is left, so that no sliver of a step remains.
    const step =
      Math.abs(left) <= Math.abs(reach)
        ? left
        : Math.abs(left) < 2 * Math.abs(reach)
          ? left / 2
          : reach;
    const next = step === left ? toC : tempC + step;
    const mean = (slowness(tempC) + 4 * slowness((tempC + next) / 2) + slowness(next)) / 6;
    seconds += Math.abs(next - tempC) * mean;
    tempC = next;
    points.push({ seconds, tempC });
  }
  return points;
}
