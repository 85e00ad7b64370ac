import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/basedOn.ts";
import type { AppenExpansion } from "./appenExpansion.ts";
import type { Glaze } from "./Glaze.ts";
import { glazeFinding } from "./glazeFinding.ts";
import { expansionText, outsideText, sharesText } from "./glazeWords.ts";
import { entriesOf } from "./oxides.ts";
import type { OutsideRange } from "./setPointModel.ts";

/** One standard deviation of a computed expansion, for the comparison with a measured one [1/K]. */
const COMPUTED_SIGMA_PER_K = 0.5e-6;

/** What is to be said of an expansion: left out, outside the ranges, measured against computed. */
export function expansionFindings(
  glaze: Glaze,
  appen: { readonly computed: AppenExpansion | null; readonly outside: readonly OutsideRange[] },
): readonly Finding[] {
  const { computed, outside } = appen;
  const basis = basedOn("partial expansions of Appen's set", "appen-1974");
  if (computed === null) return [];
  const left = entriesOf(computed.left);
  return [
    ...(left.length === 0
      ? []
      : [
          glazeFinding("note", "left out of the expansion", {
            statement: `Left out of the computed expansion, for want of a factor, in mol %: ${sharesText(left)}.`,
            basis,
          }),
        ]),
    ...(outside.length === 0
      ? []
      : [
          glazeFinding("caution", "outside the range of expansion", {
            statement: `Outside the range of the expansion factors, in mol %: ${outsideText(outside)}. The band is doubled, by our own estimate.`,
            basis,
            advice: "Trust a tile or a dilatometer more than this number.",
          }),
        ]),
    ...measuredFindings(glaze, computed),
  ];
}

function measuredFindings({ expansion }: Glaze, computed: AppenExpansion): readonly Finding[] {
  if (expansion.from !== "measured") return [];
  const difference = computed.meanPerK - expansion.meanPerK;
  const sigma = Math.hypot(expansion.sigmaPerK, COMPUTED_SIGMA_PER_K);
  if (Math.abs(difference) < 2 * sigma) return [];
  return [
    glazeFinding("caution", "measured against computed", {
      statement: `The measured expansion is ${expansionText(Math.abs(difference))} · 10⁻⁶/°C ${difference > 0 ? "lower" : "higher"} than the computed one, more than twice the spread of the two.`,
      basis: `measured: ${expansion.source}; ${basedOn("computed", "appen-1974")}`,
      advice:
        "Check the recipe against what was measured: ranges of temperature, and crystals that do not melt, also part the two.",
    }),
  ];
}
