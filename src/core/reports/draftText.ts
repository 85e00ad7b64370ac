import type { Draft } from "../schedule/draftSchedule.ts";
import { type DraftContext, draftBlocks } from "./draftBlocks.ts";
import { reportText } from "./reportText.ts";
import type { TextOptions } from "./TextOptions.ts";

/** A drafted firing as text for a terminal, at most 80 columns. */
export function draftText(draft: Draft, options: TextOptions & DraftContext): string {
  return reportText(
    { title: draft.schedule.title, blocks: draftBlocks(draft, options) },
    options.paint,
  );
}
