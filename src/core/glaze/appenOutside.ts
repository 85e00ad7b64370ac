import type { AppenExpansion } from "./appenExpansion.ts";
import { APPEN_FACTORS, APPEN_LEAST_SILICA } from "./appenFactors.ts";
import { entriesOf } from "./oxides.ts";
import type { OutsideRange } from "./setPointModel.ts";

/** Every oxide of a composition that lies outside the range of the Appen set. */
export function appenOutside({ countedMolPercent }: AppenExpansion): readonly OutsideRange[] {
  const silica = countedMolPercent.SiO2 ?? 0;
  const scarce: readonly OutsideRange[] =
    silica < APPEN_LEAST_SILICA
      ? [{ oxide: "SiO2", molPercent: silica, least: APPEN_LEAST_SILICA, most: 100 }]
      : [];
  const rich = entriesOf(countedMolPercent).flatMap(([oxide, molPercent]) => {
    const most = APPEN_FACTORS[oxide]?.mostMolPercent ?? 100;
    return molPercent > most ? [{ oxide, molPercent, least: 0, most }] : [];
  });
  return [...scarce, ...rich];
}
