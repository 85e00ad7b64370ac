import { inert } from "../text/escape.ts";
import { capitalised, glued, HARD_SPACE } from "../text/wrap.ts";
import type { Block, Cell, Column } from "./Block.ts";

const ROWS_KEPT_TOGETHER = 14;

/** One block, other than a heading, as a piece of a page; `index` makes its ids its own. */
export function blockHtml(
  block: Exclude<Block, { readonly kind: "heading" }>,
  index: number,
): string {
  switch (block.kind) {
    case "alarm":
      return `<p class="alarm" role="alert">${inline(block.text)}</p>`;
    case "lead":
      return `<p class="lead">${inline(block.text)}</p>`;
    case "sentence":
      return `<p${block.style ? ` class="paint-${block.style}"` : ""}>${inline(block.text)}</p>`;
    case "list":
      return `<ul>${block.items.map((item) => `<li>${inline(item)}</li>`).join("")}</ul>`;
    case "lines":
      return `<pre>${block.lines.map(escapeHtml).join("\n")}</pre>`;
    case "facts":
      return `<dl>${block.facts
        .map(({ label, text }) => `<dt>${inline(label)}</dt><dd>${inline(text)}</dd>`)
        .join("")}</dl>`;
    case "finding":
      return findingHtml(block);
    case "table":
      return tableHtml(block);
    case "caution":
      return `<li><strong>${inline(capitalised(block.topic))}:</strong> ${inline(block.text)}</li>`;
    case "chart":
      return chartHtml(block, index);
    case "picture":
      return `<figure><img src="${escapeHtml(block.dataUrl)}" alt="${escapeHtml(block.description)}"><figcaption>${inline(block.description)}</figcaption></figure>`;
  }
}

/** Text of a page in which a number stays beside its unit. */
function inline(text: string): string {
  return escapeHtml(text === "" ? "" : glued(text)).replaceAll(HARD_SPACE, "&nbsp;");
}

function findingHtml(block: Extract<Block, { readonly kind: "finding" }>): string {
  const advice = block.advice === "" ? "" : `<p class="advice">→ ${inline(block.advice)}</p>`;
  const where = block.where === null ? "" : `<p class="where">${inline(block.where)}</p>`;
  return `<article class="finding is-${block.severity}"><p>${capitalised(block.severity)}</p><div><p>${inline(block.statement)}</p>${advice}${where}</div></article>`;
}

function tableHtml(block: Extract<Block, { readonly kind: "table" }>): string {
  const { caption, columns, rows } = block;
  const long = rows.length > ROWS_KEPT_TOGETHER ? " long" : "";
  const head = columns.map((column) => headHtml(column)).join("");
  const body = rows
    .map((row) => `<tr>${row.map((cell, at) => cellHtml(cell, columns[at], at)).join("")}</tr>`)
    .join("\n");
  return `<div class="table${long}" role="region" aria-label="${escapeHtml(caption)}" tabindex="0"><table><caption>${inline(caption)}</caption>
<thead><tr>${head}</tr></thead>
<tbody>
${body}
</tbody></table></div>`;
}

function headHtml(column: Column): string {
  const side = column.align === "right" ? ' class="right"' : "";
  return column.head === "" ? "<td></td>" : `<th scope="col"${side}>${linesHtml(column.head)}</th>`;
}

function cellHtml(cell: Cell, column: Column | undefined, at: number): string {
  const side = column?.align === "right" ? ' class="right"' : "";
  return at === 0
    ? `<th scope="row"${side}>${linesHtml(cell)}</th>`
    : `<td${side}>${linesHtml(cell)}</td>`;
}

function linesHtml(cell: Cell): string {
  if (typeof cell === "string") return inline(cell);
  const lines = cell.lines.map(inline).join("<br>");
  return cell.style ? `<span class="paint-${cell.style}">${lines}</span>` : lines;
}

function chartHtml(block: Extract<Block, { readonly kind: "chart" }>, index: number): string {
  const { chart, description } = block;
  return `<figure>${(["light", "dark"] as const)
    .map((tone) => {
      const drawing = withOwnIds(chart[tone], `${tone}-${index}`);
      return `<div class="${tone}">${named(drawing, description)}</div>`;
    })
    .join("")}<figcaption>${inline(description)}</figcaption></figure>`;
}

/** A drawing that a screen reader announces: by its own title, else by the description. */
function named(drawing: string, description: string): string {
  return /^<svg[^>]*\srole=/.test(drawing)
    ? drawing
    : drawing.replace(/^<svg/, () => `<svg role="img" aria-label="${escapeHtml(description)}"`);
}

/**
 * A drawing whose ids carry a prefix, so that several can stand in one page without one taking
 * the clip path of another.
 * @throws RangeError when it is not an SVG element, or holds a script: charts are our own drawings.
 */
function withOwnIds(svg: string, prefix: string): string {
  const drawing = svg.replace(/^\s*<\?xml[^>]*\?>\s*/, "").trim();
  if (!drawing.startsWith("<svg") || /<script/i.test(drawing))
    throw new RangeError(`withOwnIds: ${prefix} is not a drawing without scripts`);
  return drawing
    .replace(/(\sid=["'])([^"']+)/g, `$1${prefix}-$2`)
    .replace(/url\((["']?)#/g, `url($1#${prefix}-`)
    .replace(/((?:xlink:)?href=["'])#/g, `$1#${prefix}-`);
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text from anywhere as text of a page: harmless, and safe inside quoted attributes too. */
export function escapeHtml(text: string): string {
  return inert(text).replace(/[&<>"']/g, (character) => ENTITIES[character]!);
}
