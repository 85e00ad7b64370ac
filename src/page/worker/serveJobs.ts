import { worked } from "./hire.ts";
import type { Message, Order } from "./jobs.ts";

/** The side of the page that a worker sees; its own types would clash with those of a window. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<Order>) => void) | null;
  readonly postMessage: (message: Message) => void;
}

/** Makes this worker do the jobs that it is sent, one after the other. */
export function serveJobs(): void {
  const scope = globalThis as unknown as WorkerScope;
  scope.onmessage = ({ data }) => scope.postMessage(worked(data, scope.postMessage));
}
