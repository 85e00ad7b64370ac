/** Stress over strength with the digits that it can carry: `0.36`, `1.5`, `12`. */
export function strainRatioText(ratio: number): string {
  return ratio.toFixed(ratio < 0.995 ? 2 : ratio < 9.95 ? 1 : 0);
}
