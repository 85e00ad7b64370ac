import type { Curve } from "../curve/Curve.ts";

/** Share of second differences that is looked at: the rest are corners and leftovers of spikes. */
const QUIET_SHARE = 0.95;
/** Mean size of the lowest 95 % of a normal scatter, over its sigma: 2(φ(0) − φ(1.96))/0.95. */
const QUIET_MEAN = 0.7168;

/**
 * Scatter of a thermocouple [K], one sigma, from how much neighbouring readings jump about:
 * the second difference of three readings scatters √6 times as much as one.
 */
export function scatterK({ tempsC }: Curve): number {
  const sizes = Float64Array.from({ length: Math.max(0, tempsC.length - 2) }, (_, i) =>
    Math.abs((tempsC[i] as number) - 2 * (tempsC[i + 1] as number) + (tempsC[i + 2] as number)),
  ).sort();
  const quiet = sizes.subarray(0, Math.ceil(sizes.length * QUIET_SHARE));
  if (quiet.length === 0) return 0;
  return quiet.reduce((sum, size) => sum + size, 0) / quiet.length / (QUIET_MEAN * Math.sqrt(6));
}
