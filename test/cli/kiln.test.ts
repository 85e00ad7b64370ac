import { existsSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { emptyFolder, inFull } from "../support/undunted.ts";

const BISQUE = "logs/2026-02-07-a.csv";
const NATURAL = "logs/2026-02-21-b.csv";
const TIRED = "logs/2026-06-06-a.csv";

describe("undunted kiln", () => {
  it("answers with a document that fits its schema", () => {
    const schema = JSON.parse(inFull(["schema", "kiln"]).out);
    const validate = new Ajv2020({ strict: false }).compile(schema);
    const ran = inFull(["kiln", BISQUE, NATURAL, TIRED, "--json", "--power", "10.5kW"]);
    expect(ran.exit).toBe(0);
    const document = JSON.parse(ran.out);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document.power).toMatchObject({ from: "output", firing: "2026-06-06-a.csv" });
    expect(document.kiln).toContain("Old Hilda");
  });

  it("tells energy and cost only when asked with a wattage and a tariff", () => {
    expect(inFull(["kiln", BISQUE]).out).not.toContain("kWh");
    const ran = inFull(["kiln", BISQUE, "--power", "10.5kW", "--tariff", "0.30"]);
    expect(ran.out).toMatch(/\d+ kWh, \d+ at the tariff given/);
  });

  it("never calls its constants properties of the kiln", () => {
    const { out } = inFull(["kiln", BISQUE]);
    expect(out.replaceAll(/\s+/g, " ")).toContain("they are no properties of the kiln");
  });

  it("writes a page and a chart", () => {
    const folder = emptyFolder();
    const [html, chart] = [join(folder, "kiln.html"), join(folder, "kiln.svg")];
    expect(inFull(["kiln", BISQUE, "--html", html, "--chart", chart]).exit).toBe(0);
    expect([html, chart].map((path) => existsSync(path))).toEqual([true, true]);
  });

  it("refuses logs of two kilns, by the names in their records", () => {
    const ran = inFull(["kiln", BISQUE, "logs/2026-04-11-a.csv"]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("the records name 2 kilns: Old Hilda");
    expect(ran.err).toContain("(kiln/several-kilns)");
  });

  it.each([
    ["--power", "10.5", "command/power"],
    ["--tariff", "30 ct", "command/tariff"],
  ])("refuses %s %s", (option, value, code) => {
    const ran = inFull(["kiln", BISQUE, option, value]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain(`(${code})`);
  });
});
