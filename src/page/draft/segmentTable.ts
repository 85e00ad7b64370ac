import { html, type TemplateResult } from "lit-html";
import { ok, type Result } from "../../core/problem.ts";
import { clockText, startOfDayOf } from "../../core/reports/moments.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import { isFreeRate } from "../../core/schedule/expandSchedule.ts";
import type { Schedule, Segment } from "../../core/schedule/Schedule.ts";
import { parseSchedule, scheduleYaml } from "../../core/schedule/scheduleFile.ts";
import { targetOf } from "../../core/schedule/segments.ts";
import { printDuration, printElapsed } from "../../core/text/quantities.ts";
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  parseDuration,
  parseRate,
  type TemperatureUnit,
} from "../../core/units/temperature.ts";
import { quantityField } from "../parts/controls.ts";
import type { Bench } from "../state/state.ts";
import { changeSchedule, draftProblems } from "./changeDraft.ts";

/** The segments as a table to type in: a number in the unit shown, or with a unit of its own. */
export function segmentTable(bench: Bench, draft: Draft, unit: TemperatureUnit): TemplateResult {
  const { schedule, expansion, start } = draft;
  const startOfDay = startOfDayOf(start);
  const ends = startOfDay === null ? "ends, h:min" : "ends";
  return html`<div class="table" role="group" aria-label="Segments" tabindex="0"><table class="segments" role="table">
    <caption>Segments: type over any of them; units may be typed too, as in 2165 F, 108 F/h, 1 h 30 min. A rate may be free: left to the kiln.</caption>
    <thead role="rowgroup"><tr role="row">
      <th role="columnheader" scope="col" class="right">Segment</th><th role="columnheader" scope="col">to °${unit}</th><th role="columnheader" scope="col">°${unit}/h</th><th role="columnheader" scope="col">hold</th>
      <th role="columnheader" scope="col" class="right">lasts</th><th role="columnheader" scope="col" class="right">${ends}</th><td role="cell"></td>
    </tr></thead>
    <tbody role="rowgroup">${schedule.segments.map((segment, index) => {
      const rows = expansion.timeline.filter((row) => row.segment === index);
      const from = rows[0]?.startSeconds ?? 0;
      const end = rows.at(-1)?.endSeconds ?? 0;
      return html`<tr role="row">
        <th role="rowheader" scope="row" class="right"><span class="table-label">Segment</span> ${index + 1}</th>
        <td role="cell">${targetField(bench, { segment, index, unit })}</td>
        <td role="cell">${rateField(bench, { segment, index, unit })}</td>
        <td role="cell">${holdField(bench, { segment, index, unit })}</td>
        <td role="cell" class="right told"><span class="table-label" aria-hidden="true">lasts</span> ${printDuration(end - from)}</td>
        <td role="cell" class="right told"><span class="table-label" aria-hidden="true">${ends}</span> ${clockText(startOfDay, end) ?? printElapsed(end)}</td>
        <td role="cell" class="row-tools">
          <button type="button" aria-label=${`Add a segment after segment ${index + 1}`} title="Add a segment after this one" @click=${() => add(bench, index)}>+</button>
          <button type="button" aria-label=${`Take segment ${index + 1} out`} title="Take this segment out" ?disabled=${schedule.segments.length === 1} @click=${() => take(bench, index)}>−</button>
        </td>
      </tr>`;
    })}</tbody>
  </table></div>`;
}

interface Cell {
  readonly segment: Segment;
  readonly index: number;
  readonly unit: TemperatureUnit;
}

function targetField(bench: Bench, { segment, index, unit }: Cell): TemplateResult {
  const where = `segment ${index + 1}`;
  return quantityField({
    id: `to-${index}`,
    label: `To °${unit}`,
    of: `, ${where}`,
    inTable: true,
    value: typedTemperature(segment.toC, unit),
    parse: (text) => targetOf(text, { unit, where }),
    onValue: (toC) => change(bench, index, { toC }),
  });
}

function rateField(bench: Bench, { segment, index, unit }: Cell): TemplateResult {
  const where = `segment ${index + 1}`;
  return quantityField<number | "free">({
    id: `rate-${index}`,
    label: `°${unit}/h`,
    of: `, rate of ${where}`,
    inTable: true,
    value: typedRate(segment.rateCPerHour, unit),
    parse: (text) => (isFreeRate(text) ? ok("free") : parseRate(text, { unit, where })),
    onValue: (rateCPerHour) => change(bench, index, { rateCPerHour }),
  });
}

function holdField(bench: Bench, { segment, index }: Cell): TemplateResult {
  return quantityField({
    id: `hold-${index}`,
    label: "Hold",
    of: ` of segment ${index + 1}`,
    inTable: true,
    value: typedHold(segment.holdSeconds),
    placeholder: "none",
    parse: (text) =>
      text.trim() === "" ? ok(0) : parseDuration(text, { where: `segment ${index + 1}` }),
    onValue: (holdSeconds) => change(bench, index, { holdSeconds }),
  });
}

/** Takes what was typed when a file may hold it too; else says what is wrong and changes nothing. */
function change(bench: Bench, index: number, changed: SegmentChange): void {
  const { schedule } = bench.state().work.draft;
  if (schedule === null) return;
  const wanted = allowed(withSegment(schedule, index, changed));
  if (!wanted.ok) draftProblems(bench, wanted.problems);
  else {
    draftProblems(bench, []);
    changeSchedule(bench, wanted.value, { what: `changing segment ${index + 1}` });
  }
}

function add(bench: Bench, index: number): void {
  const { schedule } = bench.state().work.draft;
  if (schedule === null) return;
  const wanted = allowed(withSegmentAfter(schedule, index));
  if (!wanted.ok) draftProblems(bench, wanted.problems);
  else changeSchedule(bench, wanted.value, { what: `adding a segment after segment ${index + 1}` });
}

function take(bench: Bench, index: number): void {
  const { schedule } = bench.state().work.draft;
  if (schedule === null) return;
  const wanted = allowed(withoutSegment(schedule, index));
  if (!wanted.ok) draftProblems(bench, wanted.problems);
  else changeSchedule(bench, wanted.value, { what: `taking segment ${index + 1} out` });
}

/** What may be changed in one segment. */
export type SegmentChange = Partial<Pick<Segment, "toC" | "rateCPerHour" | "holdSeconds" | "why">>;

/** The schedule with one segment changed; each rate takes the direction that its target asks for. */
export function withSegment(schedule: Schedule, index: number, change: SegmentChange): Schedule {
  const segments = schedule.segments.map((segment, at) =>
    at === index ? { ...segment, ...change } : segment,
  );
  return withDirections({ ...schedule, segments });
}

/** The schedule with one more segment, halfway to the next target, or a fall to 100 °C at the end. */
function withSegmentAfter(schedule: Schedule, index: number): Schedule {
  const { segments } = schedule;
  const here = segments[index]?.toC ?? schedule.startC;
  const next = segments[index + 1];
  const toC = next === undefined ? lastTarget(here) : Math.round((here + next.toC) / 2);
  const added: Segment = {
    toC,
    rateCPerHour: next?.rateCPerHour ?? 60,
    holdSeconds: 0,
    why: null,
  };
  return withDirections({ ...schedule, segments: segments.toSpliced(index + 1, 0, added) });
}

/** The schedule without one of its segments. */
function withoutSegment(schedule: Schedule, index: number): Schedule {
  return withDirections({ ...schedule, segments: schedule.segments.toSpliced(index, 1) });
}

/**
 * The same schedule when a file may hold it, in the words that the command has for it otherwise:
 * what is typed on the page is held to what a file is held to.
 */
export function allowed(schedule: Schedule): Result<Schedule> {
  const read = parseSchedule(scheduleYaml(schedule), "the schedule");
  return read.ok ? { ok: true, value: schedule } : read;
}

/** Where a new last segment ends [°C]: cool enough to open, or warm where it is cool already. */
function lastTarget(hereC: number): number {
  return hereC > 150 ? 100 : Math.round(hereC + 200);
}

function withDirections(schedule: Schedule): Schedule {
  let fromC = schedule.startC;
  const segments = schedule.segments.map((segment) => {
    const falls = segment.toC < fromC;
    fromC = segment.toC;
    if (segment.rateCPerHour === "free") return segment;
    const rate = Math.abs(segment.rateCPerHour);
    return { ...segment, rateCPerHour: falls ? -rate : rate };
  });
  return { ...schedule, segments };
}

/** A temperature as a person would type it: a number, at most two decimals, unit left out. */
export function typedTemperature(tempC: number, unit: TemperatureUnit): string {
  return short(unit === "C" ? tempC : fahrenheitFromCelsius(tempC));
}

/** A rate as a person would type it, without a sign; `free` as it is. */
function typedRate(rateCPerHour: number | "free", unit: TemperatureUnit): string {
  if (rateCPerHour === "free") return "free";
  const rate = Math.abs(rateCPerHour);
  return short(unit === "C" ? rate : fahrenheitDeltaFromCelsiusDelta(rate));
}

/** A hold as a person would type it; empty for none. */
function typedHold(seconds: number): string {
  if (seconds === 0) return "";
  return seconds % 60 === 0 ? printDuration(seconds) : `${short(seconds / 60)} min`;
}

/** A length as a person would type it; empty where it is not known. */
export function typedLength(mm: number | null | undefined): string {
  return typeof mm === "number" ? `${short(mm)} mm` : "";
}

function short(value: number): string {
  return String(Number(value.toFixed(2))).replace("-", "−");
}
