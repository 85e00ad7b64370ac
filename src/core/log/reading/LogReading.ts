import type { Curve, Gap } from "../../curve/Curve.ts";
import type { ThermocoupleType } from "../../thermocouple/emf.ts";

/** One thing that was decided about a log, and why. */
export interface Decision {
  /** `delimiter`, `decimal mark`, `encoding`, `header`, `time column`, `time format`, `day order`, `unit`, `columns`. */
  readonly about: string;
  readonly choice: string;
  readonly confidence: "told" | "certain" | "likely" | "guessed";
  /** The evidence, one sentence. */
  readonly because: string;
  /** The next best reading of the data, when there was one. */
  readonly runnerUp: string | null;
  /** The option that overrides it: `--log-unit C|F`. */
  readonly option: string | null;
  /** What says the same when it is told; left out where nothing can be told. */
  readonly says?: LogSaid;
}

/** What a person says of how to read a log, on the command line or in its record. */
export type LogSaid = Omit<LogOptions, "name">;

/** A column that is not the time: what it was taken for, and why. */
export interface ColumnTaken {
  readonly name: string;
  readonly role: ChannelRole;
  readonly because: string;
}

/** How far a reading came: all that was decided, up to its end or up to a problem. */
export interface ReadingSteps {
  readonly decisions: readonly Decision[];
  readonly columns: readonly ColumnTaken[];
}

/** A data row that gave no reading. */
export interface RejectedRow {
  /** Line of the file, from 1. */
  readonly line: number;
  readonly reason: string;
  /** What stood there, cut to 60 characters; perhaps empty beyond the first 64 MB of a log. */
  readonly text: string;
}

/** What a column is. Only `temperature` is analysed. */
export type ChannelRole = "temperature" | "set-point" | "output" | "cold-junction" | "other";

/** Something wrong with the measuring, not with the firing. */
export interface LogFault {
  readonly kind: "spike" | "stuck" | "open" | "gap" | "clock" | "coarse";
  readonly channel: string | null;
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly count: number;
  /** One plain sentence. */
  readonly what: string;
}

/** A column of the log that was kept. */
export interface Channel {
  readonly name: string;
  readonly role: ChannelRole;
  /** Cleaned Curve in °C; null for columns that are not temperatures or have under two readings. */
  readonly curve: Curve | null;
  /** Readings in the Curve; without a Curve, cells that hold a number. */
  readonly readings: number;
  /** Cells dropped in rows that were otherwise kept (blank, open circuit, spike). */
  readonly dropped: number;
  /**
   * Only of an output column that reads as a share of full power: 0–1, times as in the Curves [s].
   * Null when its numbers are no such share, 0–1 or 0–100 %.
   */
  readonly outputFraction?: {
    readonly timesSeconds: Float64Array;
    readonly fraction: Float64Array;
  } | null;
}

/** Data rows below the header: `accepted` and all that is rejected, listed or not, are the `total`. */
export interface LogRows {
  readonly total: number;
  readonly accepted: number;
  /** The rejected rows by line; of very many only the first ones. */
  readonly rejected: readonly RejectedRow[];
  /** Rejected rows that are not listed, by reason; left out when all are listed. */
  readonly unlisted?: readonly { readonly reason: string; readonly count: number }[];
}

/** A log as read: what was decided, what was left out, and the Curves. */
export interface LogReading {
  /** File name without its folder. */
  readonly name: string;
  readonly decisions: readonly Decision[];
  readonly rows: LogRows;
  /** Unit the file was in. */
  readonly unit: "C" | "F" | "K";
  /** Type of the thermocouples, when it was told. */
  readonly thermocouple?: ThermocoupleType;
  readonly channels: readonly Channel[];
  /** Wall time of the first reading, `2026-03-14T17:05:00`, without a zone; null when only elapsed. */
  readonly start: string | null;
  /** Wall time of day of the first reading [s after midnight], when the log has a clock at all. */
  readonly startOfDaySeconds: number | null;
  /** Median step between readings [s]. */
  readonly intervalSeconds: number;
  readonly gaps: readonly Gap[];
  readonly faults: readonly LogFault[];
}

/** What a person may decide instead of the reader. */
export interface LogOptions {
  readonly name: string;
  /** Names (or 1-based positions as text) of the temperature columns to analyse. */
  readonly columns?: readonly string[];
  readonly timeColumn?: string;
  /** What the columns named are; goes before `columns`. */
  readonly roles?: Readonly<Record<string, ChannelRole>>;
  readonly unit?: "C" | "F" | "K";
  /** What the cells of the time column are. */
  readonly timeKind?: TimeKind;
  readonly timeUnit?: TimeUnit;
  readonly dayFirst?: boolean;
  /** Whether dates begin with a year of two digits. */
  readonly yearFirst?: boolean;
  /** Line of the file [from 1] with the names of the columns, or that there is none. */
  readonly header?: number | "none";
  /** Whether each channel has a column of its own, or a row of its own at each time. */
  readonly layout?: "wide" | "long";
  readonly delimiter?: string;
  readonly decimal?: "." | ",";
  readonly encoding?: string;
  /** Sampling step when the file has no time column [s]. */
  readonly intervalSeconds?: number;
  /** Type of the thermocouples; by it a log in millivolts is read. */
  readonly thermocouple?: ThermocoupleType;
  /** Temperature of the terminals of a log in millivolts [°C]; goes before a column of it. */
  readonly coldJunctionC?: number;
}

/** What the cells of a time column are: a span of time, a clock by the hours on its dial, a number of days or seconds since a date, or the number of the row. */
export type TimeKind =
  | "elapsed"
  | "clock-24h"
  | "clock-12h"
  | "epoch"
  | "spreadsheet"
  | "spreadsheet-1904"
  | "count";

/** Units of elapsed time, as options name them. */
export type TimeUnit = "ms" | "s" | "min" | "h" | "d";

/** Splits one record that holds quotes into cells, or returns null when it is not well quoted. */
export type SplitQuoted = (record: string, delimiter: string) => readonly string[] | null;

/** A decision; runner-up and option are null unless given. */
export function decision(
  about: string,
  choice: string,
  rest: {
    readonly confidence: Decision["confidence"];
    readonly because: string;
    readonly runnerUp?: string | null;
    readonly option?: string | null;
    readonly says?: LogSaid;
  },
): Decision {
  return {
    about,
    choice,
    confidence: rest.confidence,
    because: rest.because,
    runnerUp: rest.runnerUp ?? null,
    option: rest.option ?? null,
    ...(rest.says && { says: rest.says }),
  };
}

/**
 * What a record and a command line say of a log, where the command line goes before. Columns that
 * are named there go before the record's roles; roles of both are taken together.
 */
export function saidTogether(recorded: LogSaid, told: LogSaid): LogSaid {
  const { roles: recordedRoles, ...others } = recorded;
  const roles = { ...(told.columns === undefined && recordedRoles), ...told.roles };
  return {
    ...others,
    ...told,
    ...(Object.keys(roles).length > 0 && { roles }),
  };
}

/** Number of rows that gave no reading, whether they are listed or only counted. */
export function rejectedCount({ rejected, unlisted = [] }: LogRows): number {
  return unlisted.reduce((sum, { count }) => sum + count, rejected.length);
}
