import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import {
  type DocumentFormat,
  type ReadDocument,
  readDocument,
} from "../../../src/core/document/readDocument.ts";
import { schemaProblems } from "../../../src/core/document/schemaProblems.ts";
import { problemText } from "../../../src/core/problem.ts";

const Kettles = z.strictObject({
  kettles: z
    .array(
      z.strictObject({
        name: z.string().min(1).describe("what it is called."),
        litres: z.number().positive().optional(),
        lid: z.enum(["on", "off"]).optional(),
        unit: z.enum(["C", "F"]).optional(),
        cone: z.string().optional(),
      }),
    )
    .max(3)
    .optional(),
});

const KETTLE: DocumentFormat = {
  room: "kettle",
  thing: "a list of kettles",
  neededKeys: "kettles",
  example: "another list",
  schema: Kettles,
  missingCode: "kettle/missing",
  otherWords: new Map([["volume", "litres"]]),
  expected: new Map([["kettles[]", "a kettle: { name: old }"]]),
  quotedKeys: ["cone"],
  shorten: new Map([["kettles", "give one away"]]),
};

function documentOf(text: string): ReadDocument {
  const document = readDocument(text, "k.yaml", KETTLE);
  if (!document.ok) throw new Error(document.problems.map(problemText).join("\n"));
  return document.value;
}

function problemsOf(text: string): string {
  const document = readDocument(text, "k.yaml", KETTLE);
  if (!document.ok) return document.problems.map(problemText).join("\n");
  const shape = Kettles.safeParse(document.value.value);
  if (shape.success) return "";
  return schemaProblems(shape.error.issues, document.value, KETTLE).map(problemText).join("\n");
}

describe("readDocument", () => {
  it("knows the line of a key, of a list item, and of what is around a missing one", () => {
    const document = documentOf("\uFEFFkettles:\n  - name:\n      old\n  - name: new\n");
    expect(document.lineOf(["kettles"])).toBe(1);
    expect(document.lineOf(["kettles", 0, "name"])).toBe(2);
    expect(document.lineOf(["kettles", 1])).toBe(4);
    expect(document.lineOf(["kettles", 1, "lid"])).toBe(4);
    expect(document.placeOf(["kettles", 1, "name"])).toBe("k.yaml: kettles[1].name, line 4");
    expect(document.placeOf([])).toBe("k.yaml, line 1");
  });

  it("knows a number as it was written, through aliases as well", () => {
    const document = documentOf("kettles:\n  - &a { cone: &c 05 }\n  - *a\n  - { cone: *c }\n");
    for (const index of [0, 1, 2]) expect(document.sourceOf(["kettles", index, "cone"])).toBe("05");
    expect(document.sourceOf(["kettles"])).toBeNull();
  });

  it.each([
    ["", "k.yaml: the file is empty", "kettle/empty-file"],
    ["x".repeat(500_001), "the text has 500001 characters", "kettle/too-long"],
    ["kettles: []\nkettles: []\n", "k.yaml: line 2: it cannot be read", "kettle/not-yaml"],
    ["kettles: !tea []\n", "k.yaml: line 1: it cannot be read", "kettle/not-yaml"],
    ["kettles: *a\n", "it cannot be read", "kettle/not-yaml"],
    [`a: &a x\nb: [${Array(101).fill("*a").join(", ")}]`, "an alias (*) repeats", "not-yaml"],
  ])("explains a text that is no document (%#)", (text, said, code) => {
    expect(problemsOf(text)).toContain(said);
    expect(problemsOf(text)).toContain(`${code})`);
  });

  it("never throws, for any text", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200, unit: "binary" }), (text) => {
        problemsOf(text);
      }),
    );
    expect(problemsOf("[".repeat(50_000))).toContain("kettle/not-yaml");
    expect(problemsOf("kettles: &a [*a]\n")).toContain("kettle/");
  });
});

describe("schemaProblems", () => {
  const kettle = (lines: string) => problemsOf(`kettles:\n  - { name: old, ${lines} }\n`);

  it.each([
    ["volume: 2", "kettles[0].volume, line 2", "write litres instead", "kettle/unknown-key"],
    ["lidd: on", "expected  one of name, litres, lid, unit, cone", "write lid", "unknown-key"],
    ["constructor: 1", '"constructor" is not a key', "remove it", "kettle/unknown-key"],
    ["lid: onn", 'lid is "onn"', "write lid: on", "kettle/wrong-value"],
    ["lid: 3", "expected  on or off", "write on or off", "kettle/wrong-value"],
    ["unit: celsius", 'unit is "celsius"', "write unit: C", "kettle/wrong-value"],
    ["unit: K", 'unit is "K"', "write C or F", "kettle/wrong-value"],
    ["litres: 0", "expected  a number, more than 0", "change litres", "kettle/wrong-value"],
    ["cone: 05", "the cone 05 is written as a number", 'write cone: "05"', "cone-without-quotes"],
  ])("explains %s", (line, said, fix, code) => {
    expect(kettle(line)).toContain(said);
    expect(kettle(line)).toContain(fix);
    expect(kettle(line)).toContain(`${code})`);
  });

  it.each([
    ["kettles: [{}]", "expected  text (what it is called)", "kettle/missing"],
    ["kettles: [{ name: 1987 }]", 'write it in quotes: name: "1987"', "kettle/wrong-value"],
    ['kettles: [{ name: "" }]', "name is empty", "kettle/wrong-value"],
    ["kettles: [old]", "expected  a kettle: { name: old }", "kettle/wrong-value"],
    [`kettles: [${"{ name: x },".repeat(4)}]`, "there are 4 kettles", "kettle/too-many-kettles"],
    ["- 1", "the file holds a list", "kettle/wrong-value"],
  ])("explains the file %s", (text, said, code) => {
    expect(problemsOf(text)).toContain(said);
    expect(problemsOf(text)).toContain(`${code})`);
  });
});

describe("a merge key", () => {
  it("brings in what a group or several hold, and gives way to what stands beside it", () => {
    const { value } = documentOf(
      "kettles:\n  - &old { name: old, litres: 2 }\n  - &lidded { lid: on }\n  - { <<: *old, name: new }\n  - { <<: [*old, *lidded] }\n",
    );
    expect((value as { kettles: unknown[] }).kettles.slice(2)).toEqual([
      { name: "new", litres: 2 },
      { name: "old", litres: 2, lid: "on" },
    ]);
  });

  it("is bounded, and refused where a group merges itself", () => {
    const lines = Array.from(
      { length: 40 },
      (_, i) => `  - &a${i + 1} { <<: [*a${i}, *a${i}], n${i}: 1 }`,
    );
    const bomb = `kettles:\n  - &a0 { name: old }\n${lines.join("\n")}\n`;
    expect(problemsOf(bomb)).toContain("(kettle/not-yaml)");
    expect(problemsOf("kettles: &all\n  <<: *all\n  name: old\n")).toContain("(kettle/not-yaml)");
    expect(problemsOf("kettles:\n  - { <<: 3, name: old }\n")).toContain("kettle/");
  });
});
