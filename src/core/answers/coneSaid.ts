import type { Heatwork } from "../cones/cone.ts";
import { capitalised } from "../text/wrap.ts";

/** Shares of the way to the next cone at which the words change. */
const JUST_FELL = 0.1;
const NEAR_BY = 0.3;
const HALF = 0.5;
const NEAR_NEXT = 0.7;
const ALMOST = 0.9;

/**
 * Where the heat stands among the cones as potters say it: `Cone 5`, `Cone 5 just fell`,
 * `Between cone 4 and 5, nearer 5`, `Just under cone 5`.
 */
export function coneSaid({ position }: Heatwork, tense: "was" | "will be"): string {
  const { cone, fraction, next, label } = position;
  if (cone === null || fraction === null || next === null) return capitalised(label);
  if (fraction < JUST_FELL) return `Cone ${cone} just ${tense === "was" ? "fell" : "falls"}`;
  if (fraction < NEAR_BY) return `Cone ${cone}`;
  if (fraction >= ALMOST) return `Just under cone ${next}`;
  const nearer = fraction < HALF ? cone : next;
  const between = `Between cone ${cone} and ${next}`;
  return fraction > NEAR_BY && fraction < NEAR_NEXT && Math.abs(fraction - HALF) < 0.05
    ? between
    : `${between}, nearer ${nearer}`;
}

/** How well it is known, in words of its own: `give or take half a cone`; empty where that is little. */
export function giveOrTake({ sigmaCones }: Heatwork): string {
  if (sigmaCones === null) return "how far off this may be is not known";
  if (sigmaCones < 0.15) return "";
  if (sigmaCones < 0.29) return "give or take a quarter of a cone";
  if (sigmaCones < 0.42) return "give or take a third of a cone";
  if (sigmaCones < 0.75) return "give or take half a cone";
  if (sigmaCones < 1.5) return "give or take a cone";
  return `give or take ${Math.round(sigmaCones)} cones`;
}
