import { open } from "node:fs/promises";
import { failed, ok, type Result } from "../core/problem.ts";
import { type InputLimit, readBytes } from "./readInput.ts";
import { systemProblem } from "./systemProblem.ts";

/** Bytes that can be read from any place, so that a file of many gigabytes needs little memory. */
export interface ByteSource {
  readonly size: number;
  /** So many bytes from a place, fewer at the end; good until the next read. */
  readonly read: (at: number, bytes: number) => Promise<Uint8Array>;
  readonly close: () => Promise<void>;
}

/** Standard input is held in memory as a whole. */
const HELD_WHOLE: InputLimit = {
  bytes: 2 ** 30,
  expected: "at most 1 GB on standard input, which has to be held as a whole",
  fix: "give the name of the file instead",
};

/** A file as a source of bytes; standard input (`-`) is held whole. */
export async function byteSource(path: string): Promise<Result<ByteSource>> {
  if (path === "-") return wholeInput();
  try {
    const file = await open(path, "r");
    const facts = await file.stat();
    if (facts.isDirectory()) {
      await file.close();
      return failed(systemProblem(Object.assign(new Error(), { code: "EISDIR" }), path, "read"));
    }
    let buffer = Buffer.alloc(0);
    return ok({
      size: facts.size,
      async read(at, bytes) {
        if (buffer.length < bytes) buffer = Buffer.alloc(bytes);
        const { bytesRead } = await file.read(buffer, 0, bytes, at);
        return buffer.subarray(0, bytesRead);
      },
      close: () => file.close(),
    });
  } catch (error) {
    return failed(systemProblem(error, path, "read"));
  }
}

async function wholeInput(): Promise<Result<ByteSource>> {
  const bytes = await readBytes("-", HELD_WHOLE);
  if (!bytes.ok) return bytes;
  const whole = bytes.value;
  return ok({
    size: whole.length,
    read: async (at, count) => whole.subarray(at, at + count),
    close: async () => {},
  });
}
