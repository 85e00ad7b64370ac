import { incompleteBeta } from "../crackle/incompleteBeta.ts";

/** A share found, and where the true one lies 95 times in 100. */
export interface ShareInterval {
  readonly found: number;
  readonly of: number;
  readonly low: number;
  readonly high: number;
  /** With none or all the interval has one end only, and all of the 5 in 100 lie beyond it. */
  readonly ends: "two" | "one";
}

/**
 * Share of yes in some yes-or-no results with the exact interval of Clopper and Pearson. None of 8
 * leaves up to 31 %, all of 8 at least 69 %.
 *
 * @throws RangeError unless `found` is whole and within 0 to `of`, and `of` is above 0.
 * @see SOURCES["clopper-pearson-1934"]
 */
export function shareInterval(found: number, of: number): ShareInterval {
  if (!(Number.isInteger(found) && found >= 0 && found <= of && of > 0))
    throw new RangeError(`shareInterval: ${found} of ${of}`);
  const ends = found === 0 || found === of ? "one" : "two";
  const beyond = ends === "one" ? 0.05 : 0.025;
  const low =
    found === 0 ? 0 : shareWith((share) => incompleteBeta(share, found, of - found + 1), beyond);
  const high =
    found === of
      ? 1
      : 1 - shareWith((share) => incompleteBeta(share, of - found, found + 1), beyond);
  return { found, of, low, high, ends };
}

function shareWith(rising: (share: number) => number, wanted: number): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (rising(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
