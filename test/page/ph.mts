import { openPage, sharedBrowser } from "./browser.ts";

const b = await sharedBrowser();
for (let i = 0; i < 4; i++) {
  let t = performance.now();
  const { page, close } = await openPage(b);
  const t1 = performance.now() - t;
  t = performance.now();
  await page.getByRole("tab", { name: "Review" }).click();
  await page.getByRole("button", { name: /demo firing/ }).click();
  await page.waitForSelector('#review-report[aria-busy="false"]');
  const t2 = performance.now() - t;
  t = performance.now();
  await page.getByRole("tab", { name: "Compare" }).click();
  await page.getByRole("button", { name: "Try it with three demo firings" }).click();
  await page.waitForSelector('#compare-report[aria-busy="false"]');
  const t3 = performance.now() - t;
  t = performance.now();
  await close();
  console.log(t1.toFixed(), t2.toFixed(), t3.toFixed());
}
await b.close();
