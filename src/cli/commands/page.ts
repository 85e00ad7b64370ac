import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { failed, ok, type Result } from "../../core/problem.ts";
import { writeOutput } from "../../node/writeOutput.ts";
import { answer, type CommonOptions, EXIT, refuse, say } from "../conversation.ts";

interface PageOptions extends CommonOptions {
  readonly output?: string;
}

/** The page, written by the build beside the command. */
const PAGE = new URL("./undunted.html", import.meta.url);

/** `undunted page`: opens the offline page, or writes it; its address is the answer. */
export async function run(options: PageOptions): Promise<number> {
  const page = await readPage();
  if (!page.ok) return refuse(page.problems, options);
  if (options.output === undefined) return open(options);
  if (options.output === "-") {
    answer(page.value);
    return EXIT.fine;
  }
  const written = await writeOutput(options.output, page.value, { force: options.force === true });
  if (!written.ok) return refuse(written.problems, options);
  say(`wrote ${written.value}; open it in any browser, it needs no network`, options);
  return EXIT.fine;
}

async function open(options: PageOptions): Promise<number> {
  answer(PAGE.href);
  if (!(await openInBrowser(PAGE.href)))
    say(
      "no browser could be opened from here; open this address in one, or write the page with -o",
      options,
    );
  return EXIT.fine;
}

async function readPage(): Promise<Result<string>> {
  try {
    return ok(await readFile(PAGE, "utf8"));
  } catch {
    return failed({
      code: "page/not-built",
      where: fileURLToPath(PAGE),
      what: "the page is not there",
      expected: "undunted.html beside the command",
      fix: "install undunted anew, or npm run build",
    });
  }
}

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
function openInBrowser(address: string): Promise<boolean> {
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
