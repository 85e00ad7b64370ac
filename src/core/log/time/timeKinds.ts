import { failed, ok, type Result } from "../../problem.ts";
import type { LogOptions, TimeKind } from "../LogReading.ts";
import { epochForm, type NumberForm, placeName, type TimePlace } from "./timeColumn.ts";

/** What the cells of a time column may be told to be. */
export const TIME_KINDS: readonly TimeKind[] = [
  "elapsed",
  "clock-24h",
  "clock-12h",
  "epoch",
  "spreadsheet",
  "spreadsheet-1904",
  "count",
];

/** The option that tells what the cells of the time column are. */
export const TIME_KIND_OPTION = "--time-kind KIND";

/** Kinds that cells with written times may be of, and those of a lone number. */
const OF_CLOCK: readonly TimeKind[] = ["elapsed", "clock-24h", "clock-12h"];
const OF_DATE: readonly TimeKind[] = ["clock-24h", "clock-12h"];
const OF_NUMBER: readonly TimeKind[] = [
  "elapsed",
  "epoch",
  "spreadsheet",
  "spreadsheet-1904",
  "count",
];

/**
 * The place of the time, with its cells read as they were told to be.
 * @returns the place, or `log/wrong-option` when they cannot be that.
 */
export function asTold(place: TimePlace, { name, timeKind }: LogOptions): Result<TimePlace> {
  if (timeKind === undefined) return ok(place);
  const possible = possibleKinds(place);
  if (!possible.includes(timeKind))
    return failed({
      code: "log/wrong-option",
      what: `--time-kind is ${timeKind}, but the time is ${placeName(place)}, which is ${written(place)}`,
      where: name,
      expected: `what that can be: ${possible.join(", ")}`,
      fix: "leave out --time-kind, or name the column that is meant with --time-column",
    });
  if (place.kind !== "number") return ok(place);
  return ok({ ...place, form: formOf(timeKind, place) });
}

function possibleKinds(place: TimePlace): readonly TimeKind[] {
  if (place.kind === "none") return ["count"];
  if (place.kind === "number") return OF_NUMBER;
  return place.date === null ? OF_CLOCK : OF_DATE;
}

function formOf(kind: TimeKind, { column }: Extract<TimePlace, { kind: "number" }>): NumberForm {
  if (kind === "epoch") return epochForm(column);
  if (kind === "spreadsheet") return { kind: "serial", since: 1900 };
  if (kind === "spreadsheet-1904") return { kind: "serial", since: 1904 };
  return { kind: kind === "count" ? "index" : "elapsed" };
}

function written(place: TimePlace): string {
  if (place.kind === "none") return "no column";
  if (place.kind === "number") return "a column of numbers";
  return place.date === null ? "a clock" : "dates and clock times";
}
