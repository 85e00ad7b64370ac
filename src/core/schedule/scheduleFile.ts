import { parseCone } from "../cones/coneName.ts";
import { type DocumentPath, readDocument } from "../document/readDocument.ts";
import { schemaProblems } from "../document/schemaProblems.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { bodyGiven } from "../ware/bodyGiven.ts";
import { wareLength } from "../ware/wareLength.ts";
import { parseSegments, targetOf } from "./parseSegments.ts";
import type { Schedule } from "./Schedule.ts";
import { SCHEDULE_DOCUMENT } from "./scheduleDocument.ts";
import { ScheduleFile } from "./scheduleFormat.ts";

export { ScheduleFile };

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
