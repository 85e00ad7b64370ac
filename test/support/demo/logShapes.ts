import { fahrenheitFromCelsius } from "../../../src/core/units/temperature.ts";
import type { Sample } from "./fire.ts";
import {
  clockTime,
  dayFirstTime,
  elapsedTime,
  isoDate,
  monthFirstTime,
  wallTimeAfter,
} from "./wallClock.ts";

/** Writes samples down the way one kind of logger does. */
export type LogShape = (samples: readonly Sample[], start: string) => string;

/** Commas, °C, `2026-02-07 08:30:00`, with set point and output. */
export const isoWithOutput: LogShape = (samples, start) =>
  lines(
    ["Time,Temperature (°C),Set point (°C),Output (%)"],
    samples.map((sample) => [
      spaced(start, sample),
      tenths(firstC(sample)),
      setTenths(sample),
      percent(sample),
    ]),
    ",",
  );

/** Semicolons, decimal commas, `21.02.2026 06:00:00`, German headings, a byte order mark and CRLF. */
export const semicolonDecimalComma: LogShape = (samples, start) => {
  const text = lines(
    ["Datum/Uhrzeit;Ofen (°C);Sollwert (°C)"],
    samples.map((sample) => [
      dayFirstTime(wallTimeAfter(start, sample.seconds)),
      tenths(firstC(sample)).replace(".", ","),
      setTenths(sample).replace(".", ","),
    ]),
    ";",
  );
  return `\uFEFF${text.replaceAll("\n", "\r\n")}`;
};

/** Commas, °C, `2026-03-14T22:40:00`, nothing but time and temperature. */
export const isoPlain: LogShape = (samples, start) =>
  lines(
    ["time,kiln_C"],
    samples.map((sample) => [spaced(start, sample).replace(" ", "T"), tenths(firstC(sample))]),
    ",",
  );

/** Commas, whole °F, `3/28/2026 6:40:00 AM`. */
export const monthFirstFahrenheit: LogShape = (samples, start) =>
  lines(
    ["Date/Time,Kiln (°F),Set Point (°F)"],
    samples.map((sample) => [
      monthFirstTime(wallTimeAfter(start, sample.seconds)),
      wholeF(firstC(sample)),
      sample.setC === null ? "0" : wholeF(sample.setC),
    ]),
    ",",
  );

/** Tabs, elapsed `hh:mm:ss`, below five lines about the firing. */
export const elapsedTabs: LogShape = (samples, start) => {
  const at = wallTimeAfter(start, 0);
  return lines(
    [
      "Firing log",
      "Kiln:\tthe Wren, 60 litres",
      "Logged by:\tJorun Tesk",
      `Started:\t${isoDate(at)} ${clockTime(at)}`,
      "",
      "Elapsed\tTemp [°C]\tPower [%]",
    ],
    samples.map((sample) => [elapsedTime(sample.seconds), tenths(firstC(sample)), percent(sample)]),
    "\t",
  );
};

/** Two zones, with a title, a row of names and a row of units. */
export const twoZones: LogShape = (samples, start) =>
  lines(
    [
      "Old Hilda - both thermocouples,,,",
      "Time,Top,Bottom,Set point",
      "yyyy-mm-dd hh:mm:ss,°C,°C,°C",
    ],
    samples.map((sample) => [
      spaced(start, sample),
      whole(firstC(sample)),
      whole(sample.readingsC[1] as number),
      sample.setC === null ? "0" : whole(sample.setC),
    ]),
    ",",
  );

/** Date and time in columns of their own. */
export const dateAndTimeApart: LogShape = (samples, start) =>
  lines(
    ["Date,Time,Temp °C,Set °C,Out %"],
    samples.map((sample) => [
      ...spaced(start, sample).split(" "),
      tenths(firstC(sample)),
      setTenths(sample),
      percent(sample),
    ]),
    ",",
  );

/** What went wrong with a logger, by row. */
export interface Mishaps {
  /** Rows that were never written, from and up to but not with [row of samples]. */
  readonly silent: readonly (readonly [from: number, to: number])[];
  /** What stood in the temperature cell instead. */
  readonly cells: ReadonlyMap<number, string>;
}

/** The same shape as {@link isoPlain} with spaces, from a logger that had its troubles. */
export function troubled({ silent, cells }: Mishaps): LogShape {
  return (samples, start) =>
    lines(
      ["Time,Kiln °C"],
      samples
        .map((sample, row) => [spaced(start, sample), cells.get(row) ?? tenths(firstC(sample))])
        .filter((_, row) => !silent.some(([from, to]) => row >= from && row < to)),
      ",",
    );
}

function lines(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  delimiter: string,
): string {
  return `${[...head, ...rows.map((row) => row.join(delimiter))].join("\n")}\n`;
}

function spaced(start: string, { seconds }: Sample): string {
  const at = wallTimeAfter(start, seconds);
  return `${isoDate(at)} ${clockTime(at)}`;
}

function firstC({ readingsC }: Sample): number {
  return readingsC[0] as number;
}

function tenths(value: number): string {
  return value.toFixed(1);
}

function whole(value: number): string {
  return value.toFixed(0);
}

function wholeF(tempC: number): string {
  return whole(fahrenheitFromCelsius(tempC));
}

function setTenths({ setC }: Sample): string {
  return setC === null ? "0.0" : tenths(setC);
}

function percent({ output }: Sample): string {
  return whole(output * 100);
}
