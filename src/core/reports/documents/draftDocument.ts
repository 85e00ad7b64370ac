import { z } from "zod";
import { topEndSeconds } from "../../schedule/coneAim.ts";
import { pieceOf } from "../../schedule/coolingLimits.ts";
import type { Draft } from "../../schedule/draftSchedule.ts";
import type { OwnKilnFiring } from "../../schedule/ownKilnFiring.ts";
import type { Repair } from "../../schedule/repairSchedule.ts";
import {
  bodiesPiece,
  cautionsPiece,
  crossingsPiece,
  findingsPiece,
  heatworkPiece,
  strainsPiece,
} from "./pieces.ts";
import {
  bodyShape,
  cautionShape,
  crossingShape,
  findingShape,
  heatworkShape,
  opening,
  ownKilnShape,
  strainShape,
} from "./shapes.ts";

/** The document of `draft`: one schedule laid out and judged, in canonical units, unrounded. */
export const draftDocumentSchema = z.strictObject({
  ...opening("draft"),
  title: z.string(),
  coneWanted: z.string().nullable(),
  start: z.string().nullable().describe("wall time of the start, without a zone"),
  startC: z.number(),
  timeline: z.array(
    z.strictObject({
      segment: z.int().describe("index of the segment, from 0"),
      kind: z.enum(["ramp", "hold"]),
      fromC: z.number(),
      toC: z.number(),
      rateCPerHour: z.number(),
      assumedRate: z.boolean().describe("the file says free; the rate is taken for the kiln"),
      startSeconds: z.number(),
      endSeconds: z.number(),
    }),
  ),
  totalSeconds: z.number(),
  heatwork: heatworkShape,
  coneFalls: z
    .strictObject({
      atSeconds: z.number().nullable().describe("null when it does not fall"),
      topHoldEndsSeconds: z.number().nullable(),
    })
    .nullable()
    .describe("when the cone wanted falls by the plan; null without one that is modelled"),
  crossings: z.array(crossingShape),
  strains: z.array(strainShape).describe("one piece"),
  energyKWh: z.number().nullable().describe("null while no kiln is known"),
  onYourKiln: ownKilnShape.nullable().describe("null while no kiln is known"),
  mending: z
    .strictObject({
      steps: z.array(
        z.strictObject({
          topic: z.string(),
          reason: z.string(),
          did: z.string(),
          costSeconds: z.number(),
          costKWh: z.number().nullable(),
        }),
      ),
      limits: z.array(z.string()).describe("what the kiln must do, and what cannot be mended"),
      costSeconds: z.number(),
      costKWh: z.number().nullable(),
    })
    .nullable()
    .describe("null when the schedule was not mended"),
  assumptions: z.array(z.string()),
  bodies: z.array(bodyShape).describe("clay bodies that stress was computed with, each once"),
  findings: z.array(findingShape),
  cautions: z.array(cautionShape),
});

/** What `draft --json` prints. */
export type DraftDocument = z.infer<typeof draftDocumentSchema>;

/** A drafted firing as its JSON document. */
export function draftDocument(draft: Draft, repair: Repair | null = null): DraftDocument {
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
      endSeconds: row.endSeconds,
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
        costKWh,
      })),
      limits: [...repair.limits],
      costSeconds: repair.costSeconds,
      costKWh: repair.costKWh,
    },
    assumptions: [...expansion.assumptions],
    bodies: bodiesPiece([piece.ware]),
    findings: findingsPiece(draft.findings),
    cautions: cautionsPiece(draft.cautions),
  };
}

function coneFallsPiece({ schedule, expansion, heatwork }: Draft): DraftDocument["coneFalls"] {
  const state = heatwork.cones.find(({ cone }) => cone === schedule.cone);
  if (state === undefined) return null;
  return {
    atSeconds: state.downAtSeconds,
    topHoldEndsSeconds: topEndSeconds(schedule, expansion),
  };
}

/** A prediction for the user's own kiln as its part of a document. */
function ownKilnPiece(own: OwnKilnFiring): z.infer<typeof ownKilnShape> {
  const { firing, segments, stall, powerFrom, heatwork } = own;
  return {
    segments: segments.map(({ askedCPerHour, ...went }) => ({
      ...went,
      askedCPerHour: askedCPerHour === "free" ? null : askedCPerHour,
    })),
    stall,
    endSeconds: firing.endSeconds,
    cooledTo: firing.cooledTo.map(({ tempC, seconds }) => ({ tempC, seconds })),
    powerFrom,
    energyKWh: firing.energyKWh,
    cost: firing.cost,
    heatwork: heatworkPiece(heatwork),
  };
}
