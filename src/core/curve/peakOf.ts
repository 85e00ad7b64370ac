import type { Curve } from "./Curve.ts";

/** The highest point of a Curve; the first of them when several are equal. */
export function peakOf(curve: Curve): {
  readonly tempC: number;
  readonly seconds: number;
  readonly index: number;
} {
  const { tempsC } = curve;
  let index = 0;
  let tempC = tempsC[0]!;
  for (let i = 1; i < tempsC.length; i++)
    if (tempsC[i]! > tempC) {
      index = i;
      tempC = tempsC[i]!;
    }
  return {
    tempC,
    seconds: curve.timesSeconds[index]!,
    index,
  };
}
