import { html, nothing, type TemplateResult } from "lit-html";
import type { TopLevelSpec } from "vega-lite";
import { inert } from "../../core/reports/inert.ts";

/** The core's grid of causes, as far as it is read. */
interface Grid {
  readonly title: { readonly text: string; readonly subtitle: readonly string[] };
  readonly layer: readonly {
    readonly data: { readonly values: readonly Cell[] };
    readonly encoding: { readonly x: Axis; readonly y: Axis };
  }[];
}

interface Axis {
  readonly scale: { readonly domain: readonly string[] };
}

interface Cell {
  readonly first: string;
  readonly second: string;
  readonly telling: string;
  readonly word: string;
}

/** What moved with what as a table: the words of the core's grid, its fillings as shades. */
export function causesGrid(spec: TopLevelSpec, description: string): TemplateResult {
  const { title, layer } = spec as unknown as Grid;
  const [first] = layer;
  const across = first?.encoding.x.scale.domain ?? [];
  const down = first?.encoding.y.scale.domain ?? [];
  const cells = new Map(
    layer.flatMap(({ data }) =>
      data.values.map((cell) => [`${cell.first}\n${cell.second}`, cell] as const),
    ),
  );
  return html`<figure class="causes">
    <div class="table" role="group" aria-label=${description} tabindex="0"><table>
      <caption>${title.text}: ${title.subtitle.join("; ")}</caption>
      <thead><tr><td></td>${across.map((name) => html`<th scope="col">${inert(name)}</th>`)}</tr></thead>
      <tbody>${down.map(
        (name) =>
          html`<tr><th scope="row">${inert(name)}</th>${across.map((column) => {
            const cell = cells.get(`${column}\n${name}`);
            return html`<td class=${cell === undefined ? "no-pair" : `is-${cell.telling}`}>${cell?.word ?? nothing}</td>`;
          })}</tr>`,
      )}</tbody>
    </table></div>
    <figcaption>${description}</figcaption>
  </figure>`;
}
