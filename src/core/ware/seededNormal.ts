/**
 * A stream of normal numbers, mean 0 and one sigma 1, that is the same for the same seed.
 * Even numbers by mulberry32, two at a time into normal ones by Box and Muller; from memory.
 *
 * @param seed Any whole number; its lowest 32 bits count.
 */
export function seededNormal(seed: number): () => number {
  let state = seed >>> 0;
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
}
