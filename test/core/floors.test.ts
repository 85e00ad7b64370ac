import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { describe, expect, it } from "vitest";

const ROOT = join(import.meta.dirname, "../..");
const SRC = join(ROOT, "src");

/** Floors from the top down, each with its rooms, as DEVELOPERS.md lists them. */
const FLOORS = listed(readFileSync(join(ROOT, "DEVELOPERS.md"), "utf8"));
/** What starts a program, and so may know every room of its shell. */
const STARTS = new Set(["page/main.ts", "cli/program.ts", "cli/bin.ts", "page/vite.config.ts"]);

function listed(text: string): readonly (readonly string[])[] {
  const [, list = ""] = /```floors\n([\s\S]*?)```/.exec(text) ?? [];
  return list.split("\n").flatMap((line) => (line === "" ? [] : [line.split(" ")]));
}

/** The room of a file: its folder in the list, or the nearest one above that is. */
function roomOf(path: string): string {
  const rooms = FLOORS.flat();
  let folder = dirname(path);
  while (!rooms.includes(folder) && folder !== ".") folder = dirname(folder);
  return folder;
}

function floorOf(room: string): number {
  return FLOORS.findIndex((rooms) => rooms.includes(room));
}

interface Import {
  readonly from: string;
  readonly to: string;
}

/** Every import from file to file, of types and at run time alike, lazy ones too. */
const IMPORTS: readonly Import[] = sources().flatMap((from) =>
  [...readFileSync(join(SRC, from), "utf8").matchAll(/(?:\bfrom |\bimport\()"(\.[^"]+\.ts)"/g)].map(
    ([, path = ""]) => ({ from, to: relative(SRC, join(SRC, dirname(from), path)) }),
  ),
);

function sources(): readonly string[] {
  return readdirSync(SRC, { recursive: true, encoding: "utf8" }).filter((path) =>
    path.endsWith(".ts"),
  );
}

describe("the floors of the house", () => {
  it("hold every file, in a room that is listed once", () => {
    const rooms = FLOORS.flat();
    expect(rooms.length).toBeGreaterThan(20);
    expect(new Set(rooms).size).toBe(rooms.length);
    expect(sources().filter((path) => roomOf(path) === ".")).toEqual([]);
  });

  it("are left downwards only", () => {
    expect(IMPORTS.length).toBeGreaterThan(1000);
    const upward = IMPORTS.filter(({ from, to }) => {
      const [room, other] = [roomOf(from), roomOf(to)];
      return room !== other && !STARTS.has(from) && floorOf(other) <= floorOf(room);
    });
    expect(upward.map(({ from, to }) => `${from} → ${to}`)).toEqual([]);
  });

  it("hold no two folders of one room that import each other", () => {
    const ways = new Set(
      IMPORTS.filter(({ from, to }) => dirname(from) !== dirname(to) && !STARTS.has(from)).map(
        ({ from, to }) => `${dirname(from)} ${dirname(to)}`,
      ),
    );
    const mutual = [...ways].filter((way) => ways.has(way.split(" ").reverse().join(" ")));
    expect(mutual).toEqual([]);
  });
});
