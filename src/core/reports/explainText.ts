import type { ColumnTaken, Decision, LogReading, ReadingSteps } from "../log/reading/LogReading.ts";
import { inert } from "../text/escape.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { Block, Cell, Paint } from "./Block.ts";
import {
  CONFIDENCE_WORDS,
  guessedSaid,
  logSaidLines,
  rejectedBlocks,
  rowsSentence,
  troubleBlocks,
} from "./logBlocks.ts";
import { reportText } from "./reportText.ts";

/** How a log was read, or how far, as text for a terminal, at most 80 columns. */
export function explainText(
  log: {
    readonly name: string;
    readonly steps: ReadingSteps;
    /** Null when it ended in a problem. */
    readonly reading: LogReading | null;
  },
  paint: Paint,
): string {
  const { name, steps, reading } = log;
  const blocks = explainBlocks(steps, reading);
  const text = reportText({ title: `How ${name} was read`, blocks }, paint);
  // At the margin, since in YAML an indent has a meaning.
  const lines = linesToKeep(steps).map((line) => `${inert(line)}\n`);
  return lines.length === 0 ? text : `${text}\n${lines.join("")}`;
}

/**
 * How a log was read, decision by decision: what was taken and how surely, why, what came next, and
 * the option that says otherwise; what each column was taken for; what was left out; and last what
 * the {@link linesToKeep} below it are for.
 * @param reading Null when it ended in a problem.
 */
function explainBlocks(steps: ReadingSteps, reading: LogReading | null): readonly Block[] {
  return [
    { kind: "sentence", text: reading === null ? unreadSentence(steps) : rowsSentence(reading) },
    ...steps.decisions.flatMap(decisionBlocks),
    ...columnBlocks(steps.columns, reading),
    ...(reading === null ? [] : leftOutBlocks(reading)),
    ...recordBlocks(linesToKeep(steps), reading !== null),
  ];
}

/** Lines of a firing record that tell what was likely or guessed; they end the explanation, as they stand. */
function linesToKeep({ decisions }: ReadingSteps): readonly string[] {
  return logSaidLines(guessedSaid(decisions));
}

function unreadSentence({ decisions }: ReadingSteps): string {
  return decisions.length === 0
    ? "It could not be read, and nothing was decided before that."
    : "It could not be read to its end. This is what was decided before that:";
}

function decisionBlocks(decision: Decision): readonly Block[] {
  const { about, choice, confidence, because, runnerUp, option } = decision;
  return [
    { kind: "heading", text: capitalised(about) },
    {
      kind: "facts",
      facts: [
        { label: "taken", text: `${choice} (${CONFIDENCE_WORDS[confidence]})` },
        ...(because === "" ? [] : [{ label: "why", text: stopped(capitalised(because)) }]),
        { label: "next best", text: runnerUp ?? "nothing else came near" },
        { label: "or say", text: option ?? "nothing; this cannot be otherwise" },
      ],
    },
  ];
}

function columnBlocks(
  columns: readonly ColumnTaken[],
  reading: LogReading | null,
): readonly Block[] {
  if (columns.length === 0) return [];
  const kept = (at: number): readonly Cell[] => {
    const channel = reading?.channels[at];
    return channel === undefined ? [] : [String(channel.readings), String(channel.dropped)];
  };
  return [
    { kind: "heading", text: "What each column was taken for" },
    {
      kind: "table",
      caption: "Beside the time",
      columns: [
        { head: "column", align: "left" },
        { head: "taken as", align: "left" },
        { head: "why", align: "left" },
        ...(reading === null
          ? []
          : ([
              { head: "readings kept", align: "right" },
              { head: "cells dropped", align: "right" },
            ] as const)),
      ],
      rows: columns.map(({ name, role, because }, at): readonly Cell[] => [
        name,
        role === "other" ? "not used" : role.replace("-", " "),
        because,
        ...kept(at),
      ]),
    },
  ];
}

function leftOutBlocks(reading: LogReading): readonly Block[] {
  const blocks = [...troubleBlocks(reading), ...rejectedBlocks(reading.rows)];
  const nothing = {
    kind: "sentence",
    text: "No row was left out, and no fault was seen.",
  } as const;
  return [
    { kind: "heading", text: "What was left out or looks wrong" },
    ...(blocks.length === 0 ? [nothing] : blocks),
  ];
}

function recordBlocks(lines: readonly string[], isRead: boolean): readonly Block[] {
  const nothing = isRead
    ? "Nothing was guessed, so nothing need be told."
    : "Nothing of this was guessed. What the problem asks for can be told in the firing record as well as by its option.";
  const some =
    "What was likely or a guess can be told once and for all. Check it, and copy these lines into the firing record, the .yaml file of the same name beside the log:";
  return [
    { kind: "heading", text: "To keep it so" },
    { kind: "sentence", text: lines.length === 0 ? nothing : some },
  ];
}
