import type { Browser, Locator, Page } from "playwright-core";
import { type OpenedPage, openPage } from "./browser.ts";

/** What a person does for one end: presses of the mouse and of keys, and how long the page makes them wait. */
interface Flow {
  readonly what: string;
  readonly clicks: number;
  readonly keys: number;
  /** From the first press to the file, without a person's own time [s]. */
  readonly seconds: number;
}

/** A person at the page, whose presses are counted. */
interface Hand {
  readonly page: Page;
  readonly click: (target: Locator) => Promise<void>;
  readonly type: (target: Locator, text: string) => Promise<void>;
  /** A choice in a list: a click on it, and one on what is chosen. */
  readonly choose: (target: Locator, label: string) => Promise<void>;
  /** A click after which a file is saved. */
  readonly save: (button: string) => Promise<void>;
}

/** Walks through what the page is for, as few presses as it takes, each in a fresh window. */
export async function flows(browser: Browser): Promise<readonly Flow[]> {
  const found: Flow[] = [];
  for (const [what, walk] of Object.entries(WALKS))
    found.push(await walked(await openPage(browser), what, walk));
  return found;
}

const WALKS: Readonly<Record<string, (hand: Hand) => Promise<void>>> = {
  "nothing → a saved schedule": async ({ page, type, choose, click, save }) => {
    await type(page.locator("#wish-cone"), "6");
    await choose(page.locator("#wish-body"), "stoneware cone 6");
    await click(page.getByRole("button", { name: "Draft this schedule" }));
    await save("Save the schedule");
  },
  "a shipped schedule, its peak changed → saved": async ({ page, type, click, save }) => {
    await click(page.getByRole("button", { name: "crackle tiles" }));
    await type(page.locator("#to-2"), "1180\n");
    await save("Save the schedule");
  },
  "demo log → a saved record": async ({ page, click, save }) => {
    await reviewed(page, click);
    const ring = page.getByRole("group", { name: /Does the piece ring/ });
    await click(ring.getByText("dull", { exact: true }));
    await save("Save these answers");
  },
  "demo firings → the next test, saved": async ({ page, click, save }) => {
    await click(page.getByRole("tab", { name: "Compare" }));
    await click(page.getByRole("button", { name: "Try it with three demo firings" }));
    await page.waitForSelector('#compare-report[aria-busy="false"]');
    await save("Save its schedule (.yaml)");
  },
  "review → next schedule, saved": async ({ page, click, save }) => {
    await reviewed(page, click);
    await click(page.getByRole("button", { name: "Draft this next" }));
    await save("Save the schedule");
  },
};

async function reviewed(page: Page, click: Hand["click"]): Promise<void> {
  await click(page.getByRole("tab", { name: "Review" }));
  await click(page.getByRole("button", { name: /demo firing/ }));
  await page.waitForSelector('#review-report[aria-busy="false"]');
}

async function walked(
  { page, close }: OpenedPage,
  what: string,
  walk: (hand: Hand) => Promise<void>,
): Promise<Flow> {
  const count = { clicks: 0, keys: 0 };
  const click = async (target: Locator) => {
    count.clicks += 1;
    await target.click();
  };
  const hand: Hand = {
    page,
    click,
    type: async (target, text) => {
      await click(target);
      const known = await target.inputValue();
      if (known !== "") await target.press("ControlOrMeta+a");
      count.keys += text.length + (known === "" ? 0 : 1);
      for (const key of text) await target.press(key === "\n" ? "Enter" : key);
    },
    choose: async (target, label) => {
      count.clicks += 2;
      await target.selectOption(label);
    },
    save: async (button) => {
      const saving = page.waitForEvent("download");
      await click(page.getByRole("button", { name: button }));
      await saving;
    },
  };
  const from = performance.now();
  await walk(hand);
  const seconds = (performance.now() - from) / 1000;
  await close();
  return { what, ...count, seconds };
}
