import type { Property } from "./Ware.ts";

/** Sigmas between the middle of a normal spread and its 90 % point. */
export const SIGMAS_TO_90 = 1.2815515655446004;

/**
 * A value so many sigmas from the middle, by the property's 10 and 90 % points; each side has its
 * own width. Log-normal, or straight and cut off at 0 where the range reaches down to 0.
 */
export function drawn(
  { value, low, high }: Pick<Property, "value" | "low" | "high">,
  sigmas: number,
): number {
  const share = Math.abs(sigmas) / SIGMAS_TO_90;
  const end = sigmas < 0 ? low : high;
  // A power by `**` is not the same to the last digit in every engine; exp and log are.
  if (low > 0) return value * Math.exp(share * Math.log(end / value));
  return Math.max(0, value + (end - value) * share);
}
