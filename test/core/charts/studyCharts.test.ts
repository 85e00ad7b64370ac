import { compile } from "vega-lite";
import { describe, expect, it } from "vitest";
import { causesChart } from "../../../src/core/charts/causesChart.ts";
import { firingsChart } from "../../../src/core/charts/firingsChart.ts";
import { fitsChart } from "../../../src/core/charts/fitsChart.ts";
import { spacingChart } from "../../../src/core/charts/spacingChart.ts";
import { confoundingOf } from "../../../src/core/trials/confoundingOf.ts";
import type { FitStudy } from "../../../src/core/trials/FiringStudy.ts";
import { tileCauses } from "../../../src/core/trials/firingCauses.ts";
import { fitSpacing } from "../../../src/core/trials/fitSpacing.ts";
import type { Tile } from "../../../src/core/trials/Tile.ts";
import { drawSvg } from "../../../src/node/drawSvg.ts";
import { crackleStudy, PLAIN_TRUTH, TWO_CLAYS } from "../../support/crackleStudies.ts";
import { alignedSample, SAMPLE_BANDS } from "../../support/samples/charts.ts";
import { valued } from "../../support/schedules.ts";
import { someTile } from "../trials/someTile.ts";

const TITLE = "Tiles <test> & more";

const study = crackleStudy(
  { ...PLAIN_TRUTH, sizeMm: 9 },
  { ...TWO_CLAYS, sides: ["one", "both"] },
  3,
);
const fit = valued(fitSpacing(study, 1));

function confounded(tiles: readonly Tile[]) {
  return confoundingOf(tileCauses(tiles, []), tiles.length);
}

const EXPECTED = [
  {
    clay: study[0]?.clay ?? "",
    points: [
      { coatMm: 0.3, lowMm: null, medianMm: null, highMm: null },
      { coatMm: 0.6, lowMm: 2, medianMm: 4, highMm: null },
      { coatMm: 1.2, lowMm: 3, medianMm: 6, highMm: 12 },
    ],
  },
];

const PAIRS: FitStudy["pairs"] = [
  {
    glaze: "pond ice",
    clay: "Tarrow white",
    bodyName: "stoneware",
    expansionFrom: "computed",
    tiles: 5,
    computedPerK: { low: -0.5e-6, median: 1e-6, high: 2.5e-6 },
    found: [
      {
        from: "crack spacing",
        holds: "about",
        tiles: 4,
        perK: { low: 0.8e-6, median: 1.25e-6, high: 1.9e-6 },
        leastPerK: 1e-6,
        mostPerK: 1.5e-6,
        agreeing: 4,
      },
      {
        from: "no cracks",
        holds: "at most",
        tiles: 1,
        perK: { low: 0.6e-6, median: 0.75e-6, high: 0.9e-6 },
        leastPerK: 0.75e-6,
        mostPerK: 0.75e-6,
        agreeing: 1,
      },
    ],
    foundOverExpected: null,
    expected: [],
    expectedIsFor: "one",
  },
];

const charts = {
  spacing: (dark: boolean) => spacingChart({ title: TITLE, tiles: study, fit, dark }),
  "spacing of one coat": (dark: boolean) =>
    spacingChart({
      title: TITLE,
      tiles: [someTile(), someTile({ pitchMm: null })],
      fit: null,
      dark,
    }),
  "spacing of uncracked tiles": (dark: boolean) =>
    spacingChart({ title: TITLE, tiles: [someTile({ pitchMm: null })], fit: null, dark }),
  "spacing with what files let expect": (dark: boolean) =>
    spacingChart({ title: TITLE, tiles: study, fit, expected: EXPECTED, dark }),
  fits: (dark: boolean) => fitsChart({ title: TITLE, pairs: PAIRS, dark }),
  causes: (dark: boolean) => causesChart({ title: TITLE, confounding: confounded(study), dark }),
  firings: (dark: boolean) =>
    firingsChart({
      title: TITLE,
      firings: [
        { name: "March", curve: alignedSample("March", 0).curve, opened: null },
        {
          name: "April, with a name that is too long for one line",
          curve: alignedSample("April", 12).curve,
          opened: { atSeconds: 15 * 3600, tempC: 90 },
        },
      ],
      bands: SAMPLE_BANDS,
      unit: dark ? "F" : "C",
      dark,
    }),
};

describe.each(
  Object.entries(charts).flatMap(([name, chart]) =>
    [false, true].map((dark) => ({ name: `${name}, ${dark ? "dark" : "light"}`, chart, dark })),
  ),
)("$name", ({ chart, dark }) => {
  it("is plain JSON and says what is seen", () => {
    const spec = chart(dark);
    expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
    expect(spec.description).toMatch(/^Tiles <test> & more: .{20,}\.$/s);
  });

  it("compiles and draws without a warning", async () => {
    const warnings: string[] = [];
    const warn = (message: string) => warnings.push(message);
    const logger = {
      level: () => logger,
      warn: (...said: readonly unknown[]) => {
        warnings.push(said.join(" "));
        return logger;
      },
      info: () => logger,
      debug: () => logger,
      error: (...said: readonly unknown[]) => {
        warnings.push(said.join(" "));
        return logger;
      },
    };
    compile(chart(dark), { logger: logger as never });
    const svg = await drawSvg(chart(dark), { onWarning: warn });
    expect(warnings).toEqual([]);
    expect(svg.match(/NaN|undefined|href="|<script/g)).toBeNull();
  });
});

describe("a chart of spacing against coat", () => {
  const text = JSON.stringify(charts.spacing(false));

  it("tells clays by shape and sides by filling, so that colour is never alone", () => {
    const marks = [...text.matchAll(/"shape":"(circle|square)","size":80,"fill":"(#\w+)"/g)].map(
      ([, shape, fill]) => `${shape} ${fill === "#fcf8f2" ? "open" : "filled"}`,
    );
    expect([...new Set(marks)].sort()).toEqual([
      "circle filled",
      "circle open",
      "square filled",
      "square open",
    ]);
  });

  it("puts an arrow over every tile that did not crack, from the bound upwards", async () => {
    const uncracked = study.filter(({ spacing }) => spacing.kind === "uncracked").length;
    expect(uncracked).toBeGreaterThan(0);
    const spec = charts.spacing(false);
    const heads = spec.layer.flatMap((layer) =>
      "mark" in layer &&
      typeof layer.mark === "object" &&
      "shape" in layer.mark &&
      layer.mark.shape === "triangle-up" &&
      layer.data &&
      "values" in layer.data
        ? (layer.data.values as readonly { readonly end?: number; readonly logSpacing: number }[])
        : [],
    );
    // The key shows one more.
    expect(heads).toHaveLength(uncracked + 1);
    for (const { end, logSpacing } of heads) if (end !== undefined) expect(logSpacing).toBe(end);
    expect(heads[0]?.logSpacing).toBeGreaterThan(Math.log10(9));
  });

  it("names the powers ½ and 1, and leaves them out where no slope can be seen", () => {
    expect(text).toContain("power ½");
    expect(JSON.stringify(charts["spacing of one coat"](false))).not.toContain("power ½");
  });

  it("throws when no tile says anything", () => {
    const silent = someTile({ spacing: { kind: "not measured", why: "nobody looked" } });
    expect(() => spacingChart({ title: TITLE, tiles: [silent], fit: null })).toThrow(RangeError);
  });
});

describe("a chart of fits", () => {
  const text = JSON.stringify(charts.fits(false));

  it("has a middle and a range for the files and for every kind of evidence", () => {
    for (const row of [
      '"perMillion":-0.5,"end":2.5',
      '"perMillion":0.8,"end":1.9',
      '"perMillion":0.6,"end":0.9',
      '"perMillion":1.25',
    ])
      expect(text).toContain(row);
    expect(text).toContain("crack spacing, 4 tiles");
    expect(text).toContain("no cracks, one tile");
  });

  it("draws a bound as an arrow head towards where the truth may lie", () => {
    expect(text).toContain('"shape":"triangle-left"');
    expect(text).not.toContain('"shape":"triangle-right"');
  });

  it("throws without any pair", () => {
    expect(() => fitsChart({ title: TITLE, pairs: [] })).toThrow(RangeError);
  });
});

describe("a grid of causes", () => {
  it("says of each pair in a word whether the tiles tell it apart", () => {
    const tiles = [
      someTile({ clay: "white", glazedSides: "one", coatMm: 0.4 }),
      someTile({ clay: "white", glazedSides: "one", coatMm: 0.8 }),
      someTile({ clay: "buff", glazedSides: "both", coatMm: 0.4 }),
      someTile({ clay: "buff", glazedSides: "both", coatMm: 0.8 }),
    ];
    const spec = JSON.stringify(causesChart({ title: TITLE, confounding: confounded(tiles) }));
    expect(spec).toContain('"first":"clay","second":"sides","telling":"cannot","word":"cannot"');
    expect(spec).toContain('"first":"clay","second":"coat","telling":"apart","word":"told apart"');
  });

  it("throws with fewer than two causes", () => {
    expect(() => causesChart({ title: TITLE, confounding: confounded([someTile()]) })).toThrow(
      RangeError,
    );
  });
});

describe("firings one by one", () => {
  it("are twelve at most, and the rest is said", () => {
    const { curve } = alignedSample("March", 0);
    const firings = Array.from({ length: 15 }, (_, at) => ({
      name: `firing ${at}`,
      curve,
      opened: null,
    }));
    const spec = firingsChart({ title: TITLE, firings, bands: SAMPLE_BANDS, unit: "C" });
    expect(spec.concat).toHaveLength(12);
    expect(JSON.stringify(spec.title)).toContain("3 more are not drawn");
  });
});
