import { tableLine } from "./channelCracking.ts";
import type { Glazing } from "./laminate.ts";
import { STIFFNESS_TABLES } from "./stiffnessTables.ts";
import { BOTH_DEPTHS, type DepthTable, FREE_DEPTHS, RING_DEPTHS } from "./throughTables.ts";

/** A coat that pulls, and the wall under it. */
export interface PullingCoat {
  /** Mean stress in the glaze [MPa], not below 0. */
  readonly glazeMPa: number;
  readonly coatMm: number;
  readonly wallMm: number;
  readonly glazing: Glazing;
  /** Young's modulus of the body over that of the glaze. */
  readonly stiffnessRatio: number;
}

/** Least pull on a crack on its way through a wall. */
export interface LeastPull {
  /** Least stress intensity at the bottom of the crack [MPa·√m]; over the toughness of the body nothing stops it. */
  readonly mPaRootM: number;
  /** Where the tables did not reach, in words; empty inside them. */
  readonly past: readonly string[];
}

/**
 * Least pull of thin coats is this × stress × coat / √wall; null where it falls to nothing.
 * For a ring within 1 % from 4 to 40 coats of wall, for both faces from 12 coats on.
 * @see SOURCES["depth-weight-functions"]
 */
const THIN_COAT_LAW: Readonly<Record<Glazing, number | null>> = {
  "both faces": 2.0,
  "one face, wall held": 3.54,
  "one face, free to bend": null,
};

/** Stiffness of the body over that of the glaze, as far as it is tabled. */
const SOFTEST = 0.2;
const STIFFEST = 2;

/**
 * Least stress intensity that a long crack meets between the glaze and the last coat's depth of the wall.
 * Inside 4 to 20 coats of wall from the tables, beyond by the law of thin coats with what stiffness
 * changes at 20. Straight cracks, no heat gradient: for ranking, not for a verdict.
 */
export function leastPull(coat: PullingCoat): LeastPull {
  const { glazing, stiffnessRatio } = coat;
  const walls = coat.wallMm / coat.coatMm;
  const law = THIN_COAT_LAW[glazing];
  const { value, past } = tableLine(leastLine(glazing, stiffnessRatio), walls);
  const inRootWalls =
    past === "high end" && law !== null
      ? (law * value) / tableLine(leastLine(glazing, 1), walls).value
      : value;
  return {
    mPaRootM: (pullUnit(coat) * inRootWalls) / Math.sqrt(walls),
    past: [
      ...(past === "low end" ? ["the wall is thinner than four coats, where the tables end"] : []),
      ...pastStiffness(stiffnessRatio),
    ],
  };
}

function pastStiffness(ratio: number): readonly string[] {
  if (ratio < SOFTEST)
    return [
      "the body is softer than a fifth of the glaze, where the tables of depth end: depth is overrated",
    ];
  return ratio > STIFFEST
    ? [
        "the body is more than twice as stiff as the glaze, where the tables of depth end: depth is underrated",
      ]
    : [];
}

/**
 * Depth in the body at which a crack first stops [mm]; null when nothing stops it.
 * Between the tables of the two nearest walls; walls thinner or thicker than all take the nearest.
 */
export function stoppingDepthMm(coat: PullingCoat, bodyToughnessMPaRootM: number): number | null {
  const allowed = bodyToughnessMPaRootM / pullUnit(coat);
  const stops = depthRows(coat.glazing, coat.stiffnessRatio).flatMap((table) => {
    const depth = firstDepth(table, allowed);
    return depth === null ? [] : [[table.wallOverCoat, depth] as const];
  });
  if (stops.length === 0 || leastPull(coat).mPaRootM > bodyToughnessMPaRootM) return null;
  const depth = tableLine(stops, coat.wallMm / coat.coatMm).value;
  return Math.min(coat.wallMm, Math.max(0, (depth - 1) * coat.coatMm));
}

/** Stress intensity of K* = 1 [MPa·√m]. */
function pullUnit({ glazeMPa, coatMm }: PullingCoat): number {
  return glazeMPa * Math.sqrt(coatMm / 1000);
}

/** Least K* × √(wall over coat) against wall over coat: nearly level. */
function leastLine(
  glazing: Glazing,
  stiffnessRatio: number,
): readonly (readonly [number, number])[] {
  return depthRows(glazing, stiffnessRatio).map(({ wallOverCoat, rows }) => {
    const least = Math.max(0, Math.min(...rows.map(([, kStar]) => kStar)));
    return [wallOverCoat, least * Math.sqrt(wallOverCoat)] as const;
  });
}

function firstDepth({ rows }: DepthTable, allowed: number): number | null {
  const at = rows.findIndex(([, kStar]) => kStar <= allowed);
  const found = rows[at];
  if (found === undefined) return null;
  const before = rows[at - 1];
  if (before === undefined) return 1;
  const share = (before[1] - allowed) / (before[1] - found[1]);
  return before[0] + share * (found[0] - before[0]);
}

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
function depthRows(glazing: Glazing, stiffnessRatio: number): readonly DepthTable[] {
  const place = unlikeness(stiffnessRatio);
  return STIFF[glazing].map(({ wallOverCoat, depths, lines }) => {
    const upper = lines.findIndex(([at]) => at >= place);
    const to = lines[upper < 0 ? lines.length - 1 : upper]!;
    const from = upper < 1 ? to : lines[upper - 1]!;
    const share = from === to ? 0 : (place - from[0]) / (to[0] - from[0]);
    return {
      wallOverCoat,
      rows: depths.map((depth, i) => {
        const [low, high] = [from[1][i]!, to[1][i]!];
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
  const ratios = STIFFNESS_TABLES[glazing][0]!.factors.map(([ratio]) => ratio);
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
    const [, line] = factors[stiffness]!;
    const points = depths.map((depth, i) => [depth, line[i]!] as const);
    return [wallOverCoat, tableLine(points, place.depth).value] as const;
  });
  return tableLine(byWall, place.wallOverCoat).value;
}
