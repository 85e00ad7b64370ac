import type { LearnedKiln } from "../kiln/LearnedKiln.ts";
import { kilnBlocks } from "./kilnBlocks.ts";
import { reportText } from "./reportText.ts";
import type { TextOptions } from "./TextOptions.ts";

/** A learned kiln as text for a terminal, at most 80 columns. */
export function kilnText(
  kiln: LearnedKiln,
  options: TextOptions & { readonly title: string },
): string {
  return reportText({ title: options.title, blocks: kilnBlocks(kiln, options) }, options.paint);
}
