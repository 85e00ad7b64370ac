import { html, nothing, type TemplateResult } from "lit-html";
import type { Block, Cell, Column } from "../../core/reports/Block.ts";
import { inert } from "../../core/text/escape.ts";
import { capitalised, glued } from "../../core/text/wrap.ts";
import { type ChartSpecs, chart } from "./chart.ts";
import { remembered } from "./controls.ts";

type BlockOf<Kind extends Block["kind"]> = Extract<Block, { readonly kind: Kind }>;

/** Charts by the names that blocks give them: specs, or what shows a chart in a way of its own. */
export type BlockCharts = ReadonlyMap<
  string,
  ChartSpecs | ((description: string) => TemplateResult)
>;

/** Lines of a table from which on it may be broken over two sheets. */
const LINES_KEPT_TOGETHER = 14;

/**
 * A report on the page, in the words that the command prints: each heading opens a section.
 * Charts stand in blocks by name (see `pageCharts`).
 *
 * @param id Makes ids of the sections its own, where several reports stand on one page.
 */
export function blockList(
  blocks: readonly Block[],
  id: string,
  charts: BlockCharts = new Map(),
): TemplateResult {
  const sections: { heading: string | null; blocks: Block[] }[] = [{ heading: null, blocks: [] }];
  for (const block of blocks)
    if (block.kind === "heading") sections.push({ heading: block.text, blocks: [] });
    else sections.at(-1)?.blocks.push(block);
  return html`${sections.map(({ heading, blocks: inside }, index) => {
    const parts = inside.map((block, at) => oneBlock(block, inside, { at, charts }));
    if (heading === null) return html`<div class="report-head">${parts}</div>`;
    const own = `${id}-${index}`;
    return html`<section class="report-part"><h3 id=${own} tabindex="-1">${words(heading)}</h3>${parts}</section>`;
  })}`;
}

/** Text in which a number stays beside its unit, and nothing can command anything. */
function words(text: string): string {
  return text === "" ? "" : glued(inert(text));
}

function oneBlock(
  block: Block,
  around: readonly Block[],
  place: { readonly at: number; readonly charts: BlockCharts },
): TemplateResult | typeof nothing {
  switch (block.kind) {
    case "alarm":
      return html`<p class="alarm" role="alert">${words(block.text)}</p>`;
    case "lead":
      return html`<p class="lead">${words(block.text)}</p>`;
    case "sentence":
      return html`<p class=${block.style ? `paint-${block.style}` : nothing}>${words(block.text)}</p>`;
    case "list":
      return html`<ul>${block.items.map((item) => html`<li>${words(item)}</li>`)}</ul>`;
    case "lines":
      return html`<pre tabindex="0">${block.lines.map(inert).join("\n")}</pre>`;
    case "facts":
      return html`<dl>${block.facts.map(({ label, text }) => html`<dt>${words(label)}</dt><dd>${words(text)}</dd>`)}</dl>`;
    case "finding":
      return finding(block);
    case "table":
      return table(block);
    case "caution":
      return cautions(around, place.at);
    case "chart": {
      const specs = place.charts.get(block.chart.light);
      if (typeof specs === "function") return specs(words(block.description));
      return specs === undefined ? nothing : chart(specs, words(block.description));
    }
    case "picture":
      return html`<figure><img src=${block.dataUrl} alt=${words(block.description)}><figcaption>${words(block.description)}</figcaption></figure>`;
    case "heading":
      return nothing;
  }
}

/** A finding, its severity in words. */
export function finding(block: BlockOf<"finding">): TemplateResult {
  return html`<article class="finding is-${block.severity}"><p>${capitalised(block.severity)}</p><div><p>${words(block.statement)}</p>${
    block.advice === "" ? nothing : html`<p class="advice">→ ${words(block.advice)}</p>`
  }${block.where === null ? nothing : html`<p class="where">${words(block.where)}</p>`}</div></article>`;
}

/** Neighbouring cautions share one list, made where the first of them stands. */
function cautions(around: readonly Block[], at: number): TemplateResult | typeof nothing {
  if (around[at - 1]?.kind === "caution") return nothing;
  const end = around.findIndex((block, index) => index > at && block.kind !== "caution");
  const run = around.slice(at, end === -1 ? around.length : end) as readonly BlockOf<"caution">[];
  return html`<ul class="care">${run.map(
    ({ topic, text }) =>
      html`<li><strong>${words(capitalised(topic))}:</strong> ${words(text)}</li>`,
  )}</ul>`;
}

/** A table that scrolls by itself where it is too wide. */
function table(block: BlockOf<"table">): TemplateResult {
  const { caption, columns, rows } = block;
  const tall = rows.reduce((sum, row) => sum + Math.max(1, ...row.map(lineCount)), 0);
  const long = tall > LINES_KEPT_TOGETHER ? "long" : "";
  return html`<div class="table ${long}" role="group" aria-label=${caption} tabindex="0"><table>
    <caption>${words(caption)}</caption>
    <thead><tr>${columns.map(head)}</tr></thead>
    <tbody>${rows.map((row) => html`<tr>${row.map((each, at) => cell(each, columns[at], at))}</tr>`)}</tbody>
  </table></div>`;
}

function lineCount(content: Cell): number {
  return typeof content === "string" ? 1 : content.lines.length;
}

function head(column: Column): TemplateResult {
  const side = column.align === "right" ? "right" : nothing;
  return column.head === ""
    ? html`<td></td>`
    : html`<th scope="col" class=${side}>${lines(column.head)}</th>`;
}

function cell(content: Cell, column: Column | undefined, at: number): TemplateResult {
  const side = column?.align === "right" ? "right" : nothing;
  return at === 0 && content !== ""
    ? html`<th scope="row" class=${side}>${lines(content)}</th>`
    : html`<td class=${side}>${lines(content)}</td>`;
}

function lines(content: Cell): TemplateResult | string {
  if (typeof content === "string") return words(content);
  const parts = content.lines.map(
    (line, at) => html`${at > 0 ? html`<br>` : nothing}${words(line)}`,
  );
  return html`<span class=${content.style ? `paint-${content.style}` : nothing}>${parts}</span>`;
}

/** Blocks of a report under one heading. */
export interface BlockSection {
  /** Null of what stands before the first heading. */
  readonly heading: string | null;
  readonly blocks: readonly Block[];
}

/** A report's blocks by heading, the heading with them; the same list for the same blocks. */
export const blockSections = remembered((blocks: readonly Block[]): readonly BlockSection[] => {
  const sections: { heading: string | null; blocks: Block[] }[] = [{ heading: null, blocks: [] }];
  for (const block of blocks)
    if (block.kind === "heading") sections.push({ heading: block.text, blocks: [block] });
    else sections.at(-1)?.blocks.push(block);
  return sections;
});
