import { z } from "zod";
import { grainSizeNumber } from "../../crackle/lineIntercept.ts";
import type { CountedCracks, PhotoMeasurement } from "../../photo/PhotoMeasurement.ts";
import { trialLines } from "../../photo/trialEntry.ts";
import { cautionsPiece, findingsPiece } from "./pieces.ts";
import { cautionShape, findingShape, opening } from "./shapes.ts";

const interval = z.strictObject({ low: z.number(), high: z.number() }).describe("95 %");

/** What `measure --json` prints, as a schema. */
export const measureDocumentSchema = z.strictObject({
  ...opening("measure"),
  name: z.string(),
  widthMm: z.number(),
  heightMm: z.number(),
  mmPerPx: z.number(),
  scaleFrom: z.string(),
  choices: z.array(z.strictObject({ what: z.string(), value: z.string(), because: z.string() })),
  cracks: z
    .strictObject({
      pitchMm: z.number().describe("distance from crack to crack, square across"),
      pitchIntervalMm: interval,
      pattern: z.enum(["net", "parallel"]).describe("what the pitch is worked out for"),
      interceptMm: z
        .number()
        .describe("mean length of line from crack to crack, hidden ones allowed for"),
      intervalMm: interval,
      relativeAccuracy: z.number().describe("half the interval over the intercept"),
      grainSizeNumber: z.number().describe("ASTM E112 number of the intercept"),
      crossings: z.int(),
      lengthMm: z.number().describe("of all test lines"),
      testLines: z.int(),
      hiddenShare: z.number().describe("share of cracks likely hidden behind a near neighbour"),
      direction: z
        .strictObject({
          alongDeg: z.number().describe("from the level, clockwise in the picture"),
          alongMm: z.number(),
          acrossMm: z.number(),
          ratio: z.number(),
          isDirectional: z.boolean(),
        })
        .nullable(),
      cellsAcross: z.number(),
      lineWidthPx: z.number(),
      lineWidthMm: z.number(),
      contrast: z.number().describe("how much darker than the ground, as a share"),
      softness: z.number().describe("10 to 90 % edge over the width"),
      checkLines: z.array(
        z.strictObject({
          name: z.enum(["A", "B"]),
          lengthMm: z.number(),
          crossings: z.int(),
          ownCount: z.int().nullable(),
        }),
      ),
    })
    .nullable()
    .describe("null when no crack was found"),
  leastVisibleMm: z.number().describe("narrowest inked crack that would have been seen"),
  linesToRecord: z.array(z.string()).describe("lines of YAML for the trial in the firing record"),
  findings: z.array(findingShape),
  cautions: z.array(cautionShape),
});

/** What `measure --json` prints. */
export type MeasureDocument = z.infer<typeof measureDocumentSchema>;

/** A measured photograph as its JSON document. */
export function measureDocument(measured: PhotoMeasurement): MeasureDocument {
  const { cracks, mmPerPx } = measured;
  return {
    schemaVersion: 1,
    ok: true,
    command: "measure",
    name: measured.name,
    widthMm: measured.widthMm,
    heightMm: measured.heightMm,
    mmPerPx,
    scaleFrom: measured.scaleFrom,
    choices: measured.choices.map((choice) => ({ ...choice })),
    cracks: cracks === null ? null : cracksPiece(cracks, mmPerPx),
    leastVisibleMm: measured.leastVisibleMm,
    linesToRecord: [...trialLines(measured)],
    findings: findingsPiece(measured.findings),
    cautions: cautionsPiece(measured.cautions),
  };
}

function cracksPiece(cracks: CountedCracks, mmPerPx: number): MeasureDocument["cracks"] {
  const { profile, direction, interceptMm } = cracks;
  return {
    pitchMm: cracks.pitchMm,
    pitchIntervalMm: { ...cracks.pitchIntervalMm },
    pattern: cracks.pattern,
    interceptMm,
    intervalMm: { ...cracks.intervalMm },
    relativeAccuracy: cracks.relativeAccuracy,
    grainSizeNumber: grainSizeNumber(interceptMm),
    crossings: cracks.crossings,
    lengthMm: cracks.lengthMm,
    testLines: cracks.testLines,
    hiddenShare: cracks.hiddenShare,
    direction: direction === null ? null : { ...direction },
    cellsAcross: cracks.cellsAcross,
    lineWidthPx: profile.width,
    lineWidthMm: profile.width * mmPerPx,
    contrast: profile.contrast,
    softness: profile.softness,
    checkLines: cracks.checkLines.map(({ name, lengthMm, crossings, ownCount }) => ({
      name,
      lengthMm,
      crossings: crossings.places.length,
      ownCount,
    })),
  };
}
