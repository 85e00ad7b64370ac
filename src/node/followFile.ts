import { type FileHandle, open, stat } from "node:fs/promises";
import { performance } from "node:perf_hooks";
import { setTimeout as wait } from "node:timers/promises";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { systemProblem } from "./systemProblem.ts";

/** A clock that tests may turn themselves. */
interface FollowClock {
  /** Seconds on a clock that never jumps. */
  readonly seconds: () => number;
  /** Comes back after so many seconds, or when the signal says so. */
  readonly wait: (seconds: number, signal: AbortSignal) => Promise<void>;
}

/** One look at a file that may be growing. */
export interface FileLook {
  /** All whole lines since its beginning; read them before the next look. */
  readonly bytes: Uint8Array;
  /** How many lines that is. */
  readonly lines: number;
  /** Something stands behind the last whole line. */
  readonly hasHalfLine: boolean;
  /** Since the last look: `anew` when it was replaced or cut, `missing` when it is not there. */
  readonly change: "grown" | "same" | "anew" | "missing";
  /** How often it has begun anew. */
  readonly restarts: number;
  /** How long it has not changed, as far as was seen [s]. */
  readonly stillSeconds: number;
}

/** How a file is followed. */
export interface FollowOptions {
  readonly everySeconds: number;
  /** After so long without a change the following ends. */
  readonly untilStillSeconds: number;
  readonly signal: AbortSignal;
  readonly clock?: FollowClock;
}

/** Largest log that is followed [bytes]: weeks of one-second readings. */
const LARGEST_BYTES = 64 * 2 ** 20;
/** Bytes at both ends of what was read that are held against the file again. */
const COMPARED_BYTES = 256;

/** Errors that pass: a share that is away, a file between its old and its new self. */
const PASSING = ["ENOENT", "EBUSY", "ESTALE", "EIO", "ETIMEDOUT", "EHOSTDOWN", "EAGAIN"];

const SYSTEM_CLOCK: FollowClock = {
  seconds: () => performance.now() / 1000,
  wait: async (seconds, signal) => {
    await wait(seconds * 1000, undefined, { signal }).catch(() => undefined);
  },
};

/** What has been read of a file. */
interface Kept {
  bytes: Uint8Array;
  length: number;
  inode: number;
  changedMs: number;
  restarts: number;
}

/**
 * Follows a file by looking at it again and again, which works on network shares too: size, time and
 * inode say whether it changed, and only what was appended is read. A replaced file that begins with
 * what was read before has grown; anything else begins anew. A last line without its end is not
 * shown. A file that is not there is waited for.
 *
 * @returns looks, the last when the file has been still for long enough or the signal came; or a
 * problem `file/…`, `watch/not-a-file` or `watch/too-large`, after which it ends.
 */
export async function* followFile(
  path: string,
  options: FollowOptions,
): AsyncGenerator<Result<FileLook>, void, void> {
  const { everySeconds, untilStillSeconds, signal, clock = SYSTEM_CLOCK } = options;
  const kept: Kept = nothingKept(0);
  let changedAt = clock.seconds();
  while (!signal.aborted) {
    const looked = await look(path, kept);
    if (!looked.ok) {
      yield looked;
      return;
    }
    const change = looked.value;
    if (change === "grown" || change === "anew") changedAt = clock.seconds();
    const stillSeconds = clock.seconds() - changedAt;
    yield ok({ ...linesOf(kept), change, restarts: kept.restarts, stillSeconds });
    if (stillSeconds >= untilStillSeconds) return;
    await clock.wait(everySeconds, signal);
  }
}

function nothingKept(restarts: number): Kept {
  return { bytes: new Uint8Array(0), length: 0, inode: -1, changedMs: -1, restarts };
}

function linesOf({ bytes, length }: Kept): Pick<FileLook, "bytes" | "lines" | "hasHalfLine"> {
  const { end, count } = wholeLines(bytes.subarray(0, length));
  return { bytes: bytes.subarray(0, end), lines: count, hasHalfLine: end < length };
}

/** Looks once; what is new goes into `kept`. */
async function look(path: string, kept: Kept): Promise<Result<FileLook["change"]>> {
  let file: FileHandle | null = null;
  try {
    const facts = await stat(path);
    if (!facts.isFile() && !facts.isDirectory()) return failed(notAFile(path));
    file = await open(path, "r");
    return await lookInto(file, path, kept);
  } catch (error) {
    if (PASSING.includes((error as NodeJS.ErrnoException).code ?? "")) return ok("missing");
    return failed(systemProblem(error, path, "read"));
  } finally {
    await file?.close();
  }
}

async function lookInto(
  file: FileHandle,
  path: string,
  kept: Kept,
): Promise<Result<FileLook["change"]>> {
  const { size, mtimeMs, ino } = await file.stat();
  if (size > LARGEST_BYTES) return failed(tooLarge(path, size));
  const isFirst = kept.inode === -1;
  if (size === kept.length && mtimeMs === kept.changedMs && ino === kept.inode) return ok("same");
  const isNew = !isFirst && (size < kept.length || !(await goesOn(file, kept, ino)));
  if (isNew) Object.assign(kept, nothingKept(kept.restarts + 1));
  const before = kept.length;
  await readMore(file, kept, size);
  kept.inode = ino;
  kept.changedMs = mtimeMs;
  if (isNew) return ok("anew");
  return ok(kept.length > before ? "grown" : "same");
}

/** Whether a file still begins with what was read of it: all of it when it is another file. */
async function goesOn(file: FileHandle, kept: Kept, inode: number): Promise<boolean> {
  const { length } = kept;
  if (inode !== kept.inode) return isSame(file, kept, { from: 0, to: length });
  const head = Math.min(COMPARED_BYTES, length);
  return (
    (await isSame(file, kept, { from: 0, to: head })) &&
    (await isSame(file, kept, { from: Math.max(0, length - COMPARED_BYTES), to: length }))
  );
}

async function isSame(
  file: FileHandle,
  kept: Kept,
  { from, to }: { readonly from: number; readonly to: number },
): Promise<boolean> {
  const now = Buffer.alloc(to - from);
  const { bytesRead } = await file.read(now, 0, to - from, from);
  return bytesRead === to - from && now.equals(kept.bytes.subarray(from, to));
}

async function readMore(file: FileHandle, kept: Kept, size: number): Promise<void> {
  if (size > kept.bytes.length) {
    const grown = new Uint8Array(Math.max(size, 2 * kept.bytes.length));
    grown.set(kept.bytes.subarray(0, kept.length));
    kept.bytes = grown;
  }
  while (kept.length < size) {
    const { bytesRead } = await file.read(kept.bytes, kept.length, size - kept.length, kept.length);
    if (bytesRead === 0) return;
    kept.length += bytesRead;
  }
}

function notAFile(path: string): Problem {
  return {
    code: "watch/not-a-file",
    where: path,
    what: "it is a pipe or a device, which cannot be looked at again and again",
    expected: "the file that the logger writes",
    fix: "let the logger write a file; what comes through a pipe, undunted review reads once",
  };
}

function tooLarge(path: string, size: number): Problem {
  return {
    code: "watch/too-large",
    where: path,
    what: `it has ${Math.round(size / 2 ** 20)} MB`,
    expected: `a log of at most ${LARGEST_BYTES / 2 ** 20} MB, which is weeks of one-second readings`,
    fix: "let the logger begin a new file for each firing",
  };
}

const LINE_FEED = 0x0a;
const CARRIAGE_RETURN = 0x0d;

/** The whole lines at the beginning of a file that is still being written. */
interface WholeLines {
  /** Bytes up to the end of the last whole line. */
  readonly end: number;
  readonly count: number;
}

/**
 * Where the last whole line of a text ends: in UTF-16, told by its mark or its zero bytes, in any
 * encoding that keeps ASCII, and with line ends of every kind.
 */
function wholeLines(bytes: Uint8Array): WholeLines {
  const low = lowByteOf(bytes);
  if (low !== null) return wideLines(bytes, low);
  const mark = bytes.includes(LINE_FEED) ? LINE_FEED : CARRIAGE_RETURN;
  let count = 0;
  for (let at = bytes.indexOf(mark); at >= 0; at = bytes.indexOf(mark, at + 1)) count++;
  return { end: bytes.lastIndexOf(mark) + 1, count };
}

/** Which byte of a pair holds the letter in UTF-16; null when it is not that. */
function lowByteOf(bytes: Uint8Array): 0 | 1 | null {
  const [a, b, c, d] = bytes;
  if ((a === 0xff && b === 0xfe) || (a !== 0 && b === 0 && c !== 0 && d === 0)) return 0;
  if ((a === 0xfe && b === 0xff) || (a === 0 && b !== 0 && c === 0 && d !== 0)) return 1;
  return null;
}

function wideLines(bytes: Uint8Array, low: 0 | 1): WholeLines {
  let end = 0;
  let count = 0;
  for (let at = 0; at + 1 < bytes.length; at += 2)
    if (bytes[at + low] === LINE_FEED && bytes[at + 1 - low] === 0) {
      end = at + 2;
      count++;
    }
  return { end, count };
}
