/** How a text is broken into lines. */
export interface WrapOptions {
  /** Columns of a line, prefix included; more than the prefixes take. */
  readonly width: number;
  /** Stands before the first line, such as `• `. */
  readonly first?: string;
  /** Stands before every other line, so that they hang under the first. */
  readonly rest?: string;
}

/**
 * Text in lines of at most `width` columns, broken between words; a word longer than a line is
 * cut. A number stays beside its unit. Give it text without colour codes, and colour the lines.
 * @returns at least one line.
 */
export function wrap(text: string, options: WrapOptions): readonly string[] {
  const { width, first = "", rest = "" } = options;
  const lines: string[] = [];
  let line = "";
  const room = () => width - visibleWidth(lines.length === 0 ? first : rest);
  const close = () => {
    lines.push(`${lines.length === 0 ? first : rest}${line}`.trimEnd());
    line = "";
  };
  if (room() < 2 || width - visibleWidth(rest) < 2)
    throw new RangeError(`wrap: no room for text in ${width} columns`);
  for (const word of glued(text).split(" ").filter(Boolean)) {
    if (line !== "" && visibleWidth(line) + 1 + visibleWidth(word) <= room()) {
      line += ` ${word}`;
      continue;
    }
    if (line !== "") close();
    line = word;
    while (visibleWidth(line) > room()) {
      const head = startThatFits(line, room());
      const tail = line.slice(head.length);
      line = head;
      close();
      line = tail;
    }
  }
  close();
  return lines.map((each) => each.replaceAll(HARD_SPACE, " "));
}

function startThatFits(word: string, room: number): string {
  let head = "";
  let width = 0;
  for (const character of word) {
    width += characterWidth(character);
    if (width > room) break;
    head += character;
  }
  return head;
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: a colour code starts with the escape character
const COLOUR_CODE = /\u001b\[[0-9;]*m/g;
const NO_WIDTH = /[\p{Mn}\p{Me}\p{Cf}]/u;
const TWO_COLUMNS =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}]|\p{Emoji_Presentation}/u;

/** Columns that a text takes in a terminal; colour codes take none, wide characters two. */
export function visibleWidth(text: string): number {
  let width = 0;
  for (const character of text.replace(COLOUR_CODE, "")) width += characterWidth(character);
  return width;
}

/** Columns that one character takes: 0, 1 or 2. */
function characterWidth(character: string): number {
  if (character >= " " && character <= "~") return 1;
  if (NO_WIDTH.test(character)) return 0;
  return TWO_COLUMNS.test(character) ? 2 : 1;
}

const NUMBER_AND_UNIT = /(?<=\d) (?=(?:°[CF]|%|h|min|s|mm|kWh|cones?)(?![\p{L}\d]))/gu;
const NAMED_NUMBER = /(?<=\b(?:day|cone)) (?=\d)/g;
const SIGN_AND_NUMBER = /(?<=[±×÷]|\d \+) (?=\d)|(?<=\d) (?=\+ \d)/g;

/** The space that never breaks a line. */
export const HARD_SPACE = "\u00a0";

/** Text in which a number keeps its unit beside it, whatever the line is broken into. */
export function glued(text: string): string {
  return text
    .replace(NUMBER_AND_UNIT, HARD_SPACE)
    .replace(NAMED_NUMBER, HARD_SPACE)
    .replace(SIGN_AND_NUMBER, HARD_SPACE);
}

/** Text with its first letter as a capital. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Text that ends as a sentence does. */
export function stopped(text: string): string {
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}
