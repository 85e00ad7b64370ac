import { expect } from "vitest";
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
        const asked = opened.requests.filter((url) => !/^(?:blob|data):/.test(url));
        expect(new Set(asked).size).toBe(1);
      },
      { reducedMotion: "reduce", ...options },
    );
}
