import { failed, ok, type Result } from "../problem.ts";
import type { ConesSourceId } from "../sources/cones.ts";
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

/** Series whose end points are modelled; the others are tables to look up. */
export type ConeSeries =
  | "self-supporting"
  | "self-supporting-iron-free"
  | "large"
  | "large-iron-free"
  | "small";

/** Every table that is shipped, modelled or not. */
export type TableSeries =
  | ConeSeries
  | "large-legacy"
  | "fairchild-peters-1926"
  | "pce"
  | "seger-jis"
  | "seger-european";

/** How far a cone has bent, in words a potter uses at the spy hole. */
export type Bend =
  | "upright"
  | "starting to bend"
  | "half down"
  | "nearly down"
  | "down"
  | "well past down";

/** What a Curve did to one cone. */
export interface ConeState {
  readonly cone: string;
  /** Share of the cone's heatwork budget, anchored to the table; 1 = down; counted to 10 000. */
  readonly heatwork: number;
  /** Above (+) or below (−) the end point [K, converted at the peak], anchored to the table. */
  readonly marginK: number;
  /** One sigma of the margin from the cone model alone [K]. */
  readonly marginSigmaK: number;
  readonly bend: Bend;
  /** When it went down [s], or null when it did not. */
  readonly downAtSeconds: number | null;
}

/** Where a Curve stands among the cones. */
export interface ConePosition {
  /** Last whole cone that is down; null when not even the softest of the series is. */
  readonly cone: string | null;
  /** Share of the way to the next cone, 0–1; null when there is no next cone. */
  readonly fraction: number | null;
  readonly next: string | null;
  /** `cone 5 + 60 %`, `below cone 022`, `cone 14 or more`. */
  readonly label: string;
  /** Number of whole cones, with fraction, on the index 0n → −n, n → n − 1; for differences only. */
  readonly index: number | null;
}

/** What the heat did: the answer of the cone model for one Curve. */
export interface Heatwork {
  readonly series: ConeSeries;
  readonly position: ConePosition;
  /** One sigma of the position in cones: thermocouple, place in the kiln and model. */
  readonly sigmaCones: number | null;
  /** The same without thermocouple and place: the model alone. */
  readonly modelSigmaCones: number | null;
  /** Added to the readings first [K]. */
  readonly offsetK: number;
  /** One sigma of that offset, the cone model at the chart's rates included [K]. */
  readonly offsetSigmaK: number;
  /** Nothing was allowed for, what kilns are usually out by, or what is known of this thermocouple. */
  readonly offsetIs: "none" | "usual" | "known";
  /** Highest temperature, the offset added [°C]. */
  readonly peakC: number;
  /** Mean rate over the last 100 K up to the peak's first near approach [°C/h]; null if not measured. */
  readonly lastHundredCPerHour: number | null;
  /** Rate at which a plain ramp would give the same effect at this peak [°C/h]. */
  readonly effectiveRateCPerHour: number | null;
  /** Why the answer reaches beyond what was published; empty when it does not. */
  readonly extrapolations: readonly string[];
  /** Every cone of the series with a model, softest first. */
  readonly cones: readonly ConeState[];
}

/**
 * A cone's name as the tables spell it: `05`, `5`, `5.5`, `6a`.
 * Reads `5`, `cone 5`, `Δ5`, `^6`, `5½`, `5 1/2`, `C/05`; the leading zero matters.
 *
 * @param at.where Place to name in a problem: file and field, or option.
 * @returns The name, or `cones/unknown-cone` with the nearest cones of the series.
 */
export function parseCone(
  text: string,
  at: { readonly series: TableSeries; readonly where: string },
): Result<string> {
  const cones = CONE_TABLES[at.series].rows.map((row) => row.cone);
  const name = plainName(text);
  if (cones.includes(name)) return ok(name);
  const near = nearestCones(name, cones);
  return failed({
    code: "cones/unknown-cone",
    what: `"${text}" is not a cone of the ${at.series} series`,
    where: at.where,
    expected: `a cone from ${cones[0]} to ${cones.at(-1)}, with its leading zero: 05 is not 5`,
    fix:
      near.length === 0
        ? `write the cone as a number, for example "${cones[Math.floor(cones.length / 2)]}"`
        : `write ${near.map((cone) => `"${cone}"`).join(" or ")}`,
  });
}

/**
 * Place of a cone on a straight count: 0n → −n, n → n − 1, so 01 and 1 are neighbours.
 * For differences and order only; half cones lie half-way.
 * @throws RangeError when the text does not begin with a number.
 */
export function coneIndex(cone: string): number {
  const value = Number.parseFloat(cone);
  if (Number.isNaN(value)) throw new RangeError(`coneIndex: "${cone}" is not a cone`);
  return cone.startsWith("0") ? -value : value - 1;
}

/** Cones of a modelled series without the half cones, softest first. */
export function wholeCones(series: ConeSeries): readonly string[] {
  return CONE_TABLES[series].rows.map((row) => row.cone).filter((cone) => !cone.includes("."));
}

function plainName(text: string): string {
  return text
    .toLowerCase()
    .replace(/^\s*(?:cone|c\/|sk|[δ∆△^▲])?\s*/u, "")
    .replace(/\s*(?:½|1\/2|,5)$/u, ".5")
    .trim();
}

function nearestCones(name: string, cones: readonly string[]): readonly string[] {
  if (!/^\d/u.test(name)) return [];
  const wanted = coneIndex(name);
  return cones
    .toSorted((a, b) => Math.abs(coneIndex(a) - wanted) - Math.abs(coneIndex(b) - wanted))
    .slice(0, 2)
    .toSorted((a, b) => coneIndex(a) - coneIndex(b));
}

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
