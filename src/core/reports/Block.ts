import type { Severity } from "../findings/Finding.ts";
import type { PaintStyle } from "./paint.ts";

/** A cell of a table: one text, or lines that stand below each other. */
export type Cell = string | { readonly lines: readonly string[]; readonly style?: PaintStyle };

/** A column of a table; numbers stand to the right. */
export interface Column {
  readonly head: Cell;
  readonly align: "left" | "right";
}

/** A chart drawn for a light page and for a dark one; SVG of our own making. */
export interface ChartPair {
  readonly light: string;
  readonly dark: string;
}

/**
 * One piece of a report. Text and page are both made from the same blocks, so that they cannot
 * come to say different things. Strings are plain text, not yet made harmless or escaped.
 */
export type Block =
  /** An emergency: stands above the title, before all else. */
  | { readonly kind: "alarm"; readonly text: string }
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "lead"; readonly text: string }
  | { readonly kind: "sentence"; readonly text: string; readonly style?: PaintStyle }
  | { readonly kind: "list"; readonly items: readonly string[] }
  /** Lines to copy as they stand, spaces included. */
  | { readonly kind: "lines"; readonly lines: readonly string[] }
  | {
      readonly kind: "facts";
      readonly facts: readonly { readonly label: string; readonly text: string }[];
    }
  | {
      readonly kind: "finding";
      readonly severity: Severity;
      readonly statement: string;
      readonly advice: string;
      /** Thermocouple and time, or null when it holds for the whole. */
      readonly where: string | null;
    }
  | {
      readonly kind: "table";
      readonly caption: string;
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly Cell[])[];
    }
  | { readonly kind: "caution"; readonly topic: string; readonly text: string }
  /** Only a page shows it; the description says in words what it draws. */
  | { readonly kind: "chart"; readonly description: string; readonly chart: ChartPair }
  /** Only a page shows it: a photograph, as a data address of our own making. */
  | { readonly kind: "picture"; readonly description: string; readonly dataUrl: string };

/** Blocks under a heading; nothing at all when there are none. */
export function section(text: string, blocks: readonly Block[]): readonly Block[] {
  return blocks.length === 0 ? [] : [{ kind: "heading", text }, ...blocks];
}

/** A chart as a block, when there is one. */
export function chartBlocks(description: string, chart: ChartPair | undefined): readonly Block[] {
  return chart === undefined ? [] : [{ kind: "chart", description, chart }];
}
