import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { visibleWidth, wrap } from "../../../src/core/text/wrap.ts";

describe("wrap", () => {
  it("breaks between words and hangs the other lines under the first", () => {
    expect(wrap("slow through both inversions", { width: 16, first: "• ", rest: "  " })).toEqual([
      "• slow through",
      "  both",
      "  inversions",
    ]);
  });

  it("keeps a number beside its unit", () => {
    expect(wrap("fell at 50 °C/h", { width: 12 })).toEqual(["fell at", "50 °C/h"]);
    expect(wrap("until day 2 of it", { width: 10 })).toEqual(["until", "day 2 of", "it"]);
  });

  it("cuts a word that is longer than a line", () => {
    expect(wrap("abcdefgh", { width: 3 })).toEqual(["abc", "def", "gh"]);
  });

  it("gives one empty line for an empty text", () => {
    expect(wrap("", { width: 10 })).toEqual([""]);
  });

  it("is a mistake of ours to ask for without room", () => {
    expect(() => wrap("a", { width: 3, first: "  " })).toThrow(RangeError);
  });

  it("never passes the width and loses no word, for any text", () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 4, max: 40 }), (text, width) => {
        const lines = wrap(text, { width, first: "- ", rest: "  " });
        for (const line of lines) expect(visibleWidth(line)).toBeLessThanOrEqual(width);
        const squeezed = (value: string) => value.replaceAll(/\s/g, "");
        expect(squeezed(lines.join("")).slice(1)).toBe(squeezed(text));
      }),
    );
  });
});

describe("visibleWidth", () => {
  it("counts no colour code", () => {
    expect(visibleWidth("\u001b[1;31mupper\u001b[0m")).toBe(5);
  });

  it("counts two for wide characters and none for marks that join", () => {
    expect(visibleWidth("上段")).toBe(4);
    expect(visibleWidth("e\u0301")).toBe(1);
  });
});
