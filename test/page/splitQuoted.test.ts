import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { splitQuoted as byLibrary } from "../../src/node/readLogChunks.ts";
import { splitQuoted } from "../../src/page/worker/readGroup.ts";

/** Records of few letters, so that quotes and delimiters meet in every way. */
const record = fc.string({ unit: fc.constantFrom('"', '"', ",", ";", "a", "°", " ", "\n") });

describe("cells of a quoted record on the page", () => {
  it("are those of the command's library, for any record and delimiter", () => {
    fc.assert(
      fc.property(record, fc.constantFrom(",", ";", "\t", " "), (text, delimiter) => {
        expect(splitQuoted(text, delimiter)).toEqual(byLibrary(text, delimiter));
      }),
      { numRuns: 2000 },
    );
  });

  it("keep a delimiter and a line end inside quotes, and two quotes as one", () => {
    expect(splitQuoted('"a, b",c,"d ""e""\nf"', ",")).toEqual(["a, b", "c", 'd "e"\nf']);
  });

  it("are none when a quote does not close", () => {
    expect(splitQuoted('a,"b', ",")).toBeNull();
  });
});
