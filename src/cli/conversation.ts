import { once } from "node:events";
import { styleText } from "node:util";
import type { Problem } from "../core/problem.ts";
import type { Paint } from "../core/reports/Block.ts";
import { problemLines } from "../core/reports/reportText.ts";
import { hiddenEscaped, inert } from "../core/text/escape.ts";

/** Options that every command takes. */
export interface CommonOptions {
  readonly json?: boolean;
  readonly jsonLines?: boolean;
  readonly html?: string;
  readonly chart?: string;
  readonly unit?: "C" | "F";
  readonly color?: boolean;
  readonly quiet?: boolean;
  readonly force?: boolean;
  readonly more?: readonly string[];
}

/** Exit codes: fine; ran and the answer is no; wrong use or unreadable input; our bug. */
export const EXIT = { fine: 0, no: 1, wrongUse: 2, ourBug: 70 } as const;

/** Prints the answer, and nothing else, on standard output. */
export function answer(text: string): void {
  process.stdout.write(text.endsWith("\n") ? text : `${text}\n`);
}

/** Prints one JSON document on standard output; nothing in it can command a terminal. */
export function answerJson(document: unknown): void {
  answer(hiddenEscaped(JSON.stringify(document, null, 2)));
}

/** Prints one JSON document as a line of standard output. */
export function answerJsonLine(document: unknown): void {
  answer(hiddenEscaped(JSON.stringify(document)));
}

/** Says something on standard error, unless asked to be quiet. */
export function say(text: string, options: CommonOptions): void {
  if (!options.quiet) process.stderr.write(`${inert(text)}\n`);
}

/** Says several lines on standard error, each made harmless, however quiet it is to be. */
export function sayLines(text: string): void {
  process.stderr.write(`${text.split("\n").map(inert).join("\n")}\n`);
}

/** Shows problems on standard error, and as the one document with `--json`, as a line with `--json-lines`. */
export function refuse(problems: readonly Problem[], options: CommonOptions): number {
  const document = { schemaVersion: 1, ok: false, problems };
  if (options.json) answerJson(document);
  else if (options.jsonLines) answerJsonLine(document);
  return complain(problems);
}

/** Shows problems on standard error alone. */
export function complain(problems: readonly Problem[]): number {
  const texts = problems.map((problem) => problemLines(harmless(problem)).join("\n"));
  process.stderr.write(`${texts.join("\n\n")}\n`);
  return EXIT.wrongUse;
}

/** The same problem with nothing in it that could command a terminal or break its lines. */
function harmless(problem: Problem): Problem {
  return {
    code: problem.code,
    what: inert(problem.what),
    where: inert(problem.where),
    expected: inert(problem.expected),
    fix: inert(problem.fix),
  };
}

const STYLES = {
  heading: ["bold"],
  strong: ["bold"],
  faint: ["dim"],
  warning: ["red", "bold"],
  caution: ["yellow"],
  note: ["cyan"],
  good: ["green"],
} as const;

/** Prints as {@link answer}, and waits where the reader of standard output is slower than we are. */
export async function answerSlowly(text: string): Promise<void> {
  const goesOn = process.stdout.write(text.endsWith("\n") ? text : `${text}\n`);
  if (!goesOn) await once(process.stdout, "drain");
}

/** Colours for standard output: flag, `NO_COLOR`, `FORCE_COLOR`, terminal, in that order. */
export function paintFor(options: CommonOptions): Paint {
  return paintWith(coloured(options));
}

/** Colours, or none. */
export function paintWith(isColoured: boolean): Paint {
  if (!isColoured) return (_, text) => text;
  return (style, text) =>
    STYLES[style].reduce<string>(
      (painted, format) => styleText(format, painted, { validateStream: false }),
      text,
    );
}

/** Whether standard output is coloured: flag, `NO_COLOR`, `FORCE_COLOR`, terminal, in that order. */
export function coloured(options: CommonOptions): boolean {
  if (process.argv.includes("--color")) return true;
  if (options.color === false) return false;
  const { NO_COLOR, FORCE_COLOR, TERM } = process.env;
  if (NO_COLOR) return false;
  if (FORCE_COLOR !== undefined) return FORCE_COLOR !== "0";
  return process.stdout.isTTY === true && TERM !== "dumb";
}
