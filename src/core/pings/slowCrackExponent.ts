/**
 * Exponent p by which clicks thin out when cracks creep under a steady pull: p = 1 − m/(n − 2).
 * The time in which a flaw grows to a crack goes with its strength to the power n − 2, and the
 * flaws of a strength below s are as s^m, so that the count grows as time to the power m/(n − 2).
 *
 * @param m Weibull modulus of the strength of the glaze.
 * @param n Crack speed goes with the stress intensity to this power.
 * @throws RangeError unless n is over 2 and m is positive.
 */
export function slowCrackExponent(m: number, n: number): number {
  if (!(n > 2 && m > 0)) throw new RangeError(`slowCrackExponent: m ${m}, n ${n}`);
  return 1 - m / (n - 2);
}
