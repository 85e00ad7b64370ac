import { describe, expect, it } from "vitest";
import { firedPieces } from "../../../src/core/firing/firedPieces.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { recordLines } from "../../../src/core/record/recordLines.ts";
import { valued } from "../../support/schedules.ts";

const withWare = (...lines: readonly string[]) =>
  parseRecord(
    [
      "formatVersion: 1",
      "title: t",
      "ware:",
      "  - name: mugs",
      "    clay: grogged",
      ...lines.map((line) => `    ${line}`),
    ].join("\n"),
    "a.yaml",
  );

const problemsOf = (...lines: readonly string[]) => {
  const read = withWare(...lines);
  return read.ok ? [] : read.problems;
};

describe("the ware of a firing record", () => {
  it("may be of a body of one's own, on a shelf and a gap of one's own", () => {
    const record = valued(
      withWare(
        "body: { base: stoneware, name: mine, ruptureMPa: 30 }",
        "wall: 6",
        "base: 1/2 in",
        "widest: 9 cm",
        "shelf: 20 mm",
        "footGap: 1/8 in",
        "glazedSides: both",
      ),
    );
    const [piece] = firedPieces(record, null);
    expect(piece?.ware.body).toMatchObject({ name: "mine", ruptureMPa: { value: 30 } });
    // 1/2 in is 12.7 mm, 1/8 in is 3.175 mm, half of 9 cm is 45 mm.
    expect(piece?.ware.geometry).toMatchObject({
      wallMm: 6,
      baseMm: 12.7,
      footprintRadiusMm: 45,
      shelfMm: 20,
      footGapMm: 3.175,
      glazedSides: "both",
    });
    expect(piece?.assumed[0]).toBe("cordierite shelf assumed");
    const lines = recordLines(record).map(({ text }) => text);
    expect(lines.join()).toContain("body taken as mine");
    expect(lines.join()).toContain("shelf 20 mm");
    expect(lines.join()).toContain("glazed on both sides");
  });

  it("says where the thickest part stands in for wall and base", () => {
    const assumed = (...lines: readonly string[]) =>
      firedPieces(valued(withWare("body: stoneware", "widest: 90", ...lines)), null)[0]?.assumed[0];
    const thick = "taken to be as thick as the thickest part";
    expect(assumed("thickest: 8")).toBe(`wall and base ${thick}`);
    expect(assumed("thickest: 8", "wall: 5")).toBe(`base ${thick}`);
    expect(assumed("thickest: 8", "wall: 5", "base: 8")).toMatch(/^cordierite shelf/);
  });

  it("may be of a body by its words, as before", () => {
    expect(valued(withWare("body: porcelain 10")).ware[0]?.body?.name).toBe("porcelain cone 10");
  });

  it.each([
    ["body: { ruptureMPa: -5 }", "body.ruptureMPa", "ware/property-range"],
    ["body: { quartzFraction: 1.5 }", "body.quartzFraction", "ware/property-range"],
    ["body: { youngGPa: { value: 1, low: 2, high: 3 } }", "body.youngGPa", "ware/property-order"],
    ["body: { base: porclain }", "body.base", "ware/unknown-body"],
    ["body: { ruptureMpa: 5 }", "body.ruptureMpa", "record/unknown-key"],
    ["body: porclain", "body", "ware/unknown-body"],
    ["body: 7", "body", "record/wrong-value"],
    ["wall: 0.5", "wall", "ware/thickness"],
    ["base: 150", "base", "ware/thickness"],
    ["thickest: 4 m", "thickest", "ware/thickness"],
    ["shelf: 0.2 mm", "shelf", "ware/thickness"],
    ["footGap: 0", "footGap", "ware/foot-gap"],
    ["footGap: 12 cm", "footGap", "ware/foot-gap"],
    ["widest: 4 m", "widest", "ware/width"],
    ["glazedSides: three", "glazedSides", "record/wrong-value"],
  ])("says where it is wrong: %s", (line, place, code) => {
    expect(problemsOf(line).map((problem) => [problem.code, problem.where])).toEqual([
      [code, `a.yaml: ware[0].${place}, line 6`],
    ]);
  });

  it("offers the nearest word for a mistyped property", () => {
    expect(problemsOf("body: { ruptureMpa: 5 }")[0]?.fix).toContain("write ruptureMPa");
  });
});
