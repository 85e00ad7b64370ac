import { z } from "zod";
import type { Comparison, ComparisonPart } from "../../firing/compareFirings.ts";
import type { Problem } from "../../problem.ts";
import {
  comparedFiringPiece,
  comparisonDocument,
  comparisonDocumentSchema,
} from "./comparisonDocument.ts";
import { problemDocument, problemsShape } from "./problemDocument.ts";
import { reviewDocumentSchema } from "./reviewDocument.ts";
import { opening } from "./shapes.ts";

/** The line of a log that could not be read, among the lines of `--json-lines`. */
const unreadLogSchema = z.strictObject({
  schemaVersion: z.literal(1),
  ok: z.literal(false),
  log: z.strictObject({
    name: z.string().describe("file name without its folder"),
    path: z.string().describe("as it was given"),
  }),
  problems: problemsShape,
});

/** A line of `review --json-lines`: the document of a firing, or why a log could not be read. */
export const reviewLineSchema = z.union([reviewDocumentSchema, unreadLogSchema]);

const comparedLineSchema = z.strictObject({
  ...opening("compare"),
  log: z.strictObject({ name: z.string().describe("file name without its folder") }),
  firing: comparisonDocumentSchema.shape.firings.element,
});

const closingLineSchema = z
  .strictObject({
    ...opening("compare"),
    compared: z.int().describe("firings in the lines above"),
    thermocoupleShifts: comparisonDocumentSchema.shape.thermocoupleShifts,
    cautions: comparisonDocumentSchema.shape.cautions,
  })
  .describe("the last line: what holds for all of them");

/** A line of `compare --json-lines`: one a firing, then one for all. */
export const compareLineSchema = z.union([comparedLineSchema, closingLineSchema, unreadLogSchema]);

/** Why a log could not be read, as a line among others; at least one problem. */
export function unreadLogLine(
  log: { readonly name: string; readonly path: string },
  problems: readonly Problem[],
): z.infer<typeof unreadLogSchema> {
  const { schemaVersion, ok, problems: told } = problemDocument(problems);
  return { schemaVersion, ok, log: { name: log.name, path: log.path }, problems: told };
}

/** One firing of a comparison as a line. */
export function comparedLine({ name, firing }: ComparisonPart): z.infer<typeof comparedLineSchema> {
  return {
    schemaVersion: 1,
    ok: true,
    command: "compare",
    log: { name },
    firing: comparedFiringPiece(firing),
  };
}

/** What holds for all firings of a comparison, as its last line. */
export function comparisonLine(comparison: Comparison): z.infer<typeof closingLineSchema> {
  const { thermocoupleShifts, cautions } = comparisonDocument(comparison);
  return {
    schemaVersion: 1,
    ok: true,
    command: "compare",
    compared: comparison.firings.length,
    thermocoupleShifts,
    cautions,
  };
}
