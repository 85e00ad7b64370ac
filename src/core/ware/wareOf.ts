import { UNKNOWN_BODY } from "./bodies.ts";
import type { Body, Ware, WareGeometry } from "./Ware.ts";

/** What may be known of a piece. */
export interface GivenWare {
  readonly body?: Body | undefined;
  readonly wallMm: number | null;
  readonly baseMm: number | null;
  /** Widest dimension, taken as the width of what stands on the shelf. */
  readonly widestMm: number | null;
  /** Thickness of the shelf under it. */
  readonly shelfMm?: number | null | undefined;
  /** Air under the foot. */
  readonly footGapMm?: number | null | undefined;
  readonly glazedSides?: WareGeometry["glazedSides"] | null | undefined;
}

/** A piece, and what was assumed about it in plain words. */
export interface AssumedWare {
  readonly ware: Ware;
  readonly assumed: readonly string[];
}

/** A common thrown wall [mm]; our own estimate. */
const COMMON_WALL_MM = 8;

/** A foot is seldom thrown as thin as its wall; our own estimate. */
const BASE_OVER_WALL = 1.5;

/** Width of a mug or a bowl [mm]; our own estimate. */
const COMMON_WIDTH_MM = 140;

/** Cordierite shelf, and air under a foot [mm]. */
const SHELF_MM = 16;
const FOOT_GAP_MM = 3;

/**
 * A piece from what is known of it, the rest assumed and said.
 * Unknown: body of the list's middle, wall 8 mm, base half as thick again as the wall (or the wall
 * from the base), 140 mm wide, a shelf of 16 mm, 3 mm of air under the foot. Always assumed: that
 * the shelf is cordierite.
 *
 * @throws RangeError when a given size is not above 0.
 */
export function wareOf(given: GivenWare): AssumedWare {
  for (const name of ["wallMm", "baseMm", "widestMm", "shelfMm", "footGapMm"] as const) {
    const size = given[name] ?? null;
    if (size !== null && !(size > 0 && Number.isFinite(size)))
      throw new RangeError(`wareOf: ${name} ${size}`);
  }
  const assumed: string[] = [];
  if (given.body === undefined)
    assumed.push("body unknown: a stoneware with 25 % free quartz and 3 % cristobalite is assumed");
  const wallMm = given.wallMm ?? (given.baseMm === null ? null : given.baseMm / BASE_OVER_WALL);
  if (wallMm === null) assumed.push(`wall of ${COMMON_WALL_MM} mm assumed`);
  else if (given.wallMm === null)
    assumed.push(`wall of ${rounded(wallMm)} mm assumed, two thirds of the base`);
  const wall = wallMm ?? COMMON_WALL_MM;
  const baseMm = given.baseMm ?? wall * BASE_OVER_WALL;
  if (given.baseMm === null)
    assumed.push(`base of ${rounded(baseMm)} mm assumed, half as thick again as the wall`);
  const widestMm = given.widestMm ?? COMMON_WIDTH_MM;
  if (given.widestMm === null) assumed.push(`${COMMON_WIDTH_MM} mm wide assumed`);
  assumed.push(shelfAssumed(given));
  return {
    ware: {
      body: given.body ?? UNKNOWN_BODY,
      geometry: {
        wallMm: wall,
        baseMm,
        footprintRadiusMm: widestMm / 2,
        shelfMm: given.shelfMm ?? SHELF_MM,
        footGapMm: given.footGapMm ?? FOOT_GAP_MM,
        glazedSides: given.glazedSides ?? "none",
      },
    },
    assumed,
  };
}

function shelfAssumed({ shelfMm, footGapMm }: GivenWare): string {
  const shelf =
    typeof shelfMm === "number" ? "cordierite shelf" : `cordierite shelf of ${SHELF_MM} mm`;
  const gap = typeof footGapMm === "number" ? "" : ` and ${FOOT_GAP_MM} mm of air under the foot`;
  return `${shelf}${gap} assumed`;
}

function rounded(mm: number): string {
  return String(Math.round(mm * 10) / 10);
}
