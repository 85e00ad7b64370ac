import { describe, expect, it } from "vitest";
import { againstBlocks } from "../../../src/core/reports/trialBlocks.ts";
import type { FiringFact, FiringInNumbers } from "../../../src/core/trials/FiringStudy.ts";

function peak(value: number | null): FiringFact {
  return {
    name: "peak",
    label: "peak",
    kind: "temperature",
    cause: "heat",
    value,
    sigma: 3,
    sensorSigma: 0,
  };
}

function firing(title: string, value: number | null): FiringInNumbers {
  return { title, record: null, instrument: null, facts: [peak(value)] };
}

/** The cells of all tables, a line of a cell after the other. */
function cellsOf(firings: readonly FiringInNumbers[], base: number, unit: "C" | "F" = "C") {
  return againstBlocks(firings, { base, cones: [] }, unit).flatMap((block) =>
    block.kind === "table"
      ? block.rows.map((row) =>
          row.map((cell) => (typeof cell === "string" ? cell : cell.lines.join(" "))),
        )
      : [],
  );
}

describe("firings held against one of them", () => {
  // Two readings of ± 3 °C each lie apart by ± √(9 + 9) = 4.2 °C.
  const firings = [firing("a", 1200), firing("b", 1212), firing("c", 1195), firing("d", 1198)];

  it("lie above or below it by so much, which may be none between one and two deviations, and is not told within one", () => {
    expect(cellsOf(firings, 0)).toEqual([
      ["peak", "1200 °C", "+12 °C ± 4 °C", "−5 °C ± 4 °C may be none", "not to be told ± 4 °C"],
    ]);
  });

  it("are held against the one that was chosen", () => {
    expect(cellsOf(firings.slice(0, 2), 1)).toEqual([["peak", "1212 °C", "−12 °C ± 4 °C"]]);
  });

  it("lie apart in °F by nine fifths of it, without the 32", () => {
    expect(cellsOf(firings.slice(0, 2), 0, "F")).toEqual([["peak", "2192 °F", "+22 °F ± 8 °F"]]);
  });

  it("are not known to differ where one was not measured", () => {
    expect(cellsOf([firing("a", 1200), firing("b", null)], 0)).toEqual([
      ["peak", "1200 °C", "not known"],
    ]);
  });

  it("stand in threes, and beyond twelve are counted", () => {
    const many = Array.from({ length: 15 }, (_, at) => firing(String(at), 1200 + at));
    const blocks = againstBlocks(many, { base: 0, cones: [] }, "C");
    expect(blocks.filter(({ kind }) => kind === "table")).toHaveLength(4);
    expect(JSON.stringify(blocks.at(-1))).toContain(
      "The first 12 are held against firing 1; 2 more are not.",
    );
  });

  it("are none when there is one firing only", () => {
    expect(againstBlocks([firing("a", 1200)], { base: 0, cones: [] }, "C")).toEqual([]);
  });
});
