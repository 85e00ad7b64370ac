import type { TableSeries } from "../cone.ts";
import type { ConeTable, PrintedEndPoint } from "./ConeTable.ts";
import { FAIRCHILD_PETERS } from "./fairchildPeters.ts";
import { LARGE } from "./large.ts";
import { LARGE_IRON_FREE } from "./largeIronFree.ts";
import { LARGE_LEGACY } from "./largeLegacy.ts";
import { PCE } from "./pce.ts";
import { SEGER_EUROPEAN } from "./segerEuropean.ts";
import { SEGER_JIS } from "./segerJis.ts";
import { SELF_SUPPORTING } from "./selfSupporting.ts";
import { SELF_SUPPORTING_IRON_FREE } from "./selfSupportingIronFree.ts";
import { SMALL } from "./small.ts";

/** Every shipped table by its series. */
export const CONE_TABLES: Readonly<Record<TableSeries, ConeTable>> = {
  "self-supporting": SELF_SUPPORTING,
  "self-supporting-iron-free": SELF_SUPPORTING_IRON_FREE,
  large: LARGE,
  "large-iron-free": LARGE_IRON_FREE,
  small: SMALL,
  "large-legacy": LARGE_LEGACY,
  "fairchild-peters-1926": FAIRCHILD_PETERS,
  pce: PCE,
  "seger-jis": SEGER_JIS,
  "seger-european": SEGER_EUROPEAN,
};

/** One printed cell, or null when the table has no such cone, no such column, or an empty place. */
export function printedEndPoint(
  table: ConeTable,
  cone: string,
  rateCPerHour: number | null,
): PrintedEndPoint | null {
  const column = table.ratesCPerHour.indexOf(rateCPerHour);
  const row = table.rows.find((each) => each.cone === cone);
  return row?.endPoints[column] ?? null;
}
