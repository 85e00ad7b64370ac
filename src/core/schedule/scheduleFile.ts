import { Document, isMap, visit, type YAMLMap } from "yaml";
import { parseCone } from "../cones/cone.ts";
import { type DocumentFormat, type DocumentPath, readDocument } from "../document/readDocument.ts";
import { schemaProblems } from "../document/schemaProblems.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { hasHidden, hiddenEscaped } from "../text/escape.ts";
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../units/temperature.ts";
import { BODY_WORDS } from "../ware/bodyFormat.ts";
import { wareLength } from "../ware/givenWare.ts";
import { bodyAsGiven, bodyGiven } from "../ware/ownBody.ts";
import { MOST_SEGMENTS, type Schedule, ScheduleFile, type Segment } from "./Schedule.ts";
import { parseSegments, targetOf } from "./segments.ts";

/** Where a kiln starts when the file does not say [°C]. */
const ROOM_C = 20;

/**
 * A schedule from the text of its file, YAML or JSON by content.
 *
 * @param name What to call the file in problems.
 * @returns every problem of the file at once, each with its place and line.
 */
export function parseSchedule(text: string, name: string): Result<Schedule> {
  const document = readDocument(text, name, SCHEDULE_DOCUMENT);
  if (!document.ok) return document;
  const shape = ScheduleFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, SCHEDULE_DOCUMENT));
  return meaningOf(shape.data, document.value.placeOf);
}

function meaningOf(file: ScheduleFile, at: (path: DocumentPath) => string): Result<Schedule> {
  const { unit } = file;
  const series = file.series ?? "self-supporting";
  const cone =
    file.cone === undefined ? ok(null) : parseCone(file.cone, { series, where: at(["cone"]) });
  const start =
    file.start === undefined ? ok(ROOM_C) : targetOf(file.start, { unit, where: at(["start"]) });
  const rating =
    file.kilnRating === undefined
      ? ok(null)
      : targetOf(file.kilnRating, { unit, where: at(["kilnRating"]) });
  const segments = parseSegments(file.segments, {
    unit,
    startC: start.ok ? start.value : null,
    placeOf: at,
  });
  const ware = wareOfFile(file.ware ?? {}, at);
  if (cone.ok && start.ok && rating.ok && segments.ok && ware.ok)
    return ok({
      title: file.title,
      unit,
      cone: cone.value,
      series,
      startC: start.value,
      segments: segments.value,
      ware: ware.value,
      ...(rating.value !== null && { kilnRatingC: rating.value }),
      ...(file.thermocouple && {
        thermocouple: {
          type: file.thermocouple.type,
          wireMm: file.thermocouple.wire ?? null,
        },
      }),
      notes: file.notes ?? null,
      basis: file.basis ?? null,
    });
  const problems: Problem[] = [];
  for (const part of [cone, start, rating, ware, segments])
    if (!part.ok) problems.push(...part.problems);
  return failed(...problems);
}

function wareOfFile(
  file: NonNullable<ScheduleFile["ware"]>,
  at: (path: DocumentPath) => string,
): Result<Schedule["ware"]> {
  const problems: Problem[] = [];
  const taken = <T>(result: Result<T>): T | null => {
    if (result.ok) return result.value;
    problems.push(...result.problems);
    return null;
  };
  const body =
    file.body === undefined
      ? null
      : taken(bodyGiven(file.body, (inside) => at(["ware", "body", ...inside])));
  const [wallMm, baseMm, thickestMm, widestMm, heightMm, shelfMm, footGapMm] = LENGTHS.map(
    (name) => {
      const value = file[name];
      return value === undefined
        ? null
        : taken(wareLength(value, { name, where: at(["ware", name]) }));
    },
  ) as [Mm, Mm, Mm, Mm, Mm, Mm, Mm];
  if (problems.length > 0) return failed(...problems);
  return ok({
    ...(body && { body }),
    ...(wallMm !== null && { wallMm }),
    ...(baseMm !== null && { baseMm }),
    thickestMm,
    widestMm,
    ...(heightMm !== null && { heightMm }),
    ...(file.stands && { stands: file.stands }),
    ...(shelfMm !== null && { shelfMm }),
    ...(footGapMm !== null && { footGapMm }),
    ...(file.glazedSides && { glazedSides: file.glazedSides }),
    state: file.state ?? null,
    crackle: file.crackle ?? false,
  });
}

type Mm = number | null;

const LENGTHS = ["wall", "base", "thickest", "widest", "height", "shelf", "footGap"] as const;

/** A schedule as a document: its shape, and the words of its problems. */
const SCHEDULE_DOCUMENT: DocumentFormat = {
  room: "schedule",
  thing: "a schedule",
  neededKeys: "formatVersion, title, unit and segments",
  example: "one of the shipped schedules",
  schema: ScheduleFile,
  missingCode: "schedule/missing-key",
  otherWords: new Map([
    ["target", "to"],
    ["temp", "to"],
    ["temperature", "to"],
    ["ramp", "rate"],
    ["speed", "rate"],
    ["soak", "hold"],
    ["dwell", "hold"],
    ["name", "title"],
    ["units", "unit"],
    ["steps", "segments"],
    ["version", "formatVersion"],
    ["thickness", "thickest"],
    ["width", "widest"],
    ["comment", "why"],
    ...BODY_WORDS,
  ]),
  expected: new Map([
    ["formatVersion", "formatVersion: 1"],
    ["title", "a title of 1 to 200 characters"],
    ["unit", "unit: C or unit: F"],
    ["cone", 'a cone in quotes: "05", "5", "5.5"'],
    ["start", 'a temperature: a number in the file\'s unit, or "68 F"'],
    [
      "ware",
      "ware with any of body, wall, base, thickest, widest, height, stands, shelf, footGap, glazedSides, state, crackle",
    ],
    [
      "body",
      "a body: earthenware, stoneware cone 6, porcelain cone 10; or your own: { base: stoneware, ruptureMPa: 30 }",
    ],
    ["wall", 'a length: a number of millimetres, or "1/4 in"'],
    ["thickest", 'a length: a number of millimetres, or "1/4 in"'],
    ["widest", 'a length: a number of millimetres, or "12 in"'],
    ["crackle", "true or false"],
    ["segments", `1 to ${MOST_SEGMENTS} segments, each with to and rate`],
    ["segments[]", "a segment: { to: 1080, rate: 150 }"],
    ["to", 'a temperature: a number in the file\'s unit, or "2165 F"'],
    ["rate", 'a rate: a number in the file\'s unit per hour, "108 F/h", or free'],
    ["hold", 'a span of time: a number of minutes, or "1 h 30 min"'],
    ["why", "a sentence of at most 300 characters"],
    ["notes", "text of at most 4000 characters"],
    ["basis", "text of at most 4000 characters"],
  ]),
  quotedKeys: ["cone"],
  shorten: new Map([["segments", "join neighbouring ramps of one rate"]]),
};

/**
 * A schedule as the text of its file, in its own unit; `parseSchedule` reads it back the same.
 * Numbers are written to a millionth of a degree, so that nothing a person wrote is lost; control
 * characters and what hides text are written as escapes, so that no terminal obeys them.
 */
export function scheduleYaml(schedule: Schedule): string {
  const document = new Document(fileOf(schedule), { aliasDuplicateObjects: false });
  const segments = document.get("segments", true) as { items: unknown[] } | undefined;
  for (const item of segments?.items ?? []) if (isMap(item)) item.flow = true;
  const ware = document.get("ware", true);
  if (isMap(ware)) setWare(ware);
  visit(document, {
    Scalar: (_, node) => {
      if (typeof node.value === "string" && hasHidden(node.value)) node.type = "QUOTE_DOUBLE";
    },
  });
  return hiddenEscaped(document.toString({ lineWidth: 0, defaultStringType: "PLAIN" }));
}

/** On one line; a body of one's own takes a line for each property. */
function setWare(ware: YAMLMap): void {
  const body = ware.get("body", true);
  ware.flow = !isMap(body);
  if (isMap(body)) for (const { value } of body.items) if (isMap(value)) value.flow = true;
}

function wareFileOf(ware: Schedule["ware"]): Record<string, unknown> {
  return {
    ...(ware.body && { body: bodyAsGiven(ware.body) }),
    ...(typeof ware.wallMm === "number" && { wall: rounded(ware.wallMm) }),
    ...(typeof ware.baseMm === "number" && { base: rounded(ware.baseMm) }),
    ...(ware.thickestMm !== null && { thickest: rounded(ware.thickestMm) }),
    ...(ware.widestMm !== null && { widest: rounded(ware.widestMm) }),
    ...(typeof ware.heightMm === "number" && { height: rounded(ware.heightMm) }),
    ...(ware.stands && { stands: ware.stands }),
    ...(typeof ware.shelfMm === "number" && { shelf: rounded(ware.shelfMm) }),
    ...(typeof ware.footGapMm === "number" && { footGap: rounded(ware.footGapMm) }),
    ...(ware.glazedSides && { glazedSides: ware.glazedSides }),
    ...(ware.state !== null && { state: ware.state }),
    ...(ware.crackle && { crackle: true }),
  };
}

function fileOf(schedule: Schedule): Record<string, unknown> {
  const { unit } = schedule;
  const wareFile = wareFileOf(schedule.ware);
  return {
    formatVersion: 1,
    title: schedule.title,
    unit,
    ...(schedule.cone !== null && { cone: schedule.cone }),
    ...(schedule.series !== "self-supporting" && { series: schedule.series }),
    ...(schedule.startC !== ROOM_C && { start: temperature(schedule.startC, unit) }),
    ...(Object.keys(wareFile).length > 0 && { ware: wareFile }),
    ...(schedule.kilnRatingC !== undefined && {
      kilnRating: temperature(schedule.kilnRatingC, unit),
    }),
    ...(schedule.thermocouple && {
      thermocouple: {
        type: schedule.thermocouple.type,
        ...(schedule.thermocouple.wireMm !== null && { wire: schedule.thermocouple.wireMm }),
      },
    }),
    segments: schedule.segments.map((segment) => segmentFile(segment, unit)),
    ...(schedule.notes !== null && { notes: schedule.notes }),
    ...(typeof schedule.basis === "string" && { basis: schedule.basis }),
  };
}

function segmentFile(segment: Segment, unit: TemperatureUnit): Record<string, unknown> {
  const { rateCPerHour: rate, holdSeconds } = segment;
  return {
    to: temperature(segment.toC, unit),
    rate: rate === "free" ? "free" : rateNumber(Math.abs(rate), unit),
    ...(holdSeconds > 0 && { hold: hold(holdSeconds) }),
    ...(segment.why !== null && { why: segment.why }),
  };
}

function temperature(tempC: number, unit: TemperatureUnit): number {
  return rounded(unit === "C" ? tempC : fahrenheitFromCelsius(tempC));
}

function rateNumber(rateCPerHour: number, unit: TemperatureUnit): number {
  return rounded(unit === "C" ? rateCPerHour : fahrenheitDeltaFromCelsiusDelta(rateCPerHour));
}

function hold(seconds: number): string {
  if (seconds % 60 !== 0) return `${rounded(seconds)} s`;
  const minutes = seconds / 60;
  const hours = Math.floor(minutes / 60);
  if (hours === 0) return `${minutes} min`;
  return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
}

function rounded(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
