import type { Schedule } from "../schedule/Schedule.ts";
import { UNKNOWN_WARE, type WareSize } from "../ware/WareSize.ts";
import type { FiringRecord } from "./FiringRecord.ts";

/**
 * Size of the ware that limits are judged by: the thickest and the widest of what the record lists.
 * One piece of unknown thickness leaves the thickness unknown; without a list, the plan's ware counts.
 */
export function firedWare(record: FiringRecord | null, plan: Schedule | null): WareSize {
  const ware = record?.ware ?? [];
  if (ware.length === 0) return plan?.ware ?? UNKNOWN_WARE;
  const thicknesses = ware.map((piece) => piece.thickestMm);
  const widths = ware.flatMap((piece) => (piece.widestMm === null ? [] : [piece.widestMm]));
  const known = thicknesses.filter((thickness) => thickness !== null);
  return {
    thickestMm: known.length < thicknesses.length ? null : Math.max(...known),
    widestMm: widths.length === 0 ? null : Math.max(...widths),
  };
}
