import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import type { CrackFacts } from "../../../src/core/diagnosis/crackFacts.ts";
import { diagnosisOf } from "../../../src/core/diagnosis/diagnose.ts";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import { documentJsonSchema } from "../../../src/core/reports/documents/documentJsonSchema.ts";
import { reviewDocument } from "../../../src/core/reports/documents/reviewDocument.ts";
import { reviewHtml, reviewText } from "../../support/reportTexts.ts";

import { sampleReview } from "../../support/samples/reportsObjects.ts";

const facts: CrackFacts = {
  cases: [
    {
      piece: "platter",
      count: 1,
      what: "through-crack",
      edges: "sharp",
      where: null,
      pattern: null,
      when: null,
      rings: null,
      glazedSides: null,
      coatMm: null,
      wallMm: null,
      ware: null,
      trials: [],
    },
  ],
  sounds: [],
  trials: [],
  opening: { tempC: 280, maybe: [{ tempC: 280, share: 1 }], notAboveC: null },
  stressOf: () => ({
    quartz: { ratio: 0.8, fastestCPerHour: 150 },
    cristobalite: null,
    cristobaliteShare: 0.01,
    openingAt: (tempC) => tempC / 500,
  }),
  climb: { steamCPerHour: null, quartzCPerHour: null },
  states: [],
};
const { causes: diagnosis, pieces: diagnosedPieces } = diagnosisOf(facts);
const review = sampleReview({ diagnosis, diagnosedPieces });

describe("a diagnosis in a report", () => {
  it("keeps to the JSON Schema of a review, and is null when nothing was weighed", () => {
    const validate = new Ajv2020({ strict: true }).compile(documentJsonSchema("review"));
    validate(JSON.parse(JSON.stringify(reviewDocument(review))));
    expect(validate.errors ?? []).toEqual([]);
    expect(reviewDocument(sampleReview()).diagnosis).toBeNull();
  });

  it("carries its numbers unrounded and its sentences in °C", () => {
    const causes = reviewDocument(review).diagnosis?.causes ?? [];
    const quartz = causes.find(({ kind }) => kind === "dunting at quartz");
    expect(quartz?.posterior).toBeGreaterThan(0.15);
    expect(quartz?.evidence.find(({ question }) => question === "quartz")).toMatchObject({
      direction: "for",
      weight: "strong",
      evidence: [
        { name: "fastest", value: 150, kind: "rate", unit: "°C/h" },
        { name: "stress", value: 0.8, kind: "ratio", unit: "1" },
      ],
    });
  });

  it("is told in the reader's unit", () => {
    const text = reviewText(review, { unit: "F", paint: plainPaint });
    expect(text).toContain("opened at 536 °F");
    expect(text).toContain("270 °F/h through quartz");
  });

  it("says the same in the text and on the page, where lines to copy keep their spaces", () => {
    const html = reviewHtml(review, { unit: "C" });
    expect(html).toContain("What kind of crack is it?");
    expect(html).toMatch(/<pre>found:\n {2}- piece: mark or name of the piece\n/);
    expect(reviewText(review, { unit: "C", paint: plainPaint })).toContain(
      "\n  found:\n    - piece: mark or name of the piece\n",
    );
  });

  it("has no section when nothing was heard or found", () => {
    const text = reviewText(sampleReview(), { unit: "C", paint: plainPaint });
    expect(text).not.toContain("kind of crack");
  });

  it("says on what ground its weights stand", () => {
    const text = reviewText(review, { unit: "C", paint: plainPaint });
    expect(text).toContain("Kinds of crack: how often each comes in a usual firing");
  });
});
