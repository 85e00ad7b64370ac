import { hasWarning } from "../../core/findings/Finding.ts";
import type { Problem } from "../../core/problem.ts";
import { watchDocument } from "../../core/reports/documents/watchDocument.ts";
import { watchScreen } from "../../core/reports/watchScreen.ts";
import type { WatchView } from "../../core/reports/watchWords.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { followFile } from "../../node/followFile.ts";
import {
  answer,
  answerJsonLine,
  type CommonOptions,
  EXIT,
  paintFor,
  refuse,
  say,
} from "../conversation.ts";
import {
  type Looked,
  lookedAt,
  NOTHING_LOOKED,
  viewOf,
  type WatchGiven,
  type WatchOptions,
  watchGiven,
} from "../watchInput.ts";

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

/** How looks are shown. */
interface ShowOptions extends CommonOptions {}

/** Shows one look; the unit is the log's. */
type ShowLook = (view: WatchView, unit: TemperatureUnit) => void;

const WIDEST = 80;
const NARROWEST = 40;
const MOST_ROWS = 24;
const LEAST_ROWS = 12;

/**
 * Looks as JSON lines, as one screen that is drawn over itself, or, where the output is no terminal
 * or no control codes are wanted, as a block below the last whenever something is new.
 */
function showLooks(options: ShowOptions): ShowLook {
  if (options.jsonLines) return (view) => answerJsonLine(watchDocument(view));
  return drawsOver(options) ? screenShow(options) : blockShow(options);
}

function screenShow(options: ShowOptions): ShowLook {
  let drawn = 0;
  return (view, unit) => {
    const { columns = WIDEST, rows = MOST_ROWS } = process.stdout;
    const lines = watchScreen(view, {
      unit: options.unit ?? unit,
      paint: paintFor(options),
      width: Math.max(NARROWEST, Math.min(WIDEST, columns)),
      rows: Math.max(LEAST_ROWS, Math.min(MOST_ROWS, rows - 1)),
    });
    const over = drawn === 0 ? "" : `\u001b[${drawn}A\u001b[0J`;
    answer(`${over}${lines.join("\n")}`);
    drawn = lines.length;
  };
}

function blockShow(options: ShowOptions): ShowLook {
  let last = "";
  return (view, unit) => {
    const isNew = view.file.change === "grown" || view.file.change === "anew";
    const about = `${view.file.change === "missing"} ${view.why}`;
    if (!isNew && !view.isLast && about === last) return;
    const lines = watchScreen(view, {
      unit: options.unit ?? unit,
      paint: paintFor(options),
      width: WIDEST,
      rows: MOST_ROWS,
    });
    answer(`${last === "" ? "" : "\n"}${lines.join("\n")}`);
    last = about;
  };
}

/** Whether the cursor may be moved: a terminal that understands it, and a reader who wants it. */
function drawsOver(options: ShowOptions): boolean {
  const { NO_COLOR, TERM } = process.env;
  return process.stdout.isTTY === true && TERM !== "dumb" && !NO_COLOR && options.color !== false;
}
