import type { CausePair, Confounding, Telling } from "../trials/Confounding.ts";
import { type ChartSpec, type Layer, type Row, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { type Theme, theme, themeConfig } from "./theme.ts";

/** What a grid of causes shows. */
export interface CausesChartInput {
  readonly title: string;
  readonly confounding: Confounding;
  readonly dark?: boolean;
}

/** Side of a cell [px]: wide enough for its word. */
const CELL_WIDTH = 84;
const CELL_HEIGHT = 40;

/** How a pair is drawn: word, and how strongly the cell is filled. */
const LOOKS: Readonly<Record<Telling, { readonly word: string; readonly opacity: number }>> = {
  cannot: { word: "cannot", opacity: 0.85 },
  partly: { word: "", opacity: 0.3 },
  apart: { word: "told apart", opacity: 0 },
  contained: { word: "part of it", opacity: 0 },
};

/**
 * What moved with what: a grid of all pairs of causes. A pair that cannot be told apart is a full
 * cell that says so, a mixed one a pale cell with the share, one told apart an open cell.
 * @throws RangeError with fewer than two causes.
 */
export function causesChart({ title, confounding, dark }: CausesChartInput): ChartSpec {
  const { causes, pairs, tiles } = confounding;
  if (causes.length < 2) throw new RangeError("causesChart: fewer than two causes");
  const colours = theme(dark);
  const names = causes.map(({ name }) => name);
  const [across, down] = [names.slice(0, -1), names.slice(1)];
  const rows = pairs.map((pair) => rowOf(pair));
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(title, pairs),
    title: {
      text: title,
      subtitle: [...subtitleOf(tiles, pairs)],
    },
    background: colours.paper,
    padding: 18,
    width: across.length * CELL_WIDTH,
    height: down.length * CELL_HEIGHT,
    layer: [...(["cannot", "partly", "apart", "contained"] as const)].flatMap((telling) =>
      cellLayers(
        rows.filter((row) => row.telling === telling),
        { telling, colours, places: placesOf(across, down) },
      ),
    ),
    config: themeConfig(colours),
  };
}

/** What the words in the cells mean, as far as they stand there. */
function subtitleOf(tiles: number, pairs: readonly CausePair[]): readonly string[] {
  const has = (telling: Telling) => pairs.some((pair) => pair.telling === telling);
  return [
    `${tiles} tiles, cause by cause`,
    ...(has("cannot") ? ["cannot: changed together, so nobody can say which counts"] : []),
    ...(has("partly") ? ["%: how much the one explains of the other"] : []),
    ...(has("contained") ? ["part of it: belongs to the firing as a whole"] : []),
  ];
}

function rowOf({ first, second, telling, shared }: CausePair): Row {
  const { word } = LOOKS[telling];
  return {
    first,
    second,
    telling,
    word: word === "" ? `${Math.min(99, Math.round(100 * shared))} %` : word,
  };
}

function placesOf(across: readonly string[], down: readonly string[]) {
  const axis = { title: null, domain: false, grid: false } as const;
  return {
    x: {
      field: "first",
      type: "nominal" as const,
      scale: { domain: [...across], paddingInner: 0.06, paddingOuter: 0 },
      axis: {
        ...axis,
        orient: "bottom" as const,
        labelAngle: 0,
        labelLimit: CELL_WIDTH,
        labelExpr: WORDS_BELOW,
        labelBaseline: "top" as const,
      },
    },
    y: {
      field: "second",
      type: "nominal" as const,
      scale: { domain: [...down], paddingInner: 0.1, paddingOuter: 0 },
      axis: { ...axis, labelLimit: 220 },
    },
  };
}

/** Names of several words stand in lines below each other. */
const WORDS_BELOW = "split(datum.label, ' ')";

function cellLayers(
  rows: readonly Row[],
  by: {
    readonly telling: Telling;
    readonly colours: Theme;
    readonly places: ReturnType<typeof placesOf>;
  },
): readonly Layer[] {
  const { telling, colours, places } = by;
  if (rows.length === 0) return [];
  const { opacity } = LOOKS[telling];
  const isFull = telling === "cannot";
  return [
    {
      data: { values: [...rows] },
      mark: {
        type: "rect",
        fill: colours.ember,
        fillOpacity: opacity,
        stroke: isFull || telling === "partly" ? colours.ember : colours.grid,
        strokeWidth: 1.2,
      },
      encoding: places,
    },
    {
      data: { values: [...rows] },
      mark: {
        type: "text",
        fontSize: 13,
        fontWeight: isFull ? 600 : 400,
        color: isFull ? colours.paper : telling === "partly" ? colours.ink : colours.quiet,
      },
      encoding: { ...places, text: { field: "word", type: "nominal" } },
    },
  ];
}

function descriptionOf(title: string, pairs: readonly CausePair[]): string {
  const of = (telling: Telling) =>
    pairs
      .filter((pair) => pair.telling === telling)
      .map(({ first, second }) => `${first} with ${second}`);
  const said = [
    ["cannot be told apart", of("cannot")],
    ["partly mixed", of("partly")],
    ["told apart", of("apart")],
  ] as const;
  const words = said.flatMap(([what, list]) =>
    list.length === 0 ? [] : [`${what}: ${list.join(", ")}`],
  );
  return `${title}: pairs of causes, ${words.join("; ")}.`;
}
