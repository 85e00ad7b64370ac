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
