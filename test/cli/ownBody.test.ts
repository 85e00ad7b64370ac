import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { fileWith, inFull } from "../support/undunted.ts";

const CLAY = `formatVersion: 1
base: stoneware cone 6
name: my grogged stoneware
ruptureMPa: 30
quartzFraction: { value: 0.22, low: 0.15, high: 0.3, source: "own bar tests, 2026" }
`;
const NEW = ["draft", "--new", "--cone", "6", "--wall", "6", "--base", "10"];

describe("--body with a file", () => {
  it("drafts with it, shows every number with its source, and writes it into the schedule", () => {
    const clay = fileWith("clay.yaml", CLAY);
    const made = join(dirname(clay), "made.yaml");
    const ran = inFull([...NEW, "--body", clay, "-o", made]);
    expect(ran.exit).toBe(0);
    const flat = ran.out.replaceAll(/\s+/g, " ");
    expect(flat).toContain("free quartz, by volume 22 % 15 to 30 own bar tests, 2026");
    expect(flat).toContain("strength in bending 30 MPa 19.74 to 43.42 yours");
    expect(flat).toContain("From memory, whole or in part, and not read again: heat capacity");
    for (const line of ran.out.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
    expect(readFileSync(made, "utf8")).toContain('source: "own bar tests, 2026"');
    const again = JSON.parse(inFull(["draft", made, "--json"]).out);
    expect(again.bodies).toHaveLength(1);
    expect(again.bodies[0]).toMatchObject({
      name: "my grogged stoneware",
      ruptureMPa: { value: 30, low: 19.74, high: 43.42, source: "yours" },
    });
  });

  it("reads JSON too", () => {
    const clay = fileWith(
      "clay.json",
      '{ "formatVersion": 1, "base": "porcelain", "youngGPa": 61 }',
    );
    const { bodies } = JSON.parse(inFull([...NEW, "--body", clay, "--json"]).out);
    expect(bodies[0].youngGPa.value).toBe(61);
  });

  it.each([
    ["formatVersion: 1\nruptureMPa: -5\n", "clay.yaml: ruptureMPa, line 2", "ware/property-range"],
    ["formatVersion: 1\nruptureMpa: 5\n", "clay.yaml: ruptureMpa, line 2", "body/unknown-key"],
    ["ruptureMPa: 5\n", "clay.yaml: formatVersion", "body/missing"],
    ["", "clay.yaml", "body/empty-file"],
  ])("says what is wrong in it (%#)", (text, where, code) => {
    const ran = inFull([...NEW, "--body", fileWith("clay.yaml", text)]);
    expect(ran).toMatchObject({ exit: 2, out: "" });
    expect(ran.err).toContain(where);
    expect(ran.err).toContain(`(${code})`);
  });

  it("says when it is not there", () => {
    expect(inFull([...NEW, "--body", "nowhere.yaml"]).err).toContain("(file/missing)");
  });

  it("has a schema that its files fit", () => {
    const valid = new Ajv2020({ strict: false }).compile(
      JSON.parse(inFull(["schema", "body"]).out),
    );
    expect(valid({ formatVersion: 1, ruptureMPa: 30, quartzFraction: { value: 0.2 } })).toBe(true);
    expect(valid({ formatVersion: 1, ruptureMpa: 30 })).toBe(false);
  });
});

describe("sizes on the command line", () => {
  it.each([
    ["--wall", "0.5", "1 mm"],
    ["--base", "150", "100 mm"],
  ])("refuses %s %s for a new schedule and for one that is there", (option, size, nearest) => {
    for (const command of [["--new", "--cone", "6"], ["schedules/cone-5-slow-cool.yaml"]]) {
      const ran = inFull(["draft", ...command, option, size]);
      expect(ran).toMatchObject({ exit: 2, out: "" });
      expect(ran.err).toMatch(
        new RegExp(`^${option}: .*\\n  expected  1 to 100 mm\\n  try .*possible is ${nearest}`),
      );
      expect(ran.err).toContain("(ware/thickness)");
    }
  });
});

describe("review with a body of one's own", () => {
  it("shows its numbers on the page and in the document, and says what was assumed", () => {
    const log = fileWith("a.csv", readFileSync("logs/2026-03-14-b.csv"));
    const ware = CLAY.replace("formatVersion: 1\n", "").replaceAll(/^/gm, "      ").trimEnd();
    const record = fileWith(
      "a.yaml",
      `formatVersion: 1\ntitle: t\nware:\n  - name: mugs\n    clay: grogged\n    wall: 6\n    body:\n${ware}\n`,
    );
    const page = join(dirname(log), "a.html");
    const ran = inFull(["review", log, "--record", record, "--html", page, "--json"]);
    expect(JSON.parse(ran.out).bodies[0].quartzFraction).toEqual({
      value: 0.22,
      low: 0.15,
      high: 0.3,
      source: "own bar tests, 2026",
    });
    const html = readFileSync(page, "utf8").replaceAll("&nbsp;", " ");
    for (const words of ["own bar tests, 2026", "From memory, whole", "Base taken as 8 mm"])
      expect(html.includes(words), words).toBe(true);
  });
});
