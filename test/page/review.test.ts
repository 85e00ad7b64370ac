import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { answer, emptyFolder, undunted } from "../support/undunted.ts";
import { fileOf, ready, saved } from "./browser.ts";
import { placesApart } from "./placesApart.ts";
import { freshTables, onScreen, sharedTable } from "./withPage.ts";

const ROOT = join(import.meta.dirname, "../..");
const LOGS = join(ROOT, "logs");
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const withPage = freshTables("Review");
const withDemo = sharedTable({ name: "Review", lay: layDemo, isLaid: read });

/** Lays files on the table and waits until they are read. */
async function lay(page: Page, ...files: Parameters<Page["setInputFiles"]>[1][]): Promise<void> {
  await page.setInputFiles("#review-files", files.flat() as string[]);
  await read(page);
}

async function read(page: Page): Promise<void> {
  // What was pressed a moment ago is drawn with the next frame; until then the table looks as it was.
  await page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );
  await page.waitForFunction(() => document.querySelector(".reading-progress button") === null);
  await page.waitForSelector('#review-report[aria-busy="false"]');
}

async function layDemo(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Try it with a demo firing" }).click();
  await read(page);
}

function demo(stem: string): readonly string[] {
  return [join(LOGS, `${stem}.csv`), join(LOGS, `${stem}.yaml`)];
}

/** A log that begins at 300 and ends below 1500, in what degrees nobody can tell. */
const OPEN_UNIT = `hours,temp\n${plainRows(undefined, 300)}`;

/** Rows of half a minute: up at 150 degrees an hour, down as steep; a time in hours, unless told otherwise. */
function plainRows(time: (row: number) => number = (row) => row / 120, start = 20): string {
  const rows = Array.from({ length: 1500 }, (_, row) => {
    const temp = start + Math.min(row, 1800 - row) * 1.25;
    return `${time(row)},${temp.toFixed(1)}`;
  });
  return rows.join("\n");
}

/** Stress in ware comes out of a solver; all else agrees to the last digit. */
const LAST_DIGITS = { share: 1e-8 } as const;

describe("the Review table", () => {
  const stems = ["2026-04-11-a", "2026-05-23-b", "2026-06-06-a"];

  it("gives for demo logs of every kind the numbers of the command, to eight digits and more", () =>
    withPage(async ({ page }) => {
      for (const stem of stems) {
        await lay(page, [...demo(stem)]);
        const command = answer(["review", `${stem}.csv`, "--json", "-q"], LOGS);
        const numbers = JSON.parse(await saved(page, "Save the numbers (JSON)"));
        expect(placesApart(numbers, JSON.parse(command.out), LAST_DIGITS), stem).toEqual([]);
        // Else the report of this log stands for a moment when the next one is laid down.
        await page.getByRole("button", { name: "Clear this table" }).click();
        await page.locator("#review-report").waitFor({ state: "detached" });
      }
    }));

  it("holds a firing against a schedule that was dropped, and against earlier firings, as the command does", () =>
    withPage(async ({ page }) => {
      const folder = emptyFolder();
      for (const stem of ["2026-05-23-b", "2026-02-21-b", "2026-04-25-b"])
        for (const path of demo(stem)) cpSync(path, join(folder, path.slice(LOGS.length + 1)));
      cpSync(join(ROOT, "schedules/cone-5-glaze.yaml"), join(folder, "cone-5-glaze.yaml"));
      await lay(page, [...demo("2026-05-23-b"), join(ROOT, "schedules/cone-5-glaze.yaml")]);
      await page.setInputFiles("#earlier-files", [
        ...demo("2026-02-21-b"),
        ...demo("2026-04-25-b"),
      ]);
      await page.getByText("2026-04-25-b.yaml", { exact: true }).first().waitFor();
      await read(page);
      const command = undunted(
        ["review", "2026-05-23-b.csv", "--against", "cone-5-glaze.yaml", "--json", "-q"].concat([
          "--kiln",
          "2026-02-21-b.csv",
          "2026-04-25-b.csv",
        ]),
        { cwd: folder },
      );
      const numbers = JSON.parse(await saved(page, "Save the numbers (JSON)"));
      expect(placesApart(numbers, JSON.parse(command.out), LAST_DIGITS)).toEqual([]);
    }));

  it("drafts the next firing as the command that the report gives would", () =>
    withPage(async ({ page }) => {
      const folder = emptyFolder();
      for (const part of ["logs", "schedules"])
        cpSync(join(ROOT, part), join(folder, part), { recursive: true });
      const cwd = join(folder, "logs");
      const { command } = JSON.parse(
        undunted(["review", "2026-05-23-b.csv", "--json", "-q"], { cwd }).out,
      ).nextTime as { readonly command: string };
      const next = [...command.matchAll(/'([^']*)'|(\S+)/g)].map(
        ([, quoted, bare]) => (quoted ?? bare) as string,
      );
      undunted(next.slice(1), { cwd });
      await lay(page, [...demo("2026-05-23-b")]);
      await page.getByRole("button", { name: "Draft this next" }).click();
      await page.waitForSelector(".editor");
      if (next.includes("--kiln")) await page.getByText("From 2026-05-23-b.csv").waitFor();
      expect(await saved(page, "Save the schedule")).toBe(
        readFileSync(join(cwd, next.at(-1) as string), "utf8"),
      );
    }));

  it("says what to do when it is empty, and what is wrong with a wrong drop, which changes nothing", () =>
    withPage(async ({ page }) => {
      await page.getByText("Lay down the log of a firing").waitFor();
      await page.setInputFiles("#review-files", [
        ...demo("2026-05-23-b"),
        join(LOGS, "2026-03-14-b.csv"),
      ]);
      await page.getByText("page/two-of-a-kind").waitFor();
      await page.getByText("Lay down the log of a firing").waitFor();
      await page.setInputFiles(
        "#review-files",
        fileOf("cat.png", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1])),
      );
      await page.getByText("log/not-text").waitFor();
      await page.setInputFiles(
        "#review-files",
        fileOf("note.yaml", "formatVersion: 1\ntitel: Mugs\n"),
      );
      await page.getByText("write title instead").waitFor();
      await page.getByText("Lay down the log of a firing").waitFor();
    }));

  it("asks where the log leaves its unit open, reads it by the answer, and remembers it in the record", () =>
    withPage(async ({ page }) => {
      await page.setInputFiles("#review-files", fileOf("bare.csv", OPEN_UNIT));
      await page.getByText("log/unit-unknown").waitFor();
      await page.selectOption("#asked-unit", { label: "°C" });
      await read(page);
      expect(await page.locator("#decided-unit").inputValue()).toBe("0");
      await page.getByRole("button", { name: "Remember this in the record" }).click();
      await page.getByText("bare.yaml", { exact: true }).first().waitFor({ state: "attached" });
      await read(page);
      await page.getByText("The record, to write").click();
      expect(await saved(page, "Save the record")).toContain("log:\n  unit: C\n");
      await page.getByRole("button", { name: /^Undo/ }).click();
      await page.getByRole("button", { name: "Remember this in the record" }).waitFor();
    }));

  it("puts the kinds of crack in another order as soon as a question is answered, and writes it down", () =>
    withDemo(async ({ page }) => {
      const first = page.locator("#cracks li").first();
      expect(await first.textContent()).toContain("dunting at the quartz inversion");
      const before = await page.locator("#cracks").textContent();
      await page
        .getByRole("group", { name: /Are the edges of the crack sharp/ })
        .getByText("rounded under glaze", { exact: true })
        .click();
      await page.waitForFunction(
        (was) => document.querySelector("#cracks")?.textContent !== was,
        before,
      );
      await page.getByText("The record, to write").click();
      const text = await saved(page, "Save the record");
      expect(text).toContain("    what: through-crack\n    edges: rounded under glaze\n");
      const was = readFileSync(join(LOGS, "2026-05-23-b.yaml"), "utf8");
      for (const line of was
        .split("\n")
        .filter((each) => !/^notes|^ {2}at 280|^ {2}above/.test(each)))
        expect(text).toContain(line.trim());
    }));

  it("gives a record that the command reads, filled in by the form", () =>
    withPage(async ({ page }) => {
      const folder = emptyFolder();
      cpSync(join(LOGS, "2026-03-14-b.csv"), join(folder, "a.csv"));
      await lay(page, join(folder, "a.csv"));
      await page.getByText("The record, to write").click();
      await page.fill("#record-title", 'Mugs: "second" try # 2');
      await page.press("#record-title", "Enter");
      await page.locator("#record-witnessCones > summary").click();
      await page.fill("#add-witnessCones-cone", "5");
      await page.getByRole("button", { name: "Add a cone" }).click();
      await page.getByText("How far it bent is still empty.").waitFor();
      await page.fill("#add-witnessCones-bent", "sideways");
      await page.getByRole("button", { name: "Add a cone" }).click();
      await page.getByText("does not say how far the cone bent").waitFor();
      await page.fill("#add-witnessCones-bent", "3 o'clock");
      await page.getByRole("button", { name: "Add a cone" }).click();
      await page.locator("#record-witnessCones-0-bent").waitFor();
      await read(page);
      writeFileSync(join(folder, "a.yaml"), await saved(page, "Save the record"));
      const command = undunted(["review", "a.csv", "--json", "-q"], { cwd: folder });
      const document = JSON.parse(command.out);
      expect(document.title).toBe('Mugs: "second" try # 2');
      expect(JSON.parse(await saved(page, "Save the numbers (JSON)"))).toEqual(document);
    }));

  it("marks a finding in the charts from the keyboard, and goes back to it by a click on its mark", () =>
    withDemo(async ({ page }) => {
      await page.locator("#finding-2 button").focus();
      await page.keyboard.press("Enter");
      await page.locator(".marked-stretch rect").first().waitFor();
      expect(await page.locator("#finding-2 button").getAttribute("aria-pressed")).toBe("true");
      const [mark, plot] = await Promise.all(
        [
          ".marked-stretch rect",
          "figure.chart .paper-drawing svg > g clipPath, figure.chart .paper-drawing svg",
        ].map((each) => page.locator(each).first().boundingBox()),
      );
      expect(mark?.x).toBeGreaterThan(plot?.x ?? 0);
      await page.locator('.mark[data-finding="0"]').first().dispatchEvent("click");
      expect(await page.evaluate(() => document.activeElement?.closest("li")?.id)).toBe(
        "finding-1",
      );
      await page.waitForFunction(() => document.querySelector("#finding-1.is-marked") !== null);
    }));

  it("tells everything in the other unit, charts and marks included, at a switch", () =>
    withDemo(async ({ page }) => {
      await page.getByRole("banner").getByText("°F").click();
      await read(page);
      await page.locator("figure.chart").first().getByText("Temperature (°F)").first().waitFor();
      const lead = await page.locator("#review-screen .lead").textContent();
      expect(lead).toContain("°F");
      expect(await page.locator("figure.chart .mark").count()).toBeGreaterThan(4);
      expect(JSON.parse(await saved(page, "Save the numbers (JSON)")).zones[0].peakC).toBeLessThan(
        1200,
      );
    }));

  it("can be used from the keyboard alone, from the demo firing to an answer", () =>
    withPage(async ({ page }) => {
      await page.getByRole("tab", { name: "Review" }).focus();
      await tabTo(page, "Try it with a demo firing");
      await page.keyboard.press("Enter");
      await read(page);
      await page.locator('input[name="answer-ring"]').first().focus();
      await page.keyboard.press("Space");
      await page.waitForFunction(
        () => document.querySelector<HTMLInputElement>('input[name="answer-ring"]')?.checked,
      );
      await page.getByRole("button", { name: /^Undo: the answer/ }).waitFor();
    }));

  it("keeps log, record and what was said of them over a reload", () =>
    withPage(async ({ page }) => {
      await layDemo(page);
      await page
        .getByRole("group", { name: /Does the piece ring/ })
        .getByText("clear", { exact: true })
        .click();
      await read(page);
      const before = await saved(page, "Save the numbers (JSON)");
      await page.evaluate(() => window.dispatchEvent(new Event("pagehide")));
      await page.waitForFunction(async () => {
        const opening = indexedDB.open("undunted", 1);
        const database = await new Promise<IDBDatabase>((done) => {
          opening.onsuccess = () => done(opening.result);
        });
        const asked = database.transaction("bench").objectStore("bench").get("work");
        const work = await new Promise<
          { review: { record: { bytes: Uint8Array } | null } } | undefined
        >((done) => {
          asked.onsuccess = () => done(asked.result);
        });
        database.close();
        return new TextDecoder().decode(work?.review.record?.bytes).includes("rings: clear");
      });
      await page.reload();
      await ready(page);
      await page.getByRole("tab", { name: "Review" }).click();
      await read(page);
      expect(await saved(page, "Save the numbers (JSON)")).toBe(before);
    }));

  it("stops reading when told to, and reads after all", () =>
    withPage(async ({ page }) => {
      const rows = Array.from(
        { length: 300_000 },
        (_, row) => `${row},${(20 + row / 300).toFixed(2)}`,
      );
      await page.setInputFiles(
        "#review-files",
        fileOf("long.csv", `seconds,temp °C\n${rows.join("\n")}`),
      );
      await page.getByRole("button", { name: "Cancel" }).click();
      await page.getByText("The reading was stopped.").waitFor();
      expect(await page.locator("#review-report").count()).toBe(0);
      await page.getByRole("button", { name: "Read it after all" }).click();
      await read(page);
    }));

  it("runs nothing that names in log, record and schedule ask for", () =>
    withPage(async ({ page }) => {
      const evil = `<img src=x onerror="document.title='broken in'">`;
      const record = `formatVersion: 1\ntitle: '${evil.replaceAll("'", "''")}'\nkiln: '</script><script>document.title=1</script>'\nheard:\n  - { what: '<b>bang</b>', at: "+05:00" }\n`;
      const log = `time [min],"Temp °C ${evil.replaceAll('"', '""')}"\n${plainRows((row) => row / 2)}`;
      await lay(page, [fileOf("<i>evil<i>.csv", log), fileOf("<i>evil<i>.yaml", record)] as never);
      expect(await page.title()).toContain("Undunted");
      expect(await page.locator("#review-report :is(img, script, b, i)").count()).toBe(0);
      expect(await page.locator("#review-report").textContent()).toContain("onerror");
    }));

  it.each([
    { screen: "a light one", options: {}, rules: null },
    { screen: "a dark one", options: { colorScheme: "dark" }, rules: ["color-contrast"] },
    { screen: "a small one", options: { viewport: { width: 390, height: 800 } }, rules: null },
  ] as const)(
    "has nothing that a checker of accessibility complains of on $screen",
    ({ options, rules }) =>
      withDemo(({ page }) =>
        onScreen(page, options, async () => {
          await page.getByText("The record, to write").click();
          for (const part of await page.locator(".record-part > summary").all()) await part.click();
          await page.locator("#finding-1 button").click();
          expect(await complaintsOf(page, rules)).toEqual([]);
          const over = () => document.documentElement.scrollWidth - innerWidth;
          expect(await page.evaluate(over)).toBeLessThanOrEqual(0);
          await page.getByRole("button", { name: "Clear this table" }).click();
          await page.setInputFiles("#review-files", fileOf("bare.csv", OPEN_UNIT));
          await page.getByText("log/unit-unknown").waitFor();
          expect(await complaintsOf(page, rules)).toEqual([]);
        }),
      ),
  );
});

async function tabTo(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 20; presses++) {
    await page.keyboard.press("Tab");
    if ((await page.evaluate(() => document.activeElement?.textContent?.trim())) === name) return;
  }
  throw new Error(`no way to ${name} by Tab`);
}

async function complaintsOf(
  page: Page,
  rules: readonly string[] | null,
): Promise<readonly string[]> {
  return page.evaluate(
    async ({ source, only }) => {
      // biome-ignore lint/security/noGlobalEval: the checker has no other way into the page.
      globalThis.eval(source);
      const { axe } = window as unknown as {
        axe: {
          run: (
            options: object,
          ) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
        };
      };
      const { violations } = await axe.run(only === null ? {} : { runOnly: only });
      return violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(" | ")}`,
      );
    },
    { source: AXE, only: rules },
  );
}
