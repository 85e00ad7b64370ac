import type { DiagnosedCause } from "../../core/diagnosis/Diagnosis.ts";
import type { AssumedKiln, LearnedKiln } from "../../core/kiln/LearnedKiln.ts";
import { asAssumedKiln } from "../../core/kiln/reach.ts";
import type { Decision } from "../../core/log/reading/LogReading.ts";
import type { Block } from "../../core/reports/Block.ts";
import type { ComparisonPart } from "../../core/review/compareFirings.ts";
import type { PlannedFiring } from "../../core/trials/NextTest.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";

/** One firing as it was read: its part of a comparison, and what to show of it in a list. */
export interface ComparedLog {
  readonly part: ComparisonPart;
  /** The firing and its tiles as they are studied; of its Curves only the hottest. */
  readonly planned: PlannedFiring;
  readonly facts: ComparedFacts;
}

/** What a list of firings says of one. */
interface ComparedFacts {
  readonly title: string;
  /** Rows of the log that gave readings, and all of them. */
  readonly rows: { readonly accepted: number; readonly total: number };
  readonly coneLabel: string;
  readonly peakC: number;
  /** Trial tiles in the record; null without a record. */
  readonly tiles: number | null;
}

/** Charts in one unit as JSON by their names; dark ones only for a dark screen. */
export interface NamedCharts {
  readonly unit: TemperatureUnit;
  readonly light: Readonly<Record<string, string>>;
  readonly dark: Readonly<Record<string, string>> | null;
}

/** What the compare job answers: all that the page shows. */
export interface CompareAnswer {
  readonly title: string;
  /** The answer on one screen, in either unit, as the command prints it. */
  readonly screen: Readonly<Record<TemperatureUnit, readonly Block[]>>;
  /** The report in either unit; charts stand in it by name. */
  readonly blocks: Readonly<Record<TemperatureUnit, readonly Block[]>>;
  readonly charts: NamedCharts;
  /** The document that `undunted compare --json` prints. */
  readonly json: string;
  /** The schedule of the next test as the text of its file; null when there is none. */
  readonly nextSchedule: string | null;
  /** Trial tiles of all firings. */
  readonly tiles: number;
}

/** What is known of kiln and thermocouple, as it can be sent to a worker. */
export interface KilnAsked {
  /** Null for the kiln that is assumed. */
  readonly learned: LearnedKiln | null;
  /** Added to thermocouple readings before cones are judged [K]; null for the usual. */
  readonly offsetK: number | null;
  readonly offsetSigmaK?: number;
}

/** The same, as schedules are worked out with it. */
export function knownKiln({ learned, ...known }: KilnAsked): {
  readonly kiln?: AssumedKiln;
  readonly offsetK: number | null;
  readonly offsetSigmaK?: number;
} {
  return learned === null ? known : { ...known, kiln: asAssumedKiln(learned) };
}

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
  /** The answer on one screen, in either unit, as the command prints it. */
  readonly screen: Readonly<Record<TemperatureUnit, readonly Block[]>>;
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
