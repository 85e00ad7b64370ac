import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fileOf, saved } from "./browser.ts";
import { freshPages } from "./withPage.ts";

const withPage = freshPages();

/** Up to 2012 °F (1100 °C) in ten hours, and down again as long. */
const LOG = `minutes,temp °F\n${Array.from({ length: 1201 }, (_, minute) => {
  const share = Math.min(minute, 1200 - minute) / 600;
  return `${minute},${(68 + share * 1944).toFixed(1)}`;
}).join("\n")}`;

async function lay(page: Page): Promise<void> {
  await page.setInputFiles("#review-files", fileOf("roof.csv", LOG));
  await page.waitForSelector('#review-report[aria-busy="false"]');
}

function shown(page: Page): Promise<string | null> {
  return page.locator(".unit :checked + span").textContent();
}

describe("a log in °F", () => {
  it("makes the page show °F, charts included, and says so; what is stored stays in °C", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Review" }).click();
      await lay(page);
      expect(await shown(page)).toBe("°F");
      await page.getByText("This log is in °F, so the page shows °F now.").waitFor();
      expect(await page.locator("#review-screen .lead").textContent()).toMatch(/2012\s°F/);
      await page.locator("figure.chart").first().getByText("Temperature (°F)").first().waitFor();
      const { zones } = JSON.parse(await saved(page, "Save the numbers (JSON)"));
      expect(zones[0].peakC).toBeCloseTo(1100, 6);
    }));

  it("changes nothing for who picked the unit by hand", () =>
    withPage(async ({ page }) => {
      await page.getByText("°F", { exact: true }).click();
      await page.getByText("°C", { exact: true }).click();
      await page.getByRole("tab", { name: "Review" }).click();
      await lay(page);
      expect(await shown(page)).toBe("°C");
      expect(await page.locator("#review-screen .lead").textContent()).toMatch(/1100\s°C/);
      expect(await page.getByText("so the page shows °F now").count()).toBe(0);
    }));

  it("leaves the choice to the reader afterwards", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Review" }).click();
      await lay(page);
      await page.getByRole("banner").getByText("°C").click();
      await page.locator("#review-screen .lead", { hasText: /1100\s°C/ }).waitFor();
      expect(await page.getByText("so the page shows °F now").count()).toBe(0);
      await page.getByRole("button", { name: "Clear this table" }).click();
      await lay(page);
      expect(await shown(page)).toBe("°C");
    }));
});
