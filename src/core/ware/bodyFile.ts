import { z } from "zod";
import type { DocumentFormat } from "../document/DocumentFormat.ts";
import { readDocument } from "../document/readDocument.ts";
import { schemaProblems } from "../document/schemaProblems.ts";
import { failed, type Result } from "../problem.ts";
import { BODY_WORDS, OwnBody } from "./bodyFormat.ts";
import { userBody } from "./userBody.ts";
import type { Body } from "./Ware.ts";

/** A body file, as YAML or JSON: one's own body, to be named on the command line. */
export const BodyFile = z
  .strictObject({ formatVersion: z.literal(1).describe("1"), ...OwnBody.shape })
  .describe("a clay body of one's own");

const BODY_DOCUMENT: DocumentFormat = {
  room: "body",
  thing: "a clay body",
  neededKeys: "formatVersion, and what is different from its base",
  example: "formatVersion: 1, base: stoneware cone 6, ruptureMPa: 30",
  schema: BodyFile,
  missingCode: "body/missing",
  otherWords: new Map([
    ["title", "name"],
    ["version", "formatVersion"],
    ["body", "base"],
    ...BODY_WORDS,
  ]),
  expected: new Map(),
  quotedKeys: [],
  shorten: new Map(),
};

/**
 * A body from the text of its file.
 *
 * @param name File name, for problems.
 * @returns All problems of the file at once, each with the place where it stands.
 */
export function parseBody(text: string, name: string): Result<Body> {
  const document = readDocument(text, name, BODY_DOCUMENT);
  if (!document.ok) return document;
  const shape = BodyFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, BODY_DOCUMENT));
  return userBody(shape.data, document.value.placeOf);
}
