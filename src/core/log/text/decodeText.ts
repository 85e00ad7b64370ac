import { failed, ok, type Result } from "../../problem.ts";
import { type Decision, decision } from "../reading/LogReading.ts";
import { CODE_PAGE_850, decodeBytes, decodeCodePage850, encodingName } from "./textDecoder.ts";

/** A file as text, and how its encoding was decided. */
export interface DecodedText {
  readonly text: string;
  /** Usual name of the encoding, or `code page 850`. */
  readonly encoding: string;
  readonly decision: Decision;
}

/** How many bytes are looked at to tell text from other files. */
const LOOK_BYTES = 65_536;
/** Share of control characters above which a file is no text; real logs have none or a handful. */
const MOST_CONTROL_SHARE = 0.02;

const PLAIN_ASCII = "it holds plain ASCII only";

/** First bytes of files that are often taken for a log. */
const SIGNATURES: readonly { readonly bytes: readonly number[]; readonly name: string }[] = [
  { bytes: [0x50, 0x4b, 0x03, 0x04], name: "a workbook or a zip archive" },
  { bytes: [0xd0, 0xcf, 0x11, 0xe0], name: "an old workbook" },
  { bytes: [0x25, 0x50, 0x44, 0x46], name: "a PDF document" },
  { bytes: [0x89, 0x50, 0x4e, 0x47], name: "a picture" },
  { bytes: [0xff, 0xd8, 0xff], name: "a picture" },
  { bytes: [0x1f, 0x8b], name: "a compressed file" },
];

/** Bytes that stand for the degree sign before C or F, by encoding; the last resort comes after. */
const DEGREE_SIGNS: readonly {
  readonly bytes: readonly number[];
  readonly encoding: string;
  readonly because?: string;
}[] = [
  { bytes: [0x81, 0x8b], encoding: "shift_jis" },
  { bytes: [0x81, 0x8e], encoding: "shift_jis" },
  { bytes: [0xa1, 0xe3], encoding: "gb18030" },
  { bytes: [0xa1, 0xe6], encoding: "gb18030" },
  { bytes: [0xb0], encoding: "windows-1252" },
  { bytes: [0xf8], encoding: CODE_PAGE_850 },
  { bytes: [0xa1], encoding: "macintosh" },
  { bytes: [0x9c], encoding: "koi8-r" },
];

/**
 * A file as text: byte-order mark, then zero bytes of UTF-16, then strict UTF-8, then the byte that
 * stands for the degree sign, then windows-1252. Zero bytes are left in the text.
 *
 * @returns the text, or `log/empty`, `log/not-text`, `log/unknown-encoding`.
 */
export function decodeText(
  bytes: Uint8Array,
  query: { readonly name: string; readonly encoding?: string | undefined },
): Result<DecodedText> {
  const signature = SIGNATURES.find((known) => startsWith(bytes, known.bytes));
  if (signature !== undefined) return notText(query.name, `is ${signature.name}, not text`);
  const decided =
    query.encoding === undefined ? decideEncoding(bytes) : toldEncoding(bytes, query.encoding);
  if (decided === null)
    return failed({
      code: "log/unknown-encoding",
      what: `the encoding "${query.encoding}" is not known`,
      where: query.name,
      expected: "the name of a text encoding: utf-8, utf-16le, utf-16be, windows-1252, cp850",
      fix: "leave out --encoding, or give one of these names",
    });
  if (!/[^\s\0\uFEFF]/.test(decided.text))
    return failed({
      code: "log/empty",
      what: bytes.length === 0 ? "holds nothing (0 bytes)" : "holds only blanks",
      where: query.name,
      expected: "a log: rows with a time and a temperature",
      fix: "export the log again, and check that the file is the right one",
    });
  const share = controlShare(decided.text);
  if (share > MOST_CONTROL_SHARE)
    return notText(
      query.name,
      `is not text: ${Math.round(share * 100)} % of it are control characters`,
    );
  return ok(decided);
}

function notText(name: string, what: string): Result<DecodedText> {
  return failed({
    code: "log/not-text",
    what,
    where: name,
    expected: "a text file with rows of numbers: .csv, .txt, .tsv",
    fix: "export the log as CSV or text, and give that file",
  });
}

function toldEncoding(bytes: Uint8Array, encoding: string): DecodedText | null {
  const codePage = /^(cp|ibm|code page )?(437|850)$/i.test(encoding);
  const text = codePage ? decodeCodePage850(bytes) : decodeBytes(bytes, encoding, false);
  if (text === null) return null;
  const name = codePage ? CODE_PAGE_850 : (encodingName(encoding) ?? encoding);
  return { ...decided(text, encoding, "told", "it was given as an option"), encoding: name };
}

function decideEncoding(bytes: Uint8Array): DecodedText {
  const marked = markedEncoding(bytes);
  if (marked !== null)
    return decided(
      lenient(bytes, marked),
      marked,
      "certain",
      "the file begins with its byte-order mark",
    );
  const wide = wideEncoding(bytes);
  if (wide !== null)
    return decided(lenient(bytes, wide), wide, "certain", "every second byte is zero");
  const utf8 = decodeBytes(bytes, "utf-8", true);
  if (utf8 !== null) {
    const plain = !/[^\0-\x7f]/.test(utf8);
    const because = plain ? PLAIN_ASCII : "every byte is well-formed UTF-8";
    return decided(utf8, "utf-8", "certain", because);
  }
  const sign =
    DEGREE_SIGNS.find((known) => hasDegreeSign(bytes, known.bytes)) ??
    codePageBlank(bytes) ??
    codePageLetter(bytes);
  if (sign === undefined)
    return decided(
      lenient(bytes, "windows-1252"),
      "windows-1252",
      "guessed",
      "it is not UTF-8 and nothing else gives it away; only words can be affected, not numbers",
    );
  const text =
    sign.encoding === CODE_PAGE_850 ? decodeCodePage850(bytes) : lenient(bytes, sign.encoding);
  return decided(
    text,
    sign.encoding,
    "likely",
    sign.because ?? "its byte before C or F is a degree sign there",
  );
}

function decided(
  text: string,
  encoding: string,
  confidence: Decision["confidence"],
  because: string,
): DecodedText {
  return {
    text,
    encoding,
    decision: decision("encoding", encoding, {
      confidence,
      because,
      option: "--encoding NAME",
      says: { encoding },
    }),
  };
}

function lenient(bytes: Uint8Array, encoding: string): string {
  return decodeBytes(bytes, encoding, false) ?? decodeCodePage850(bytes);
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, at) => bytes[at] === byte);
}

function markedEncoding(bytes: Uint8Array): string | null {
  if (startsWith(bytes, [0xef, 0xbb, 0xbf])) return "utf-8";
  if (startsWith(bytes, [0xff, 0xfe])) return "utf-16le";
  if (startsWith(bytes, [0xfe, 0xff])) return "utf-16be";
  return null;
}

/** UTF-16 without a mark shows as zeros in nearly every second byte, on one side only. */
function wideEncoding(bytes: Uint8Array): string | null {
  const length = Math.min(bytes.length, 4096) & ~1;
  if (length < 8) return null;
  let even = 0;
  let odd = 0;
  for (let i = 0; i < length; i += 2) {
    if (bytes[i] === 0) even++;
    if (bytes[i + 1] === 0) odd++;
  }
  const pairs = length / 2;
  if (odd > 0.7 * pairs && even < 0.1 * pairs) return "utf-16le";
  if (even > 0.7 * pairs && odd < 0.1 * pairs) return "utf-16be";
  return null;
}

/** Byte 255 between two digits can only be the hard space that code page 850 has there. */
function codePageBlank(
  bytes: Uint8Array,
): { readonly encoding: string; readonly because: string } | undefined {
  const isDigit = (byte: number | undefined) => byte !== undefined && byte >= 48 && byte <= 57;
  for (let at = bytes.indexOf(0xff); at >= 0; at = bytes.indexOf(0xff, at + 1))
    if (isDigit(bytes[at - 1]) && isDigit(bytes[at + 1]))
      return {
        encoding: "code page 850",
        because: "its byte between thousands is a hard space there",
      };
  return undefined;
}

/** Bytes of ü, é, ä, ö and û in code page 850; elsewhere they are quotes and dashes, or nothing. */
const CODE_PAGE_LETTERS: readonly number[] = [0x81, 0x82, 0x84, 0x94, 0x96];

/** Between two letters such a byte can only be a letter: `M\x84r` is März. */
function codePageLetter(
  bytes: Uint8Array,
): { readonly encoding: string; readonly because: string } | undefined {
  const isLetter = (byte: number | undefined) =>
    byte !== undefined && /[a-z]/i.test(String.fromCharCode(byte));
  for (const letter of CODE_PAGE_LETTERS)
    for (let at = bytes.indexOf(letter); at >= 0; at = bytes.indexOf(letter, at + 1))
      if (isLetter(bytes[at - 1]) && isLetter(bytes[at + 1]))
        return {
          encoding: CODE_PAGE_850,
          because: "a byte between two letters is one with an accent there",
        };
  return undefined;
}

function hasDegreeSign(bytes: Uint8Array, sign: readonly number[]): boolean {
  const first = sign[0]!;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (!sign.every((byte, k) => bytes[at + k] === byte)) continue;
    const next = bytes[at + sign.length];
    const isDoubleWidth = sign.length === 2;
    if (next === 0x43 || next === 0x46 || (isDoubleWidth && next !== undefined)) return true;
  }
  return false;
}

function controlShare(text: string): number {
  const length = Math.min(text.length, LOOK_BYTES);
  let control = 0;
  let counted = 0;
  for (let i = 0; i < length; i++) {
    const code = text.charCodeAt(i);
    if (code === 0) continue;
    counted++;
    const isBlank = code === 9 || code === 10 || code === 13 || code === 12 || code === 26;
    if ((code < 32 && !isBlank) || code === 127 || code === 0xfffd) control++;
  }
  return counted === 0 ? 0 : control / counted;
}
