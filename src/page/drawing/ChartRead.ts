import type { TopLevelSpec } from "vega-lite";

/** One row of a layer. */
export type Row = Readonly<Record<string, number | string>>;

/** A horizontal or vertical axis, as the core's charts write it. */
export interface AxisRead {
  readonly field: string;
  readonly title: string;
  readonly scale: { readonly domain: readonly [number, number] };
  readonly axis: {
    readonly grid: boolean;
    readonly values: readonly number[];
    readonly titlePadding?: number;
    readonly titleX?: number;
    readonly titleY?: number;
    /** Only on axes over decimal logarithms, whose ticks are labelled with the amounts themselves. */
    readonly labelExpr?: string;
  };
}

/** How the marks of a layer look. */
export interface MarkRead {
  readonly type: "line" | "area" | "rect" | "rule" | "point" | "text";
  readonly clip?: boolean;
  readonly color?: string;
  /** Of a point, where it is not its colour. */
  readonly fill?: string;
  readonly opacity?: number;
  readonly stroke?: string;
  readonly strokeWidth?: number;
  readonly strokeDash?: readonly number[];
  readonly strokeCap?: string;
  readonly strokeJoin?: string;
  readonly shape?: string;
  /** Area of a symbol [px²]. */
  readonly size?: number;
  readonly align?: "left" | "center" | "right";
  readonly fontSize?: number;
}

/** One layer: rows, a mark, and the fields that place it. */
export interface LayerRead {
  readonly data: { readonly values: readonly Row[] };
  readonly mark: MarkRead;
  readonly encoding: {
    readonly x: AxisRead;
    readonly y: AxisRead;
    readonly x2?: { readonly field: string };
    readonly y2?: { readonly field: string };
    readonly detail?: { readonly field: string };
    readonly order?: { readonly field: string };
    readonly text?: { readonly field: string };
  };
}

/** The part of vega-lite that the core's charts are written in, as the page reads it. */
export interface ChartRead {
  readonly description?: string;
  readonly title: {
    readonly text: string | readonly string[];
    readonly subtitle?: string | readonly string[];
  };
  readonly background: string;
  readonly padding: number;
  readonly width: number;
  readonly height: number;
  readonly layer: readonly LayerRead[];
  readonly config: {
    readonly font: string;
    readonly title: {
      readonly color: string;
      readonly fontSize: number;
      readonly subtitleColor: string;
      readonly subtitleFontSize: number;
      /** Between title and subtitle [px]. */
      readonly subtitlePadding: number;
      readonly dx: number;
      readonly offset: number;
    };
    readonly axis: {
      readonly labelColor: string;
      readonly labelFontSize: number;
      readonly labelPadding: number;
      readonly titleFontSize: number;
      readonly domainColor: string;
      readonly domainWidth: number;
      readonly gridColor: string;
      readonly gridWidth: number;
    };
  };
}

/**
 * A chart of the core as the page draws it.
 * @throws RangeError for a spec that is no chart of layers; the core makes no other for a page.
 */
export function chartRead(spec: TopLevelSpec): ChartRead {
  if (!("layer" in spec)) throw new RangeError("chartRead: a spec without layers");
  return spec as unknown as ChartRead;
}
