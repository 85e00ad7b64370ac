import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/basedOn.ts";
import { glazeFinding } from "./glazeFinding.ts";
import { joined, shareText } from "./glazeWords.ts";
import type { Oxide, OxideAmounts } from "./oxides.ts";

const POISONS: readonly (readonly [Oxide, string])[] = [
  ["PbO", "lead"],
  ["CdO", "cadmium"],
  ["As2O3", "arsenic"],
  ["Sb2O3", "antimony"],
  ["BeO", "beryllium"],
];

/** Metals for which a studio glaze is the wrong place. */
export function toxicFindings(molPercent: OxideAmounts): readonly Finding[] {
  const held = POISONS.filter(([oxide]) => (molPercent[oxide] ?? 0) > 0);
  if (held.length === 0) return [];
  const named = held.map(
    ([oxide, metal]) => `${metal} (${shareText(molPercent[oxide] ?? 0)} mol %)`,
  );
  return [
    glazeFinding("warning", "poisonous metals", {
      statement: `The glaze holds ${joined(named)}.`,
      basis: basedOn("metals whose release from ware the law limits", "eu-84-500"),
      advice:
        "Do without, or keep it to pieces that nobody eats or drinks from, and read the cautions below.",
    }),
  ];
}
