/** Where the series gives way to the continued fraction. */
const FAR = 3;

/** Density of the normal distribution of mean 0 and one sigma 1. */
function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** Share of that distribution above z; a series near 0, a continued fraction in the tail. */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  return z < FAR ? 0.5 - normalDensity(z) * series(z) : normalDensity(z) / fraction(z);
}

/** Natural logarithm of that share; it does not run out of digits. */
export function logNormalTail(z: number): number {
  if (z < FAR) return Math.log(normalTail(z));
  return (-z * z) / 2 - Math.log(2 * Math.PI) / 2 - Math.log(fraction(z));
}

/** Density over tail: how steeply the logarithm of the tail falls. */
export function normalHazard(z: number): number {
  return z < FAR ? normalDensity(z) / normalTail(z) : fraction(z);
}

function series(z: number): number {
  let term = z;
  let sum = z;
  for (let k = 1; Math.abs(term) > 1e-17 * sum; k++) {
    term *= (z * z) / (2 * k + 1);
    sum += term;
  }
  return sum;
}

/** z + 1/(z + 2/(z + 3/(z + …))). */
function fraction(z: number): number {
  let value = z;
  for (let k = 60; k >= 1; k--) value = z + k / value;
  return value;
}
