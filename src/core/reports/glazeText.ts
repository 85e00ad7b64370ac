import type { GlazeWork } from "../glaze/GlazeWork.ts";
import type { GlazeView } from "./GlazeView.ts";
import { glazeBlocks } from "./glazeBlocks.ts";
import type { Paint } from "./paint.ts";
import { reportText } from "./reportText.ts";

/** Glazes as text for a terminal, at most 80 columns. */
export function glazeText(
  works: readonly GlazeWork[],
  options: GlazeView & { readonly title: string; readonly paint: Paint },
): string {
  return reportText({ title: options.title, blocks: glazeBlocks(works, options) }, options.paint);
}
