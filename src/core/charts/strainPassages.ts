import type { Curve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversionBands.ts";
import { strainSpread } from "../ware/strainSpread.ts";
import type { Ware, WareStrain } from "../ware/Ware.ts";
import type { StrainPassage } from "./strainLine.ts";

/** Enough draws for 10 and 90 % points that can be told apart in a picture; the same every time. */
const DRAWS = { runs: 60, seed: 1 };

/** Smallest factor, so that a range that reaches down to 0 can still be drawn between two passages. */
const LEAST_FACTOR = 0.01;

/** Every way through an inversion, in the order in which it happened. */
export function strainPassages(
  curve: Curve,
  ware: Ware,
  strain: WareStrain,
): readonly StrainPassage[] {
  const spreads = strainSpread(curve, ware, DRAWS);
  return strain.worst
    .map((worst) => {
      const spread = spreads.find(
        ({ band, direction }) => band === worst.band && direction === worst.direction,
      );
      const factor = (end: number | undefined, otherwise: number) =>
        end === undefined || worst.ratio <= 0 ? otherwise : end / worst.ratio;
      return {
        band: worst.band,
        direction: worst.direction,
        ratio: worst.ratio,
        atSeconds: worst.atSeconds,
        ...spanOf(curve, strain, worst),
        lowFactor: Math.min(1, Math.max(LEAST_FACTOR, factor(spread?.low, 0.5))),
        highFactor: Math.max(1, factor(spread?.high, 2)),
      };
    })
    .toSorted((a, b) => a.atSeconds - b.atSeconds);
}

/** From when the kiln is in the band until the last part of the ware has left it; holds the worst moment. */
function spanOf(curve: Curve, strain: WareStrain, worst: WareStrain["worst"][number]) {
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
