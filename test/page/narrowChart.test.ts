import type { TopLevelSpec } from "vega-lite";
import { describe, expect, it } from "vitest";
import { fitsChart } from "../../src/core/charts/fitsChart.ts";
import { overlayChart } from "../../src/core/charts/overlayChart.ts";
import {
  type ChartRead,
  chartRead,
  type LayerRead,
  type Row,
} from "../../src/page/drawing/ChartRead.ts";
import { drawnChart } from "../../src/page/drawing/drawnChart.ts";
import { narrowChart } from "../../src/page/drawing/narrowChart.ts";

/** A telephone of 390 px less the margins of the page, 14.4 px on either side. */
const ROOM_PX = 361;

/** Two firings that rise for `hours` and cool for twice as long. */
function firings(names: readonly string[], hours = 10): TopLevelSpec {
  return overlayChart({
    title: "Firings aligned at the peak",
    subtitle: "Each firing with its peak at 0 h",
    zero: "the peak",
    firings: names.map((name, at) => ({
      name,
      curve: {
        timesSeconds: Float64Array.of(-hours * 3600, 0, (2 + at) * hours * 3600),
        tempsC: Float64Array.of(20, 1200 + at, 80),
        gaps: [],
      },
    })),
    bands: [],
    unit: "C",
  }) as TopLevelSpec;
}

const NAMES = ["A firing that was named at some length", "Second"];

const spread = (low: number, median: number, high: number) => ({ low, median, high });

const FITS = fitsChart({
  title: "How the glazes fit their clays",
  pairs: [
    {
      glaze: "a glaze with a long name",
      clay: "a clay with a longer name",
      body: null,
      computedPerK: spread(-0.4e-6, 1.4e-6, 2.6e-6),
      found: [],
    } as unknown as Parameters<typeof fitsChart>[0]["pairs"][number],
  ],
}) as TopLevelSpec;

function widthOf(spec: TopLevelSpec): number {
  return Number(/<svg[^>]* width="([\d.]+)"/.exec(drawnChart(spec, "narrow"))?.[1]);
}

/** Where a row lies in the drawing, from the top left corner of the plot [px]. */
function placeOf(row: Row, { encoding: { x, y } }: LayerRead, chart: ChartRead) {
  const share = (value: unknown, [low, high]: readonly [number, number]) =>
    (Number(value) - low) / (high - low);
  return {
    x: share(row[x.field], x.scale.domain) * chart.width,
    y: (1 - share(row[y.field], y.scale.domain)) * chart.height,
  };
}

function wordPlaces(spec: TopLevelSpec) {
  const chart = chartRead(spec);
  return chart.layer
    .filter(({ mark }) => mark.type === "text" && mark.stroke === undefined)
    .flatMap((layer) =>
      layer.data.values.map((row) => ({
        text: String(row.text),
        ...placeOf(row, layer, chart),
      })),
    );
}

describe("a chart drawn for a telephone", () => {
  it("is no wider than a telephone, whatever its firings and glazes are called", () => {
    for (const spec of [firings(NAMES), firings(NAMES, 90), FITS]) {
      expect(widthOf(spec)).toBeGreaterThan(ROOM_PX);
      expect(widthOf(narrowChart(spec))).toBeLessThanOrEqual(ROOM_PX);
    }
  });

  it("has its key below the plot, each name beside its piece of line, none lost", () => {
    const narrow = narrowChart(firings(NAMES));
    const chart = chartRead(narrow);
    const words = wordPlaces(narrow);
    expect(words.map(({ text }) => text).toSorted()).toEqual(
      wordPlaces(firings(NAMES))
        .map(({ text }) => text)
        .toSorted(),
    );
    const lines = chart.layer.filter(({ mark }) => mark.type === "line" && !mark.clip);
    expect(lines).toHaveLength(NAMES.length);
    for (const layer of lines) {
      const { y } = placeOf(layer.data.values[0] as Row, layer, chart);
      expect(y).toBeGreaterThan(chart.height);
      const name = words.find((word) => Math.abs(word.y - y) < 1);
      expect(NAMES.some((each) => name !== undefined && each.startsWith(name.text))).toBe(true);
    }
  });

  it("keeps every tick that its labels have room for, and the one at 0", () => {
    const chart = chartRead(narrowChart(firings(NAMES, 90)));
    const [layer] = chart.layer;
    const { values } = layer?.encoding.x.axis ?? { values: [] };
    const [low, high] = layer?.encoding.x.scale.domain ?? [0, 1];
    expect(values).toContain(0);
    expect(values.length).toBeGreaterThan(3);
    const apart = values.slice(1).map((value, at) => value - (values[at] as number));
    // Three digits of 13 px are at least 20 px wide.
    expect((Math.min(...apart) / (high - low)) * chart.width).toBeGreaterThan(20);
  });

  it("names each row of a chart of fits over its mark", () => {
    const narrow = narrowChart(FITS);
    const chart = chartRead(narrow);
    const point = chart.layer.find(({ mark }) => mark.type === "point") as LayerRead;
    const mark = placeOf(point.data.values[0] as Row, point, chart);
    const name = wordPlaces(narrow).find(({ text }) => text === "by the files");
    expect(name?.x).toBeCloseTo(0, 3);
    expect(mark.y - (name?.y ?? 0)).toBeGreaterThan(12);
    expect(mark.y - (name?.y ?? 0)).toBeLessThan(24);
  });
});
