import { describe, expect, it } from "vitest";
import { glazeFit } from "../../../src/core/glaze/glazeFit.ts";
import { glazeFitPiece, glazeFitShape } from "../../../src/core/reports/documents/glazeFitShape.ts";
import { glazeStressBlocks } from "../../../src/core/reports/glazeStressBlocks.ts";
import { reportText } from "../../../src/core/reports/reportText.ts";
import { asGiven, fewDigits, sharePer100, spreadWords } from "../../../src/core/text/quantities.ts";
import { evenBody, fitInput } from "../glaze/sampleFit.ts";

const textOf = (input: Parameters<typeof glazeFit>[0], unit: "C" | "F" = "C") =>
  reportText(
    { title: "A glaze", blocks: glazeStressBlocks(glazeFit(input), unit) },
    (_, text) => text,
  ).replace(/\s+/g, " ");

describe("the report of a fit", () => {
  it("says a pulled glaze, a squeezed one, and one of which neither is known", () => {
    expect(textOf(fitInput(7))).toContain("is pulled: it leans to crackle");
    expect(textOf(fitInput(5))).toContain("shrinks less than the body and is squeezed.");
    const unsure = fitInput(6);
    const glaze = { ...unsure.glaze, expansion: { ...unsure.glaze.expansion, sigmaPerK: 5e-7 } };
    expect(textOf({ ...unsure, glaze })).toContain("lies within what is not known");
  });

  it("never calls a ranking a verdict, and says what is left out", () => {
    const text = textOf(fitInput(7));
    expect(text).toContain("A ranking, no verdict");
    expect(text).toContain("foretell no single pot");
    expect(text).toContain("left out: the layer where glaze and body react");
  });

  it("says that the expansion is carried on over its range", () => {
    expect(textOf(fitInput(7))).toContain(
      "known for 20 °C to 400 °C and carried on to the set point",
    );
    expect(textOf(fitInput(7), "F")).toContain("known for 68 °F to 752 °F");
  });

  it("warns of slivers where the glaze is squeezed by more than 80 MPa, and of split walls", () => {
    const piece = { wallMm: 5, coatMm: 0.6, glazing: "one face, wall held" as const };
    const text = textOf(fitInput(3.5, { piece }));
    expect(text).toContain("squeezed by more than 80 MPa");
    expect(text).toContain("A closed wall split by a squeezed glaze inside");
    expect(textOf(fitInput(7, { piece }))).not.toContain("squeezed by more");
  });

  it("gives the bow of a free bar, and of no other", () => {
    expect(textOf(fitInput(7, { piece: { glazing: "one face, free to bend" } }))).toContain(
      "bows by",
    );
    expect(textOf(fitInput(7))).not.toContain("bows by");
  });

  it("shows what was measured beside what was computed, with what speaks against leaning on it", () => {
    const measured = {
      cracked: true,
      spacing: { meanMm: 20, lowMm: 18, highMm: 22, counted: "along lines" as const },
      pings: [
        { coatMm: 0.4, onsetC: 230, sigmaK: 10, kiln: "shut" as const },
        { coatMm: 0.8, onsetC: 500, sigmaK: 10, kiln: "opened" as const },
      ],
    };
    const text = textOf(fitInput(7, { measured }));
    expect(text).toContain("at least");
    expect(text).toContain("so it is a lower bound");
    expect(text).toContain("ping at 230 °C: near the cristobalite inversion");
    expect(text).toContain("ping at 500 °C not used: kiln was opened");
    expect(text).toContain("a listener may miss the first");
    expect(textOf(fitInput(7))).not.toContain("Measured against computed");
  });

  it("says where two ways disagree", () => {
    const measured = { cracked: false, spacing: null, pings: [] };
    expect(textOf(fitInput(9, { measured }))).toContain(
      "disagrees with the composition beyond both spreads",
    );
  });

  it("keeps to 80 columns", () => {
    const blocks = glazeStressBlocks(glazeFit(fitInput(7, { body: evenBody() })), "C");
    const lines = reportText({ title: "A glaze", blocks }, (_, text) => text).split("\n");
    expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });
});

describe("the document of a fit", () => {
  it("keeps its shape and its numbers", () => {
    const fit = glazeFit(fitInput(7.3, { measured: { cracked: true, spacing: null, pings: [] } }));
    const through = JSON.parse(JSON.stringify(glazeFitPiece(fit)));
    expect(glazeFitShape.parse(through)).toEqual(through);
    expect(through.stress.glazeMPa.median).toBe(fit.stress.glazeMPa.median);
  });
});

describe("numbers of a spread in words", () => {
  it.each([
    [0.347, "0.35"],
    [0.996, "1.0"],
    [9.96, "10"],
    [12.34, "12"],
    [-140.2, "−140"],
    [0.00789, "0.008"],
    [-0.0001, "0"],
    [0, "0"],
  ])("%d is %s", (value, words) => {
    expect(fewDigits(value)).toBe(words);
  });

  it("one number where nothing spreads", () => {
    expect(spreadWords({ low: 1, median: 1, high: 1 }, "mm")).toBe("1.0 mm");
    expect(spreadWords({ low: 0.1, median: 0.2, high: 0.3 }, "mm", 10)).toBe("2.0 (1.0 to 3.0) mm");
  });

  it("a share is never none or all unless it is so", () => {
    expect([0, 0.001, 0.5, 0.999, 1].map(sharePer100)).toEqual([
      "none of 100",
      "fewer than 1 of 100",
      "50 of 100",
      "more than 99 of 100",
      "all 100",
    ]);
  });

  it("a size as it was given", () => {
    expect([0.4, 6, 12.55].map(asGiven)).toEqual(["0.4", "6", "12.6"]);
  });
});
