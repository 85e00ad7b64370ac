import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  faultOutcome,
  logWork,
  unreadLine
} from "./chunk-AXAUT6A2.js";
import {
  answerSlowly,
  complain,
  say
} from "./chunk-QOSRWPWR.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/node/logPaths.ts
import { readdir, stat } from "node:fs/promises";
import { extname, join } from "node:path";
var NO_LOGS = new Set(
  ".yaml .yml .json .jsonl .html .htm .md .pdf .wav .flac .mp3 .png .jpg .jpeg .svg .gif .webp .heic .zip .sql .parquet".split(
    " "
  )
);
var ABOUT_FOLDER = /^(?:readme|licen[cs]e|notes?|changelog)(?:\.\w+)?$/i;
async function logPaths(given) {
  const paths = [];
  const remarks = [];
  const problems = [];
  for (const path of given) {
    const inside = await isFolder(path) ? await logsIn(path) : null;
    if (inside === null) paths.push(path);
    else if (inside.logs.length === 0) problems.push(noLogs(path));
    else {
      paths.push(...inside.logs);
      remarks.push(folderRemark(path, inside));
    }
  }
  return problems.length > 0 ? failed(...problems) : ok({ paths, remarks });
}
async function isFolder(path) {
  if (path === "-") return false;
  return stat(path).then(
    (facts) => facts.isDirectory(),
    () => false
  );
}
async function logsIn(folder) {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => null);
  if (entries === null) return null;
  const seen = entries.filter(({ name }) => !name.startsWith("."));
  const folders = seen.filter((entry) => entry.isDirectory()).length;
  const names = seen.filter((entry) => !entry.isDirectory() && isLog(entry.name));
  return {
    logs: names.map(({ name }) => name).sort().map((name) => join(folder, name)),
    others: seen.length - folders - names.length,
    folders
  };
}
function isLog(name) {
  return !NO_LOGS.has(extname(name).toLowerCase()) && !ABOUT_FOLDER.test(name);
}
function folderRemark(path, { logs, others, folders }) {
  const aside = [
    ...others > 0 ? [`${counted(others, "file")} of another kind`] : [],
    ...folders > 0 ? [`${counted(folders, "folder")} inside it`] : []
  ];
  const left = aside.length === 0 ? "" : `; left aside: ${aside.join(", ")}`;
  return `${path}: ${counted(logs.length, "log")}${left}`;
}
function counted(count, thing) {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}
function noLogs(path) {
  return {
    code: "file/folder",
    where: path,
    what: "it is a folder, and there are no logs in it",
    expected: "a log, or a folder with logs in it (.csv, .txt, .tsv, .gz, \u2026)",
    fix: "name a file, or the folder that holds the logs themselves"
  };
}

// src/cli/manyLogs.ts
import { availableParallelism } from "node:os";
var FEWEST_FOR_POOL = 8;
var MOST_WORKERS = 256;
async function* manyLogs(paths, task, workers) {
  const items = paths.map(
    (path, at) => ({ path, isEnd: at === 0 || at === paths.length - 1 })
  );
  if (paths.includes("-") || workers === null && paths.length < FEWEST_FOR_POOL) {
    const work = await logWork(task);
    for (const item of items) yield await work(item);
    return;
  }
  const { orderedPool } = await import("./orderedPool-OKRDPZ2Z.js");
  const { startLogWorker } = await import("./logWorker-24EKFLN3.js");
  yield* orderedPool(items, {
    workers: Math.min(workers ?? availableParallelism(), paths.length),
    start: () => startLogWorker(task),
    lost: faultOutcome
  });
}
function workersFrom(text) {
  if (text === void 0) return ok(null);
  const count = /^\d{1,3}$/.test(text) ? Number(text) : 0;
  if (count >= 1 && count <= MOST_WORKERS) return ok(count);
  return failed({
    code: "command/workers",
    where: "--workers",
    what: `"${text}" is not a number of worker threads`,
    expected: `a whole number from 1 to ${MOST_WORKERS}`,
    fix: "leave it out for one a core"
  });
}

// src/cli/progress.ts
var EVERY_MS = 200;
function progress(total, to, now) {
  const began = now();
  let done = 0;
  let shown = began;
  let isShown = false;
  const clear = () => {
    if (isShown) to?.write("\r\x1B[K");
    isShown = false;
  };
  return {
    clear,
    step: () => {
      done++;
      const at = now();
      if (to === null || at - shown < EVERY_MS || done >= total) return;
      clear();
      const left = (at - began) / done * (total - done);
      to.write(`${done} of ${total} logs, about ${timeLeft(left / 1e3)} left`);
      shown = at;
      isShown = true;
    }
  };
}
function timeLeft(seconds) {
  return seconds < 90 ? `${Math.ceil(seconds)} s` : `${Math.round(seconds / 60)} min`;
}

// src/cli/tellLogs.ts
async function tellLogs(outcomes, ways) {
  const { total, options } = ways;
  const looked = process.stderr.isTTY === true && !options.quiet ? process.stderr : null;
  const shown = progress(total, looked, () => performance.now());
  const told = { exit: 0, unread: 0, texts: 0 };
  for await (const outcome of outcomes) {
    await tellOne(outcome, { ways, told, clear: shown.clear });
    shown.step();
  }
  shown.clear();
  if (total > 1 && told.unread > 0)
    say(`${told.unread} of ${total} logs could not be read; the others were.`, options);
  return told.exit;
}
async function tellOne(outcome, at) {
  const { ways, told, clear } = at;
  const { options } = ways;
  const isUnread = outcome.problems.length > 0;
  const text = isUnread && options.jsonLines ? await unreadLine(outcome) : await ways.textOf(outcome);
  if (text !== "" || isUnread || outcome.remarks.length > 0) clear();
  for (const remark of outcome.remarks) say(remark, options);
  if (isUnread) {
    if (told.unread++ > 0) process.stderr.write("\n");
    complain(outcome.problems);
  }
  if (text !== "") {
    const apart = options.jsonLines || told.texts++ === 0 ? "" : "\n";
    await answerSlowly(apart + text);
  }
  told.exit = Math.max(told.exit, outcome.exit);
}

export {
  logPaths,
  manyLogs,
  workersFrom,
  tellLogs
};
