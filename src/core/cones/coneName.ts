import { failed, ok, type Result } from "../problem.ts";
import type { ConeSeries, TableSeries } from "./cone.ts";
import { CONE_TABLES } from "./coneTables.ts";

/**
 * A cone's name as the tables spell it: `05`, `5`, `5.5`, `6a`.
 * Reads `5`, `cone 5`, `Δ5`, `^6`, `5½`, `5 1/2`, `C/05`; the leading zero matters.
 *
 * @param at.where Place to name in a problem: file and field, or option.
 * @returns The name, or `cones/unknown-cone` with the nearest cones of the series.
 */
export function parseCone(
  text: string,
  at: { readonly series: TableSeries; readonly where: string },
): Result<string> {
  const cones = CONE_TABLES[at.series].rows.map((row) => row.cone);
  const name = plainName(text);
  if (cones.includes(name)) return ok(name);
  const near = nearestCones(name, cones);
  return failed({
    code: "cones/unknown-cone",
    what: `"${text}" is not a cone of the ${at.series} series`,
    where: at.where,
    expected: `a cone from ${cones[0]} to ${cones.at(-1)}, with its leading zero: 05 is not 5`,
    fix:
      near.length === 0
        ? `write the cone as a number, for example "${cones[Math.floor(cones.length / 2)]}"`
        : `write ${near.map((cone) => `"${cone}"`).join(" or ")}`,
  });
}

/**
 * Place of a cone on a straight count: 0n → −n, n → n − 1, so 01 and 1 are neighbours.
 * For differences and order only; half cones lie half-way.
 * @throws RangeError when the text does not begin with a number.
 */
export function coneIndex(cone: string): number {
  const value = Number.parseFloat(cone);
  if (Number.isNaN(value)) throw new RangeError(`coneIndex: "${cone}" is not a cone`);
  return cone.startsWith("0") ? -value : value - 1;
}

/** Cones of a modelled series without the half cones, softest first. */
export function wholeCones(series: ConeSeries): readonly string[] {
  return CONE_TABLES[series].rows.map((row) => row.cone).filter((cone) => !cone.includes("."));
}

function plainName(text: string): string {
  return text
    .toLowerCase()
    .replace(/^\s*(?:cone|c\/|sk|[δ∆△^▲])?\s*/u, "")
    .replace(/\s*(?:½|1\/2|,5)$/u, ".5")
    .trim();
}

function nearestCones(name: string, cones: readonly string[]): readonly string[] {
  if (!/^\d/u.test(name)) return [];
  const wanted = coneIndex(name);
  return cones
    .toSorted((a, b) => Math.abs(coneIndex(a) - wanted) - Math.abs(coneIndex(b) - wanted))
    .slice(0, 2)
    .toSorted((a, b) => coneIndex(a) - coneIndex(b));
}
