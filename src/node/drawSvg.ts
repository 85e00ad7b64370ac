import { createHash } from "node:crypto";
import type { TopLevelSpec } from "vega-lite";
import { textWidth } from "../core/charts/textWidth.ts";
import { inert } from "../core/text/escape.ts";

/** How a chart is drawn. */
export interface DrawOptions {
  /** Called with every complaint about the spec; without it they are passed over. */
  readonly onWarning?: (message: string) => void;
}

/**
 * A chart as a self-contained SVG file: no scripts, no links, fonts by name with a fallback, and no
 * control characters, which no XML may hold.
 * @throws what vega throws for a spec that it cannot draw; our charts never make one.
 */
export async function drawSvg(spec: TopLevelSpec, options: DrawOptions = {}): Promise<string> {
  const [vega, vegaLite] = await Promise.all([import("vega"), import("vega-lite")]);
  measureTextLikeUs(vega);
  const logger = vega.logger(vega.Warn, undefined, (_method, _level, input) =>
    options.onWarning?.(input.map(String).join(" ")),
  );
  const { spec: compiled } = vegaLite.compile(spec, { logger });
  const view = new vega.View(vega.parse(compiled), { renderer: "none", logger });
  try {
    return inert(described(withOwnIds(await view.toSVG()), spec.description));
  } finally {
    view.finalize();
  }
}

/** How vega asks for the width of a text; not in its types. */
interface TextMetrics {
  width: (item: { readonly fontSize?: number }, text: unknown) => number;
}

/** Without a canvas vega takes every letter for a wide one and leaves a broad margin; the core knows better. */
function measureTextLikeUs(vega: object): void {
  const { textMetrics } = vega as { readonly textMetrics: TextMetrics };
  textMetrics.width = (item, text) => textWidth(String(text ?? ""), item.fontSize ?? 11);
}

/**
 * An SVG whose ids follow from what it shows: the same chart always gives the same bytes, and two
 * charts on one page do not take each other's. Vega numbers ids through a whole process.
 */
function withOwnIds(svg: string): string {
  const numbers = new Map<string, string>();
  const numbered = svg.replace(
    /\bid="clip(\d+)"|url\(#clip(\d+)\)/g,
    (_, own?: string, used?: string) => {
      const found = own ?? used ?? "";
      const number = numbers.get(found) ?? String(numbers.size + 1);
      numbers.set(found, number);
      return own === undefined ? `url(#clip-${number})` : `id="clip-${number}"`;
    },
  );
  const name = createHash("sha256").update(numbered).digest("hex").slice(0, 8);
  return numbered
    .replaceAll('id="clip-', `id="clip-${name}-`)
    .replaceAll("url(#clip-", `url(#clip-${name}-`);
}

/** An SVG that says what it shows, to a screen reader and as a tooltip. */
function described(svg: string, description: string | undefined): string {
  if (description === undefined) return svg;
  const text = description.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
  return svg.replace(
    /<svg [^>]*>/,
    (open) => `${open.slice(0, -1)} role="img"><title>${text}</title>`,
  );
}
