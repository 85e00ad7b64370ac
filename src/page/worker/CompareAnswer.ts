import type { ComparisonPart } from "../../core/firing/compareFirings.ts";
import type { Block } from "../../core/reports/Block.ts";
import type { PlannedFiring } from "../../core/trials/PlannedFiring.ts";
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
