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
      const bytes = parts[part] as Uint8Array;
      const at = from + filled - (starts[part] as number);
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
    nextMark: () => (lines[lines.length - 1] as number) + MARK_LINES,
    fromLine: (line) => {
      const place = lastAtMost(lines, line);
      let at = offsets[place] as number;
      for (let here = lines[place] as number; here < line; here++) {
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
    if ((numbers[middle] as number) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}
