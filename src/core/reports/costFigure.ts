/** A cost with the digits that an estimate of the electricity can carry: `20`, `3.4`. */
export function costFigure(cost: number): string {
  return cost.toFixed(cost < 10 ? 1 : 0);
}
