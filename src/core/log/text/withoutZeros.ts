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
    if (bytes.length > 0) zeros.last = bytes[bytes.length - 1] as number;
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
export function textWithoutZeros(text: string): string {
  if (!text.includes("\0")) return text;
  return text.replace(/(?<=[^\0\r\n])\0{4,}(?=[^\0])/g, LOST).replaceAll("\0", "");
}
