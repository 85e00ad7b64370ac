import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { FiringRecordFile } from "../../../src/core/firing/record.ts";
import { DEMO_FIRINGS, demoFiles, demoReadme } from "./demoFiles.ts";

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

describe("demo folder", () => {
  it("holds the demo firings, their README and its picture, nothing else", () => {
    const written = DEMO_FIRINGS.flatMap(({ name }) => [`${name}.csv`, `${name}.yaml`]);
    expect(readdirSync(folder).sort()).toEqual(
      [...written, "README.md", "2026-05-23-b.png"].sort(),
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
