import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import {
  type PieceStrain,
  pieceStrain,
  type StrainedPiece,
} from "../../../src/core/ware/pieceStrain.ts";
import { draftHtml, draftText, reviewHtml, reviewText } from "../../support/reportTexts.ts";
import { sampleDraft, sampleReview } from "../../support/samples/reportsObjects.ts";
import { sampleWare } from "../ware/sampleWare.ts";

const FIRING = makeCurve([0, 6 * 3600, 17 * 3600], [20, 900, 20]);

const known = new Map<string, PieceStrain>();

function strains(state: StrainedPiece["state"], curve = FIRING, openedC: readonly number[] = []) {
  const ware = sampleWare("stoneware 6", 12);
  const key = `${state} ${curve.tempsC} ${openedC}`;
  const piece = known.get(key) ?? pieceStrain(curve, { name: "platters", ware, state }, openedC);
  known.set(key, piece);
  return [piece];
}

function text(of: ReturnType<typeof strains>): string {
  const said = reviewText(sampleReview({ strains: of }), { unit: "C", paint: plainPaint });
  const from = said.indexOf("\nStress in the ware");
  return from < 0 ? "" : said.slice(from, said.indexOf("\nCones", from)).replaceAll(/\s+/g, " ");
}

describe("the section on stress in the ware", () => {
  it("is not there when no body is named", () => {
    expect(text([])).toBe("");
    expect(reviewHtml(sampleReview(), { unit: "C" })).not.toContain("Stress in the ware");
    expect(draftHtml(sampleDraft(), { unit: "C" })).not.toContain("Stress in the ware");
  });

  it("tells ratio, word, range and moment of each passage, and how good they are", () => {
    const [piece] = strains("bisqued");
    const said = text(strains("bisqued"));
    expect(piece?.passages).toHaveLength(4);
    // The body has no cristobalite worth naming: only quartz on the way down gets a word.
    const worded = /platters (below 300 °C|quartz) [\d.]+, (low|watch|high) [\d.]+ to [\d.]+/g;
    const bare = /platters (below 300 °C|quartz) [\d.]+ [\d.]+ to [\d.]+/g;
    expect(said.match(worded)).toHaveLength(1);
    expect(said.match(bare)).toHaveLength(3);
    expect(said).toContain("good to a factor of two either way");
    expect(said).toContain("the stress of the glaze, and flaws");
    expect(said.match(/factor of two/g)).toHaveLength(1);
    expect(said).toContain("The marks are our own");
    expect(said).toContain("too strict for ware without cristobalite");
    expect(said).toContain("Bisque is weaker and softer");
  });

  it.each([
    ["bone dry", "Raw clay is not yet the fired body"],
    [null, "It is not said whether"],
  ] as const)("leaves the way up of ware that went in %s out, and says why", (state, why) => {
    const said = text(strains(state));
    expect(said).toContain(why);
    expect(said).not.toContain("Bisque is weaker");
    expect(said.match(/platters (below 300 °C|quartz)/g)).toHaveLength(2);
  });

  it("says that the ratio of a passage seen in part may be more", () => {
    const said = text(strains("bone dry", makeCurve([0, 5 * 3600], [560, 160])));
    expect(said).toContain("or more");
    expect(said).toContain("a gap or the end of the curve hides part of that passage");
    expect(text(strains("bone dry"))).not.toContain("or more");
  });

  it("says that nothing was reached when the kiln stayed cold", () => {
    expect(text(strains("bisqued", makeCurve([0, 3600], [20, 120])))).toContain(
      "No inversion was reached",
    );
  });

  it("sets opening and lifting out beside each other, a row for each temperature, in °F as well", () => {
    const draft = sampleDraft({ strains: strains("bisqued", FIRING, [200, 150, 100]) });
    const said = draftText(draft, { unit: "F", paint: plainPaint }).replaceAll(/\s+/g, " ");
    for (const temp of ["392 °F", "302 °F", "212 °F"])
      expect(said).toMatch(new RegExp(`platters ${temp} [\\d.]+ [\\d.]+ `));
    expect(said).toContain("A cold table or a draught is harder on it.");
  });

  it("fits 80 columns", () => {
    const review = sampleReview({ strains: strains("bisqued", FIRING, [200]) });
    for (const line of reviewText(review, { unit: "C", paint: plainPaint }).split("\n"))
      expect(line.length).toBeLessThanOrEqual(80);
  });

  it("stands after the inversions on a page, its drawing below its tables", () => {
    const chart = { light: "<svg>STRAIN</svg>", dark: "<svg>STRAIN</svg>" };
    const strained = strains("bisqued", FIRING, [200]);
    for (const page of [
      reviewHtml(sampleReview({ strains: strained }), { unit: "C", charts: { strain: chart } }),
      draftHtml(sampleDraft({ strains: strained }), { unit: "C", charts: { strain: chart } }),
    ]) {
      const places = [
        "Through the inversions</h2>",
        "Stress in the ware</h2>",
        "platters",
        "STRAIN",
      ].map((mark) => page.indexOf(mark, page.indexOf("Through the inversions</h2>")));
      expect(places).not.toContain(-1);
      expect(places).toEqual(places.toSorted((a, b) => a - b));
    }
  });
});
