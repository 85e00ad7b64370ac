import { z } from "zod";
import type { Comparison } from "../../firing/Comparison.ts";
import { cautionsPiece } from "./pieces.ts";
import { cautionShape, opening } from "./shapes.ts";

const coolingShape = z.strictObject({
  meanCPerHour: z.number().nullable(),
  fastestCPerHour: z.number().nullable(),
});

/** The document of `compare`: firings in the order given, in canonical units, unrounded. */
export const comparisonDocumentSchema = z.strictObject({
  ...opening("compare"),
  firings: z.array(
    z.strictObject({
      title: z.string(),
      zone: z.string().describe("the hottest thermocouple; every number is from it"),
      peakC: z.number(),
      coneLabel: z.string(),
      coneIndex: z.number().nullable().describe("whole cones with fraction; for differences only"),
      sigmaCones: z.number().nullable(),
      lastHundredCPerHour: z.number().nullable(),
      secondsWithinFiveOfPeak: z.number(),
      secondsAbove1100C: z.number(),
      quartzCooling: coolingShape,
      cristobaliteCooling: coolingShape,
      lastReadingC: z.number(),
      totalSeconds: z.number(),
      warnings: z.int(),
    }),
  ),
  cautions: z.array(cautionShape),
});

/** What `compare --json` prints. */
export type ComparisonDocument = z.infer<typeof comparisonDocumentSchema>;

/** Several firings side by side as their JSON document; Curves are left out. */
export function comparisonDocument(comparison: Comparison): ComparisonDocument {
  return {
    schemaVersion: 1,
    ok: true,
    command: "compare",
    firings: comparison.firings.map((firing) => ({
      title: firing.title,
      zone: firing.zone,
      peakC: firing.peakC,
      coneLabel: firing.coneLabel,
      coneIndex: firing.coneIndex,
      sigmaCones: firing.sigmaCones,
      lastHundredCPerHour: firing.lastHundredCPerHour,
      secondsWithinFiveOfPeak: firing.secondsWithinFiveOfPeak,
      secondsAbove1100C: firing.secondsAbove1100C,
      quartzCooling: { ...firing.quartzCooling },
      cristobaliteCooling: { ...firing.cristobaliteCooling },
      lastReadingC: firing.lastReadingC,
      totalSeconds: firing.totalSeconds,
      warnings: firing.warnings,
    })),
    cautions: cautionsPiece(comparison.cautions),
  };
}
