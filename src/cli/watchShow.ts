import { watchDocument } from "../core/reports/documents/watchDocument.ts";
import type { WatchView } from "../core/reports/WatchView.ts";
import { watchScreen } from "../core/reports/watchScreen.ts";
import type { TemperatureUnit } from "../core/units/temperature.ts";
import { answer, answerJsonLine, type CommonOptions, paintFor } from "./conversation.ts";

/** How looks are shown. */
export interface ShowOptions extends CommonOptions {}

/** Shows one look; the unit is the log's. */
export type ShowLook = (view: WatchView, unit: TemperatureUnit) => void;

const WIDEST = 80;
const NARROWEST = 40;
const MOST_ROWS = 24;
const LEAST_ROWS = 12;

/**
 * Looks as JSON lines, as one screen that is drawn over itself, or, where the output is no terminal
 * or no control codes are wanted, as a block below the last whenever something is new.
 */
export function showLooks(options: ShowOptions): ShowLook {
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
