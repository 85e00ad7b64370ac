import { z } from "zod";
import { GivenBodyFile } from "../ware/bodyFormat.ts";

/** A length as a file writes it. */
export const WrittenLength = z
  .union([z.number().nonnegative(), z.string()])
  .describe('millimetres, or with its unit: "0.8 mm", "1/4 in"');

/** A moment as a file writes it. */
export const WrittenMoment = z
  .string()
  .describe(
    'a clock time "09:10", "3:40 pm" or "2026-03-15 09:10", or since the start of the log "+14:05"',
  );

/** Text that is not empty. */
export const Words = z.string().min(1);

/** A thickness of glaze: its unit is never guessed. */
const Thickness = WrittenLength.describe('with its unit: "0.8 mm", "1/32 in"');

/** One reading of a coat, or several of one tile. */
const Coat = z.union([Thickness, z.array(Thickness).min(2)]);

const CountedLine = z.strictObject({
  length: WrittenLength.describe("length of the line; millimetres or with a unit"),
  crossings: z
    .number()
    .nonnegative()
    .multipleOf(0.5)
    .describe("cracks crossed: a touch counts 1, a meeting point of three cracks 1.5"),
  direction: z
    .enum(["along", "across"])
    .optional()
    .describe("for a pattern with a direction: along the throwing lines, or across them"),
});

/** A test piece, as the file writes it. */
export const Trial = z.strictObject({
  piece: Words.describe("the mark on the test piece; each piece has its own in a firing"),
  clay: Words.describe("the clay body"),
  body: GivenBodyFile.optional().describe(
    "kind of body, to compute its fit: earthenware, stoneware cone 6, porcelain cone 10; or one of your own. When left out, that of the ware of the same clay",
  ),
  glaze: Words.describe("the glaze, by your own name"),
  coat: Coat.optional().describe(
    'thickness of the fired glaze: "0.8 mm", or three and more readings [0.7 mm, 0.8 mm, 0.8 mm]',
  ),
  rawCoat: Coat.optional().describe("thickness of the dry coat before firing"),
  wetCoat: Coat.optional().describe(
    "thickness of the wet coat on a surface that does not suck; needs slip and loss",
  ),
  dryMass: z
    .string()
    .optional()
    .describe('dry glaze on an area, "10 g/100 cm2"; needs loss, gives the fired thickness'),
  coatError: z
    .union([z.number().nonnegative(), z.string()])
    .optional()
    .describe(
      'usual error of the coat (one standard deviation): "0.1 mm" or "10 %"; 15 % is taken when left out',
    ),
  rawOverFired: z
    .number()
    .min(1)
    .max(4)
    .optional()
    .describe("dry coat over fired coat, as you measured it; 1.8 is taken when left out"),
  loss: z
    .number()
    .min(0)
    .lt(60)
    .optional()
    .describe("share of the dry glaze that fires away, in percent"),
  firedDensity: z
    .number()
    .min(1.5)
    .max(7)
    .optional()
    .describe("density of the fired glaze [g/cm³]; 2.45 is taken when left out"),
  slip: z.string().optional().describe('density of the slip for wetCoat: "1.45", "65g/50mL"'),
  glazedSides: z.enum(["one", "both"]).describe("one side or both"),
  shape: z
    .enum(["flat tile", "closed wall", "bowl"])
    .optional()
    .describe("flat tile, closed wall (a cup, a ring) or bowl"),
  wall: WrittenLength.optional().describe("thickness of the wall without glaze"),
  size: z
    .strictObject({ length: WrittenLength, width: WrittenLength })
    .optional()
    .describe("length and width of the glazed face; what an uncracked piece needs"),
  place: Words.optional().describe("where it stood in the kiln"),
  crackSpacing: WrittenLength.optional().describe(
    'mean distance between cracks, square across: "6 mm"',
  ),
  spacingRange: z
    .array(WrittenLength)
    .length(2)
    .optional()
    .describe("what crackSpacing may be, 95 in 100: [5.2 mm, 6.9 mm]"),
  spacingFrom: z
    .enum(["ruler", "photo"])
    .optional()
    .describe("what crackSpacing was measured from"),
  lines: z
    .array(CountedLine)
    .min(1)
    .optional()
    .describe("cracks counted along straight lines, instead of crackSpacing"),
  pattern: z
    .enum(["net", "parallel"])
    .optional()
    .describe("how the counted cracks run; net when left out"),
  cracked: z
    .enum(["none", "crackle", "through"])
    .optional()
    .describe("none, crackle (glaze only) or through (the wall as well)"),
  stain: Words.optional().describe("what the cracks were stained with"),
  pings: z
    .union([
      z.strictObject({ count: z.number().int().nonnegative() }),
      z.strictObject({ at: z.array(WrittenMoment).min(1) }),
    ])
    .optional()
    .describe('pings heard from this piece: { count: 12 }, or { at: ["+14:05", "+14:20"] }'),
  note: z.string().optional(),
});
