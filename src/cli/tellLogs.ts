import { answerSlowly, type CommonOptions, complain, say } from "./conversation.ts";
import { type LogOutcome, unreadLine } from "./logWork.ts";

/** How what many logs came to is told. */
export interface TellWays {
  readonly total: number;
  readonly options: CommonOptions;
  /** What goes to standard output for a log that could be read; empty for nothing. */
  readonly textOf: (outcome: LogOutcome) => string | Promise<string>;
}

/**
 * Tells what each log came to as soon as its turn comes, and keeps nothing: the answer on standard
 * output; remarks, problems and how many could not be read on standard error.
 * @returns the greatest exit code.
 */
export async function tellLogs(
  outcomes: AsyncIterable<LogOutcome>,
  ways: TellWays,
): Promise<number> {
  const { total, options } = ways;
  const looked = process.stderr.isTTY === true && !options.quiet ? process.stderr : null;
  const shown = progress(total, looked, () => performance.now());
  const told: Told = { exit: 0, unread: 0, texts: 0 };
  for await (const outcome of outcomes) {
    await tellOne(outcome, { ways, told, clear: shown.clear });
    shown.step();
  }
  shown.clear();
  if (total > 1 && told.unread > 0)
    say(`${told.unread} of ${total} logs could not be read; the others were.`, options);
  return told.exit;
}

/** What was told so far. */
interface Told {
  exit: number;
  unread: number;
  texts: number;
}

async function tellOne(
  outcome: LogOutcome,
  at: { readonly ways: TellWays; readonly told: Told; readonly clear: () => void },
): Promise<void> {
  const { ways, told, clear } = at;
  const { options } = ways;
  const isUnread = outcome.problems.length > 0;
  const text =
    isUnread && options.jsonLines ? await unreadLine(outcome) : await ways.textOf(outcome);
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

/** How far a long run has come, on one line of a terminal that is drawn over itself. */
interface Progress {
  /** One more is done. */
  readonly step: () => void;
  /** Takes the line away, so that something else can be written. */
  readonly clear: () => void;
}

/** Nothing is shown of a run shorter than this [ms], and then no more often. */
const EVERY_MS = 200;

/**
 * The progress of so many logs: how many are done, and how long the rest will take at that pace.
 * @param to Where it is drawn; null where nobody looks, and then nothing is drawn.
 * @param now A clock that only runs forward [ms].
 */
export function progress(
  total: number,
  to: { readonly write: (text: string) => unknown } | null,
  now: () => number,
): Progress {
  const began = now();
  let done = 0;
  let shown = began;
  let isShown = false;
  const clear = () => {
    if (isShown) to?.write("\r\u001b[K");
    isShown = false;
  };
  return {
    clear,
    step: () => {
      done++;
      const at = now();
      if (to === null || at - shown < EVERY_MS || done >= total) return;
      clear();
      const left = ((at - began) / done) * (total - done);
      to.write(`${done} of ${total} logs, about ${timeLeft(left / 1000)} left`);
      shown = at;
      isShown = true;
    },
  };
}

function timeLeft(seconds: number): string {
  return seconds < 90 ? `${Math.ceil(seconds)} s` : `${Math.round(seconds / 60)} min`;
}
