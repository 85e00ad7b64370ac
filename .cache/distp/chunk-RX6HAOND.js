import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  strainsPiece
} from "./chunk-YDD56ZKU.js";
import {
  bodiesPiece,
  cautionsPiece,
  crossingsPiece,
  findingsPiece,
  heatworkPiece
} from "./chunk-DQZAGW2O.js";
import {
  bodyShape,
  cautionShape,
  crossingShape,
  findingShape,
  heatworkShape,
  opening,
  ownKilnShape,
  strainShape
} from "./chunk-RLEK6R44.js";
import {
  pieceOf,
  topEndSeconds
} from "./chunk-GKWIKIYP.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/reports/documents/ownKilnPiece.ts
function ownKilnPiece(own) {
  const { firing, segments, stall, powerFrom, heatwork } = own;
  return {
    segments: segments.map(({ askedCPerHour, ...went }) => ({
      ...went,
      askedCPerHour: askedCPerHour === "free" ? null : askedCPerHour
    })),
    stall,
    endSeconds: firing.endSeconds,
    cooledTo: firing.cooledTo.map(({ tempC, seconds }) => ({ tempC, seconds })),
    powerFrom,
    energyKWh: firing.energyKWh,
    cost: firing.cost,
    heatwork: heatworkPiece(heatwork)
  };
}

// src/core/reports/documents/draftDocument.ts
var draftDocumentSchema = external_exports.strictObject({
  ...opening("draft"),
  title: external_exports.string(),
  coneWanted: external_exports.string().nullable(),
  start: external_exports.string().nullable().describe("wall time of the start, without a zone"),
  startC: external_exports.number(),
  timeline: external_exports.array(
    external_exports.strictObject({
      segment: external_exports.int().describe("index of the segment, from 0"),
      kind: external_exports.enum(["ramp", "hold"]),
      fromC: external_exports.number(),
      toC: external_exports.number(),
      rateCPerHour: external_exports.number(),
      assumedRate: external_exports.boolean().describe("the file says free; the rate is taken for the kiln"),
      startSeconds: external_exports.number(),
      endSeconds: external_exports.number()
    })
  ),
  totalSeconds: external_exports.number(),
  heatwork: heatworkShape,
  coneFalls: external_exports.strictObject({
    atSeconds: external_exports.number().nullable().describe("null when it does not fall"),
    topHoldEndsSeconds: external_exports.number().nullable()
  }).nullable().describe("when the cone wanted falls by the plan; null without one that is modelled"),
  crossings: external_exports.array(crossingShape),
  strains: external_exports.array(strainShape).describe("one piece"),
  energyKWh: external_exports.number().nullable().describe("null while no kiln is known"),
  onYourKiln: ownKilnShape.nullable().describe("null while no kiln is known"),
  mending: external_exports.strictObject({
    steps: external_exports.array(
      external_exports.strictObject({
        topic: external_exports.string(),
        reason: external_exports.string(),
        did: external_exports.string(),
        costSeconds: external_exports.number(),
        costKWh: external_exports.number().nullable()
      })
    ),
    limits: external_exports.array(external_exports.string()).describe("what the kiln must do, and what cannot be mended"),
    costSeconds: external_exports.number(),
    costKWh: external_exports.number().nullable()
  }).nullable().describe("null when the schedule was not mended"),
  assumptions: external_exports.array(external_exports.string()),
  bodies: external_exports.array(bodyShape).describe("clay bodies that stress was computed with, each once"),
  findings: external_exports.array(findingShape),
  cautions: external_exports.array(cautionShape)
});
function draftDocument(draft, repair = null) {
  const { schedule, expansion } = draft;
  const piece = pieceOf(schedule.ware);
  return {
    schemaVersion: 1,
    ok: true,
    command: "draft",
    title: schedule.title,
    coneWanted: schedule.cone,
    start: draft.start,
    startC: schedule.startC,
    timeline: expansion.timeline.map((row) => ({
      segment: row.segment,
      kind: row.kind,
      fromC: row.fromC,
      toC: row.toC,
      rateCPerHour: row.rateCPerHour,
      assumedRate: row.assumedRate,
      startSeconds: row.startSeconds,
      endSeconds: row.endSeconds
    })),
    totalSeconds: expansion.timeline.at(-1)?.endSeconds ?? 0,
    heatwork: heatworkPiece(draft.heatwork),
    coneFalls: coneFallsPiece(draft),
    crossings: crossingsPiece(draft.crossings),
    strains: strainsPiece(draft.strains),
    energyKWh: draft.energyKWh,
    onYourKiln: draft.own && ownKilnPiece(draft.own),
    mending: repair && {
      steps: repair.steps.map(({ topic, reason, did, costSeconds, costKWh }) => ({
        topic,
        reason,
        did,
        costSeconds,
        costKWh
      })),
      limits: [...repair.limits],
      costSeconds: repair.costSeconds,
      costKWh: repair.costKWh
    },
    assumptions: [...expansion.assumptions],
    bodies: bodiesPiece([piece.ware]),
    findings: findingsPiece(draft.findings),
    cautions: cautionsPiece(draft.cautions)
  };
}
function coneFallsPiece({ schedule, expansion, heatwork }) {
  const state = heatwork.cones.find(({ cone }) => cone === schedule.cone);
  if (state === void 0) return null;
  return {
    atSeconds: state.downAtSeconds,
    topHoldEndsSeconds: topEndSeconds(schedule, expansion)
  };
}

export {
  draftDocumentSchema,
  draftDocument
};
