import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  reviewDocumentSchema
} from "./chunk-JZPQT2SJ.js";
import {
  comparedFiringPiece,
  comparisonDocument,
  comparisonDocumentSchema
} from "./chunk-ZOWVLEMO.js";
import {
  opening
} from "./chunk-RLEK6R44.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/reports/documents/problemDocument.ts
var problemsShape = external_exports.array(
  external_exports.strictObject({
    code: external_exports.string().regex(/^[^/]+\/[^/]+$/).describe("stable name: room/kebab"),
    what: external_exports.string(),
    where: external_exports.string(),
    expected: external_exports.string(),
    fix: external_exports.string()
  })
).min(1);
var problemDocumentSchema = external_exports.strictObject({
  schemaVersion: external_exports.literal(1),
  ok: external_exports.literal(false),
  problems: problemsShape
});
function problemDocument(problems) {
  if (problems.length === 0) throw new RangeError("problemDocument: needs at least one problem");
  return {
    schemaVersion: 1,
    ok: false,
    problems: problems.map(({ code, what, where, expected, fix }) => ({
      code,
      what,
      where,
      expected,
      fix
    }))
  };
}

// src/core/reports/documents/lineDocuments.ts
var unreadLogSchema = external_exports.strictObject({
  schemaVersion: external_exports.literal(1),
  ok: external_exports.literal(false),
  log: external_exports.strictObject({
    name: external_exports.string().describe("file name without its folder"),
    path: external_exports.string().describe("as it was given")
  }),
  problems: problemsShape
});
var reviewLineSchema = external_exports.union([reviewDocumentSchema, unreadLogSchema]);
var comparedLineSchema = external_exports.strictObject({
  ...opening("compare"),
  log: external_exports.strictObject({ name: external_exports.string().describe("file name without its folder") }),
  firing: comparisonDocumentSchema.shape.firings.element
});
var closingLineSchema = external_exports.strictObject({
  ...opening("compare"),
  compared: external_exports.int().describe("firings in the lines above"),
  thermocoupleShifts: comparisonDocumentSchema.shape.thermocoupleShifts,
  cautions: comparisonDocumentSchema.shape.cautions
}).describe("the last line: what holds for all of them");
var compareLineSchema = external_exports.union([comparedLineSchema, closingLineSchema, unreadLogSchema]);
function unreadLogLine(log, problems) {
  const { schemaVersion, ok, problems: told } = problemDocument(problems);
  return { schemaVersion, ok, log: { name: log.name, path: log.path }, problems: told };
}
function comparedLine({ name, firing }) {
  return {
    schemaVersion: 1,
    ok: true,
    command: "compare",
    log: { name },
    firing: comparedFiringPiece(firing)
  };
}
function comparisonLine(comparison) {
  const { thermocoupleShifts, cautions } = comparisonDocument(comparison);
  return {
    schemaVersion: 1,
    ok: true,
    command: "compare",
    compared: comparison.firings.length,
    thermocoupleShifts,
    cautions
  };
}

export {
  problemDocumentSchema,
  reviewLineSchema,
  compareLineSchema,
  unreadLogLine,
  comparedLine,
  comparisonLine
};
