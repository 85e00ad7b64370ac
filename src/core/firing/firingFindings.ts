import { agreed } from "../findings/agreed.ts";
import type { Finding } from "../findings/Finding.ts";
import { ordered } from "../findings/ordered.ts";
import { coneFindings } from "./coneFindings.ts";
import { coolingFindings } from "./coolingFindings.ts";
import type { FiringFacts } from "./FiringFacts.ts";
import { heardFindings } from "./heardFindings.ts";
import { measuringFindings } from "./measuringFindings.ts";
import { openingFindings } from "./openingFindings.ts";
import { planFindings } from "./planFindings.ts";
import { rawWareFindings } from "./rawWareFindings.ts";
import { runawayFindings, standingFindings } from "./runawayFindings.ts";
import { thermocoupleFindings } from "./thermocoupleFindings.ts";

/** Everything worth saying about a firing, worst first, then by time. */
export function firingFindings(facts: FiringFacts): readonly Finding[] {
  return ordered([
    ...runawayFindings(facts.reading, facts.plan),
    ...standingFindings(facts.reading),
    ...agreed([...coneFindings(facts), ...coolingFindings(facts), ...rawWareFindings(facts)]),
    ...heardFindings(facts),
    ...openingFindings(facts),
    ...planFindings(facts),
    ...measuringFindings(facts),
    ...thermocoupleFindings(facts),
  ]);
}
