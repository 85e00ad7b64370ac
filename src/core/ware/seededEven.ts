/**
 * A stream of even numbers in [0, 1) that is the same for the same seed: mulberry32, from memory.
 *
 * @param seed Any whole number; its lowest 32 bits count.
 */
export function seededEven(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
