import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { emptyFolder, fileWith, inFull } from "../support/undunted.ts";

const CRACKLE = "logs/glaze-crackle.yaml";
const LINER = "logs/glaze-fitting.yaml";

describe("undunted glaze", () => {
  it("prints a batch sheet with its cautions, and exits 0", () => {
    const ran = inFull(["glaze", LINER, "--batch", "2kg", "--density", "1.45"]);
    expect(ran.exit).toBe(0);
    expect(ran.err).toBe("");
    expect(ran.out).toContain("Batch sheet");
    expect(ran.out).toContain("Take care");
  });

  it("answers with a document that fits its schema", () => {
    const { out } = inFull(["glaze", CRACKLE, LINER, "--json", "--batch", "5lb"]);
    const schema = JSON.parse(inFull(["schema", "glaze"]).out);
    const validate = new Ajv2020({ strict: true }).compile(schema);
    const document = JSON.parse(out);
    validate(document);
    expect(validate.errors ?? []).toEqual([]);
    expect(document.glazes).toHaveLength(2);
    expect(document.againstFirst[0].differencePerK).toBeLessThan(0);
  });

  it("has a schema of its file", () => {
    expect(JSON.parse(inFull(["schema", "glaze-file"]).out)).toHaveProperty("properties.recipe");
  });

  it("writes one page and does not overwrite it unasked", () => {
    const page = join(emptyFolder(), "glaze.html");
    expect(inFull(["glaze", LINER, "--html", page]).err).toContain("wrote");
    expect(readFileSync(page, "utf8")).toContain("<h1>Tarrowmere liner</h1>");
    expect(inFull(["glaze", LINER, "--html", page]).exit).toBe(2);
  });

  it("takes the glaze that the README shows, without a caution", () => {
    const shown = /```yaml\n(formatVersion: 1\ntitle: Lantern clear[\s\S]*?)```/.exec(
      readFileSync("README.md", "utf8"),
    );
    const { out, exit } = inFull(["glaze", "-"], { input: shown?.[1] ?? "" });
    expect(exit).toBe(0);
    expect(out).not.toMatch(/^ +(Warning|Caution) /m);
  });

  it("reads standard input", () => {
    const input = readFileSync(CRACKLE, "utf8");
    expect(inFull(["glaze", "-"], { input }).out).toContain("Tarrowmere crackle");
  });

  it("exits 1 for a glaze with lead", () => {
    const file = fileWith(
      "lead.yaml",
      "formatVersion: 1\ntitle: old\nbasis: wt %\noxides: { PbO: 50, SiO2: 50 }\n",
    );
    const ran = inFull(["glaze", file]);
    expect(ran.exit).toBe(1);
    expect(ran.out).toMatch(/Warning +The glaze holds lead/);
  });

  it.each([
    [["--batch", "two"], "units/not-a-mass"],
    [["--density", "1450"], "units/slip-density-range"],
    [["--bucket", "5L"], "glaze/bucket-without-density"],
    [["--dry-coat", "10g"], "units/not-a-coat-mass"],
  ])("refuses %s with (%s) and exit 2", (args, code) => {
    const ran = inFull(["glaze", LINER, ...args]);
    expect(ran.err).toContain(`(${code})`);
    expect(ran.out).toBe("");
    expect(ran.exit).toBe(2);
  });

  it("tells the problems of file and options at once", () => {
    const file = fileWith("bad.yaml", "formatVersion: 1\ntitle: t\nrecipe: { quarz: 100 }\n");
    const { err } = inFull(["glaze", file, "--batch", "two"]);
    expect(err).toContain("(units/not-a-mass)");
    expect(err).toContain("(glaze/unknown-material)");
  });

  it("tells what is wrong in 80 columns, however long the list of what there is", () => {
    const file = fileWith("b.yaml", "formatVersion: 1\ntitle: t\nrecipe: { quarz: 100 }\n");
    const { brokenErr } = inFull(["glaze", file]);
    const lines = brokenErr.split("\n").filter((line) => !line.includes(file));
    expect(lines.length).toBeGreaterThan(8);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
  });

  it("refuses a batch of a glaze given by its oxides", () => {
    const file = fileWith(
      "o.yaml",
      "formatVersion: 1\ntitle: t\nbasis: moles\noxides: { CaO: 1, SiO2: 3 }\n",
    );
    expect(inFull(["glaze", file, "--batch", "1kg"]).err).toContain("glaze/batch-without-recipe");
  });
});
