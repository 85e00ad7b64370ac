import { cautionsFor } from "../cautions/cautions.ts";
import { adviceText, type Finding, runawayIn, statementText } from "../findings/Finding.ts";
import { inert } from "../text/escape.ts";
import { printDuration } from "../text/quantities.ts";
import { capitalised, visibleWidth, wrap } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Paint, PaintStyle } from "./Block.ts";
import { headText, type WatchFact, type WatchView, watchFacts } from "./watchWords.ts";

/** How a screen is written. */
export interface ScreenOptions {
  readonly unit: TemperatureUnit;
  readonly paint: Paint;
  /** Columns that a line may take, 40 to 80. */
  readonly width: number;
  /** Lines that the whole may take, 12 or more. */
  readonly rows: number;
}

const LABEL_WIDTH = 10;

/** Shorter than this, silence of the log is no news [s] … */
const QUIET_SECONDS = 120;
/** … nor before so many usual steps. */
const QUIET_STEPS = 5;

/**
 * One look at a growing log as lines for a terminal: where the kiln is, what is to be expected, what
 * is wrong, worst first and as much of it as there is room for, how old it is, and last the caution.
 */
export function watchScreen(view: WatchView, options: ScreenOptions): readonly string[] {
  const { width, paint } = options;
  const head = wrap(inert(headText(view)), { width });
  const alarm = alarmLines(view, options);
  const facts = view.state === null ? [] : watchFacts(view, view.state, options.unit);
  // In an emergency nothing else matters but how hot it is.
  const shown = alarm.length === 0 ? facts : facts.slice(0, 1);
  const top = [
    ...alarm,
    ...head.map((line) => paint("heading", line)),
    paint("faint", "─".repeat(Math.max(...head.map(visibleWidth)))),
    ...factLines(shown, options),
  ];
  const foot = [...fileLines(view, options), ...cautionLines(options)];
  const room = options.rows - top.length - foot.length;
  return [...top, ...newsLines(view, options, room), ...foot];
}

/** A kiln that heats by itself: before all else. */
function alarmLines(view: WatchView, { unit, width, paint }: ScreenOptions): readonly string[] {
  const found = runawayIn(view.state?.findings ?? []);
  if (found === null) return [];
  const text = `${statementText(found, unit)} ${adviceText(found, unit)}`;
  return wrap(inert(text), { width }).map((line) => paint("warning", line));
}

function factLines(
  facts: readonly WatchFact[],
  { width, paint }: ScreenOptions,
): readonly string[] {
  const rest = " ".repeat(LABEL_WIDTH);
  return facts.flatMap(({ label, text, style }) => {
    const lines = wrap(inert(text), { width, first: rest, rest });
    return lines.map((line, i) => {
      const left = i === 0 ? label : "";
      const words = line.slice(LABEL_WIDTH);
      const shown = style && i === 0 ? paint(style, words) : words;
      return `${left === "" ? "" : paint("faint", left)}${" ".repeat(LABEL_WIDTH - visibleWidth(left))}${shown}`;
    });
  });
}

/** What is waited for, and the findings; what finds no room is counted. */
function newsLines(view: WatchView, options: ScreenOptions, room: number): readonly string[] {
  const all = view.state?.findings ?? [];
  const alarm = runawayIn(all);
  const findings = all.filter((finding) => finding !== alarm);
  const blocks = [
    ...(view.why === null ? [] : [whyLines(view.why, view, options)]),
    ...findings.map((finding) => findingLines(finding, options)),
  ];
  const shown: string[] = [""];
  let left = blocks.length;
  for (const lines of blocks) {
    const needed = left > 1 ? 1 : 0;
    if (left < blocks.length && shown.length + lines.length + needed > room) break;
    shown.push(...lines);
    left--;
  }
  if (left > 0) shown.push(`${" ".repeat(LABEL_WIDTH)}and ${left} more (undunted review)`);
  return blocks.length === 0 ? [] : shown;
}

/** Before the first reading one waits; after it, a log that cannot be read is a warning that stands. */
function whyLines(why: string, { state }: WatchView, options: ScreenOptions): readonly string[] {
  if (state === null) return saidLines("caution", "Waiting", { text: why, options });
  const text = `${why} → Go and look at the kiln: nothing here says how hot it is now.`;
  return saidLines("warning", "Warning", { text, options });
}

function findingLines(finding: Finding, options: ScreenOptions): readonly string[] {
  const { unit } = options;
  const advice = finding.severity === "note" ? "" : adviceText(finding, unit);
  const zone = finding.zone === null ? "" : `${finding.zone}: `;
  const statement = `${zone}${statementText(finding, unit)}`;
  const text = advice === "" ? statement : `${statement} → ${advice}`;
  return saidLines(finding.severity, capitalised(finding.severity), { text, options });
}

function saidLines(
  style: PaintStyle,
  word: string,
  said: { readonly text: string; readonly options: ScreenOptions },
): readonly string[] {
  const { width, paint } = said.options;
  const rest = " ".repeat(LABEL_WIDTH);
  const [first = "", ...more] = wrap(inert(said.text), { width, first: rest, rest });
  const gap = " ".repeat(LABEL_WIDTH - word.length);
  return [`${paint(style, word)}${gap}${first.slice(LABEL_WIDTH)}`, ...more];
}

/** How old what is shown is, and when the watch will end. */
function fileLines(view: WatchView, { width, paint }: ScreenOptions): readonly string[] {
  const { file, untilStillSeconds } = view;
  const quiet = Math.max(QUIET_SECONDS, QUIET_STEPS * (file.intervalSeconds ?? 0));
  const isQuiet = view.state !== null && file.stillSeconds > quiet;
  const age =
    file.change === "missing"
      ? "The file is not there just now."
      : isQuiet
        ? `No new reading for ${printDuration(file.stillSeconds)}: is the logger still running?`
        : `The log last grew ${printDuration(file.stillSeconds)} ago.`;
  const anew =
    file.restarts === 0
      ? ""
      : ` It has begun anew ${file.restarts === 1 ? "once" : `${file.restarts} times`}: replaced or cut.`;
  const ends = view.isLast
    ? ` Still for ${printDuration(untilStillSeconds)}: the watch ends.`
    : ` Ends when still for ${printDuration(untilStillSeconds)}.`;
  const lines = wrap(`${age}${anew}${ends}`, { width });
  const style = isQuiet || file.change === "missing" ? "caution" : "faint";
  return ["", ...lines.map((line) => paint(style, line))];
}

function cautionLines({ width, paint }: ScreenOptions): readonly string[] {
  const attendance = cautionsFor({ kiln: true }).find(({ topic }) => topic === "attendance");
  if (attendance === undefined) throw new RangeError("watchScreen: no caution for attendance");
  return wrap(attendance.text, { width }).map((line) => paint("strong", line));
}
