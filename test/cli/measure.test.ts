import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { DEMO_CROP, DEMO_SCALE, tileCracks } from "../support/demo/inkedTile.ts";
import { drawnIntercept } from "../support/mosaics.ts";
import { answer, emptyFolder, fileWith, inFull } from "../support/undunted.ts";

const TILE = "logs/inked-tile.png";
const SCALED = ["measure", TILE, "--scale", DEMO_SCALE, "--crop", DEMO_CROP];

/** The same picture in another file, turned and marked so by its camera. */
async function turnedJpeg(): Promise<string> {
  const bytes = await sharp(TILE)
    .rotate(270)
    .withMetadata({ orientation: 6 })
    .jpeg({ quality: 95 })
    .toBuffer();
  return fileWith("turned.jpg", bytes);
}

describe("undunted measure", () => {
  it("answers with a document that fits its schema, and with the spacing that was drawn", () => {
    const validate = new Ajv2020({ strict: false }).compile(
      JSON.parse(inFull(["schema", "measure"]).out),
    );
    const ran = answer([...SCALED, "--json"]);
    expect(ran.exit).toBe(0);
    const document = JSON.parse(ran.out);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    const drawnMm = drawnIntercept(tileCracks(), { width: 1000, height: 1000 }) / 10;
    expect(Math.abs(document.cracks.interceptMm / drawnMm - 1)).toBeLessThan(0.03);
  });

  it("turns a picture as its camera says", async () => {
    const ran = inFull([
      "measure",
      await turnedJpeg(),
      "--scale",
      DEMO_SCALE,
      "--crop",
      DEMO_CROP,
      "--json",
    ]);
    const upright = JSON.parse(answer([...SCALED, "--json"]).out);
    const { cracks, widthMm } = JSON.parse(ran.out);
    expect(widthMm).toBe(upright.widthMm);
    expect(Math.abs(cracks.interceptMm / upright.cracks.interceptMm - 1)).toBeLessThan(0.02);
  });

  it("ends with lines for the record and the caution about food", () => {
    const { out } = inFull([...SCALED, "--count", "17,16"]);
    expect(out).toMatch(
      /crackSpacing: [\d.]+ mm\n {2}spacingRange: \[[\d.]+ mm, [\d.]+ mm\]\n {2}spacingFrom: photo\n/,
    );
    expect(out.trimEnd()).toMatch(/not for food or drink[^•]*$/);
    expect(out).toContain("Along lines A and B you counted 33 cracks");
    for (const line of out.split("\n"))
      if (!line.includes("note: ")) expect(line.length).toBeLessThanOrEqual(80);
  });

  it("takes the scale from a width, and from four corners without a warning of slant", () => {
    const byWidth = inFull(["measure", TILE, "--width", "98.8mm", "--crop", DEMO_CROP, "--json"]);
    const corners = "40,40 1040,40 1040,1040 40,1040 100mm 100mm";
    const byCorners = inFull(["measure", TILE, "--corners", corners, "--json"]);
    const [a, b] = [byWidth, byCorners].map(({ out }) => JSON.parse(out));
    expect(Math.abs(a.cracks.pitchMm / b.cracks.pitchMm - 1)).toBeLessThan(0.03);
    expect(JSON.stringify(a.findings)).toContain("slant of 10 degrees");
    expect(JSON.stringify(b.findings)).not.toContain("slant of 10 degrees");
  });

  it("writes the overlay and a page with it inside", async () => {
    const folder = emptyFolder();
    const [overlay, page] = [join(folder, "overlay.png"), join(folder, "page.html")];
    const ran = inFull([...SCALED, "--overlay", overlay, "--html", page]);
    expect(ran.exit).toBe(0);
    const { width, height, format } = await sharp(overlay).metadata();
    expect({ width, height, format }).toEqual({ width: 988, height: 988, format: "png" });
    const { channels } = await sharp(overlay).stats();
    expect(channels[0]?.mean).toBeGreaterThan((channels[1]?.mean ?? 0) + 1);
    const html = readFileSync(page, "utf8");
    expect(html).toContain('<img src="data:image/jpeg;base64,');
    expect(html).not.toMatch(/(src|href)="https?:/);
    expect(statSync(page).size).toBeLessThan(2_000_000);
    expect(inFull([...SCALED, "--overlay", overlay]).err).toContain("(file/exists)");
  });
});

describe("undunted measure refuses", () => {
  it.each([
    ["no scale", [TILE], "photo/no-scale"],
    [
      "a crop that reaches outside",
      [TILE, "--width", "10mm", "--crop", "500,500,900,900"],
      "photo/crop-outside",
    ],
    ["a scale outside", [TILE, "--scale", "40,1110 4000,1110 100mm"], "photo/scale-outside"],
    ["a text", ["package.json", "--width", "10mm"], "photo/not-a-picture"],
    ["a file that is not there", ["nothing.jpg", "--width", "10mm"], "file/missing"],
    [
      "corners with a crop",
      [TILE, "--corners", "0,0 900,0 900,900 0,900 9cm 9cm", "--crop", "1,1,9,9"],
      "photo/several-scales",
    ],
    ["a count of one line", [TILE, "--width", "10mm", "--count", "17"], "command/measure-option"],
    [
      "a threshold above all",
      [TILE, "--width", "10mm", "--threshold", "2"],
      "command/measure-option",
    ],
    [
      "a width under what can be followed",
      [TILE, "--width", "10mm", "--line-width", "1"],
      "command/measure-option",
    ],
    [
      "angles beyond half a turn",
      [TILE, "--width", "10mm", "--angles", "0,200"],
      "command/measure-option",
    ],
    [
      "an overlay that is no PNG",
      [TILE, "--width", "98.8mm", "--crop", DEMO_CROP, "--overlay", "a.gif"],
      "command/overlay-ending",
    ],
  ])("%s", (_, args, code) => {
    const ran = inFull(["measure", ...args]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain(`(${code})`);
    expect(existsSync("a.gif")).toBe(false);
  });

  it("a damaged picture", () => {
    const half = readFileSync(TILE).subarray(0, 60_000);
    const ran = inFull(["measure", fileWith("half.png", half), "--width", "98mm"]);
    expect(ran.err).toContain("(photo/not-a-picture)");
  });

  it("more pixels than it has memory for", async () => {
    const large = await sharp({
      create: { width: 8000, height: 6000, channels: 3, background: "white" },
    })
      .png()
      .toBuffer();
    const ran = inFull(["measure", fileWith("large.png", large), "--width", "98mm"]);
    expect(ran.err).toContain("(photo/too-large)");
    expect(ran.err).toContain("--crop");
  });
});
