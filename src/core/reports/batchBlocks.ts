import type { BatchRow, BatchSheet } from "../glaze/batchSheet.ts";
import { joined } from "../glaze/glazeWords.ts";
import type { CoatSheet, SlipSheet } from "../glaze/slipSheet.ts";
import { CM2_PER_IN2, GRAMS_PER_OUNCE, LITRES_PER_PINT, ouncesPerPint } from "../units/amounts.ts";
import { type Block, type Cell, section, type Column as TableColumn } from "./Block.ts";

/** A mass for the scales: grams to a tenth, ounces to a hundredth. */
function weightText(grams: number, weights: "g" | "oz"): string {
  return weights === "g" ? `${grams.toFixed(1)} g` : `${(grams / GRAMS_PER_OUNCE).toFixed(2)} oz`;
}

/** The batch sheet: what to weigh, the mass wanted read both ways. */
export function batchBlocks(batch: BatchSheet | null, weights: "g" | "oz"): readonly Block[] {
  if (batch === null) return [];
  const swaps = batch.rows.flatMap(swapSentence);
  return section("Batch sheet", [
    batchTable(batch, weights),
    ...(batch.wantedG === null || batch.additionsSum === 0
      ? []
      : [
          {
            kind: "sentence",
            text: `Two readings: ${weightText(batch.wantedG, weights)} of base with the additions on top, or ${weightText(batch.wantedG, weights)} in all. Choose one column and keep to it.`,
          } as const,
        ]),
    ...(swaps.length === 0
      ? []
      : ([
          { kind: "sentence", text: "Raw and calcined, by what each loses in the fire:" },
          { kind: "list", items: swaps },
        ] as const)),
    countedTable(batch),
  ]);
}

/** What the recipe's materials are taken to be. */
function countedTable({ rows }: BatchSheet): Block {
  return {
    kind: "table",
    caption: "What each raw material is counted as",
    columns: [
      { head: "material", align: "left" },
      { head: "ideal formula", align: "left" },
      { head: "fires away", align: "right" },
    ],
    rows: rows.map(({ name, formula, lossFraction }): readonly Cell[] => [
      name,
      formula ?? "your analysis",
      `${(100 * lossFraction).toFixed(1)} %`,
    ]),
  };
}

function batchTable(batch: BatchSheet, weights: "g" | "oz"): Block {
  const { wantedG, rows } = batch;
  const isScaled = Math.abs(batch.baseSum - 100) > 0.005;
  const hasAdditions = batch.additionsSum > 0;
  const columns: readonly (Column | null)[] = [
    { head: "parts", of: ({ parts }) => parts.toFixed(2) },
    isScaled ? { head: "base as 100", of: ({ percentOfBase }) => percentOfBase.toFixed(2) } : null,
    hasAdditions
      ? { head: "% of all", of: ({ percentOfTotal }) => percentOfTotal.toFixed(2) }
      : null,
    wantedG === null
      ? null
      : {
          head: hasAdditions ? "mass is base" : "weigh",
          of: ({ gramsForBase }) => weightText(gramsForBase as number, weights),
        },
    wantedG === null || !hasAdditions
      ? null
      : {
          head: "mass is all",
          of: ({ gramsForTotal }) => weightText(gramsForTotal as number, weights),
        },
  ];
  const shown = columns.filter((column) => column !== null);
  return {
    kind: "table",
    caption: wantedG === null ? "Parts by weight, dry" : `${weightText(wantedG, weights)}, dry`,
    columns: [
      { head: "material", align: "left" },
      ...shown.map(({ head }) => ({ head, align: "right" }) as const),
    ],
    rows: [
      ...rows.map((row): readonly Cell[] => [nameText(row), ...shown.map(({ of }) => of(row))]),
      ["together", ...shown.map(({ of }) => of(sumRow(rows)))],
    ],
  };
}

interface Column {
  readonly head: string;
  readonly of: (row: BatchRow) => string;
}

function nameText({ name, part, calcined }: BatchRow): string {
  return `${part === "addition" ? "+ " : ""}${name}${calcined ? ", calcined" : ""}`;
}

function sumRow(rows: readonly BatchRow[]): BatchRow {
  const sum = (of: (row: BatchRow) => number | null) =>
    rows.reduce((total, row) => total + (of(row) ?? 0), 0);
  return {
    name: "together",
    part: "base",
    calcined: false,
    formula: null,
    lossFraction: 0,
    parts: sum(({ parts }) => parts),
    percentOfBase: sum(({ percentOfBase }) => percentOfBase),
    percentOfTotal: sum(({ percentOfTotal }) => percentOfTotal),
    gramsForBase: sum(({ gramsForBase }) => gramsForBase),
    gramsForTotal: sum(({ gramsForTotal }) => gramsForTotal),
    swappedParts: null,
  };
}

function swapSentence({ name, parts, calcined, swappedParts }: BatchRow): readonly string[] {
  if (swappedParts === null) return [];
  const [from, to] = calcined ? ["calcined", "raw"] : ["raw", "calcined"];
  return [`${name}: ${parts.toFixed(2)} parts ${from} are ${swappedParts.toFixed(2)} parts ${to}`];
}

type Weights = "g" | "oz";

/** Water and dry content of a slip, and what a bucket of it holds. */
export function slipBlocks(slip: SlipSheet | null, weights: Weights): readonly Block[] {
  if (slip === null) return [];
  return section("Slip", [
    {
      kind: "table",
      caption: "Water, by Brongniart's formula",
      columns: [
        { head: "density", align: "right" },
        ...contentHeads(weights),
        ...slip.dryG.map(
          (mass) =>
            ({ head: `water for ${weightText(mass, weights)} dry`, align: "right" }) as const,
        ),
      ],
      rows: slip.rows.map((row) => [
        row.slipGPerCm3.toFixed(2),
        ...contentCells(row, weights),
        ...row.waterG.map((mass) => weightText(mass, weights)),
      ]),
    },
    { kind: "facts", facts: slipFacts(slip, weights) },
  ]);
}

/** Dry content by the litre, or by either pint. */
function contentHeads(weights: Weights): readonly TableColumn[] {
  const heads =
    weights === "g"
      ? ["dry in a litre", "water in it"]
      : ["dry in an imperial pint", "dry in a US pint"];
  return heads.map((head) => ({ head, align: "right" }));
}

function contentCells(row: SlipSheet["rows"][number], weights: Weights): readonly string[] {
  return weights === "g"
    ? [weightText(row.dryGPerLitre, "g"), weightText(row.waterGPerLitre, "g")]
    : [
        weightText(row.dryGPerLitre * LITRES_PER_PINT.imperial, "oz"),
        weightText(row.dryGPerLitre * LITRES_PER_PINT.us, "oz"),
      ];
}

function slipFacts(slip: SlipSheet, weights: Weights) {
  const { bucket, rows } = slip;
  const [only] = rows.length === 1 ? rows : [];
  return [
    ...(only === undefined
      ? []
      : [
          {
            label: "on the scales",
            text: `a litre weighs ${Math.round(1000 * only.slipGPerCm3)} g, an imperial pint (20 fl oz) ${ouncesPerPint(only.slipGPerCm3, "imperial").toFixed(1)} oz, a US pint (16 US fl oz) ${ouncesPerPint(only.slipGPerCm3, "us").toFixed(1)} oz`,
          },
        ]),
    ...(bucket === null
      ? []
      : [
          {
            label: "the bucket",
            text: `${bucket.litres.toFixed(2)} L hold ${weightText(bucket.dryG, weights)} dry and ${weightText(bucket.waterG, weights)} of water`,
          },
        ]),
    { label: "solids", text: solidsText(slip) },
  ];
}

function solidsText({ solidGPerCm3, solidFrom, unknownMaterials }: SlipSheet): string {
  const value = `${solidGPerCm3.toFixed(2)} g/cm³`;
  if (solidFrom === "yours") return `${value}, yours`;
  if (solidFrom === "assumed") return `${value}, assumed for want of a recipe`;
  return unknownMaterials.length === 0
    ? `${value}, worked out from the materials`
    : `${value}, worked out with 2.6 for ${joined(unknownMaterials)}, not known`;
}

/** The fired coat from what was weighed, and what to put on for a coat wanted. */
export function coatBlocks(coat: CoatSheet | null, weights: Weights): readonly Block[] {
  if (coat === null) return [];
  const { weighed, wanted, lossFraction, firedGPerCm3 } = coat;
  const loss =
    lossFraction === null
      ? "no recipe, so nothing is counted to fire away"
      : `${(100 * lossFraction).toFixed(1)} % of the dry mass fires away`;
  return section("Coat", [
    {
      kind: "facts",
      facts: [
        ...(weighed === null
          ? []
          : [
              {
                label: "as weighed",
                text: `${areaText(weighed.dryGPerCm2, weights)} fire to ${weighed.firedMm.toFixed(2)} mm (${weighed.lowMm.toFixed(2)} to ${weighed.highMm.toFixed(2)})`,
              },
            ]),
        ...(wanted === null
          ? []
          : [
              {
                label: "as wanted",
                text: `${wanted.firedMm.toFixed(2)} mm fired take ${areaText(wanted.dryGPerCm2, weights)}`,
              },
            ]),
        {
          label: "counted with",
          text: `${loss}; fired glaze of ${firedGPerCm3.toFixed(2)} g/cm³, without bubbles`,
        },
      ],
    },
  ]);
}

function areaText(gPerCm2: number, weights: Weights): string {
  return weights === "g"
    ? `${weightText(100 * gPerCm2, "g")} dry on 100 cm²`
    : `${weightText(10 * CM2_PER_IN2 * gPerCm2, "oz")} dry on 10 in²`;
}
