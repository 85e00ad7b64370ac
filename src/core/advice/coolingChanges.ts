import { quoted } from "../findings/Finding.ts";
import { limitedCrossings, limitsFor, toldWare } from "../schedule/coolingLimits.ts";
import { expandSchedule } from "../schedule/expandSchedule.ts";
import { rateDown } from "../schedule/paced.ts";
import type { WishedPace } from "../schedule/wishedPace.ts";
import type { Crossing } from "../ware/inversions.ts";
import type { NextContext, Standing, WantedChange } from "./NextFiring.ts";

/** A measured rate of 50.01 meets a limit of 50. */
const ROUNDING = 1.01;
/** Over the limit by less than this, neither the rate nor the limit is known well enough; our own choice. */
const TELLING = 1.1;
/** Beyond this many times the limit it is firm: guidance and computation are good to a factor of two. */
const CLEARLY = 2;
/** Above the planned rate by this, the kiln fell faster than it was asked to; our own choice. */
const FASTER_THAN_PLANNED = 1.3;

/** Each inversion that was cooled through faster than the ware's limit; the worst zone speaks. */
export function coolingChanges(context: NextContext): readonly WantedChange[] {
  const { facts } = context;
  const over = facts.zones
    .flatMap(({ crossings }) => crossings)
    .filter(({ direction }) => direction === "cooling")
    .flatMap((crossing) => {
      const ratio = overLimit(crossing);
      return ratio > ROUNDING ? [{ crossing, ratio }] : [];
    })
    .toSorted((a, b) => b.ratio - a.ratio);
  const bands = [...new Set(over.map(({ crossing }) => crossing.band))];
  return bands.flatMap((band) => {
    const worst = over.find(({ crossing }) => crossing.band === band);
    return worst ? [change(worst.crossing, worst.ratio, context)] : [];
  });
}

/** How many times over its guide; 0 where the ware bore it, for then there is nothing to change. */
function overLimit({ fastestCPerHour, limitCPerHour, severity }: Crossing): number {
  if (severity === null || severity === "note") return 0;
  if (fastestCPerHour === null || limitCPerHour === null) return 0;
  return Math.abs(fastestCPerHour) / limitCPerHour;
}

function change(crossing: Crossing, ratio: number, context: NextContext): WantedChange {
  const fastest = Math.abs(crossing.fastestCPerHour as number);
  const pace = paceOf(crossing, crossing.limitCPerHour as number, context);
  const limit = crossing.limitCPerHour as number;
  const planned = plannedRate(crossing.band, context);
  const standing: Standing =
    ratio > CLEARLY ? "firm" : ratio > TELLING ? "worth trying" : "too close to tell";
  const asked = planned !== null && planned.fastest <= ROUNDING * pace.mostCPerHour;
  const hurried = asked && fastest > FASTER_THAN_PLANNED * planned.fastest;
  const from = "from {from} to {to}";
  return {
    about: "cooling",
    change: hurried
      ? `Let the kiln cool ${from} no faster than the schedule leads to, {planned}: lid and vents shut.`
      : standing === "too close to tell"
        ? `Leave the cooling ${from} as it is unless pieces cracked: {fastest} against {limit} is within what either is known to.`
        : `Cool ${from}, through the ${crossing.band}, at {limit} or slower.`,
    because: `It went at up to {fastest}, ${standing === "too close to tell" ? "just over" : "{times} times"} the guide of {limit} for ${quoted(crossing.limitMeantFor ?? "")}.${hurried ? " The schedule leads to less, so it was not the cause." : ""}`,
    evidence: [
      { name: "from", value: crossing.fromC, kind: "temperature" },
      { name: "to", value: crossing.toC, kind: "temperature" },
      { name: "fastest", value: fastest, kind: "rate" },
      { name: "limit", value: limit, kind: "rate" },
      { name: "times", value: ratio, kind: "cones" },
      ...(planned === null
        ? []
        : [{ name: "planned", value: planned.fastest, kind: "rate" } as const]),
    ],
    standing,
    ask: asked || standing === "too close to tell" ? null : pace,
  };
}

/** A passage no faster than a rate, in whole degrees of the log's unit, for a schedule to keep to. */
export function paceOf(
  { fromC, toC }: Pick<Crossing, "fromC" | "toC">,
  mostCPerHour: number,
  { facts }: Pick<NextContext, "facts">,
): { readonly kind: "pace" } & WishedPace {
  const unit = facts.reading.unit === "F" ? "F" : "C";
  return { kind: "pace", fromC, toC, mostCPerHour: rateDown(mostCPerHour, unit) };
}

/** What the schedule asks of a band with the kiln and the ware as `draft` sees them; null without one. */
function plannedRate(
  band: string,
  { facts, kiln, ware }: NextContext,
): { readonly fastest: number } | null {
  if (facts.plan === null) return null;
  const plan = { ...facts.plan, ware: toldWare(facts.plan.ware, ware) };
  const { curve } = expandSchedule(plan, kiln.own === null ? {} : { kiln: kiln.own });
  const crossing = limitedCrossings(curve, { limitFor: limitsFor(plan.ware) }).find(
    (each) => each.band === band && each.direction === "cooling",
  );
  if (!crossing || crossing.fastestCPerHour === null) return null;
  return { fastest: Math.abs(crossing.fastestCPerHour) };
}
