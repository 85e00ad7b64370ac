import { describe, expect, it } from "vitest";
import { type CensoredRow, censoredFit } from "../../../src/core/trials/tobitFit.ts";

function row(value: number, isBound: boolean, x = 0): CensoredRow {
  return { value, isBound, variance: 0, columns: [1, x] };
}

/** Likelihood written out anew: density of what was measured, area by strips above each bound. */
function logLikelihood(
  rows: readonly CensoredRow[],
  [start = 0, slope = 0]: readonly number[],
  sigma: number,
): number {
  const density = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return rows.reduce((sum, { value, isBound, columns }) => {
    const z = (value - start - slope * (columns[1] as number)) / sigma;
    if (!isBound) return sum + Math.log(density(z) / sigma);
    let area = 0;
    for (let at = z + 0.0005; at < z + 12; at += 0.001) area += 0.001 * density(at);
    return sum + Math.log(area);
  }, 0);
}

describe("rows of which some are only known to be more", () => {
  const measured = [
    [0, 1],
    [1, 1.9],
    [2, 2.6],
    [3, 4.2],
    [4, 4.9],
    [5, 6.3],
  ].map(([x = 0, y = 0]) => row(y, false, x));

  it("fit as without the bounds where those are far below", () => {
    const without = censoredFit(measured);
    const fit = censoredFit([...measured, row(-100, true, 2), row(-200, true, 5)]);
    expect(fit?.coefficients[1]).toBeCloseTo(without?.coefficients[1] ?? Number.NaN, 6);
    expect(fit?.tileSigma).toBeCloseTo(without?.tileSigma ?? Number.NaN, 4);
  });

  it("fit where their likelihood, worked out anew, is highest", () => {
    const rows = [...measured, row(5.5, true, 4), row(6, true, 5), row(3, true, 1)];
    const fit = censoredFit(rows);
    if (fit === null) throw new Error("no fit");
    const { coefficients, tileSigma } = fit;
    const [start = 0, slope = 0] = coefficients;
    const top = logLikelihood(rows, coefficients, tileSigma);
    expect(fit.logLikelihood).toBeCloseTo(top, 3);
    for (const [a, b, s] of [
      [0.05, 0, 1],
      [-0.05, 0, 1],
      [0, 0.02, 1],
      [0, -0.02, 1],
      [0, 0, 1.05],
      [0, 0, 0.95],
    ] as const)
      expect(logLikelihood(rows, [start + a, slope + b], tileSigma * s)).toBeLessThan(top);
  });

  it("have no fit where two columns say the same", () => {
    expect(censoredFit([1, 2, 3].map((y) => row(y, false, 1)))).toBeNull();
  });
});
