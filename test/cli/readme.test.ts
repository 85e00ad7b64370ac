import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { buildProgram } from "../../src/cli/program.ts";
import { emptyFolder, inFull, undunted } from "../support/undunted.ts";

const README = readFileSync("README.md", "utf8");

const SESSIONS = [...README.matchAll(/```console\n\$ npx undunted (.*)\n([\s\S]*?)```/g)].map(
  ([, command, output]) => ({ command: command as string, output: (output as string).trimEnd() }),
);

/** The example file of the README that has this in it. */
function fileWith(words: string): string {
  const files = [...README.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, yaml]) => yaml as string);
  return files.find((yaml) => yaml.includes(words)) as string;
}

/** Words of a command line, quotes taken off. */
function words(command: string): readonly string[] {
  return [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(
    ([, quoted, bare]) => (quoted ?? bare) as string,
  );
}

describe("the README", () => {
  it("shows at least three sessions", () => {
    expect(SESSIONS.length).toBeGreaterThanOrEqual(3);
  });

  it.each(SESSIONS)("shows what `undunted $command` prints", ({ command, output }) => {
    let rest = undunted(words(command)).out;
    for (const stretch of output.split(/^…\n?/m)) {
      const at = rest.indexOf(stretch.trimEnd());
      expect(at, stretch).toBeGreaterThanOrEqual(0);
      rest = rest.slice(at + stretch.length);
    }
  });

  it("shows a schedule that the command accepts without a warning", () => {
    expect(undunted(["draft", "-"], { input: fileWith("segments:") }).exit).toBe(0);
  });

  it("shows a body that the command takes, with its number and its source", () => {
    const path = join(emptyFolder(), "body.yaml");
    writeFileSync(path, fileWith("ruptureMPa:"));
    const { exit, out } = inFull(["draft", "--new", "--cone", "5", "--body", path]);
    expect(exit).toBe(0);
    expect(out).toContain("grogged stoneware, our own bars");
    expect(out.replace(/\s+/g, " ")).toContain("30 MPa 24 to 36 ten bars broken");
  });

  it("names the commands of its table and the options of its text as they are", () => {
    const program = buildProgram(() => {});
    const names = program.commands.map((command) => command.name());
    const rows = [...README.matchAll(/^\| `undunted (\w+)/gm)].map(([, name]) => name);
    expect(rows).toEqual(names);
    const known = new Set(
      program.commands.flatMap((command) => command.options.map((option) => option.long)),
    );
    for (const [option] of README.matchAll(/--[a-z][a-z-]+/g)) expect(known).toContain(option);
  });

  it.each(["README.md", "DEVELOPERS.md", "schedules/README.md", "logs/README.md"])(
    "and its like link to files that are there: %s",
    (page) => {
      for (const [, link] of readFileSync(page, "utf8").matchAll(/\]\(([^)#]+)\)/g))
        expect(existsSync(join(dirname(page), link as string)), link).toBe(true);
    },
  );
});

describe("examples in the help", () => {
  const help = undunted(["--help"]).out;
  const examples = [...help.matchAll(/^ {2}\$ undunted (.*)$/gm)].map(
    ([, command]) => command as string,
  );

  it.each(examples)("run: undunted %s", (command) => {
    const args = words(command).filter(
      (word, i, all) => word !== "--html" && all[i - 1] !== "--html",
    );
    expect([0, 1]).toContain(undunted(args).exit);
  });

  it("are there", () => {
    expect(examples.length).toBeGreaterThan(0);
  });
});
