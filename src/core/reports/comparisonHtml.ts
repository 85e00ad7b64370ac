import type { Comparison } from "../firing/compareFirings.ts";
import { type ComparisonContext, comparisonBlocks } from "./comparisonBlocks.ts";
import { comparisonTitle } from "./comparisonText.ts";
import { reportHtml } from "./html/reportHtml.ts";

/** Several firings side by side as one self-contained page, in the same sentences as the text. */
export function comparisonHtml(comparison: Comparison, options: ComparisonContext): string {
  return reportHtml({
    title: comparisonTitle(comparison),
    language: "en",
    blocks: comparisonBlocks(comparison, options),
  });
}
