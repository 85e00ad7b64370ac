import { CODE_PAGE_850, decodeCodePage850 } from "./codePage850.ts";
import { partDecoder, pieceDecoder, strictPieceDecoder, utf8Of } from "./textDecoder.ts";

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
  for (let i = 0; i < bytes.length; i++) if ((bytes[i] as number) > 127) return null;
  return String.fromCharCode(...bytes);
}
