import { compile } from "vega-lite";
import { describe, expect, it } from "vitest";
import { reachChart } from "../../../src/core/charts/reachChart.ts";
import { learnedDemoKiln } from "../../support/kilns.ts";
import { SAMPLE_BANDS } from "../../support/samples/charts.ts";

const { reach } = learnedDemoKiln();
const base = { title: "Kiln <test>", reach, bands: SAMPLE_BANDS, powerKnown: true };

describe.each([
  { unit: "C", dark: false },
  { unit: "F", dark: true },
] as const)("reach chart in °$unit, dark: $dark", (style) => {
  const spec = reachChart({ ...base, ...style });

  it("is plain JSON", () => {
    expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
  });

  it("compiles without a warning", () => {
    const warnings: string[] = [];
    const collect = (...words: readonly unknown[]) => {
      warnings.push(words.join(" "));
      return logger;
    };
    const logger = {
      level: () => logger,
      warn: collect,
      error: collect,
      info: () => logger,
      debug: () => logger,
    } as unknown as NonNullable<NonNullable<Parameters<typeof compile>[1]>["logger"]>;
    compile(spec, { logger });
    expect(warnings).toEqual([]);
  });

  it("says what is seen", () => {
    expect(spec.description).toMatch(/^Kiln <test>: speed against temperature from .* by itself/);
  });
});

it("a reach chart shows only lines that have points", () => {
  const unseen = reach.map((row) => ({ ...row, seenCPerHour: null }));
  const spec = JSON.stringify(reachChart({ ...base, reach: unseen, unit: "C" }));
  expect(spec).not.toContain('"fastest climb seen"');
});

it("a reach chart without rows is a broken promise", () => {
  expect(() => reachChart({ ...base, reach: [], unit: "C" })).toThrow(RangeError);
});
