import { type FileHandle, open, stat } from "node:fs/promises";
import { pipeline, Readable } from "node:stream";
import { createGunzip } from "node:zlib";
import { failed, ok, type Result } from "../core/problem.ts";
import { systemProblem } from "./systemProblem.ts";

/** Bytes read in one go. */
const CHUNK_BYTES = 1 << 18;

/**
 * The bytes of a log in parts, from a file or from standard input for `-`; what is compressed with
 * gzip comes out as it was before, whatever its name. A part is only good until the next is asked for.
 *
 * @returns the parts, whose reading may throw errors of the system or of gzip; or `file/missing`, `file/folder`.
 */
export async function logChunks(path: string): Promise<Result<AsyncIterable<Uint8Array>>> {
  if (path === "-") return ok(expanded(process.stdin));
  try {
    const facts = await stat(path);
    if (facts.isDirectory())
      return failed(systemProblem(Object.assign(new Error(), { code: "EISDIR" }), path, "read"));
    return ok(expanded(fileChunks(path)));
  } catch (error) {
    return failed(systemProblem(error, path, "read"));
  }
}

/** All parts of a file, in one and the same memory. */
async function* fileChunks(path: string): AsyncGenerator<Uint8Array> {
  const file: FileHandle = await open(path);
  try {
    const buffer = new Uint8Array(CHUNK_BYTES);
    for (;;) {
      const { bytesRead } = await file.read(buffer, 0, CHUNK_BYTES);
      if (bytesRead === 0) return;
      yield buffer.subarray(0, bytesRead);
    }
  } finally {
    await file.close();
  }
}

async function* expanded(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  const rest = chunks[Symbol.asyncIterator]();
  let first = await rest.next();
  const begin: Uint8Array[] = [];
  while (first.done !== true && begin.length === 0 && first.value.length < 2) {
    begin.push(Uint8Array.from(first.value));
    first = await rest.next();
  }
  if (first.done !== true) begin.push(first.value);
  const all = joined(begin, rest);
  if (isGzip(begin)) yield* gunzipped(all);
  else yield* all;
}

async function* joined(
  begin: readonly Uint8Array[],
  rest: AsyncIterator<Uint8Array>,
): AsyncGenerator<Uint8Array> {
  try {
    yield* begin;
    for (let next = await rest.next(); next.done !== true; next = await rest.next())
      yield next.value;
  } finally {
    await rest.return?.();
  }
}

function isGzip(begin: readonly Uint8Array[]): boolean {
  const [one, two] = begin.flatMap((bytes) => [...bytes.subarray(0, 2)]);
  return one === 0x1f && two === 0x8b;
}

async function* gunzipped(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  const gunzip = createGunzip({ chunkSize: CHUNK_BYTES });
  // Copied, since gzip may still work on a part when the next is read into the same memory.
  const source = Readable.from(copied(chunks));
  pipeline(source, gunzip, () => {
    // An error also ends the loop below, which throws it.
  });
  yield* gunzip as AsyncIterable<Uint8Array>;
}

async function* copied(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  for await (const chunk of chunks) yield Uint8Array.from(chunk);
}
