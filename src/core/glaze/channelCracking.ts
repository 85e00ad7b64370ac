import { Z_FINITE_WALL, Z_THICK_BODY } from "./channelTables.ts";
import { tableLine } from "./tableLine.ts";

/** How stiff a body is beside its glaze, and how much wall lies behind the coat. */
export interface Backing {
  /** Young's modulus of the body over that of the glaze. */
  readonly stiffnessRatio: number;
  /** Wall behind a crack over coat; may be infinite. */
  readonly wallOverCoat: number;
}

/** Release number of a lone crack, and where its tables did not reach. */
export interface ReleaseNumber {
  /** Energy that a running crack sets free is z × stress² × coat / plane-strain stiffness. */
  readonly z: number;
  /** In words; empty inside the tables. */
  readonly past: readonly string[];
}

/** Depth correction of each wall table: 1/(wall over coat) and the logarithm of its Z over a thick body's. */
const WALL_LINES = Z_FINITE_WALL.map(({ stiffnessRatio, rows }) => {
  const thick = tableLine(Z_THICK_BODY, stiffnessRatio).value;
  const line = rows.map(([wall, z]) => [1 / wall, Math.log(z / thick)] as const).reverse();
  return { stiffnessRatio, line: [[0, 0] as const, ...line] };
});

const THICK_LINE = Z_THICK_BODY.map(([ratio, z]) => [Math.log(ratio), Math.log(z)] as const);

/**
 * Release number Z of a crack that runs alone through a coat on a body.
 * Between rows in logarithms; past an end the end's value holds and `past` says so. What a wall of
 * finite thickness adds is tabled for bodies of 0.5 to 1 of the glaze's stiffness, else the
 * nearest of these is taken.
 */
export function releaseNumber({ stiffnessRatio, wallOverCoat }: Backing): ReleaseNumber {
  if (!(stiffnessRatio > 0 && wallOverCoat > 0))
    throw new RangeError(`releaseNumber: ratio ${stiffnessRatio}, wall ${wallOverCoat}`);
  const thick = tableLine(THICK_LINE, Math.log(stiffnessRatio));
  const finite = WALL_LINES.map(
    ({ stiffnessRatio: at, line }) =>
      [Math.log(at), tableLine(line, 1 / wallOverCoat).value] as const,
  );
  const extra = tableLine(finite, Math.log(stiffnessRatio)).value;
  return { z: Math.exp(thick.value + extra), past: pastEnds(thick.past, wallOverCoat) };
}

function pastEnds(stiffness: "low end" | "high end" | null, wall: number): readonly string[] {
  return [
    ...(stiffness === "low end"
      ? [
          "the body is softer than a fifth of the glaze, where the table of crack energy ends: cracking is underrated",
        ]
      : []),
    ...(stiffness === "high end"
      ? [
          "the body is more than twice as stiff as the glaze, where the table of crack energy ends: cracking is overrated",
        ]
      : []),
    ...(wall < 2
      ? [
          "the wall is thinner than two coats, where the table of crack energy ends: cracking is underrated",
        ]
      : []),
  ];
}

/** Coat [mm] and toughness [MPa·√m] that a stress meets. */
export interface Coat {
  readonly coatMm: number;
  readonly toughnessMPaRootM: number;
}

/** Load on a coat: stress² × coat / toughness²; a lone crack can run from 1/Z on. */
export function crackingLoad(stressMPa: number, { coatMm, toughnessMPaRootM }: Coat): number {
  return (stressMPa ** 2 * coatMm) / 1000 / toughnessMPaRootM ** 2;
}

/** Stress that a load means [MPa]. */
export function stressAtLoad(load: number, { coatMm, toughnessMPaRootM }: Coat): number {
  return toughnessMPaRootM * Math.sqrt((load * 1000) / coatMm);
}

/**
 * Least coat in which a crack can run at a stress [mm]; it falls as the square of the stress.
 * @see SOURCES["hutchinson-suo-1992"]
 */
export function thresholdCoatMm(
  stressMPa: number,
  { z, toughnessMPaRootM }: { readonly z: number; readonly toughnessMPaRootM: number },
): number {
  return (1000 * toughnessMPaRootM ** 2) / (z * stressMPa ** 2);
}
