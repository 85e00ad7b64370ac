import { devices, type Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { layShipped, saved } from "./browser.ts";
import { freshPages } from "./withPage.ts";

const withPage = freshPages();

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

describe("a schedule picked far down on a telephone", () => {
  it("is seen from its head", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "ware up to 18 mm thick");
      await expect.poll(() => page.evaluate(() => scrollY)).toBe(0);
    }, PHONE));
});

/** How far anything inside reaches over the right edge of the window [px]. */
function overEdge(page: Page, inside: string): Promise<number> {
  return page.evaluate((selector) => {
    const all = [...document.querySelectorAll(`${selector}, ${selector} *`)];
    return Math.max(...all.map((each) => each.getBoundingClientRect().right)) - innerWidth;
  }, inside);
}

describe("the empty tables, to who has never seen them", () => {
  it("have something to try one click away, in the first view of a telephone", () =>
    withPage(async ({ page }) => {
      for (const [table, name, shown] of [
        ["Draft", "Try it with a demo schedule", ".editor"],
        ["Review", "Try it with a demo firing", "#review-report"],
      ] as const) {
        await page.getByRole("tab", { name: table }).click();
        const box = await page.getByRole("button", { name }).boundingBox();
        expect((box?.y ?? 0) + (box?.height ?? 0), table).toBeLessThan(PHONE.viewport.height);
        await page.getByRole("button", { name }).click();
        await page.waitForSelector(shown);
      }
    }, PHONE));
});

describe("a comparison on a telephone", () => {
  it("has every chart with its key in sight, and none to scroll sideways", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Compare" }).click();
      await page.getByRole("button", { name: "Try it with three demo firings" }).click();
      await page.waitForSelector('#compare-report[aria-busy="false"]');
      expect(await page.locator("#compare-report figure.chart").count()).toBe(4);
      const names = page.locator("#compare-report .stage text");
      for (const name of ["Wren", "expected by files", "crack spacing, 12 tiles"])
        await expect.poll(() => names.filter({ hasText: name }).count()).toBeGreaterThan(0);
      await expect
        .poll(() => overEdge(page, "#compare-report figure.chart :is(.stage, .panels)"))
        .toBeLessThanOrEqual(0);
    }, PHONE));
});

describe("the record form on a telephone", () => {
  it("has every field in sight from side to side, and room for long words", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Review" }).click();
      await page.getByRole("button", { name: /demo firing/ }).click();
      await page.waitForSelector('#review-report[aria-busy="false"]');
      await page.getByText("The record, to write").click();
      for (const part of await page.locator(".record-part > summary").all()) await part.click();
      expect(await overEdge(page, ".record-form .field")).toBeLessThanOrEqual(0);
      expect(await overEdge(page, ".decisions .field")).toBeLessThanOrEqual(0);
      expect((await page.locator("#record-title").boundingBox())?.width).toBeGreaterThan(280);
    }, PHONE));
});

describe("the segments on a telephone", () => {
  it("are cards, with every field and its label in sight, and none to the side", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      expect(await overEdge(page, ".segments")).toBeLessThanOrEqual(0);
      const fields = await page.locator(".segments input").all();
      expect(fields).toHaveLength(3 * 8);
      for (const id of ["to-0", "rate-0", "hold-0"]) {
        const [label, field] = await Promise.all(
          [`label[for=${id}]`, `#${id}`].map((each) => page.locator(each).boundingBox()),
        );
        expect(label?.height).toBeGreaterThan(12);
        expect((label?.y ?? 0) + (label?.height ?? 0)).toBeLessThanOrEqual((field?.y ?? 0) + 1);
        expect(field?.height).toBeGreaterThanOrEqual(44);
      }
    }, PHONE));

  it("are gone through field by field, then segment by segment", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      await page.focus("#to-0");
      const order: string[] = [];
      for (let at = 0; at < 6; at++) {
        order.push(
          await page.evaluate(() => {
            const { id, ariaLabel } = document.activeElement as HTMLElement;
            return id || String(ariaLabel);
          }),
        );
        await page.keyboard.press("Tab");
      }
      expect(order).toEqual([
        "to-0",
        "rate-0",
        "hold-0",
        "Add a segment after segment 1",
        "Take segment 1 out",
        "to-1",
      ]);
    }, PHONE));

  it("are still a table of fields named by their segment for readers of screens", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      const rows = page.getByRole("table", { name: /^Segments/ }).getByRole("row");
      expect(await rows.count()).toBe(1 + 8);
      await page
        .getByRole("textbox", { name: /segment 2$/ })
        .nth(1)
        .fill("140");
      await page.keyboard.press("Enter");
      expect(await saved(page, "Save the schedule")).toContain("rate: 140");
    }, PHONE));
});

describe("at 200 % zoom", () => {
  it("every chart of a review is seen whole", () =>
    withPage(
      async ({ page }) => {
        await page.getByRole("tab", { name: "Review" }).click();
        await page.getByRole("button", { name: /demo firing/ }).click();
        await page.waitForSelector('#review-report[aria-busy="false"]');
        expect(await overEdge(page, "figure.chart .stage")).toBeLessThanOrEqual(0);
      },
      { viewport: { width: 640, height: 450 } },
    ));

  it("nothing of a schedule is cut off at the side", () =>
    withPage(
      async ({ page }) => {
        await layShipped(page, "crackle tiles");
        for (const part of [".segments", ".editor", ".draft-panels"])
          expect(await overEdge(page, part), part).toBeLessThanOrEqual(0);
      },
      { viewport: { width: 640, height: 450 } },
    ));
});

describe("a corner under a finger", () => {
  it("is moved while the page stays where it is, as one step to undo", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      const before = await page.inputValue("#to-4");
      const corner = page.locator("#corner-4-ramp");
      await corner.scrollIntoViewIfNeeded();
      await page.evaluate(() => scrollTo(0, 60));
      const box = await corner.boundingBox();
      if (box === null) throw new Error("no corner");
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      const scrolled = await page.evaluate(() => scrollY);
      const touch = await page.context().newCDPSession(page);
      const send = (type: "touchStart" | "touchMove" | "touchEnd", down: number) =>
        touch.send("Input.dispatchTouchEvent", {
          type,
          touchPoints: type === "touchEnd" ? [] : [{ x, y: y + down }],
        });
      await send("touchStart", 0);
      for (const down of [6, 14, 24, 34]) await send("touchMove", down);
      await send("touchEnd", 34);
      await page.waitForFunction(
        (was) => (document.querySelector("#to-4") as HTMLInputElement).value !== was,
        before,
      );
      expect(Number(await page.inputValue("#to-4"))).toBeLessThan(Number(before));
      expect(await page.evaluate(() => scrollY)).toBe(scrolled);
      await page.getByRole("button", { name: /^Undo: moving the end of segment 5/ }).click();
      await page.waitForFunction(
        (was) => (document.querySelector("#to-4") as HTMLInputElement).value === was,
        before,
      );
    }, devices["Pixel 5"]));
});

describe("every corner", () => {
  it("is moved by the arrow keys, by ten with Shift or a Page key, and tells where it is", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      const corners = await page
        .locator(".editor-corner")
        .evaluateAll((all) => all.map(({ id }) => id));
      expect(corners).toHaveLength(10);
      for (const id of corners) {
        const told = await page.getAttribute(`#${id}`, "aria-valuetext");
        await page.focus(`#${id}`);
        await page.keyboard.press(id === "corner-0-ramp" ? "ArrowDown" : "ArrowUp");
        await page.waitForFunction(
          ([corner, was]) =>
            document.getElementById(corner as string)?.getAttribute("aria-valuetext") !== was,
          [id, told] as const,
        );
        expect(await page.evaluate(() => document.activeElement?.id)).toBe(id);
      }
      const before = Number(await page.inputValue("#to-2"));
      await page.focus("#corner-2-ramp");
      await page.keyboard.press("PageDown");
      await page.waitForFunction(
        (wanted) => Number((document.querySelector("#to-2") as HTMLInputElement).value) === wanted,
        before - 10,
      );
    }));
});
