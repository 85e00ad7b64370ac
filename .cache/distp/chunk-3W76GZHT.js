import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  BODY_WORDS,
  OwnBody,
  readDocument,
  schemaProblems
} from "./chunk-BUYZUOGW.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";
import {
  userBody
} from "./chunk-GJAD4LJL.js";
import {
  failed
} from "./chunk-2ZNPDJKQ.js";

// src/core/ware/bodyFile.ts
var BodyFile = external_exports.strictObject({ formatVersion: external_exports.literal(1).describe("1"), ...OwnBody.shape }).describe("a clay body of one's own");
var BODY_DOCUMENT = {
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
    ...BODY_WORDS
  ]),
  expected: /* @__PURE__ */ new Map(),
  quotedKeys: [],
  shorten: /* @__PURE__ */ new Map()
};
function parseBody(text, name) {
  const document = readDocument(text, name, BODY_DOCUMENT);
  if (!document.ok) return document;
  const shape = BodyFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, BODY_DOCUMENT));
  return userBody(shape.data, document.value.placeOf);
}

export {
  BodyFile,
  parseBody
};
