import { kilnReachC } from "../../schedule/kilnReach.ts";
import { solveSchedule } from "../../schedule/solveSchedule.ts";
import type { FiringFacts } from "../FiringFacts.ts";
import type { NextKiln } from "./nextKiln.ts";

/** A peak this far below the planned one shows a kiln at its end [K]. */
const FELL_SHORT_K = 10;

/**
 * The hottest that the kiln reaches [°C], where no peak up to there makes the cone of a schedule;
 * null when one does, or when nobody knows: without the controller's output a log shows only the least that a kiln can do, and
 * a kiln that came to its planned peak was strong enough.
 */
export function kilnTooWeak(
  { plan, comparison }: Pick<FiringFacts, "plan" | "comparison">,
  cone: string | null,
  kiln: NextKiln,
): number | null {
  if (plan === null || cone === null || kiln.own === null) return null;
  if (kiln.own.learned?.power.from !== "output") return null;
  if (comparison === null || comparison.peakDeviationC > -FELL_SHORT_K) return null;
  const solved = solveSchedule({
    schedule: plan,
    cone,
    solve: "peak",
    kiln: kiln.own,
    offsetK: kiln.offsetK,
  });
  if (solved.ok) return null;
  const isWeak = solved.problems.some(({ code }) => code === "schedule/kiln-too-weak");
  return isWeak ? kilnReachC(kiln.own) : null;
}

/** The same thermocouple on a kiln that is assumed, for when the kiln's own has been mended. */
export function mendedKiln(kiln: NextKiln, why: string): NextKiln {
  const { isOwn } = kiln;
  const offsetK = isOwn && kiln.offsetK !== null ? Math.round(kiln.offsetK) : null;
  return { own: null, logs: [], offsetK, isOwn, tellsOffset: isOwn, whyNone: why };
}
