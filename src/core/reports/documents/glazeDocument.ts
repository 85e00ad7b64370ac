import { z } from "zod";
import type { LeachTest } from "../../glaze/Glaze.ts";
import { leachSheet } from "../../glaze/glazeFindings.ts";
import { compareGlazes } from "../../glaze/glazeSheet.ts";
import type { GlazeWork } from "../../glaze/glazeWork.ts";
import {
  mapAmounts,
  OXIDES,
  type Oxide,
  type OxideAmounts,
  oxideMass,
} from "../../glaze/oxides.ts";
import type { Property } from "../../ware/Ware.ts";
import { glazeFitPiece, glazeFitShape } from "./glazeFitShape.ts";
import { cautionsPiece, findingsPiece } from "./pieces.ts";
import { cautionShape, findingShape, opening } from "./shapes.ts";

const amounts = (of: string) =>
  z.partialRecord(z.enum(OXIDES), z.number()).describe(`by oxide, ${of}`);
const number = z.number();
const perK = z.number().describe("1/K");

const propertyShape = z.strictObject({
  value: number,
  low: number.describe("10 % point"),
  high: number.describe("90 % point"),
  source: z.string(),
});

const outsideShape = z.array(
  z.strictObject({ oxide: z.string(), molPercent: number, least: number, most: number }),
);

const batchShape = z.strictObject({
  wantedG: number.nullable(),
  baseSum: number.describe("parts as written; meant to be 100"),
  additionsSum: number,
  totalForBaseG: number.nullable(),
  rows: z.array(
    z.strictObject({
      name: z.string(),
      part: z.enum(["base", "addition"]),
      calcined: z.boolean(),
      formula: z.string().nullable().describe("ideal mineral it is counted as; null for your own"),
      lossFraction: number.describe("of the raw material, in the fire"),
      parts: number,
      percentOfBase: number,
      percentOfTotal: number,
      gramsForBase: number.nullable(),
      gramsForTotal: number.nullable(),
      swappedParts: number.nullable().describe("parts of the other form, raw or calcined"),
    }),
  ),
});

const slipShape = z.strictObject({
  solidGPerCm3: number,
  solidFrom: z.enum(["yours", "worked out", "assumed"]),
  unknownMaterials: z.array(z.string()),
  dryG: z.array(number).describe("dry masses that waterG answers, in order"),
  rows: z.array(
    z.strictObject({
      slipGPerCm3: number,
      dryGPerLitre: number,
      waterGPerLitre: number,
      waterG: z.array(number),
    }),
  ),
  bucket: z.strictObject({ litres: number, dryG: number, waterG: number }).nullable(),
});

const coatShape = z.strictObject({
  lossFraction: number.nullable().describe("null without a recipe; 0 was counted"),
  firedGPerCm3: number,
  weighed: z
    .strictObject({ dryGPerCm2: number, firedMm: number, lowMm: number, highMm: number })
    .nullable(),
  wanted: z.strictObject({ firedMm: number, dryGPerCm2: number }).nullable(),
});

const leachShape = z.strictObject({
  ware: z.strictObject({
    use: z.enum(["cup", "dish", "cooking"]),
    depthMm: number,
    litres: number,
  }),
  source: z.string(),
  rows: z.array(
    z.strictObject({
      law: z.enum(["EU", "US"]),
      metal: z.enum(["lead", "cadmium"]),
      most: number,
      mostUnit: z.enum(["mg/L", "mg/dm²"]),
      kind: z.string().describe("the law's own kind of ware"),
      found: number,
      foundUnit: z.enum(["mg/L", "mg/dm²"]),
      isBelow: z.boolean().describe("less than found"),
      stands: z.enum(["under", "over", "open"]).describe("of this piece only"),
    }),
  ),
});

const glazeShape = z.strictObject({
  name: z.string(),
  invented: z.boolean(),
  cone: z.string().nullable(),
  crackle: z.boolean(),
  molPercent: amounts("mol %"),
  wtPercent: amounts("wt %"),
  molarMasses: amounts("g/mol as used"),
  unity: z
    .strictObject({
      moles: amounts("moles for one mole of flux"),
      alkaliShare: number,
      silicaToAlumina: number.nullable(),
    })
    .nullable(),
  lossFraction: number.nullable().describe("of the dry batch; null without a recipe"),
  expansion: z.strictObject({
    meanPerK: perK,
    sigmaPerK: perK,
    relativeSigmaPerK: perK,
    fromC: number,
    toC: number,
    from: z.enum(["measured", "computed"]),
    source: z.string(),
  }),
  computedPerK: number.nullable().describe("by the Appen set, also where a measured value rules"),
  leftOutMolPercent: amounts("mol % left out of the computed expansion"),
  secondOpinions: z
    .array(
      z.strictObject({
        name: z.string(),
        meanPerK: perK,
        range: z.string(),
        leftWtPercent: amounts("wt % without a factor"),
      }),
    )
    .describe("comparable only with values of the same set"),
  setPoint: z.strictObject({
    valueC: number,
    sigmaK: number,
    from: z.enum(["given", "computed", "assumed"]),
    source: z.string(),
  }),
  stiffC: number.describe("temperature at 10^12 Pa·s by the model"),
  stiffOutside: outsideShape.describe("oxides outside that model's range; most 0: not known to it"),
  youngGPa: propertyShape,
  poisson: propertyShape,
  toughnessMPaRootM: propertyShape,
  firedDensityKgPerM3: propertyShape,
  batch: batchShape.nullable(),
  slip: slipShape.nullable(),
  coat: coatShape.nullable(),
  fit: glazeFitShape.nullable().describe("null when fitMissing names keys"),
  fitMissing: z.array(z.string()).describe("keys of the file that the fit on a body needs"),
  leachTests: z.array(leachShape).describe("tests of single pieces beside two laws' limits"),
  findings: z.array(findingShape),
  cautions: z.array(cautionShape),
});

/** The document of `glaze`: one or more glazes, in canonical units, unrounded. */
export const glazeDocumentSchema = z.strictObject({
  ...opening("glaze"),
  glazes: z.array(glazeShape),
  againstFirst: z.array(
    z.strictObject({
      name: z.string(),
      differencePerK: perK,
      sigmaPerK: perK,
      areRelatives: z.boolean(),
      isMixed: z.boolean(),
    }),
  ),
});

/** What `glaze --json` prints. */
export type GlazeDocument = z.infer<typeof glazeDocumentSchema>;

/** Glazes as their JSON document. */
export function glazeDocument(works: readonly GlazeWork[]): GlazeDocument {
  return {
    schemaVersion: 1,
    ok: true,
    command: "glaze",
    glazes: works.map(glazePiece),
    againstFirst: compareGlazes(works.map(({ sheet }) => sheet.glaze)).map((each) => ({ ...each })),
  };
}

function glazePiece({
  sheet,
  batch,
  slip,
  coat,
  onBody,
  cautions,
}: GlazeWork): GlazeDocument["glazes"][number] {
  const { parsed, glaze, unity, computed, stiff } = sheet;
  return {
    name: glaze.name,
    invented: parsed.invented,
    cone: parsed.cone,
    crackle: parsed.crackle,
    molPercent: plainAmounts(sheet.molPercent),
    wtPercent: plainAmounts(sheet.wtPercent),
    molarMasses: massesOf(sheet.molPercent),
    unity: unity === null ? null : { ...unity, moles: plainAmounts(unity.moles) },
    lossFraction: parsed.givenAs.kind === "recipe" ? parsed.givenAs.lossFraction : null,
    expansion: { ...glaze.expansion },
    computedPerK: computed?.meanPerK ?? null,
    leftOutMolPercent: plainAmounts(computed?.left ?? {}),
    secondOpinions: sheet.opinions.map(({ name, meanPerK, range, leftWtPercent }) => ({
      name,
      meanPerK,
      range,
      leftWtPercent: plainAmounts(leftWtPercent),
    })),
    setPoint: { ...glaze.setPoint },
    stiffC: stiff.tempC,
    stiffOutside: stiff.outside.map((each) => ({ ...each })),
    youngGPa: plainProperty(glaze.youngGPa),
    poisson: plainProperty(glaze.poisson),
    toughnessMPaRootM: plainProperty(glaze.toughnessMPaRootM),
    firedDensityKgPerM3: plainProperty(glaze.firedDensityKgPerM3),
    batch: batch === null ? null : { ...batch, rows: batch.rows.map((row) => ({ ...row })) },
    slip: slip === null ? null : slipPiece(slip),
    coat:
      coat === null
        ? null
        : {
            ...coat,
            weighed: coat.weighed && { ...coat.weighed },
            wanted: coat.wanted && { ...coat.wanted },
          },
    fit: "fit" in onBody ? glazeFitPiece(onBody.fit) : null,
    fitMissing: "missing" in onBody ? [...onBody.missing] : [],
    leachTests: parsed.leachTests.map(leachPiece),
    findings: findingsPiece(sheet.findings),
    cautions: cautionsPiece(cautions),
  };
}

function leachPiece(test: LeachTest): z.infer<typeof leachShape> {
  return {
    ware: { ...test.ware },
    source: test.source,
    rows: leachSheet(test).map(({ limit, found, stands }) => ({
      law: limit.law,
      metal: limit.metal,
      most: limit.most,
      mostUnit: limit.unit,
      kind: limit.kind,
      found: found.value,
      foundUnit: found.unit,
      isBelow: found.isBelow,
      stands,
    })),
  };
}

function slipPiece(slip: NonNullable<GlazeWork["slip"]>): z.infer<typeof slipShape> {
  return {
    ...slip,
    unknownMaterials: [...slip.unknownMaterials],
    dryG: [...slip.dryG],
    rows: slip.rows.map((row) => ({ ...row, waterG: [...row.waterG] })),
    bucket: slip.bucket && { ...slip.bucket },
  };
}

function plainAmounts(given: OxideAmounts): Partial<Record<Oxide, number>> {
  return mapAmounts(given, (amount) => amount);
}

function massesOf(given: OxideAmounts): Partial<Record<Oxide, number>> {
  return mapAmounts(given, (_, oxide) => oxideMass(oxide));
}

function plainProperty({ value, low, high, source }: Property): z.infer<typeof propertyShape> {
  return { value, low, high, source };
}
