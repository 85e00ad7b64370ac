import { copyFileSync, existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { answer, emptyFolder, inFull } from "../support/undunted.ts";

const NATURAL = "logs/2026-02-21-b.csv";
const SLOW = "logs/2026-03-14-b.csv";
const NO_TRIALS = "logs/2026-03-28-a.csv";

/** A report on one line, so that where it was broken does not matter. */
function unwrapped(text: string): string {
  return text.replaceAll(/\s+/g, " ");
}

describe("undunted compare, of firings with trial tiles", () => {
  const folder = emptyFolder();
  const [html, chart, next] = ["c.html", "c.svg", "next.yaml"].map((name) =>
    join(folder, name),
  ) as [string, string, string];
  const ran = inFull(["compare", NATURAL, SLOW, "--html", html, "--chart", chart, "--next", next]);

  it("says what differed, what cannot be told apart, what governs the spacing and what to test next", () => {
    expect(ran.exit).toBe(0);
    for (const heading of [
      "What differed",
      "What cannot be told apart",
      "What governs the spacing",
      "How the glazes fit their clays",
      "The tiles",
      "Which test next",
    ])
      expect(ran.out).toContain(`\n${heading}\n`);
    // The natural fall through quartz is twice as fast as the slow one.
    expect(unwrapped(ran.out)).toMatch(
      /quartz, cooling: mean: \d+ °C\/h in firing 2, \d+ °C\/h in firing 1/,
    );
    expect(unwrapped(ran.out)).toContain("A crackled surface is not for food or drink");
  });

  it("keeps to 80 columns", () => {
    for (const line of ran.out.split("\n")) expect([...line].length, line).toBeLessThanOrEqual(80);
  });

  it("writes a schedule that draft lays out", () => {
    expect(ran.err).toContain(`wrote ${next}`);
    expect(readFileSync(next, "utf8")).toMatch(/^formatVersion: 1\ntitle: /);
    const drafted = inFull(["draft", next]);
    expect([0, 1]).toContain(drafted.exit);
    expect(drafted.out).toContain("Timeline");
  });

  it("writes the charts of the study into the page and the picture", () => {
    for (const path of [html, chart]) {
      expect(existsSync(path)).toBe(true);
      const text = readFileSync(path, "utf8");
      expect(text).toContain("What moved with what");
      expect(text).toContain("The firings one by one");
    }
    expect(readFileSync(html, "utf8")).toContain("Crack spacing against coat");
  });

  it("answers with a document that fits its schema", () => {
    const validate = new Ajv2020({ strict: false }).compile(
      JSON.parse(inFull(["schema", "compare"]).out),
    );
    const document = JSON.parse(answer(["compare", NATURAL, SLOW, "--json"]).out);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document.study.tiles.length).toBeGreaterThan(8);
    expect(document.study.next.firing.scheduleYaml).toContain("segments:");
    expect(document.study.fits.pairs).toHaveLength(2);
    expect(document.study.fits.tiles).toHaveLength(16);
  });
});

describe("undunted compare and the files of glazes", () => {
  it("sets what the tiles say of the fit beside what glaze and body say", () => {
    const text = unwrapped(answer(["compare", SLOW, "--more", "all"]).out);
    // The demo tiles were made with 1.03 on Tarrow white and 1.34 on Tarrow dusk.
    expect(text).toMatch(
      /Pond ice on Tarrow white: .* millionths per °C by its measured expansion/,
    );
    expect(text).toMatch(/by the crack spacing of 4 tiles; all agree with the files/);
  });

  it("takes a file that is named, by its title, and refuses one that no tile names", () => {
    const named = inFull(["compare", SLOW, "--glaze", "logs/glaze-pond-ice.yaml"]);
    expect(named.exit).toBe(0);
    const other = inFull(["compare", SLOW, "--glaze", "logs/glaze-fitting.yaml"]);
    expect(other.exit).toBe(2);
    expect(unwrapped(other.err)).toContain("Tarrowmere liner");
    expect(other.err).toContain("(command/glaze-not-on-tiles)");
  });

  it("says which file it needs where there is none", () => {
    const folder = emptyFolder();
    for (const ending of ["csv", "yaml"])
      copyFileSync(`logs/2026-03-14-b.${ending}`, join(folder, `a.${ending}`));
    const text = unwrapped(inFull(["compare", join(folder, "a.csv")]).out);
    expect(text).toContain(
      "Of 8 tiles nothing is said of fit: no glaze file is known for pond ice",
    );
    expect(text).toContain("--glaze FILE names a glaze file");
  });
});

describe("undunted compare --kiln", () => {
  it("makes the next schedule one that this kiln can do, and says whose it is", () => {
    const next = join(emptyFolder(), "next.yaml");
    const worn = "logs/2026-06-06-a.csv";
    const ran = inFull(["compare", NATURAL, SLOW, "--next", next, "--kiln", worn]);
    expect(ran.exit).toBe(0);
    expect(unwrapped(ran.out)).toContain("The schedule goes by your kiln as learned from");
    // On the same kiln nothing is left to mend in its reach.
    const drafted = inFull(["draft", next, "--kiln", worn]);
    expect(unwrapped(drafted.out)).not.toMatch(/and is about .* late/);
  });
});

describe("undunted compare, with little to go on", () => {
  it("takes one log when its record has trials, to compare its tiles among themselves", () => {
    const ran = answer(["compare", SLOW, "--more", "all"]);
    expect(ran.exit).toBe(0);
    expect(ran.out).toContain("Which test next");
  });

  it("refuses one log without trials", () => {
    const ran = inFull(["compare", NO_TRIALS]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("(firing/too-few)");
  });

  it("has no next test to write when no record has trials", () => {
    const file = join(emptyFolder(), "next.yaml");
    const ran = inFull(["compare", NO_TRIALS, "logs/2026-04-25-b.csv", "--next", file]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("(trials/no-next-firing)");
    expect(existsSync(file)).toBe(false);
  });
});

describe("undunted compare --align and --base", () => {
  const json = (...options: readonly string[]) =>
    inFull(["compare", NATURAL, SLOW, "--json", "-q", ...options]);

  it("lay the firings over each other at a temperature and hold them against the one named", () => {
    const { alignment, base } = JSON.parse(
      json("--align", "600C", "--base", "2026-03-14-b.csv").out,
    );
    expect(base).toBe(1);
    expect(alignment).toMatchObject({ at: "falling", tempC: 600 });
    // Both fall through it after the peak, the one that was cooled slowly later.
    const [natural, slow] = alignment.secondsFromPeak;
    expect(natural).toBeGreaterThan(0);
    expect(slow).toBeGreaterThan(natural);
  });

  it("name the log that is not among them", () => {
    const ran = inFull(["compare", NATURAL, SLOW, "--base", "other.csv"]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("other.csv is not among the logs that were read");
    expect(ran.err).toContain("(command/no-such-base)");
  });

  it("are not for lines of JSON, which hold no charts", () => {
    const ran = inFull(["compare", NATURAL, SLOW, "--json-lines", "--align", "start"]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("both --json-lines and --align are given");
  });
});
