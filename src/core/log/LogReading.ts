import type { Curve, Gap } from "../curve/Curve.ts";

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
}

/** A data row that gave no reading. */
export interface RejectedRow {
  /** Line of the file, from 1. */
  readonly line: number;
  readonly reason: string;
  /** What stood there, cut to 60 characters. */
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

/** A log as read: what was decided, what was left out, and the Curves. */
export interface LogReading {
  /** File name without its folder. */
  readonly name: string;
  readonly decisions: readonly Decision[];
  /** Data rows below the header; `accepted + rejected.length === total`. */
  readonly rows: {
    readonly total: number;
    readonly accepted: number;
    readonly rejected: readonly RejectedRow[];
  };
  /** Unit the file was in. */
  readonly unit: "C" | "F" | "K";
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
  readonly unit?: "C" | "F" | "K";
  readonly timeUnit?: "s" | "min" | "h";
  readonly dayFirst?: boolean;
  readonly delimiter?: string;
  readonly decimal?: "." | ",";
  readonly encoding?: string;
  /** Sampling step when the file has no time column [s]. */
  readonly intervalSeconds?: number;
}

/** Splits one record that holds quotes into cells, or returns null when it is not well quoted. */
export type SplitQuoted = (record: string, delimiter: string) => readonly string[] | null;
