import type { Result } from "../../core/problem.ts";
import { JOBS, type Message, type Order, type Progress } from "./jobs.ts";

/** Does one job; what it throws is a fault of ours and becomes a message too. */
export function worked(order: Order, tell: (message: Message) => void): Message {
  const progress: Progress = (fraction, at) => tell({ kind: "progress", fraction, at });
  try {
    const job = JOBS[order.job] as (asked: unknown, progress: Progress) => Result<unknown>;
    return { kind: "answer", answer: job(order.asked, progress) };
  } catch (error) {
    return { kind: "fault", why: error instanceof Error ? error.message : String(error) };
  }
}
