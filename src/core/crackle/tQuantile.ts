import { incompleteBeta } from "./incompleteBeta.ts";
import { logGamma } from "./logGamma.ts";

/**
 * Student's t that a t-distributed number stays within, either side of 0, with this probability:
 * 4.303 for 0.95 and 2 degrees of freedom. Computed, good to nine digits.
 *
 * @param within Probability of staying within, above 0 and below 1.
 * @param freedom Degrees of freedom, at least 1; need not be whole.
 * @throws RangeError outside these.
 */
export function tQuantile(within: number, freedom: number): number {
  if (!(within > 0 && within < 1 && freedom >= 1))
    throw new RangeError(`tQuantile: no t for ${within} with ${freedom} degrees of freedom`);
  const outside = (t: number) => incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);
  const peak =
    Math.exp(logGamma((freedom + 1) / 2) - logGamma(freedom / 2)) / Math.sqrt(Math.PI * freedom);
  // Newton's steps from 0: what is left outside falls ever more slowly, so none goes too far.
  let t = 0;
  for (let step = 0; step < 200; step++) {
    const density = peak * (1 + (t * t) / freedom) ** (-(freedom + 1) / 2);
    const move = (outside(t) - (1 - within)) / (2 * density);
    if (!(move > 1e-14 * t)) break;
    t += move;
  }
  return t;
}
