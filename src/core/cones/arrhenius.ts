/** Molar gas constant [kJ/(mol·K)], exact since 2019 (8.314 462 618… J/(mol·K), CODATA). */
export const GAS_CONSTANT = 8.31446261815324e-3;

/**
 * Logarithm of J(T) = ∫ exp(−E/RT) dT from 0 K, by the asymptotic series of the exponential integral.
 * Eleven terms: relative error below 1e−7 for E/RT above 25, about 1e−6 at 20.
 *
 * @param tempK Temperature [K], positive.
 * @param activationKJ Activation energy E [kJ/mol].
 */
export function logArrheniusIntegral(tempK: number, activationKJ: number): number {
  const x = activationKJ / (GAS_CONSTANT * tempK);
  return Math.log(tempK * seriesSum(1 / x)) - x;
}

/** A·J(T) [K/h] with its pre-factor folded into the exponent, so that nothing over- or underflows early. */
export function scaledArrheniusIntegral(
  tempK: number,
  activationKJ: number,
  logPreFactor: number,
): number {
  const x = activationKJ / (GAS_CONSTANT * tempK);
  return tempK * seriesSum(1 / x) * Math.exp(logPreFactor - x);
}

/** Rate of heatwork A·exp(−E/RT) [1/h] at a temperature [K]. */
export function arrheniusRate(tempK: number, activationKJ: number, logPreFactor: number): number {
  return Math.exp(logPreFactor - activationKJ / (GAS_CONSTANT * tempK));
}

/**
 * Temperature [K] at which a cone that ends at `endPoint60K` on a 60 °C/h ramp ends on another ramp.
 * A plain ramp from the cold; no anchoring to a table.
 */
export function rampEndPointK(
  activationKJ: number,
  endPoint60K: number,
  rateCPerHour: number,
): number {
  const target = logArrheniusIntegral(endPoint60K, activationKJ) + Math.log(rateCPerHour / 60);
  return tempOfLogIntegral(activationKJ, target, endPoint60K);
}

/** Temperature [K] at which ln J reaches a value; Newton's method, from a guess [K]. */
function tempOfLogIntegral(activationKJ: number, target: number, guessK: number): number {
  let tempK = guessK;
  for (let round = 0; round < 40; round++) {
    const value = logArrheniusIntegral(tempK, activationKJ);
    const slope = Math.exp(-activationKJ / (GAS_CONSTANT * tempK) - value);
    const step = Math.max(-0.2 * tempK, Math.min(0.2 * tempK, (value - target) / slope));
    tempK -= step;
    if (Math.abs(step) < 1e-9) return tempK;
  }
  return tempK;
}

/** Σ (−1)^(n+1)·n!·zⁿ for n = 1 … 11, written out because every reading of a log passes here. */
function seriesSum(z: number): number {
  const last = -3628800 + 39916800 * z;
  const middle = 120 + z * (-720 + z * (5040 + z * (-40320 + z * (362880 + z * last))));
  return z * (1 + z * (-2 + z * (6 + z * (-24 + z * middle))));
}
