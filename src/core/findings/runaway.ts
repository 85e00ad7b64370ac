import type { Finding } from "./Finding.ts";

/** Topic of a kiln that heats by itself: an emergency, said before all else. */
export const RUNAWAY = "runaway";

/** The finding of an emergency; null when there is none. */
export function runawayIn(findings: readonly Finding[]): Finding | null {
  return findings.find(({ topic }) => topic === RUNAWAY) ?? null;
}
