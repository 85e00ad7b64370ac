import { availableParallelism } from "node:os";
import { failed, ok, type Result } from "../core/problem.ts";
import { faultOutcome, type LogItem, type LogOutcome, type LogTask, logWork } from "./logWork.ts";

/** With fewer logs than this, starting workers takes longer than they save. */
const FEWEST_FOR_POOL = 8;
/** More workers than this only wait for one another. */
const MOST_WORKERS = 256;

/**
 * What each log comes to, in the order of the paths: few logs one after the other, many on worker
 * threads. Standard input is read here.
 * @param workers How many threads; null for one a core.
 */
export async function* manyLogs(
  paths: readonly string[],
  task: LogTask,
  workers: number | null,
): AsyncGenerator<LogOutcome> {
  const items = paths.map(
    (path, at): LogItem => ({ path, isEnd: at === 0 || at === paths.length - 1 }),
  );
  if (paths.includes("-") || (workers === null && paths.length < FEWEST_FOR_POOL)) {
    const work = await logWork(task);
    for (const item of items) yield await work(item);
    return;
  }
  const { orderedPool } = await import("../node/orderedPool.ts");
  const { startLogWorker } = await import("./logWorker.ts");
  yield* orderedPool(items, {
    workers: Math.min(workers ?? availableParallelism(), paths.length),
    start: () => startLogWorker(task),
    lost: faultOutcome,
  });
}

/** Worker threads from `--workers 4`; null when it is left out. */
export function workersFrom(text: string | undefined): Result<number | null> {
  if (text === undefined) return ok(null);
  const count = /^\d{1,3}$/.test(text) ? Number(text) : 0;
  if (count >= 1 && count <= MOST_WORKERS) return ok(count);
  return failed({
    code: "command/workers",
    where: "--workers",
    what: `"${text}" is not a number of worker threads`,
    expected: `a whole number from 1 to ${MOST_WORKERS}`,
    fix: "leave it out for one a core",
  });
}
