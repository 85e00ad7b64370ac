import { describe, expect, it } from "vitest";
import { leanSource, withoutJsonSchema } from "../../src/page/leanSource.ts";

describe("a source file as the page needs it", () => {
  it("has lost the descriptions of its schemas and nothing else", () => {
    const code = `const A = z.string().describe("a \\"word\\", or two").max(3);\nconst B = z\n  .number()\n  .describe(\n    "how much",\n  );`;
    expect(leanSource(code)).toBe(
      "const A = /* @__PURE__ */ z.string().max(3);\nconst B = /* @__PURE__ */ z.number()\n  ;",
    );
  });

  it("keeps a description that is worked out", () => {
    const code = "x.describe(upTo(most))";
    expect(leanSource(code)).toBe(code);
  });
});

describe("the writer of JSON Schemas", () => {
  it("keeps its names and does nothing", () => {
    const code = "export const first = () => 1;\nexport function second() {}\nfunction own() {}";
    expect(withoutJsonSchema(code)).toBe(
      "const none = () => none;\nexport { none as first, none as second };",
    );
  });
});
