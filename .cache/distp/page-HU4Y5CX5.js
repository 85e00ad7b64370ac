import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  writeOutput
} from "./chunk-QVADD2WS.js";
import {
  EXIT,
  answer,
  refuse,
  say
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import "./chunk-2NHG2YQ4.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/cli/commands/page.ts
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";

// src/node/openInBrowser.ts
var OPENERS = {
  darwin: ["open"],
  win32: ["rundll32", "url.dll,FileProtocolHandler"]
};
var OTHER_OPENER = ["xdg-open"];
var PATIENCE_MS = 1500;
function openInBrowser(address) {
  const { spawn } = process.getBuiltinModule("node:child_process");
  const [program, ...before] = OPENERS[process.platform] ?? OTHER_OPENER;
  return new Promise((resolve) => {
    const child = spawn(program, [...before, address], {
      detached: true,
      stdio: "ignore"
    });
    const timer = setTimeout(() => done(true), PATIENCE_MS);
    const done = (opened) => {
      clearTimeout(timer);
      child.unref();
      resolve(opened);
    };
    child.on("error", () => done(false));
    child.on("exit", (code) => done(code === 0));
  });
}

// src/cli/commands/page.ts
var PAGE = new URL("./undunted.html", import.meta.url);
async function run(options) {
  const page = await readPage();
  if (!page.ok) return refuse(page.problems, options);
  if (options.output === void 0) return open(options);
  if (options.output === "-") {
    answer(page.value);
    return EXIT.fine;
  }
  const written = await writeOutput(options.output, page.value, { force: options.force === true });
  if (!written.ok) return refuse(written.problems, options);
  say(`wrote ${written.value}; open it in any browser, it needs no network`, options);
  return EXIT.fine;
}
async function open(options) {
  answer(PAGE.href);
  if (!await openInBrowser(PAGE.href))
    say(
      "no browser could be opened from here; open this address in one, or write the page with -o",
      options
    );
  return EXIT.fine;
}
async function readPage() {
  try {
    return ok(await readFile(PAGE, "utf8"));
  } catch {
    return failed({
      code: "page/not-built",
      where: fileURLToPath(PAGE),
      what: "the page is not there",
      expected: "undunted.html beside the command",
      fix: "install undunted anew, or npm run build"
    });
  }
}
export {
  run
};
