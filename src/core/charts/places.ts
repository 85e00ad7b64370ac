import { drawn, type Row } from "./chartSpec.ts";
import { type Frame, type Pixel, valueAt } from "./frame.ts";

/** The two fields that place things in a chart, as every layer of it encodes them. */
export interface Places {
  readonly xField: string;
  readonly yField: string;
  /** Axis, scale and title of each; the same in all layers, so that they are shared. */
  readonly x: AxisDef;
  readonly y: AxisDef;
}

/** What an axis shows: its whole range, its title with the unit, its ticks. */
export interface AxisDef {
  readonly title: string;
  readonly scale: {
    readonly domain: [number, number];
    readonly nice: false;
    readonly zero: false;
    readonly clamp: false;
  };
  readonly axis: {
    readonly grid: boolean;
    readonly titleAngle: 0;
    readonly titleAnchor: "start" | "end";
    readonly titleAlign: "left" | "right";
    readonly values: number[];
    readonly titlePadding?: number;
    readonly titleX?: number;
    readonly titleY?: number;
    readonly format: string;
  };
}

/** A horizontal axis from a left to a right value; its title stands below, at the left. */
export function acrossAxis(
  title: string,
  domain: readonly [number, number],
  values: readonly number[],
  titlePadding = 8,
): AxisDef {
  return {
    title,
    scale: { domain: [domain[0], domain[1]], nice: false, zero: false, clamp: false },
    axis: {
      grid: false,
      format: ".2~f",
      titleAngle: 0,
      titleAnchor: "start",
      titleAlign: "left",
      values: [...values],
      titlePadding,
    },
  };
}

/** A vertical axis; its title stands above it, upright to read. */
export function upAxis(
  title: string,
  domain: readonly [number, number],
  values: readonly number[],
): AxisDef {
  return {
    title,
    scale: { domain: [domain[0], domain[1]], nice: false, zero: false, clamp: false },
    axis: {
      grid: true,
      format: ".2~f",
      titleAngle: 0,
      titleAnchor: "end",
      titleAlign: "left",
      values: [...values],
      titleX: -44,
      titleY: -16,
    },
  };
}

/** Encoding of x and y by the chart's own fields. */
export function placing(places: Places) {
  return {
    x: { field: places.xField, type: "quantitative" as const, ...places.x },
    y: { field: places.yField, type: "quantitative" as const, ...places.y },
  };
}

/** A place of the plot as a row in the chart's own fields. */
export function spot(places: Places, frame: Frame, pixel: Pixel): Row {
  const value = valueAt(frame, pixel);
  return { [places.xField]: drawn(value.x), [places.yField]: drawn(value.y) };
}
