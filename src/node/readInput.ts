import { type FileHandle, open } from "node:fs/promises";
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

/** Where the samples of a WAV file lie, and how they are described. */
export interface WaveChunks {
  /** Bytes of the `fmt ` chunk; null when there is none before the samples. */
  readonly format: Uint8Array | null;
  /** First byte of the samples, and how many there are; null when there are none. */
  readonly data: {
    readonly from: number;
    readonly bytes: number;
    /** Bytes that the file claims and does not hold; 0 when whole, null when it never said how many. */
    readonly missing: number | null;
  } | null;
}

/** Size that stands where the true one does not fit, or was never filled in. */
const NO_SIZE = 0xffffffff;

/** A description of samples is far smaller; what claims more is broken. */
const LARGEST_FORMAT = 1024;

/**
 * Walks the chunks of a WAV file until the samples: `ds64` gives sizes over 4 GB (RF64), what is
 * neither description nor samples (LIST, bext, fact, JUNK) is passed over.
 */
export async function waveChunks(source: ByteSource): Promise<WaveChunks> {
  let format: Uint8Array | null = null;
  let longSize: number | null = null;
  let at = 12;
  while (at + 8 <= source.size) {
    const head = await source.read(at, 8);
    const id = new TextDecoder("latin1").decode(head.subarray(0, 4));
    const size = new DataView(head.buffer, head.byteOffset, 8).getUint32(4, true);
    const body = at + 8;
    if (id === "data") return { format, data: dataAt(source, body, { size, longSize }) };
    if (id === "fmt ")
      format = Uint8Array.from(await source.read(body, Math.min(size, LARGEST_FORMAT)));
    if (id === "ds64") longSize = await longDataSize(source, body);
    at = body + size + (size % 2);
  }
  return { format, data: null };
}

function dataAt(
  source: ByteSource,
  from: number,
  { size, longSize }: { readonly size: number; readonly longSize: number | null },
): WaveChunks["data"] {
  const there = source.size - from;
  const claimed = size === NO_SIZE && longSize !== null ? longSize : size;
  // A recorder that was cut off never went back to write the size.
  if (claimed === 0 || claimed === NO_SIZE) return { from, bytes: there, missing: null };
  return { from, bytes: Math.min(claimed, there), missing: Math.max(0, claimed - there) };
}

async function longDataSize(source: ByteSource, at: number): Promise<number | null> {
  const bytes = await source.read(at, 16);
  if (bytes.length < 16) return null;
  return Number(new DataView(bytes.buffer, bytes.byteOffset, 16).getBigUint64(8, true));
}
