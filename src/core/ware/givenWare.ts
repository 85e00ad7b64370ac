import { failed, type Result } from "../problem.ts";
import { printMm } from "../text/quantities.ts";
import { parseLength } from "../units/quantity.ts";
import { ORDINARY_BODY } from "./bodies.ts";
import { likelyHeightMm, shapeNamed, tenths } from "./pieceShape.ts";
import type { Body, Ware, WareGeometry } from "./Ware.ts";

/** What may be known of a piece; a size is null, and anything else left out, where it is not known. */
export interface GivenWare {
  readonly body?: Body | null | undefined;
  readonly wallMm: number | null;
  readonly baseMm: number | null;
  /** Stands in for wall and base where neither is given, and for a base that is thinner. */
  readonly thickestMm?: number | null | undefined;
  /** Widest dimension, taken as the width of what stands on the shelf. */
  readonly widestMm: number | null;
  /** What it is called: a plate, a bowl or a tile is known by its name. */
  readonly name?: string | undefined;
  /** From shelf to rim. */
  readonly heightMm?: number | null | undefined;
  readonly stands?: WareGeometry["stands"] | null | undefined;
  /** Thickness of the shelf under it. */
  readonly shelfMm?: number | null | undefined;
  /** Air under the foot. */
  readonly footGapMm?: number | null | undefined;
  readonly glazedSides?: WareGeometry["glazedSides"] | null | undefined;
}

/** A piece, and what was assumed about it in plain words. */
export interface AssumedWare {
  readonly ware: Ware;
  /** What it is, after "for": an ordinary mug, or `stoneware cone 6, wall 8 mm, base 10 mm`. */
  readonly meantFor: string;
  /** Nothing was known of it. */
  readonly isMug: boolean;
  readonly assumed: readonly string[];
}

/** What ware is taken to be of which nothing is known, and what fills in for what is not known [mm]. */
const ORDINARY_MUG = { wallMm: 6, baseMm: 8, widestMm: 85 } as const;

/** A base is thicker than its wall, as in the mug. */
const BASE_OVER_WALL = ORDINARY_MUG.baseMm / ORDINARY_MUG.wallMm;

/** No base is taken to be thicker by itself [mm]: the thickest clay that is computed. */
const THICKEST_MM = 100;

/** Cordierite shelf, and air under a foot [mm]. */
const SHELF_MM = 16;
const FOOT_GAP_MM = 3;

const SIZES = [
  "wallMm",
  "baseMm",
  "thickestMm",
  "widestMm",
  "heightMm",
  "shelfMm",
  "footGapMm",
] as const satisfies readonly (keyof GivenWare)[];

/**
 * A piece from what is known of it, the rest filled from an ordinary stoneware mug, and said.
 * Unknown: the body stoneware of cone 6, wall 6 mm, base a third thicker than the wall (or the wall
 * from the base), 85 mm wide, a shelf of 16 mm, 3 mm of air under the foot. Always assumed: that the
 * shelf is cordierite.
 *
 * @throws RangeError when a given size is not above 0.
 */
export function wareOf(given: GivenWare): AssumedWare {
  checkSizes(given);
  const sized = thicknesses(given);
  const body = given.body ?? ORDINARY_BODY;
  const widestMm = given.widestMm ?? ORDINARY_MUG.widestMm;
  const isMug = !given.body && sized.isUnknown && given.widestMm === null;
  const { wallMm, baseMm } = sized;
  const shape = shapeFor(given, { baseMm, widestMm });
  const edge = given.stands === "on edge";
  return {
    ware: {
      body,
      geometry: {
        wallMm,
        baseMm,
        footprintRadiusMm: widestMm / 2,
        ...shape.geometry,
        ...(edge && { stands: "on edge" as const }),
        shelfMm: given.shelfMm ?? SHELF_MM,
        footGapMm: given.footGapMm ?? FOOT_GAP_MM,
        glazedSides: given.glazedSides ?? "none",
      },
    },
    isMug,
    meantFor: isMug
      ? "an ordinary stoneware mug (wide or thick pieces bear less)"
      : `${body.name}, wall ${printMm(wallMm)}, base ${printMm(baseMm)}`,
    assumed: [
      ...(isMug
        ? [
            `the ware is not known: taken as an ordinary stoneware mug (wall ${wallMm} mm, base ${baseMm} mm, ${widestMm} mm wide); wide or thick pieces bear less`,
          ]
        : [
            ...(given.body ? [] : [`no body is named: taken as ${body.name}`]),
            ...sized.assumed,
            ...(given.widestMm === null
              ? [`taken to be ${widestMm} mm wide, as a mug is; wider pieces bear less`]
              : []),
          ]),
      ...(edge ? [] : [shelfAssumed(given)]),
      ...(isMug || shape.assumed === null ? [] : [shape.assumed]),
    ],
  };
}

function checkSizes(given: GivenWare): void {
  for (const name of SIZES) {
    const size = given[name] ?? null;
    if (size !== null && !(size > 0 && Number.isFinite(size)))
      throw new RangeError(`wareOf: ${name} ${size}`);
  }
}

/** Whole millimetres of wall and base where a schedule is to be made for ware that is not quite known. */
export function sizedAsMug(known: {
  readonly wallMm: number | null;
  readonly baseMm: number | null;
}): { readonly wallMm: number; readonly baseMm: number } {
  const { wallMm, baseMm } = thicknesses({ ...known, widestMm: null });
  return {
    wallMm: known.wallMm ?? Math.round(wallMm),
    baseMm: known.baseMm ?? Math.round(baseMm),
  };
}

/** Wall and base, from what is known of them and of the thickest part [mm]. */
function thicknesses({ wallMm, baseMm, thickestMm = null }: GivenWare) {
  const isUnknown = wallMm === null && baseMm === null && thickestMm === null;
  if (wallMm === null && baseMm === null && thickestMm !== null)
    return {
      wallMm: thickestMm,
      baseMm: thickestMm,
      isUnknown,
      assumed: ["wall and base taken to be as thick as the thickest part"],
    };
  if (wallMm === null && baseMm !== null) {
    const wall = baseMm / BASE_OVER_WALL;
    const assumed = [`wall taken as ${rounded(wall)} mm, three quarters of the base`];
    return { wallMm: wall, baseMm, isUnknown, assumed };
  }
  const wall = wallMm ?? ORDINARY_MUG.wallMm;
  if (baseMm !== null) return { wallMm: wall, baseMm, isUnknown, assumed: [] };
  if (thickestMm !== null && thickestMm > wall)
    return {
      wallMm: wall,
      baseMm: thickestMm,
      isUnknown,
      assumed: ["base taken to be as thick as the thickest part"],
    };
  const base = Math.min(wall * BASE_OVER_WALL, Math.max(wall, THICKEST_MM));
  const why = base < wall * BASE_OVER_WALL ? "" : ", a third thicker than the wall";
  return {
    wallMm: wall,
    baseMm: base,
    isUnknown,
    assumed: [`base taken as ${rounded(base)} mm${why}`],
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

/** Height and foot, as given, else by the name of the piece, else by its width. */
function shapeFor(
  { heightMm, name, stands }: GivenWare,
  { baseMm, widestMm }: { readonly baseMm: number; readonly widestMm: number },
): {
  readonly geometry: Pick<WareGeometry, "heightMm" | "footRadiusMm">;
  readonly assumed: string | null;
} {
  const named = shapeNamed(name ?? "");
  const footRadiusMm = ((named?.footOverWidth ?? 1) * widestMm) / 2;
  if (typeof heightMm === "number") return { geometry: { heightMm, footRadiusMm }, assumed: null };
  if (stands === "on edge" || named?.flat)
    return { geometry: { heightMm: baseMm, footRadiusMm }, assumed: null };
  const high = named === null ? likelyHeightMm(widestMm) : tenths(named.heightOverWidth * widestMm);
  return {
    geometry: { heightMm: high, footRadiusMm },
    assumed: `${Math.round(high)} mm high assumed`,
  };
}

/** A length of a piece, or of what it stands on, and what it may be [mm]. */
interface LengthLimits {
  readonly thing: string;
  readonly code: `ware/${string}`;
  readonly leastMm: number;
  readonly mostMm: number;
}

const CLAY = { code: "ware/thickness", leastMm: 1, mostMm: 100 } as const;

/** By the key in files. Less than 0.1 mm of air is not to be had between rough faces; our own estimate. */
const LIMITS = {
  wall: { thing: "the wall", ...CLAY },
  base: { thing: "the base", ...CLAY },
  thickest: { thing: "the ware", ...CLAY },
  shelf: { thing: "the shelf", ...CLAY },
  height: { thing: "the piece", code: "ware/height", leastMm: 1, mostMm: 3000 },
  footGap: { thing: "the air under the foot", code: "ware/foot-gap", leastMm: 0.1, mostMm: 100 },
  widest: { thing: "the widest piece", code: "ware/width", leastMm: 1, mostMm: 3000 },
} as const satisfies Readonly<Record<string, LengthLimits>>;

const ZERO = /^0+(?:\.0+)?(?:$|[^\d./])/;

/**
 * A length of a piece [mm] from what a person wrote, within what the ware of a kiln can be:
 * clay and shelves 1 to 100 mm thick, 0.1 to 100 mm of air under a foot, pieces up to 3 m wide and high.
 *
 * @returns `units/not-a-length`, or `ware/thickness`, `ware/foot-gap`, `ware/width` with the
 * nearest length that is possible.
 */
export function wareLength(
  value: number | string,
  of: { readonly name: keyof typeof LIMITS; readonly where: string },
): Result<number> {
  const limits: LengthLimits = LIMITS[of.name];
  const isZero = value === 0 || (typeof value === "string" && ZERO.test(value.trim()));
  const length: Result<number> = isZero
    ? { ok: true, value: 0 }
    : parseLength(value, { where: of.where });
  if (!length.ok) return length;
  const mm = length.value;
  const { thing, code, leastMm, mostMm } = limits;
  if (mm >= leastMm && mm <= mostMm) return length;
  const flat =
    of.name === "footGap" && mm < leastMm ? " (a foot that stands flat, rough on rough)" : "";
  return failed({
    code,
    what: `${thing} measures ${Number(mm.toPrecision(4))} mm`,
    where: of.where,
    expected: `${leastMm} to ${mostMm} mm`,
    fix: `check the number, a bare one is millimetres; the nearest possible is ${mm < leastMm ? leastMm : mostMm} mm${flat}`,
  });
}
