import { describe, expect, it } from "vitest";
import { ownProcess, undunted } from "../support/undunted.ts";

const SCHEDULE = "formatVersion: 1\ntitle: Mugs\nsegments:\n  - { to: 900 C, rate: 100 C/h }\n";

describe("the built command in a process of its own", () => {
  it.each([
    ["its help", ["--help"], {}],
    ["no command", [], {}],
    ["a word that is no command", ["fire"], {}],
    ["a schedule on standard input", ["draft", "-", "--json"], { input: SCHEDULE }],
    ["a log in colour", ["review", "2026-05-23-b.csv", "--color"], { cwd: "logs" }],
    ["a log that is not there", ["review", "none.csv"], { cwd: "logs" }],
    ["a folder on worker threads", ["review", ".", "--json-lines", "-q"], { cwd: "logs" }],
  ])("says what it says in a thread of the tests: %s", (_, args, around) => {
    expect(ownProcess(args, around)).toEqual(undunted(args, around));
  });
});
