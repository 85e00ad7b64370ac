import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { failed, ok } from "../../src/core/problem.ts";
import { wareBeside } from "../../src/node/filesBeside.ts";
import { emptyFolder } from "../support/undunted.ts";

/** A folder of logs with files beside them; each file holds its own name. */
function studio(...files: readonly string[]): string {
  const folder = join(emptyFolder(), "logs");
  for (const inside of ["logs", "glazes", "bodies"])
    mkdirSync(join(folder, "..", inside), { recursive: true });
  for (const file of files) writeFileSync(join(folder, file), file);
  return folder;
}

async function glazesFor(folder: string, names: readonly string[]) {
  const { found } = await wareBeside("glaze", { names, folders: [folder] }, async (path) =>
    ok(path.slice(folder.length - "logs".length)),
  );
  return Object.fromEntries(found);
}

describe("files of glazes beside logs", () => {
  it("are found by the name on the tiles, capitals and blanks aside", async () => {
    const folder = studio("glaze-pond-ice.yaml", "tenmoku.json", "2026-03-14-b.yaml");
    expect(await glazesFor(folder, ["Pond  Ice", "tenmoku", "celadon"])).toEqual({
      "pond-ice": "logs/glaze-pond-ice.yaml",
      tenmoku: "logs/tenmoku.json",
    });
  });

  it("may lie in a folder for glazes beside that of the logs, and go after those at hand", async () => {
    const folder = studio("shino.yaml", "../glazes/shino.yaml", "../glazes/celadon.yaml");
    expect(await glazesFor(folder, ["shino", "celadon"])).toEqual({
      shino: "logs/shino.yaml",
      celadon: expect.stringMatching(/glazes\/celadon\.yaml$/),
    });
  });

  it("are never looked for outside these folders, whatever a record calls a glaze", async () => {
    const folder = studio("../secret.yaml");
    expect(await glazesFor(folder, ["../secret", "..", "/etc/passwd", ""])).toEqual({});
  });

  it("that cannot be read are told, and stop nothing", async () => {
    const folder = studio("glaze-pond-ice.yaml");
    const problem = { code: "x/y", where: "w", what: "w", expected: "e", fix: "f" } as never;
    const { found, unread } = await wareBeside(
      "glaze",
      { names: ["pond ice"], folders: [folder, join(folder, "nowhere")] },
      async () => failed(problem),
    );
    expect(found.size).toBe(0);
    expect(unread.map(({ path }) => path)).toEqual([join(folder, "glaze-pond-ice.yaml")]);
  });
});
