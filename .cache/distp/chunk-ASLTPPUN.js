import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  cautionsPiece,
  findingsPiece
} from "./chunk-DQZAGW2O.js";
import {
  cautionShape,
  findingShape,
  opening
} from "./chunk-RLEK6R44.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/reports/documents/kilnDocument.ts
var perSecond = external_exports.number().describe("fits these logs; no property of the kiln");
var kilnDocumentSchema = external_exports.strictObject({
  ...opening("kiln"),
  kiln: external_exports.string().nullable().describe("as the records name it"),
  roomC: external_exports.number(),
  ceilingC: external_exports.number().describe("hottest that the balance can hold with everything on"),
  cooling: external_exports.strictObject({
    conductionPerSecond: perSecond,
    radiationM2KPerJ: perSecond,
    lowestC: external_exports.number(),
    highestC: external_exports.number(),
    firings: external_exports.array(external_exports.string())
  }),
  power: external_exports.strictObject({
    pullKPerSecond: perSecond.describe("power over heat capacity; no property of the kiln"),
    from: external_exports.enum(["output", "fastest climb"]).describe("with fastest climb it is the least that the kiln can do"),
    firing: external_exports.string()
  }),
  twoNode: external_exports.strictObject({
    pullKPerSecond: perSecond,
    inwardPerSecond: perSecond,
    soakPerSecond: perSecond,
    outwardPerSecond: perSecond,
    radiationM2KPerJ: perSecond,
    lagSeconds: external_exports.number().describe("of the thermocouple and the air around it"),
    rmsK: external_exports.number(),
    firing: external_exports.string()
  }).nullable(),
  reach: external_exports.array(
    external_exports.strictObject({
      tempC: external_exports.number(),
      seenCPerHour: external_exports.number().nullable().describe("fastest climb in any log, over half an hour"),
      climbCPerHour: external_exports.number().describe("at full power; 0 where it cannot climb"),
      fallCPerHour: external_exports.number().describe("by itself, lid shut; positive")
    })
  ),
  firings: external_exports.array(
    external_exports.strictObject({
      name: external_exports.string(),
      start: external_exports.string().nullable(),
      roomC: external_exports.number(),
      peakC: external_exports.number(),
      peakAtSeconds: external_exports.number(),
      fallAtQuartzCPerHour: external_exports.number().nullable().describe("at 573 \xB0C, positive"),
      fallAtCristobaliteCPerHour: external_exports.number().nullable().describe("at 226 \xB0C, positive"),
      coolingFrom: external_exports.enum(["output", "shape"]).nullable(),
      openedAtSeconds: external_exports.number().nullable(),
      cooledTo: external_exports.array(
        external_exports.strictObject({
          tempC: external_exports.number(),
          secondsFromPeak: external_exports.number(),
          how: external_exports.enum(["measured", "worked out"])
        })
      ),
      pulls: external_exports.array(
        external_exports.strictObject({ lowC: external_exports.number(), highC: external_exports.number(), pullKPerSecond: perSecond })
      ),
      fullOnFraction: external_exports.number().nullable(),
      noiseK: external_exports.number(),
      energyKWh: external_exports.number().nullable().describe("null without a wattage or an output column"),
      cost: external_exports.number().nullable().describe("null without a tariff")
    })
  ),
  findings: external_exports.array(findingShape),
  cautions: external_exports.array(cautionShape)
});
function kilnDocument(learned, kiln) {
  const { cooling, power, twoNode } = learned;
  return {
    schemaVersion: 1,
    ok: true,
    command: "kiln",
    kiln,
    roomC: learned.roomC,
    ceilingC: learned.ceilingC,
    cooling: { ...cooling, firings: [...cooling.firings] },
    power: { ...power },
    twoNode: twoNode === null ? null : { ...twoNode },
    reach: learned.reach.map((row) => ({ ...row })),
    firings: learned.firings.map((firing) => ({
      ...firing,
      cooledTo: firing.cooledTo.map((each) => ({ ...each })),
      pulls: firing.pulls.map((pull) => ({ ...pull }))
    })),
    findings: findingsPiece(learned.findings),
    cautions: cautionsPiece(learned.cautions)
  };
}

export {
  kilnDocumentSchema,
  kilnDocument
};
