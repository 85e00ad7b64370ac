import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import { type OpenedPage, openPage, startBrowser } from "./browser.ts";

/** Runs something on the page in a fresh window; it must not complain of anything. */
type WithPage = (act: (opened: OpenedPage) => Promise<void>) => Promise<void>;

/** One browser for the tests of a file, closed after the last, and a fresh window for each. */
export function freshPages(): WithPage {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(async () => browser.close());
  return async (act) => {
    const opened = await openPage(browser);
    await act(opened);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  };
}
