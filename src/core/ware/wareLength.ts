import { failed, type Result } from "../problem.ts";
import { parseLength } from "../units/parseLength.ts";

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
