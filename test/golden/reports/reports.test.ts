import { comparisonText, draftText, reviewText } from "../../support/reportTexts.ts";
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";


import { plainPaint } from "../../../src/core/reports/Block.ts";

import { sampleDraft, sampleReview } from "../../support/samples/reportsObjects.ts";
import { sampleComparison } from "../../support/samples/reportsTables.ts";

const celsius = { unit: "C", paint: plainPaint } as const;
const fahrenheit = { unit: "F", paint: plainPaint } as const;

const goldens = [
  { name: "review.txt", text: () => reviewText(sampleReview(), celsius) },
  { name: "review-fahrenheit.txt", text: () => reviewText(sampleReview(), fahrenheit) },
  { name: "draft.txt", text: () => draftText(sampleDraft(), celsius) },
  { name: "comparison.txt", text: () => comparisonText(sampleComparison(), celsius) },
] as const;

describe("regression: the text of a sample", () => {
  it.each(goldens)("$name reads as it did (UPDATE_GOLDEN=1 writes it anew)", ({ name, text }) => {
    const path = fileURLToPath(new URL(name, import.meta.url));
    const now = text();
    if (process.env.UPDATE_GOLDEN === "1") writeFileSync(path, now);
    expect(now).toBe(readFileSync(path, "utf8"));
  });
});
