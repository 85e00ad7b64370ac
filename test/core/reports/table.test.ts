import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Paint, plainPaint, table } from "../../../src/core/reports/Block.ts";
import { visibleWidth } from "../../../src/core/text/wrap.ts";

const columns = [
  { head: "zone", align: "left" },
  { head: "peak", align: "right" },
] as const;
const bright: Paint = (_style, text) => `\u001b[31m${text}\u001b[39m`;

describe("table", () => {
  it("sets text to the left and numbers to the right", () => {
    const rows = [
      ["upper", "1187 °C"],
      ["lower shelf", "98 °C"],
    ];
    expect(table({ columns, rows, width: 40, indent: "  ", paint: plainPaint })).toEqual([
      "  zone            peak",
      "  upper        1187 °C",
      "  lower shelf    98 °C",
    ]);
  });

  it("puts the lines of a cell below each other", () => {
    const rows = [["upper", { lines: ["84 °C/h", "over it"], style: "warning" as const }]];
    expect(table({ columns, rows, width: 40, indent: "", paint: plainPaint })).toEqual([
      "zone      peak",
      "upper  84 °C/h",
      "       over it",
    ]);
  });

  it("lines up the same with colours as without, for any cells and width", () => {
    const cell = fc.oneof(fc.string(), fc.constant("上段 1186 °C"));
    fc.assert(
      fc.property(
        fc.array(fc.tuple(cell, cell)),
        fc.integer({ min: 16, max: 60 }),
        (rows, width) => {
          const plain = table({ columns, rows, width, indent: "  ", paint: plainPaint });
          const coloured = table({ columns, rows, width, indent: "  ", paint: bright });
          for (const line of plain) expect(visibleWidth(line)).toBeLessThanOrEqual(width);
          expect(coloured.map(visibleWidth)).toEqual(plain.map(visibleWidth));
        },
      ),
    );
  });

  it("is a mistake of ours when a row has too few cells", () => {
    expect(() =>
      table({ columns, rows: [["upper"]], width: 40, indent: "", paint: plainPaint }),
    ).toThrow(RangeError);
  });
});
