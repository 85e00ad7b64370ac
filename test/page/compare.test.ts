import { copyFileSync, cpSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import axe from "axe-core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { packedLog, unpackedLog } from "../../src/page/packedLog.ts";
import { answer, emptyFolder, undunted } from "../support/undunted.ts";
import { comeBack, fileOf, layShipped, saved } from "./browser.ts";
import { placesApart } from "./placesApart.ts";
import { freshTables, onScreen, sharedTable } from "./withPage.ts";

const LOGS = join(import.meta.dirname, "../../logs");
const DEMO = ["2026-02-21-b", "2026-03-14-b", "2026-04-11-a"];

const withPage = freshTables("Compare");
const withDemo = sharedTable({
  name: "Compare",
  lay: layDemo,
  isLaid: async (page) => {
    await page.waitForSelector('#compare-report[aria-busy="false"]');
    await compared(page);
  },
});

async function lay(page: Page, files: Parameters<Page["setInputFiles"]>[1]): Promise<void> {
  await page.setInputFiles("#compare-files", files);
}

function demo(...stems: readonly string[]): string[] {
  return stems.flatMap((stem) => [join(LOGS, `${stem}.csv`), join(LOGS, `${stem}.yaml`)]);
}

/** Waits until so many firings are compared. */
async function compared(page: Page, title = "3 firings compared"): Promise<void> {
  await page.getByRole("heading", { name: title, exact: true }).waitFor();
}

async function layDemo(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Try it with three demo firings" }).click();
  await compared(page);
}

/** The numbers of the page, and of the command for the same files with these options. */
async function bothNumbers(page: Page, stems: readonly string[], ...options: readonly string[]) {
  const logs = stems.map((stem) => `${stem}.csv`);
  return {
    page: JSON.parse(await saved(page, "Save the numbers (JSON)")),
    command: JSON.parse(answer(["compare", ...logs, "--json", "-q", ...options], LOGS).out),
  };
}

/** What is said of the peak of a log, as the command has it. */
function peakOf(stem: string, unit: "C" | "F" = "C"): string {
  const [zone] = JSON.parse(answer(["review", `${stem}.csv`, "--json", "-q"], LOGS).out).zones;
  return `peak ${Math.round(unit === "C" ? zone.peakC : zone.peakC * 1.8 + 32)} °${unit}`;
}

/** Relative: a browser's powers and exponentials may differ from Node's in their last digit. */
const LAST_DIGITS = 1e-12;

/** All numbers of the command, to the last digit; those that were drawn at random to the last but two. */
function expectSame({ page, command }: Awaited<ReturnType<typeof bothNumbers>>): void {
  expect(withoutFits(page)).toEqual(withoutFits(command));
  expect(placesApart(page.study.fits, command.study.fits, { share: LAST_DIGITS })).toEqual([]);
}

function withoutFits(document: { readonly study: object }): object {
  return { ...document, study: { ...document.study, fits: null } };
}

describe("the Compare table", () => {
  it("gives the numbers of the command for its demo firings, to the last digit", () =>
    withDemo(async ({ page }) => {
      const numbers = await bothNumbers(page, DEMO);
      expectSame(numbers);
    }));

  it("gives them whatever the order in which files are dropped, and with firings of several kilns", () =>
    withPage(async ({ page }) => {
      const stems = ["2026-02-07-a", "2026-04-11-a", "2026-05-23-b"];
      const files = demo(...stems);
      await lay(page, [
        join(LOGS, "glaze-pond-ice.yaml"),
        ...files.filter((path) => path.endsWith(".yaml")),
        ...files.filter((path) => path.endsWith(".csv")),
      ]);
      await compared(page, "3 firings compared");
      const numbers = await bothNumbers(page, stems);
      expectSame(numbers);
    }));

  it("lines firings up and holds them against one as the command does", () =>
    withDemo(async ({ page }) => {
      await page.getByText("on the way down, at", { exact: true }).click();
      await page.fill("#align-temperature", "1100 F");
      await page.press("#align-temperature", "Enter");
      await page.getByText("Each firing at 0 h as it first falls through 593 °C").first().waitFor();
      const item = page.locator(".laid-firing", { hasText: "2026-03-14-b.csv" });
      await item.getByLabel("Hold the others against it").check();
      await page.getByText("Against firing 2:").first().waitFor();
      const numbers = await bothNumbers(
        page,
        DEMO,
        ...["--align", "1100 F falling", "--base", "2026-03-14-b.csv"],
      );
      expect(numbers.page.alignment.tempC).toBeCloseTo(593.33, 2);
      expectSame(numbers);
    }));

  it("says the sentences of the command", () =>
    withDemo(async ({ page }) => {
      const { out } = answer(
        ["compare", ...DEMO.map((stem) => `${stem}.csv`), "--more", "all"],
        LOGS,
      );
      const flat = (text: string) => text.replaceAll(/[\s\u00a0\u202f]+/g, " ");
      const shown = flat(String(await page.locator("#compare-report").textContent()));
      const sentences = flat(out).match(/[^.•]{30,200}\./g) ?? [];
      const told = sentences
        .map((sentence) => sentence.trim())
        .filter((sentence) =>
          /^(?:Pond ice|The power|Like tiles|Cones are|The tile is)/.test(sentence),
        );
      expect(told.length).toBeGreaterThan(2);
      for (const sentence of told) expect(shown).toContain(sentence);
    }));

  it("tells how glazes fit their clays once their files are dropped, under any file name", () =>
    withPage(async ({ page }) => {
      const studio = emptyFolder();
      cpSync(join(LOGS, "../schedules"), join(studio, "schedules"), { recursive: true });
      const folder = join(studio, "logs");
      mkdirSync(folder);
      const recordOf = (stem: string) => {
        const text = readFileSync(join(LOGS, `${stem}.yaml`), "utf8");
        return text.replaceAll(/^ {4}body:(?: .+)?\n(?: {6}.*\n)*/gm, "");
      };
      const ware = ["glaze-pond-ice.yaml", "body-tarrow-dusk.yaml", "body-tarrow-white.yaml"];
      for (const name of [...DEMO.map((stem) => `${stem}.csv`), ...ware])
        copyFileSync(join(LOGS, name), join(folder, name));
      for (const stem of DEMO) writeFileSync(join(folder, `${stem}.yaml`), recordOf(stem));
      await lay(
        page,
        DEMO.flatMap((stem) => [join(folder, `${stem}.csv`), join(folder, `${stem}.yaml`)]),
      );
      await compared(page);
      await page.getByText("Drop the file of the glaze beside the logs").waitFor();
      const text = (name: string) => readFileSync(join(LOGS, name));
      await lay(page, [
        fileOf("ours.yaml", text("glaze-pond-ice.yaml")) as never,
        fileOf("red.yaml", text("body-tarrow-dusk.yaml")) as never,
        fileOf("body-tarrow-white.yaml", text("body-tarrow-white.yaml")) as never,
        fileOf("other.yaml", text("glaze-fitting.yaml")) as never,
      ]);
      await page.getByText("Pond ice on Tarrow dusk:").waitFor();
      for (const kind of ["glaze pond ice", "clay Tarrow dusk", "clay Tarrow white"])
        await page.locator(".file-kind").getByText(kind, { exact: true }).waitFor();
      await page.getByText("glaze; no tile here has one of its title").waitFor();
      await page
        .locator("figure")
        .getByText(/^Fit by the files of glaze and body/)
        .waitFor();
      const logs = DEMO.map((stem) => `${stem}.csv`);
      const { out } = undunted(["compare", ...logs, "--json", "-q"], { cwd: folder });
      const command = JSON.parse(out);
      expect(command.study.fits.pairs).toHaveLength(2);
      expectSame({ page: JSON.parse(await saved(page, "Save the numbers (JSON)")), command });
    }));

  it("fits the next test to the kiln that the Draft table was taught, as the command does with its logs", () =>
    withDemo(async ({ page }) => {
      await page.getByText("To have this test fitted to your own kiln").waitFor();
      await page.getByRole("tab", { name: "Draft" }).click();
      await layShipped(page, "crackle tiles");
      await page.setInputFiles("#kiln-logs", demo("2026-03-14-b"));
      await page.locator("#kiln-title ~ p", { hasText: "learned from" }).waitFor();
      await page.getByRole("tab", { name: "Compare" }).click();
      await page.getByText("The schedule goes by").waitFor();
      const fitted = await bothNumbers(page, DEMO, "--kiln", "2026-03-14-b.csv");
      expectSame(fitted);
      await page.getByLabel("Fit it to the kiln that the Draft table was taught").uncheck();
      await page.getByText("The schedule goes by").waitFor({ state: "detached" });
      const plain = await bothNumbers(page, DEMO);
      expectSame(plain);
    }));

  it("lays the next test on the Draft table and saves it as the command writes it", () =>
    withDemo(async ({ page }) => {
      const file = join(emptyFolder(), "next.yaml");
      undunted(["compare", ...DEMO.map((stem) => `${stem}.csv`), "--next", file, "-q"], {
        cwd: LOGS,
      });
      const written = readFileSync(file, "utf8");
      expect(await saved(page, "Save its schedule (.yaml)")).toBe(written);
      await page.getByRole("button", { name: "Draft this next" }).click();
      await page.waitForSelector(".editor");
      expect(await saved(page, "Save the schedule")).toBe(written);
      await page.getByRole("button", { name: /^Undo/ }).click();
      await page.getByRole("tab", { name: "Compare" }).click();
      await compared(page);
    }));

  it("reads on past a broken log, names what is wrong with it, and takes it away", () =>
    withPage(async ({ page }) => {
      await lay(page, demo("2026-02-21-b", "2026-03-14-b"));
      await compared(page, "2 firings compared");
      await lay(page, fileOf("short.csv", "time,temp C\n0,20\n60,21\n"));
      const item = page.locator(".laid-firing", { hasText: "short.csv" });
      await item.getByRole("alert").waitFor();
      await compared(page, "2 firings compared");
      await item.getByRole("button", { name: "Take away short.csv" }).click();
      await item.waitFor({ state: "detached" });
    }));

  it("leaves a wrong drop out, lays the rest, and takes the step back", () =>
    withDemo(async ({ page }) => {
      await lay(page, [
        fileOf("cat.png", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1])) as never,
        fileOf("shopping.yaml", "milk: 2\n") as never,
        fileOf(
          "glaze.yaml",
          "formatVersion: 1\ntitle: pond ice\nrecipe: { quartz: many }\n",
        ) as never,
      ]);
      await page.getByText("log/not-text").waitFor();
      await page.getByText("page/no-use-here").waitFor();
      await page.getByRole("alert").getByText("glaze.yaml").first().waitFor();
      expect(await page.locator(".laid-firing").count()).toBe(3);
      await page.getByRole("button", { name: "Take away 2026-04-11-a.csv" }).click();
      await compared(page, "2 firings compared");
      await page.keyboard.press("Control+z");
      await compared(page);
    }));

  it("says which file a drop of the same name replaced, and brings it back", () =>
    withPage(async ({ page }) => {
      await lay(page, [join(LOGS, "2026-02-21-b.csv"), join(LOGS, "2026-03-14-b.csv")]);
      await compared(page, "2 firings compared");
      await lay(page, fileOf("2026-03-14-b.csv", readFileSync(join(LOGS, "2026-04-11-a.csv"))));
      await page.locator(".paint-caution", { hasText: "was replaced: 2026-03-14-b.csv" }).waitFor();
      const second = page.locator(".laid-firing").nth(1);
      await second.getByText(peakOf("2026-04-11-a")).waitFor();
      await page.keyboard.press("Control+z");
      await second.getByText(peakOf("2026-03-14-b")).waitFor();
    }));

  it("says what is still missing: a log, a second firing, tiles", () =>
    withPage(async ({ page }) => {
      await lay(page, join(LOGS, "2026-02-21-b.yaml"));
      await page.getByText("The logs are still missing").waitFor();
      await lay(page, join(LOGS, "2026-02-21-b.csv"));
      await compared(page, "One firing");
      await page.getByRole("button", { name: "Take away 2026-02-21-b.csv" }).click();
      await lay(page, [join(LOGS, "2026-02-07-a.csv")]);
      await page.getByText("Lay down another firing").waitFor();
      await lay(page, [join(LOGS, "2026-02-21-b.csv")]);
      await compared(page, "2 firings compared");
      await page.getByText("None of these firings has test tiles").waitFor();
    }));

  it("is the same after a reload, and gone when the bench is cleared", () =>
    withPage(async ({ page }) => {
      await lay(page, demo("2026-02-21-b", "2026-03-14-b"));
      await compared(page, "2 firings compared");
      await page.getByText("at the first reading", { exact: true }).click();
      await page.getByText("Each log with its first reading at 0 h").first().waitFor();
      const before = await saved(page, "Save the numbers (JSON)");
      await comeBack(page);
      await page.getByRole("tab", { name: "Compare" }).click();
      await compared(page, "2 firings compared");
      expect(await saved(page, "Save the numbers (JSON)")).toBe(before);
      await page.locator("summary", { hasText: "Whole bench" }).click();
      const file = join(emptyFolder(), "bench.json");
      writeFileSync(file, await saved(page, "Save the whole bench"));
      await page.getByRole("button", { name: "Clear the whole bench" }).click();
      await page.getByRole("button", { name: "Clear it all" }).click();
      await page.getByText("Lay several firings beside each other").waitFor();
      await page.setInputFiles("#open-bench", file);
      await compared(page, "2 firings compared");
      expect(await saved(page, "Save the numbers (JSON)")).toBe(before);
    }));

  it("stops reading when told, compares what was read, and reads the rest after all", () =>
    withDemo(async ({ page }) => {
      const rows = Array.from({ length: 400_000 }, (_, row) => {
        const temp = 20 + Math.min(row, 400_000 - row) * 0.0055;
        return `${row},${temp.toFixed(1)}`;
      });
      await page.evaluate(() => {
        // Clicked as soon as it is there, however short the reading is.
        const watcher = new MutationObserver(() => {
          const cancel = [...document.querySelectorAll("button")].find(
            (button) => button.textContent?.trim() === "Cancel",
          );
          if (cancel === undefined) return;
          watcher.disconnect();
          cancel.click();
        });
        watcher.observe(document.body, { childList: true, subtree: true });
      });
      await lay(page, fileOf("long.csv", `seconds,temp C\n${rows.join("\n")}`));
      await page.getByText("The reading was stopped.").waitFor();
      await compared(page);
      await page.getByRole("button", { name: "Read the rest after all" }).click();
      await compared(page, "4 firings compared");
    }));

  it("moves a firing by the keyboard and keeps the keyboard with it", () =>
    withDemo(async ({ page }) => {
      await page.getByRole("button", { name: "Down 2026-02-21-b.csv" }).focus();
      await page.keyboard.press("Enter");
      const focused = () => page.evaluate(() => document.activeElement?.textContent);
      await expect.poll(focused).toBe("Down 2026-02-21-b.csv");
      await page.keyboard.press("Enter");
      await expect.poll(focused).toBe("Up 2026-02-21-b.csv");
      await expect
        .poll(() => page.locator(".laid-firing .file-name").allInnerTexts())
        .toEqual(["2026-03-14-b.csv", "2026-04-11-a.csv", "2026-02-21-b.csv"]);
      await expect
        .poll(async () => JSON.parse(await saved(page, "Save the numbers (JSON)")).firings[2].title)
        .toBe("Crackle tiles, first set, natural cooling");
    }));

  it("hands a firing to the Review table and takes the record that was written there", () =>
    withPage(async ({ page }) => {
      await lay(page, [join(LOGS, "2026-02-07-a.csv"), join(LOGS, "2026-02-21-b.csv")]);
      await compared(page, "2 firings compared");
      await page.getByRole("button", { name: "Review it 2026-02-21-b.csv" }).click();
      await page.getByText("The record, to write and to change").click();
      await page.getByLabel("Title", { exact: true }).fill("Fired in the rain");
      await page.keyboard.press("Tab");
      await page.getByRole("tab", { name: "Compare" }).click();
      await page.getByRole("button", { name: "Take the record from Review" }).click();
      await page.getByText("Fired in the rain").first().waitFor();
      await compared(page, "2 firings compared");
    }));

  it("shows °F without changing a number", () =>
    withDemo(async ({ page }) => {
      const before = await saved(page, "Save the numbers (JSON)");
      await page.getByText("°F", { exact: true }).click();
      await page.locator(".laid-facts").getByText(peakOf("2026-02-21-b", "F")).first().waitFor();
      await page.locator("#compare-report figure.chart").first().waitFor();
      expect(await saved(page, "Save the numbers (JSON)")).toBe(before);
    }));

  it("shows hostile names and words as words", () =>
    withPage(async ({ page }) => {
      const evil = "<img src=x onerror=alert(1)>";
      const record = `formatVersion: 1\ntitle: "${evil}\\u202Ecod"\nunit: C\n`;
      await lay(page, [
        fileOf(
          `${evil}.csv`.replaceAll("/", ""),
          readFileSync(join(LOGS, "2026-02-07-a.csv")),
        ) as never,
        fileOf(`${evil}.yaml`.replaceAll("/", ""), record) as never,
        fileOf("b.csv", readFileSync(join(LOGS, "2026-02-21-b.csv"))) as never,
      ]);
      await compared(page, "2 firings compared");
      expect(await page.locator("#table-panel img").count()).toBe(0);
      const shown = await page.locator("#table-panel").textContent();
      expect(shown).toContain(evil);
      expect(shown).not.toContain("\u202e");
    }));
});

describe.each([
  { name: "a light screen", options: {} },
  { name: "a dark screen", options: { colorScheme: "dark" } },
  { name: "a telephone", options: { viewport: { width: 390, height: 844 } } },
] as const)("the Compare table on $name", ({ options }) => {
  it("has nothing that a checker of accessibility finds, and does not scroll sideways", () =>
    withDemo(({ page }) =>
      onScreen(page, options, async () => {
        await page.getByText("on the way up, at", { exact: true }).click();
        await lay(page, fileOf("short.csv", "time,temp C\n0,20\n60,21\n"));
        await page.getByRole("alert").first().waitFor();
        await page.addScriptTag({ content: axe.source });
        const found = await page.evaluate(async () => {
          const { axe: checker } = window as unknown as { axe: typeof axe };
          const { violations } = await checker.run();
          return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
        });
        expect(found).toEqual([]);
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect(over).toBe(0);
      }),
    ));
});

describe("a packed log", () => {
  it("is the very text again: runs of numbers, zeros in front, signs, words, carriage returns", () => {
    const text = [
      ...["\uFEFFtime;temp", "08:59:59;-0,5", "09:00:00;0,5", "09:00:01;007,0", "", "end 12"],
      ...["a1\r", "a2\r", "a9\r", "a10\r", "12345678901234567890", "12345678901234567891", ""],
    ].join("\n");
    expect(unpackedLog(packedLog(text))).toBe(text);
  });

  it("is the very text again for the demo logs, in less than half the room even when both are compressed", () => {
    for (const stem of DEMO) {
      const text = readFileSync(join(LOGS, `${stem}.csv`), "utf8");
      const packed = packedLog(text);
      expect(unpackedLog(packed)).toBe(text);
      const size = gzipSync(JSON.stringify(packed)).length;
      expect(size).toBeLessThan(gzipSync(text).length / 2);
    }
  });
});
