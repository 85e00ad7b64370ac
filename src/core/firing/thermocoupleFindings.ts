import type { Finding } from "../findings/Finding.ts";
import type { FiringFacts } from "./FiringFacts.ts";
import { behaviourFindings } from "./thermocoupleBehaviour.ts";
import { limitFindings, ratedFindings } from "./thermocoupleLimits.ts";
import { partingFindings } from "./thermocoupleParting.ts";
import { signalFindings } from "./thermocoupleSignals.ts";
import { wrongTypeFindings } from "./thermocoupleWrongType.ts";

/** What log and record say of the thermocouples themselves: type, limits, leads, scatter, sheath. */
export function thermocoupleFindings(facts: FiringFacts): readonly Finding[] {
  return [
    ...wrongTypeFindings(facts),
    ...limitFindings(facts),
    ...ratedFindings(facts),
    ...behaviourFindings(facts),
    ...signalFindings(facts),
    ...partingFindings(facts),
  ];
}
