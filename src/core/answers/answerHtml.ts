import type { Block } from "../reports/Block.ts";
import { reportHtml } from "../reports/reportHtml.ts";
import { capitalised } from "../text/wrap.ts";
import type { Answer } from "./Answer.ts";

/**
 * An answer as one self-contained page: the screen on top with its first chart or picture, then a line
 * of contents, then every room folded. On paper the rooms are as they stand on the screen.
 */
export function answerHtml({ title, when, screen, rooms }: Answer): string {
  const shown = rooms[0]?.blocks.find(isDrawn);
  return reportHtml({
    title,
    language: "en",
    when,
    blocks: shown === undefined ? screen : [...screen, shown],
    folded: rooms.map(({ name, blocks }) => ({
      id: name,
      title: capitalised(name),
      blocks: blocks.filter((block) => block !== shown),
    })),
  });
}

function isDrawn({ kind }: Block): boolean {
  return kind === "chart" || kind === "picture";
}
