import type { Problem } from "../problem.ts";
import { inert } from "../text/escape.ts";
import { capitalised, HARD_SPACE, visibleWidth, wrap } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type Block, type Paint, table } from "./Block.ts";

/** How a report is written as text. */
export interface TextOptions {
  readonly unit: TemperatureUnit;
  readonly paint: Paint;
  /** Sources to list at the end, one line each. */
  readonly sources?: readonly string[];
}

/** Columns of a terminal that a report keeps within. */
export const REPORT_WIDTH = 80;

const INDENT = "  ";
const SEVERITY_COLUMN = "          ";
const WIDEST_LABEL = 24;

/** A report as lines for a terminal or a text file, at most 80 columns, ending in a line break. */
export function reportText(
  report: { readonly title: string; readonly blocks: readonly Block[] },
  paint: Paint,
): string {
  const alarms = report.blocks.filter(({ kind }) => kind === "alarm");
  const lines = [
    ...alarms.flatMap((block) => [...blockLines(block, paint), ""]),
    ...titleLines(report.title, paint),
    ...blockText(
      report.blocks.filter(({ kind }) => kind !== "alarm"),
      paint,
    ),
  ];
  return `${lines.join("\n")}\n`;
}

/** Blocks as lines for a terminal, at most 80 columns, with an empty line where one belongs. */
export function blockText(blocks: readonly Block[], paint: Paint): readonly string[] {
  const lines: string[] = [];
  let previous: Block["kind"] | null = null;
  for (const block of blocks) {
    const added = blockLines(block, paint);
    if (added.length === 0) continue;
    if (hasSpaceBefore(block.kind, previous)) lines.push("");
    lines.push(...added);
    previous = block.kind;
  }
  return lines;
}

function titleLines(title: string, paint: Paint): string[] {
  const lines = wrap(inert(title), { width: REPORT_WIDTH });
  const width = Math.max(...lines.map(visibleWidth));
  return [...lines.map((line) => paint("heading", line)), paint("faint", "─".repeat(width))];
}

function hasSpaceBefore(kind: Block["kind"], previous: Block["kind"] | null): boolean {
  if (previous === null || previous === "heading") return false;
  if (kind === "heading" || kind === "table" || kind === "finding") return true;
  if (kind === "facts") return previous !== "facts";
  return (
    previous === "table" || previous === "facts" || previous === "finding" || previous === "lead"
  );
}

function blockLines(block: Block, paint: Paint): readonly string[] {
  switch (block.kind) {
    case "heading":
      return painted(paint, "heading", wrap(inert(block.text), { width: REPORT_WIDTH }));
    case "alarm":
      return painted(paint, "warning", wrap(inert(block.text), { width: REPORT_WIDTH }));
    case "lead":
      return painted(paint, "strong", wrap(inert(block.text), { width: REPORT_WIDTH }));
    case "sentence": {
      const lines = wrap(inert(block.text), indented);
      return block.style ? painted(paint, block.style, lines) : lines;
    }
    case "list":
      return block.items.flatMap((item) => hanging(item, `${INDENT}• `));
    case "lines":
      return block.lines.map((line) => `${INDENT}${inert(line)}`);
    case "facts":
      return factLines(block.facts, paint);
    case "finding":
      return findingLines(block, paint);
    case "table":
      return [
        ...painted(paint, "strong", wrap(inert(block.caption), indented)),
        ...table({ ...block, width: REPORT_WIDTH, indent: INDENT, paint }),
      ];
    case "caution":
      return hanging(`${capitalised(block.topic)}: ${block.text}`, `${INDENT}• `);
    case "chart":
    case "picture":
      return [];
  }
}

const indented = { width: REPORT_WIDTH, first: INDENT, rest: INDENT };

function hanging(text: string, first: string): readonly string[] {
  return wrap(inert(text), { width: REPORT_WIDTH, first, rest: " ".repeat(visibleWidth(first)) });
}

function painted(
  paint: Paint,
  style: Parameters<Paint>[0],
  lines: readonly string[],
): readonly string[] {
  return lines.map((line) => paint(style, line));
}

function factLines(
  facts: readonly { readonly label: string; readonly text: string }[],
  paint: Paint,
): readonly string[] {
  const labels = facts.map(({ label }) => wrap(inert(label), { width: WIDEST_LABEL }));
  const width = Math.max(0, ...labels.flat().map(visibleWidth));
  return facts.flatMap(({ text }, index) => {
    const label = labels[index]!;
    const room = REPORT_WIDTH - visibleWidth(INDENT) - width - 2;
    const lines = wrap(inert(text), { width: room });
    return Array.from({ length: Math.max(label.length, lines.length) }, (_, line) => {
      const left = label[line] ?? "";
      const padding = " ".repeat(width - visibleWidth(left) + 2);
      return `${INDENT}${left === "" ? "" : paint("faint", left)}${padding}${lines[line] ?? ""}`.trimEnd();
    });
  });
}

function findingLines(
  block: Extract<Block, { readonly kind: "finding" }>,
  paint: Paint,
): readonly string[] {
  const rest = INDENT + SEVERITY_COLUMN;
  const word = capitalised(block.severity);
  const [head = "", ...more] = wrap(inert(block.statement), {
    width: REPORT_WIDTH,
    first: rest,
    rest,
  });
  const gap = " ".repeat(SEVERITY_COLUMN.length - word.length);
  return [
    `${INDENT}${paint(block.severity, word)}${gap}${head.slice(rest.length)}`,
    ...more,
    ...(block.advice === ""
      ? []
      : wrap(inert(block.advice), { width: REPORT_WIDTH, first: `${rest}→ `, rest: `${rest}  ` })),
    ...(block.where === null
      ? []
      : painted(
          paint,
          "faint",
          wrap(inert(block.where), { width: REPORT_WIDTH, first: rest, rest }),
        )),
  ];
}

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
