import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { PAGE_FILE, startBrowser } from "../page/browser.ts";
import { flows } from "../page/flows.ts";
import { millionRows } from "./millionRows.ts";

/** The bars of the page, and where it stands: `npm run bench:page` after a build. */
const BARS = { gzipKB: 450, changeMs: 16, taskMs: 100 };

/** Changes that are measured for each way of changing. */
const CHANGES = 120;

interface Seen {
  readonly draws: number[];
  readonly longTasks: number[];
}

const html = readFileSync(PAGE_FILE);
say(
  "size",
  `${kB(html.length)} kB, gzip ${kB(gzipSync(html, { level: 9 }).length)} kB`,
  `bar ${BARS.gzipKB} kB`,
);

const browser = await startBrowser();
const page = await (await browser.newContext({ offline: true })).newPage();
await page.addInitScript(watchFrames);
const opened = performance.now();
await page.goto(pathToFileURL(PAGE_FILE).href);
await page.waitForSelector("#bench[data-ready]");
say("first view", `${Math.round(performance.now() - opened)} ms from opening to ready`, "");
await page.getByRole("button", { name: "crackle tiles" }).click();
await page.selectOption("#body", "porcelain cone 6");
await page.waitForSelector('.report[aria-busy="false"]');
await measured(page, "a corner by keys, body named", "#corner-2-ramp");
await measured(page, "a hold by keys, body named", "#corner-2-hold");
await page.selectOption("#body", "");
await page.waitForSelector('.report[aria-busy="false"]');
await measured(page, "a corner by keys, no body", "#corner-2-ramp");
const { longTasks } = await seen(page);
say(
  "longest task",
  `${Math.round(Math.max(0, ...longTasks))} ms, over 50 ms: ${longTasks.length}`,
  "",
);
const million = await millionRows(browser);
say(
  "a log of a million rows",
  `longest task ${Math.round(million.longestMs)} ms, longest wait for a frame ${Math.round(million.longestFrameMs)} ms`,
  `bar ${BARS.taskMs} ms`,
);
say(
  "",
  `read in ${(million.readMs / 1000).toFixed(1)} s, ${million.updates} updates seen, cancelled in ${Math.round(million.cancelMs)} ms`,
  "",
);
for (const { what, clicks, keys, seconds } of await flows(browser))
  say(what, `${clicks} clicks, ${keys} keys, ${seconds.toFixed(1)} s of the page's own`, "");
await browser.close();

/** Counts how long every drawing of the page takes, and tasks over 50 ms; runs inside the page. */
function watchFrames(): void {
  const record: Seen = { draws: [], longTasks: [] };
  Object.assign(window, { record });
  const request = window.requestAnimationFrame.bind(window);
  window.requestAnimationFrame = (draw) =>
    request((time) => {
      const from = performance.now();
      draw(time);
      record.draws.push(performance.now() - from);
    });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) record.longTasks.push(duration);
  }).observe({ entryTypes: ["longtask"] });
}

async function measured(on: Page, what: string, corner: string): Promise<void> {
  await on.evaluate(() => {
    (window as unknown as { record: Seen }).record.draws.length = 0;
  });
  await on.focus(corner);
  const clock = await on.context().newCDPSession(on);
  await clock.send("Performance.enable", { timeDomain: "threadTicks" });
  const scriptSeconds = async () => {
    const { metrics } = await clock.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "ScriptDuration")?.value ?? 0;
  };
  const before = await scriptSeconds();
  for (let i = 0; i < CHANGES; i++) await on.keyboard.press(i % 2 === 0 ? "ArrowUp" : "ArrowDown");
  const ownMs = (((await scriptSeconds()) - before) * 1000) / CHANGES;
  const draws = (await seen(on)).draws.toSorted((a, b) => a - b);
  const at = (share: number) => (draws[Math.floor(share * (draws.length - 1))] ?? 0).toFixed(1);
  say(
    what,
    `p50 ${at(0.5)} ms, p95 ${at(0.95)} ms, worst ${at(1)} ms; ${ownMs.toFixed(1)} ms of processor each`,
    `bar ${BARS.changeMs} ms`,
  );
}

function seen(on: Page): Promise<Seen> {
  return on.evaluate(() => (window as unknown as { record: Seen }).record);
}

function kB(bytes: number): number {
  return Math.round(bytes / 1000);
}

function say(what: string, found: string, bar: string): void {
  process.stdout.write(`${what.padEnd(46)}${found}${bar === "" ? "" : `   (${bar})`}\n`);
}
