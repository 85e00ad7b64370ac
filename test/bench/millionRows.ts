import type { Browser } from "playwright-core";
import { fileOf, openPage } from "../page/browser.ts";

/** Rows of a log that no kiln needs, so that nothing in the page may grow with its rows. */
const ROWS = 1_000_000;
const HOURS = 24;

/** What a person felt while a long log was read. */
interface Felt {
  readonly rows: number;
  /** From the drop to the whole report [ms]. */
  readonly readMs: number;
  /** Longest task of the page itself from the drop on [ms]; 0 when none was over 50 ms. */
  readonly longestMs: number;
}

/** Lays a log of a million rows on the Review table and listens to the page meanwhile. */
export async function millionRows(browser: Browser): Promise<Felt> {
  const { page, close } = await openPage(browser);
  await page.getByRole("tab", { name: "Review" }).click();
  await page.evaluate(() => {
    const longest = { ms: 0 };
    Object.assign(window, { longest });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) longest.ms = Math.max(longest.ms, duration);
    }).observe({ entryTypes: ["longtask"] });
  });
  const from = performance.now();
  await page.setInputFiles("#review-files", fileOf("million.csv", log()));
  await page.waitForSelector('#review-report[aria-busy="false"]', { timeout: 300_000 });
  const readMs = performance.now() - from;
  const longestMs = await page.evaluate(
    () => (window as unknown as { longest: { ms: number } }).longest.ms,
  );
  await close();
  return { rows: ROWS, readMs, longestMs };
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
