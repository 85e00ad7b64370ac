import { spawnSync } from "node:child_process";
import { cpSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { emptyFolder, inFull, type Ran, undunted } from "../support/undunted.ts";

const ROOT = join(import.meta.dirname, "../..");

/** The demo logs and schedules, in a folder of their own; returns that of the logs. */
function studio(): string {
  const folder = emptyFolder();
  for (const part of ["logs", "schedules"])
    cpSync(join(ROOT, part), join(folder, part), { recursive: true });
  return join(folder, "logs");
}

/** Runs a line as a person pastes it into a shell: the words are what a shell makes of it. */
function pasted(line: string, cwd: string): Ran {
  const script = `undunted() { printf '%s\\0' "$@"; }\n${line}`;
  const { status, stdout } = spawnSync("sh", ["-c", script], { cwd, encoding: "utf8", input: "" });
  expect(status).toBe(0);
  return undunted(stdout.split("\0").slice(0, -1), { cwd });
}

function nextTime(args: readonly string[], cwd: string) {
  const ran = undunted(["review", ...args, "--json", "-q"], { cwd });
  const { nextTime: next } = JSON.parse(ran.out);
  return next as {
    readonly command: string;
    readonly commandSays: string;
    readonly changes: readonly { readonly about: string; readonly inSchedule: boolean }[];
  };
}

function written(command: string): string {
  return /-o (\S+)$/.exec(command)?.[1] ?? "";
}

describe("the command that drafts the next firing", () => {
  test.each(["2026-02-07-a.csv", "2026-05-09-a.csv", "2026-03-28-a.csv"])(
    "lays the schedule of %s out again, since nothing in it has to change",
    (log) => {
      const logs = studio();
      const { command, changes } = nextTime([log], logs);
      expect(changes.some(({ inSchedule }) => inSchedule)).toBe(false);
      expect(command).not.toContain(" -o ");
      const ran = pasted(command, logs);
      expect(ran.err).not.toContain("expected");
      expect([0, 1]).toContain(ran.exit);
    },
  );

  test("names a body of one's own, which it cannot say, and how to add it", () => {
    const logs = studio();
    const record = join(logs, "2026-05-23-b.yaml");
    const own = "body: { base: stoneware cone 6, name: grogged mix, quartzFraction: 0.25 }";
    writeFileSync(record, readFileSync(record, "utf8").replace(/body: .*/g, own));
    const { command, commandSays } = nextTime(["2026-05-23-b.csv"], logs);
    expect(command).not.toContain("--body");
    expect(commandSays).toContain("It knows nothing of grogged mix");
    expect(commandSays).toContain("add --body FILE");
    expect(nextTime(["2026-03-28-a.csv"], logs).commandSays).not.toContain("It knows nothing of");
  });

  test.each<{ readonly what: string; readonly args: readonly string[]; readonly way: string }>([
    {
      what: "solves the peak where only the cone is missed",
      args: ["2026-05-23-b.csv"],
      way: "--solve peak",
    },
    {
      what: "solves the peak of a schedule that leaves platters to a fall which they bear",
      args: ["2026-05-23-b.csv", "--against", "../schedules/cone-5-glaze.yaml"],
      way: "--solve peak",
    },
    {
      what: "writes a new schedule where none is known",
      args: ["2026-04-11-a.csv"],
      way: "--new --cone 6",
    },
  ])("$what", ({ args, way }) => {
    const logs = studio();
    const { command } = nextTime(args, logs);
    expect(command).toContain(way);
    const ran = pasted(command, logs);
    expect(ran.err).not.toContain("expected");
    expect([0, 1]).toContain(ran.exit);
    const file = written(command);
    expect(existsSync(join(logs, file))).toBe(true);
    const thermocouple = /--offset \S+|--kiln \S+/.exec(command)?.[0].split(" ") ?? [];
    const again = undunted(["draft", file, ...thermocouple, "--json"], { cwd: logs });
    const draft = JSON.parse(again.out);
    const warnings = draft.findings.filter(
      ({ severity }: { readonly severity: string }) => severity === "warning",
    );
    expect(warnings).toEqual([]);
  });

  test("tells the offset of a record that draft would not find beside the log", () => {
    const logs = studio();
    cpSync(join(logs, "2026-03-28-a.csv"), join(logs, "lent.csv"));
    const { command } = nextTime(["lent.csv", "--record", "2026-03-28-a.yaml"], logs);
    expect(command).toMatch(/ --offset -\dC /);
    expect([0, 1]).toContain(pasted(command, logs).exit);
  });

  test("needs neither record nor schedule", () => {
    const logs = studio();
    const alone = emptyFolder();
    cpSync(join(logs, "2026-02-21-b.csv"), join(alone, "alone.csv"));
    const { command } = nextTime(["alone.csv"], alone);
    expect(command).toMatch(/^undunted draft --new --cone 5 /);
    expect([0, 1]).toContain(pasted(command, alone).exit);
    expect(existsSync(join(alone, "next.yaml"))).toBe(true);
  });

  test("does not write over a file that is there", () => {
    const logs = studio();
    writeFileSync(join(logs, "next.yaml"), "mine");
    const { command } = nextTime(["2026-04-11-a.csv"], logs);
    expect(written(command)).toBe("next-2.yaml");
    pasted(command, logs);
    expect(readFileSync(join(logs, "next.yaml"), "utf8")).toBe("mine");
  });

  test("runs with blanks and quotes in names", () => {
    const logs = studio();
    const name = `Hilda's "b" $HOME`;
    for (const ending of [".csv", ".yaml"])
      cpSync(join(logs, `2026-04-11-a${ending}`), join(logs, name + ending));
    const { command } = nextTime([`${name}.csv`], logs);
    expect([0, 1]).toContain(pasted(command, logs).exit);
    expect(existsSync(join(logs, "next.yaml"))).toBe(true);
  });

  test("stands at the end of its section, folded so that it can be pasted", () => {
    const logs = studio();
    const { out } = undunted(["review", "2026-06-06-a.csv", "--more", "next", "-q"], { cwd: logs });
    const [, section = ""] = out.split("What to change next time\n");
    const told = section;
    const folded = told.slice(told.indexOf("undunted draft"));
    expect(told.split("\n").every((line) => line.length <= 80)).toBe(true);
    expect([0, 1]).toContain(pasted(folded, logs).exit);
  });
});

describe("earlier logs of the kiln", () => {
  test("are offered and not used when they were not given", () => {
    const logs = studio();
    const ran = undunted(["review", "2026-03-14-b.csv"], { cwd: logs });
    expect(ran.err).toContain(
      "undunted review 2026-03-14-b.csv --kiln 2026-02-07-a.csv 2026-02-21-b.csv",
    );
    expect(ran.err).not.toContain("2026-03-28-a.csv");
    expect(ran.out).not.toContain("earlier firing");
    expect(undunted(["review", "2026-03-14-b.csv", "-q"], { cwd: logs }).err).toBe("");
  });

  test("are not offered to the only firing of a kiln, nor to its first", () => {
    const logs = studio();
    for (const log of ["2026-04-11-a.csv", "2026-02-07-a.csv"])
      expect(undunted(["review", log], { cwd: logs }).err).toBe("");
  });

  test("are left out by name when they are broken or of another kiln", () => {
    const logs = studio();
    writeFileSync(join(logs, "broken.csv"), "no numbers here\n");
    const ran = inFull(
      [
        ...["review", "2026-06-06-a.csv", "--kiln"],
        ...["2026-02-07-a.csv", "2026-04-11-a.csv", "broken.csv", "nowhere.csv"],
      ],
      { cwd: logs },
    );
    const text = ran.out.replaceAll(/\s+/g, " ");
    expect(ran.exit).toBe(1);
    expect(text).toContain("3 of 4 earlier logs were left out");
    expect(text).toContain("2026-04-11-a.csv (its record names another kiln, the Wren");
    expect(text).toContain("broken.csv (it could not be read");
    expect(text).toContain("nowhere.csv (it could not be read");
    expect(text).toMatch(
      /full power heated by \d+ °C\/h in 2026-06-06-a.csv and by \d+ °C\/h in 2026-02-07-a.csv/,
    );
  });
});
