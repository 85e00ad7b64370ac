import { seededEven } from "./seededEven.ts";

/**
 * A stream of normal numbers, mean 0 and one sigma 1, that is the same for the same seed.
 * Even numbers two at a time into normal ones by Box and Muller; from memory.
 *
 * @param seed Any whole number; its lowest 32 bits count.
 */
export function seededNormal(seed: number): () => number {
  const even = seededEven(seed);
  return () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
}
