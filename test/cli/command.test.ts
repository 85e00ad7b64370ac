import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { answer, emptyFolder, inFull, undunted } from "../support/undunted.ts";

const LOGS = readdirSync("logs").filter((name) => /\.(csv|tsv|txt)$/.test(name));
const SCHEDULES = readdirSync("schedules").filter((name) => name.endsWith(".yaml"));
const CRACKLE = "logs/2026-03-14-b.csv";
const SLOW_COOL = "schedules/cone-5-slow-cool.yaml";

function schemaOf(name: string): (document: unknown) => void {
  const validate = new Ajv2020({ strict: false }).compile(
    JSON.parse(undunted(["schema", name]).out),
  );
  return (document) => {
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
  };
}

describe("undunted", () => {
  it("lists its commands and exit codes with --help", () => {
    const ran = undunted(["--help"]);
    expect(ran.exit).toBe(0);
    for (const word of ["draft", "review", "compare", "cones", "schema", "Exit codes"])
      expect(ran.out).toContain(word);
  });

  it("prints its version", () => {
    expect(undunted(["--version"]).out.trim()).toBe(
      JSON.parse(readFileSync("package.json", "utf8")).version,
    );
  });

  it("shows its help on standard error, and fails, when nothing is asked", () => {
    expect(undunted([])).toMatchObject({
      exit: 2,
      out: "",
      err: expect.stringContaining("Usage:"),
    });
  });

  it("loads nothing but the option parser before it knows what to do", () => {
    for (const file of ["src/cli/bin.ts", "src/cli/program.ts"]) {
      const imports = [...readFileSync(file, "utf8").matchAll(/^import .* from "(.*)";/gm)];
      for (const [, module] of imports) expect(["commander", "./program.ts"]).toContain(module);
    }
  });
});

describe("undunted review", () => {
  const valid = schemaOf("review");

  it.each(LOGS)("answers for %s with a document that fits its schema", (log) => {
    const ran = answer(["review", `logs/${log}`, "--json"]);
    expect([0, 1]).toContain(ran.exit);
    const document = JSON.parse(ran.out);
    valid(document);
    expect(document.log.accepted + sum(document.log.rejected)).toBe(document.log.rows);
    expect(document.zones[0].heatwork.label).toMatch(/cone/);
  });

  it("keeps to 80 columns and its own alphabet in every text", () => {
    for (const log of LOGS) {
      const { out } = answer(["review", `logs/${log}`]);
      for (const line of out.split("\n")) expect([...line].length, line).toBeLessThanOrEqual(80);
      expect(out).not.toContain("\u001b");
      expect(out).not.toMatch(/undefined|NaN|\[object/);
    }
  });

  it("answers the same in every time zone", () => {
    const here = undunted(["review", CRACKLE], { env: { TZ: "UTC" } });
    const there = undunted(["review", CRACKLE], { env: { TZ: "America/St_Johns" } });
    expect(there.out).toBe(here.out);
  });

  it("reads a log from standard input", () => {
    const ran = undunted(["review", "-", "--json"], { input: readFileSync(CRACKLE, "utf8") });
    expect(JSON.parse(ran.out).zones[0].peakC).toBeGreaterThan(1150);
  });

  it("places what was heard on the log", () => {
    const ran = inFull(["review", CRACKLE, "--heard", "+14:30"]);
    expect(ran.out).toMatch(/pinging/i);
    expect(ran.out).toMatch(/14:30/);
  });

  it("answers no when a firing cooled far too fast", () => {
    const exits = LOGS.map((log) => answer(["review", `logs/${log}`, "--json"]).exit);
    expect(exits).toContain(1);
    expect(exits).toContain(0);
  });

  it("goes on after a log that cannot be read, and ends with 2", () => {
    const ran = inFull(["review", "nowhere.csv", CRACKLE]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("nowhere.csv");
    expect(ran.out).toContain("Cone 5");
  });

  it("speaks °F to those who ask", () => {
    const { out } = inFull(["review", CRACKLE, "--unit", "F"]);
    expect(out).toContain("°F/h");
    expect(out.slice(0, out.indexOf("From the firing record"))).not.toMatch(/\d °C/);
  });
});

describe("the same firing in other clothes", () => {
  const original = readFileSync(CRACKLE, "utf8").split("\n");
  const folder = emptyFolder();
  const numbers = (name: string, lines: readonly string[], ...args: readonly string[]) => {
    const path = join(folder, name);
    writeFileSync(path, lines.join("\n"));
    return JSON.parse(undunted(["review", path, "--json", ...args]).out);
  };
  const plain = numbers("plain.csv", original);
  const head = original.findIndex((line) => /^\d/.test(line));
  const body = (change: (cells: string[]) => string) =>
    original.map((line, i) => (i < head || line === "" ? line : change(line.split(","))));

  function expectSame(
    other: { zones: readonly Record<string, unknown>[] },
    toleranceC: number,
  ): void {
    const [a, b] = [plain.zones[0], other.zones[0] as typeof plain];
    expect(Math.abs(a.peakC - b.peakC)).toBeLessThanOrEqual(toleranceC);
    expect(b.heatwork.label).toBe(a.heatwork.label);
    expect(b.segments.length).toBe(a.segments.length);
    a.crossings.forEach((crossing: { meanCPerHour: number }, i: number) => {
      expect(b.crossings[i].meanCPerHour / crossing.meanCPerHour).toBeCloseTo(1, 2);
    });
  }

  it("gives the same numbers in °F (to the tenth of a degree that is written)", () => {
    const fahrenheit = body(([time, temp, ...rest]) =>
      [time, ((Number(temp) * 9) / 5 + 32).toFixed(2), ...rest].join(","),
    ).map((line, i) => (i < head ? line.replace("kiln_C", "kiln_F") : line));
    expectSame(numbers("f.csv", fahrenheit), 0.01);
  });

  it("gives the same numbers with semicolons and decimal commas", () => {
    const semicolons = original.map((line) => line.replaceAll(",", ";"));
    const commas = semicolons.map((line, i) => (i < head ? line : line.replace(".", ",")));
    expectSame(numbers("s.csv", commas), 0);
  });

  it("gives the same numbers eleven months later", () => {
    const later = original.map((line) => line.replace(/^2026-03-/, "2027-02-"));
    expectSame(numbers("t.csv", later), 0);
  });
});

describe("undunted draft", () => {
  const valid = schemaOf("draft");

  it("gives clock times, cone 5 down and not cone 6, and both crossings", () => {
    const args = ["draft", SLOW_COOL, "--start", "2026-12-01 18:00"];
    const { out, exit } = inFull(args);
    expect(exit).toBe(0);
    expect(out).toContain("2026-12-01 18:00");
    expect(out).toMatch(/quartz\s+620 → 520 °C/);
    expect(out).toMatch(/below 300 °C\s+280 → 170 °C/);
    const document = JSON.parse(undunted([...args, "--json"]).out);
    valid(document);
    expect(document.heatwork.cone).toBe("5");
    const bands = document.crossings.map((crossing: { band: string }) => crossing.band).join();
    expect(bands).toMatch(/quartz/);
    expect(bands).toMatch(/cristobalite/);
  });

  it.each(SCHEDULES)("takes schedules/%s without a warning", (name) => {
    const ran = undunted(["draft", `schedules/${name}`, "--json"]);
    expect(ran.exit).toBe(0);
    valid(JSON.parse(ran.out));
  });

  it("adds a thermocouple's offset before it says the cone", () => {
    const cone = (args: readonly string[]) =>
      JSON.parse(undunted(["draft", SLOW_COOL, "--json", ...args]).out).heatwork.cone;
    expect(cone(["--offset", "80F"])).not.toBe(cone([]));
    expect(cone(["--offset=-80F"])).not.toBe(cone([]));
  });
});

describe("undunted compare", () => {
  /** Of both kilns and three cones, with tiles and without. */
  const firings = ["2026-02-07-a", "2026-04-11-a", "2026-05-23-b"].map(
    (stem) => `logs/${stem}.csv`,
  );

  it("answers with a document that fits its schema", () => {
    const ran = undunted(["compare", ...firings, "--json"]);
    expect(ran.exit).toBe(0);
    const document = JSON.parse(ran.out);
    schemaOf("compare")(document);
    expect(document.firings).toHaveLength(firings.length);
  });
});

describe("undunted cones", () => {
  it("marks what is from memory", () => {
    expect(undunted(["cones"]).out).toMatch(/from memory/);
  });

  it("shows cone 5 at 60 °C/h as printed: 1186 °C", () => {
    expect(undunted(["cones", "5"]).out).toMatch(/60 °C\/h\s+1186 °C/);
  });

  it("shows rates that people set in °F, and calls no remembered end point printed", () => {
    const text = undunted(["cones", "5", "--unit", "F"]).out;
    const rates = [...text.matchAll(/^ +(\d+) °F\/h/gm)].map(([, rate]) => Number(rate));
    // 27, 108 and 270 °F/h are the chart's own columns.
    expect(rates).toEqual([27, 50, 100, 108, 150, 200, 270, 300]);
    expect(text).toMatch(/27 °F\/h .*from memory/);
    expect(text).toMatch(/300 °F\/h .*faster than the table/);
    const { endPoints } = JSON.parse(undunted(["cones", "5", "--json"]).out);
    const at = (rate: number) =>
      endPoints.find((each: { rateCPerHour: number }) => each.rateCPerHour === rate);
    expect(at(15)).toMatchObject({ confidence: "from-memory", sigmaK: 6 });
    expect(at(60)).toMatchObject({ confidence: "two-copies", sigmaK: 2 });
    expect(at(100)).toMatchObject({ basis: "model", confidence: null });
  });

  it("names only what the end points of that cone were read from", () => {
    const sources = (args: readonly string[]) =>
      JSON.parse(undunted(["cones", ...args, "--json"]).out).sources.length;
    expect(sources(["5"])).toBeLessThan(sources([]));
    expect(sources(["5"])).toBeGreaterThan(0);
  });

  it.each(["large", "small", "pce", "seger-jis", "large-legacy"])(
    "shows the %s series",
    (series) => {
      const ran = undunted(["cones", "--series", series, "--json"]);
      expect(ran.exit).toBe(0);
      schemaOf("cones")(JSON.parse(ran.out));
    },
  );
});

describe("files that are written", () => {
  it("are a page without a request and charts, and are never replaced unasked", () => {
    const folder = emptyFolder();
    const page = join(folder, "r.html");
    const args = ["review", CRACKLE, "--html", page];
    expect(undunted(args).err).toContain("wrote");
    const html = readFileSync(page, "utf8");
    expect(html).toMatch(/^<!doctype html>/i);
    expect(html).toContain("Content-Security-Policy");
    expect(html).not.toMatch(/(?:src|href)="(?!#|data:)/);
    expect(html).not.toMatch(/<script|@import|url\((?!["']?(?:#|data:))/);
    writeFileSync(page, "mine");
    const again = undunted(args);
    expect(again).toMatchObject({ exit: 2, err: expect.stringContaining("file/exists") });
    expect(readFileSync(page, "utf8")).toBe("mine");
    expect(undunted([...args, "--force"]).exit).not.toBe(2);
    expect(readdirSync(folder)).toEqual(["r.html"]);
  });

  it("draw SVG and PNG by the ending", () => {
    const folder = emptyFolder();
    undunted(["draft", SLOW_COOL, "--chart", join(folder, "d.svg")]);
    undunted(["compare", CRACKLE, "logs/2026-03-28-a.csv", "--chart", join(folder, "c.png")]);
    expect(readFileSync(join(folder, "d.svg"), "utf8")).toMatch(/^<svg/);
    expect([...readFileSync(join(folder, "c.png")).subarray(0, 4)]).toEqual([
      0x89, 0x50, 0x4e, 0x47,
    ]);
  });
});

describe("colour", () => {
  it("comes only when forced, and NO_COLOR or --no-color takes it away", () => {
    const coloured = (args: readonly string[], env = {}) =>
      undunted(["cones", "5", ...args], { env }).out.includes("\u001b[");
    expect(coloured([])).toBe(false);
    expect(coloured([], { FORCE_COLOR: "1" })).toBe(true);
    expect(coloured([], { FORCE_COLOR: "1", NO_COLOR: "1" })).toBe(false);
    expect(coloured(["--color"], { NO_COLOR: "1" })).toBe(true);
    expect(coloured(["--no-color"], { FORCE_COLOR: "1" })).toBe(false);
  });
});

function sum(rejected: readonly { readonly count: number }[]): number {
  return rejected.reduce((total, { count }) => total + count, 0);
}
