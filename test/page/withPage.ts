import type { Page } from "playwright-core";
import { afterAll, expect } from "vitest";
import { type OpenedPage, openPage, sharedBrowser } from "./browser.ts";

type PageOptions = NonNullable<Parameters<typeof openPage>[1]>;

/** Runs something on the page in a fresh window; it must not complain of anything. */
type WithPage = (
  act: (opened: OpenedPage) => Promise<void>,
  options?: PageOptions,
) => Promise<void>;

/** Pages in fresh windows, one for each call, in the browser that all page tests share. */
export function freshPages(): WithPage {
  return async (act, options) => {
    const opened = await openPage(await sharedBrowser(), options);
    try {
      await act(opened);
      expect(opened.complaints).toEqual([]);
    } finally {
      await opened.close();
    }
  };
}

/** The same on one table, without motion; nothing but the page itself may be asked for. */
export function freshTables(name: "Review" | "Compare"): WithPage {
  const withPage = freshPages();
  return (act, options = {}) =>
    withPage(
      async (opened) => {
        await opened.page.getByRole("tab", { name }).click();
        await act(opened);
        expectNoRequests(opened);
      },
      { reducedMotion: "reduce", ...options },
    );
}

/** How a table is laid out once for several tests. */
interface SharedTable {
  readonly name: "Review" | "Compare";
  /** Lays it out, and waits until it is. */
  readonly lay: (page: Page) => Promise<void>;
  /** Waits until it stands as it was laid out, after it was brought back. */
  readonly isLaid: (page: Page) => Promise<void>;
}

/**
 * One window for several tests that begin with the same work on a table: it is laid out once, and after each
 * test brought back by Undo, however much was changed. A test that fails costs the window, and the next one
 * gets a new one, so that no test depends on another.
 */
export function sharedTable({ name, lay, isLaid }: SharedTable): WithPage {
  let laid: { readonly opened: OpenedPage; readonly undo: string } | null = null;
  afterAll(() => laid?.opened.close());
  const layOut = async () => {
    // A checker of accessibility is let in past the page's own policy.
    const options = { reducedMotion: "reduce", bypassCSP: true } as const;
    const opened = await openPage(await sharedBrowser(), options);
    await opened.page.getByRole("tab", { name }).click();
    await lay(opened.page);
    return { opened, undo: String(await opened.page.getAttribute(UNDO, "aria-label")) };
  };
  return async (act) => {
    const { opened, undo } = laid ?? (await layOut());
    laid = null;
    try {
      await act(opened);
      expect(opened.complaints).toEqual([]);
      expectNoRequests(opened);
      await bringBack(opened.page, undo);
      await opened.page.getByRole("tab", { name }).click();
      await isLaid(opened.page);
      laid = { opened, undo };
    } finally {
      if (laid === null) await opened.close();
    }
  };
}

const UNDO = '.tools [aria-label^="Undo"]';

/** Undoes until the step that is named would be the next, shuts what was opened and takes away the mark. */
async function bringBack(page: Page, step: string): Promise<void> {
  await page.evaluate(
    async ([selector, wanted]) => {
      const drawn = () =>
        new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
      const undo = () => document.querySelector<HTMLButtonElement>(selector);
      await drawn();
      while (undo()?.ariaLabel !== wanted) {
        if (undo()?.disabled !== false) throw new Error(`no way back to "${wanted}"`);
        undo()?.click();
        await drawn();
      }
      for (const each of document.querySelectorAll("details")) each.open = false;
      document.querySelector<HTMLButtonElement>(".findings .is-marked button")?.click();
      await drawn();
    },
    [UNDO, step] as const,
  );
}

/** A window on a screen of another kind, and as it was again afterwards. */
export async function onScreen(
  page: Page,
  screen: Pick<PageOptions, "viewport" | "colorScheme">,
  act: () => Promise<void>,
): Promise<void> {
  const before = page.viewportSize();
  await page.emulateMedia({ colorScheme: screen.colorScheme ?? null });
  if (screen.viewport) await page.setViewportSize(screen.viewport);
  await act();
  await page.emulateMedia({ colorScheme: null });
  if (before) await page.setViewportSize(before);
}

/** Nothing but the page itself was asked for. */
function expectNoRequests({ requests }: OpenedPage): void {
  expect(new Set(requests.filter((url) => !/^(?:blob|data):/.test(url))).size).toBe(1);
}
