import { incompleteBeta } from "./incompleteBeta.ts";

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
  let [low, high] = [0, 1];
  while (outside(high) > 1 - within) high *= 2;
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2;
    if (outside(middle) > 1 - within) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
