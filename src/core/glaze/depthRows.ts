import type { Glazing } from "./laminate.ts";
import { STIFFNESS_TABLES, type StiffnessTable } from "./stiffnessTables.ts";
import { tableLine } from "./tableLine.ts";
import { BOTH_DEPTHS, type DepthTable, FREE_DEPTHS, RING_DEPTHS } from "./throughTables.ts";

const TABLES: Readonly<Record<Glazing, readonly DepthTable[]>> = {
  "both faces": BOTH_DEPTHS,
  "one face, wall held": RING_DEPTHS,
  "one face, free to bend": FREE_DEPTHS,
};

/** A wall of the depth tables with its K* for each tabled stiffness. */
interface StiffTables {
  readonly wallOverCoat: number;
  readonly depths: readonly number[];
  /** Mismatch of stiffness, rising, and K* depth by depth. */
  readonly lines: readonly (readonly [unlikeness: number, kStars: readonly number[]])[];
}

const STIFF: Readonly<Record<Glazing, readonly StiffTables[]>> = {
  "both faces": stiffTables("both faces"),
  "one face, wall held": stiffTables("one face, wall held"),
  "one face, free to bend": stiffTables("one face, free to bend"),
};

/**
 * K* against depth for each tabled wall, without the rows of the last coat before the far face.
 * For a body of equal stiffness by superposed edge cracks, times what finite elements give for
 * another one; between stiffnesses over Dundurs' α, past 0.2 and 2 the end's factor.
 */
export function depthRows(glazing: Glazing, stiffnessRatio: number): readonly DepthTable[] {
  const place = unlikeness(stiffnessRatio);
  return STIFF[glazing].map(({ wallOverCoat, depths, lines }) => {
    const upper = lines.findIndex(([at]) => at >= place);
    const to = lines[upper < 0 ? lines.length - 1 : upper] as StiffTables["lines"][number];
    const from = upper < 1 ? to : (lines[upper - 1] as StiffTables["lines"][number]);
    const share = from === to ? 0 : (place - from[0]) / (to[0] - from[0]);
    return {
      wallOverCoat,
      rows: depths.map((depth, i) => {
        const [low, high] = [from[1][i] as number, to[1][i] as number];
        return [depth, low + share * (high - low)] as const;
      }),
    };
  });
}

/** Dundurs' α of equal Poisson ratios with its sign turned: rises with the stiffness of the body. */
function unlikeness(stiffnessRatio: number): number {
  return (stiffnessRatio - 1) / (stiffnessRatio + 1);
}

function stiffTables(glazing: Glazing): readonly StiffTables[] {
  const ratios = (STIFFNESS_TABLES[glazing][0] as StiffnessTable).factors.map(([ratio]) => ratio);
  return TABLES[glazing].map(({ wallOverCoat, rows }) => {
    const inside = rows.slice(0, -1);
    return {
      wallOverCoat,
      depths: inside.map(([depth]) => depth),
      lines: ratios.map((ratio, at) => [
        unlikeness(ratio),
        inside.map(([depth, kStar]) => kStar * factorAt(glazing, at, { wallOverCoat, depth })),
      ]),
    };
  });
}

/** Factor of one tabled stiffness, between the walls of the stiffness tables. */
function factorAt(
  glazing: Glazing,
  stiffness: number,
  place: { readonly wallOverCoat: number; readonly depth: number },
): number {
  const byWall = STIFFNESS_TABLES[glazing].map(({ wallOverCoat, depths, factors }) => {
    const [, line] = factors[stiffness] as StiffnessTable["factors"][number];
    const points = depths.map((depth, i) => [depth, line[i] as number] as const);
    return [wallOverCoat, tableLine(points, place.depth).value] as const;
  });
  return tableLine(byWall, place.wallOverCoat).value;
}
