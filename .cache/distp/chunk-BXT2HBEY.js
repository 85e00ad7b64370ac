import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  opening
} from "./chunk-RLEK6R44.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/reports/documents/conesDocument.ts
var conesDocumentSchema = external_exports.strictObject({
  ...opening("cones"),
  series: external_exports.string(),
  cone: external_exports.string().nullable().describe("the cone asked about; null for the whole table"),
  ratesCPerHour: external_exports.array(external_exports.number()),
  rows: external_exports.array(
    external_exports.strictObject({
      cone: external_exports.string(),
      cells: external_exports.array(
        external_exports.strictObject({
          tempC: external_exports.number(),
          confidence: external_exports.enum(["two-copies", "one-copy", "from-memory"])
        }).nullable()
      )
    })
  ).describe("the published table, one cell per rate; empty when one cone is asked about"),
  endPoints: external_exports.array(
    external_exports.strictObject({
      rateCPerHour: external_exports.number(),
      tempC: external_exports.number(),
      sigmaK: external_exports.number(),
      basis: external_exports.enum(["printed", "model"]),
      confidence: external_exports.enum(["two-copies", "one-copy", "from-memory"]).nullable().describe("how well a printed end point is attested; null for the model"),
      extrapolated: external_exports.boolean()
    })
  ).describe("where the cone asked about goes down; empty for the whole table"),
  sources: external_exports.array(external_exports.string())
});
function conesDocument(input) {
  const opened = {
    schemaVersion: 1,
    ok: true,
    command: "cones",
    series: input.series,
    sources: [...input.sources]
  };
  if ("cone" in input)
    return {
      ...opened,
      cone: input.cone,
      ratesCPerHour: input.rows.map((row) => row.rateCPerHour),
      rows: [],
      endPoints: input.rows.map((row) => ({
        rateCPerHour: row.rateCPerHour,
        tempC: row.tempC,
        sigmaK: row.sigmaK,
        basis: row.basis,
        confidence: row.confidence,
        extrapolated: row.extrapolated
      }))
    };
  return {
    ...opened,
    cone: null,
    ratesCPerHour: [...input.ratesCPerHour],
    rows: input.rows.map(({ cone, cells }) => ({
      cone,
      cells: cells.map((cell) => cell && { tempC: cell.tempC, confidence: cell.confidence })
    })),
    endPoints: []
  };
}

export {
  conesDocumentSchema,
  conesDocument
};
