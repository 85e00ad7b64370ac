import type { FiringReview } from "../firing/FiringReview.ts";
import { reportHtml } from "./html/reportHtml.ts";
import { type ReportContext, reviewBlocks } from "./reviewBlocks.ts";

/** A reviewed firing as one self-contained page, in the same sentences as the text. */
export function reviewHtml(review: FiringReview, options: ReportContext): string {
  return reportHtml({
    title: review.title,
    language: "en",
    blocks: reviewBlocks(review, options),
  });
}
