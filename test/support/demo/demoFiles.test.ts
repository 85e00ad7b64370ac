import { readdirSync, readFileSync } from "node:fs";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { parseGlaze } from "../../../src/core/glaze/glazeFile.ts";
import { FiringRecordFile } from "../../../src/core/record/recordFormat.ts";
import { bodyGiven, parseBody } from "../../../src/core/ware/ownBody.ts";
import { DEMO_BODIES } from "./demoBodies.ts";
import { DEMO_FIRINGS, demoFiles, demoReadme } from "./demoFiles.ts";
import { DEMO_GLAZES } from "./demoGlazes.ts";
import { DEMO_PHOTO, greyPng, inkedTile } from "./inkedTile.ts";
import { DEMO_SOUND, pingingShelf } from "./pingingShelf.ts";

const folder = new URL("../../../logs/", import.meta.url);
const committed = (name: string) => readFileSync(new URL(name, folder));

describe.each(DEMO_FIRINGS)("demo firing $name", (firing) => {
  const files = demoFiles(firing);

  it.each(files)("$name is what the seeded script writes, byte for byte", ({ name, text }) => {
    expect(Buffer.from(text).equals(committed(name))).toBe(true);
  });

  it("has a record in the format that we document, and says that it is invented", () => {
    const record = files.find(({ name }) => name.endsWith(".yaml"));
    const read = FiringRecordFile.safeParse(parse(record?.text ?? ""));
    expect(read.error?.issues ?? []).toEqual([]);
    expect(read.data?.invented).toBe(true);
  });

  it("has a log under 400 kB", () => {
    expect(committed(`${firing.name}.csv`).byteLength).toBeLessThan(400_000);
  });
});

describe.each(DEMO_GLAZES)("demo glaze $name", ({ name, text }) => {
  it("is what the script writes, byte for byte", () => {
    expect(committed(name).toString()).toBe(text);
  });

  it("is in the format that we document, and says that it is invented", () => {
    const read = parseGlaze(text, name);
    expect(read).toMatchObject({ ok: true, value: { invented: true } });
  });
});

describe.each(Object.entries(DEMO_BODIES))("demo body %s", (clay, { name, text, given }) => {
  it("is what the script writes, byte for byte", () => {
    expect(committed(name).toString()).toBe(text);
  });

  it("is the body that the records give", () => {
    const record = bodyGiven(given(), () => clay);
    expect(parseBody(text, name)).toEqual(record);
    expect(record.ok && record.value.name).toContain(clay);
  });
});

describe("demo photograph", () => {
  // Pixels, not bytes: how a PNG is packed changes with the version of zlib.
  it("is what the seeded script draws, pixel for pixel", async () => {
    const drawn = inkedTile();
    for (const png of [committed(DEMO_PHOTO), Buffer.from(greyPng(drawn))]) {
      const { data, info } = await sharp(png)
        .toColourspace("b-w")
        .raw()
        .toBuffer({ resolveWithObject: true });
      expect([info.width, info.height, info.channels]).toEqual([drawn.width, drawn.height, 1]);
      expect(data.equals(Buffer.from(Uint8Array.from(drawn.grey)))).toBe(true);
    }
  });

  it("is under 300 kB", () => {
    expect(committed(DEMO_PHOTO).byteLength).toBeLessThan(300_000);
  });
});

describe("demo recording", () => {
  it("is what the seeded script writes, byte for byte", () => {
    expect(Buffer.from(pingingShelf()).equals(committed(DEMO_SOUND))).toBe(true);
  });

  it("is under 300 kB", () => {
    expect(committed(DEMO_SOUND).byteLength).toBeLessThan(300_000);
  });
});

describe("demo folder", () => {
  it("holds the demo firings, glazes, photograph and recording, their README and pictures, nothing else", () => {
    const written = DEMO_FIRINGS.flatMap(({ name }) => [`${name}.csv`, `${name}.yaml`]);
    const glazes = [...DEMO_GLAZES, ...Object.values(DEMO_BODIES)].map(({ name }) => name);
    expect(readdirSync(folder).sort()).toEqual(
      [
        ...[...written, ...glazes, DEMO_PHOTO, DEMO_SOUND],
        ...["README.md", "2026-05-23-b.png", "crackle-tiles.svg", "page.png"],
      ].sort(),
    );
  });

  it("has the README that the script writes", () => {
    const { name, text } = demoReadme();
    expect(committed(name).toString()).toBe(text);
  });

  it("stays under 2 MB on the whole", () => {
    const bytes = readdirSync(folder).reduce((sum, name) => sum + committed(name).byteLength, 0);
    expect(bytes).toBeLessThan(2_000_000);
  });
});
