import { parse } from "csv-parse/sync";
import type { LogOptions, LogReading, ReadingSteps } from "../core/log/reading/LogReading.ts";
import { type LogReader, logReader } from "../core/log/readLog.ts";
import { failed, type Problem, type Result } from "../core/problem.ts";
import { systemProblem } from "./systemProblem.ts";

/** Most bytes of a log once it is expanded: a hundred times a day at one row a second. Own choice. */
const MOST_BYTES = 4 * 2 ** 30;

/** A log as far as it could be read. */
export interface ReadLogSteps {
  readonly reading: Result<LogReading>;
  /** What was decided, also where the reading ended in a problem. */
  readonly steps: ReadingSteps;
}

/**
 * The reading of a log whose bytes come in parts, with what was decided on the way.
 * @param path The file as a person named it, for messages.
 * @returns the reading, problems `log/…`, or `file/too-large`, `file/broken-gzip` and those of the system.
 */
export async function readLogSteps(
  chunks: AsyncIterable<Uint8Array>,
  path: string,
  options: LogOptions,
): Promise<ReadLogSteps> {
  const reader = logReader(options, splitQuoted);
  const reading = await readInto(reader, chunks, path);
  return { reading, steps: reader.steps() };
}

/** As {@link readLogSteps}, the reading alone. */
export async function readLogChunks(
  chunks: AsyncIterable<Uint8Array>,
  path: string,
  options: LogOptions,
): Promise<Result<LogReading>> {
  return (await readLogSteps(chunks, path, options)).reading;
}

async function readInto(
  reader: LogReader,
  chunks: AsyncIterable<Uint8Array>,
  path: string,
): Promise<Result<LogReading>> {
  let total = 0;
  try {
    for await (const chunk of chunks) {
      total += chunk.length;
      if (total > MOST_BYTES) return failed(tooLarge(path));
      if (!reader.push(chunk)) break;
    }
  } catch (error) {
    return failed(gzipProblem(error, path) ?? systemProblem(error, path, "read"));
  }
  return reader.end();
}

function tooLarge(path: string): Problem {
  return {
    code: "file/too-large",
    where: path,
    what: `it has more than ${MOST_BYTES / 2 ** 30} GB of text`,
    expected: "the log of one firing; a day at one reading a second has about 4 MB",
    fix: "cut the log into single firings",
  };
}

/** Errors of zlib have codes of their own: data that are wrong, or that break off. */
function gzipProblem(error: unknown, path: string): Problem | null {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (!code.startsWith("Z_")) return null;
  return {
    code: "file/broken-gzip",
    where: path,
    what:
      code === "Z_BUF_ERROR"
        ? "its compressed data break off before their end"
        : "its compressed data are damaged",
    expected: "a whole file as gzip writes it, or the log itself",
    fix: "copy the file again, or expand it with gzip -d as far as that goes and give the result",
  };
}

/**
 * Cells of one record that holds quotes, or null when its quotes do not close.
 * A quote inside a cell that none opened stands for itself; nothing is trimmed.
 */
export function splitQuoted(record: string, delimiter: string): readonly string[] | null {
  try {
    const rows: string[][] = parse(record, {
      delimiter,
      relax_quotes: true,
      relax_column_count: true,
      // A record may hold line ends inside its quotes; the reader has taken zero bytes out before.
      record_delimiter: "\0",
    });
    const [cells] = rows;
    return rows.length === 1 && cells !== undefined ? cells : null;
  } catch {
    return null;
  }
}
