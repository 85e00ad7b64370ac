import type { Curve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import { type StrainRunner, strainRunner, WATCHED } from "./integrateStrain.ts";
import { wareNumbers } from "./strainNumbers.ts";
import { strainSteps } from "./strainSteps.ts";
import type { Ware, WareStrain } from "./Ware.ts";

/**
 * What a Curve does to a piece: temperatures of its wall, base and shelf, and stress over strength.
 * Driven by the kiln's temperature with exact radiation; the base also lags with the middle of the
 * load over the width of the piece. Good to a factor of two either way: nothing is calibrated on
 * cracked pots, and glaze, handles and flaws are not in it.
 *
 * `timesSeconds` are the steps of the integration, at most 20 s below 700 °C and 60 s above, not
 * the points of the Curve. At the start and after every gap the ware is taken to be as hot as the
 * kiln, so for some minutes from there the strain is understated.
 *
 * `worst` lists each inversion and direction that the kiln went into: heating before the peak,
 * cooling after it. A moment belongs to a band from when the kiln enters it until the last part of
 * the ware has left it. The kiln may be past the band by then, because a thick base follows up to
 * tens of kelvins behind; `tempC` is the kiln's.
 */
export function wareStrain(curve: Curve, ware: Ware): WareStrain {
  return followedWare(curve, ware).strain;
}

/** The same, with the states about the worst of each watched passage, for its spread. */
export function followedWare(
  curve: Curve,
  ware: Ware,
): { readonly strain: WareStrain; readonly moments: StrainRunner["moments"] } {
  const steps = strainSteps(curve);
  const numbers = wareNumbers(ware);
  const runner = strainRunner(steps, peakOf(curve).seconds);
  runner.run(numbers);
  const trace = runner.trace(numbers);
  const strain = {
    timesSeconds: steps.timesSeconds,
    get ratio() {
      return trace.ratio;
    },
    wallC: trace.wallC,
    baseC: trace.baseC,
    shelfC: trace.shelfC,
    worst: WATCHED.flatMap(({ band, direction }, i) => {
      const ratio = runner.worst[i]!;
      const step = runner.worstAt[i]!;
      if (ratio < 0) return [];
      return [
        {
          band: band.name,
          direction,
          ratio,
          atSeconds: steps.timesSeconds[step]!,
          tempC: steps.tempsC[step]!,
        },
      ];
    }),
  };
  return { strain, moments: runner.moments };
}
