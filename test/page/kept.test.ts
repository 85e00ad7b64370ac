import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fileOf, layShipped, PAGE_FILE, ready, saved } from "./browser.ts";
import { freshPages } from "./withPage.ts";

const withPage = freshPages();

/** A log of one plain firing up to a top, under any name. */
function firing(topC: number): string {
  const rows = Array.from({ length: 60 }, (_, i) => {
    const share = i < 40 ? i / 40 : 1 - (i - 40) / 25;
    return `${i * 12},${(20 + share * (topC - 20)).toFixed(1)}`;
  });
  return ["minutes,temperature (°C)", ...rows, ""].join("\n");
}

const RECORD = "formatVersion: 1\ntitle: The first of two\nunit: C\ncone: '5'\n";

/** Another window of the page on the same browser; a deaf one hears nothing of the first. */
async function secondWindow(page: Page, isDeaf = false): Promise<Page> {
  const other = await page.context().newPage();
  if (isDeaf)
    await other.addInitScript(() => {
      Reflect.deleteProperty(window, "BroadcastChannel");
      for (const kind of ["focus", "visibilitychange"])
        window.addEventListener(kind, (event) => event.stopImmediatePropagation(), true);
    });
  await other.goto(pathToFileURL(PAGE_FILE).href);
  await ready(other);
  return other;
}

async function changePeak(page: Page, tempC: string): Promise<void> {
  await page.fill("#to-2", tempC);
  await page.press("#to-2", "Enter");
}

/** Waits until this browser's store holds what the words say. */
async function stored(page: Page, words: string): Promise<void> {
  while (!(await storedText(page)).includes(words)) await page.waitForTimeout(20);
}

function storedText(page: Page): Promise<string> {
  return page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const opening = indexedDB.open("undunted", 1);
        opening.onsuccess = () => {
          const all = opening.result.transaction("bench").objectStore("bench").getAll();
          all.onsuccess = () => {
            opening.result.close();
            resolve(JSON.stringify(all.result));
          };
        };
      }),
  );
}

/** Puts something into the store as an older or a broken page may have left it. */
async function putStored(page: Page, key: string, value: unknown): Promise<void> {
  await page.evaluate(
    ([place, left]) =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open("undunted", 1);
        opening.onsuccess = () => {
          const transaction = opening.result.transaction("bench", "readwrite");
          transaction.objectStore("bench").put(left, place as string);
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    [key, value] as const,
  );
}

async function layReview(page: Page, ...files: Parameters<typeof fileOf>[]): Promise<void> {
  await page.setInputFiles(
    "#review-files",
    files.map((file) => fileOf(...file)),
  );
}

describe("what this browser keeps", () => {
  it("holds a change that was made right before the page was left", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      await changePeak(page, "1181");
      await page.reload();
      await ready(page);
      expect(await page.inputValue("#to-2")).toBe("1181");
    }));

  it("is followed by a second window that has changed nothing itself", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      await stored(page, "1167");
      const other = await secondWindow(page);
      expect(await other.inputValue("#to-2")).toBe("1167");
      await changePeak(page, "1182");
      await stored(page, "1182");
      await other.evaluate(() => window.dispatchEvent(new Event("focus")));
      await other.waitForFunction(
        () => document.querySelector<HTMLInputElement>("#to-2")?.value === "1182",
      );
    }));

  it("is never overwritten by a second window: the earlier of two that parted is put aside and opened again", () =>
    withPage(async ({ page }) => {
      const other = await secondWindow(page, true);
      await layShipped(page, "crackle tiles");
      await changePeak(page, "1183");
      await other.getByRole("tab", { name: "Review" }).click();
      await layReview(other, ["other.csv", firing(1100)]);
      await stored(page, "1183");
      await stored(page, "other.csv");
      await other.close();
      await page.reload();
      await ready(page);
      await page.getByText("Another window of this page kept other work").waitFor();
      await page.getByRole("button", { name: "Open it…" }).click();
      await page.getByRole("button", { name: "Open it", exact: true }).click();
      await page.getByText("Put aside, nothing lost").waitFor({ state: "detached" });
      await page.getByRole("tab", { name: "Draft" }).click();
      expect(await page.inputValue("#to-2")).toBe("1183");
    }));

  it("puts aside what it cannot read, says so, hands it out as a file, and writes nothing over it", () =>
    withPage(async ({ page }) => {
      await putStored(page, "work", { undunted: "bench", formatVersion: 99, draft: "from later" });
      await page.reload();
      await ready(page);
      await page.getByText("cannot be read by this page").waitFor();
      await layShipped(page, "crackle tiles");
      await stored(page, "1167");
      expect(JSON.parse(await saved(page, "Save it as a file"))).toMatchObject({
        formatVersion: 99,
        draft: "from later",
      });
      await page.reload();
      await ready(page);
      await page.getByText("cannot be read by this page").waitFor();
      await page.getByRole("button", { name: "Throw it away…" }).click();
      await page.getByRole("button", { name: "Throw it away", exact: true }).click();
      await page.getByText("cannot be read by this page").waitFor({ state: "detached" });
    }));

  it("says when the browser gives no room, and keeps again once it does", () =>
    withPage(async ({ page }) => {
      await page.evaluate(() => {
        const put = IDBObjectStore.prototype.put;
        Object.assign(window, { putAgain: () => (IDBObjectStore.prototype.put = put) });
        IDBObjectStore.prototype.put = () => {
          throw new DOMException("The disk is full", "QuotaExceededError");
        };
      });
      await layShipped(page, "crackle tiles");
      const problem = page.getByRole("alert").filter({ hasText: "page/not-kept" });
      await problem.waitFor();
      expect(await problem.textContent()).toContain("The disk is full");
      await page.evaluate(() => (window as unknown as { putAgain: () => void }).putAgain());
      await changePeak(page, "1184");
      await problem.waitFor({ state: "detached" });
      await page.reload();
      await ready(page);
      expect(await page.inputValue("#to-2")).toBe("1184");
    }));
});

describe("a record", () => {
  it("goes with its log when another firing of the same name is laid down, after a question", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Review" }).click();
      await layReview(page, ["datalog.csv", firing(1180)], ["datalog.yaml", RECORD]);
      await page.locator(".file-name", { hasText: "datalog.yaml" }).waitFor();
      await layReview(page, ["datalog.csv", firing(1000)]);
      const question = page.getByRole("dialog");
      expect(await question.textContent()).toContain("another firing of the same name");
      await question.getByRole("button", { name: "Cancel" }).click();
      expect(await page.locator(".file-name", { hasText: "datalog.yaml" }).count()).toBe(1);
      await layReview(page, ["datalog.csv", firing(1000)]);
      await page.getByRole("button", { name: "Lay it down" }).click();
      await page.locator(".file-name", { hasText: "datalog.yaml" }).waitFor({ state: "detached" });
      await page.getByRole("button", { name: /^Undo/ }).click();
      await page.locator(".file-name", { hasText: "datalog.yaml" }).waitFor();
    }));

  it("stays when the same log comes again, longer and under another name", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Review" }).click();
      const whole = firing(1180);
      const part = whole.split("\n").slice(0, 50).join("\n");
      await layReview(page, ["datalog.csv", part], ["datalog.yaml", RECORD]);
      await page.locator(".file-name", { hasText: "datalog.yaml" }).waitFor();
      await layReview(page, ["export-2.csv", whole]);
      await page.locator(".file-name", { hasText: "export-2.csv" }).waitFor();
      expect(await page.locator(".file-name", { hasText: "datalog.yaml" }).count()).toBe(1);
    }));

  it("is not taken over on the Compare table by another log of the same name", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Compare" }).click();
      const lay = (...files: Parameters<typeof fileOf>[]) =>
        page.setInputFiles(
          "#compare-files",
          files.map((file) => fileOf(...file)),
        );
      await lay(["datalog.csv", firing(1180)], ["datalog.yaml", RECORD]);
      await page.getByText("with datalog.yaml").waitFor();
      await lay(["datalog.csv", firing(1000)]);
      await page.getByText("without a record").waitFor();
      await page.getByText("record of another log of this name").waitFor();
    }));
});
