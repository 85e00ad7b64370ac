import type { Levels } from "./axes.ts";
import { TIME_STYLES } from "./timeStyles.ts";

type Draft = { -readonly [A in keyof Levels]: Levels[A] };

/** Rows and steps that give a log of half an hour to about three days. */
const STEPS_OF_ROWS: Readonly<Record<Levels["rows"], readonly Levels["step"][]>> = {
  "20": ["300 s", "720 s"],
  "60": ["60 s", "120 s", "300 s", "720 s"],
  "200": ["30 s", "60 s", "120 s", "300 s", "720 s"],
  "600": ["5 s", "10 s", "30 s", "60 s", "120 s", "300 s"],
  "3000": ["1 s", "5 s", "10 s", "30 s", "60 s"],
};

/** Names of months and halves of the day that hold blanks, which nobody writes between blanks. */
const WORDY_TIMES: readonly Levels["time"][] = [
  "English month first",
  "German month",
  "French month",
  "Dutch month",
  "weekday and date",
  "12-hour spaced p. m.",
  "12-hour Korean",
  "12-hour Greek",
  "elapsed 1d 02:03",
];

/**
 * Levels as a logger could write them together: what no device writes is changed to what it would
 * write instead, so that the truth of every log is known.
 */
export function settledLevels(dealt: Levels): Levels {
  const levels = Object.fromEntries(
    Object.entries(dealt).map(([axis, level]) => [axis, level.trim()]),
  ) as unknown as Draft;
  settleSize(levels);
  settleTable(levels);
  settleCells(levels);
  settleClock(levels);
  settleExtra(levels);
  return levels;
}

function settleSize(levels: Draft): void {
  const steps = STEPS_OF_ROWS[levels.rows];
  if (!steps.includes(levels.step))
    levels.step = steps[levels.step.length % steps.length] ?? "60 s";
  const seconds = Number.parseInt(levels.step, 10);
  // Times to the minute without seconds cannot be spans with several samples each.
  const isSpan = levels.time === "elapsed hh:mm" || levels.time === "elapsed 1d 02:03";
  if (isSpan && seconds < 60) {
    levels.step = "60 s";
    levels.rows = "600";
  }
}

function settleTable(levels: Draft): void {
  const isCounted = TIME_STYLES[levels.time].kind === "counted";
  if (levels.zones === "1" || levels.zones.includes("wild") || isCounted) levels.layout = "wide";
  if (levels.layout === "long") {
    levels.extra = "none";
    if (levels.header === "none") levels.header = "one row";
    if (levels.edge === "ragged") levels.edge = "plain";
  }
  if (levels.header === "unit row") levels.unitPlace = "unit row";
  if (levels.unitPlace === "unit row" && levels.header === "none") levels.unitPlace = "none";
  if (levels.unitPlace === "header" && levels.header === "none") levels.unitPlace = "cell";
  if (levels.header === "none" && levels.time.endsWith("labelled"))
    levels.time = levels.time.replace("labelled", "bare") as Levels["time"];
  if (levels.time === "sample number" && levels.header === "none") levels.time = "no time column";
  if (levels.time === "no time column" && levels.footer === "statistics") levels.footer = "totals";
}

function settleCells(levels: Draft): void {
  if (isOfBlanks(levels) && WORDY_TIMES.includes(levels.time)) levels.delimiter = "tab";
  if (isOfBlanks(levels)) settleBlanks(levels);
  const isWide = levels.encoding.startsWith("utf");
  if (!isWide && levels.thousands === "thin space") levels.thousands = "hard space";
  if (!isWide && /Chinese|Japanese|Korean|Greek/.test(levels.time))
    levels.encoding = "utf-8 marked";
  const isOfOther =
    (levels.digits === "1 °F in °C" && levels.unit !== "C") ||
    (levels.digits === "1 °C in °F" && levels.unit !== "F");
  if (isOfOther) levels.digits = "0.1";
}

function isOfBlanks({ delimiter }: Draft): boolean {
  return delimiter === "blanks" || delimiter === "fixed width";
}

/** Between blanks a cell that is empty or holds a blank could not be told from two. */
function settleBlanks(levels: Draft): void {
  if (levels.thousands.endsWith("space")) levels.thousands = "none";
  if (levels.edge === "trailing delimiter") levels.edge = "plain";
  if (levels.delimiter === "fixed width") levels.quotes = "none";
  if (levels.delimiter !== "blanks") return;
  if (levels.missing === "blank") levels.missing = "---";
  if (levels.time === "date where it changes") levels.time = "date and time columns";
}

function settleClock(levels: Draft): void {
  const style = TIME_STYLES[levels.time];
  const isCoarse = style.quantum > stepOf(levels);
  if (levels.clock.startsWith("summer") && cannotChange(levels)) levels.clock = "plain";
  if (levels.clock === "reset" && style.kind !== "dated") levels.clock = "gap";
  if (levels.clock === "jitter" && (style.quantum > 1 || stepOf(levels) < 10))
    levels.clock = "plain";
  if (levels.clock === "a few out of order" && cannotSwap(levels)) levels.clock = "gap";
  if (levels.clock === "repeated rows" && cannotRepeat(levels)) levels.clock = "plain";
  // Rows of one stamp are spread evenly over it, which a gap or a row without a reading upsets.
  if (levels.clock === "gap" && isCoarse) levels.clock = "plain";
  if (isCoarse && levels.zones === "1") levels.missing = "none";
  if (style.kind === "counted") levels.clock = "plain";
  const hasDial = levels.time === "12-hour unmarked";
  if (hasDial || (style.kind !== "dated" && style.kind !== "time of day"))
    levels.rowOrder = "oldest first";
}

function stepOf({ step }: Draft): number {
  return Number.parseInt(step, 10);
}

/** Clocks that run on through the change to or from summer time, or on which it could not be seen. */
function cannotChange(levels: Draft): boolean {
  const hasZone = /Z$|offset|epoch/.test(levels.time);
  const isCoarse = TIME_STYLES[levels.time].quantum > stepOf(levels);
  return hasZone || isCoarse || levels.time === "12-hour unmarked" || isUnclocked(levels);
}

function cannotSwap(levels: Draft): boolean {
  const isCoarse = TIME_STYLES[levels.time].quantum > stepOf(levels);
  const isTold = levels.time === "date where it changes" || levels.time === "12-hour unmarked";
  return isTold || isCoarse || levels.layout === "long";
}

function cannotRepeat(levels: Draft): boolean {
  const isCoarse = TIME_STYLES[levels.time].quantum > stepOf(levels);
  return isCoarse || levels.layout === "long" || levels.time === "date where it changes";
}

function isUnclocked(levels: Draft): boolean {
  const { kind } = TIME_STYLES[levels.time];
  return (kind !== "dated" && kind !== "time of day") || levels.rows === "20";
}

/** Columns that only their names tell apart are written with names. */
function settleExtra(levels: Draft): void {
  // Where no other column is the time, a counter is.
  if (levels.time === "no time column" && levels.extra === "counter") levels.extra = "battery";
  if (levels.header !== "none") return;
  if (levels.extra === "heat flux") levels.extra = "none";
  if (levels.extra === "set point") levels.extra = "set point unnamed";
  if (levels.extra === "set point and output") levels.extra = "output 0 to 100";
  const style = TIME_STYLES[levels.time];
  if (levels.extra === "counter" && style.kind !== "dated") levels.extra = "battery";
}
