import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fileWith, undunted } from "../support/undunted.ts";
import { rested, saved } from "./browser.ts";
import { freshPages } from "./withPage.ts";

const withPage = freshPages();
const LOG = join(import.meta.dirname, "../../logs/2026-05-23-b");

/** Reviews a firing whose log the drafting command could not read as it was read here. */
async function reviewedAsTold(page: Page): Promise<void> {
  await page.getByRole("tab", { name: "Review" }).click();
  await page.setInputFiles("#review-files", [`${LOG}.csv`, `${LOG}.yaml`]);
  await page.waitForSelector('#review-report[aria-busy="false"]');
  await page.selectOption("#decided-unit", { label: "°C" });
  await page.getByRole("button", { name: "Remember this in the record" }).waitFor();
  await page.waitForFunction(() => document.querySelector(".reading-progress button") === null);
}

/** Cone and findings as the page saves them. */
async function judged(page: Page) {
  await rested(page);
  const { heatwork, findings } = JSON.parse(await saved(page, "Save the numbers"));
  return { label: heatwork.label, findings: findings.length };
}

describe("drafting next from a review", () => {
  it("takes the offset of the thermocouple along, which is seen, taken away and brought back", () =>
    withPage(async ({ page }) => {
      await reviewedAsTold(page);
      const { nextTime } = JSON.parse(await saved(page, "Save the numbers (JSON)"));
      const [, offset] = /--offset (\S+)/.exec(nextTime.command) ?? [];
      expect(offset).toMatch(/^-?\d+C$/);
      await page.getByRole("button", { name: "Draft this next" }).click();
      await page.waitForSelector(".editor");
      const told = page.locator("#told-offset");
      expect(await told.textContent()).toContain("2026-05-23-b.csv");
      expect(await told.textContent()).toMatch(
        new RegExp(`reads ${offset?.replace(/-|C/g, "")} °C too high`),
      );
      const file = fileWith("next.yaml", await saved(page, "Save the schedule"));
      const command = (...more: string[]) => {
        const { out } = undunted(["draft", file, "--json", "-q", ...more]);
        const { heatwork, findings } = JSON.parse(out);
        return { label: heatwork.label, findings: findings.length };
      };
      const withIt = command("--offset", String(offset));
      const without = command();
      expect(withIt).not.toEqual(without);
      expect(await judged(page)).toEqual(withIt);
      await page.getByRole("button", { name: "Reckon without it" }).click();
      await told.waitFor({ state: "detached" });
      expect(await judged(page)).toEqual(without);
      await page.getByRole("button", { name: /^Undo: taking the thermocouple/ }).click();
      await told.waitFor();
      expect(await judged(page)).toEqual(withIt);
    }));
});
