import type { Levels } from "./axes.ts";

/** Smallest difference between numbers of a log [in its own unit]. */
const RESOLUTION: Readonly<Record<Levels["digits"], number>> = {
  "0.01": 0.01,
  "0.1": 0.1,
  "0.5": 0.5,
  "1": 1,
  "1 °F in °C": 0.1,
  "1 °C in °F": 0.1,
};

/** A temperature as a log prints it, and what the print means. */
export interface PrintedNumber {
  readonly text: string;
  /** The printed number in °C. */
  readonly tempC: number;
}

/** °C in the unit of the log. */
export function inUnit(tempC: number, unit: Levels["unit"]): number {
  if (unit === "C") return tempC;
  return unit === "F" ? tempC * 1.8 + 32 : tempC + 273.15;
}

function fromUnit(value: number, unit: Levels["unit"]): number {
  if (unit === "C") return value;
  return unit === "F" ? (value - 32) / 1.8 : value - 273.15;
}

/** Prints a temperature with the digits, marks and unit of the log. */
export function printedNumber(tempC: number, levels: Levels): PrintedNumber {
  const value = rounded(tempC, levels);
  return {
    text: markedNumber(value, decimalsOf(levels), levels),
    tempC: fromUnit(value, levels.unit),
  };
}

/** Last digit of the log [K]. */
export function digitC(levels: Levels): number {
  if (levels.digits === "1 °F in °C") return 1 / 1.8;
  if (levels.digits === "1 °C in °F") return 1;
  return RESOLUTION[levels.digits] / (levels.unit === "F" ? 1.8 : 1);
}

/** Digits after the decimal mark. */
function decimalsOf(levels: Levels): number {
  const resolution = RESOLUTION[levels.digits];
  return resolution >= 1 ? 0 : resolution >= 0.1 ? 1 : 2;
}

function rounded(tempC: number, levels: Levels): number {
  if (levels.digits === "1 °F in °C")
    return Number(((Math.round(tempC * 1.8 + 32) - 32) / 1.8).toFixed(1));
  if (levels.digits === "1 °C in °F") return Number((Math.round(tempC) * 1.8 + 32).toFixed(1));
  const resolution = RESOLUTION[levels.digits];
  return Number((Math.round(inUnit(tempC, levels.unit) / resolution) * resolution).toFixed(2));
}

/** A number with the marks of the log between thousands and before decimals. */
export function markedNumber(value: number, decimals: number, levels: Levels): string {
  const [whole = "", fraction] = Math.abs(value).toFixed(decimals).split(".");
  const mark = whole.length > 3 ? thousandsMark(levels) : "";
  const marked = mark === "" ? whole : whole.replace(/\B(?=(\d{3})+$)/g, mark);
  const decimal = levels.decimal === "comma" ? "," : ".";
  const sign = value < 0 ? "-" : "";
  return sign + marked + (fraction === undefined ? "" : decimal + fraction);
}

function thousandsMark(levels: Levels): string {
  const marks: Readonly<Record<string, string>> = {
    mark: levels.decimal === "comma" ? "." : ",",
    apostrophe: "'",
    "thin space": "\u202f",
    "hard space": "\u00a0",
  };
  return marks[levels.thousands] ?? "";
}
