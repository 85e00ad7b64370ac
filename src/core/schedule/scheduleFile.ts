import { parseCone } from "../cones/coneName.ts";
import type { DocumentFormat } from "../document/DocumentFormat.ts";
import { type DocumentPath, readDocument } from "../document/readDocument.ts";
import { schemaProblems } from "../document/schemaProblems.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { bodyGiven } from "../ware/bodyAsGiven.ts";
import { BODY_WORDS } from "../ware/bodyFormat.ts";
import { wareLength } from "../ware/wareLength.ts";
import { parseSegments, targetOf } from "./parseSegments.ts";
import type { Schedule } from "./Schedule.ts";
import { MOST_SEGMENTS, ScheduleFile } from "./scheduleFormat.ts";

/** Where a kiln starts when the file does not say [°C]. */
export const ROOM_C = 20;

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
