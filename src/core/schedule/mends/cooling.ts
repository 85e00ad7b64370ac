import type { Band } from "../../curve/Band.ts";
import type { AssumedKiln } from "../../kiln/AssumedKiln.ts";
import { printRate } from "../../units/print.ts";
import { UNLOAD_C } from "../checks/unloading.ts";
import { COOLING_BANDS, type CoolingLimit, type LimitFor } from "../coolingLimits.ts";
import { paced } from "../paced.ts";
import type { Schedule } from "../Schedule.ts";
import { rateDown, temperatureDown, temperatureUp } from "../wholeUnits.ts";
import type { Mend } from "./Mend.ts";

/** Half the window in which a rate counts as sustained, and a little [h]: it reaches out of the band. */
export const WINDOW_REACH_HOURS = 0.14;

/** Cooling through each inversion. */
export const MEND_COOLING: readonly Mend[] = COOLING_BANDS.map((band) => ({
  topic: coolingTopic(band),
  mend: (schedule, _, { kiln, limitFor }) => {
    const limit = limitFor(band);
    if (limit === null) return { ok: true, schedule, did: "left as it is" };
    const slowed = cooledWithin(untilCool(schedule), { band, kiln, limitFor });
    return {
      ok: true,
      schedule: slowed,
      did: `held to ${printRate(pace(limit, schedule), schedule.unit)} through the ${band.name}`,
    };
  },
}));

/** What the check calls cooling through a band. */
export function coolingTopic(band: Band): string {
  return `cooling through ${band.name.replace(" inversion", "")}`;
}

/** A schedule that goes through a band no faster than its guide, edges included; as it is without one. */
function cooledWithin(
  schedule: Schedule,
  by: { readonly band: Band; readonly kiln: AssumedKiln; readonly limitFor: LimitFor },
): Schedule {
  const { band, kiln, limitFor } = by;
  const { unit } = schedule;
  const limit = limitFor(band);
  if (limit === null) return schedule;
  const mostCPerHour = pace(limit, schedule);
  const padK = mostCPerHour * WINDOW_REACH_HOURS;
  return paced(
    schedule,
    {
      fromC: temperatureUp(band.highC + padK, unit),
      toC: temperatureDown(band.lowC - padK, unit),
      mostCPerHour,
      why: `${band.name}: ${printRate(mostCPerHour, unit)} for ${limit.meantFor}`,
    },
    kiln,
  );
}

/** The schedule with the fall by itself to 100 °C written down, when it ends hotter. */
export function untilCool(schedule: Schedule): Schedule {
  const endC = schedule.segments.at(-1)?.toC ?? schedule.startC;
  if (endC <= UNLOAD_C + 0.5) return schedule;
  const fall = { toC: UNLOAD_C, rateCPerHour: "free", holdSeconds: 0, why: null } as const;
  return { ...schedule, segments: [...schedule.segments, fall] };
}

function pace({ limitCPerHour }: CoolingLimit, schedule: Schedule): number {
  return rateDown(limitCPerHour, schedule.unit);
}
