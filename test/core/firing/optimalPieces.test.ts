import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { optimalPieces } from "../../../src/core/firing/optimalPieces.ts";

const PENALTY = 5;
const SHORTEST = 3;

/** Residual sum of squares of a constant or a line, whichever is cheaper, by the textbook sums. */
function cost(temps: readonly number[]): number {
  const n = temps.length;
  const middle = (n - 1) / 2;
  const mean = temps.reduce((sum, temp) => sum + temp, 0) / n;
  const squares = temps.reduce((sum, temp) => sum + (temp - mean) ** 2, 0);
  const products = temps.reduce((sum, temp, i) => sum + (i - middle) * (temp - mean), 0);
  const spread = temps.reduce((sum, _, i) => sum + (i - middle) ** 2, 0);
  const line = squares - products ** 2 / spread;
  return Math.min(squares + PENALTY, line + 2 * PENALTY);
}

/** The cheapest cut by trying all: no pruning, no prefix sums. */
function cheapest(temps: readonly number[]): number {
  const best = [0];
  for (let end = 1; end <= temps.length; end++) {
    let least = Number.POSITIVE_INFINITY;
    for (let start = 0; start <= end - SHORTEST; start++)
      least = Math.min(least, (best[start] as number) + cost(temps.slice(start, end)));
    best[end] = least;
  }
  return best[temps.length] as number;
}

describe("the optimal cut into pieces", () => {
  it("is as cheap as the one found by trying all, for any readings", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -20, max: 20 }), { minLength: SHORTEST, maxLength: 30 }),
        (temps) => {
          const pieces = optimalPieces(
            {
              timesSeconds: Float64Array.from(temps, (_, i) => i),
              tempsC: Float64Array.from(temps),
              fromSeconds: 0,
              toSeconds: temps.length - 1,
              widthSeconds: 1,
            },
            PENALTY,
            SHORTEST,
          );
          const total = pieces.reduce(
            (sum, { first, end }) => sum + cost(temps.slice(first, end)),
            0,
          );
          expect(total).toBeCloseTo(cheapest(temps), 6);
        },
      ),
    );
  });
});
