import { parseCone } from "../cones/coneName.ts";
import { type DocumentPath, readDocument } from "../document/readDocument.ts";
import { schemaProblems } from "../document/schemaProblems.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { compositionOf } from "./compositionOf.ts";
import { GLAZE_DOCUMENT } from "./glazeDocument.ts";
import { glazedWare } from "./glazedWare.ts";
import { GlazeFile } from "./glazeFormat.ts";
import { leachTestsOf } from "./leachTestsOf.ts";
import { ownProperties } from "./ownProperties.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";

/**
 * A glaze from the text of its file, YAML or JSON by content.
 *
 * @param name What to call the file in problems.
 * @returns every problem of the file at once, each with its place and line.
 */
export function parseGlaze(text: string, name: string): Result<ParsedGlaze> {
  const document = readDocument(text, name, GLAZE_DOCUMENT);
  if (!document.ok) return document;
  const shape = GlazeFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, GLAZE_DOCUMENT));
  return meaningOf(shape.data, document.value.placeOf);
}

function meaningOf(file: GlazeFile, at: (path: DocumentPath) => string): Result<ParsedGlaze> {
  const composition = compositionOf(file, at);
  const own = ownProperties(file, at);
  const cone =
    file.cone === undefined
      ? ok(null)
      : parseCone(file.cone, { series: "self-supporting", where: at(["cone"]) });
  const ware = glazedWare(file, at);
  const leachTests = leachTestsOf(file, at);
  if (composition.ok && own.ok && cone.ok && ware.ok && leachTests.ok)
    return ok({
      title: file.title,
      invented: file.invented ?? false,
      cone: cone.value,
      crackle: file.crackle ?? false,
      ...composition.value,
      own: own.value,
      ware: ware.value,
      leachTests: leachTests.value,
      notes: file.notes ?? null,
    });
  const problems: Problem[] = [];
  for (const part of [composition, own, cone, ware, leachTests])
    if (!part.ok) problems.push(...part.problems);
  return failed(...problems);
}
