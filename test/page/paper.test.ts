import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { rested } from "./browser.ts";
import { freshPages } from "./withPage.ts";

const withPage = freshPages();
const SCHEDULES = join(import.meta.dirname, "../../schedules");

/** A4 less the margins of the page's own style: 182 by 271 mm at 96 px to the inch. */
const SHEET_PX = { width: 688, height: 1024 };

async function sheetsOf(page: Page): Promise<number> {
  const printed = await page.pdf({ format: "A4", preferCSSPageSize: true });
  return printed.toString("latin1").match(/\/Type \/Page\b/g)?.length ?? 0;
}

/** Titles of the shipped schedules that have most to print. */
const LONGEST = readdirSync(SCHEDULES)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => readFileSync(join(SCHEDULES, name), "utf8"))
  .toSorted((a, b) => b.length - a.length)
  .slice(0, 3)
  .map((text) => String(parse(text).title));

describe("on paper", () => {
  it("the longest schedules that come with the page are kiln cards on one sheet", () =>
    withPage(async ({ page }) => {
      expect(LONGEST.length).toBe(3);
      for (const title of LONGEST) {
        await page.locator(".shelf button", { hasText: title }).first().click();
        await page.waitForSelector(".editor");
        await page.selectOption("#body", "stoneware cone 6");
        await rested(page);
        expect(await sheetsOf(page), await page.inputValue("#title")).toBe(1);
        await page.getByRole("button", { name: "Take it off the table" }).click();
        await page.locator(".shelf").waitFor();
      }
    }));

  it("a review takes few sheets: no chart is so tall that it leaves half of one empty", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Review" }).click();
      await page.getByRole("button", { name: /demo firing/ }).click();
      await page.waitForSelector('#review-report[aria-busy="false"]');
      expect(await sheetsOf(page)).toBeLessThanOrEqual(5);
      await page.evaluate(() => {
        for (const room of document.querySelectorAll<HTMLDetailsElement>("details.room"))
          room.open = true;
      });
      expect(await sheetsOf(page)).toBeLessThanOrEqual(10);
      await page.emulateMedia({ media: "print" });
      await page.setViewportSize(SHEET_PX);
      const charts = await page.locator("figure.chart").all();
      expect(charts.length).toBeGreaterThan(2);
      for (const chart of charts) {
        const box = await chart.boundingBox();
        expect(box?.height).toBeLessThan(SHEET_PX.height / 2);
        expect(box?.width).toBeLessThanOrEqual(SHEET_PX.width);
      }
    }));
});
