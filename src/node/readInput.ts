import type { FileHandle } from "node:fs/promises";
import { open } from "node:fs/promises";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { systemProblem } from "./systemProblem.ts";

/** How much of a file is read, and what to say of more. */
export interface InputLimit {
  readonly bytes: number;
  readonly expected: string;
  readonly fix: string;
}

/** A text that a person writes: 500 000 characters have at most 2 MB in UTF-8. */
const WRITTEN_TEXT: InputLimit = {
  bytes: 2 * 2 ** 20,
  expected: "a text that a person writes, of a few pages at most",
  fix: "check that this is the record, schedule or body, and not a log",
};
const CHUNK_BYTES = 1 << 16;

/** The text of a UTF-8 file, or of standard input for `-`; a byte-order mark is dropped. */
export async function readText(path: string): Promise<Result<string>> {
  const bytes = await readBytes(path, WRITTEN_TEXT);
  if (!bytes.ok) return bytes;
  try {
    return ok(new TextDecoder("utf-8", { fatal: true }).decode(bytes.value));
  } catch {
    return failed({
      code: "file/not-text",
      where: path,
      what: "it is not UTF-8 text",
      expected: "a text file in UTF-8",
      fix: "save it as UTF-8 from a text editor",
    });
  }
}

/**
 * The bytes of a file, or of standard input for `-`, whatever its size is said to be: a device has
 * none and never ends.
 * @returns `file/too-large` beyond the limit, or what the system says.
 */
export async function readBytes(path: string, limit: InputLimit): Promise<Result<Uint8Array>> {
  let file: FileHandle | null = null;
  try {
    if (path === "-") return await bounded(process.stdin, path, limit);
    file = await open(path);
    return await bounded(chunksOf(file), path, limit);
  } catch (error) {
    return failed(systemProblem(error, path, "read"));
  } finally {
    await file?.close();
  }
}

async function bounded(
  chunks: AsyncIterable<Uint8Array>,
  path: string,
  limit: InputLimit,
): Promise<Result<Uint8Array>> {
  const kept: Uint8Array[] = [];
  let total = 0;
  for await (const chunk of chunks) {
    total += chunk.length;
    if (total > limit.bytes) return failed(tooLarge(path, limit));
    kept.push(chunk);
  }
  return ok(Buffer.concat(kept));
}

async function* chunksOf(file: FileHandle): AsyncGenerator<Uint8Array> {
  for (;;) {
    const { buffer, bytesRead } = await file.read(new Uint8Array(CHUNK_BYTES), 0, CHUNK_BYTES);
    if (bytesRead === 0) return;
    yield buffer.subarray(0, bytesRead);
  }
}

function tooLarge(path: string, { bytes, expected, fix }: InputLimit): Problem {
  return {
    code: "file/too-large",
    where: path,
    what: `it has more than ${Math.round(bytes / 2 ** 20)} MB`,
    expected,
    fix,
  };
}
