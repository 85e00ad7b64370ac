/** Coats within this ratio of the thinnest of them cannot be told apart by a gauge; our own estimate. */
const ONE_BIN = 1.25;

/** Coats put into bins that a gauge can tell apart, and the logarithm of each bin's mean. */
export interface CoatBins {
  /** `0.9 mm` or `0.8 to 0.95 mm`, one for each coat given, in their order. */
  readonly levels: readonly string[];
  /** ln of the geometric mean of the bin, by mm. */
  readonly amounts: readonly number[];
}

/** Bins from the thinnest up: a new one begins where a coat is a quarter thicker than the first of the last. */
export function coatBins(coatsMm: readonly number[]): CoatBins {
  const bins: number[][] = [];
  for (const coat of [...coatsMm].toSorted((a, b) => a - b)) {
    const last = bins.at(-1);
    if (last?.[0] !== undefined && coat <= last[0] * ONE_BIN) last.push(coat);
    else bins.push([coat]);
  }
  const means = bins.map((bin) => bin.reduce((sum, coat) => sum + Math.log(coat), 0) / bin.length);
  const binOf = coatsMm.map((coat) => bins.findIndex((bin) => coat <= (bin.at(-1) as number)));
  return {
    levels: binOf.map((bin) => rangeOf(bins[bin] as readonly number[])),
    amounts: binOf.map((bin) => means[bin] as number),
  };
}

function rangeOf(sorted: readonly number[]): string {
  const [least, most] = [sorted[0], sorted.at(-1)].map((mm) => Number(mm?.toPrecision(3)));
  return least === most ? `${least} mm` : `${least} to ${most} mm`;
}
