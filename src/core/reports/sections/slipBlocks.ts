import type { CoatSheet } from "../../glaze/coatSheet.ts";
import { joined } from "../../glaze/glazeWords.ts";
import type { SlipSheet } from "../../glaze/slipSheet.ts";
import { CM2_PER_IN2 } from "../../units/coatMass.ts";
import { ouncesPerPint } from "../../units/slipDensity.ts";
import { LITRES_PER_PINT } from "../../units/volume.ts";
import { type Block, type Column, section } from "../Block.ts";
import { weightText } from "./batchBlocks.ts";

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
function contentHeads(weights: Weights): readonly Column[] {
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
