import type { ConesSourceId } from "../../sources/cones.ts";
import type { TableSeries } from "../cone.ts";

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
export interface ConeTable {
  readonly series: TableSeries;
  /** Every source that a cell of the table names. */
  readonly sources: readonly ConesSourceId[];
  /** Columns, rising: heating rate over about the last 100 K [°C/h]; null = printed without a rate. */
  readonly ratesCPerHour: readonly (number | null)[];
  /** Smallest step of the printed values [°C]. */
  readonly printedResolutionC: number;
  /** Softest first; `endPoints` has one place for each column, null where nothing is printed. */
  readonly rows: readonly {
    readonly cone: string;
    readonly endPoints: readonly (PrintedEndPoint | null)[];
  }[];
}
