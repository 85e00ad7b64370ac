import type { Curve } from "../curve/Curve.ts";
import { selected } from "../curve/selected.ts";

/** Share of second differences that is looked at: the rest are corners and leftovers of spikes. */
const QUIET_SHARE = 0.95;
/** Mean size of the lowest 95 % of a normal scatter, over its sigma: 2(φ(0) − φ(1.96))/0.95. */
const QUIET_MEAN = 0.7168;

/**
 * Scatter of a thermocouple [K], one sigma, from how much neighbouring readings jump about:
 * the second difference of three readings scatters √6 times as much as one.
 */
export function scatterK({ tempsC }: Curve): number {
  const sizes = new Float64Array(Math.max(0, tempsC.length - 2));
  for (let i = 0; i < sizes.length; i++)
    sizes[i] = Math.abs(tempsC[i]! - 2 * tempsC[i + 1]! + tempsC[i + 2]!);
  const quiet = Math.ceil(sizes.length * QUIET_SHARE);
  if (quiet === 0) return 0;
  selected(sizes, quiet - 1);
  let sum = 0;
  for (let i = 0; i < quiet; i++) sum += sizes[i]!;
  return sum / quiet / (QUIET_MEAN * Math.sqrt(6));
}
