import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fileWith, undunted } from "../support/undunted.ts";
import { fileOf, layShipped, rested, saved } from "./browser.ts";
import { freshPages } from "./withPage.ts";

const withPage = freshPages();

async function type(page: Page, id: string, text: string): Promise<void> {
  await page.fill(id, text);
  await page.press(id, "Enter");
}

/** Two engines may round a logarithm or a cosine to neighbouring numbers; more than that is a fault. */
const LAST_BITS = 1e-11;

/** Expects two documents of a draft to be one: cone and times to the last digit, the rest but for last bits. */
function expectSameNumbers(page: string, command: string): void {
  const [ours, theirs] = [JSON.parse(page), JSON.parse(command)];
  expect(ours.timeline).toEqual(theirs.timeline);
  expect(ours.totalSeconds).toBe(theirs.totalSeconds);
  expect(ours.heatwork.label).toBe(theirs.heatwork.label);
  expect(ours.coneWanted).toBe(theirs.coneWanted);
  expect(differences(ours, theirs, "")).toEqual([]);
}

function differences(a: unknown, b: unknown, at: string): readonly string[] {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= LAST_BITS * Math.max(1, Math.abs(b)) ? [] : [`${at}: ${a} and ${b}`];
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null)
    return a === b ? [] : [`${at}: ${String(a)} and ${String(b)}`];
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].flatMap((key) =>
    differences(
      (a as Record<string, unknown>)[key],
      (b as Record<string, unknown>)[key],
      `${at}.${key}`,
    ),
  );
}

/** Waits until a field holds this: the page draws once a frame. */
async function comesToHold(page: Page, field: string, value: string): Promise<void> {
  await page.waitForFunction(
    ([name, wanted]) => (document.querySelector(name) as HTMLInputElement).value === wanted,
    [field, value] as const,
  );
}

describe("drafting from nothing", () => {
  it("gives a schedule that the command reads, with the same numbers to the last digit", () =>
    withPage(async ({ page }) => {
      await page.fill("#wish-cone", "6");
      await page.selectOption("#wish-body", "stoneware cone 6");
      await page.selectOption("#wish-cooling", "slow");
      await page.getByRole("button", { name: "Draft this schedule" }).click();
      await page.waitForSelector(".editor");
      await page.fill("#start", "2026-12-01T18:00");
      await page.dispatchEvent("#start", "change");
      await rested(page);
      const file = fileWith("drafted.yaml", await saved(page, "Save the schedule"));
      const command = undunted(["draft", file, "--start", "2026-12-01 18:00", "--json"]);
      expect(command.exit).toBe(0);
      expectSameNumbers(await saved(page, "Save the numbers"), command.out);
    }));

  it("says what is wrong with a wish, as the command does", () =>
    withPage(async ({ page }) => {
      await page.fill("#wish-cone", "99");
      await page.fill("#wish-wall", "a hand");
      await page.getByRole("button", { name: "Draft this schedule" }).click();
      const problems = page.getByRole("alert");
      await problems.waitFor();
      const text = await problems.textContent();
      expect(text).toContain("cones/unknown-cone");
      expect(text).toContain("units/not-a-length");
    }));
});

describe("changing a schedule", () => {
  it("takes what is typed in either unit, and the switch of units changes nothing", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      await type(page, "#to-2", "2120 F");
      // (2120 − 32) / 1.8 = 1160
      await comesToHold(page, "#to-2", "1160");
      await type(page, "#rate-2", "90 F/h");
      await comesToHold(page, "#rate-2", "50");
      const before = await saved(page, "Save the schedule");
      await page.getByText("°F", { exact: true }).click();
      await page.waitForFunction(
        () => (document.querySelector("#to-2") as HTMLInputElement).value === "2120",
      );
      expect(await page.inputValue("#rate-2")).toBe("90");
      expect(await saved(page, "Save the schedule")).toBe(before);
    }));

  it("keeps the stored value when what is typed cannot be understood, and says why", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      const before = await saved(page, "Save the schedule");
      await type(page, "#to-2", "12 furlongs");
      expect(await page.textContent("#to-2-problem")).toContain("not a temperature");
      expect(await page.getAttribute("#to-2", "aria-invalid")).toBe("true");
      expect(await saved(page, "Save the schedule")).toBe(before);
      await type(page, "#to-2", "1065");
      const problem = page.getByRole("alert");
      await problem.waitFor();
      expect(await problem.textContent()).toContain("schedule/");
      expect(await saved(page, "Save the schedule")).toBe(before);
    }));

  it("follows a corner that is dragged, as one step to undo", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      const before = await saved(page, "Save the schedule");
      await page.locator(".editor").scrollIntoViewIfNeeded();
      const box = await page.locator("#corner-1-ramp").boundingBox();
      if (box === null) throw new Error("no corner");
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + 30, y + 40, { steps: 6 });
      await page.mouse.up();
      const target = Number(await page.inputValue("#to-1"));
      const rate = Number(await page.inputValue("#rate-1"));
      expect(target).toBeLessThan(1065);
      expect(target).toBeGreaterThan(850);
      expect(rate).toBeLessThan(150);
      await page.getByRole("button", { name: /^Undo: moving the end of segment 2/ }).click();
      await page.waitForFunction(
        () => (document.querySelector("#to-1") as HTMLInputElement).value === "1065",
      );
      expect(await saved(page, "Save the schedule")).toBe(before);
    }));

  it("offers what it works out with the difference, and leaves all as it was on Cancel", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      await type(page, "#to-2", "1150");
      const before = await saved(page, "Save the schedule");
      await page.getByRole("button", { name: "Find the peak" }).click();
      await page.getByRole("dialog").waitFor();
      expect(await page.getByRole("dialog").textContent()).toContain(
        "What changes: − goes, + comes",
      );
      await page.getByRole("button", { name: "Cancel" }).click();
      expect(await saved(page, "Save the schedule")).toBe(before);
      await page.getByRole("button", { name: "Find the peak" }).click();
      await page.getByRole("button", { name: "Take this change" }).click();
      const solved = fileWith("solved.yaml", before);
      const command = undunted(["draft", solved, "--solve", "peak", "-o", "-"]);
      expect(await saved(page, "Save the schedule")).toBe(command.out);
    }));

  it("takes a schedule off the table and puts it back", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      const before = await saved(page, "Save the schedule");
      await page.getByRole("button", { name: "Take it off the table" }).click();
      await page.getByRole("heading", { name: "Draft a firing" }).waitFor();
      await page.keyboard.press("Control+z");
      await page.waitForSelector(".editor");
      expect(await saved(page, "Save the schedule")).toBe(before);
    }));
});

describe("with the keyboard alone", () => {
  it("drafts, moves a corner, undoes and changes tables", () =>
    withPage(async ({ page }) => {
      await tabTo(page, "wish-cone");
      await page.keyboard.type("5");
      await page.keyboard.press("Enter");
      await page.waitForSelector(".editor");
      const peak = await page.locator('[id^="corner-"][id$="-ramp"]').evaluateAll((corners) => {
        const heights = corners.map((each) => Number(each.getAttribute("aria-valuenow")));
        return corners[heights.indexOf(Math.max(...heights))]?.id ?? "";
      });
      const index = peak.split("-")[1];
      const before = Number(await page.inputValue(`#to-${index}`));
      await tabTo(page, peak);
      await page.keyboard.press("ArrowUp");
      await page.keyboard.press("Shift+ArrowUp");
      await page.waitForFunction(
        ([id, wanted]) =>
          Number((document.getElementById(id as string) as HTMLInputElement).value) === wanted,
        [`to-${index}`, before + 11] as const,
      );
      await page.keyboard.press("Control+z");
      await page.waitForFunction(
        ([id, wanted]) =>
          Number((document.getElementById(id as string) as HTMLInputElement).value) === wanted,
        [`to-${index}`, before] as const,
      );
      await tabTo(page, "tab-draft");
      await page.keyboard.press("ArrowRight");
      await page.waitForSelector('#tab-review[aria-selected="true"]');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe("tab-review");
    }));
});

/** Presses Tab until the element with this id has the focus. */
async function tabTo(page: Page, id: string): Promise<void> {
  for (let presses = 0; presses < 120; presses++) {
    await page.keyboard.press("Tab");
    if ((await page.evaluate(() => document.activeElement?.id)) === id) return;
  }
  throw new Error(`Tab never comes to ${id}`);
}

describe("a file that means harm", () => {
  it("stays words, on the page and in what is saved", () =>
    withPage(async ({ page }) => {
      const evil = '<img src=x onerror="window.hit=1"><script>window.hit=1</script>';
      const yaml = `formatVersion: 1\ntitle: '${evil}'\nunit: C\nnotes: '${evil}'\nsegments:\n  - { to: 900, rate: 100, why: '${evil}' }\n`;
      await page.setInputFiles("#schedule-file", fileOf(`${evil.slice(0, 8)}.yaml`, yaml));
      await page.waitForSelector(".editor");
      await rested(page);
      expect(
        await page.evaluate(() => (window as unknown as { hit?: number }).hit),
      ).toBeUndefined();
      expect(await page.locator("img, #bench script").count()).toBe(0);
      expect(await page.inputValue("#title")).toBe(evil);
      const report = await saved(page, "Save the report");
      expect(report).not.toContain("<img");
      expect(report).not.toContain("<script");
    }));

  it("is refused with its place and a way out when it is no schedule", () =>
    withPage(async ({ page }) => {
      await page.setInputFiles(
        "#schedule-file",
        fileOf("odd.yaml", "formatVersion: 1\nsegments: 3\n"),
      );
      const problems = page.getByRole("alert");
      await problems.waitFor();
      expect(await problems.textContent()).toContain("odd.yaml");
    }));
});

describe("the kiln", () => {
  it("is learned from dropped logs, and the draft is laid out for it as the command does", () =>
    withPage(async ({ page }) => {
      const logs = ["2026-03-14-b.csv", "2026-03-14-b.yaml"].map((name) =>
        join(import.meta.dirname, "../../logs", name),
      );
      await layShipped(page, "crackle tiles");
      await page.setInputFiles("#kiln-logs", logs);
      await page.locator("#kiln-title ~ p", { hasText: "learned from" }).waitFor();
      await rested(page);
      const shipped = join(import.meta.dirname, "../../schedules/cone-5-crackle-tiles.yaml");
      const command = undunted(["draft", shipped, "--kiln", logs[0] as string, "--json"]);
      expectSameNumbers(await saved(page, "Save the numbers"), command.out);
    }));
});

describe("what is taken away", () => {
  it("is a calendar with floating times", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      await page.fill("#start", "2026-12-01T18:00");
      await page.dispatchEvent("#start", "change");
      const calendar = await saved(page, "Save as a calendar");
      expect(calendar).toContain("DTSTART:20261201T180000\r\n");
      expect(calendar).not.toMatch(/DTSTART[^\r]*Z/);
    }));

  it("is a card on one sheet of paper", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      await page.emulateMedia({ media: "print" });
      expect(await page.locator(".card").isVisible()).toBe(true);
      expect(await page.locator(".editor").isVisible()).toBe(false);
      const sheets = (await page.pdf({ format: "A4" }))
        .toString("latin1")
        .match(/\/Type \/Page\b/g);
      expect(sheets).toHaveLength(1);
    }));

  it("is the report with its charts, without a script", () =>
    withPage(async ({ page }) => {
      await layShipped(page, "crackle tiles");
      await rested(page);
      const report = await saved(page, "Save the report");
      expect(report.match(/<svg/g)).toHaveLength(8);
      expect(report).not.toContain("<script");
      expect(
        readFileSync(
          join(import.meta.dirname, "../../schedules/cone-5-crackle-tiles.yaml"),
          "utf8",
        ),
      ).toContain("title");
    }));
});
