import type { Problem } from "../problem.ts";
import type { Ping } from "./Ping.ts";

/** Share of pings at full scale from which a recording says nothing of how loud they are. Own choice. */
const MOST_CLIPPED = 0.5;
/** Pings from which a share can be told. */
const FEWEST = 4;

/** The problem of a recording in which most pings reach full scale; null where they do not. */
export function clippedProblem(pings: readonly Ping[], name: string): Problem | null {
  const clipped = pings.filter(({ isClipped }) => isClipped).length;
  if (pings.length < FEWEST || clipped <= MOST_CLIPPED * pings.length) return null;
  return {
    code: "pings/clipped",
    what: `${clipped} of ${pings.length} pings reach full scale: they were louder than recorded, and one may hide the next`,
    where: name,
    expected: "a recording in which most pings stay below full scale",
    fix: "record again at a lower level; or say --clipped to have the count as a lower bound, without loudness",
  };
}
