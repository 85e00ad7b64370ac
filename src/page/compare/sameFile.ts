import type { KeptFile } from "../bench/KeptFile.ts";

/** Whether two files have one name and the same bytes. */
export function sameFile(file: KeptFile, other: KeptFile): boolean {
  if (file === other) return true;
  return (
    file.name === other.name &&
    file.bytes.length === other.bytes.length &&
    file.bytes.every((byte, at) => byte === other.bytes[at])
  );
}
