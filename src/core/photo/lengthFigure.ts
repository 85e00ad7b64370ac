/** A length without its unit, with the digits that a count along lines can bear: `6.0`, `12.4`, `108`. */
export function lengthFigure(lengthMm: number): string {
  return lengthMm >= 100 ? lengthMm.toFixed(0) : lengthMm.toPrecision(lengthMm >= 10 ? 3 : 2);
}
