import { z } from "zod";
import type { DocumentFormat } from "../document/readDocument.ts";
import { GivenBodyFile } from "../ware/bodyFormat.ts";

/** Most lines of a recipe, oxides of an analysis, or materials of one's own. */
const MOST_LINES = 60;

const Quantity = z.union([z.number(), z.string().min(1)]);
const Words = z.string().min(1).max(200);

const Amounts = z
  .record(z.string(), z.number().nonnegative())
  .refine((amounts) => Object.keys(amounts).length <= MOST_LINES, {
    error: `at most ${MOST_LINES} oxides`,
  });

const Parts = z.union([
  z.number().positive(),
  z.strictObject({
    parts: z.number().positive().describe("Parts by weight."),
    calcined: z.boolean().optional().describe("Weighed calcined: its loss is fired off already."),
  }),
]);

const Lines = z
  .record(z.string(), Parts)
  .refine((lines) => Object.keys(lines).length <= MOST_LINES, {
    error: `at most ${MOST_LINES} materials`,
  });

const OwnMaterial = z
  .strictObject({
    oxides: Amounts.describe("Its analysis, weight per cent by oxide."),
    loi: z
      .number()
      .min(-10)
      .max(1000)
      .optional()
      .describe("Loss on ignition, per cent of the weight; 0 when left out."),
    basis: z
      .enum(["as received", "calcined"])
      .optional()
      .describe(
        "as received: oxides and loss make 100; calcined: the oxides alone do. As received when left out.",
      ),
    density: z.number().min(0.5).max(12).optional().describe("Density of the solid, g/cm³."),
    source: Words.describe("Where the analysis comes from, and when."),
  })
  .describe("A material of your own: oxides, loi and source.");

const Spread = (unit: string) =>
  z.union([
    z.number().positive(),
    z.strictObject({
      value: z.number().positive().describe(`The value [${unit}].`),
      low: z.number().positive().describe("One in ten lies below."),
      high: z.number().positive().describe("One in ten lies above."),
    }),
  ]);

const Cracks = z.strictObject({
  cracked: z.boolean().optional().describe("Whether the glaze cracked; left out: nobody looked."),
  spacing: z
    .strictObject({
      mean: Quantity.describe("Mean distance: millimetres, or like 1/4 in."),
      low: Quantity.describe("Nine in ten say it is more."),
      high: Quantity.describe("Nine in ten say it is less."),
      counted: z
        .enum(["along lines", "pitch"])
        .describe("along lines: lengths between cracks along random lines; pitch: size of cells."),
    })
    .optional(),
  pings: z
    .array(
      z.strictObject({
        coat: Quantity.describe('Fired coat of the piece that pinged, with its unit: "0.6 mm".'),
        at: Quantity.describe('When the first ping was heard: °C, or like "420 F".'),
        plusMinus: z.number().positive().describe("One standard deviation of that, kelvin."),
        kiln: z.enum(["shut", "opened", "not noted"]).describe("The kiln at that moment."),
      }),
    )
    .max(20)
    .optional()
    .describe("First pings on cooling, a line each."),
});

const LeachTestFile = z.strictObject({
  ware: z
    .enum(["cup", "dish", "cooking"])
    .describe("cup: cup, mug or pitcher; dish: plate, bowl or jar; cooking: to cook or bake in."),
  depth: Quantity.describe("From the lowest place inside to the rim: millimetres."),
  holds: Quantity.describe("What it holds: litres, or like 300 mL."),
  lead: Words.optional().describe('Lead found: "0.42 mg/L", "0.05 mg/dm2", "<0.02 mg/L".'),
  cadmium: Words.optional().describe("Cadmium found, in the same way."),
  source: Words.describe("Which laboratory, and when."),
});

/**
 * A glaze file, as YAML or JSON; the only definition of its format.
 * Names and quantities are not yet understood here: `parseGlaze` gives them meaning.
 */
export const GlazeFile = z
  .strictObject({
    formatVersion: z.literal(1).describe("Version of this format."),
    title: Words.describe("Name of the glaze."),
    invented: z.literal(true).optional().describe("true when it was made up as an example."),
    basis: z
      .enum(["wt %", "mol %", "moles"])
      .optional()
      .describe("What the numbers under oxides are; moles may have any sum, as a unity formula."),
    oxides: Amounts.optional().describe("The fired glaze by oxide; needs basis."),
    recipe: Lines.optional().describe("Material and parts by weight; the base, meant to make 100."),
    additions: Lines.optional().describe("Material and parts on top of 100 of the base."),
    materials: z
      .record(z.string(), OwnMaterial)
      .optional()
      .describe("Analyses of your own materials, by the name used in the recipe."),
    cone: z.string().min(1).optional().describe('Cone it is fired to, in quotes: "6".'),
    crackle: z.boolean().optional().describe("The glaze is meant to crackle."),
    expansion: z
      .strictObject({
        value: z.number().describe("Mean linear expansion per kelvin: 7.2e-6."),
        plusMinus: z.number().positive().optional().describe("One standard deviation, per kelvin."),
        from: z.number().optional().describe("Lower end of the range, °C; 20 when left out."),
        to: z.number().describe("Upper end of the range, °C."),
        how: Words.describe("How it was measured, and on what."),
      })
      .optional()
      .describe("Expansion as measured; it then rules over the computed one."),
    setPoint: z
      .strictObject({
        value: Quantity.describe('Set point: °C, or like "1080 F".'),
        plusMinus: z.number().positive().optional().describe("One standard deviation, kelvin."),
        how: Words.describe("How it was found."),
      })
      .optional()
      .describe("Where the glaze stops flowing on cooling, as measured."),
    youngGPa: Spread("GPa").optional().describe("Stiffness of the fired glaze, GPa."),
    poisson: Spread("1").optional().describe("Poisson's ratio of the fired glaze."),
    toughness: Spread("MPa√m").optional().describe("Toughness of the fired glaze, MPa√m."),
    firedDensity: Spread("g/cm³").optional().describe("Density of the fired glaze, g/cm³."),
    solidsDensity: z
      .number()
      .min(1)
      .max(8)
      .optional()
      .describe("Density of the dry powder's solids, g/cm³; worked out when left out."),
    body: GivenBodyFile.optional().describe(
      "The body under it: stoneware cone 6, or a group of its properties.",
    ),
    absorption: z
      .number()
      .min(0)
      .max(40)
      .optional()
      .describe("Water that the fired body takes up, per cent."),
    wall: Quantity.optional().describe("Thickness of the wall: millimetres, or like 1/4 in."),
    coat: Quantity.optional().describe('Thickness of the fired glaze, with its unit: "0.6 mm".'),
    glazedSides: z.enum(["one", "both"]).optional().describe("one side or both."),
    shape: z
      .enum(["closed", "flat"])
      .optional()
      .describe("closed, as a mug, cannot bend; flat, as a tile, can. Closed when left out."),
    leachTests: z
      .array(LeachTestFile)
      .max(20)
      .optional()
      .describe("What a laboratory found given off by fired pieces, a test each."),
    cracks: Cracks.optional().describe("What was seen and heard of cracks on this piece."),
    notes: z.string().max(4000).optional().describe("Anything else to know."),
  })
  .describe("A glaze.");

/** A glaze file whose shape is right. */
export type GlazeFile = z.infer<typeof GlazeFile>;

/** A glaze as a document: its shape, and the words of its problems. */
export const GLAZE_DOCUMENT: DocumentFormat = {
  room: "glaze",
  thing: "a glaze",
  neededKeys: "formatVersion, title, and recipe or oxides with their basis",
  example: "one of the shipped glazes, logs/glaze-fitting.yaml",
  schema: GlazeFile,
  missingCode: "glaze/missing-key",
  otherWords: new Map([
    ["name", "title"],
    ["version", "formatVersion"],
    ["analysis", "oxides"],
    ["ingredients", "recipe"],
    ["batch", "recipe"],
    ["colourants", "additions"],
    ["colorants", "additions"],
    ["extras", "additions"],
    ["cte", "expansion"],
    ["coe", "expansion"],
    ["alpha", "expansion"],
    ["unit", "basis"],
    ["units", "basis"],
    ["lossonignition", "loi"],
    ["loss", "loi"],
    ["amount", "parts"],
    ["percent", "parts"],
    ["clay", "body"],
    ["sides", "glazedSides"],
    ["crazing", "cracks"],
    ["thickness", "coat"],
    ["stiffness", "youngGPa"],
  ]),
  expected: new Map([
    ["formatVersion", "formatVersion: 1"],
    ["title", "a name of 1 to 200 characters"],
    ["basis", "basis: wt %, mol % or moles for oxides; as received or calcined for a material"],
    ["oxides", "oxide and amount, a line each: SiO2: 62.5"],
    ["recipe", "material and parts, a line each: quartz: 25"],
    ["additions", "material and parts, a line each: red iron oxide: 2"],
    ["loi", "a number of per cent, below 100"],
    ["source", "where the analysis comes from, in words"],
    ["body", "a body: stoneware cone 6, or a group of its properties"],
    ["crackle", "true or false"],
  ]),
  quotedKeys: ["cone"],
  shorten: new Map(),
};
