import { type CoolingConstants, lossKPerSecond, radiatedWattPerM2 } from "./heatBalance.ts";

/** One moment of a natural fall. */
export interface FallSample {
  readonly tempC: number;
  readonly roomC: number;
  /** Positive. */
  readonly fallCPerHour: number;
}

/** A sample that falls this much short of the fit was held back by the elements. */
const HELD_BELOW = 0.9;
const ROUNDS = 12;

/**
 * The two cooling constants by linear least squares of the fall on (T − Ta) and σ(T⁴ − Ta⁴);
 * neither comes out negative.
 * @throws RangeError without samples.
 */
export function fitCooling(samples: readonly FallSample[]): CoolingConstants {
  if (samples.length === 0) throw new RangeError("fitCooling: no samples");
  let xx = 0;
  let xy = 0;
  let yy = 0;
  let xr = 0;
  let yr = 0;
  for (const { tempC, roomC, fallCPerHour } of samples) {
    const x = tempC - roomC;
    const y = radiatedWattPerM2(tempC, roomC);
    const r = fallCPerHour / 3600;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xr += x * r;
    yr += y * r;
  }
  const determinant = xx * yy - xy * xy;
  const conduction = (xr * yy - yr * xy) / determinant;
  const radiation = (yr * xx - xr * xy) / determinant;
  if (!(determinant > 1e-9 * xx * yy) || radiation < 0)
    return { conductionPerSecond: xr / xx, radiationM2KPerJ: 0 };
  if (conduction < 0) return { conductionPerSecond: 0, radiationM2KPerJ: yr / yy };
  return { conductionPerSecond: conduction, radiationM2KPerJ: radiation };
}

/**
 * The same for samples among which the elements may have held back some: a kiln never falls faster
 * than by itself, so what lies well below the fit is left out until nothing more does.
 */
export function fitUpperCooling(samples: readonly FallSample[]): {
  readonly constants: CoolingConstants;
  readonly kept: readonly FallSample[];
} {
  let kept = samples;
  let constants = fitCooling(kept);
  for (let round = 0; round < ROUNDS; round++) {
    const fit = constants;
    const next = samples.filter(
      ({ tempC, roomC, fallCPerHour }) =>
        fallCPerHour > HELD_BELOW * 3600 * lossKPerSecond(fit, tempC, roomC),
    );
    if (next.length === kept.length || next.length === 0) break;
    kept = next;
    constants = fitCooling(kept);
  }
  return { constants, kept };
}
