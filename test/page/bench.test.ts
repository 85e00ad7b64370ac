import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { comeBack, fileOf, layShipped, PAGE_FILE, rested, saved } from "./browser.ts";
import { freshPages } from "./withPage.ts";

const withPage = freshPages();

describe("the page", () => {
  it("opens from disk without a network and asks for nothing but itself", () =>
    withPage(async ({ page, requests }) => {
      await layShipped(page, "crackle tiles");
      await rested(page);
      for (const table of ["Review", "Compare", "Draft"])
        await page.getByRole("tab", { name: table }).click();
      const asked = requests.filter((url) => !url.startsWith("blob:") && !url.startsWith("data:"));
      expect(asked).toHaveLength(1);
      expect(asked[0]).toMatch(/^file:.*undunted\.html$/);
    }));

  it("names no address of any network that it would load from", () => {
    const html = readFileSync(PAGE_FILE, "utf8");
    expect(html.match(/<(?:script|link|img|iframe)[^>]+(?:src|href)="https?:/g)).toBeNull();
    expect(html).toContain("default-src 'none'");
    expect(html).toContain("connect-src 'none'");
    expect(html.slice(0, 2000)).not.toContain("unsafe-eval");
  });

  it("keeps the work over a reload, and forgets it all when told to twice", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      await page.fill("#to-2", "1180");
      await page.press("#to-2", "Enter");
      await comeBack(page);
      expect(await page.inputValue("#to-2")).toBe("1180");
      await page.getByText("Whole bench", { exact: true }).click();
      await page.getByRole("button", { name: "Clear the whole bench…" }).click();
      await page.getByRole("button", { name: "Cancel" }).click();
      expect(await page.inputValue("#to-2")).toBe("1180");
      await page.getByRole("button", { name: "Clear the whole bench…" }).click();
      await page.getByRole("button", { name: "Clear it all" }).click();
      await page.getByRole("heading", { name: "Draft a firing" }).waitFor();
      await comeBack(page);
      await page.getByRole("heading", { name: "Draft a firing" }).waitFor();
    }));

  it("saves the whole bench as one file that another browser opens again", async () => {
    let [schedule, bench] = ["", ""];
    await withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      const log = join(import.meta.dirname, "../../logs/2026-03-14-b.csv");
      await page.setInputFiles("#kiln-logs", log);
      await page.getByText("From 2026-03-14-b.csv").waitFor();
      schedule = await saved(page, "Save the schedule");
      await page.getByText("Whole bench", { exact: true }).click();
      bench = await saved(page, "Save the whole bench");
    });
    await withPage(async ({ page }) => {
      await page.getByText("Whole bench", { exact: true }).click();
      await page.setInputFiles("#open-bench", fileOf("bench.json", bench));
      await page.waitForSelector(".editor");
      await page.getByText("From 2026-03-14-b.csv").waitFor();
      expect(await saved(page, "Save the schedule")).toBe(schedule);
    });
  });

  it("says of a file that is no bench what it expected instead", () =>
    withPage(async ({ page }) => {
      await page.getByText("Whole bench", { exact: true }).click();
      await page.setInputFiles("#open-bench", fileOf("notes.json", "[1, 2]"));
      const problem = page.getByRole("alert");
      await problem.waitFor();
      expect(await problem.textContent()).toContain("page/not-a-bench");
    }));
});
