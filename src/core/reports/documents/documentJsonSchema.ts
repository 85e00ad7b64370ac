import { z } from "zod";
import {
  compareLineSchema,
  comparisonDocumentSchema,
  reviewLineSchema,
} from "./comparisonDocument.ts";
import { conesDocumentSchema } from "./conesDocument.ts";
import { draftDocumentSchema } from "./draftDocument.ts";
import { glazeDocumentSchema } from "./glazeDocument.ts";
import { kilnDocumentSchema } from "./kilnDocument.ts";
import { measureDocumentSchema } from "./measureDocument.ts";
import { problemDocumentSchema } from "./pieces.ts";
import { pingsDocumentSchema } from "./pingsDocument.ts";
import { reviewDocumentSchema } from "./reviewDocument.ts";
import { watchDocumentSchema } from "./watchDocument.ts";

const SCHEMAS = {
  review: reviewDocumentSchema,
  draft: draftDocumentSchema,
  compare: comparisonDocumentSchema,
  kiln: kilnDocumentSchema,
  measure: measureDocumentSchema,
  pings: pingsDocumentSchema,
  cones: conesDocumentSchema,
  glaze: glazeDocumentSchema,
  watch: watchDocumentSchema,
  "review-line": reviewLineSchema,
  "compare-line": compareLineSchema,
  problems: problemDocumentSchema,
} as const;

/**
 * A document that the command can print: named after the command, or `problems`; what ends in
 * `-line` is one line of `--json-lines`.
 */
export type DocumentName = keyof typeof SCHEMAS;

/** Every document name, in the order in which the commands are listed. */
export const DOCUMENT_NAMES = Object.keys(SCHEMAS) as readonly DocumentName[];

/** The JSON Schema (draft 2020-12) of a document, made from the schema that defines it. */
export function documentJsonSchema(name: DocumentName): Record<string, unknown> {
  return { ...z.toJSONSchema(SCHEMAS[name]), title: `undunted ${name}` };
}
