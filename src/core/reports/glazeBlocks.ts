import { APPEN_FACTORS } from "../glaze/expansionModels.ts";
import type { LeachTest, Recipe } from "../glaze/Glaze.ts";
import { type LeachRow, leachSheet } from "../glaze/glazeFindings.ts";
import { compareGlazes, type GlazeSheet } from "../glaze/glazeSheet.ts";
import { joined, shareText } from "../glaze/glazeWords.ts";
import type { GlazeWork } from "../glaze/glazeWork.ts";
import { entriesOf, FLUXES } from "../glaze/oxides.ts";
import { cited } from "../sources/bibliography.ts";
import { asGiven, printDifference, printTemperature } from "../text/quantities.ts";
import type { LeachAmount } from "../units/amounts.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type Block, type Cell, cautionBlocks, findingBlocks, section } from "./Block.ts";
import { basisBlocks } from "./basisBlocks.ts";
import { batchBlocks, coatBlocks, slipBlocks } from "./batchBlocks.ts";
import {
  coefficientText,
  glazeExpansionBlocks,
  millionths,
  millionthsText,
} from "./glazeExpansionBlocks.ts";
import { glazeStressBlocks } from "./glazeStressBlocks.ts";

/** How a report of glazes is to be shown. */
export interface GlazeView {
  readonly unit: TemperatureUnit;
  /** Unit of what goes on the scales. */
  readonly weights: "g" | "oz";
}

/** Oxides whose factor varies by a rule that could not be read again. */
const RULES_FROM_MEMORY = Object.entries(APPEN_FACTORS).flatMap(([oxide, { attested }]) =>
  attested === "rule from memory" ? [oxide] : [],
);

/** What the numbers of every glaze rest on, one line each. */
const SOURCES: readonly string[] = [
  `Expansion: partial expansions of oxides by moles, 20 to 400 °C (${cited("appen-1974")}); the rules by which ${joined(RULES_FROM_MEMORY)} vary are from memory; held against 16 measured glasses it is off by 0.48 · 10⁻⁶/°C root mean square, 1.03 at worst. No glaze with both analysis and measured expansion could be read, so for glazes rich in alumina this is carried over from glasses`,
  `Second opinions: ${cited("winkelmann-schott-1894")}; ${cited("hall-1930")}`,
  `Set point: ${cited("fluegel-2007")}, and the step below it (${cited("set-point-viscosity")})`,
  `Stiffness, toughness and density of the fired glaze, where the file gives none: ${cited("glaze-elastic")}`,
  `Molar masses: ${cited("iupac-atomic-weights")}`,
];

const BENCH_SOURCES = `Batch and slip: ${cited("brongniart-1854")}; densities of powders ${cited("batch-practice")}, others ${cited("powder-densities")}`;

/** One glaze or several as blocks, in the order in which a potter asks. */
export function glazeBlocks(works: readonly GlazeWork[], view: GlazeView): readonly Block[] {
  const sheets = works.map(({ sheet }) => sheet);
  const isAlone = works.length === 1;
  const usesBench = works.some(({ batch, slip }) => batch !== null || slip !== null);
  return [
    ...(isAlone ? [] : comparisonBlocks(sheets, view.unit)),
    ...works.flatMap((work, index) => [
      ...(isAlone
        ? []
        : [{ kind: "heading", text: `${index + 1}. ${work.sheet.glaze.name}` } as const]),
      ...ofOne(work, view),
    ]),
    ...basisBlocks(
      {
        heatwork: null,
        crossings: [],
        findings: sheets.flatMap(({ findings }) => findings),
        sources: usesBench ? [...SOURCES, BENCH_SOURCES] : SOURCES,
      },
      view.unit,
    ),
    ...cautionBlocks(works.flatMap(({ cautions }) => cautions)),
  ];
}

function ofOne(work: GlazeWork, view: GlazeView): readonly Block[] {
  const { sheet, batch, slip, coat, onBody } = work;
  const { unit, weights } = view;
  return [
    { kind: "lead", text: leadText(sheet, unit) },
    { kind: "facts", facts: givenFacts(sheet) },
    ...findingBlocks(sheet.findings, { unit, startOfDaySeconds: null }),
    ...batchBlocks(batch, weights),
    ...slipBlocks(slip, weights),
    ...coatBlocks(coat, weights),
    ...formulaBlocks(sheet),
    ...glazeExpansionBlocks(sheet, unit),
    ...bodyBlocks(onBody, unit),
    ...leachBlocks(sheet.parsed.leachTests),
  ];
}

function bodyBlocks(onBody: GlazeWork["onBody"], unit: TemperatureUnit): readonly Block[] {
  if ("fit" in onBody) return glazeStressBlocks(onBody.fit, unit);
  return section("Fit on the body", [
    {
      kind: "sentence",
      text: `Not worked out: the file gives no ${joined(onBody.missing)}.`,
    },
  ]);
}

function leadText({ glaze }: GlazeSheet, unit: TemperatureUnit): string {
  const { expansion, setPoint } = glaze;
  return `Expansion ${coefficientText(expansion.meanPerK, unit, expansion.sigmaPerK)}, ${expansion.from}; stiff below about ${printTemperature(setPoint.valueC, unit)}, ± ${printDifference(setPoint.sigmaK, unit)}`;
}

function givenFacts({ parsed }: GlazeSheet) {
  const { givenAs, cone, crackle, invented, notes } = parsed;
  const analyses = givenAs.kind === "recipe" ? ownAnalyses(givenAs.recipe) : [];
  return [
    {
      label: "given as",
      text:
        givenAs.kind === "oxides"
          ? `oxides, ${givenAs.basis}`
          : `a recipe of ${givenAs.recipe.base.length} materials${givenAs.recipe.additions.length === 0 ? "" : ` and ${givenAs.recipe.additions.length} on top`}; ${(100 * givenAs.lossFraction).toFixed(1)} % fires away`,
    },
    ...(analyses.length === 0 ? [] : [{ label: "analyses", text: analyses.join("; ") }]),
    ...(cone === null ? [] : [{ label: "cone", text: cone }]),
    ...(crackle ? [{ label: "meant to", text: "crackle" }] : []),
    ...(invented ? [{ label: "invented", text: "an example, nobody's glaze" }] : []),
    ...(notes === null ? [] : [{ label: "notes", text: notes }]),
  ];
}

/** Materials of one's own and where their analyses come from: `ball clay: supplier, 2026`. */
function ownAnalyses({ base, additions }: Recipe): readonly string[] {
  return [...base, ...additions].flatMap(({ name, material: { source } }) =>
    typeof source === "string" ? [] : [`${name}: ${source.yours}`],
  );
}

function comparisonBlocks(sheets: readonly GlazeSheet[], unit: TemperatureUnit): readonly Block[] {
  const differences = compareGlazes(sheets.map(({ glaze }) => glaze));
  const [first, ...others] = sheets as [GlazeSheet, ...GlazeSheet[]];
  return section("Side by side", [
    {
      kind: "table",
      caption: `Expansion, and how far from the first [${millionths(unit)}]`,
      columns: [
        { head: "glaze", align: "left" },
        { head: "expansion", align: "right" },
        { head: "against the first", align: "right" },
        { head: "how alike", align: "left" },
      ],
      rows: [
        [first.glaze.name, millionthsText(first.glaze.expansion.meanPerK, unit), "", ""],
        ...others.map(({ glaze }, index) => {
          const difference = differences[index];
          if (difference === undefined) throw new RangeError("comparisonBlocks: a glaze too many");
          const sign = difference.differencePerK > 0 ? "+" : "";
          return [
            glaze.name,
            millionthsText(glaze.expansion.meanPerK, unit),
            `${sign}${millionthsText(difference.differencePerK, unit, difference.sigmaPerK)}`,
            alikeText(difference),
          ];
        }),
      ],
    },
    {
      kind: "sentence",
      text: `Close relatives differ by at most 5 mol % in each oxide; most of the error is then common to both, and ± ${coefficientText(0.2e-6, unit)} is our own judgement of what is left.`,
    },
  ]);
}

function alikeText(difference: {
  readonly isMixed: boolean;
  readonly areRelatives: boolean;
}): string {
  if (difference.isMixed) return "measured and computed, or other ranges: compare with care";
  return difference.areRelatives ? "close relatives" : "other families";
}

/** The composition of a glaze: for one mole of fluxes, by moles and by weight. */
function formulaBlocks({ unity, molPercent, wtPercent }: GlazeSheet): readonly Block[] {
  return section("Formula", [
    {
      kind: "table",
      caption: "After firing",
      columns: [
        { head: "oxide", align: "left" },
        ...(unity === null ? [] : [{ head: "for 1 of flux", align: "right" } as const]),
        { head: "mol %", align: "right" },
        { head: "wt %", align: "right" },
      ],
      rows: entriesOf(molPercent).map(([oxide, share]): readonly Cell[] => [
        FLUXES.includes(oxide) ? `${oxide}, flux` : oxide,
        ...(unity === null ? [] : [(unity.moles[oxide] ?? 0).toFixed(3)]),
        shareText(share),
        shareText(wtPercent[oxide] ?? 0),
      ]),
    },
    { kind: "sentence", text: ratiosText(unity) },
  ]);
}

function ratiosText(unity: GlazeSheet["unity"]): string {
  if (unity === null) return "It holds no flux, so there is no unity formula.";
  const { alkaliShare, silicaToAlumina } = unity;
  const ratio =
    silicaToAlumina === null
      ? "no alumina"
      : `silica to alumina ${shareText(silicaToAlumina)} to 1`;
  return `Alkalis to the other fluxes ${alkaliShare.toFixed(2)} to ${(1 - alkaliShare).toFixed(2)}; ${ratio}, by moles. Colouring oxides are not counted as flux.`;
}

const STANDS: Readonly<Record<LeachRow["stands"], string>> = {
  under: "no more than that",
  over: "over it",
  open: "cannot be told",
};

/** Leach tests beside the limits of two laws; nothing without tests. */
function leachBlocks(tests: readonly LeachTest[]): readonly Block[] {
  if (tests.length === 0) return [];
  return section("What a laboratory found given off", [
    ...tests.map(testTable),
    {
      kind: "sentence",
      text: `A tested piece speaks for itself only: not for the next one, not for another firing, not for any other metal, and not for a crackled surface. Limits as read in 2026, the European ones under revision downwards; check current law (EU: ${cited("eu-84-500")}; US: ${cited("us-food-code-lead")}, ${cited("us-cpg-cadmium")}). An amount in another unit than the limit's is not compared.`,
    },
  ]);
}

function testTable(test: LeachTest): Block {
  const { ware, source } = test;
  return {
    kind: "table",
    caption: `${WARE[ware.use]}, ${asGiven(ware.depthMm)} mm deep, holding ${asGiven(ware.litres)} L: ${source}`,
    columns: [
      { head: "metal", align: "left" },
      { head: "found", align: "left" },
      { head: "at most", align: "left" },
      { head: "law and its kind of ware", align: "left" },
      { head: "found is", align: "left" },
    ],
    rows: leachSheet(test).map(({ limit, found, stands }) => [
      limit.metal,
      amountText(found),
      `${limit.most} ${limit.unit}`,
      `${limit.law}: ${limit.kind}`,
      STANDS[stands],
    ]),
  };
}

const WARE: Readonly<Record<LeachTest["ware"]["use"], string>> = {
  cup: "Cup, mug or pitcher",
  dish: "Plate, bowl or jar",
  cooking: "Cooking ware",
};

function amountText({ value, unit, isBelow }: LeachAmount): string {
  return `${isBelow ? "under " : ""}${value} ${unit}`;
}
