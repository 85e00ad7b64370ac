import { logGamma } from "./logGamma.ts";

/** Continued fraction of the incomplete beta function, by the method of Lentz. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const held = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / held(1 - ((a + b) * x) / (a + 1));
  let result = d;
  for (let m = 1; m <= 400; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    const before = result;
    for (const term of [even, odd]) {
      d = 1 / held(1 + term * d);
      c = held(1 + term / c);
      result *= c * d;
    }
    if (Math.abs(result / before - 1) < 1e-15) break;
  }
  return result;
}

/** Share of a beta distribution with these two shapes, each above 0, that lies below x in 0 to 1. */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x),
  );
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(x, a, b)) / a
    : 1 - (front * betaFraction(1 - x, b, a)) / b;
}
