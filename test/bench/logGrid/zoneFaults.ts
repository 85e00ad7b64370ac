import type { Channel, LogReading } from "../../../src/core/log/reading/LogReading.ts";
import type { GridColumn } from "./gridColumns.ts";
import type { GridLog } from "./gridLog.ts";

/** Something in which a reading differs from the truth. */
export interface ReadingFault {
  readonly what: string;
  /** The reading itself says so, by a fault, a rejected row, or a guess that is marked as one. */
  readonly isSaid: boolean;
  /** The truth cannot be told from the data, and the reading says so. */
  readonly isOpen: boolean;
}

/** Readings this far from the truth in °C are wrong: far below any printed digit. */
const SLACK_C = 0.011;
/** A number cut off behind its decimal mark is off by less [K]. */
const CUT_SLACK_C = 1;
/** A wild reading that comes near the truth by chance does no harm [K]; zones are up to 30 K apart. */
const WILD_SLACK_C = 40;

/** A fault of which the reading says nothing. */
export function silent(what: string): ReadingFault {
  return { what, isSaid: false, isOpen: false };
}

/** Readings of the temperature columns that differ from the samples of their times, or are lacking. */
export function zoneFaults(
  log: GridLog,
  reading: LogReading,
  view: Pick<Zone, "origin" | "keepsCut">,
): readonly ReadingFault[] {
  return log.truth.columns.flatMap((column, c) => {
    const channel = reading.channels[c];
    if (channel?.role !== "temperature" || channel.curve === null) return [];
    if (column.role !== "temperature" && column.role !== "wild") return [];
    return zoneFault(log, reading, { column, channel, at: c, ...view });
  });
}

interface Zone {
  readonly column: GridColumn;
  readonly channel: Channel;
  /** Place among the columns. */
  readonly at: number;
  /** True time of the first reading [s from the first sample]. */
  readonly origin: number;
  /** Whether the row that was cut off is taken to be among the readings. */
  readonly keepsCut: boolean;
}

/** Compares every reading of a zone with the sample of its time. */
function zoneFault(log: GridLog, reading: LogReading, zone: Zone): readonly ReadingFault[] {
  const curve = zone.channel.curve;
  if (curve === null) return [];
  const { truth } = log;
  let missing = 0;
  let at = 0;
  for (const sample of samplesOf(log, zone)) {
    const time = (truth.elapsed[sample] as number) - zone.origin + shiftAt(log, reading, sample);
    const next = placeFrom(curve.timesSeconds, at, time - truth.timeSlack);
    const stray = strayFault(log, zone, curve.tempsC.subarray(at, next));
    if (stray !== null) return [strayIn(reading, zone, `${stray} before ${time} s`)];
    at = next;
    const isHere = (curve.timesSeconds[at] as number) - time <= truth.timeSlack;
    const found = matchOf(
      zone,
      { sample, isCut: sample === truth.cutRow },
      isHere ? curve.tempsC[at] : undefined,
    );
    if (found.wrong !== null) return [silent(`${zone.channel.name}: ${found.wrong} at ${time} s`)];
    if (found.isTaken) at++;
    else if (sample !== truth.cutRow) missing++;
  }
  const stray = strayFault(log, zone, curve.tempsC.subarray(at));
  if (stray !== null) return [strayIn(reading, zone, `${stray} beyond the end`)];
  return missing === 0 ? [] : [missingFault(log, reading, { zone, missing })];
}

/** A stray reading; of a thermocouple that is said to jump wildly it is no surprise. */
function strayIn({ faults }: LogReading, { channel, column }: Zone, what: string): ReadingFault {
  const isSaid =
    column.role === "wild" &&
    faults.some((fault) => fault.channel === channel.name && /jumps up and down/.test(fault.what));
  return { what, isSaid, isOpen: false };
}

/** The first place from one on whose time is not before a moment. */
function placeFrom(times: Float64Array, from: number, moment: number): number {
  let at = from;
  while (at < times.length && (times[at] as number) < moment) at++;
  return at;
}

/** Whether a reading is that of a sample; the row that was cut off may have been kept as far as it goes, or not. */
function matchOf(
  zone: Zone,
  { sample, isCut }: { readonly sample: number; readonly isCut: boolean },
  tempC: number | undefined,
): { readonly isTaken: boolean; readonly wrong: string | null } {
  if (tempC === undefined) return { isTaken: false, wrong: null };
  if (isCut) return { isTaken: isCutReading(zone, sample, tempC), wrong: null };
  return { isTaken: true, wrong: wrongValue(zone, sample, tempC) };
}

/** What is wrong with the first of some readings that belong to no sample; null when nothing is. */
function strayFault(log: GridLog, zone: Zone, tempsC: Float64Array): string | null {
  for (const tempC of tempsC) {
    const stray = strayReading(log, zone, tempC);
    if (stray !== null) return `${zone.channel.name}: ${stray}`;
  }
  return null;
}

/** Samples of a zone that were written whole, and the one that was cut off. */
function samplesOf(log: GridLog, { column, at, keepsCut }: Zone): readonly number[] {
  const { rows, cutRow } = log.truth;
  const all = cutRow < 0 || !keepsCut ? rows : [...rows, cutRow].sort((a, b) => a - b);
  return all.filter(
    (sample) =>
      !Number.isNaN(column.tempsC[sample] as number) &&
      log.truth.shortRows.get(sample) !== at &&
      sample < column.wildFrom,
  );
}

function isCutReading({ column }: Zone, sample: number, tempC: number): boolean {
  return Math.abs((column.tempsC[sample] as number) - tempC) <= CUT_SLACK_C;
}

function wrongValue({ column }: Zone, sample: number, tempC: number): string | null {
  return wrongAt(column, sample, tempC);
}

function wrongAt(column: GridColumn, sample: number, tempC: number): string | null {
  const wanted = column.tempsC[sample] as number;
  return Math.abs(wanted - tempC) <= SLACK_C ? null : `${tempC} °C, not ${wanted}`;
}

/** A reading that stands at the time of no good sample: a cut one, or a wild one by chance near. */
function strayReading(log: GridLog, { column, at }: Zone, tempC: number): string | null {
  const { cutRow, columns, shortRows } = log.truth;
  // A row that lost a cell may have been written twice, and whole the other time.
  const isWholeTwin = [...shortRows].some(
    ([row, short]) => short === at && wrongAt(column, row, tempC) === null,
  );
  if (isWholeTwin) return null;
  if (cutRow >= 0 && Math.abs((column.tempsC[cutRow] as number) - tempC) <= CUT_SLACK_C)
    return null;
  if (column.role !== "wild") return `a reading of ${tempC} °C that is none`;
  const good = columns[0]?.tempsC ?? [];
  const isNearAny = Array.from(good).some((each) => Math.abs(each - tempC) <= WILD_SLACK_C);
  return isNearAny ? null : `a wild reading of ${tempC} °C was kept`;
}

/** An hour that is left as a gap after the clock went ahead, where the reading says that it may be none. */
function shiftAt(log: GridLog, reading: LogReading, sample: number): number {
  const { changeAt } = log.truth;
  if (log.levels.clock !== "summer time begins" || sample < changeAt) return 0;
  const isDoubted = reading.faults.some(
    ({ kind, what }) => kind === "clock" && what.includes("does not tell"),
  );
  return isDoubted ? 3600 : 0;
}

function missingFault(
  log: GridLog,
  reading: LogReading,
  { zone, missing }: { readonly zone: Zone; readonly missing: number },
): ReadingFault {
  const { channel, column } = zone;
  const what = `${channel.name} lacks ${missing} readings`;
  const isCounted = channel.dropped + reading.rows.rejected.length >= missing;
  const few = Math.max(2, 0.01 * log.truth.rows.length);
  const isWild = column.role === "wild" && missing <= few;
  return { what, isSaid: isCounted, isOpen: isWild && isCounted };
}
