import { hasWarning } from "../../core/findings/ordered.ts";
import type { Problem } from "../../core/problem.ts";
import { followFile } from "../../node/followFile.ts";
import { EXIT, refuse, say } from "../conversation.ts";
import { type WatchGiven, type WatchOptions, watchGiven } from "../watchInput.ts";
import { type Looked, lookedAt, NOTHING_LOOKED, viewOf } from "../watchLook.ts";
import { type ShowOptions, showLooks } from "../watchShow.ts";

interface Options extends WatchOptions, ShowOptions {}

/** Exit code after Ctrl-C, as shells have it: 128 and the number of the signal. */
const INTERRUPTED = 130;

/** `undunted watch LOG`: follows a growing log until it has been still for long enough. */
export async function run(path: string, options: Options): Promise<number> {
  const given = await watchGiven(path, options);
  if (!given.ok) return refuse(given.problems, options);
  for (const remark of given.value.remarks) say(remark, options);
  const stop = new AbortController();
  const interrupted = () => stop.abort();
  process.once("SIGINT", interrupted);
  try {
    return await watch(path, { given: given.value, options, signal: stop.signal });
  } finally {
    process.removeListener("SIGINT", interrupted);
  }
}

async function watch(
  path: string,
  at: { readonly given: WatchGiven; readonly options: Options; readonly signal: AbortSignal },
): Promise<number> {
  const { given, options, signal } = at;
  const show = showLooks(options);
  let looked: Looked = NOTHING_LOOKED;
  for await (const look of followFile(path, { ...given, signal })) {
    if (!look.ok) return refuse(look.problems, options);
    const now = lookedAt(look.value, looked, given);
    if (!now.ok) return refuse(now.problems, options);
    looked = now.value;
    show(viewOf(look.value, looked, given), looked.unit);
  }
  if (signal.aborted) return INTERRUPTED;
  if (looked.state === null) return refuse([nothingCame(path, options)], options);
  const isBlind = looked.why !== null;
  return isBlind || hasWarning(looked.state.findings) ? EXIT.no : EXIT.fine;
}

function nothingCame(path: string, { untilStill }: Options): Problem {
  return {
    code: "watch/nothing-came",
    where: path,
    what: `it was still for ${untilStill} and gave no readings`,
    expected: "a log that begins to grow within the time of --until-still",
    fix: "start the logger, check the name of its file, or wait longer with --until-still 3h",
  };
}
