/** The part of the decoder of Node and of browsers that is used here; the core knows no other global. */
declare const TextDecoder: new (
  label: string,
  options?: { readonly fatal?: boolean },
) => { decode(bytes: Uint8Array): string };

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
