/** Coefficients of Lanczos's series for the gamma function, g = 7, 9 terms; from memory. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
  -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
  1.5056327351493116e-7,
];

/** Natural logarithm of the gamma function, for x above 0; good to 14 digits. */
export function logGamma(x: number): number {
  const shifted = x - 1;
  const base = shifted + 7.5;
  const sum = LANCZOS.reduce(
    (total, coefficient, at) => (at === 0 ? coefficient : total + coefficient / (shifted + at)),
    0,
  );
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(base) - base + Math.log(sum);
}
