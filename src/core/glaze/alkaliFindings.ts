import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/basedOn.ts";
import { glazeFinding } from "./glazeFinding.ts";
import { shareText } from "./glazeWords.ts";
import { ALKALIS, type OxideAmounts, totalOf } from "./oxides.ts";

/** Alkalis above which a computed expansion is worth little [mol %]. */
export const MOST_ALKALIS = 25;

/** What is to be said of a glaze with very much alkali. */
export function alkaliFindings(
  molPercent: OxideAmounts,
  usesComputed: boolean,
): readonly Finding[] {
  const alkalis = totalOf(molPercent, ALKALIS);
  if (alkalis <= MOST_ALKALIS) return [];
  return [
    glazeFinding("caution", "much alkali", {
      statement: `The alkalis make ${shareText(alkalis)} mol %.${usesComputed ? ` Above ${MOST_ALKALIS} the computed expansion is worth little.` : ""} Such glazes give way to water and acids.`,
      basis: basedOn("range of the set; wear is common knowledge of glass", "appen-1974"),
      advice: "Measure it, and keep such a surface dry and for show.",
    }),
  ];
}
