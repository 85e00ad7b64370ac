import axe from "axe-core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { layShipped, rested } from "./browser.ts";
import { freshPages } from "./withPage.ts";

const withPage = freshPages();

/** What the checker finds, one line each; it is run outside of the page's own policy. */
async function complaintsOf(page: Page): Promise<readonly string[]> {
  await page.addScriptTag({ content: axe.source });
  return page.evaluate(async () => {
    const { axe: checker } = window as unknown as {
      axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const { violations } = await checker.run();
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`,
    );
  });
}

/** The checker needs a way in, and colours that are not on their way from one to the other. */
const CHECKED = { bypassCSP: true, reducedMotion: "reduce" } as const;

const SCREENS = [
  { name: "a light screen", options: {} },
  { name: "a dark screen", options: { colorScheme: "dark" } },
  { name: "a telephone", options: { viewport: { width: 390, height: 800 } } },
] as const;

describe.each(SCREENS)("on $name, a checker of accessibility finds nothing", ({ options }) => {
  it("on the empty tables", () =>
    withPage(
      async ({ page }) => {
        for (const table of ["Draft", "Review", "Compare"]) {
          await page.getByRole("tab", { name: table }).click();
          expect(await complaintsOf(page), table).toEqual([]);
        }
      },
      { ...options, ...CHECKED },
    ));

  it("with a schedule on the Draft table, a problem and an offer", () =>
    withPage(
      async ({ page }) => {
        await layShipped(page, "crackle tiles");
        await page.selectOption("#body", "stoneware cone 6");
        await page.fill("#to-2", "12 furlongs");
        await page.press("#to-2", "Enter");
        await rested(page);
        const closed = page.locator(".draft-report:not([open]) > summary");
        if ((await closed.count()) > 0) await closed.click();
        expect(await complaintsOf(page)).toEqual([]);
        await page.getByRole("button", { name: "Mend every finding" }).click();
        await page.getByRole("dialog").waitFor();
        expect(await complaintsOf(page)).toEqual([]);
      },
      { ...options, ...CHECKED },
    ));
});
