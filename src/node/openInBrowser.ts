/** What opens an address on each platform, started without a shell. */
const OPENERS: Readonly<Record<string, readonly string[]>> = {
  darwin: ["open"],
  win32: ["rundll32", "url.dll,FileProtocolHandler"],
};
const OTHER_OPENER = ["xdg-open"];

/** How long an opener may take to say that it is not there, or that it cannot [ms]. */
const PATIENCE_MS = 1500;

/**
 * Opens an address with what the platform has for it, and does not wait for the browser.
 * The module that starts programs is asked for only here: loading it would slow every command.
 *
 * @returns false when there is no opener, or it says at once that it could not.
 */
export function openInBrowser(address: string): Promise<boolean> {
  const { spawn } = process.getBuiltinModule("node:child_process");
  const [program, ...before] = OPENERS[process.platform] ?? OTHER_OPENER;
  return new Promise((resolve) => {
    const child = spawn(program as string, [...before, address], {
      detached: true,
      stdio: "ignore",
    });
    const timer = setTimeout(() => done(true), PATIENCE_MS);
    const done = (opened: boolean) => {
      clearTimeout(timer);
      child.unref();
      resolve(opened);
    };
    child.on("error", () => done(false));
    child.on("exit", (code) => done(code === 0));
  });
}
