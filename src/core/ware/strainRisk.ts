import type { Direction } from "../curve/Band.ts";
import type { Severity } from "../findings/Finding.ts";
import { CRISTOBALITE_BAND, hasCristobalite } from "./inversionBands.ts";
import { SAFE_RATIO } from "./limitingRate.ts";
import type { Body } from "./Ware.ts";

/**
 * Computed stress over strength from which ware is clearly at risk: a caution. Below it lie the
 * everyday firings that come out whole, and what the computation cannot tell from them; our own mark.
 */
const AT_RISK = 0.7;

/** From here a piece is likelier to break than not: a warning. */
const LIKELY_TO_BREAK = 1;

/** What a ratio of stress over strength is called. */
export type StrainRisk = "low" | "watch" | "high";

/** The words and where they come from, as a sentence. */
export const STRAIN_RISK_WORDS = `Low is below ${AT_RISK} of the strength, watch from there to ${LIKELY_TO_BREAK}, high from ${LIKELY_TO_BREAK} on, where a piece is likelier to break than not; guides are taken at ${SAFE_RATIO}. The marks are our own`;

/** How much a computed stress over strength matters: the one place where a verdict on ware is made. */
export function strainSeverity(ratio: number): Severity {
  return ratio >= LIKELY_TO_BREAK ? "warning" : ratio >= AT_RISK ? "caution" : "note";
}

/**
 * The same for a rate beside its guide, both positive [°C/h], where the stress is not known yet: while
 * a kiln is still falling. Stress rises no faster than the rate, and is at `SAFE_RATIO` at the guide.
 */
export function rateSeverity(rateCPerHour: number, guideCPerHour: number): Severity {
  return strainSeverity((SAFE_RATIO * rateCPerHour) / guideCPerHour);
}

/** The word for a ratio. Never a promise. */
export function strainRisk(ratio: number): StrainRisk {
  const severity = strainSeverity(ratio);
  return severity === "warning" ? "high" : severity === "caution" ? "watch" : "low";
}

/**
 * Whether the computed stress of a passage is fit to judge ware by. On the way up porous ware bears
 * more than its strength says; and below the quartz inversion the computation is too strict for a
 * body without cristobalite, which is cooled and opened daily where it fears for it.
 */
export function isJudged(
  passage: { readonly band: string; readonly direction: Direction },
  body: Body,
): boolean {
  if (passage.direction === "heating") return false;
  return passage.band !== CRISTOBALITE_BAND.name || hasCristobalite(body);
}

/** The word for the ratio of a passage; null where it is not fit to judge by. */
export function passageRisk(
  passage: { readonly band: string; readonly direction: Direction; readonly ratio: number },
  body: Body,
): StrainRisk | null {
  return isJudged(passage, body) ? strainRisk(passage.ratio) : null;
}
