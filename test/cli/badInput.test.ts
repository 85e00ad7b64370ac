import { describe, expect, it } from "vitest";
import { emptyFolder, fileWith, type Ran, undunted } from "../support/undunted.ts";

const HEAD = "formatVersion: 1\ntitle: t\nunit: C\n";

/** Every failure has a code, three lines, exit 2, nothing on standard output, no stack trace. */
function expectProblem(ran: Ran, code: string, says: RegExp): void {
  expect(ran.err).toContain(`(${code})`);
  expect(ran.err).toMatch(says);
  expect(ran.err).toMatch(/\n {2}expected {2}\S/);
  expect(ran.err).toMatch(/\n {2}try {7}\S/);
  expect(ran.err).not.toMatch(/^\s+at .*\(?.*:\d+:\d+\)?$/m);
  expect(ran.out).toBe("");
  expect(ran.exit).toBe(2);
}

describe("a file that cannot be read", () => {
  it.each(["draft", "review"])("is named by %s when it is missing", (command) => {
    expectProblem(undunted([command, "nowhere.csv"]), "file/missing", /no such file/);
  });

  it.each(["draft", "review"])("is named by %s when it is a folder", (command) => {
    expectProblem(undunted([command, emptyFolder()]), "file/folder", /it is a folder/);
  });
});

describe("a log that cannot be read", () => {
  const rows = (line: (i: number) => string, count = 60) =>
    Array.from({ length: count }, (_, i) => line(i)).join("\n");
  it.each([
    ["empty", "", /empty/],
    ["binary", new Uint8Array(4096).map((_, i) => (i * 7919) % 251), /text/],
    ["without times", `a,b\n${rows(() => "kiln,hot")}`, /time/],
    ["without temperatures", `time,name\n${rows((i) => `${i * 60},idle`)}`, /temperature/],
    ["of one row", "time,temp C\n0,20\n", /one|row|reading/],
    ["of no numbers", `time s,temp C\n${rows((i) => `${i * 60},NaN`)}`, /temperature|reading/],
    [
      "in one of two units",
      `time s,temp\n${rows((i) => `${i * 600},${(400 + i * 15).toFixed(0)}`)}`,
      /--log-unit/,
    ],
  ])("is refused when it is %s", (_, content, says) => {
    const ran = undunted(["review", fileWith("log.csv", content)]);
    expect(ran.err).toMatch(says);
    expect(ran.err).toMatch(/\n {2}try {7}\S/);
    expect(ran.err).not.toMatch(/^\s+at .*:\d+:\d+/m);
    expect(ran.out).toBe("");
    expect(ran.exit).toBe(2);
  });

  it("is refused with the options that could help when the column is not there", () => {
    const ran = undunted(["review", "logs/2026-03-14-b.csv", "--column", "lid"]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("kiln_C");
  });
});

describe("a schedule that cannot be fired", () => {
  it.each([
    [
      "an unknown key",
      `${HEAD}segments:\n  - { to: 1000, rate: 100, hodl: 5 min }\n`,
      /hodl[\s\S]*hold/,
    ],
    ["a zero rate", `${HEAD}segments:\n  - { to: 1000, rate: 0 }\n`, /segments\[0\]\.rate/],
    [
      "a falling rate for a rising target",
      `${HEAD}segments:\n  - { to: 1000, rate: -100 }\n`,
      /segments\[0\]\.rate/,
    ],
    ["an unknown cone", `${HEAD}cone: "55"\nsegments:\n  - { to: 1000, rate: 100 }\n`, /"55"/],
    [
      "10 000 segments",
      `${HEAD}segments:\n${"  - { to: 1000, rate: 100 }\n  - { to: 900, rate: 100 }\n".repeat(5000)}`,
      /10 ?000/,
    ],
    ["3 000 °C", `${HEAD}segments:\n  - { to: 3000, rate: 100 }\n`, /3 ?000/],
    ["no segments", `${HEAD}segments: []\n`, /segments/],
    ["another format", "<schedule/>", /schedule/],
  ])("is refused for %s", (_, content, says) => {
    const ran = undunted(["draft", fileWith("s.yaml", content)]);
    expect(ran.err).toMatch(says);
    expect(ran.err).toMatch(/\n {2}try {7}\S/);
    expect(ran.err).not.toMatch(/^\s+at .*:\d+:\d+/m);
    expect(ran.out).toBe("");
    expect(ran.exit).toBe(2);
  });

  it("has all its problems told at once", () => {
    const ran = undunted([
      "draft",
      fileWith("s.yaml", `${HEAD}cone: "55"\nsegments:\n  - { to: 3000, rate: 0 }\n`),
    ]);
    expect(ran.err.match(/\n {2}expected/g)?.length).toBeGreaterThanOrEqual(3);
  });
});

describe("wrong use", () => {
  it.each([
    [["draft"], /no schedule is given/],
    [["review"], /missing required argument/],
    [["fire"], /unknown command/],
    [["review", "x.csv", "--uint", "C"], /unknown option/],
    [["review", "x.csv", "--unit", "K"], /Allowed choices are C, F/],
    [["draft", "schedules/cone-5-slow-cool.yaml", "--start", "tomorrow-ish"], /--start/],
    [["draft", "schedules/cone-5-slow-cool.yaml", "--offset", "lots"], /--offset/],
    [["draft", "schedules/cone-5-slow-cool.yaml", "--chart", "x.gif"], /\.svg or \.png/],
    [["cones", "99"], /"99" is not a cone/],
    [["cones", "--series", "tall"], /self-supporting/],
    [["schema", "kettle"], /schedule, record/],
    [["compare", "logs/2026-02-07-a.csv"], /two/],
    [["review", "logs/2026-03-14-b.csv", "logs/2026-03-28-a.csv", "--json"], /one log/],
    [["review", "x.csv", "--day-first", "--month-first"], /--day-first/],
  ])("of %j is told with exit code 2", (args, says) => {
    const ran = undunted(args);
    expect(ran.err).toMatch(says);
    expect(ran.exit).toBe(2);
  });

  it.each([
    [["review", "nowhere.csv", "--json"], "file/missing"],
    [["draft", "--json", "--what"], "command/usage"],
  ])("with --json (%j) is one JSON document", (args, code) => {
    const document = JSON.parse(undunted(args).out);
    expect(document).toMatchObject({ schemaVersion: 1, ok: false, problems: [{ code }] });
  });
});
