import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { BenchRow } from "./speed/benchTable.ts";
import { minuteLog } from "./speed/minuteLog.ts";

/** One review of many logs by so many workers. */
interface ManyRun {
  readonly workers: number;
  readonly wallSeconds: number;
  /** Of all threads. */
  readonly cpuSeconds: number;
}

/** How many logs are reviewed by one worker, and by one a core. */
interface ManyLogsMeasured {
  readonly logs: number;
  readonly one: ManyRun;
  readonly all: ManyRun;
  /** Wall time of one worker over that of all. */
  readonly faster: number;
}

const COMMAND = join(import.meta.dirname, "../../dist/bin.js");
const RUNS = 3;

/** Says what the process has used when it ends; worker threads load it as well and say nothing. */
const CPU_AT_EXIT = `data:text/javascript,${encodeURIComponent(
  'import {isMainThread} from "node:worker_threads"; if (isMainThread) process.on("exit", () => { const {user, system} = process.cpuUsage(); process.stderr.write("\\ncpu " + (user + system) / 1e6 + "\\n"); });',
)}`;

/**
 * Reviews so many logs of 1 440 rows by the built command, as lines of JSON: the best of three runs
 * each by one worker and by one a core, in turn, since other work on the machine only slows.
 * @throws RangeError when a run does not give a line for each log.
 */
function manyLogs(logs = 1000): ManyLogsMeasured {
  const folder = mkdtempSync(join(tmpdir(), "many-logs-"));
  try {
    for (let i = 0; i < logs; i++)
      writeFileSync(join(folder, `${String(i).padStart(5, "0")}.csv`), minuteLog(i));
    const cores = availableParallelism();
    const runs = Array.from({ length: RUNS }, () => [
      reviewed(folder, logs, 1),
      reviewed(folder, logs, cores),
    ]).flat();
    const best = (workers: number) =>
      runs
        .filter((run) => run.workers === workers)
        .reduce((a, b) => (b.wallSeconds < a.wallSeconds ? b : a));
    const [one, all] = [best(1), best(cores)];
    return { logs, one, all, faster: one.wallSeconds / all.wallSeconds };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function reviewed(folder: string, logs: number, workers: number): ManyRun {
  const began = performance.now();
  const child = spawnSync(
    process.execPath,
    ["--import", CPU_AT_EXIT, COMMAND, "review", folder, "--json-lines", "--workers", `${workers}`],
    { encoding: "utf8", maxBuffer: 2 ** 30 },
  );
  const wallSeconds = (performance.now() - began) / 1000;
  const lines = child.stdout.split("\n").length - 1;
  if (lines !== logs) throw new RangeError(`${lines} lines of ${logs} logs: ${child.stderr}`);
  const cpuSeconds = Number(/cpu ([\d.]+)/.exec(child.stderr)?.[1]);
  return { workers, wallSeconds, cpuSeconds };
}

function said({ workers, wallSeconds, cpuSeconds }: ManyRun): string {
  const busy = cpuSeconds / wallSeconds;
  return `${workers} ${workers === 1 ? "worker" : "workers"}: ${wallSeconds.toFixed(1)} s, ${cpuSeconds.toFixed(1)} s of processor, ${busy.toFixed(2)} cores busy`;
}

/** What the bench says of it; the bar is for a machine with nothing else to do. */
export function manyLogsRow(): BenchRow {
  const { logs, one, all, faster } = manyLogs();
  return {
    what: `review --json-lines, ${logs} logs of 1 440 rows: all cores`,
    took: said(all),
    against: said(one),
    ratio: faster,
    bar: all.workers === 2 ? { kind: "at least", value: 1.8 } : null,
  };
}

/** Prints it: `tsx test/bench/manyLogs.ts [logs]`. */
function main(): void {
  const { logs, one, all, faster } = manyLogs(Number(process.argv[2] ?? 1000));
  console.log(`${logs} logs of 1440 rows, review --json-lines`);
  for (const run of [one, all]) console.log(`  ${said(run)}`);
  console.log(`  ${faster.toFixed(2)} times as fast`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) main();
