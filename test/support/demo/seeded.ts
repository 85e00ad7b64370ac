import { seededEven } from "../../../src/core/math/distributions.ts";

/** A stream of numbers that is the same for the same seed, everywhere. */
export interface Seeded {
  /** Even in [0, 1). */
  even(): number;
  /** Normal, mean 0, one sigma 1. */
  normal(): number;
}

/** Numbers from a seed: mulberry32, and the normal ones as the sum of twelve even ones less six. */
export function seeded(seed: number): Seeded {
  const even = seededEven(seed);
  const normal = () => {
    let sum = -6;
    for (let draw = 0; draw < 12; draw++) sum += even();
    return sum;
  };
  return { even, normal };
}
