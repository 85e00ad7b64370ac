import type { Glazing } from "./laminate.ts";
import { tableLine } from "./tableLine.ts";
import { BOTH_DEPTHS, type DepthTable, FREE_DEPTHS, RING_DEPTHS } from "./throughTables.ts";

/** A coat that pulls, and the wall under it. */
export interface PullingCoat {
  /** Mean stress in the glaze [MPa], not below 0. */
  readonly glazeMPa: number;
  readonly coatMm: number;
  readonly wallMm: number;
  readonly glazing: Glazing;
}

/** Least pull on a crack on its way through a wall. */
export interface LeastPull {
  /** Least stress intensity at the bottom of the crack [MPa·√m]; over the toughness of the body nothing stops it. */
  readonly mPaRootM: number;
  /** Where the tables did not reach, in words; empty inside them. */
  readonly past: readonly string[];
}

const TABLES: Readonly<Record<Glazing, readonly DepthTable[]>> = {
  "both faces": BOTH_DEPTHS,
  "one face, wall held": RING_DEPTHS,
  "one face, free to bend": FREE_DEPTHS,
};

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

/** Least K* × √(wall over coat) against wall over coat: nearly level. */
const LEAST_LINES = {
  "both faces": leastLine(BOTH_DEPTHS),
  "one face, wall held": leastLine(RING_DEPTHS),
  "one face, free to bend": leastLine(FREE_DEPTHS),
};

/**
 * Least stress intensity that a long crack meets between the glaze and the last coat's depth of the wall.
 * Inside 4 to 20 coats of wall from the tables, beyond by the law of thin coats. Equal stiffness of
 * glaze and body, straight cracks, no heat gradient: for ranking, not for a verdict.
 */
export function leastPull(coat: PullingCoat): LeastPull {
  const { glazing } = coat;
  const walls = coat.wallMm / coat.coatMm;
  const law = THIN_COAT_LAW[glazing];
  const { value, past } = tableLine(LEAST_LINES[glazing], walls);
  const inRootWalls = past === "high end" && law !== null ? law : value;
  return {
    mPaRootM: (pullUnit(coat) * inRootWalls) / Math.sqrt(walls),
    past: past === "low end" ? ["the wall is thinner than four coats, where the tables end"] : [],
  };
}

/**
 * Depth in the body at which a crack first stops [mm]; null when nothing stops it.
 * Between the tables of the two nearest walls; walls thinner or thicker than all take the nearest.
 */
export function stoppingDepthMm(coat: PullingCoat, bodyToughnessMPaRootM: number): number | null {
  const allowed = bodyToughnessMPaRootM / pullUnit(coat);
  const stops = TABLES[coat.glazing].flatMap((table) => {
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

function leastLine(tables: readonly DepthTable[]): readonly (readonly [number, number])[] {
  return tables.map((table) => {
    const least = Math.max(0, Math.min(...inside(table).map(([, kStar]) => kStar)));
    return [table.wallOverCoat, least * Math.sqrt(table.wallOverCoat)] as const;
  });
}

/** Rows that are not within the last coat before the far face. */
function inside({ rows }: DepthTable): DepthTable["rows"] {
  return rows.slice(0, -1);
}

function firstDepth(table: DepthTable, allowed: number): number | null {
  const rows = inside(table);
  const at = rows.findIndex(([, kStar]) => kStar <= allowed);
  const found = rows[at];
  if (found === undefined) return null;
  const before = rows[at - 1];
  if (before === undefined) return 1;
  const share = (before[1] - allowed) / (before[1] - found[1]);
  return before[0] + share * (found[0] - before[0]);
}
