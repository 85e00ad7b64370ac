import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/core/problem.ts";
import { choiceOf, firing, readText, wall } from "./logBuilder.ts";

/** Rows of each log of the grid: a 24-hour firing, one reading in twelve minutes. */
const SAMPLES = firing(120, 720);

const TIMES: Readonly<Record<string, (seconds: number) => string>> = {
  "ISO stamps": (s) => `${wall(s).date}T${wall(s).clock}`,
  "day-first stamps": (s) => `${wall(s).day}/03/2026 ${wall(s).clock}`,
  "time of day": (s) => wall(s).clock,
  "elapsed hh:mm:ss": (s) =>
    `${Math.floor(s / 3600)}:${String(Math.floor((s % 3600) / 60)).padStart(2, "0")}:00`,
  "decimal minutes": (s) => (s / 60).toFixed(2),
  "epoch seconds": (s) => String(1_773_507_900 + s),
};

const DELIMITERS: Readonly<Record<string, string>> = {
  comma: ",",
  semicolon: ";",
  tab: "\t",
  bar: "|",
};

interface Cell {
  readonly delimiter: string;
  readonly decimal: string;
  readonly preamble: number;
  readonly isHeaded: boolean;
  readonly trails: boolean;
  readonly channels: number;
  readonly time: string;
}

/** All combinations but decimal commas between commas, which nobody could read. */
function grid(): readonly Cell[] {
  const axes = {
    delimiter: Object.keys(DELIMITERS),
    decimal: [".", ","],
    preamble: [0, 3, 12],
    isHeaded: [true, false],
    trails: [true, false],
    channels: [1, 3],
    time: Object.keys(TIMES),
  };
  const cells = Object.entries(axes).reduce<readonly object[]>(
    (partial, [axis, values]) =>
      partial.flatMap((cell) => values.map((value) => ({ ...cell, [axis]: value }))),
    [{}],
  ) as readonly Cell[];
  return cells.filter((cell) => cell.delimiter !== "comma" || cell.decimal === ".");
}

/** Words, names, numbers, a date, and commas, as loggers write above their tables. */
const PREAMBLE = [
  "Logger serial 1047, site: shed",
  "Started 14/03/2026 17:05:00",
  "Comment: two shelves, bottom half full; tiles",
  "",
  "Operator,A. Potter",
  "Cone;6",
  "Channels 3",
  "Firmware 1.0.2",
  "Lid closed 16:50",
  "Weight,12.5,kg",
  "Power 7.2 kW | 230 V",
  "----------------",
];

function written(cell: Cell): string {
  const delimiter = DELIMITERS[cell.delimiter] as string;
  const end = cell.trails ? delimiter : "";
  const number = (value: number) => value.toFixed(1).replace(".", cell.decimal);
  const timeOf = TIMES[cell.time] as (seconds: number) => string;
  const names = ["Top (°C)", "Middle (°C)", "Bottom (°C)"].slice(0, cell.channels);
  return [
    ...PREAMBLE.slice(0, cell.preamble),
    ...(cell.isHeaded ? [["Time", ...names].join(delimiter) + end] : []),
    ...SAMPLES.map(({ seconds, tempC }) => {
      const time =
        cell.time === "decimal minutes"
          ? timeOf(seconds).replace(".", cell.decimal)
          : timeOf(seconds);
      return [time, ...names.map((_, c) => number(tempC - 3 * c))].join(delimiter) + end;
    }),
    "",
  ].join("\r\n");
}

/** What is wrong with the reading of a log of the grid; empty when it is right. */
function faultsOf(cell: Cell): { readonly isSilent: boolean; readonly what: string } | null {
  const result = readText(written(cell));
  const name = Object.values(cell).join(" ");
  if (!result.ok)
    return { isSilent: false, what: `${name}: ${result.problems.map(problemText).join()}` };
  const log = result.value;
  const temperatures = log.channels.filter(({ role }) => role === "temperature");
  const isRight =
    choiceOf(log, "delimiter") === cell.delimiter &&
    temperatures.length === cell.channels &&
    log.intervalSeconds === 720 &&
    log.unit === "C" &&
    log.rows.accepted === SAMPLES.length &&
    temperatures.every(({ curve }, c) =>
      SAMPLES.every(({ tempC }, i) => Math.abs((curve?.tempsC[i] ?? 0) - (tempC - 3 * c)) < 0.051),
    );
  return isRight
    ? null
    : {
        isSilent: true,
        what: `${name}: ${log.decisions.map(({ about, choice }) => `${about} ${choice}`).join("; ")}; ${log.rows.accepted} rows`,
      };
}

describe("the grid of log styles", () => {
  const cells = grid();

  it(`reads at least 99 % of ${cells.length} logs, and none wrongly in silence`, () => {
    const faults = cells.map(faultsOf).filter((fault) => fault !== null);
    expect(faults.filter(({ isSilent }) => isSilent).slice(0, 5)).toEqual([]);
    expect(faults.slice(0, 5)).toEqual([]);
    expect(faults.length).toBeLessThanOrEqual(0.01 * cells.length);
  });
});
