import type { Schedule } from "./Schedule.ts";

/**
 * The ware of a schedule with what somebody says of it in its place; null where nothing is said.
 * Walls and base that are said are the thickest part, whatever the file calls that.
 */
export function toldWare(
  ware: Schedule["ware"],
  told: {
    readonly body: Schedule["ware"]["body"] | null;
    readonly wallMm: number | null;
    readonly baseMm: number | null;
    readonly widestMm: number | null;
  },
): Schedule["ware"] {
  const { body, wallMm, baseMm, widestMm } = told;
  const sized = wallMm !== null || baseMm !== null;
  return {
    ...ware,
    ...(body && { body }),
    ...(wallMm !== null && { wallMm }),
    ...(baseMm !== null && { baseMm }),
    ...(sized && { thickestMm: Math.max(wallMm ?? 0, baseMm ?? 0) }),
    ...(widestMm !== null && { widestMm }),
  };
}
