import { failed, type Result } from "../../core/problem.ts";
import {
  type Answered,
  type Asked,
  JOBS,
  type JobName,
  type Message,
  type Order,
  type Progress,
} from "./jobs.ts";

/** One place where one job at a time is done; a new job there ends the one before. */
export interface Lane {
  /**
   * Does a job away from the screen.
   * @returns its answer; null when another job or `stop` ended it before; `page/fault` when it broke.
   */
  readonly run: <Name extends JobName>(
    job: Name,
    asked: Asked<Name>,
    progress?: Progress,
  ) => Promise<Result<Answered<Name>> | null>;
  /** Ends the job that is under way. */
  readonly stop: () => void;
}

/** A lane with a worker of its own, started when it is first needed. */
export function hire(): Lane {
  let worker: Worker | null = null;
  let end: (() => void) | null = null;
  const stop = () => {
    if (end === null) return;
    worker?.terminate();
    worker = null;
    end();
    end = null;
  };
  return {
    stop,
    run: (job, asked, progress = () => {}) => {
      stop();
      worker ??= newWorker();
      const hired = worker;
      const order: Order = { job, asked };
      if (hired === null) return Promise.resolve(answerOf(worked(order, () => {})));
      return new Promise((resolve) => {
        end = () => resolve(null);
        const done = (answer: Result<never> | Result<Answered<typeof job>>) => {
          end = null;
          resolve(answer);
        };
        hired.onmessage = ({ data }: MessageEvent<Message>) => {
          if (data.kind === "progress") progress(data.fraction, data.at);
          else done(answerOf(data));
        };
        hired.onerror = (event) => {
          worker = null;
          done(fault(event.message));
        };
        hired.postMessage(order);
      });
    },
  };
}

/** A worker of the page's own script; null where the browser allows none, and the page works itself. */
function newWorker(): Worker | null {
  const script = document.getElementById("work")?.textContent;
  if (!script) return null;
  try {
    const address = URL.createObjectURL(new Blob([script], { type: "text/javascript" }));
    const worker = new Worker(address);
    URL.revokeObjectURL(address);
    return worker;
  } catch {
    return null;
  }
}

function answerOf<T>(message: Message): Result<T> {
  if (message.kind === "answer") return message.answer as Result<T>;
  return fault(message.kind === "fault" ? message.why : "no answer");
}

function fault(why: string): Result<never> {
  return failed({
    code: "page/fault",
    where: "this page",
    what: `a fault of its own (${why})`,
    expected: "no such thing",
    fix: "undo the last change, and report this line",
  });
}

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
