import {
  type Channel,
  type Decision,
  type LogReading,
  type LogRows,
  type LogSaid,
  rejectedCount,
} from "../log/reading/LogReading.ts";
import { delimiterTold } from "../log/text/cells.ts";
import { printDuration } from "../text/quantities.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { Block, Cell } from "./Block.ts";
import { momentText, stretchText } from "./moments.ts";

const REJECTED_SHOWN = 10;

/** How sure a decision is, in words. */
export const CONFIDENCE_WORDS: Readonly<Record<Decision["confidence"], string>> = {
  told: "as you said",
  certain: "certain",
  likely: "likely",
  guessed: "a guess",
};

/** How the log was read: what was decided and why, what was kept, and every row left out. */
export function logBlocks(reading: LogReading): readonly Block[] {
  return [
    { kind: "heading", text: "How the log was read" },
    { kind: "sentence", text: rowsSentence(reading) },
    ...(reading.decisions.length === 0
      ? []
      : ([{ kind: "facts", facts: reading.decisions.map(decisionFact) }] as const)),
    ...channelBlocks(reading.channels),
    ...troubleBlocks(reading),
    ...rejectedBlocks(reading.rows),
  ];
}

/** How many rows gave readings. */
export function rowsSentence(reading: LogReading): string {
  const { total, accepted } = reading.rows;
  const count = rejectedCount(reading.rows);
  const left =
    count === 0 ? "none was left out" : `${count} ${count === 1 ? "was" : "were"} left out`;
  return `${reading.name}: ${accepted} of ${total} rows gave readings, ${left}. One reading every ${intervalText(reading.intervalSeconds)}.`;
}

/** A sampling step, to the second below ten minutes: 90 s are not 2 min. */
function intervalText(seconds: number): string {
  if (seconds < 10) return `${Number(seconds.toPrecision(2))} s`;
  const whole = Math.round(seconds);
  if (whole >= 600 || whole % 60 === 0) return printDuration(seconds);
  return whole < 120 ? `${whole} s` : `${Math.floor(whole / 60)} min ${whole % 60} s`;
}

function decisionFact(decision: Decision): { readonly label: string; readonly text: string } {
  const { about, choice, confidence, because, runnerUp, option } = decision;
  const isSure = confidence === "told" || confidence === "certain";
  const reason = because === "" ? "" : ` ${stopped(capitalised(because))}`;
  const other = runnerUp === null || isSure ? "" : ` Next best: ${stopped(runnerUp)}`;
  const override = option === null || isSure ? "" : ` To say otherwise: ${stopped(option)}`;
  return {
    label: about,
    text: `${choice} (${CONFIDENCE_WORDS[confidence]}).${reason}${other}${override}`,
  };
}

function channelBlocks(channels: readonly Channel[]): readonly Block[] {
  if (channels.length === 0) return [];
  return [
    {
      kind: "table",
      caption: "Columns of the log",
      columns: [
        { head: "column", align: "left" },
        { head: "taken as", align: "left" },
        { head: "readings kept", align: "right" },
        { head: "cells dropped", align: "right" },
      ],
      rows: channels.map((channel): readonly Cell[] => [
        channel.name,
        channel.role === "other" ? "not used" : channel.role.replace("-", " "),
        String(channel.readings),
        String(channel.dropped),
      ]),
    },
  ];
}

/** What is wrong with the measuring, as a list. */
export function troubleBlocks(reading: LogReading): readonly Block[] {
  const { startOfDaySeconds } = reading;
  const items = [
    ...reading.gaps.map(
      (gap) =>
        `Nothing was measured ${stretchText(startOfDaySeconds, gap)}, ${printDuration(gap.toSeconds - gap.fromSeconds)}; no number here reaches across it.`,
    ),
    ...reading.faults
      .filter((fault) => fault.kind !== "gap")
      .map((fault) => {
        const whose =
          fault.channel === null || fault.what.includes(fault.channel)
            ? ""
            : `Column ${fault.channel}: `;
        return `${whose}${stopped(fault.what)} First at ${momentText(startOfDaySeconds, fault.fromSeconds)}.`;
      }),
  ];
  return items.length === 0 ? [] : [{ kind: "list", items }];
}

/** The rows that were left out, the first ones listed, the others counted. */
export function rejectedBlocks(rows: LogRows): readonly Block[] {
  const count = rejectedCount(rows);
  if (count === 0) return [];
  const more = count - REJECTED_SHOWN;
  return [
    {
      kind: "table",
      caption: "Rows left out",
      columns: [
        { head: "line", align: "right" },
        { head: "why", align: "left" },
        { head: "what stood there", align: "left" },
      ],
      rows: rows.rejected
        .slice(0, REJECTED_SHOWN)
        .map((row): readonly Cell[] => [String(row.line), row.reason, row.text]),
    },
    ...(more > 0
      ? [{ kind: "sentence", text: `… and ${more} more ${more === 1 ? "row" : "rows"}.` } as const]
      : []),
  ];
}

/** What would tell decisions that were only likely or guessed, all together. */
export function guessedSaid(decisions: readonly Decision[]): LogSaid {
  const guessed = decisions
    .filter(({ confidence }) => confidence === "likely" || confidence === "guessed")
    .flatMap(({ says }) => (says === undefined ? [] : [says]));
  const roles = Object.assign({}, ...guessed.map((each) => each.roles));
  const all: LogSaid = Object.assign({}, ...guessed);
  return Object.keys(roles).length > 0 ? { ...all, roles } : all;
}

/** Lines of YAML for a firing record that say the same of a log; empty when nothing is said. */
export function logSaidLines(said: LogSaid): readonly string[] {
  const { thermocouple } = said;
  const lines = LINES.flatMap(([key, value]) => {
    const text = value(said);
    return text === null || text === undefined ? [] : [`  ${key}: ${text}`];
  });
  return [
    ...(thermocouple === undefined ? [] : ["thermocouple:", `  type: ${thermocouple}`]),
    ...(lines.length === 0 ? [] : ["log:", ...lines]),
  ];
}

type Written = string | null | undefined;

/** The keys of a record's `log` in its order, each with its value as YAML; nothing when it is not said. */
const LINES: readonly (readonly [key: string, value: (said: LogSaid) => Written])[] = [
  ["unit", ({ unit }) => unit],
  ["columns", ({ columns }) => columns && `[${columns.map(quoted).join(", ")}]`],
  ["roles", ({ roles }) => roles && `{ ${Object.entries(roles).map(roleText).join(", ")} }`],
  ["timeColumn", ({ timeColumn }) => timeColumn && quoted(timeColumn)],
  ["timeKind", ({ timeKind }) => timeKind],
  ["timeUnit", ({ timeUnit }) => timeUnit],
  ["dayFirst", ({ dayFirst }) => dayFirst?.toString()],
  ["yearFirst", ({ yearFirst }) => yearFirst?.toString()],
  ["header", ({ header }) => header?.toString()],
  ["layout", ({ layout }) => layout],
  ["delimiter", ({ delimiter }) => delimiter && quoted(delimiterTold(delimiter))],
  ["decimal", ({ decimal }) => decimal && quoted(decimal)],
  ["encoding", ({ encoding }) => encoding && quoted(encoding)],
  ["intervalSeconds", ({ intervalSeconds }) => intervalSeconds?.toString()],
  ["coldJunction", ({ coldJunctionC: tempC }) => (tempC === undefined ? null : `"${tempC} C"`)],
];

function roleText([name, role]: readonly [string, string]): string {
  return `${quoted(name)}: ${role}`;
}

/** A text in double quotes, whose escapes YAML shares with JSON. */
function quoted(text: string): string {
  return JSON.stringify(text);
}
