import { describe, expect, it } from "vitest";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { tilesOf } from "../../../src/core/trials/Tile.ts";

function recordOf(name: string, trials: string) {
  const record = parseRecord(`formatVersion: 1\ntitle: ${name}\ntrials:\n${trials}`, name);
  if (!record.ok) throw new Error(record.problems.map(({ what }) => what).join());
  return record.value;
}

const row = (piece: string, more = "", clay = "Buff") =>
  `  - { piece: ${piece}, clay: ${clay}, glaze: pond ice, coat: 0.6 mm, glazedSides: one${more} }\n`;

describe("tiles of records", () => {
  it("keep the order of the firings, and one spelling of a clay", () => {
    const { tiles } = tilesOf([
      recordOf("a.yaml", row("A1") + row("A2", "", "' buff '")),
      recordOf("b.yaml", row("A1", "", "BUFF")),
    ]);
    expect(tiles.map(({ firing, piece, clay }) => [firing, piece, clay])).toEqual([
      ["a.yaml", "A1", "Buff"],
      ["a.yaml", "A2", "Buff"],
      ["b.yaml", "A1", "Buff"],
    ]);
  });

  it("count what they leave out: a second row for a piece, no spacing, nobody looked", () => {
    const { tiles, leftOut } = tilesOf([
      recordOf(
        "a.yaml",
        row("A1", ", crackSpacing: 5 mm, cracked: crackle") + row("a1") + row("A2"),
      ),
    ]);
    expect(tiles.map(({ piece }) => piece)).toEqual(["A1", "A2"]);
    expect(leftOut.map(({ piece, from }) => [piece, from])).toEqual([
      ["a1", "everything"],
      ["A2", "crack spacing"],
      ["A2", "through cracks"],
    ]);
  });

  it("take a crack through the wall from what was seen", () => {
    const { tiles } = tilesOf([
      recordOf(
        "a.yaml",
        row("A1", ", cracked: through") + row("A2", ", cracked: none") + row("A3"),
      ),
    ]);
    expect(tiles.map(({ throughCrack }) => throughCrack)).toEqual([true, false, null]);
  });
});
