import type { ByteTape } from "./bytes.ts";
import { MOST_QUOTED_LINES, opensQuote, withoutZeros, type Zeros } from "./records.ts";

/** Who takes the records of a file, one after the other. */
export interface RecordSink {
  /**
   * May take the record that begins at a place; its line end is among the bytes.
   * @returns the place of its line end, or −1 to be given the record as text.
   */
  readonly quick: (bytes: Uint8Array, from: number, line: number) => number;
  readonly text: (text: string, line: number) => void;
  /** A line that is too long to be a row; only its beginning is given. */
  readonly tooLong: (beginning: string, line: number) => void;
}

/** Cuts bytes that come in parts into records. */
export interface RecordScanner {
  /** The next bytes; they are not kept. */
  readonly push: (bytes: Uint8Array) => void;
  /** No more bytes: what is left is the last record. */
  readonly end: () => number;
  /** Zero bytes that were taken out so far. */
  readonly zeros: () => number;
}

const LINE_FEED = 10;
const RETURN = 13;
/** Bytes looked at in one go. */
const STRIDE_BYTES = 1 << 18;
/** Longest line, and longest record, that is read as a row [bytes]: far beyond any log; bounds the memory. */
export const LONGEST_ROW_BYTES = 1 << 18;
/** Bytes of a line that is too long by which it is shown. */
const SHOWN_BYTES = 240;

/** How records are told apart and become text. */
export interface RecordForm {
  readonly decode: (bytes: Uint8Array) => string;
  /** Characters after which a quote opens a cell. */
  readonly openers: string;
  /** Where the bytes are kept for later. */
  readonly tape: ByteTape;
}

/** Bytes that are not yet gone through, and where in the file they stand. */
interface Window {
  bytes: Uint8Array;
  length: number;
  /** Where in the file the first of them stands, zeros not counted. */
  offset: number;
  line: number;
  /** Inside a line that is too long, of which only the end is waited for. */
  skips: boolean;
  readonly zeros: Zeros;
}

/**
 * Records of bytes in which ASCII stands for itself, with any mixture of line ends; zero bytes are
 * taken out. The records are those of `recordsOf`, whatever the parts that the bytes come in.
 */
export function recordScanner(sink: RecordSink, form: RecordForm): RecordScanner {
  const window: Window = {
    bytes: new Uint8Array(2 * STRIDE_BYTES),
    length: 0,
    offset: 0,
    line: 1,
    skips: false,
    zeros: { count: 0, run: 0, last: LINE_FEED },
  };

  let nextMark = form.tape.nextMark();

  function scan(isLast: boolean): void {
    const limit = wholeLines(window, isLast);
    let at = window.skips ? skipped(window, limit) : 0;
    while (at < limit) {
      if (window.line >= nextMark) nextMark = marked(window, at, form.tape);
      const quick = sink.quick(window.bytes, at, window.line);
      const end = quick >= 0 ? quick : asText(window, { at, limit, isLast }, { sink, form });
      if (end < 0) break;
      at = pastLineEnd(window.bytes, end);
      window.line++;
    }
    letGo(window, at);
    if (limit > 0 || window.length <= LONGEST_ROW_BYTES) return;
    if (!window.skips) sink.tooLong(beginning(window.bytes, 0, form), window.line);
    window.skips = true;
    letGo(window, window.length);
  }

  return {
    push: (bytes) => {
      for (let at = 0; at < bytes.length; at += STRIDE_BYTES) {
        form.tape.add(take(window, bytes.subarray(at, at + STRIDE_BYTES)));
        scan(false);
      }
    },
    end: () => {
      const isOpen = window.length > 0 && !isLineEnd(window.bytes[window.length - 1]);
      const line = isOpen ? window.line : 0;
      scan(true);
      return line;
    },
    zeros: () => window.zeros.count,
  };
}

/** Notes where the line at a place begins; the line to be noted next. */
function marked({ line, offset }: Window, at: number, tape: ByteTape): number {
  tape.mark(line, offset + at);
  return tape.nextMark();
}

/** Forgets the bytes before a place. */
function letGo(window: Window, at: number): void {
  window.bytes.copyWithin(0, at, window.length);
  window.length = Math.max(0, window.length - at);
  window.offset += at;
}

/** Adds bytes to the window, without zeros, and gives them back. */
function take(window: Window, bytes: Uint8Array): Uint8Array {
  const most = window.length + bytes.length;
  // Room for a last line end and for a look at the byte behind it.
  if (most + 2 > window.bytes.length) {
    const wider = new Uint8Array(2 * (most + 2));
    wider.set(window.bytes.subarray(0, window.length));
    window.bytes = wider;
  }
  const clean = withoutZeros(bytes, window.zeros);
  window.bytes.set(clean, window.length);
  window.length += clean.length;
  return clean;
}

/** Where the last whole line ends. A return at the very end may be half a line end, and waits. */
function wholeLines(window: Window, isLast: boolean): number {
  const { bytes } = window;
  if (isLast && window.length > 0 && !isLineEnd(bytes[window.length - 1]))
    bytes[window.length++] = LINE_FEED;
  bytes[window.length] = 0;
  let limit = window.length;
  if (!isLast && bytes[limit - 1] === RETURN) limit--;
  while (limit > 0 && !isLineEnd(bytes[limit - 1])) limit--;
  return limit;
}

/** Past the end of a line that is too long, when that is there. */
function skipped(window: Window, limit: number): number {
  if (limit === 0) return 0;
  window.skips = false;
  window.line++;
  return pastLineEnd(window.bytes, lineEndAt(window.bytes, 0));
}

interface Place {
  readonly at: number;
  readonly limit: number;
  readonly isLast: boolean;
}

/** Gives a record as text; the place of its line end, or −1 when its end has not come yet. */
function asText(
  window: Window,
  place: Place,
  { sink, form }: { readonly sink: RecordSink; readonly form: RecordForm },
): number {
  const { bytes, line } = window;
  const { at } = place;
  const end = lineEndAt(bytes, at);
  if (end - at > LONGEST_ROW_BYTES) {
    sink.tooLong(beginning(bytes, at, form), line);
    return end;
  }
  const text = form.decode(bytes.subarray(at, end));
  if (!text.includes('"')) {
    sink.text(text, line);
    return end;
  }
  const last = quotedEnd(window, { ...place, end }, { form, text });
  if (last < 0) return -1;
  sink.text(last === end ? text : form.decode(bytes.subarray(at, last)), line);
  return last;
}

/** The last line end of a record whose quotes may go over several lines; −1 when it has not come yet. */
function quotedEnd(
  window: Window,
  { at, limit, isLast, end }: Place & { readonly end: number },
  { form, text }: { readonly form: RecordForm; readonly text: string },
): number {
  const { bytes } = window;
  let isOpen = opensQuote(text, false, form.openers);
  let last = end;
  for (let lines = 1; isOpen && lines < MOST_QUOTED_LINES; lines++) {
    const start = pastLineEnd(bytes, last);
    if (start >= limit) return isLast || window.length - at > LONGEST_ROW_BYTES ? end : -1;
    last = lineEndAt(bytes, start);
    if (last - at > LONGEST_ROW_BYTES) return end;
    isOpen = opensQuote(form.decode(bytes.subarray(start, last)), true, form.openers);
    if (!isOpen) window.line += lines;
  }
  return isOpen ? end : last;
}

function beginning(bytes: Uint8Array, from: number, form: RecordForm): string {
  return form.decode(bytes.subarray(from, from + SHOWN_BYTES));
}

function isLineEnd(byte: number | undefined): boolean {
  return byte === LINE_FEED || byte === RETURN;
}

/** The first line end from a place on; there is one. */
function lineEndAt(bytes: Uint8Array, from: number): number {
  let at = from;
  while (!isLineEnd(bytes[at])) at++;
  return at;
}

function pastLineEnd(bytes: Uint8Array, end: number): number {
  return bytes[end] === RETURN && bytes[end + 1] === LINE_FEED ? end + 2 : end + 1;
}
