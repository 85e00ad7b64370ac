import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/core/problem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { recordLines } from "../../../src/core/record/recordLines.ts";

const HEAD = "formatVersion: 1\ntitle: x\n";

describe("what was found on the ware, in a record", () => {
  it("is read with nothing but what was noted", () => {
    const record = parseRecord(
      `${HEAD}found: [{ piece: platter, what: through-crack, edges: sharp, where: rim, pattern: one long line, when: at unloading, rings: dull, note: rim to foot }, { rings: clear }]\n`,
      "a.yaml",
    );
    expect(record.ok && record.value.found).toEqual([
      {
        piece: "platter",
        what: "through-crack",
        edges: "sharp",
        where: "rim",
        pattern: "one long line",
        when: "at unloading",
        rings: "dull",
        note: "rim to foot",
      },
      {
        piece: null,
        what: null,
        edges: null,
        where: null,
        pattern: null,
        when: null,
        rings: "clear",
        note: null,
      },
    ]);
    expect(record.ok && recordLines(record.value)).toEqual([
      {
        label: "found",
        text: "platter, cracked through the wall, one long line, begins at the rim, edges sharp, first seen at unloading, rings dull, rim to foot",
      },
      { label: "found", text: "rings clear" },
    ]);
  });

  it("is empty when the record says nothing of it", () => {
    const record = parseRecord(HEAD, "a.yaml");
    expect(record.ok && record.value.found).toEqual([]);
  });

  it("names what may stand there when something else does", () => {
    const record = parseRecord(`${HEAD}found:\n  - { edges: blunt, rnigs: dull }\n`, "a.yaml");
    const texts = record.ok ? [] : record.problems.map(problemText);
    expect(texts.join("\n")).toContain("sharp or rounded under glaze");
    expect(texts.join("\n")).toContain("rings");
    expect(texts.join("\n")).toContain("line 4");
  });
});
