/**
 * Stress intensity of an edge crack in a strip, by H. F. Bueckner's weight function (Zeitschrift für
 * angewandte Mathematik und Mechanik 50, 1970; coefficients from memory); half the strip at most.
 *
 * @param stress On the line of the crack, against depth.
 */
export function edgeCrack(stress: (depth: number) => number, depth: number, width: number): number {
  const share = depth / width;
  const m1 = 0.6147 + 17.1844 * share ** 2 + 8.7822 * share ** 6;
  const m2 = 0.2502 + 3.2889 * share ** 2 + 70.0444 * share ** 6;
  const steps = 20_000;
  let sum = 0;
  // With 1 − x/a as a square the singular end is smooth.
  for (let i = 0; i < steps; i++) {
    const root = (i + 0.5) / steps;
    const rest = root * root;
    sum += (stress(depth * (1 - rest)) * (1 + m1 * rest + m2 * rest * rest)) / steps;
  }
  return 2 * Math.sqrt((2 * depth) / Math.PI) * sum;
}
