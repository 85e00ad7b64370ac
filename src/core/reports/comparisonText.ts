import type { Comparison } from "../firing/compareFirings.ts";
import { type ComparisonContext, comparisonBlocks } from "./comparisonBlocks.ts";
import { reportText } from "./reportText.ts";
import type { TextOptions } from "./TextOptions.ts";

/** Several firings side by side as text for a terminal, at most 80 columns. */
export function comparisonText(
  comparison: Comparison,
  options: TextOptions & Pick<ComparisonContext, "study" | "alignment" | "base">,
): string {
  return reportText(
    { title: comparisonTitle(comparison), blocks: comparisonBlocks(comparison, options) },
    options.paint,
  );
}

/** What a comparison is called, in text and on a page. */
export function comparisonTitle(comparison: Comparison): string {
  const count = comparison.firings.length;
  return count === 1 ? "One firing" : `${count} firings compared`;
}
