import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/basedOn.ts";
import { glazeFinding } from "./glazeFinding.ts";
import { joined, shareText } from "./glazeWords.ts";
import type { Oxide, OxideAmounts } from "./oxides.ts";

/** Share above which crystals of an oxide, or with it, are likely [mol %]; our own estimate. */
const CRYSTALS_ABOVE: readonly (readonly [Oxide, number])[] = [
  ["SnO2", 0.7],
  ["ZrO2", 1.5],
  ["TiO2", 4],
  ["ZnO", 12],
  ["MgO", 12],
  ["CaO", 22],
  ["Fe2O3", 3],
  ["Cr2O3", 0.3],
  ["P2O5", 2],
];

/** Silica to alumina by moles below which a glaze tends to an alumina matte; from memory. */
const MATTE_BELOW = 5.5;

/** Crystals and mattes, whose expansion glass factors do not know. */
export function crystalFindings(molPercent: OxideAmounts): readonly Finding[] {
  const much = CRYSTALS_ABOVE.filter(([oxide, limit]) => (molPercent[oxide] ?? 0) > limit);
  const alumina = molPercent.Al2O3 ?? 0;
  const ratio = alumina > 0 ? (molPercent.SiO2 ?? 0) / alumina : null;
  const basis = basedOn("limits for a clear glass", "crystals-in-glaze");
  return [
    ...(much.length === 0
      ? []
      : [
          glazeFinding("caution", "crystals", {
            statement: `Crystals are likely with this much of ${joined(much.map(([oxide]) => `${oxide} (${shareText(molPercent[oxide] ?? 0)} mol %)`))}. Factors of glass do not know crystals: the expansion computed can be well off.`,
            basis,
            advice: "Take it for ranking among like glazes only.",
          }),
        ]),
    ...(ratio === null || ratio >= MATTE_BELOW
      ? []
      : [
          glazeFinding("caution", "matte", {
            statement: `Silica to alumina is ${shareText(ratio)} to 1: below about ${MATTE_BELOW} a glaze tends to a matte, with crystals that the factors do not know.`,
            basis,
          }),
        ]),
  ];
}
