import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { logPaths } from "../../src/node/logPaths.ts";
import { emptyFolder } from "../support/undunted.ts";

function folderWith(...names: readonly string[]): string {
  const folder = emptyFolder();
  for (const name of names) writeFileSync(join(folder, name), "");
  return folder;
}

describe("logPaths", () => {
  it("takes the logs of a folder by name, and counts what it leaves aside", async () => {
    const folder = folderWith(
      "b.csv",
      "a.TXT",
      "c",
      "d.csv.gz",
      "b.yaml",
      "b.PNG",
      "README.md",
      "readme.txt",
      ".hidden.csv",
    );
    mkdirSync(join(folder, "older.csv"));
    expect(await logPaths([folder])).toEqual({
      ok: true,
      value: {
        paths: ["a.TXT", "b.csv", "c", "d.csv.gz"].map((name) => join(folder, name)),
        remarks: [`${folder}: 4 logs; left aside: 4 files of another kind, 1 folder inside it`],
      },
    });
  });

  it("keeps the order of what is given, and files as they are", async () => {
    const folder = folderWith("x.csv");
    const result = await logPaths(["z.csv", folder, "-", "a.yaml"]);
    expect(result.ok && result.value.paths).toEqual([
      "z.csv",
      join(folder, "x.csv"),
      "-",
      "a.yaml",
    ]);
  });

  it("refuses a folder without logs", async () => {
    const result = await logPaths([folderWith("a.yaml")]);
    expect(result.ok ? [] : result.problems.map(({ code }) => code)).toEqual(["file/folder"]);
  });
});
