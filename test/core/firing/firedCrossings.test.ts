import { describe, expect, it } from "vitest";
import { firedCrossings, firedPieces } from "../../../src/core/firing/firedPieces.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { corners, sampled } from "../../support/curves.ts";

const FIRING = sampled(corners([0, 20], [8, 1200], [14, 600], [20, 20]), 60);

function record(ware: string) {
  return parseRecord(`formatVersion: 1\ntitle: t\nware:\n${ware}\n`, "r.yaml");
}

function pieces(...ware: readonly string[]) {
  const read = record(ware.map((piece) => `  - { name: mugs, clay: own, ${piece} }`).join("\n"));
  if (!read.ok) throw new RangeError(read.problems.map(({ what }) => what).join());
  return firedPieces(read.value, null);
}

function quartz(...ware: readonly string[]) {
  const crossings = firedCrossings(FIRING, { pieces: pieces(...ware) });
  return crossings.find(
    ({ band, direction }) => band === "quartz inversion" && direction === "cooling",
  );
}

describe("crossings of a firing", () => {
  it("are judged by a computed limit, and carry stress over strength", () => {
    const crossing = quartz("body: stoneware cone 6, wall: 6, base: 12");
    expect(crossing?.strainRatio).toBeGreaterThan(0);
    expect(crossing?.limitMeantFor).toContain("mugs (stoneware");
    expect(crossing?.limitBasis).toMatch(/^computed/);
  });

  it("are judged for the piece that stands the least", () => {
    const thin = "body: stoneware cone 6, wall: 5, base: 5, widest: 80";
    const thick = "body: stoneware cone 6, wall: 20, base: 25, widest: 400";
    const limit = quartz(thick)?.limitCPerHour as number;
    expect(limit).toBeLessThan(quartz(thin)?.limitCPerHour as number);
    expect(quartz(thin, thick)?.limitCPerHour).toBe(limit);
    expect(quartz(thick, thin)?.strainRatio).toBe(quartz(thick)?.strainRatio);
  });

  it("are computed for stoneware when no body is named, as if it were", () => {
    const [unnamed, named] = [quartz("thickest: 8"), quartz("body: stoneware cone 6, thickest: 8")];
    expect(unnamed?.strainRatio).toBe(named?.strainRatio);
    expect(unnamed?.limitCPerHour).toBe(named?.limitCPerHour);
  });
});

describe("ware in a record", () => {
  it.each([
    ["body: plasticine", /plasticine/],
    ["wall: 0.2", /0\.2 mm/],
    ["base: 150", /150 mm/],
  ])("is refused for %s, with the place", (piece, says) => {
    const read = record(`  - { name: mugs, clay: own, ${piece} }`);
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems[0]?.where).toContain("ware[0]");
    expect(read.problems[0]?.what).toMatch(says);
  });
});
