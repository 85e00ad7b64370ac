import type { Problem } from "../problem.ts";
import { HARD_SPACE, visibleWidth } from "./wrap.ts";

/** Columns of a terminal that nobody has widened. */
const COLUMNS = 80;

/** Stand before what goes on from the line above. */
const UNDER_PLACE = " ".repeat(4);
const UNDER_WORDS = " ".repeat(12);

/** What stands in quotation marks and is no longer than this is typed or read in one piece. */
const QUOTED = /"[^"\n]{1,60}"/g;

/** An option keeps its value beside it. */
const OPTION_AND_VALUE = /(?<=(?:^|\s)--[a-z][a-z-]*) (?=[^\s-])/g;

/**
 * A problem as a person at a terminal reads it: where and what, what is expected, what to try, each
 * broken between words at 80 columns and hung under its first line; the code stands last. Names of
 * files, quotations and options with their values are never broken, however long.
 */
export function problemLines({ where, what, expected, fix, code }: Problem): readonly string[] {
  const tried = broken("  try       ", fix, UNDER_WORDS);
  const end = tried.at(-1)!;
  const last = `${end}     (${code})`;
  return [
    ...broken(`${where}: `, what, UNDER_PLACE),
    ...broken("  expected  ", expected, UNDER_WORDS),
    ...tried.slice(0, -1),
    ...(visibleWidth(last) <= COLUMNS ? [last] : [end, `${UNDER_WORDS}(${code})`]),
  ];
}

function broken(first: string, text: string, rest: string): readonly string[] {
  if (visibleWidth(first) + visibleWidth(text) <= COLUMNS) return [`${first}${text}`];
  const lines: string[] = [];
  let line = first.trimEnd();
  let gap = first.slice(line.length);
  for (const word of unbroken(text).split(" ")) {
    if (visibleWidth(line + gap + word) <= COLUMNS) line += gap + word;
    else {
      lines.push(line);
      line = rest + word;
    }
    gap = " ";
  }
  return [...lines, line].map((each) => each.replaceAll(HARD_SPACE, " "));
}

/** The text with hard spaces where no line may end. */
function unbroken(text: string): string {
  return text
    .replace(QUOTED, (quoted) => quoted.replaceAll(" ", HARD_SPACE))
    .replace(OPTION_AND_VALUE, HARD_SPACE);
}
