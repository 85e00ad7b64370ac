import { describe, expect, it } from "vitest";
import { pingsLoudnessChart } from "../../../src/core/charts/pingsLoudnessChart.ts";
import { listeningTo } from "../../support/samples/pings.ts";

const PINGS = listeningTo([1, 2, 3, 4], 10).pings.map((ping) => ({ ...ping, tempC: null }));

/** Shape, colour and number of each layer of pings, and the words of the key. */
function drawnWith(kinds: readonly (readonly number[])[]) {
  const chart = pingsLoudnessChart({
    title: "Pings",
    pings: PINGS,
    kinds,
    seconds: 10,
    unloadedSeconds: null,
  });
  const layers = chart.layer as readonly {
    readonly data?: { readonly values?: readonly object[] };
    readonly mark: { readonly shape?: string; readonly color?: string; readonly opacity?: number };
  }[];
  const dots = layers
    .filter(({ mark }) => mark.opacity === 0.75)
    .map(({ data, mark }) => ({ ...mark, count: data?.values?.length }));
  return { dots, words: JSON.stringify(chart.layer) };
}

describe("a chart of single pings", () => {
  it("shows deep and light ones by shape and colour where the tones tell them apart", () => {
    const { dots, words } = drawnWith([[2], [0, 1, 3]]);
    expect(dots.map(({ shape, count }) => [shape, count])).toEqual([
      ["triangle-down", 1],
      ["circle", 3],
    ]);
    expect(new Set(dots.map(({ color }) => color)).size).toBe(2);
    expect(words).toContain("deep ping");
    expect(words).toContain("light ping");
  });

  it("shows one kind where they are not told apart", () => {
    const { dots, words } = drawnWith([[0, 1, 2, 3]]);
    expect(dots.map(({ shape, count }) => [shape, count])).toEqual([["circle", 4]]);
    expect(words).not.toContain("deep ping");
  });
});
