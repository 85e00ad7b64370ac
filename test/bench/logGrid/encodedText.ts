import type { Levels } from "./axes.ts";

const MARK = "\ufeff";
/** Characters above ASCII that the logs hold, in code pages 437 and 850: no-break space, degree, some letters. */
const CODE_PAGE: Readonly<Record<string, number>> = {
  "\u00a0": 0xff,
  "°": 0xf8,
  ä: 0x84,
  é: 0x82,
  û: 0x96,
  ö: 0x94,
  ü: 0x81,
};

/** The bytes of a text in the encoding of the log. */
export function encodedText(text: string, encoding: Levels["encoding"]): Uint8Array {
  if (encoding === "utf-8") return Buffer.from(text, "utf8");
  if (encoding === "utf-8 marked") return Buffer.from(MARK + text, "utf8");
  if (encoding.startsWith("utf-16le"))
    return Buffer.from((encoding.endsWith("marked") ? MARK : "") + text, "utf16le");
  if (encoding.startsWith("utf-16be"))
    return Buffer.from((encoding.endsWith("marked") ? MARK : "") + text, "utf16le").swap16();
  if (encoding.startsWith("code page"))
    return Buffer.from(
      text.replace(/[\u0080-\uffff]/g, (character) =>
        String.fromCharCode(CODE_PAGE[character] ?? character.charCodeAt(0)),
      ),
      "latin1",
    );
  return Buffer.from(text, "latin1");
}
