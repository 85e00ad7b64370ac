/** The part of the decoder of Node and of browsers that is used here; the core knows no other globals. */
interface Decoder {
  readonly encoding: string;
  decode(bytes?: Uint8Array, options?: { readonly stream?: boolean }): string;
}

declare const TextDecoder: new (
  label: string,
  options?: { readonly fatal?: boolean; readonly ignoreBOM?: boolean },
) => Decoder;

declare const TextEncoder: new () => { encode(text: string): Uint8Array };

/**
 * Bytes as text, without a byte-order mark.
 * @returns null when the encoding is unknown, or when `strict` and a byte does not belong to it.
 */
export function decodeBytes(bytes: Uint8Array, encoding: string, strict: boolean): string | null {
  try {
    return new TextDecoder(encoding, { fatal: strict }).decode(bytes);
  } catch {
    return null;
  }
}

/** The usual name of a text encoding, in lower case; null when it is unknown. */
export function encodingName(label: string): string | null {
  try {
    return new TextDecoder(label).encoding;
  } catch {
    return null;
  }
}

/**
 * A decoder of many short pieces, each whole in itself; a mark of byte order is left in.
 * @throws RangeError for an unknown encoding.
 */
export function pieceDecoder(encoding: string): (bytes: Uint8Array) => string {
  const decoder = new TextDecoder(encoding, { ignoreBOM: true });
  return (bytes) => decoder.decode(bytes);
}

/**
 * The same, giving null for bytes that do not belong to the encoding.
 * @throws RangeError for an unknown encoding.
 */
export function strictPieceDecoder(encoding: string): (bytes: Uint8Array) => string | null {
  const decoder = new TextDecoder(encoding, { ignoreBOM: true, fatal: true });
  return (bytes) => {
    try {
      return decoder.decode(bytes);
    } catch {
      return null;
    }
  };
}

/**
 * A decoder of one text that comes in parts, which may be cut inside a character; without its mark.
 * @throws RangeError for an unknown encoding.
 */
export function partDecoder(encoding: string): (bytes: Uint8Array, isLast: boolean) => string {
  const decoder = new TextDecoder(encoding);
  return (bytes, isLast) => decoder.decode(bytes, { stream: !isLast });
}

/** Text as UTF-8. */
export function utf8Of(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/**
 * Characters of bytes 128…255 in code page 850, the old Western European set of terminals.
 * The letters and the degree sign stand in the same places as in code page 437.
 */
const UPPER_HALF =
  "ÇüéâäàåçêëèïîìÄÅÉæÆôöòûùÿÖÜø£Ø×ƒáíóúñÑªº¿®¬½¼¡«»░▒▓│┤ÁÂÀ©╣║╗╝¢¥┐└┴┬├─┼ãÃ╚╔╩╦╠═╬¤ðÐÊËÈıÍÎÏ┘┌█▄¦Ì▀ÓßÔÒõÕµþÞÚÛÙýÝ¯´\u00ad±‗¾¶§÷¸°¨·¹³²■\u00a0";

/** What the encoding is called here. */
export const CODE_PAGE_850 = "code page 850";

/** Bytes of code page 850 as text. */
export function decodeCodePage850(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let start = 0; start < bytes.length; start += 8192) {
    let piece = "";
    for (const byte of bytes.subarray(start, start + 8192))
      piece += byte < 128 ? String.fromCharCode(byte) : UPPER_HALF[byte - 128];
    pieces.push(piece);
  }
  return pieces.join("");
}
