import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/basedOn.ts";
import type { SetPoint } from "./Glaze.ts";
import { glazeFinding } from "./glazeFinding.ts";
import { outsideText } from "./glazeWords.ts";
import type { OutsideRange } from "./setPointModel.ts";

/** What is to be said of a set point: outside its model, or assumed. */
export function setPointFindings(
  setPoint: SetPoint,
  { outside }: { readonly outside: readonly OutsideRange[] },
): readonly Finding[] {
  if (setPoint.from === "given") return [];
  const basis = basedOn("statistical model of viscosity", "fluegel-2007");
  if (setPoint.from === "assumed")
    return [
      glazeFinding("caution", "set point", {
        statement: "The model of the set point fails for this composition: a usual one is assumed.",
        basis,
        advice: "Give setPoint with value and how, if you know it.",
      }),
    ];
  if (outside.length === 0) return [];
  return [
    glazeFinding("caution", "outside the range of the set point", {
      statement: `Outside the range of the set point's model, in mol %: ${outsideText(outside)}. Its spread is doubled, by our own estimate.`,
      basis,
    }),
  ];
}
