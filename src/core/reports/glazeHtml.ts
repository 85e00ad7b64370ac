import type { GlazeWork } from "../glaze/GlazeWork.ts";
import type { GlazeView } from "./GlazeView.ts";
import { glazeBlocks } from "./glazeBlocks.ts";
import { reportHtml } from "./html/reportHtml.ts";

/** Glazes as one self-contained page, in the same sentences as the text. */
export function glazeHtml(
  works: readonly GlazeWork[],
  options: GlazeView & { readonly title: string },
): string {
  return reportHtml({
    title: options.title,
    language: "en",
    blocks: glazeBlocks(works, options),
  });
}
