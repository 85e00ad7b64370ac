import type { DiagnosedCause } from "../../core/firing/diagnosis/DiagnosedCause.ts";
import type { Decision } from "../../core/log/LogReading.ts";
import type { Block } from "../../core/reports/Block.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";

/** The charts of a firing, in the order in which the report shows them. */
export const CHART_NAMES = ["firing", "cooling", "strain", "cones"] as const;

/** Name of a chart of a firing. */
export type ChartName = (typeof CHART_NAMES)[number];

/** Specs of charts as JSON, ready to be drawn: text crosses from the worker for next to nothing. */
export type ChartTexts = Readonly<Partial<Record<ChartName, string>>>;

/** The charts in one unit; dark ones only for a dark screen. */
export interface ShownCharts {
  readonly unit: TemperatureUnit;
  readonly light: ChartTexts;
  readonly dark: ChartTexts | null;
}

/** Where a finding holds, as far as charts can mark it. */
export interface FindingPlace {
  /** Its statement, to name the mark. */
  readonly statement: string;
  readonly severity: "note" | "caution" | "warning";
  /** Hours from the start of the log; null when it holds for the whole. */
  readonly hours: readonly [from: number, to: number] | null;
  /** Temperatures of the hottest zone there [°C], when it is after the peak; null otherwise. */
  readonly coolingC: readonly [from: number, to: number] | null;
}

/** What the review job answers: all that the page shows, and nothing that grows with the log. */
export interface ReviewAnswer {
  /** The report in either unit. */
  readonly blocks: Readonly<Record<TemperatureUnit, readonly Block[]>>;
  readonly charts: ShownCharts;
  /** The document that `undunted review --json` prints. */
  readonly json: string;
  readonly decisions: readonly Decision[];
  /** What a reader of this log reads in; °C for a log in kelvin. */
  readonly logUnit: TemperatureUnit;
  /** In the order of the report. */
  readonly findings: readonly FindingPlace[];
  readonly diagnosis: readonly DiagnosedCause[];
  /** The schedule for the next firing as the text of its file; null when none can be made. */
  readonly nextSchedule: string | null;
  /** The schedule was worked out with the kiln learned from these logs. */
  readonly nextByKiln: boolean;
  /** Offset of the thermocouple that it allows for and that no log carries [K]; null when there is none. */
  readonly nextOffsetK: number | null;
  /** What was looked for and not found, as sentences. */
  readonly remarks: readonly string[];
}
