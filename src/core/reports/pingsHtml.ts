import type { PingReview } from "../pings/PingReview.ts";
import { reportHtml } from "./html/reportHtml.ts";
import { type PingsContext, pingsBlocks } from "./pingsBlocks.ts";

/** A recording of clicks as one self-contained page, in the same sentences as the text. */
export function pingsHtml(review: PingReview, context: PingsContext): string {
  return reportHtml({
    title: `Pings in ${review.sound.name}`,
    language: "en",
    blocks: pingsBlocks(review, context),
  });
}
