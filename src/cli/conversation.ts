import { styleText } from "node:util";
import { type Problem, problemText } from "../core/problem.ts";
import { inert } from "../core/reports/inert.ts";
import type { Paint } from "../core/reports/paint.ts";

/** Options that every command takes. */
export interface CommonOptions {
  readonly json?: boolean;
  readonly html?: string;
  readonly chart?: string;
  readonly unit?: "C" | "F";
  readonly color?: boolean;
  readonly quiet?: boolean;
  readonly force?: boolean;
}

/** Exit codes: fine; ran and the answer is no; wrong use or unreadable input; our bug. */
export const EXIT = { fine: 0, no: 1, wrongUse: 2, ourBug: 70 } as const;

/** Prints the answer, and nothing else, on standard output. */
export function answer(text: string): void {
  process.stdout.write(text.endsWith("\n") ? text : `${text}\n`);
}

/** Prints one JSON document on standard output. */
export function answerJson(document: unknown): void {
  answer(JSON.stringify(document, null, 2));
}

/** Says something on standard error, unless asked to be quiet. */
export function say(text: string, options: CommonOptions): void {
  if (!options.quiet) process.stderr.write(`${inert(text)}\n`);
}

/** Shows problems on standard error, and as the one document with `--json`. */
export function refuse(problems: readonly Problem[], options: CommonOptions): number {
  if (options.json) answerJson({ schemaVersion: 1, ok: false, problems });
  process.stderr.write(
    `${problems.map((problem) => problemText(harmless(problem))).join("\n\n")}\n`,
  );
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

/** Colours for standard output: flag, `NO_COLOR`, `FORCE_COLOR`, terminal, in that order. */
export function paintFor(options: CommonOptions): Paint {
  if (!coloured(options)) return (_, text) => text;
  return (style, text) =>
    STYLES[style].reduce<string>(
      (painted, format) => styleText(format, painted, { validateStream: false }),
      text,
    );
}

function coloured(options: CommonOptions): boolean {
  if (process.argv.includes("--color")) return true;
  if (options.color === false) return false;
  const { NO_COLOR, FORCE_COLOR, TERM } = process.env;
  if (NO_COLOR) return false;
  if (FORCE_COLOR !== undefined) return FORCE_COLOR !== "0";
  return process.stdout.isTTY === true && TERM !== "dumb";
}
