import {
  CODE_PAGE_850,
  decodeCodePage850,
  partDecoder,
  pieceDecoder,
  strictPieceDecoder,
  utf8Of,
} from "./textDecoder.ts";

/** The first bytes of a file, on which all is decided. */
export interface ByteHead {
  /** Takes bytes until it is full; gives back what is over. */
  readonly add: (bytes: Uint8Array) => Uint8Array;
  readonly isFull: () => boolean;
  readonly bytes: () => Uint8Array;
  /** The same up to its last line end. */
  readonly wholeLines: () => Uint8Array;
  /** Frees the memory. */
  readonly letGo: () => void;
}

/** How many bytes are looked at before anything is decided: a day at one row a second. Own choice. */
const HEAD_BYTES = 4 << 20;
const FIRST_BYTES = 1 << 16;

/** An empty head. */
export function byteHead(): ByteHead {
  let kept = new Uint8Array(FIRST_BYTES);
  let length = 0;
  return {
    add: (bytes) => {
      const taken = bytes.subarray(0, HEAD_BYTES - length);
      if (length + taken.length > kept.length) {
        const wider = new Uint8Array(Math.min(HEAD_BYTES, 2 * (length + taken.length)));
        wider.set(kept.subarray(0, length));
        kept = wider;
      }
      kept.set(taken, length);
      length += taken.length;
      return bytes.subarray(taken.length);
    },
    isFull: () => length === HEAD_BYTES,
    bytes: () => kept.subarray(0, length),
    wholeLines: () => {
      const end = Math.max(kept.lastIndexOf(10, length - 1), kept.lastIndexOf(13, length - 1)) + 1;
      // In UTF-16 a zero may belong to the line end.
      const whole = kept[end] === 0 ? end + 1 : end;
      return kept.subarray(0, end === 0 ? length : Math.min(whole, length));
    },
    letGo: () => {
      kept = new Uint8Array(0);
      length = 0;
    },
  };
}

/** The bytes of a file as far as they are kept, for showing rows that are left out later. */
export interface ByteTape {
  /** Keeps the next bytes, as long as there is room. */
  readonly add: (bytes: Uint8Array) => void;
  /** Notes where a line begins: bytes from the start of the file. */
  readonly mark: (line: number, offset: number) => void;
  /** The first line to be noted next. */
  readonly nextMark: () => number;
  /** Some bytes from the beginning of a line on; none when they are not kept. */
  readonly fromLine: (line: number) => Uint8Array;
}

/** Most bytes that are kept: a million and a half usual rows. Own choice, to bound the memory. */
const MOST_BYTES = 64 << 20;
/** Lines from one note to the next. */
const MARK_LINES = 64;
/** Bytes that are given from a line on, by far enough to show a row. */
const SHOWN_BYTES = 4096;

/** An empty tape. */
export function byteTape(): ByteTape {
  const parts: Uint8Array[] = [];
  const starts: number[] = [];
  const lines: number[] = [1];
  const offsets: number[] = [0];
  let length = 0;

  function slice(from: number, most: number): Uint8Array {
    const found = new Uint8Array(Math.max(0, Math.min(most, length - from)));
    let filled = 0;
    for (let part = lastAtMost(starts, from); filled < found.length; part++) {
      const bytes = parts[part]!;
      const at = from + filled - starts[part]!;
      const piece = bytes.subarray(at, at + found.length - filled);
      found.set(piece, filled);
      filled += piece.length;
    }
    return found;
  }

  return {
    add: (bytes) => {
      const room = MOST_BYTES - length;
      if (room <= 0 || bytes.length === 0) return;
      starts.push(length);
      parts.push(bytes.slice(0, room));
      length += Math.min(room, bytes.length);
    },
    mark: (line, offset) => {
      lines.push(line);
      offsets.push(offset);
    },
    nextMark: () => lines[lines.length - 1]! + MARK_LINES,
    fromLine: (line) => {
      const place = lastAtMost(lines, line);
      let at = offsets[place]!;
      for (let here = lines[place]!; here < line; here++) {
        const next = endOfLine((from) => slice(from, SHOWN_BYTES), at);
        if (next < 0) return new Uint8Array(0);
        at = next;
      }
      return slice(at, SHOWN_BYTES);
    },
  };
}

/** Where the next line begins, or −1 when that is not kept. */
function endOfLine(read: (from: number) => Uint8Array, from: number): number {
  for (let start = from; ; ) {
    const bytes = read(start);
    if (bytes.length === 0) return -1;
    const at = bytes.findIndex((byte) => byte === 10 || byte === 13);
    if (at < 0) start += bytes.length;
    else return start + at + (bytes[at] === 13 && read(start + at + 1)[0] === 10 ? 2 : 1);
  }
}

/** Place of the last of rising numbers that is at most a value; the first is. */
function lastAtMost(numbers: readonly number[], value: number): number {
  let low = 0;
  let high = numbers.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (numbers[middle]! <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Bytes of a file on their way to being cut into records, and their text. */
export interface ByteText {
  /** The next bytes in an encoding in which every byte below 128 is an ASCII character. */
  readonly plain: (bytes: Uint8Array, isLast: boolean) => Uint8Array;
  /** Text of whole characters out of those bytes. */
  readonly decode: (bytes: Uint8Array) => string;
  /** What the text turned out to hold. */
  readonly seen: () => SeenText;
}

/** What the records that were decoded hold. */
interface SeenText {
  readonly beyondAscii: boolean;
  /** Records that are not well-formed UTF-8 in a file that began as such. */
  readonly malformed: number;
}

/** Encodings in which a byte below 128 is never part of another character. */
const LIKE_ASCII =
  /^(?:utf-8|windows-\d+|iso-8859-\d+(?:-[ei])?|koi8-[ru]|macintosh|x-mac-cyrillic|ibm866|code page 850)$/;
const MARK = [0xef, 0xbb, 0xbf] as const;
const WINDOWS_1252 = "windows-1252";

/**
 * The way from a file's bytes to records, for an encoding by its usual name.
 * @param isTold Whether a person named the encoding; else what does not fit UTF-8 is read as windows-1252.
 */
export function byteText(encoding: string, isTold: boolean): ByteText {
  let beyondAscii = false;
  let malformed = 0;
  const inFull = fullDecoder(encoding, isTold, () => {
    malformed++;
  });
  const decode = (bytes: Uint8Array) => {
    const ascii = asciiText(bytes);
    if (ascii !== null) return ascii;
    beyondAscii = true;
    return inFull(bytes);
  };
  const seen = () => ({ beyondAscii, malformed });
  if (LIKE_ASCII.test(encoding))
    return { plain: encoding === "utf-8" ? withoutMark() : (bytes) => bytes, decode, seen };
  const part = partDecoder(encoding);
  return { plain: (bytes, isLast) => utf8Of(part(bytes, isLast)), decode, seen };
}

function fullDecoder(
  encoding: string,
  isTold: boolean,
  whenMalformed: () => void,
): (bytes: Uint8Array) => string {
  if (encoding === CODE_PAGE_850) return decodeCodePage850;
  if (!LIKE_ASCII.test(encoding)) return pieceDecoder("utf-8");
  if (encoding !== "utf-8" || isTold) return pieceDecoder(encoding);
  const strict = strictPieceDecoder("utf-8");
  const western = pieceDecoder(WINDOWS_1252);
  return (bytes) => {
    const text = strict(bytes);
    if (text !== null) return text;
    whenMalformed();
    return western(bytes);
  };
}

/** Takes the mark off the first bytes; these are at least as many as it has. */
function withoutMark(): ByteText["plain"] {
  let isFirst = true;
  return (bytes) => {
    const hasMark = isFirst && MARK.every((byte, i) => bytes[i] === byte);
    isFirst = false;
    return hasMark ? bytes.subarray(MARK.length) : bytes;
  };
}

/** Short text of ASCII characters, much sooner than by a decoder; null when there are others. */
function asciiText(bytes: Uint8Array): string | null {
  if (bytes.length > 1024) return null;
  for (let i = 0; i < bytes.length; i++) if (bytes[i]! > 127) return null;
  return String.fromCharCode(...bytes);
}
