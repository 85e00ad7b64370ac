import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { emptyFolder, undunted } from "../support/undunted.ts";

const CRACKLE = "logs/2026-03-14-b.csv";
const TWO = ["logs/2026-03-28-a.csv", CRACKLE];

/** A folder of short logs of one firing each, some of them broken. */
function folderOf(count: number, broken: readonly number[] = []): string {
  const folder = emptyFolder();
  const lines = readFileSync(CRACKLE, "utf8").split("\n");
  // Every tenth reading is enough to be quick.
  const short = lines.filter((_, i) => i < 1 || i % 10 === 0).join("\n");
  for (let i = 0; i < count; i++) {
    const path = join(folder, `${String(i).padStart(3, "0")}.csv`);
    writeFileSync(path, broken.includes(i) ? "" : short);
  }
  return folder;
}

function schemaOf(name: string): (document: unknown) => void {
  const validate = new Ajv2020({ strict: false }).compile(
    JSON.parse(undunted(["schema", name]).out),
  );
  return (document) => {
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
  };
}

const linesOf = (out: string) =>
  out
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));

describe("review --json-lines", () => {
  it("prints the document of review --json for each log, one a line, in the order given", () => {
    const { out, exit } = undunted(["review", ...TWO, "--json-lines", "-q"]);
    const alone = TWO.map((log) => undunted(["review", log, "--json", "-q"]));
    expect(linesOf(out)).toEqual(alone.map((ran) => JSON.parse(ran.out)));
    expect(exit).toBe(Math.max(...alone.map((ran) => ran.exit ?? 0)));
    linesOf(out).forEach(schemaOf("review-line"));
  });

  it("gives the same lines by one worker, by three, and without any", () => {
    const folder = folderOf(7, [3]);
    const ran = (...args: readonly string[]) =>
      undunted(["review", folder, "--json-lines", "-q", ...args]);
    const plain = ran();
    expect(linesOf(plain.out)).toHaveLength(7);
    expect(ran("--workers", "1")).toEqual(plain);
    expect(ran("--workers", "3")).toEqual(plain);
  });

  it("goes on after broken logs: each has its line, all are counted, and the exit code is 2", () => {
    const { out, err, exit } = undunted(["review", folderOf(12, [0, 7]), "--json-lines"]);
    const lines = linesOf(out);
    expect(lines.map(({ ok }) => ok)).toEqual([...Array(12).keys()].map((i) => i !== 0 && i !== 7));
    expect(lines[7]).toMatchObject({
      schemaVersion: 1,
      log: { name: "007.csv", path: expect.stringMatching(/007\.csv$/) },
      problems: [{ code: "log/empty" }],
    });
    lines.forEach(schemaOf("review-line"));
    expect(err).toContain("2 of 12 logs could not be read");
    expect(exit).toBe(2);
  });

  it("says nothing of progress where standard error is no terminal", () => {
    expect(undunted(["review", folderOf(10), "--json-lines"]).err).not.toMatch(/left$|\r/m);
  });

  it("ends quietly when its reader stops reading", () => {
    const folder = folderOf(30);
    const piped = spawnSync(
      "sh",
      ["-c", `"${process.execPath}" dist/bin.js review "${folder}" --json-lines -q | head -n 1`],
      { encoding: "utf8" },
    );
    expect(piped.stderr).toBe("");
    expect(JSON.parse(piped.stdout).ok).toBe(true);
  });

  it("is one line of problems when the command line is wrong", () => {
    const { out, exit } = undunted(["review", CRACKLE, "--json-lines", "--workers", "many"]);
    expect(linesOf(out)).toMatchObject([{ ok: false, problems: [{ code: "command/workers" }] }]);
    expect(exit).toBe(2);
  });

  it.each([
    ["--json", /--json-lines and --json/],
    ["--explain", /--json-lines and --explain/],
  ])("is refused beside %s", (option, says) => {
    expect(undunted(["review", CRACKLE, "--json-lines", option])).toMatchObject({
      exit: 2,
      err: expect.stringMatching(says),
    });
  });
});

describe("review of many logs as text", () => {
  it("gives each review as it stands alone, in the order given", () => {
    const folder = folderOf(9);
    const { out } = undunted(["review", folder, "--all", "-q"]);
    const alone = undunted(["review", join(folder, "004.csv"), "-q"]).out;
    expect(out.match(/^004\.csv /gm)).toHaveLength(1);
    expect(out).toContain(`\n\n${alone}`);
  });

  it("is one screen for all without --all: those to look at, the worst first, and a line a kiln", () => {
    const logs = ["2026-03-14-b", "2026-04-11-a", "2026-05-23-b", "2026-06-06-a"].map(
      (stem) => `logs/${stem}.csv`,
    );
    const ran = undunted(["review", ...logs, "-q"]);
    expect(ran.exit).toBe(1);
    const lines = ran.out.trimEnd().split("\n");
    expect(lines.length).toBeLessThanOrEqual(40);
    for (const line of lines) expect([...line].length, line).toBeLessThanOrEqual(80);
    expect(ran.out).toMatch(/^4 firings, 2 kilns\n2 to look at, 2 fine\./);
    const worst = ran.out.indexOf("2026-05-23-b.csv");
    expect(worst).toBeGreaterThan(0);
    expect(ran.out.indexOf("2026-06-06-a.csv")).toBeGreaterThan(worst);
    expect(ran.out).toContain("the Wren, 60 litre test kiln");
    const every = undunted(["review", ...logs, "--more", "firings", "-q"]).out;
    for (const log of logs)
      expect(every.replaceAll(/\s+/g, "")).toContain(log.replace("logs/", ""));
  });

  it("counts what is not listed, and goes on after what cannot be read", () => {
    const folder = folderOf(4);
    writeFileSync(join(folder, "broken.csv"), "no numbers here\n");
    const ran = undunted(["review", folder]);
    expect(ran.exit).toBe(2);
    expect(ran.out).toMatch(/^4 firings, \d kilns?\n/);
    expect(ran.err).toContain("1 of 5 logs could not be read");
  });

  it("points to --json-lines when one document is asked for", () => {
    expect(undunted(["review", ...TWO, "--json"]).err).toContain("--json-lines");
  });
});

describe("compare --json-lines", () => {
  it("prints a line for each firing and one for all, as in compare --json", () => {
    const { out, exit } = undunted(["compare", ...TWO, "--json-lines"]);
    const lines = linesOf(out);
    const whole = JSON.parse(undunted(["compare", ...TWO, "--json"]).out);
    expect(lines.slice(0, 2).map(({ firing }) => firing)).toEqual(whole.firings);
    expect(lines[2]).toMatchObject({
      compared: 2,
      thermocoupleShifts: whole.thermocoupleShifts,
      cautions: whole.cautions,
    });
    lines.forEach(schemaOf("compare-line"));
    expect(exit).toBe(0);
  });

  it("compares those that can be read, and ends with 2 when one cannot", () => {
    const ran = undunted(["compare", folderOf(9, [4])]);
    expect(ran.exit).toBe(2);
    expect(ran.out).toContain("8 firings compared");
    expect(ran.err).toContain("1 of 9 logs could not be read");
  });
});

describe("review --explain", () => {
  it("tells each decision with its reason, what came next and the option that says otherwise", () => {
    const { out, exit } = undunted(["review", "--explain", CRACKLE]);
    expect(exit).toBe(0);
    for (const line of out.split("\n")) expect([...line].length, line).toBeLessThanOrEqual(80);
    expect(out).toMatch(/Delimiter\n {2}taken {6}comma \(certain\)\n {2}why {8}Cut there/);
    expect(out).toMatch(/or say {5}--delimiter/);
    expect(out).toMatch(/What each column was taken for/);
  });

  it("tells what was decided before a problem", () => {
    const ran = undunted(["review", "--explain", "test/fixtures/logs/unit-could-be-two.csv"]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("log/unit-unknown");
    expect(ran.out).toMatch(/Time column\n {2}taken {6}Time \(s\)/);
    expect(ran.out).toMatch(/Kiln +temperature +its name says so/);
  });

  it("ends with lines that leave nothing to guess, once they stand in the record", () => {
    const folder = emptyFolder();
    const log = join(folder, "a.csv");
    // 3 May or 5 March: nothing in the log can tell.
    const rows = Array.from({ length: 40 }, (_, i) => `03/05/2026 10:${10 + i}:00,${20 + 2 * i}.5`);
    writeFileSync(log, `Time,Kiln (°C)\n${rows.join("\n")}\n`);
    const before = undunted(["review", "--explain", log]).out;
    expect(before).toMatch(/day first: 2026-05-03 \(a guess\)/);
    expect(before).toMatch(/next best {2}month first: 2026-03-05/);
    const lines = before.slice(before.search(/^log:$/m));
    writeFileSync(join(folder, "a.yaml"), `formatVersion: 1\ntitle: t\n${lines}`);
    const after = undunted(["review", "--explain", log]).out;
    expect(after).not.toMatch(/\((likely|a guess)\)/);
    expect(after).toContain("Nothing was guessed");
  });
});
