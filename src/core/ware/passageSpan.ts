import type { Curve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "./inversionBands.ts";
import type { WareStrain } from "./Ware.ts";

/**
 * From when the kiln is in a band until the last part of the ware has left it [s]; the worst moment
 * of the passage lies within.
 */
export function passageSpan(
  curve: Curve,
  strain: WareStrain,
  worst: WareStrain["worst"][number],
): { readonly fromSeconds: number; readonly toSeconds: number } {
  const { lowC, highC } = worst.band === QUARTZ_BAND.name ? QUARTZ_BAND : CRISTOBALITE_BAND;
  const peakSeconds = peakOf(curve).seconds;
  let [fromSeconds, toSeconds] = [worst.atSeconds, worst.atSeconds];
  for (const [i, seconds] of strain.timesSeconds.entries()) {
    const heating = seconds < peakSeconds;
    if (heating !== (worst.direction === "heating")) continue;
    const kilnC = temperatureAt(curve, seconds);
    if (kilnC === null) continue;
    const parts = [kilnC, strain.wallC[i] as number, strain.baseC[i] as number];
    const within = heating
      ? kilnC >= lowC && Math.min(...parts) <= highC
      : kilnC <= highC && Math.max(...parts) >= lowC;
    if (!within) continue;
    fromSeconds = Math.min(fromSeconds, seconds);
    toSeconds = Math.max(toSeconds, seconds);
  }
  return { fromSeconds, toSeconds };
}
