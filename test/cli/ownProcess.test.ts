import { copyFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { emptyFolder, ownProcess, undunted } from "../support/undunted.ts";

const SCHEDULE = "formatVersion: 1\ntitle: Mugs\nsegments:\n  - { to: 900 C, rate: 100 C/h }\n";

/** A folder with some of the demo logs alone: more than one for a thread. */
const THREE_LOGS = emptyFolder();
for (const name of ["2026-02-07-a.csv", "2026-03-28-a.csv", "2026-04-11-a.csv"])
  copyFileSync(join("logs", name), join(THREE_LOGS, name));

describe("the built command in a process of its own", () => {
  it.each([
    ["its help", ["--help"], {}],
    ["no command", [], {}],
    ["a word that is no command", ["fire"], {}],
    ["a schedule on standard input", ["draft", "-", "--json"], { input: SCHEDULE }],
    ["a log in colour", ["review", "2026-05-23-b.csv", "--color"], { cwd: "logs" }],
    ["a log that is not there", ["review", "none.csv"], { cwd: "logs" }],
    [
      "a folder on worker threads",
      ["review", ".", "--workers", "2", "--json-lines", "-q"],
      { cwd: THREE_LOGS },
    ],
  ])("says what it says in a thread of the tests: %s", (_, args, around) => {
    expect(ownProcess(args, around)).toEqual(undunted(args, around));
  });
});
