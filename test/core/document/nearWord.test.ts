import { describe, expect, it } from "vitest";
import { nearWord } from "../../../src/core/text/nearWord.ts";

describe("nearWord", () => {
  it.each([
    ["rote", "rate"],
    ["titel", "title"],
    ["SEGMENT", "segments"],
    ["kettle", null],
  ])("takes %s for %s", (word, meant) => {
    expect(nearWord(word, ["rate", "title", "segments"])).toBe(meant);
  });
});
