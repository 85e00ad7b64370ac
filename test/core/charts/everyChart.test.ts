import { compile } from "vega-lite";
import { describe, expect, it } from "vitest";
import { conesChart } from "../../../src/core/charts/conesChart.ts";
import { coolingChart } from "../../../src/core/charts/coolingChart.ts";
import { firingChart } from "../../../src/core/charts/firingChart.ts";
import { overlayChart } from "../../../src/core/charts/overlayChart.ts";
import { reviewPicture } from "../../../src/core/charts/reviewPicture.ts";
import { strainChart } from "../../../src/core/charts/strainChart.ts";
import { type Curve, makeCurve } from "../../../src/core/curve/Curve.ts";
import { wareOf } from "../../../src/core/ware/givenWare.ts";
import { pieceStrain } from "../../../src/core/ware/pieceStrain.ts";
import { limitCurve } from "../../../src/core/ware/strainRisk.ts";
import { drawPng } from "../../../src/node/drawPng.ts";
import { drawSvg } from "../../../src/node/drawSvg.ts";
import {
  alignedSample,
  SAMPLE_BANDS,
  SAMPLE_LIMITS,
  samplePlan,
  sampleTrace,
  sampleZones,
} from "../../support/samples/charts.ts";

const styles = [
  { unit: "C", dark: false },
  { unit: "F", dark: true },
] as const;
interface Style {
  readonly unit: "C" | "F";
  readonly dark: boolean;
}

const TITLE = "Tiles <test> & more";
const { ware } = wareOf({ wallMm: 12, baseMm: 14, widestMm: 380 });

function strainOf(curve: Curve, { dark }: Style) {
  const piece = { name: "platters", ware, state: "glazed on bisque" } as const;
  return strainChart({ title: TITLE, curve, strained: pieceStrain(curve, piece), dark });
}

const charts = {
  firing: (style: Style) =>
    firingChart({
      title: TITLE,
      zones: sampleZones(),
      planned: samplePlan(),
      bands: SAMPLE_BANDS,
      conesDown: [{ cone: "5", atSeconds: 36900, tempC: 1185 }],
      events: [{ label: "pinging heard", atSeconds: 76000 }],
      startOfDaySeconds: 61500,
      ...style,
    }),
  draft: (style: Style) =>
    firingChart({
      title: TITLE,
      zones: [],
      planned: samplePlan(),
      bands: SAMPLE_BANDS,
      conesDown: [],
      events: [],
      startOfDaySeconds: null,
      ...style,
    }),
  cooling: (style: Style) =>
    coolingChart({
      title: TITLE,
      zones: sampleZones(),
      planned: samplePlan(),
      limits: SAMPLE_LIMITS,
      ...style,
    }),
  "cooling with a computed limit": (style: Style) =>
    coolingChart({
      title: TITLE,
      zones: sampleZones(),
      planned: samplePlan(),
      limits: SAMPLE_LIMITS,
      limitCurve: { label: "half the strength, computed", points: limitCurve(ware) },
      ...style,
    }),
  strain: (style: Style) => strainOf((sampleZones()[0] as { curve: Curve }).curve, style),
  "strain without an inversion": (style: Style) => strainOf(makeCurve([0, 3600], [20, 100]), style),
  "cooling that has not begun": (style: Style) =>
    coolingChart({
      title: TITLE,
      zones: [{ name: "top", curve: makeCurve([0, 3600], [20, 100]) }],
      planned: null,
      limits: [],
      ...style,
    }),
  cones: ({ dark }: Style) =>
    conesChart({ title: TITLE, traces: [sampleTrace("4", 9.75), sampleTrace("6", 10.7)], dark }),
  overlay: (style: Style) =>
    overlayChart({
      title: TITLE,
      subtitle: "Each firing with its peak at 0 h",
      zero: "the peak",
      firings: [alignedSample("March", 0), alignedSample("April", 12)],
      bands: SAMPLE_BANDS,
      ...style,
    }),
  "review picture": (style: Style) =>
    reviewPicture([charts.firing(style), charts.cooling(style), charts.cones(style)]),
};

const cases = Object.entries(charts).flatMap(([name, chart]) =>
  styles.map((style) => ({
    name: `${name}, °${style.unit}, ${style.dark ? "dark" : "light"}`,
    chart,
    style,
  })),
);

describe.each(cases)("$name", ({ chart, style }) => {
  it("is plain JSON, without a number that JSON cannot hold", () => {
    const spec = chart(style);
    expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
  });

  it("is the same every time", () => {
    expect(chart(style)).toEqual(chart(style));
  });

  it("compiles without a warning", () => {
    const warnings: string[] = [];
    compile(chart(style), { logger: collecting(warnings) });
    expect(warnings).toEqual([]);
  });

  it("says what is seen", () => {
    expect(chart(style).description).toMatch(/^Tiles <test> & more: .{20,}\.$/s);
  });

  it("draws as a self-contained SVG without a warning", async () => {
    const warnings: string[] = [];
    const svg = await drawSvg(chart(style), { onWarning: (message) => warnings.push(message) });
    expect(warnings).toEqual([]);
    expect(svg).toContain('role="img"><title>Tiles &lt;test&gt; &amp; more: ');
    expect(svg).toContain("Source Sans 3");
    expect(svg.match(/NaN|undefined|href="|<script|url\([^#]/g)).toBeNull();
  });
});

describe("drawSvg", () => {
  it("gives the same bytes every time", async () => {
    const style = { unit: "C", dark: false } as const;
    const first = await drawSvg(charts.cones(style));
    const second = await drawSvg(charts.cones(style));
    expect(first === second).toBe(true);
  });

  it("gives two charts different ids, so that both can stand on one page", async () => {
    const [light, dark] = await Promise.all(
      [false, true].map(async (isDark) =>
        idsOf(await drawSvg(charts.cones({ unit: "C", dark: isDark }))),
      ),
    );
    expect(light?.length).toBeGreaterThan(0);
    expect(light?.filter((id) => dark?.includes(id))).toEqual([]);
  });
});

describe("drawPng", () => {
  it("makes a PNG of the SVG's size times the scale", async () => {
    const svg = await drawSvg(charts.cones({ unit: "C", dark: false }));
    const [, width, height] = svg.match(/width="(\d+)" height="(\d+)"/) ?? [];
    const png = await drawPng(svg, { scale: 1 });
    const header = new DataView(png.buffer, png.byteOffset);
    expect([...png.subarray(1, 4)]).toEqual([0x50, 0x4e, 0x47]);
    expect([header.getUint32(16), header.getUint32(20)]).toEqual([Number(width), Number(height)]);
  });

  it("draws letters with the shipped fonts, in both weights", async () => {
    const text = (weight: number) =>
      drawPng(
        `<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><text y="15" font-weight="${weight}" font-family="&quot;Source Sans 3&quot;, sans-serif">kiln</text></svg>`,
      );
    const empty = await drawPng('<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"/>');
    expect(await text(400)).not.toEqual(empty);
    expect(await text(600)).not.toEqual(await text(400));
  });
});

describe("a small firing, compiled (regression)", () => {
  it("is what it was", async () => {
    const spec = firingChart({
      title: "Small",
      zones: [
        {
          name: "middle",
          curve: makeCurve(
            [0, 3600, 7200, 10800, 14400],
            [20, 500, 1000, 600, 200],
            [{ fromSeconds: 10800, toSeconds: 14400 }],
          ),
        },
      ],
      planned: makeCurve([0, 7200, 14400], [20, 1010, 150]),
      bands: SAMPLE_BANDS,
      conesDown: [{ cone: "06", atSeconds: 7100, tempC: 986 }],
      events: [{ label: "lid opened", atSeconds: 14000 }],
      startOfDaySeconds: 43200,
      unit: "C",
    });
    const compiled = JSON.stringify(compile(spec).spec, null, 1);
    await expect(`${compiled}\n`).toMatchFileSnapshot("../../golden/charts/smallFiring.vega.json");
  });
});

function idsOf(svg: string): readonly string[] {
  return [...svg.matchAll(/\bid="([^"]+)"/g)].map((match) => match[1] as string);
}

function collecting(warnings: string[]) {
  const logger = {
    level: () => logger,
    error: (...all: readonly unknown[]) => note(all),
    warn: (...all: readonly unknown[]) => note(all),
    info: () => logger,
    debug: () => logger,
  };
  function note(all: readonly unknown[]) {
    warnings.push(all.map(String).join(" "));
    return logger;
  }
  return logger as unknown as NonNullable<NonNullable<Parameters<typeof compile>[1]>["logger"]>;
}
