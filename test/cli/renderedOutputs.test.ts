import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { DEMO_CROP, DEMO_SCALE } from "../support/demo/inkedTile.ts";
import { emptyFolder, inFull } from "../support/undunted.ts";

const LOG = "logs/2026-03-14-b.csv";
const TILE = ["measure", "logs/inked-tile.png", "--scale", DEMO_SCALE, "--crop", DEMO_CROP];

/** A way to call the command, and which files it can write beside its text. */
const CALLS: readonly (readonly [args: readonly string[], ...files: readonly string[]])[] = [
  [["review", LOG], "html", "svg"],
  [["review", LOG, "--explain"]],
  [["draft", "schedules/cone-5-crackle-tiles.yaml"], "html", "svg"],
  [["compare", LOG, "logs/2026-04-11-a.csv"], "html", "svg"],
  [["kiln", LOG, "logs/2026-05-23-b.csv"], "html", "svg"],
  [["watch", LOG, "--cone", "5", "--every", "0.05s", "--until-still", "0.2s"]],
  [TILE, "html"],
  [["pings", "logs/pinging-shelf.wav"], "html", "svg"],
  [["cones", "5"]],
  [["glaze", "logs/glaze-crackle.yaml", "--batch", "2kg", "--density", "1.45"], "html"],
  [["glaze", "logs/glaze-fitting.yaml"], "html"],
  [["glaze", "logs/glaze-crackle.yaml", "logs/glaze-pond-ice.yaml"], "html"],
  [["schema", "glaze"]],
];

/** The same as documents. */
const DOCUMENTS: readonly (readonly string[])[] = [
  ["review", LOG, "--json"],
  ["review", LOG, "logs/2026-04-11-a.csv", "--json-lines", "-q"],
  ["draft", "schedules/cone-5-crackle-tiles.yaml", "--json"],
  ["compare", LOG, "logs/2026-04-11-a.csv", "--json"],
  ["kiln", LOG, "logs/2026-05-23-b.csv", "--json"],
  [...TILE, "--json"],
  ["pings", "logs/pinging-shelf.wav", "--json"],
  ["cones", "--json"],
  ["glaze", "logs/glaze-crackle.yaml", "--json"],
  ["glaze", "logs/glaze-fitting.yaml", "--json"],
];

/** Every way to say it that came to mind; nothing of ours says it, with or without a "not". */
const PROMISE =
  /food[\s-]*safe|dinnerware[\s-]*safe|safe[\s-]+(?:for|with|to use with)[\s-]+(?:food|drink)|safe to (?:eat|drink)|lead[\s-]*free/i;

const CAUTION = /crackled surface is not for food or drink/;

/** Words of a page or a report in one line, without its marks. */
function flat(text: string): string {
  return text.replaceAll(/<[^>]*>/g, " ").replaceAll(/\s+/g, " ");
}

function expectHonest(text: string): void {
  expect(text.match(PROMISE)).toBeNull();
}

function expectCaution(text: string): void {
  if (/crackl/i.test(text)) expect(text).toMatch(CAUTION);
}

describe("what the command prints and writes never calls ware fit for food, and cautions wherever it speaks of crackle", () => {
  it.each(CALLS)("%j", (args, ...files) => {
    const folder = emptyFolder();
    const wanted = files.map((ending) => join(folder, `out.${ending}`));
    const options = wanted.flatMap((path) => [path.endsWith("html") ? "--html" : "--chart", path]);
    const { exit, out, err } = inFull([...args, ...options]);
    expect([0, 1], err).toContain(exit);
    for (const text of [out, err, ...wanted.map((path) => readFileSync(path, "utf8"))])
      expectHonest(flat(text));
    // A schema is no report; of the charts, that of crack spacing says it of itself (below).
    if (args[0] !== "schema") expectCaution(flat(out));
    for (const path of wanted)
      if (path.endsWith("html")) expectCaution(flat(readFileSync(path, "utf8")));
  });

  it("cautions in the chart of crack spacing, which may be passed on alone", () => {
    const chart = join(emptyFolder(), "out.svg");
    inFull(["compare", LOG, "logs/2026-02-21-b.csv", "logs/2026-04-11-a.csv", "--chart", chart]);
    expect(flat(readFileSync(chart, "utf8"))).toMatch(CAUTION);
  });

  it.each(DOCUMENTS.map((args) => [args]))("%j", (args) => {
    const { exit, out } = inFull(args);
    expect([0, 1]).toContain(exit);
    for (const document of args.includes("--json-lines") ? out.trimEnd().split("\n") : [out]) {
      expectHonest(flat(document));
      expectCaution(flat(document));
    }
  });

  it("the page and everything we ship hold no such words either", () => {
    const places = ["schedules", "logs"].flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => /\.(yaml|csv|md)$/.test(name))
        .map((name) => join(folder, name)),
    );
    const sources = readdirSync("src", { recursive: true, encoding: "utf8" })
      .filter((name) => /\.(ts|css|html)$/.test(name))
      .map((name) => join("src", name));
    expect(existsSync("dist/undunted.html")).toBe(true);
    for (const path of ["dist/undunted.html", "README.md", "DEVELOPERS.md", ...places, ...sources])
      expect(readFileSync(path, "utf8").match(PROMISE)?.[0] ?? null, path).toBeNull();
  });

  it("and the search finds such words where they stand", () => {
    for (const promise of [
      "Food-safe.",
      "foodsafe",
      "safe for food",
      "safe to eat from",
      "lead free",
    ])
      expect(() => expectHonest(promise)).toThrow();
    expect(() => expectCaution("a fine crackle")).toThrow();
  });
});
