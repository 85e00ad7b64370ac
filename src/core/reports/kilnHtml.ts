import type { LearnedKiln } from "../kiln/LearnedKiln.ts";
import { reportHtml } from "./html/reportHtml.ts";
import { type KilnContext, kilnBlocks } from "./kilnBlocks.ts";

/** A learned kiln as one self-contained page, in the same sentences as the text. */
export function kilnHtml(
  kiln: LearnedKiln,
  options: KilnContext & { readonly title: string },
): string {
  return reportHtml({ title: options.title, language: "en", blocks: kilnBlocks(kiln, options) });
}
