import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { parseRecord, parseRecordFile } from "../../../src/core/record/parseRecord.ts";
import type { FiringRecordFile } from "../../../src/core/record/recordFormat.ts";
import { recordYaml } from "../../../src/core/record/recordYaml.ts";
import { valued } from "../../support/schedules.ts";

const LOGS = join(import.meta.dirname, "../../../logs");

/** Words that a reader of YAML may take for something else. */
const words = fc.oneof(
  fc.string({ minLength: 1, unit: "grapheme" }),
  fc.constantFrom("yes", "null", "05", "1e3", "- a", "# no", "a: b", "'", '"', " ", "2026-01-01"),
);
const length = fc.constantFrom<number | string>(6, 7.5, "6 mm", "1/4 in");
const some = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });

const anyFile: fc.Arbitrary<FiringRecordFile> = fc
  .record({
    formatVersion: fc.constant(1 as const),
    title: words,
    unit: fc.constantFrom<"C" | "F">("C", "F"),
    schedule: some(words),
    kiln: some(words),
    thermocouple: some(
      fc.record({
        type: fc.constantFrom<"K" | "S">("K", "S"),
        class: some(fc.constantFrom("1", 2)),
      }),
    ),
    cone: some(fc.constantFrom("05", "5", "10")),
    witnessCones: some(
      fc.array(
        fc.record({
          cone: fc.constantFrom("05", "5"),
          bent: fc.constantFrom("upright", "4 o'clock", "45 degrees"),
        }),
      ),
    ),
    ware: some(
      fc.array(
        fc.record({
          name: words,
          clay: words,
          thickest: some(length),
          count: some(fc.integer({ min: 1, max: 99 })),
        }),
      ),
    ),
    unloaded: some(
      fc.record({
        at: some(fc.constantFrom("09:10", "+14:05")),
        temperature: some(fc.constantFrom<number | string>(95, "200 F")),
      }),
    ),
    heard: some(
      fc.array(
        fc.record({
          what: words,
          at: fc.constantFrom("07:55", "2026-03-15 09:10"),
          note: some(fc.string()),
        }),
      ),
    ),
    found: some(
      fc.array(
        fc.record({
          piece: some(words),
          what: some(fc.constantFrom<"chip" | "crackle">("chip", "crackle")),
          note: some(fc.string()),
        }),
      ),
    ),
    notes: some(fc.string({ unit: "grapheme" })),
  })
  .map((file) => JSON.parse(JSON.stringify(file)) as FiringRecordFile);

const OWN_HAND = `# the spring firing
formatVersion: 1
title: Tiles   # second try
kiln: Old Hilda
heard:
  # by Ottoline
  - what: pinging   # faint
    at: "07:55"
  - what: a crack
    at: "+15:00"
notes: >
  A long
  story.
`;

describe("a record as a file", () => {
  it("is read back as it was, for any record", () => {
    fc.assert(
      fc.property(anyFile, (file) => {
        expect(valued(parseRecordFile(recordYaml(file, null), "a.yaml"))).toEqual(file);
      }),
    );
  });

  it("becomes any other record where it was changed, whatever it was before", () => {
    fc.assert(
      fc.property(anyFile, anyFile, fc.boolean(), (before, after, isJson) => {
        const was = isJson ? JSON.stringify(before) : recordYaml(before, null);
        expect(valued(parseRecordFile(recordYaml(after, was), "a.yaml"))).toEqual(after);
      }),
    );
  });

  test.each(readdirSync(LOGS).filter((name) => /^\d{4}-.*\.yaml$/.test(name)))(
    "leaves %s as it is when nothing changed, and loses nothing when it is written anew",
    (name) => {
      const text = readFileSync(join(LOGS, name), "utf8");
      const file = valued(parseRecordFile(text, name));
      expect(recordYaml(file, text)).toBe(text);
      expect(parseRecord(recordYaml(file, null), name)).toEqual(parseRecord(text, name));
    },
  );

  it("keeps comments, order and what is written around a changed value", () => {
    const file = valued(parseRecordFile(OWN_HAND, "a.yaml"));
    const [ping, crack] = file.heard ?? [];
    const text = recordYaml(
      {
        ...file,
        title: "Tiles again",
        heard: [ping, { ...crack, at: "+15:20" }] as typeof file.heard,
      },
      OWN_HAND,
    );
    for (const line of [
      "# the spring firing",
      "title: Tiles again # second try",
      "# by Ottoline",
      "  - what: pinging # faint",
      '    at: "+15:20"',
    ])
      expect(text.split("\n").map((each) => each.replace(/^ +#/, "#"))).toContain(line);
    expect(text.indexOf("kiln")).toBeLessThan(text.indexOf("heard"));
  });

  it("keeps the comments of items when one before them is taken out", () => {
    const text = OWN_HAND.replace("  - what: a crack", "  - what: a crack # loud");
    const file = valued(parseRecordFile(text, "a.yaml"));
    const left = recordYaml({ ...file, heard: file.heard?.slice(1) }, text);
    expect(left).toContain("a crack # loud");
    expect(left).not.toContain("faint");
    expect(left).toContain("# the spring firing");
  });

  it("changes one place only where another was written as the same", () => {
    const text = `formatVersion: 1
title: &name Tiles
kiln: *name
`;
    const file = valued(parseRecordFile(text, "a.yaml"));
    const after = { ...file, title: "Mugs" };
    expect(valued(parseRecordFile(recordYaml(after, text), "a.yaml"))).toEqual(after);
  });

  it("keeps what was written as the same as something that is taken out", () => {
    const text = `formatVersion: 1
title: Tiles
heard:
  - &first { what: pinging, at: "07:55" }
  - *first
`;
    const file = valued(parseRecordFile(text, "a.yaml"));
    const after = { ...file, heard: file.heard?.slice(1) };
    expect(valued(parseRecordFile(recordYaml(after, text), "a.yaml"))).toEqual(after);
    const others = { ...file, heard: [{ what: "a crack", at: "08:00" }, ...(after.heard ?? [])] };
    expect(valued(parseRecordFile(recordYaml(others, text), "a.yaml"))).toEqual(others);
  });

  it("names no unit where the file named none", () => {
    const file = valued(parseRecordFile(OWN_HAND, "a.yaml"));
    expect(recordYaml({ ...file, title: "Mugs" }, OWN_HAND)).not.toContain("unit");
  });
});
