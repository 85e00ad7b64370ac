import { textWidth } from "../../core/charts/textWidth.ts";
import { escapeHtml } from "../../core/reports/blockHtml.ts";
import { element, type Ink } from "./Ink.ts";

/** How far letters reach above their base line, as a share of the font size. */
export const ASCENT = 0.79;

/** How far letters reach below their base line, as a share of the font size. */
export const DESCENT = 0.21;

/** Where base lines stand below the middle of their words, as a share of the font size. */
export const MIDDLE = 0.3;

/** Words of a drawing. */
interface WordsOptions {
  readonly text: string;
  readonly x: number;
  /** Of the base line. */
  readonly y: number;
  readonly size: number;
  readonly fill: string;
  readonly align?: "left" | "center" | "right";
  readonly bold?: boolean;
  /** Colour and width of a rim around the letters. */
  readonly rim?: { readonly stroke: string; readonly width: number };
}

const ANCHORS = { left: "start", center: "middle", right: "end" } as const;

/** Words at a place, and the room that they take; nothing when there are none. */
export function words(options: WordsOptions): Ink {
  const { text, x, y, size, fill, align = "left", rim } = options;
  if (text === "") return { svg: "", reach: null };
  const width = textWidth(text, size);
  const left = align === "left" ? x : align === "right" ? x - width : x - width / 2;
  const svg = element(
    "text",
    {
      x,
      y,
      "text-anchor": ANCHORS[align],
      "font-size": size,
      "font-weight": options.bold ? 600 : undefined,
      fill,
      stroke: rim?.stroke,
      "stroke-width": rim?.width,
      "stroke-linejoin": rim && "round",
    },
    escapeHtml(text),
  );
  const reach = { left, right: left + width, top: y - size * ASCENT, bottom: y + size * DESCENT };
  return { svg, reach };
}
