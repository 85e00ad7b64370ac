import type { FiringReview } from "../firing/FiringReview.ts";
import { reportText } from "./reportText.ts";
import { reviewBlocks } from "./reviewBlocks.ts";
import type { TextOptions } from "./TextOptions.ts";

/** A reviewed firing as text for a terminal, at most 80 columns. */
export function reviewText(review: FiringReview, options: TextOptions): string {
  return reportText({ title: review.title, blocks: reviewBlocks(review, options) }, options.paint);
}
