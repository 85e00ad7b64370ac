import type { Block } from "../Block.ts";
import { blockHtml } from "./blockHtml.ts";
import { escapeHtml } from "./escapeHtml.ts";
import { PAGE_STYLE } from "./style.ts";

/** A report to make a page of. */
export interface HtmlInput {
  readonly title: string;
  readonly language: "en";
  readonly blocks: readonly Block[];
}

const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/**
 * A report as one page in one string: it asks nothing of any network, runs no script, and every
 * text from a file is escaped. Charts show light or dark as the reader's screen does, and light on
 * paper.
 */
export function reportHtml(input: HtmlInput): string {
  const title = escapeHtml(input.title);
  return `<!doctype html>
<html lang="${input.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${PAGE_STYLE}</style>
</head>
<body>
<main>
${alarmHtml(input.blocks)}<h1>${title}</h1>
${sectionsHtml(input.blocks.filter(({ kind }) => kind !== "alarm"))}
</main>
</body>
</html>
`;
}

/** Emergencies, which stand above the title. */
function alarmHtml(blocks: readonly Block[]): string {
  return blocks
    .map((block, index) => (block.kind === "alarm" ? `${blockHtml(block, index)}\n` : ""))
    .join("");
}

/** Blocks, each heading opening a section that is named by it. */
function sectionsHtml(blocks: readonly Block[]): string {
  const parts: string[] = [];
  let isOpen = false;
  blocks.forEach((block, index) => {
    if (block.kind === "heading") {
      if (isOpen) parts.push("</section>");
      parts.push(
        `<section aria-labelledby="part-${index}">`,
        `<h2 id="part-${index}">${escapeHtml(block.text)}</h2>`,
      );
      isOpen = true;
    } else parts.push(...cautionListEdges(blocks, index, blockHtml(block, index)));
  });
  if (isOpen) parts.push("</section>");
  return parts.join("\n");
}

/** Neighbouring cautions share one list. */
function cautionListEdges(
  blocks: readonly Block[],
  index: number,
  html: string,
): readonly string[] {
  if (blocks[index]?.kind !== "caution") return [html];
  return [
    ...(blocks[index - 1]?.kind === "caution" ? [] : ['<ul class="care">']),
    html,
    ...(blocks[index + 1]?.kind === "caution" ? [] : ["</ul>"]),
  ];
}
