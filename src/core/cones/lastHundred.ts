import type { Curve } from "../curve/Curve.ts";

/** Below the peak by this much [K] counts as having reached it. */
const NEAR_PEAK_K = 5;
/** Stretch of the heating over which cone charts give their rates [K]. */
const STRETCH_K = 100;

/**
 * Mean heating rate over the last 100 K before a Curve first comes within 5 K of its peak [°C/h].
 * From the last rise through (peak − 105) before that moment to the first reach of (peak − 5);
 * dips and holds in between count as time. Null when the Curve starts above (peak − 105) or
 * a gap touches the stretch.
 */
export function lastHundredCPerHour(curve: Curve, peakC: number): number | null {
  const { timesSeconds, tempsC, gaps } = curve;
  const topC = peakC - NEAR_PEAK_K;
  const bottomC = topC - STRETCH_K;
  const top = tempsC.findIndex((tempC) => tempC >= topC);
  let bottom = top;
  while (bottom > 0 && (tempsC[bottom - 1] as number) > bottomC) bottom--;
  if (top < 1 || bottom < 1) return null;
  const from = timesSeconds[bottom - 1] as number;
  const to = timesSeconds[top] as number;
  if (gaps.some((gap) => gap.fromSeconds < to && gap.toSeconds > from)) return null;
  const seconds = timeAt(curve, top, topC) - timeAt(curve, bottom, bottomC);
  return (STRETCH_K * 3600) / seconds;
}

/** Moment [s] at which the piece that ends at a point passes a temperature. */
function timeAt({ timesSeconds, tempsC }: Curve, end: number, tempC: number): number {
  const fromC = tempsC[end - 1] as number;
  const fromSeconds = timesSeconds[end - 1] as number;
  const share = (tempC - fromC) / ((tempsC[end] as number) - fromC);
  return fromSeconds + share * ((timesSeconds[end] as number) - fromSeconds);
}
