import { describe, expect, it } from "vitest";
import { conesChart } from "../../../src/core/charts/conesChart.ts";
import { overlayChart } from "../../../src/core/charts/overlayChart.ts";
import { reviewPicture } from "../../../src/core/charts/reviewPicture.ts";
import { alignedSample, sampleTrace } from "../../support/samples/charts.ts";
import { layersOf, rangeOf, wordsOf } from "../../support/samples/chartsRead.ts";

const line = (cone: string, to: number) => ({
  cone,
  timesSeconds: Float64Array.of(0, 36000, 39600),
  heatwork: Float64Array.of(0, 0, to),
});

const AT_ZERO = { title: "t", subtitle: "s", zero: "the peak" };

describe("conesChart", () => {
  it("shows only the time in which something happens", () => {
    const [from, to] = rangeOf(conesChart({ title: "t", traces: [sampleTrace("5", 10)] }), "x") as [
      number,
      number,
    ];
    expect(from).toBeGreaterThan(7);
    expect(to).toBeLessThan(11);
  });

  it("names when a cone went down, or how far it came", () => {
    const words = wordsOf(conesChart({ title: "t", traces: [line("4", 2), line("6", 0.5)] }));
    expect(words).toContain("cone 4");
    expect(words).toContain("down at 10:30 h");
    expect(words).toContain("cone 6");
    expect(words).toContain("heatwork 0.50");
  });

  it("names the levels of bending", () => {
    const words = wordsOf(conesChart({ title: "t", traces: [line("4", 2)] }));
    expect(words).toEqual(expect.arrayContaining(["starts to bend", "half down", "down"]));
  });

  it("tells lines apart without colour", () => {
    const traces = ["3", "4", "5", "6", "7"].map((cone, i) => line(cone, 0.9 - i / 10));
    const looks = layersOf(conesChart({ title: "t", traces }), "line")
      .filter((layer) => layer.mark.clip)
      .map(({ mark }) => JSON.stringify([mark.strokeWidth, mark.strokeDash]));
    expect(new Set(looks).size).toBe(5);
  });

  it("needs a trace", () => {
    expect(() => conesChart({ title: "t", traces: [] })).toThrow("no traces");
  });
});

describe("overlayChart", () => {
  it("has the peaks at 0 h and time before it negative", () => {
    const spec = overlayChart({
      ...AT_ZERO,
      firings: [alignedSample("a", 0), alignedSample("b", 9)],
      bands: [],
      unit: "C",
    });
    const [from, to] = rangeOf(spec, "x") as [number, number];
    expect(from).toBeLessThan(0);
    expect(to).toBeGreaterThan(0);
    expect(wordsOf(spec)).toEqual(expect.arrayContaining(["a", "b"]));
  });

  it("needs a firing", () => {
    expect(() => overlayChart({ ...AT_ZERO, firings: [], bands: [], unit: "C" })).toThrow(
      "no firings",
    );
  });
});

describe("reviewPicture", () => {
  it("stacks charts in the order given and says what each shows", () => {
    const [a, b] = [line("4", 2), line("6", 0.5)].map((trace) =>
      conesChart({ title: trace.cone, traces: [trace] }),
    );
    const picture = reviewPicture([a!, b!]);
    expect(picture.vconcat).toHaveLength(2);
    expect(picture.description).toBe(`${a?.description} ${b?.description}`);
    expect(picture.background).toBe(a?.background);
  });

  it("needs a chart", () => {
    expect(() => reviewPicture([])).toThrow("no charts");
  });
});

describe("the key", () => {
  const firings = (count: number) =>
    Array.from({ length: count }, (_, i) => alignedSample(`tiles of week ${i}`, i));
  const chart = (count: number) =>
    overlayChart({ ...AT_ZERO, firings: firings(count), bands: [], unit: "C" });

  it("says the peaks when there is room", () => {
    expect(wordsOf(chart(3)).some((text) => text.startsWith("peak "))).toBe(true);
  });

  it("leaves them out rather than growing beyond the plot", () => {
    const spec = chart(18);
    expect(wordsOf(spec).some((text) => text.startsWith("peak "))).toBe(false);
    const temps = layersOf(spec, "text").flatMap((layer) =>
      layer.rows.map((row) => Number(row.tempC)),
    );
    const [foot, top] = rangeOf(spec, "y") as [number, number];
    expect(Math.min(...temps)).toBeGreaterThanOrEqual(foot);
    expect(Math.max(...temps)).toBeLessThanOrEqual(top);
  });
});
