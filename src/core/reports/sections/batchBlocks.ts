import type { BatchRow, BatchSheet } from "../../glaze/batchSheet.ts";
import { GRAMS_PER_OUNCE } from "../../units/mass.ts";
import { type Block, type Cell, section } from "../Block.ts";

/** A mass for the scales: grams to a tenth, ounces to a hundredth. */
export function weightText(grams: number, weights: "g" | "oz"): string {
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
