import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inert } from "../../../src/core/text/escape.ts";

const ESCAPE = "\u001b";

describe("inert", () => {
  it("leaves ordinary text of any language alone", () => {
    for (const text of ["top shelf, 1186 °C", "Töpferei Nº 3", "上段 ±", "می‌خواهم"])
      expect(inert(text)).toBe(text);
  });

  it("shows a colour code as text", () => {
    expect(inert(`${ESCAPE}[31mupper${ESCAPE}[0m`)).toBe("␛[31mupper␛[0m");
  });

  it("keeps a name with line breaks and tabs on one line", () => {
    expect(inert("upper\r\n\tshelf\u2028x")).toBe("upper shelf x");
  });

  it("shows what turns or hides the text around it", () => {
    expect(inert("a\u202eb\u200bc\u009b31m")).toBe("a�b�c�31m");
  });

  it("leaves no control character, for any text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect(inert(text)).not.toMatch(/[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]/u);
      }),
    );
  });

  it("changes nothing the second time, for any text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect(inert(inert(text))).toBe(inert(text));
      }),
    );
  });
});
