import type { Curve } from "./Curve.ts";

/** The highest point of a Curve; the first of them when several are equal. */
export function peakOf(curve: Curve): {
  readonly tempC: number;
  readonly seconds: number;
  readonly index: number;
} {
  let index = 0;
  for (let i = 1; i < curve.tempsC.length; i++)
    if ((curve.tempsC[i] as number) > (curve.tempsC[index] as number)) index = i;
  return {
    tempC: curve.tempsC[index] as number,
    seconds: curve.timesSeconds[index] as number,
    index,
  };
}
