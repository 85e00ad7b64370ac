import type { Config } from "vega-lite";

/** How one line is drawn; lines differ in lightness, width and dash, never in hue alone. */
export interface LineStyle {
  readonly stroke: string;
  readonly strokeWidth: number;
  readonly strokeDash: readonly number[];
}

/** The colours of a chart, named after what they do. */
export interface Theme {
  readonly paper: string;
  /** Titles and labels. */
  readonly ink: string;
  /** Axis labels, band names, second lines. */
  readonly quiet: string;
  readonly grid: string;
  /** Inversion strips, drawn at `bandOpacity`. */
  readonly band: string;
  readonly bandOpacity: number;
  /** Limits, and what goes over them. */
  readonly ember: string;
  /** Thermocouples: solid up to the fourth. */
  readonly measured: readonly LineStyle[];
  readonly planned: LineStyle;
  /** What is computed for the ware, not measured or planned. */
  readonly computed: LineStyle;
  /** Several firings in one chart: solid first, then each with a dash of its own. */
  readonly compared: readonly LineStyle[];
}

/** Fonts by preference; the first one is shipped, for PNG. */
const FONT_STACK =
  '"Source Sans 3", "Source Sans Pro", "Segoe UI", "Helvetica Neue", Arial, sans-serif';

/** Clay, ash and ember on warm paper. */
const LIGHT = {
  paper: "#fcf8f2",
  ink: "#2d2621",
  quiet: "#6d6157",
  grid: "#e9e0d5",
  band: "#c9a27c",
  bandOpacity: 0.26,
  ember: "#9c2f14",
  clay: "#bb5a34",
  ash: "#2f4a58",
  ochre: "#b8862b",
  moss: "#6f8f83",
  plan: "#7a6d62",
};

/** The same, in a dark kiln room. */
const DARK: typeof LIGHT = {
  paper: "#1e1a17",
  ink: "#f3ebe1",
  quiet: "#b8aa9c",
  grid: "#3a332d",
  band: "#a9805a",
  bandOpacity: 0.28,
  ember: "#ff9d6e",
  clay: "#e07b4f",
  ash: "#b5cfdc",
  ochre: "#c79a45",
  moss: "#7c9c90",
  plan: "#a89a8c",
};

/** The theme for paper and light screens, or for dark ones. */
export function theme(dark: boolean | undefined): Theme {
  const { clay, ash, ochre, moss, plan, ...rest } = dark ? DARK : LIGHT;
  return {
    ...rest,
    measured: [
      line(clay, 2.6),
      line(ash, 1.5),
      line(ochre, 2),
      line(moss, 1.2),
      line(clay, 1.6, 12, 2, 2, 2),
      line(ash, 2.2, 2, 2),
    ],
    planned: line(plan, 1.6, 6, 4),
    computed: line(rest.ember, 1.2, 3, 2.5),
    compared: [
      line(clay, 2.6),
      line(ash, 1.8, 9, 3),
      line(ochre, 2.2, 2, 2.5),
      line(moss, 1.8, 9, 3, 2, 3),
      line(plan, 1.4),
      line(clay, 1.8, 14, 3),
      line(ash, 2.4, 2, 4),
      line(ochre, 1.6, 5, 2.5),
      line(moss, 2.8),
      line(plan, 2.2, 14, 3, 2, 3, 2, 3),
    ],
  };
}

/** Style number `index` of a list, starting over when there are more lines than styles. */
export function styleAt(styles: readonly LineStyle[], index: number): LineStyle {
  return styles[index % styles.length]!;
}

/** Everything that all charts share, as vega-lite configuration. */
export function themeConfig(colours: Theme): Config {
  return {
    font: FONT_STACK,
    aria: false,
    view: { stroke: null },
    title: {
      anchor: "start",
      frame: "group",
      offset: 16,
      dx: -44,
      color: colours.ink,
      fontSize: 21,
      fontWeight: 600,
      subtitleColor: colours.quiet,
      subtitleFontSize: 14,
      subtitlePadding: 6,
    },
    axis: {
      labelColor: colours.quiet,
      labelFontSize: 13,
      labelPadding: 7,
      labelFlush: false,
      labelOverlap: false,
      titleColor: colours.quiet,
      titleFontSize: 13,
      titleFontWeight: 400,
      domainColor: colours.quiet,
      domainWidth: 0.8,
      ticks: false,
      gridColor: colours.grid,
      gridWidth: 0.8,
    },
    axisY: { domain: false },
  };
}

function line(stroke: string, strokeWidth: number, ...strokeDash: readonly number[]): LineStyle {
  return { stroke, strokeWidth, strokeDash };
}
