import { describe, expect, it } from "vitest";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import { reviewBlocks } from "../../../src/core/reports/reviewBlocks.ts";
import { comparisonHtml, draftHtml, reviewHtml, reviewText } from "../../support/reportTexts.ts";
import { sampleFinding, sampleZone } from "../../support/samples/reports.ts";
import { sampleDraft, sampleReading, sampleReview } from "../../support/samples/reportsObjects.ts";
import { sampleComparison } from "../../support/samples/reportsTables.ts";

const DRAWING =
  '<svg xmlns="http://www.w3.org/2000/svg"><clipPath id="clip0"></clipPath><path clip-path="url(#clip0)"/></svg>';
const chart = { light: DRAWING, dark: DRAWING };
const charts = { firing: chart, cooling: chart, cones: chart };

function everyPage(): readonly string[] {
  return [
    reviewHtml(sampleReview(), { unit: "C", charts }),
    draftHtml(sampleDraft(), { unit: "F", charts }),
    comparisonHtml(sampleComparison(), { unit: "C", charts: { overlay: chart } }),
  ];
}

describe("every report as a page", () => {
  it("asks for nothing from anywhere", () => {
    for (const page of everyPage()) {
      expect(page).toContain("default-src 'none'; style-src 'unsafe-inline'; img-src data:");
      expect(page).not.toMatch(
        /<script|<link|<img|<iframe|@import|url\(["']?http|src=|href=(?!"#)/i,
      );
    }
  });

  it("gives each drawing its own ids", () => {
    for (const page of everyPage()) {
      const ids = [...page.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]);
      expect(new Set(ids).size).toBe(ids.length);
      const targets = [...page.matchAll(/url\(#([^)]+)\)/g)].map((match) => match[1]);
      for (const target of targets) expect(ids).toContain(target);
    }
  });

  it("names its language, one first heading, and every table", () => {
    for (const page of everyPage()) {
      expect(page).toContain('<html lang="en">');
      expect(page.match(/<h1/g)).toHaveLength(1);
      expect(page.match(/<caption>/g)?.length).toBe(page.match(/<table>/g)?.length);
    }
  });

  it("never promises that ware is safe for food", () => {
    for (const page of everyPage()) expect(page).not.toMatch(/food[\s-]*safe/i);
  });
});

describe("reviewHtml", () => {
  it("escapes names from the log and the record", () => {
    const nasty = `<script>alert("1")</script>\u001b[31m' onload='x`;
    const page = reviewHtml(
      sampleReview({
        title: nasty,
        zones: [sampleZone({ name: nasty }), sampleZone({ name: nasty })],
        reading: sampleReading({ name: nasty }),
        recordLines: [{ label: nasty, text: nasty }],
        findings: [sampleFinding({ zone: nasty })],
      }),
      { unit: "C" },
    );
    expect(page).not.toContain("<script");
    expect(page).not.toContain("\u001b");
    expect(page).not.toContain("' onload='");
    expect(page).toContain("&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;␛[31m");
  });

  it("says every sentence in the words of the text", () => {
    const words = (text: string) => text.replaceAll(/[\s\u00a0]+/g, " ").trim();
    const page = words(
      reviewHtml(sampleReview(), { unit: "C" })
        .replaceAll(/<\/?strong>/g, "")
        .replaceAll(/<[^>]+>/g, " ")
        .replaceAll("&nbsp;", " ")
        .replaceAll("&#39;", "'"),
    );
    const text = words(reviewText(sampleReview(), { unit: "C", paint: plainPaint }));
    const said = reviewBlocks(sampleReview(), { unit: "C" }).flatMap((block) => {
      if (block.kind === "list") return block.items;
      if (block.kind === "finding") return [block.statement, block.advice, block.where ?? ""];
      return "text" in block ? [block.text] : [];
    });
    expect(said.length).toBeGreaterThan(20);
    for (const sentence of said) {
      expect(page).toContain(words(sentence));
      expect(text).toContain(words(sentence));
    }
  });

  it("refuses a drawing that holds a script, which would be our mistake", () => {
    const firing = { light: "<svg><script>1</script></svg>", dark: DRAWING };
    expect(() => reviewHtml(sampleReview(), { unit: "C", charts: { firing } })).toThrow(RangeError);
  });
});
