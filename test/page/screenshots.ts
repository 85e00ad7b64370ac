import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BrowserContextOptions, Page } from "playwright-core";
import sharp from "sharp";
import { layShipped, openPage, rested, startBrowser } from "./browser.ts";

/**
 * Pictures of the page for people to look at: `tsx test/page/screenshots.ts` says where they are.
 * With the name of a file, the one picture of the page that the README shows is written there.
 */
const FOLDER = mkdtempSync(join(tmpdir(), "undunted-page-"));

const SIZES: Readonly<Record<string, BrowserContextOptions>> = {
  wide: { viewport: { width: 1440, height: 1000 } },
  tablet: { viewport: { width: 820, height: 1180 }, hasTouch: true },
  telephone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
  "zoom of 200 %": { viewport: { width: 640, height: 450 } },
  dark: { viewport: { width: 1440, height: 1000 }, colorScheme: "dark" },
};

/** Most of a page that one picture shows [px]. */
const SHEET = 2400;

const LOGS = ["2026-03-14-b.csv", "2026-03-14-b.yaml"].map((name) =>
  join(import.meta.dirname, "../../logs", name),
);

const browser = await startBrowser();
const [readmePicture] = process.argv.slice(2);
if (readmePicture !== undefined) await forReadme(readmePicture);
else for (const [size, options] of Object.entries(SIZES)) await everything(size, options);
await browser.close();
process.stdout.write(`${readmePicture ?? FOLDER}\n`);

/** The Draft table with a shipped schedule, small enough to keep. */
async function forReadme(path: string): Promise<void> {
  const { page, close } = await openPage(browser, { viewport: { width: 1280, height: 880 } });
  await drafted(page);
  const png = await page.screenshot();
  await sharp(png).png({ palette: true, colours: 128, effort: 10 }).toFile(path);
  await close();
}

/** A schedule that comes with the page, its ware named and its start set. */
async function drafted(page: Page): Promise<void> {
  await layShipped(page, "crackle tiles");
  await page.selectOption("#body", "porcelain cone 6");
  await page.fill("#start", "2026-12-01T18:00");
  await page.dispatchEvent("#start", "change");
  await rested(page);
  await page.evaluate(() => scrollTo(0, 0));
}

async function everything(size: string, options: BrowserContextOptions): Promise<void> {
  const { page, close } = await openPage(browser, options);
  const shot = (what: string, whole = true) => pictured(page, `${size}-${what}`, whole);
  await shot("draft-empty");
  await drafted(page);
  await shot("draft");
  await page.evaluate(() => scrollTo(0, 0));
  await shot("draft-first-view", false);
  if (size === "wide") await pictures(page, shot);
  if (options.viewport) await page.setViewportSize(options.viewport);
  await reviewed(page);
  await shot("review");
  if (size === "wide")
    await page.pdf({ path: join(FOLDER, "review.pdf"), preferCSSPageSize: true });
  await photograph(page, shot);
  await close();
  await comparison(size, options);
}

/** A picture of what is seen, or of the whole page sheet by sheet. */
async function pictured(page: Page, name: string, isWhole = true): Promise<void> {
  if (!isWhole) {
    await page.screenshot({ path: join(FOLDER, `${name}.png`) });
    return;
  }
  const before = page.viewportSize();
  if (before === null) return;
  const heightPx = () => page.evaluate(() => document.documentElement.scrollHeight);
  for (let top = 0, sheet = 1; top < (await heightPx()); top += SHEET, sheet++) {
    const height = Math.max(before.height, Math.min(SHEET, (await heightPx()) - top));
    await page.setViewportSize({ width: before.width, height });
    await page.evaluate((y) => scrollTo(0, y), top);
    await page.screenshot({ path: join(FOLDER, `${name}-${sheet}.png`) });
  }
  await page.setViewportSize(before);
}

/** The Compare table: empty, with three firings lined up on the way down, and on paper. */
async function comparison(size: string, options: BrowserContextOptions): Promise<void> {
  const { page, close } = await openPage(browser, options);
  const shot = (what: string) => pictured(page, `${size}-${what}`);
  await page.getByRole("tab", { name: "Compare" }).click();
  await shot("compare-empty");
  await page.getByRole("button", { name: "Try it with three demo firings" }).click();
  await page.waitForSelector('#compare-report[aria-busy="false"]');
  await page.getByText("on the way down, at", { exact: true }).click();
  await page.getByText("The firings are laid over each other").waitFor();
  await shot("compare");
  if (size === "wide") {
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize({ width: 700, height: 990 });
    await shot("compare-print");
  }
  await close();
}

/** A tile counted on the Compare table: its scale being placed, then an area left out and a line looked at. */
async function photograph(
  page: Page,
  shot: (what: string, whole?: boolean) => Promise<unknown>,
): Promise<void> {
  await page.emulateMedia({ media: "screen" });
  await page.evaluate(() => scrollTo(0, 0));
  await page.getByRole("tab", { name: "Compare" }).click();
  await page.getByRole("button", { name: "Try it with a demo tile" }).click();
  await page.waitForSelector("#photo-report", { timeout: 60_000 });
  await page.locator("#photo-end-0").focus();
  await shot("photo-scale");
  await page.locator(".photo-tools").getByText("Leave out", { exact: true }).click();
  await page.getByRole("button", { name: "Leave an area out" }).click();
  await page.getByText("Lines and crossings, one by one").click();
  await page.selectOption("#photo-line", { index: 3 });
  await shot("photo-corrected");
}

/** The demo firing with a finding marked, read a little way into the first chart. */
async function reviewed(page: Page): Promise<void> {
  await page.emulateMedia({ media: "screen" });
  await page.getByRole("tab", { name: "Review" }).click();
  await page.getByRole("button", { name: /demo firing/ }).click();
  await page.waitForSelector('#review-report[aria-busy="false"]');
  await page.locator("#finding-2 button").click();
  await page.locator(".chart-reader").first().press("ArrowRight");
}

async function pictures(
  page: Page,
  shot: (what: string, whole?: boolean) => Promise<unknown>,
): Promise<void> {
  await page.setInputFiles("#kiln-logs", LOGS);
  await page.locator("#kiln-title ~ p", { hasText: "learned from" }).waitFor();
  await rested(page);
  await shot("draft-own-kiln");
  await page.fill("#to-2", "12 furlongs");
  await page.press("#to-2", "Enter");
  await page.getByRole("button", { name: "Mend every finding" }).click();
  await page.getByRole("dialog").waitFor();
  await shot("draft-offer", false);
  await page.getByRole("button", { name: "Cancel" }).click();
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width: 700, height: 990 });
  await shot("draft-print");
  await page.pdf({ path: join(FOLDER, "card.pdf"), format: "A4" });
}
