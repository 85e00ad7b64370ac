const LINE_FEED = 0x0a;
const CARRIAGE_RETURN = 0x0d;

/** The whole lines at the beginning of a file that is still being written. */
export interface WholeLines {
  /** Bytes up to the end of the last whole line. */
  readonly end: number;
  readonly count: number;
}

/**
 * Where the last whole line of a text ends: in UTF-16, told by its mark or its zero bytes, in any
 * encoding that keeps ASCII, and with line ends of every kind.
 */
export function wholeLines(bytes: Uint8Array): WholeLines {
  const low = lowByteOf(bytes);
  if (low !== null) return wideLines(bytes, low);
  const mark = bytes.includes(LINE_FEED) ? LINE_FEED : CARRIAGE_RETURN;
  let count = 0;
  for (let at = bytes.indexOf(mark); at >= 0; at = bytes.indexOf(mark, at + 1)) count++;
  return { end: bytes.lastIndexOf(mark) + 1, count };
}

/** Which byte of a pair holds the letter in UTF-16; null when it is not that. */
function lowByteOf(bytes: Uint8Array): 0 | 1 | null {
  const [a, b, c, d] = bytes;
  if ((a === 0xff && b === 0xfe) || (a !== 0 && b === 0 && c !== 0 && d === 0)) return 0;
  if ((a === 0xfe && b === 0xff) || (a === 0 && b !== 0 && c === 0 && d !== 0)) return 1;
  return null;
}

function wideLines(bytes: Uint8Array, low: 0 | 1): WholeLines {
  let end = 0;
  let count = 0;
  for (let at = 0; at + 1 < bytes.length; at += 2)
    if (bytes[at + low] === LINE_FEED && bytes[at + 1 - low] === 0) {
      end = at + 2;
      count++;
    }
  return { end, count };
}
