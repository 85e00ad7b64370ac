import type { Draft } from "../schedule/draftSchedule.ts";
import { type DraftContext, draftBlocks } from "./draftBlocks.ts";
import { reportHtml } from "./html/reportHtml.ts";

/** A drafted firing as one self-contained page, in the same sentences as the text. */
export function draftHtml(draft: Draft, options: DraftContext): string {
  return reportHtml({
    title: draft.schedule.title,
    language: "en",
    blocks: draftBlocks(draft, options),
  });
}
