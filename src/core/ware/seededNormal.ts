import { seededEven } from "./seededEven.ts";

/**
 * A stream of normal numbers, mean 0 and one sigma 1, that is the same for the same seed.
 * Even numbers two at a time into normal ones by Box and Muller; from memory.
 *
 * @param seed Any whole number; its lowest 32 bits count.
 */
export function seededNormal(seed: number): () => number {
  const even = seededEven(seed);
  return () => Math.sqrt(-2 * Math.log(1 - even())) * cosineOfTurn(even());
}

/**
 * Cosine of a share of a full turn, 0–1, by its series to 1e-16: `Math.cos` is not the same to the
 * last digit in every engine, and a stream is to be the same everywhere.
 */
function cosineOfTurn(turn: number): number {
  const half = turn > 0.5 ? 1 - turn : turn;
  const quarter = half > 0.25 ? 0.5 - half : half;
  const size =
    quarter > 0.125 ? series(2 * Math.PI * (0.25 - quarter), 1) : series(2 * Math.PI * quarter, 0);
  return half > 0.25 ? -size : size;
}

/** Sine (first power 1) or cosine (first power 0) of at most an eighth of a turn [rad]. */
function series(angle: number, firstPower: 0 | 1): number {
  const square = angle * angle;
  let sum = 0;
  for (let power = 18 + firstPower; power > firstPower; power -= 2)
    sum = (-square * (1 + sum)) / (power * (power - 1));
  return (1 + sum) * (firstPower === 1 ? angle : 1);
}
