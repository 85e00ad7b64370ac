/** A stream of numbers that is the same for the same seed, everywhere. */
export interface Seeded {
  /** Even in [0, 1). */
  even(): number;
  /** Normal, mean 0, one sigma 1. */
  normal(): number;
}

/** Numbers from a seed: mulberry32, and the normal ones as the sum of twelve even ones less six. */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const normal = () => {
    let sum = -6;
    for (let draw = 0; draw < 12; draw++) sum += even();
    return sum;
  };
  return { even, normal };
}
