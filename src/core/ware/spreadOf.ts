/** Where the middle 80 % of draws lie. */
export interface Spread {
  /** Exceeded in nine of ten draws. */
  readonly low: number;
  readonly median: number;
  /** Exceeded in one of ten draws. */
  readonly high: number;
}

/** Spread of many draws; at least one. */
export function spreadOf(values: Float64Array): Spread {
  const sorted = values.toSorted();
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
  return { low: at(0.1), median: at(0.5), high: at(0.9) };
}
