import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BrowserContextOptions, Page } from "playwright-core";
import { layShipped, openPage, rested, startBrowser } from "./browser.ts";

/** Pictures of the page for people to look at: `tsx test/page/screenshots.ts` says where they are. */
const FOLDER = mkdtempSync(join(tmpdir(), "undunted-page-"));

const SIZES: Readonly<Record<string, BrowserContextOptions>> = {
  wide: { viewport: { width: 1440, height: 1000 } },
  tablet: { viewport: { width: 820, height: 1180 }, hasTouch: true },
  telephone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
  dark: { viewport: { width: 1440, height: 1000 }, colorScheme: "dark" },
};

const LOGS = ["2026-03-14-b.csv", "2026-03-14-b.yaml"].map((name) =>
  join(import.meta.dirname, "../../logs", name),
);

const browser = await startBrowser();
for (const [size, options] of Object.entries(SIZES)) {
  const { page, close } = await openPage(browser, options);
  const shot = (what: string, fullPage = true) =>
    page.screenshot({ path: join(FOLDER, `${size}-${what}.png`), fullPage });
  await shot("draft-empty");
  await layShipped(page, "crackle tiles");
  await page.selectOption("#body", "porcelain cone 6");
  await page.fill("#start", "2026-12-01T18:00");
  await page.dispatchEvent("#start", "change");
  await rested(page);
  await shot("draft");
  await page.evaluate(() => scrollTo(0, 0));
  await shot("draft-first-view", false);
  if (size === "wide") await pictures(page, shot);
  await close();
}
await browser.close();
process.stdout.write(`${FOLDER}\n`);

async function pictures(
  page: Page,
  shot: (what: string, fullPage?: boolean) => Promise<unknown>,
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
