import type { Block } from "./Block.ts";
import { blockHtml, escapeHtml } from "./blockHtml.ts";

/** A report to make a page of. */
export interface HtmlInput {
  readonly title: string;
  readonly language: "en";
  /** Stands small below the title; null for nothing. */
  readonly when?: string | null;
  readonly blocks: readonly Block[];
  /** Parts below them that open when they are asked for, with a line of contents above. */
  readonly folded?: readonly FoldedPart[];
}

/** A part of a page that stands closed. */
interface FoldedPart {
  /** One word, its own on the page. */
  readonly id: string;
  readonly title: string;
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
${input.when ? `<p class="when">${escapeHtml(input.when)}</p>\n` : ""}${sectionsHtml(
  input.blocks.filter(({ kind }) => kind !== "alarm"),
  { prefix: "part", from: 0 },
)}
${foldedHtml(input.folded ?? [])}</main>
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

/** The line of contents, then the parts that stand closed. */
function foldedHtml(parts: readonly FoldedPart[]): string {
  const held = parts.filter(({ blocks }) => blocks.length > 0);
  if (held.length === 0) return "";
  const links = held.map(({ id, title }) => `<a href="#${id}">${escapeHtml(title)}</a>`);
  const folded = held.map(
    ({ id, title, blocks }, at) =>
      `<details id="${id}"><summary>${escapeHtml(title)}</summary>\n${sectionsHtml(blocks, { prefix: id, from: (at + 1) * APART })}\n</details>`,
  );
  return `<p class="contents">More: ${links.join(" · ")}</p>\n${folded.join("\n")}\n`;
}

/** More blocks than a part has, so that the numbers of no two parts meet. */
const APART = 1000;

/** Blocks, each heading opening a section that is named by it; ids are their own by prefix and number. */
function sectionsHtml(
  blocks: readonly Block[],
  { prefix, from }: { readonly prefix: string; readonly from: number },
): string {
  const parts: string[] = [];
  let isOpen = false;
  blocks.forEach((block, index) => {
    if (block.kind === "heading") {
      if (isOpen) parts.push("</section>");
      parts.push(
        `<section aria-labelledby="${prefix}-${index}">`,
        `<h2 id="${prefix}-${index}">${escapeHtml(block.text)}</h2>`,
      );
      isOpen = true;
    } else parts.push(...cautionListEdges(blocks, index, blockHtml(block, from + index)));
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

/** The look of a page: a potter's bench notes, warm paper by day, a dark kiln room by night. */
const PAGE_STYLE = `
:root {
  color-scheme: light;
  --paper: #f7f2e8; --card: #fdfaf3; --ink: #2c2521; --faint: #6a5d52; --line: #d9cdbb;
  --ember: #9c3a16; --warning: #a11d1d; --caution: #855300; --note: #3f5a66; --good: #3c5f33;
}
* { box-sizing: border-box; }
html { background: var(--paper); color: var(--ink); -webkit-text-size-adjust: 100%; }
body {
  margin: 0 auto; padding: 2.5rem 1.25rem 4rem; max-width: 52rem;
  font: 1rem/1.55 "Source Sans 3", "Segoe UI", Candara, "Noto Sans", system-ui, sans-serif;
}
h1, h2, .lead, caption, figcaption {
  font-family: Charter, "Bitstream Charter", "Iowan Old Style", Palatino, Georgia, "Noto Serif", serif;
}
h1 { font-size: 1.9rem; line-height: 1.2; margin: 0 0 .75rem; padding-bottom: .6rem;
  border-bottom: 3px solid var(--ember); overflow-wrap: anywhere; }
h2 { font-size: 1.25rem; line-height: 1.3; margin: 0 0 .6rem; color: var(--ember); font-weight: 600; }
section { margin-top: 2.4rem; }
p { margin: .5rem 0; max-width: 44rem; overflow-wrap: anywhere; }
.lead { font-size: 1.3rem; line-height: 1.35; margin: 0 0 .4rem; }
ul { margin: .5rem 0; padding-left: 1.2rem; max-width: 44rem; }
li { margin: .25rem 0; overflow-wrap: anywhere; }
li::marker { color: var(--ember); }
pre { margin: .6rem 0; padding: .7rem 1rem; overflow-x: auto; background: var(--card); border: 1px solid var(--line);
  font: .88rem/1.5 ui-monospace, "DejaVu Sans Mono", monospace; }
dl { margin: .6rem 0; display: grid; grid-template-columns: minmax(6rem, max-content) 1fr; gap: .2rem 1.2rem; }
dt { color: var(--faint); }
dd { margin: 0; overflow-wrap: anywhere; }
.finding { display: grid; grid-template-columns: 6.5rem 1fr; gap: 0 1rem; margin: .7rem 0;
  padding: .7rem 1rem; background: var(--card); border: 1px solid var(--line); border-left-width: 5px; }
.finding > :first-child { margin: 0; font-weight: 700; font-size: .95rem; line-height: 1.65; }
.finding p { margin: 0 0 .3rem; }
.finding p:last-child { margin-bottom: 0; }
.finding .advice { font-weight: 600; }
.alarm { margin: 0 0 1.2rem; padding: .9rem 1.1rem; max-width: none; font-size: 1.15rem; font-weight: 700;
  color: #fff; background: #8f1414; border: 3px solid #5c0b0b; }
.where { color: var(--faint); font-size: .92rem; }
.is-warning { border-left: 8px double var(--warning); } .is-warning > :first-child { color: var(--warning); }
.is-caution { border-left: 5px solid var(--caution); } .is-caution > :first-child { color: var(--caution); }
.is-note { border-left: 5px dotted var(--note); } .is-note > :first-child { color: var(--note); }
.paint-warning { color: var(--warning); font-weight: 600; }
.paint-caution { color: var(--caution); }
.paint-note { color: var(--note); }
.paint-good { color: var(--good); }
.paint-faint { color: var(--faint); }
.paint-strong, .paint-heading { font-weight: 600; }
.table { overflow-x: auto; margin: 1rem 0; }
.table:focus-visible { outline: 2px solid var(--ember); outline-offset: 3px; }
table { border-collapse: collapse; width: 100%; font-size: .95rem; line-height: 1.4; }
caption { text-align: left; font-style: italic; color: var(--faint); padding-bottom: .35rem; }
th, td { padding: .35rem .9rem .35rem 0; vertical-align: top; text-align: left; font-weight: 400;
  border-bottom: 1px solid var(--line); overflow-wrap: break-word; max-width: 20rem; }
th:last-child, td:last-child { padding-right: 0; }
thead td { border-bottom: 1.5px solid var(--faint); }
thead th { color: var(--faint); font-size: .85rem; vertical-align: bottom; border-bottom: 1.5px solid var(--faint); }
tbody th { font-weight: 600; }
.right { text-align: right; font-variant-numeric: tabular-nums; }
figure { margin: 1.2rem 0; }
figure svg, figure img { display: block; max-width: 100%; height: auto; }
figcaption { font-style: italic; color: var(--faint); font-size: .95rem; margin-top: .3rem; }
.dark { display: none; }
.when { color: var(--faint); margin: -.4rem 0 1rem; }
.contents { margin-top: 2.4rem; padding-top: 1rem; border-top: 1px solid var(--line); max-width: none; }
.contents a, .contents a:visited { color: var(--ember); text-underline-offset: .15em; }
details { margin-top: .6rem; border: 1px solid var(--line); background: var(--card); padding: 0 1rem; }
details[open] { padding-bottom: 1rem; }
summary { padding: .55rem 0; font-weight: 600; color: var(--ember); cursor: pointer; }
summary:focus-visible, .contents a:focus-visible { outline: 2px solid var(--ember); outline-offset: 3px; }
details > section:first-of-type { margin-top: .6rem; }
.care { border-top: 3px solid var(--ember); padding-top: 1.2rem; }
@media (max-width: 34rem) {
  .finding { grid-template-columns: 1fr; }
  dl { grid-template-columns: 1fr; gap: 0; }
  dd { margin-bottom: .5rem; }
}
@media screen and (prefers-color-scheme: dark) {
  :root { color-scheme: dark;
    --paper: #1b1715; --card: #241f1c; --ink: #ece3d6; --faint: #b3a596; --line: #443a33;
    --ember: #f0895a; --warning: #ff8f86; --caution: #ecb154; --note: #9cc0cf; --good: #a5cd97; }
  .light { display: none; }
  .dark { display: block; }
}
@page { margin: 16mm 15mm; }
@media print {
  .contents { display: none; }
  details:not([open]) { display: none; }
  :root { --paper: #fff; --card: #fff; --ink: #000; --faint: #444; --line: #bbb; }
  html { font-size: 10pt; }
  body { padding: 0; max-width: none; }
  h1 { font-size: 18pt; }
  h2 { font-size: 13pt; break-after: avoid; }
  section { margin-top: 1.4rem; }
  caption, figcaption, .lead { break-after: avoid; }
  p, li { orphans: 3; widows: 3; }
  p, ul { max-width: none; }
  li, dt, dd, tr, figure, .finding, .table:not(.long) { break-inside: avoid; }
  thead { display: table-header-group; }
  .table { overflow: visible; margin: .6rem 0; }
  table { font-size: 9pt; }
  th, td { padding-top: .2rem; padding-bottom: .2rem; }
  figure svg { max-height: 95mm; width: auto; }
}
`;
