import { z } from "zod";
import type { LearnedKiln } from "../../kiln/LearnedKiln.ts";
import { cautionsPiece, findingsPiece } from "./pieces.ts";
import { cautionShape, findingShape, opening } from "./shapes.ts";

const perSecond = z.number().describe("fits these logs; no property of the kiln");

/** The document of `kiln`: what logs teach about a kiln, in canonical units, unrounded. */
export const kilnDocumentSchema = z.strictObject({
  ...opening("kiln"),
  kiln: z.string().nullable().describe("as the records name it"),
  roomC: z.number(),
  ceilingC: z.number().describe("hottest that the balance can hold with everything on"),
  cooling: z.strictObject({
    conductionPerSecond: perSecond,
    radiationM2KPerJ: perSecond,
    lowestC: z.number(),
    highestC: z.number(),
    firings: z.array(z.string()),
  }),
  power: z.strictObject({
    pullKPerSecond: perSecond.describe("power over heat capacity; no property of the kiln"),
    from: z
      .enum(["output", "fastest climb"])
      .describe("with fastest climb it is the least that the kiln can do"),
    firing: z.string(),
  }),
  twoNode: z
    .strictObject({
      pullKPerSecond: perSecond,
      inwardPerSecond: perSecond,
      soakPerSecond: perSecond,
      outwardPerSecond: perSecond,
      radiationM2KPerJ: perSecond,
      lagSeconds: z.number().describe("of the thermocouple and the air around it"),
      rmsK: z.number(),
      firing: z.string(),
    })
    .nullable(),
  reach: z.array(
    z.strictObject({
      tempC: z.number(),
      seenCPerHour: z.number().nullable().describe("fastest climb in any log, over half an hour"),
      climbCPerHour: z.number().describe("at full power; 0 where it cannot climb"),
      fallCPerHour: z.number().describe("by itself, lid shut; positive"),
    }),
  ),
  firings: z.array(
    z.strictObject({
      name: z.string(),
      start: z.string().nullable(),
      roomC: z.number(),
      peakC: z.number(),
      peakAtSeconds: z.number(),
      fallAtQuartzCPerHour: z.number().nullable().describe("at 573 °C, positive"),
      fallAtCristobaliteCPerHour: z.number().nullable().describe("at 226 °C, positive"),
      coolingFrom: z.enum(["output", "shape"]).nullable(),
      openedAtSeconds: z.number().nullable(),
      cooledTo: z.array(
        z.strictObject({
          tempC: z.number(),
          secondsFromPeak: z.number(),
          how: z.enum(["measured", "worked out"]),
        }),
      ),
      pulls: z.array(
        z.strictObject({ lowC: z.number(), highC: z.number(), pullKPerSecond: perSecond }),
      ),
      fullOnFraction: z.number().nullable(),
      noiseK: z.number(),
      energyKWh: z.number().nullable().describe("null without a wattage or an output column"),
      cost: z.number().nullable().describe("null without a tariff"),
    }),
  ),
  findings: z.array(findingShape),
  cautions: z.array(cautionShape),
});

/** What `kiln --json` prints. */
export type KilnDocument = z.infer<typeof kilnDocumentSchema>;

/** A learned kiln as its JSON document. */
export function kilnDocument(learned: LearnedKiln, kiln: string | null): KilnDocument {
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
      pulls: firing.pulls.map((pull) => ({ ...pull })),
    })),
    findings: findingsPiece(learned.findings),
    cautions: cautionsPiece(learned.cautions),
  };
}
