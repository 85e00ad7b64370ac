import type { ConesSourceId } from "../sources/cones.ts";
import type { TableSeries } from "./cone.ts";
import {
  FAIRCHILD_PETERS,
  LARGE,
  LARGE_IRON_FREE,
  LARGE_LEGACY,
  PCE,
  type PrintedCones,
  SEGER_EUROPEAN,
  SEGER_JIS,
  SELF_SUPPORTING,
  SELF_SUPPORTING_IRON_FREE,
  SMALL,
} from "./printedCones.ts";

/** How well a printed value is attested: seen in two independent copies, in one, or remembered. */
export type Confidence = "two-copies" | "one-copy" | "from-memory";

/** One cell of a table: the end point, tip level with the base. */
export interface PrintedEndPoint {
  /** [°C], as printed. */
  readonly tempC: number;
  /** [°F], as printed beside it; null where the table has no °F. */
  readonly tempF: number | null;
  readonly confidence: Confidence;
  readonly sources: readonly ConesSourceId[];
}

/** A published table of cone end points, transcribed cell by cell. */
export interface ConeTable extends Omit<PrintedCones, "cells"> {
  readonly series: TableSeries;
  /** Softest first; `endPoints` has one place for each column, null where nothing is printed. */
  readonly rows: readonly {
    readonly cone: string;
    readonly endPoints: readonly (PrintedEndPoint | null)[];
  }[];
}

const SEEN = { 2: "two-copies", 1: "one-copy", m: "from-memory" } as const;

/** Every shipped table by its series. */
export const CONE_TABLES: Readonly<Record<TableSeries, ConeTable>> = {
  "self-supporting": tableOf("self-supporting", SELF_SUPPORTING),
  "self-supporting-iron-free": tableOf("self-supporting-iron-free", SELF_SUPPORTING_IRON_FREE),
  large: tableOf("large", LARGE),
  "large-iron-free": tableOf("large-iron-free", LARGE_IRON_FREE),
  small: tableOf("small", SMALL),
  "large-legacy": tableOf("large-legacy", LARGE_LEGACY),
  "fairchild-peters-1926": tableOf("fairchild-peters-1926", FAIRCHILD_PETERS),
  pce: tableOf("pce", PCE),
  "seger-jis": tableOf("seger-jis", SEGER_JIS),
  "seger-european": tableOf("seger-european", SEGER_EUROPEAN),
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

function tableOf(series: TableSeries, { cells, ...printed }: PrintedCones): ConeTable {
  const rows = cells
    .trim()
    .split("\n")
    .map((line) => {
      const [cone = "", ...rest] = line.split(/ {2,}/);
      if (rest.length !== printed.ratesCPerHour.length)
        throw new RangeError(`cone table ${series}: ${line}`);
      return { cone, endPoints: rest.map((cell) => endPointOf(cell, printed.sources)) };
    });
  return { series, ...printed, rows };
}

function endPointOf(cell: string, sources: readonly ConesSourceId[]): PrintedEndPoint | null {
  if (cell === "–") return null;
  const [, tempC, tempF, seen, letters] = /^(\d+)(?:\/(\d+))? ([12m])([a-z]+)$/.exec(cell) ?? [];
  const named = [...(letters ?? "")].flatMap((letter) => sources[letter.charCodeAt(0) - 97] ?? []);
  if (named.length === 0 || named.length !== letters?.length)
    throw new RangeError(`cone table: ${cell}`);
  return {
    tempC: Number(tempC),
    tempF: tempF === undefined ? null : Number(tempF),
    confidence: SEEN[seen as keyof typeof SEEN],
    sources: named,
  };
}
