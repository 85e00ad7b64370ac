import { readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import bundled from "@sparticuz/chromium";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";

/** The built page. */
export const PAGE_FILE =
  process.env.UNDUNTED_PAGE ?? join(import.meta.dirname, "../../dist/undunted.html");

/**
 * Arguments of the bundled browser that are left out: those that would make all its windows one process, and
 * fall together, and those that draw with a graphics card made of software, which costs a tenth of the run.
 */
const LEFT_OUT =
  /^--(?:single-process|no-zygote|in-process-gpu|ignore-gpu-blocklist|use-gl=|use-angle=|enable-unsafe-swiftshader)/;

/** The fonts that come with the bundled browser, so that words are as wide on every machine. */
const FONTS = { FONTCONFIG_PATH: join(tmpdir(), "fonts") };

/** A browser: that of the system where `CHROMIUM_PATH` names it, else the bundled one with its own fonts. */
export async function startBrowser(): Promise<Browser> {
  const own = process.env.CHROMIUM_PATH;
  if (own) return chromium.launch({ executablePath: own, args: ["--no-sandbox"] });
  return chromium.launch({
    executablePath: await bundled.executablePath(),
    args: [...bundled.args.filter((each) => !LEFT_OUT.test(each)), "--disable-gpu"],
    env: { ...process.env, ...FONTS },
  });
}

let shared: Promise<Browser> | null = null;

/** The one browser of a worker's page tests, started by the first that asks for it; it ends with the run. */
export function sharedBrowser(): Promise<Browser> {
  shared ??= startBrowser();
  return shared;
}

/**
 * How long the page may take for anything before it counts as something that never comes [ms]: no bound of
 * speed, so generous that a machine with much else to do keeps it.
 */
const NEVER_MS = 240_000;

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
  context.setDefaultTimeout(NEVER_MS);
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

/** Opens the page anew, as a person does who comes back, once everything until now is kept. */
export async function comeBack(page: Page): Promise<void> {
  await page.evaluate(async () => {
    window.dispatchEvent(new Event("pagehide"));
    const opening = indexedDB.open("undunted");
    const database = await new Promise<IDBDatabase>((opened, failed) => {
      opening.onsuccess = () => opened(opening.result);
      opening.onerror = () => failed(opening.error);
    });
    // A transaction waits for those before it, so what the page was told to keep is written when it ends.
    const last = database.transaction([...database.objectStoreNames]);
    await new Promise((ended) => {
      last.oncomplete = ended;
      last.objectStore(database.objectStoreNames[0] as string).count();
    });
    database.close();
  });
  await page.reload();
  await ready(page);
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
