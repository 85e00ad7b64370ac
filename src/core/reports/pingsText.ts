import type { PingReview } from "../pings/PingReview.ts";
import { pingsBlocks } from "./pingsBlocks.ts";
import { reportText } from "./reportText.ts";
import type { TextOptions } from "./TextOptions.ts";

/** A recording of clicks as text for a terminal, at most 80 columns. */
export function pingsText(review: PingReview, options: TextOptions): string {
  return reportText(
    { title: `Pings in ${review.sound.name}`, blocks: pingsBlocks(review, options) },
    options.paint,
  );
}
