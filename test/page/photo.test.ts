import { readFileSync } from "node:fs";
import { join } from "node:path";
import axe from "axe-core";
import type { BrowserContextOptions, Page } from "playwright-core";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { parseRecord } from "../../src/core/record/parseRecord.ts";
import { DEMO_CROP, DEMO_SCALE } from "../support/demo/inkedTile.ts";
import { fileWith, undunted } from "../support/undunted.ts";
import { comeBack, fileOf, saved } from "./browser.ts";
import { freshTables, onScreen, sharedTable } from "./withPage.ts";

const TILE = join(import.meta.dirname, "../../logs/inked-tile.png");
const [AX, AY, BX, BY] = DEMO_SCALE.split(/[ ,]/).map(Number);
const [X, Y, WIDTH, HEIGHT] = DEMO_CROP.split(",").map(Number);
const REGION = { x: X, y: Y, width: WIDTH, height: HEIGHT };
const SCALED = ["--scale", DEMO_SCALE, "--crop", DEMO_CROP, "--json"];

const withTable = freshTables("Compare");

function withPhotos(
  act: (page: Page) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> {
  return withTable(({ page }) => act(page), options);
}

const withDemo = sharedTable({ name: "Compare", lay: layDemo, isLaid: counted });

async function counted(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector(".photo-busy") === null);
  await page.waitForSelector("#photo-report");
}

async function layDemo(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Try it with a demo tile" }).click();
  await counted(page);
}

/** Opens a saved bench with a photograph whose scale and part are those of the command. */
async function openScaled(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  await openWhole(page);
  const bench = JSON.parse(await saved(page, "Save the whole bench"));
  bench.photo = {
    ...bench.photo,
    file: { name, bytes: { base64: Buffer.from(bytes).toString("base64") } },
    ends: [
      { x: AX, y: AY },
      { x: BX, y: BY },
    ],
    distanceMm: 100,
    region: REGION,
  };
  await page.setInputFiles("#open-bench", fileOf("bench.json", JSON.stringify(bench)));
  await counted(page);
}

async function openWhole(page: Page): Promise<void> {
  await page.getByText("Whole bench", { exact: true }).click();
}

async function numbers(page: Page) {
  return JSON.parse(await saved(page, "Save the numbers of the count (JSON)"));
}

async function tool(page: Page, name: string): Promise<void> {
  await page.locator(".photo-tools").getByText(name, { exact: true }).click();
}

/** Draws from one place of the picture to another, both as shares of its sides. */
async function stroke(page: Page, from: readonly [number, number], to: readonly [number, number]) {
  await page.locator(".photo-glass").scrollIntoViewIfNeeded();
  const box = await page.locator(".photo-glass").boundingBox();
  if (box === null) throw new Error("no picture");
  const at = ([x, y]: readonly [number, number]) =>
    [box.x + x * box.width, box.y + y * box.height] as const;
  await page.mouse.move(...at(from));
  await page.mouse.down();
  await page.mouse.move(...at(to), { steps: 3 });
  await page.mouse.up();
}

describe("a photograph is measured as the command measures it", () => {
  it("digit for digit from a PNG", () =>
    withPhotos(async (page) => {
      await openScaled(page, "inked-tile.png", readFileSync(TILE));
      const told = JSON.parse(undunted(["measure", TILE, ...SCALED]).out);
      const { findings: _, ...shown } = await numbers(page);
      const { findings, ...expected } = told;
      expect(shown).toEqual(expected);
    }));

  it("from a JPEG that its camera turned, within 2 % (decoders differ by a grey level)", () =>
    withPhotos(async (page) => {
      const bytes = await sharp(TILE)
        .rotate(270)
        .withMetadata({ orientation: 6 })
        .jpeg({ quality: 95 })
        .toBuffer();
      await openScaled(page, "turned.jpg", bytes);
      const { out } = undunted(["measure", fileWith("turned.jpg", bytes), ...SCALED]);
      const [shown, told] = [await numbers(page), JSON.parse(out)];
      expect(shown.heightMm).toBe(told.heightMm);
      expect(Math.abs(shown.cracks.pitchMm / told.cracks.pitchMm - 1)).toBeLessThan(0.02);
    }));
});

describe("the scale is drawn by hand", () => {
  it("with the keyboard, a pixel at a time, and typed in any unit", () =>
    withPhotos(async (page) => {
      await page.setInputFiles("#photo-file", TILE);
      await page.getByText("Say how far apart the two places are").waitFor();
      const first = page.getByRole("slider", { name: "First place on the ruler" });
      const at = (words: string) =>
        page.waitForSelector(`#photo-end-0[aria-valuetext="${words}"]`, { state: "attached" });
      await at("108 across, 1062 down, in pixels");
      await first.focus();
      await page.locator(".photo-lens").waitFor();
      for (const key of ["ArrowRight", "ArrowRight", "Shift+ArrowDown"])
        await page.keyboard.press(key);
      await at("110 across, 1072 down, in pixels");
      await page.keyboard.press("Control+z");
      await at("108 across, 1062 down, in pixels");
      await page.getByRole("button", { name: "Measure a part only" }).click();
      await page
        .getByRole("slider", { name: "Upper left corner of the part to measure" })
        .waitFor();
      await page.fill("#photo-distance", "8.64 cm");
      await page.press("#photo-distance", "Enter");
      await counted(page);
      expect((await numbers(page)).mmPerPx).toBeCloseTo(86.4 / 864, 9);
    }));

  it("says what it expected instead of a picture that is too small, and of a text", () =>
    withPhotos(async (page) => {
      const small = await sharp(TILE).resize(150).png().toBuffer();
      await page.setInputFiles("#photo-file", fileOf("small.png", small));
      await page.getByText("photo/too-small").waitFor();
      await page.setInputFiles("#photo-file", fileOf("notes.png", "no picture"));
      await page.getByText("photo/not-a-picture").waitFor();
    }));

  it("makes a very large picture smaller, with a word", () =>
    withPhotos(async (page) => {
      const create = { width: 5000, height: 3600, channels: 3, background: "#cca" } as const;
      const bytes = await sharp({ create }).png().toBuffer();
      await page.setInputFiles("#photo-file", fileOf("large.png", bytes));
      // 16 million pixels of the same shape: 5000 · √(16/18) by 3600 · √(16/18).
      await page.getByText("made smaller to 4714 by 3394").waitFor();
    }));
});

describe("the count is corrected by hand", () => {
  it("by strokes and boxes, undone step by step, kept over a reload, and brought back", () =>
    withPhotos(async (page) => {
      await layDemo(page);
      const found = (await numbers(page)).cracks.crossings;
      await tool(page, "Take away");
      await stroke(page, [0.3, 0.3], [0.45, 0.4]);
      await page.locator("#photo-lead").getByText("taken away by hand").waitFor();
      const less = (await numbers(page)).cracks.crossings;
      expect(less).toBeLessThan(found);
      await tool(page, "Add");
      await stroke(page, [0.5, 0.2], [0.8, 0.35]);
      await page
        .locator("#photo-lead")
        .getByText(/taken away and \d+ added by hand/)
        .waitFor();
      expect((await numbers(page)).cracks.crossings).toBeGreaterThan(less);
      await tool(page, "Leave out");
      await stroke(page, [0.5, 0.6], [0.7, 0.7]);
      await page.locator("#photo-lead").getByText("1 area left out").waitFor();
      const all = await numbers(page);
      await comeBack(page);
      await page.getByRole("tab", { name: "Compare" }).click();
      await counted(page);
      expect(await numbers(page)).toEqual(all);
      await page.getByRole("button", { name: "Bring back what was found" }).click();
      expect((await numbers(page)).cracks.crossings).toBe(found);
      await page.getByRole("button", { name: /^Undo: bringing back/ }).click();
      expect((await numbers(page)).cracks.crossings).toBe(all.cracks.crossings);
    }));

  it("by the keyboard alone, line by line: one taken away and one added", () =>
    withDemo(async ({ page }) => {
      const found = (await numbers(page)).cracks.crossings;
      await page.getByText("Lines and crossings, one by one").focus();
      await page.keyboard.press("Enter");
      await page.selectOption("#photo-line", { index: 3 });
      await page
        .getByRole("button", { name: /^Take away the crossing at/ })
        .first()
        .press("Enter");
      await page.locator("#photo-lead").getByText("1 crossing taken away by hand").waitFor();
      expect((await numbers(page)).cracks.crossings).toBe(found - 1);
      await page.fill("#photo-add-at", "4.5 mm");
      await page.press("#photo-add-at", "Enter");
      await page
        .locator("#photo-lead")
        .getByText("1 crossing taken away and 1 added by hand")
        .waitFor();
      expect((await numbers(page)).cracks.crossings).toBe(found);
      await page.getByRole("button", { name: "Leave an area out" }).press("Enter");
      const corner = page.getByRole("slider", { name: "Upper left corner of area 1" });
      await page.waitForFunction(() => document.activeElement?.id === "photo-left-0-a");
      const before = await corner.getAttribute("aria-valuenow");
      await page.keyboard.press("Shift+ArrowLeft");
      const left = Number(before) - 10;
      await page.waitForSelector(`#photo-left-0-a[aria-valuenow="${left}"]`, { state: "attached" });
    }));
});

describe("the spacing goes into a record", () => {
  it("onto a test piece of a record on the table, and reads back as it was measured", () =>
    withDemo(async ({ page }) => {
      await page.getByRole("button", { name: "Try it with three demo firings" }).click();
      await page.locator("#photo-tile").waitFor();
      const { cracks } = await numbers(page);
      await page.selectOption("#photo-tile", { index: 0 });
      await page.getByRole("button", { name: "Put the spacing onto this piece" }).click();
      await page.locator(".photo-done").getByText("has the spacing now").waitFor();
      await openWhole(page);
      const bench = JSON.parse(await saved(page, "Save the whole bench"));
      const texts = bench.compare.files.map((file: { bytes: { base64: string } }) =>
        Buffer.from(file.bytes.base64, "base64").toString("utf8"),
      );
      const changed = texts.find((text: string) => text.includes("spacingFrom: photo"));
      const record = parseRecord(changed, "a.yaml");
      const spacing = record.ok ? record.value.trials[0]?.spacing : undefined;
      expect(spacing).toMatchObject({ kind: "measured", from: "photo" });
      // Written with two digits.
      if (spacing?.kind === "measured")
        expect(Math.abs(spacing.pitchMm / cracks.pitchMm - 1)).toBeLessThan(0.05);
    }));
});

describe.each([
  ["a telephone", { viewport: { width: 390, height: 844 } }],
  ["a dark screen", { colorScheme: "dark" }],
] as const)("on %s", (_, options) => {
  it("a checker of accessibility finds nothing, and nothing reaches over the edge", () =>
    withDemo(({ page }) =>
      onScreen(page, options, async () => {
        await tool(page, "Leave out");
        await page.getByRole("button", { name: "Leave an area out" }).click();
        await page.getByText("Lines and crossings, one by one").click();
        await page.selectOption("#photo-line", { index: 2 });
        await page.addScriptTag({ content: axe.source });
        const found = await page.evaluate(async () => {
          const { axe: checker } = window as unknown as {
            axe: {
              run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
            };
          };
          const { violations } = await checker.run();
          return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
        });
        expect(found).toEqual([]);
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect(over).toBeLessThanOrEqual(0);
      }),
    ));
});
