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
