/** The records of a text: mostly its lines; a quoted cell may span several. */
export interface Records {
  readonly texts: readonly string[];
  /** Line of the file [from 1] on which each record begins. */
  readonly lines: Int32Array;
}

/** Longest quoted cell in lines; an open quote that is still open after these is a plain character. */
export const MOST_QUOTED_LINES = 24;

/**
 * Records of a text with any mixture of line ends; zero bytes are taken out.
 * @param openers Characters after which a quote opens a cell: the delimiter, or all that it may be.
 */
export function recordsOf(text: string, openers: string): Records {
  const clean = textWithoutZeros(text);
  if (!clean.includes('"')) {
    const texts = clean.includes("\r") ? clean.split(/\r\n|\n|\r/) : clean.split("\n");
    const lines = new Int32Array(texts.length);
    for (let i = 0; i < lines.length; i++) lines[i] = i + 1;
    return { texts: withoutLastEmpty(texts), lines };
  }
  return quotedRecords(clean, openers);
}

function withoutLastEmpty(texts: string[]): string[] {
  if (texts.length > 0 && texts[texts.length - 1] === "") texts.pop();
  return texts;
}

function quotedRecords(text: string, openers: string): Records {
  const ends = lineEnds(text);
  const texts: string[] = [];
  const lines: number[] = [];
  for (let line = 0; line < ends.starts.length; line++) {
    const start = ends.starts[line]!;
    const last = lastLineOf(text, ends, line, openers);
    texts.push(text.slice(start, ends.stops[last]!));
    lines.push(line + 1);
    line = last;
  }
  return { texts: withoutLastEmpty(texts), lines: Int32Array.from(lines) };
}

interface LineEnds {
  readonly starts: readonly number[];
  readonly stops: readonly number[];
}

function lineEnds(text: string): LineEnds {
  const starts: number[] = [0];
  const stops: number[] = [];
  for (const match of text.matchAll(/\r\n|\n|\r/g)) {
    stops.push(match.index);
    starts.push(match.index + match[0].length);
  }
  stops.push(text.length);
  return { starts, stops };
}

function lastLineOf(text: string, ends: LineEnds, first: number, openers: string): number {
  let isOpen = false;
  const limit = Math.min(first + MOST_QUOTED_LINES, ends.starts.length);
  for (let line = first; line < limit; line++) {
    const here = text.slice(ends.starts[line]!, ends.stops[line]!);
    isOpen = opensQuote(here, isOpen, openers);
    if (!isOpen) return line;
  }
  return first;
}

/**
 * Whether a quoted cell is open at the end of a line.
 * @param wasOpen Whether one was open at its beginning.
 */
export function opensQuote(line: string, wasOpen: boolean, openers: string): boolean {
  let isOpen = wasOpen;
  let at = line.indexOf('"');
  while (at >= 0) {
    if (isOpen && line[at + 1] === '"') at++;
    else if (isOpen) isOpen = false;
    else isOpen = at === 0 || openers.includes(line[at - 1]!);
    at = line.indexOf('"', at + 1);
  }
  return isOpen;
}

/** Zero bytes seen so far, as a power cut leaves them. */
export interface Zeros {
  count: number;
  /** How many follow each other at the end of what was seen. */
  run: number;
  /** The last byte before them. */
  last: number;
}

/** So many zeros in a row stand for bytes that were lost; fewer are mere padding. Own choice. */
const LOST_RUN = 4;
/** What stands for bytes that were lost within a line, so that nobody takes what is left of a number for it. */
const LOST = "\x1a";
const LOST_BYTE = LOST.charCodeAt(0);
const LINE_ENDS: readonly number[] = [10, 13];

/**
 * Bytes without the zeros in them; a long run that does not begin a line, and behind which the file
 * goes on, leaves a mark. The same whatever the parts that the bytes come in.
 */
export function withoutZeros(bytes: Uint8Array, zeros: Zeros): Uint8Array {
  if (zeros.run === 0 && !bytes.includes(0)) {
    if (bytes.length > 0) zeros.last = bytes[bytes.length - 1]!;
    return bytes;
  }
  const clean = new Uint8Array(bytes.length + 1);
  let length = 0;
  for (const byte of bytes) {
    if (byte === 0) {
      zeros.count++;
      zeros.run++;
      continue;
    }
    if (zeros.run >= LOST_RUN && !LINE_ENDS.includes(zeros.last)) clean[length++] = LOST_BYTE;
    zeros.run = 0;
    zeros.last = byte;
    clean[length++] = byte;
  }
  return clean.subarray(0, length);
}

/** The same of a text that is there whole. */
function textWithoutZeros(text: string): string {
  if (!text.includes("\0")) return text;
  return text.replace(/(?<=[^\0\r\n])\0{4,}(?=[^\0])/g, LOST).replaceAll("\0", "");
}
