import type { Severity } from "../findings/Finding.ts";

/** A planned rate of 50.01 meets a limit of 50; so does a measured one. */
const ROUNDING = 1.01;

/** Above this many times the limit it is a warning: what guidance is uncertain by. */
const CLEARLY = 2;

/** How much it matters that a rate stands so to its limit, both positive [°C/h]. */
export function limitSeverity(rateCPerHour: number, limitCPerHour: number): Severity {
  const ratio = rateCPerHour / limitCPerHour;
  return ratio > CLEARLY ? "warning" : ratio > ROUNDING ? "caution" : "note";
}
