import { z } from "zod";
import type { GlazeFit } from "../../glaze/glazeFit.ts";

const share = z.number().describe("share of draws, 0 to 1");
const number = z.number();
const standing = z.enum(["speaks for", "open", "speaks against"]);

/** Middle and the 10 and 90 % points of draws. */
const spread = z.strictObject({ low: number, median: number, high: number });
const orNone = spread.nullable().describe("null where too few draws have one");
const strain = spread.describe("length over length; over 0 pulls the glaze");

/** How a glaze fits its body, in canonical units, unrounded. */
export const glazeFitShape = z.strictObject({
  piece: z.strictObject({
    wallMm: number,
    coatMm: number,
    coatSigma: number.describe("one standard deviation as a share of the coat"),
    glazing: z.enum(["both faces", "one face, wall held", "one face, free to bend"]),
    absorptionPercent: number.nullable(),
  }),
  roomC: number,
  runs: number,
  seed: number,
  mismatch: z.strictObject({
    setC: spread,
    strain,
    perK: spread,
    glazePerK: spread,
    bodyPerK: spread,
    silicaStrain: spread,
    bodyTo500PerK: number,
    strainByMeanTo500: number,
    greatest: z.strictObject({ strain, tempC: spread }),
    knownFromC: number,
    knownToC: number,
  }),
  stress: z.strictObject({
    glazeMPa: spread,
    thickBodyMPa: spread,
    underGlazeMPa: spread,
    bareFaceMPa: spread.nullable().describe("null with both faces glazed"),
    bowMm: spread.nullable().describe("over 100 mm; null where the wall cannot bend"),
  }),
  crazing: z.strictObject({
    share,
    standing,
    thresholdMPa: spread,
    overThreshold: spread,
    coatShare: share,
    leastCoatMm: orNone,
    firstPingC: orNone,
  }),
  spacing: z
    .strictObject({
      leastMm: spread,
      meanMm: spread,
      widestMm: spread,
      alongLinesMm: spread,
      lateMeanMm: orNone,
      thickerCoat: z.enum(["closer", "hardly changes", "wider"]).nullable(),
      fineShare: share,
      wideShare: share,
    })
    .nullable()
    .describe("over the draws that crack; null where too few do"),
  through: z.strictObject({
    pullMPaRootM: spread,
    bodyToughnessMPaRootM: spread,
    toughnessSource: z.string(),
    overToughness: spread,
    share,
    standing: standing.describe("a ranking, never a verdict"),
    stopsAtMm: orNone,
    reasons: z.array(z.strictObject({ direction: z.enum(["for", "against"]), text: z.string() })),
    bodyPullMPa: spread,
    bodyPullOverRupture: spread,
    rimPullMPa: spread,
    rimPullOverRupture: spread,
  }),
  delayed: z.strictObject({
    growth: spread,
    growthSource: z.string(),
    addedMPa: spread,
    moistureShare: share,
    moistureYears: orNone,
    slowShare: share,
    slowFromMm: orNone,
  }),
  measured: z.strictObject({
    fits: z.array(
      z.strictObject({
        from: z.enum(["crack spacing", "cracks seen", "no cracks", "first ping"]),
        coatMm: number,
        holds: z.enum(["about", "at least", "at most"]),
        mismatch: strain,
        mismatchPerK: spread,
        glazePerK: spread,
        agrees: z.boolean(),
        overComputed: share,
        impossible: share,
        pitchOverCoat: number.nullable(),
        ping: z
          .strictObject({
            onsetC: number,
            use: z.enum([
              "usable",
              "near the quartz inversion",
              "near the cristobalite inversion",
              "kiln was opened",
            ]),
          })
          .nullable(),
      }),
    ),
    leftOut: z.array(
      z.strictObject({
        onsetC: number,
        why: z.enum(["kiln was opened", "not between room and set point"]),
      }),
    ),
  }),
  twoCoats: z.array(
    z.strictObject({
      coatsMm: z.tuple([number, number]),
      ratio: spread,
      agree: z.boolean(),
    }),
  ),
  limits: z.array(z.string()),
});

/** The fit of a glaze as it stands in a document. */
export function glazeFitPiece(fit: GlazeFit): z.infer<typeof glazeFitShape> {
  return {
    ...fit,
    through: { ...fit.through, reasons: fit.through.reasons.map((each) => ({ ...each })) },
    measured: {
      fits: fit.measured.fits.map((each) => ({ ...each })),
      leftOut: fit.measured.leftOut.map((each) => ({ ...each })),
    },
    twoCoats: fit.twoCoats.map((each) => ({ ...each, coatsMm: [...each.coatsMm] })),
    limits: [...fit.limits],
  };
}
