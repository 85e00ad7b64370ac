import { failed, ok, type Result } from "../../problem.ts";
import { type Decision, decision } from "../reading/LogReading.ts";
import type { Column } from "../text/logTable.ts";
import type { RowTimes, TimeQuery } from "./rowTimes.ts";
import type { NumberForm, TimePlace } from "./timeColumn.ts";
import {
  labelledScale,
  plausibleScales,
  TIME_KIND_OPTION,
  type TimeScale,
  timeScale,
  unitOfScale,
} from "./timeUnit.ts";

/** Day number of 1970-01-01 in the two date systems of spreadsheets, which are 1462 days apart. */
const SERIAL_1970 = { 1900: 25_569, 1904: 24_107 } as const;

/** Times from a column of numbers: counts since 1970, spreadsheet days, or elapsed time. */
export function numberTimes(column: Column, form: NumberForm, query: TimeQuery): Result<RowTimes> {
  if (form.kind === "epoch") {
    const isTold = query.options.timeKind !== undefined;
    const format = decision("time format", form.name, {
      confidence: isTold ? "told" : "certain",
      because: isTold
        ? "it was given as an option; read as universal time"
        : "only so do the numbers lie between 1990 and 2100; read as universal time",
      option: TIME_KIND_OPTION,
      says: { timeKind: "epoch" },
    });
    return ok(
      dated(
        column.numbers.map((value) => value / form.perSecond),
        format,
      ),
    );
  }
  if (form.kind === "serial") {
    const isTold = query.options.timeKind !== undefined;
    const days1970 = SERIAL_1970[form.since];
    const format = decision("time format", `spreadsheet days since ${form.since}`, {
      confidence: isTold ? "told" : "likely",
      because: isTold
        ? "it was given as an option"
        : "the numbers lie between 1990 and 2100 as days, and have fractions; only the calendar date depends on the year they count from",
      runnerUp: isTold ? null : "days since 1904, four years and a day later",
      option: `${TIME_KIND_OPTION}, as spreadsheet-1904`,
      says: { timeKind: form.since === 1900 ? "spreadsheet" : "spreadsheet-1904" },
    });
    return ok(
      dated(
        column.numbers.map((value) => serialSeconds(value - days1970)),
        format,
      ),
    );
  }
  return elapsedTimes(column, query);
}

function dated(seconds: Float64Array, format: Decision): RowTimes {
  return { seconds, clock: "date", doubt: null, decisions: [format] };
}

/** To the millisecond, since a day number carries rounding in its last digits. */
function serialSeconds(daysSince1970: number): number {
  return Math.round(daysSince1970 * 86_400_000) / 1000;
}

function elapsedTimes(column: Column, query: TimeQuery): Result<RowTimes> {
  const { options } = query;
  const label = labelledScale(column.unitText) ?? labelledScale(column.name.replace(/_/g, " "));
  const plausible = plausibleScales(column.numbers, query.tempsC);
  if (options.timeUnit !== undefined)
    return ok(
      scaled(
        column,
        timeScale(options.timeUnit),
        formatDecision(timeScale(options.timeUnit), "told"),
      ),
    );
  if (label !== null)
    return ok({
      ...scaled(column, label, formatDecision(label, "certain")),
      doubt: labelDoubt(column, label, plausible),
    });
  const [scale] = plausible;
  if (plausible.length === 1 && scale !== undefined)
    return ok(scaled(column, scale, formatDecision(scale, "likely")));
  const found =
    plausible.length === 0
      ? "no unit gives a firing of a likely length and heating rate"
      : `${plausible.map((each) => each.name).join(" and ")} both give a likely firing`;
  return failed({
    code: "log/time-unit-unknown",
    what: `the times in "${column.name}" have no unit, and ${found}`,
    where: options.name,
    expected: "seconds, minutes or hours, named in the header or in a row under it",
    fix: "say it with --time-unit s, min or h",
  });
}

function scaled(column: Column, scale: TimeScale, format: Decision): RowTimes {
  return {
    seconds: column.numbers.map((value) => value * scale.seconds),
    clock: "none",
    doubt: null,
    decisions: [format],
  };
}

function formatDecision(scale: TimeScale, confidence: Decision["confidence"]): Decision {
  const because: Readonly<Record<Decision["confidence"], string>> = {
    told: "it was given as an option",
    certain: "the unit is written in the header",
    likely: "only this unit gives a likely length and heating rate",
    guessed: "",
  };
  return decision("time format", `elapsed, in ${scale.name}`, {
    confidence,
    because: because[confidence],
    option: `--time-unit s, min or h; ${TIME_KIND_OPTION}`,
    says: { timeKind: "elapsed", timeUnit: unitOfScale(scale) },
  });
}

/** A label that gives an impossible firing while another unit gives a likely one. */
function labelDoubt(
  column: Column,
  label: TimeScale,
  plausible: readonly TimeScale[],
): string | null {
  const [other] = plausible;
  if (plausible.length !== 1 || other === undefined || other.name === label.name) return null;
  return `"${column.name}" says ${label.name}, but only ${other.name} would give a likely firing; --time-unit ${other.name} reads it so.`;
}

const DAY_SECONDS = 86_400;

/**
 * A count for each row that rises evenly with time, in any unit and from any zero, before the times
 * are decided: good enough to see whether a column runs in straight lines. Null without times.
 */
export function roughClock(place: TimePlace): Float64Array | null {
  if (place.kind === "none") return null;
  if (place.kind === "number") return place.column.numbers;
  if (place.clock === null) return null;
  const ofDay = place.clock.stamps.seconds;
  const running = new Float64Array(ofDay.length);
  let days = 0;
  let last = Number.NaN;
  for (let i = 0; i < ofDay.length; i++) {
    const seconds = ofDay[i]!;
    if (seconds - last < -DAY_SECONDS / 2) days++;
    else if (seconds - last > DAY_SECONDS / 2) days--;
    running[i] = seconds + days * DAY_SECONDS;
    if (!Number.isNaN(seconds)) last = seconds;
  }
  return spreadOut(running);
}

/** Share of rows with the stamp of the row before, from which stamps are merely coarse. */
const COARSE_SHARE = 0.2;

/** Rows of one coarse stamp, spread evenly up to the next. */
function spreadOut(times: Float64Array): Float64Array {
  const repeats = times.filter((time, i) => time === times[i - 1]).length;
  if (repeats < COARSE_SHARE * times.length) return times;
  const spread = times.slice();
  let from = 0;
  for (let i = 1; i < times.length; i++) {
    if (times[i] === times[from]) continue;
    const [here, next] = [times[from]!, times[i]!];
    for (let k = from; k < i; k++) spread[k] = here + ((next - here) * (k - from)) / (i - from);
    from = i;
  }
  return spread.fill(Number.NaN, from);
}
