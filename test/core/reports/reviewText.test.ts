import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Paint, plainPaint } from "../../../src/core/reports/Block.ts";
import { conesText, coneText } from "../../../src/core/reports/coneBlocks.ts";
import { REPORT_WIDTH } from "../../../src/core/reports/reportText.ts";
import { visibleWidth } from "../../../src/core/text/wrap.ts";
import { comparisonText, draftText, reviewText } from "../../support/reportTexts.ts";
import { sampleCautions, sampleFinding, sampleZone } from "../../support/samples/reports.ts";
import { sampleDraft, sampleReading, sampleReview } from "../../support/samples/reportsObjects.ts";
import {
  sampleCompared,
  sampleComparison,
  sampleCone,
  sampleCones,
} from "../../support/samples/reportsTables.ts";

const celsius = { unit: "C", paint: plainPaint } as const;
const fahrenheit = { unit: "F", paint: plainPaint } as const;

function everyText(options: typeof celsius | typeof fahrenheit): readonly string[] {
  return [
    reviewText(sampleReview(), options),
    draftText(sampleDraft(), options),
    comparisonText(sampleComparison(), options),
    conesText(sampleCones(), options),
    coneText(sampleCone(), options),
  ];
}

const unwrapped = (text: string) => text.replaceAll(/\s+/g, " ");
const tooWide = (text: string) =>
  text.split("\n").filter((line) => visibleWidth(line) > REPORT_WIDTH);

describe("every report as text", () => {
  it("keeps within 80 columns in both units", () => {
    for (const text of [...everyText(celsius), ...everyText(fahrenheit)])
      expect(tooWide(text)).toEqual([]);
  });

  it("keeps within 80 columns and shows no control character, for any names in the log", () => {
    const name = fc.string({ unit: "binary", minLength: 1, maxLength: 120 });
    fc.assert(
      fc.property(name, name, (title, zone) => {
        const review = sampleReview({
          title,
          zones: [sampleZone({ name: zone }), sampleZone({ name: title, peakC: 1000 })],
          reading: sampleReading({ name: title }),
          recordLines: [{ label: zone, text: title }],
          findings: [sampleFinding({ zone })],
        });
        const text = reviewText(review, celsius);
        expect(tooWide(text)).toEqual([]);
        expect(text.replaceAll("\n", "")).not.toMatch(/\p{Cc}/u);
      }),
      { numRuns: 40 },
    );
  });

  it("says the same with colours as without", () => {
    const bright: Paint = (style, text) => `\u001b[1m${text}\u001b[0m${style === "good" ? "" : ""}`;
    // biome-ignore lint/suspicious/noControlCharactersInRegex: colour codes start with it
    const bare = (text: string) => text.replaceAll(/\u001b\[\d+m/g, "");
    expect(bare(reviewText(sampleReview(), { unit: "C", paint: bright }))).toBe(
      reviewText(sampleReview(), celsius),
    );
  });

  it("never promises that ware is safe for food", () => {
    for (const text of everyText(celsius)) expect(text).not.toMatch(/food[\s-]*safe/i);
  });

  it("has no temperature in °C left when the reader wants °F, but in the words of a source", () => {
    const text = reviewText(sampleReview(), fahrenheit);
    const [answer = ""] = text.split("How the log was read");
    expect(answer).not.toContain("°C");
    expect(answer).toContain("peak 2169 °F");
    expect(answer).toContain("150 °F/h");
  });
});

describe("reviewText", () => {
  it("answers first, then has its rooms in order, and warns last", () => {
    const text = reviewText(sampleReview(), celsius);
    const headings = text.split("\n").filter((line) => /^[A-Z]/.test(line));
    expect(headings).toEqual([
      "Crackle tiles, second glaze firing of 14 March                  Sat 14 Mar 17:05",
      "Between cone 5 and 6, nearer 5, by its witness cones. Peak 1187 °C, Sun 03:30,",
      "Look at this",
      "How fast it cooled",
      "Cone 5 + 40 % (± 0.6 cones), peak 1187 °C",
      "Cones",
      "What the witness cones say",
      "Findings",
      "Through the inversions",
      "Ramps and holds",
      "Where in the kiln",
      "Against the plan",
      "What was heard",
      "From the firing record",
      "How the log was read",
      "What this rests on",
      "Take care",
    ]);
  });

  it("takes its headline from the hottest thermocouple", () => {
    const zones = [sampleZone({ peakC: 1100 }), sampleZone({ name: "middle", peakC: 1201.4 })];
    const text = reviewText(sampleReview({ zones }), celsius);
    expect(text).toContain("peak 1201 °C");
    expect(text).toContain("thermocouple middle, the hottest");
  });

  it("names the severity of each finding in words, worst first", () => {
    const text = reviewText(sampleReview(), celsius);
    const order = ["  Warning   ", "  Caution   ", "  Note      "].map((word) =>
      text.indexOf(word),
    );
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it("says when nothing stood out", () => {
    expect(reviewText(sampleReview({ findings: [] }), celsius)).toContain("Nothing stood out");
  });

  it("lists ten of the rows left out and counts the others", () => {
    const text = reviewText(sampleReview(), celsius);
    expect(text).toContain(" 312 ");
    expect(text).not.toContain(" 313 ");
    expect(text).toContain("… and 2 more rows.");
  });

  it("says a caution once however often it was raised", () => {
    const text = reviewText(sampleReview({ cautions: sampleCautions() }), celsius);
    expect(text.split("Leave the kiln shut")).toHaveLength(2);
  });

  it("leaves out what was not there", () => {
    const bare = sampleReview({
      zones: [sampleZone({ segments: [], crossings: [] })],
      spread: null,
      offset: null,
      comparison: null,
      heard: [],
      recordLines: [],
      cautions: [],
    });
    const text = reviewText(bare, celsius);
    for (const heading of ["Through the inversions", "Where in the kiln", "Against", "Take care"])
      expect(text).not.toContain(heading);
  });

  it("has no clock when the log has none", () => {
    const reading = sampleReading({ start: null, startOfDaySeconds: null });
    const text = reviewText(sampleReview({ reading }), celsius);
    expect(text).not.toContain("day 2");
    expect(text).toContain("10:25 after the start;");
  });

  it("shows a log without any temperature as what it is", () => {
    expect(reviewText(sampleReview({ zones: [], spread: null }), celsius)).toContain(
      "no temperature that could be read",
    );
  });
});

describe("draftText", () => {
  it("says whether the wanted cone goes down, and when the firing ends", () => {
    const text = unwrapped(draftText(sampleDraft(), celsius));
    expect(text).toContain(
      "cone wanted cone 5: falls 10:11 after the start (04:11, day 2), 13 min before the top hold ends",
    );
    expect(text).toContain("20 h 45 min, from 20 °C; ends 20:45 after the start (14:45, day 2)");
  });

  it("marks a rate that the schedule leaves to the kiln", () => {
    expect(draftText(sampleDraft(), celsius)).toContain("free, about 218 °C/h");
  });
});

describe("comparisonText", () => {
  it("does not claim a difference that is smaller than its doubt", () => {
    expect(unwrapped(comparisonText(sampleComparison(), celsius))).toContain(
      "may be no difference",
    );
  });

  it("claims one that is larger", () => {
    const firings = [sampleCompared(), sampleCompared({ title: "hot", coneIndex: 6.9 })];
    const text = unwrapped(comparisonText(sampleComparison({ firings }), celsius));
    expect(text).toContain(
      "Most heat in “hot”, least in “14 March, second firing”: 2.5 ± 0.8 cones apart, which is more than twice the ±.",
    );
  });
});

describe("conesText", () => {
  it("marks and explains what is from memory, and only then", () => {
    expect(conesText(sampleCones(), celsius)).toContain("1165 °C*");
    expect(conesText(sampleCones(), celsius)).toContain("* from memory");
    expect(conesText(sampleCones({ rows: [] }), celsius)).not.toContain("from memory");
  });
});
