import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import bundled from "@sparticuz/chromium";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";

/** The built page. */
export const PAGE_FILE =
  process.env.UNDUNTED_PAGE ?? join(import.meta.dirname, "../../dist/undunted.html");

/** Arguments of the bundled browser that would make all its windows one process, and fall together. */
const TOGETHER = new Set(["--single-process", "--no-zygote"]);

/** A browser: that of the system where `CHROMIUM_PATH` names it, else the bundled one. */
export async function startBrowser(): Promise<Browser> {
  const own = process.env.CHROMIUM_PATH;
  return chromium.launch({
    executablePath: own ?? (await bundled.executablePath()),
    args: own ? ["--no-sandbox"] : bundled.args.filter((each) => !TOGETHER.has(each)),
    headless: true,
  });
}

/** A page in a window of its own, and everything it asked of the world or complained about. */
export interface OpenedPage {
  readonly page: Page;
  readonly requests: readonly string[];
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

/** Opens the built page from disk, without a network, and waits until it has read what was kept. */
export async function openPage(
  browser: Browser,
  options: BrowserContextOptions = {},
): Promise<OpenedPage> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    offline: true,
    ...options,
  });
  context.setDefaultTimeout(8000);
  const page = await context.newPage();
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  await page.goto(pathToFileURL(PAGE_FILE).href);
  await ready(page);
  return { page, requests, complaints, close: () => context.close() };
}

/** Waits until the page has read what was kept. */
export async function ready(page: Page): Promise<void> {
  await page.waitForSelector("#bench[data-ready]");
}

/** Lays a schedule that comes with the page on the Draft table. */
export async function layShipped(page: Page, title: string): Promise<void> {
  await page.getByRole("button", { name: title }).click();
  await page.waitForSelector(".editor");
}

/** Waits until the slow part of a draft is worked out for the schedule as it stands. */
export async function rested(page: Page): Promise<void> {
  await page.waitForSelector('.report[aria-busy="false"]', { state: "attached" });
}

/** The text of the file that a button saves. */
export async function saved(page: Page, button: string): Promise<string> {
  const downloading = page.waitForEvent("download");
  await page.getByRole("button", { name: button }).click();
  return readFileSync(await (await downloading).path(), "utf8");
}

/** A file to hand to a file field. */
export function fileOf(name: string, content: string | Uint8Array) {
  return { name, mimeType: "application/octet-stream", buffer: Buffer.from(content) };
}
