import type { Curve } from "../curve/Curve.ts";
import { slopeMeter } from "../curve/slopes.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";

/** Speed of a Curve at one moment. */
export interface Speed {
  readonly seconds: number;
  readonly tempC: number;
  /** Signed; falling is negative. */
  readonly rateCPerHour: number;
}

/** Window over which every speed is measured [s]. */
export const SPEED_WINDOW_SECONDS = 1800;

/** Step between the moments at which speed is measured [s]. */
const EVERY_SECONDS = 300;

/** Speeds of a Curve every five minutes between two moments, each over half an hour; none in gaps. */
export function speedsBetween(
  curve: Curve,
  fromSeconds: number,
  toSeconds: number,
): readonly Speed[] {
  const meter = slopeMeter(curve);
  const speeds: Speed[] = [];
  for (let seconds = fromSeconds; seconds <= toSeconds; seconds += EVERY_SECONDS) {
    const rateCPerHour = meter.slopeAt(seconds, SPEED_WINDOW_SECONDS);
    const tempC = temperatureAt(curve, seconds);
    if (rateCPerHour !== null && tempC !== null) speeds.push({ seconds, tempC, rateCPerHour });
  }
  return speeds;
}
