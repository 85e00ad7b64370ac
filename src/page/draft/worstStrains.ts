import type { Curve } from "../../core/curve/Curve.ts";
import { peakOf } from "../../core/curve/peakOf.ts";
import { strainRunner, WATCHED } from "../../core/ware/integrateStrain.ts";
import { wareNumbers } from "../../core/ware/strainNumbers.ts";
import { strainSteps } from "../../core/ware/strainSteps.ts";
import type { Ware, WareStrain } from "../../core/ware/Ware.ts";

/** Stress over strength at its worst in one inversion and direction. */
export type WorstStrain = WareStrain["worst"][number];

/**
 * The same numbers as `wareStrain(curve, ware).worst`, without the trace of every step, which
 * nothing asks for while a schedule is being changed.
 */
export function worstStrains(curve: Curve, ware: Ware): readonly WorstStrain[] {
  const steps = strainSteps(curve);
  const { run, worst, worstAt } = strainRunner(steps, peakOf(curve).seconds);
  run(wareNumbers(ware), null);
  return WATCHED.flatMap(({ band, direction }, i) => {
    const ratio = worst[i] as number;
    const step = worstAt[i] as number;
    if (ratio < 0) return [];
    const atSeconds = steps.timesSeconds[step] as number;
    const tempC = steps.tempsC[step] as number;
    return [{ band: band.name, direction, ratio, atSeconds, tempC }];
  });
}
