import { z } from "zod";
import type { Problem } from "../../problem.ts";
import { type Alignment, AT_PEAK, linedUp } from "../../review/alignment.ts";
import type { ComparedFiring, Comparison, ComparisonPart } from "../../review/compareFirings.ts";
import type { FiringStudy } from "../../trials/FiringStudy.ts";
import { cautionsPiece, problemDocument, problemsShape } from "./pieces.ts";
import { reviewDocumentSchema } from "./reviewDocument.ts";
import { cautionShape, opening } from "./shapes.ts";
import { trialsPiece } from "./trialsPiece.ts";
import { trialsShape } from "./trialsShape.ts";

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
  alignment: z
    .strictObject({
      at: z.enum(["peak", "start", "rising", "falling"]),
      tempC: z.number().nullable(),
      secondsFromPeak: z
        .array(z.number().nullable())
        .describe("hour 0 of each firing; null where its log never comes there"),
    })
    .describe("where the firings are laid over each other in charts"),
  base: z.int().describe("place, from 0, of the firing that the others are held against"),
  study: trialsShape
    .nullable()
    .describe("what differed and what the trial tiles tell; null when it was not looked at"),
  thermocoupleShifts: z
    .array(
      z.strictObject({
        zone: z.string(),
        shiftK: z.number().describe("reads more than the mean of the others, against before"),
        fromC: z.number(),
        toC: z.number(),
      }),
    )
    .describe("zones towards one another, from the first firing to the last; differences only"),
  cautions: z.array(cautionShape),
});

/** What `compare --json` prints. */
export type ComparisonDocument = z.infer<typeof comparisonDocumentSchema>;

/** Several firings side by side as their JSON document; Curves are left out. */
export function comparisonDocument(
  comparison: Comparison,
  {
    study = null,
    alignment = AT_PEAK,
    base = 0,
  }: {
    readonly study?: FiringStudy | null;
    readonly alignment?: Alignment;
    readonly base?: number;
  } = {},
): ComparisonDocument {
  return {
    schemaVersion: 1,
    ok: true,
    command: "compare",
    firings: comparison.firings.map(comparedFiringPiece),
    thermocoupleShifts: comparison.thermocoupleShifts.map((shift) => ({ ...shift })),
    alignment: {
      at: alignment.at,
      tempC: "tempC" in alignment ? alignment.tempC : null,
      secondsFromPeak: comparison.firings.map(
        (firing) => linedUp(firing, alignment)?.secondsFromPeak ?? null,
      ),
    },
    base,
    study: study && trialsPiece(study),
    cautions: cautionsPiece(onceEach([...comparison.cautions, ...(study?.cautions ?? [])])),
  };
}

function onceEach(cautions: Comparison["cautions"]): Comparison["cautions"] {
  return cautions.filter(
    ({ text }, index) => cautions.findIndex((other) => other.text === text) === index,
  );
}

/** One firing's column of a comparison as it stands in a document. */
function comparedFiringPiece(firing: ComparedFiring): ComparisonDocument["firings"][number] {
  return {
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
  };
}

/** The line of a log that could not be read, among the lines of `--json-lines`. */
const unreadLogSchema = z.strictObject({
  schemaVersion: z.literal(1),
  ok: z.literal(false),
  log: z.strictObject({
    name: z.string().describe("file name without its folder"),
    path: z.string().describe("as it was given"),
  }),
  problems: problemsShape,
});

/** A line of `review --json-lines`: the document of a firing, or why a log could not be read. */
export const reviewLineSchema = z.union([reviewDocumentSchema, unreadLogSchema]);

const comparedLineSchema = z.strictObject({
  ...opening("compare"),
  log: z.strictObject({ name: z.string().describe("file name without its folder") }),
  firing: comparisonDocumentSchema.shape.firings.element,
});

const closingLineSchema = z
  .strictObject({
    ...opening("compare"),
    compared: z.int().describe("firings in the lines above"),
    thermocoupleShifts: comparisonDocumentSchema.shape.thermocoupleShifts,
    cautions: comparisonDocumentSchema.shape.cautions,
  })
  .describe("the last line: what holds for all of them");

/** A line of `compare --json-lines`: one a firing, then one for all. */
export const compareLineSchema = z.union([comparedLineSchema, closingLineSchema, unreadLogSchema]);

/** Why a log could not be read, as a line among others; at least one problem. */
export function unreadLogLine(
  log: { readonly name: string; readonly path: string },
  problems: readonly Problem[],
): z.infer<typeof unreadLogSchema> {
  const { schemaVersion, ok, problems: told } = problemDocument(problems);
  return { schemaVersion, ok, log: { name: log.name, path: log.path }, problems: told };
}

/** One firing of a comparison as a line. */
export function comparedLine({ name, firing }: ComparisonPart): z.infer<typeof comparedLineSchema> {
  return {
    schemaVersion: 1,
    ok: true,
    command: "compare",
    log: { name },
    firing: comparedFiringPiece(firing),
  };
}

/** What holds for all firings of a comparison, as its last line. */
export function comparisonLine(comparison: Comparison): z.infer<typeof closingLineSchema> {
  const { thermocoupleShifts, cautions } = comparisonDocument(comparison);
  return {
    schemaVersion: 1,
    ok: true,
    command: "compare",
    compared: comparison.firings.length,
    thermocoupleShifts,
    cautions,
  };
}
