import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { openPage } from "../page/browser.ts";

/** Rows of a log that no kiln needs, so that nothing in the page may grow with its rows. */
const ROWS = 1_000_000;
const HOURS = 24;

/** What a person felt while a long log was read. */
interface Felt {
  /** From the drop to the whole report [ms]. */
  readonly readMs: number;
  /** Longest task of the page itself from the drop on [ms]; 0 when none was over 50 ms. */
  readonly longestMs: number;
  /** Longest wait for a frame from the drop on [ms]. */
  readonly longestFrameMs: number;
  /** How often the page showed another state of the reading. */
  readonly updates: number;
  /** From pressing Cancel to the page saying that it stopped [ms]. */
  readonly cancelMs: number;
}

/** What the runner of this file wraps functions in, which the page does not know. */
const KEEPS_NAMES = "globalThis.__name = (named) => named";

interface Watched {
  longestMs: number;
  longestFrameMs: number;
  updates: number;
}

/** Lays a log of a million rows on the Review table, twice, and listens to the page meanwhile. */
export async function millionRows(browser: Browser): Promise<Felt> {
  const folder = mkdtempSync(join(tmpdir(), "undunted-bench-"));
  const path = join(folder, "million.csv");
  writeFileSync(path, log());
  const { page, close } = await openPage(browser);
  await page.getByRole("tab", { name: "Review" }).click();
  await page.evaluate(KEEPS_NAMES);
  await page.evaluate(watch);
  const from = performance.now();
  await page.setInputFiles("#review-files", path);
  await page.waitForSelector('#review-report[aria-busy="false"]', { timeout: 300_000 });
  const readMs = performance.now() - from;
  const watched = await page.evaluate(() => (window as unknown as { watched: Watched }).watched);
  const cancelMs = await cancelled(page, path);
  await close();
  rmSync(folder, { recursive: true });
  return { readMs, cancelMs, ...watched };
}

/** Runs inside the page: counts long tasks, frames and what is shown of the reading. */
function watch(): void {
  const watched: Watched = { longestMs: 0, longestFrameMs: 0, updates: 0 };
  Object.assign(window, { watched });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries())
      watched.longestMs = Math.max(watched.longestMs, duration);
  }).observe({ entryTypes: ["longtask"] });
  let shown = "";
  let before = performance.now();
  const frame = (now: number) => {
    watched.longestFrameMs = Math.max(watched.longestFrameMs, now - before);
    before = now;
    const bar = document.querySelector(".reading-progress progress");
    const here = bar === null ? "" : `${(bar as HTMLProgressElement).value}`;
    if (here !== shown && here !== "") watched.updates += 1;
    shown = here;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
}

/** Lays the same log again and stops the reading as soon as it is under way. */
async function cancelled(page: Page, path: string): Promise<number> {
  await page.getByRole("button", { name: "Clear this table" }).click();
  await page.setInputFiles("#review-files", path);
  await page.getByRole("button", { name: "Cancel" }).waitFor();
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const from = performance.now();
        const isSaid = () =>
          document.body.textContent?.includes("The reading was stopped") ?? false;
        const wait = () => {
          if (isSaid()) resolve(performance.now() - from);
          else requestAnimationFrame(wait);
        };
        document.querySelector<HTMLElement>(".reading-progress button")?.click();
        wait();
      }),
  );
}

/** Ten hours up, then a fall that slows down, read with a little noise. */
function log(): string {
  const lines = Array.from({ length: ROWS }, (_, row) => {
    const seconds = (row * HOURS * 3600) / ROWS;
    const temp =
      seconds < 36_000 ? 20 + seconds / 31.3 : 20 + 1150 * Math.exp((36_000 - seconds) / 25_000);
    return `${seconds.toFixed(3)},${(temp + ((row * 7919) % 100) / 200).toFixed(2)}`;
  });
  return `time s,Temp °C\n${lines.join("\n")}\n`;
}
