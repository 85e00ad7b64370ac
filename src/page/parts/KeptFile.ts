import { z } from "zod";

/** A file that a person dropped or picked, kept as it is. */
export interface KeptFile {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Of a document that was laid down with its log: the log's fingerprint. */
  readonly of?: string | undefined;
}

/** A kept file inside what is stored. */
export const keptFileShape = z.strictObject({
  name: z.string().min(1).max(400),
  bytes: z.instanceof(Uint8Array<ArrayBuffer>),
  of: z.string().max(80).optional(),
});

const FINGERPRINTS = new WeakMap<Uint8Array, string>();

/**
 * What tells one log from another whatever their names: its length and two 32-bit FNV-1a sums of
 * its bytes (Fowler, Noll & Vo). Made once for the same bytes.
 */
export function fingerprint({ bytes }: KeptFile): string {
  const known = FINGERPRINTS.get(bytes);
  if (known !== undefined) return known;
  let [one, other] = [0x811c9dc5, 0x01000193];
  for (const byte of bytes) {
    one = Math.imul(one ^ byte, 0x01000193);
    other = Math.imul(other ^ byte, 0x01000197);
  }
  const made = [bytes.length, one >>> 0, other >>> 0].map((part) => part.toString(36)).join("-");
  FINGERPRINTS.set(bytes, made);
  return made;
}

/** Whether two files have one name and the same bytes. */
export function sameFile(file: KeptFile, other: KeptFile): boolean {
  return file === other || (file.name === other.name && sameBytes(file.bytes, other.bytes));
}

/** Whether two logs are of one firing: the same bytes, or one goes on where the other ended. */
export function sameFiring({ bytes }: KeptFile, { bytes: other }: KeptFile): boolean {
  const length = withoutEnd(bytes.length <= other.length ? bytes : other);
  return length > 0 && sameBytes(bytes.subarray(0, length), other.subarray(0, length));
}

/** Length without line ends and blanks at the end. */
function withoutEnd(bytes: Uint8Array): number {
  let length = bytes.length;
  while (length > 0 && (bytes[length - 1] ?? 0) <= 0x20) length--;
  return length;
}

function sameBytes(some: Uint8Array, others: Uint8Array): boolean {
  return some.length === others.length && some.every((byte, at) => byte === others[at]);
}
