import { glued, HARD_SPACE } from "./glued.ts";
import { characterWidth, visibleWidth } from "./visibleWidth.ts";

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
