import { parseCone } from "../cones/coneName.ts";
import { type DocumentPath, readDocument } from "../document/readDocument.ts";
import { schemaProblems } from "../document/schemaProblems.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { parseLength } from "../units/parseLength.ts";
import { bodyNamed } from "../ware/bodies.ts";
import { parseSegments, targetOf } from "./parseSegments.ts";
import type { Schedule } from "./Schedule.ts";
import { SCHEDULE_DOCUMENT } from "./scheduleDocument.ts";
import { ScheduleFile } from "./scheduleFormat.ts";

export { ScheduleFile };

/** Where a kiln starts when the file does not say [°C]. */
export const ROOM_C = 20;

/** Thickness and width above these are slips of the pen [mm]. */
const THICKEST_WALL_MM = 100;
const THICKEST_MM = 300;
const WIDEST_MM = 3000;

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
  const segments = parseSegments(file.segments, {
    unit,
    startC: start.ok ? start.value : null,
    placeOf: at,
  });
  const body =
    file.ware?.body === undefined ? ok(null) : bodyNamed(file.ware.body, at(["ware", "body"]));
  const wall = lengthOf(file.ware?.wall, at(["ware", "wall"]), THICKEST_WALL_MM);
  const base = lengthOf(file.ware?.base, at(["ware", "base"]), THICKEST_WALL_MM);
  const thickest = lengthOf(file.ware?.thickest, at(["ware", "thickest"]), THICKEST_MM);
  const widest = lengthOf(file.ware?.widest, at(["ware", "widest"]), WIDEST_MM);
  if (
    cone.ok &&
    start.ok &&
    segments.ok &&
    body.ok &&
    wall.ok &&
    base.ok &&
    thickest.ok &&
    widest.ok
  )
    return ok({
      title: file.title,
      unit,
      cone: cone.value,
      series,
      startC: start.value,
      segments: segments.value,
      ware: {
        ...(body.value && { body: body.value }),
        ...(wall.value !== null && { wallMm: wall.value }),
        ...(base.value !== null && { baseMm: base.value }),
        thickestMm: thickest.value,
        widestMm: widest.value,
        state: file.ware?.state ?? null,
        crackle: file.ware?.crackle ?? false,
      },
      notes: file.notes ?? null,
      basis: file.basis ?? null,
    });
  const problems: Problem[] = [];
  for (const part of [cone, start, body, wall, base, thickest, widest, segments])
    if (!part.ok) problems.push(...part.problems);
  return failed(...problems);
}

function lengthOf(
  value: number | string | undefined,
  where: string,
  mostMm: number,
): Result<number | null> {
  if (value === undefined) return ok(null);
  const length = parseLength(value, { where });
  if (!length.ok || length.value <= mostMm) return length;
  return failed({
    code: "schedule/too-big",
    what: `the ware measures ${Math.round(length.value)} mm`,
    where,
    expected: `at most ${mostMm} mm`,
    fix: "check the number; a bare number is millimetres",
  });
}
