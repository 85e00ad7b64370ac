import bundled from "@sparticuz/chromium";

/** Unpacks the bundled browser once, before any worker starts it: two that unpack at once break each other's. */
export default async function unpackBrowser(): Promise<void> {
  if (!process.env.CHROMIUM_PATH) await bundled.executablePath();
}
