import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
import type { Batch, BatchDone } from "../node/orderedPool.ts";
import { type LogItem, type LogOutcome, type LogTask, logWork } from "./logWork.ts";

/** What a worker of ours is started with; threads of others that load this file have none. */
interface WorkerStart {
  readonly unduntedTask: LogTask;
}

/** Starts a thread that does a task on batches of logs: it loads this very file. */
export function startLogWorker(task: LogTask): Worker {
  const start: WorkerStart = { unduntedTask: task };
  return new Worker(new URL(import.meta.url), { workerData: start });
}

if (!isMainThread && isStart(workerData)) serve(workerData.unduntedTask);

function isStart(data: unknown): data is WorkerStart {
  return typeof data === "object" && data !== null && "unduntedTask" in data;
}

function serve(task: LogTask): void {
  const work = logWork(task);
  let last: Promise<void> = Promise.resolve();
  parentPort?.on("message", ({ items }: Batch<LogItem>) => {
    last = last.then(async () => {
      const outcomes: LogOutcome[] = [];
      for (const item of items) outcomes.push(await (await work)(item));
      parentPort?.postMessage({ outcomes } satisfies BatchDone<LogOutcome>);
    });
  });
}
