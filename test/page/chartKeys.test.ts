import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fileOf } from "./browser.ts";
import { freshPages, sharedTable } from "./withPage.ts";

const withPage = freshPages();

const withDemo = sharedTable({
  name: "Review",
  lay: async (page) => {
    await page.getByRole("button", { name: /demo firing/ }).click();
    await isRead(page);
  },
  isLaid: isRead,
});

async function isRead(page: Page): Promise<void> {
  await page.waitForSelector('#review-report[aria-busy="false"]');
}

/** Which finding the keyboard is on, as a mark in a chart or in the list. */
function place(page: Page): Promise<string> {
  return page.evaluate(() => {
    const here = document.activeElement as HTMLElement | SVGElement;
    return here.dataset.finding === undefined
      ? `list ${here.closest("li")?.id}`
      : `chart ${here.dataset.finding}`;
  });
}

describe("findings and charts, by the keyboard", () => {
  it("leads from a finding to its mark, along the marks, and back by Escape", () =>
    withDemo(async ({ page }) => {
      await page.focus("#finding-2 button");
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => document.activeElement?.matches('.mark[data-finding="1"]'));
      expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toMatch(
        /^Finding 2, caution: It cooled through the quartz inversion/,
      );
      await page.keyboard.press("ArrowRight");
      await page.waitForFunction(() => {
        const here = document.activeElement;
        return here?.matches(".mark") && !here.matches('[data-finding="1"]');
      });
      await page.keyboard.press("ArrowLeft");
      await page.waitForSelector("#finding-2.is-marked");
      await page.keyboard.press("Escape");
      expect(await place(page)).toBe("list finding-2");
    }));

  it("has one stop for the Tab key in each chart's marks", () =>
    withDemo(async ({ page }) => {
      for (const strip of await page.locator(".mark-strip").all())
        expect(await strip.locator('[tabindex="0"]').count()).toBe(1);
    }));
});

/** The first time of a text [min]. */
function minutesIn(text: string): number {
  const [, hours, minutes] = /(\d+):(\d\d)/.exec(text) ?? [];
  return Number(hours) * 60 + Number(minutes);
}

/** Straight up from 20 °C at 100 °C an hour for ten hours, then down as steep; a reading a minute. */
const ROOF = Array.from({ length: 1081 }, (_, minute) => {
  const tempC = 20 + (100 * Math.min(minute, 1200 - minute)) / 60;
  return `${minute},${tempC.toFixed(2)}`;
}).join("\n");

describe("reading a chart by the keyboard", () => {
  it("goes along the curve and says time and temperature, which lie on it", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Review" }).click();
      await page.setInputFiles("#review-files", fileOf("roof.csv", `minutes,temp °C\n${ROOF}`));
      await page.waitForSelector('#review-report[aria-busy="false"]');
      const chart = page.locator("figure.chart").first();
      const line = chart.locator(".chart-reading");
      await chart.locator(".chart-reader").focus();
      await page.keyboard.press("Home");
      expect(await line.textContent()).toMatch(/0:00 h: 20 °C$/);
      expect(await line.getAttribute("aria-live")).toBe("polite");
      for (let presses = 0; presses < 12; presses++) await page.keyboard.press("ArrowRight");
      const [, hours, minutes, tempC] =
        /(\d+):(\d\d) h: (\d+) °C$/.exec((await line.textContent()) ?? "") ?? [];
      const elapsed = Number(hours) + Number(minutes) / 60;
      expect(elapsed).toBeGreaterThan(0.2);
      // 100 °C an hour: a minute that is rounded is 1.7 °C, and a degree is rounded too.
      expect(Math.abs(Number(tempC) - (20 + 100 * elapsed))).toBeLessThan(2.2);
      await page.keyboard.press("End");
      expect(await line.textContent()).toMatch(/18:00 h: 220 °C$/);
      expect(await chart.locator(".reading-cursor.is-on").count()).toBe(1);
    }));

  it("begins where the marked finding does, and Escape leads back to it", () =>
    withDemo(async ({ page }) => {
      await page.focus("#finding-2 button");
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => document.activeElement?.matches(".mark"));
      const chart = page.locator("figure.chart").first();
      await chart.locator(".chart-reader").focus();
      await page.keyboard.press("ArrowRight");
      const where = (await page.textContent("#finding-2 .where")) ?? "";
      const reading = (await chart.locator(".chart-reading").textContent()) ?? "";
      // Readings of the chart lie a minute or two apart.
      expect(Math.abs(minutesIn(reading) - minutesIn(where))).toBeLessThanOrEqual(2);
      await page.keyboard.press("Escape");
      expect(await place(page)).toBe("list finding-2");
    }));

  it("reads the schedule's own charts too, each curve by the name in the key", () =>
    withDemo(async ({ page }) => {
      const chart = page.locator("figure.chart").first();
      await chart.locator(".chart-reader").focus();
      await page.keyboard.press("Home");
      const names = [await chart.locator(".chart-reading").textContent()];
      await page.keyboard.press("ArrowDown");
      names.push(await chart.locator(".chart-reading").textContent());
      expect(names.map((each) => each?.split(",")[0])).toEqual(["Temp °C", "planned"]);
    }));

  it("can be done in a table as well, in the unit that the page is in", () =>
    withDemo(async ({ page }) => {
      const table = page.locator("figure.chart").first().locator(".as-table");
      expect(await table.locator("tr").count()).toBe(0);
      await table.locator("summary").click();
      await table.locator("th", { hasText: /^°C$/ }).first().waitFor();
      expect(await table.locator("tr").count()).toBeGreaterThan(40);
      await page.getByRole("banner").getByText("°F").click();
      const inF = page.locator("figure.chart").first().getByText("Temperature (°F)");
      await inF.first().waitFor({ state: "attached" });
      await table.locator("summary").click();
      await table.locator("th", { hasText: /^°F$/ }).first().waitFor();
    }));
});
