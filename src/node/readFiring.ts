import { type FileHandle, open, stat } from "node:fs/promises";
import { basename, dirname, extname, join } from "node:path";
import { pipeline, Readable } from "node:stream";
import { createGunzip } from "node:zlib";
import { type GlazeWishes, type GlazeWork, glazeWorkOf } from "../core/glaze/glazeWork.ts";
import { type LogReading, type LogSaid, saidTogether } from "../core/log/reading/LogReading.ts";
import { failed, ok, type Result } from "../core/problem.ts";
import type { FiringRecord } from "../core/record/FiringRecord.ts";
import type { Schedule } from "../core/schedule/Schedule.ts";
import { parseSchedule } from "../core/schedule/scheduleFile.ts";
import { parseBody } from "../core/ware/ownBody.ts";
import type { Body } from "../core/ware/Ware.ts";
import { readText } from "./readInput.ts";
import { type ReadLogSteps, readLogSteps } from "./readLogChunks.ts";
import { systemProblem } from "./systemProblem.ts";

/** A log with the record beside it and the schedule it was fired to, as far as they are there. */
export interface FiringFiles {
  readonly reading: LogReading;
  readonly record: FiringRecord | null;
  readonly plan: Schedule | null;
  /** Where the plan was found, as a path from the same folder as the log's. */
  readonly planPath: string | null;
  /** What was looked for and not found, as sentences. */
  readonly remarks: readonly string[];
}

/**
 * Reads a log, the record beside it (same name, `.yaml`, `.yml` or `.json`) and its schedule.
 * What a person says in `options` goes before what the record says of the log.
 */
export async function readFiring(
  path: string,
  given: {
    readonly options: LogSaid;
    readonly recordPath: string | null;
    readonly schedulePath: string | null;
  },
): Promise<Result<FiringFiles>> {
  const log = await readRecordedLog(path, given);
  if (!log.ok) return log;
  const { reading, record } = log.value;
  if (!reading.ok) return reading;
  const plan = await readPlan(path, given.schedulePath, record);
  if (!plan.ok) return plan;
  return ok({ reading: reading.value, record, ...plan.value });
}

/** A log as far as it could be read, by what its record says of it; a problem when there is no reading it at all. */
export async function readRecordedLog(
  path: string,
  given: { readonly options: LogSaid; readonly recordPath: string | null },
): Promise<Result<ReadLogSteps & { readonly record: FiringRecord | null }>> {
  const chunks = await logChunks(path);
  if (!chunks.ok) return chunks;
  const record = await readRecord(path, given.recordPath);
  if (!record.ok) return record;
  const name = path === "-" ? "standard input" : basename(path);
  const said = saidTogether(record.value?.log ?? {}, given.options);
  const read = await readLogSteps(chunks.value, path, { ...said, name });
  return ok({ ...read, record: record.value });
}

/** What lies beside a log that is still being written: its record, and the schedule that is fired. */
export async function readBeside(
  path: string,
  given: { readonly recordPath: string | null; readonly schedulePath: string | null },
): Promise<Result<Omit<FiringFiles, "reading">>> {
  const record = await readRecord(path, given.recordPath);
  if (!record.ok) return record;
  const plan = await readPlan(path, given.schedulePath, record.value);
  return plan.ok ? ok({ record: record.value, ...plan.value }) : plan;
}

async function readRecord(
  logPath: string,
  recordPath: string | null,
): Promise<Result<FiringRecord | null>> {
  const path = recordPath ?? (await recordBeside(logPath));
  if (path === null) return ok(null);
  const text = await readText(path);
  if (!text.ok) return text;
  // What reads documents is loaded only where there is one: most logs stand alone.
  const { parseRecord } = await import("../core/record/parseRecord.ts");
  return parseRecord(text.value, basename(path));
}

async function recordBeside(logPath: string): Promise<string | null> {
  if (logPath === "-") return null;
  const stem = join(dirname(logPath), basename(logPath).replace(/(\.[^.]+)?(\.gz)?$/, ""));
  for (const ending of [".yaml", ".yml", ".json"])
    if (stem + ending !== logPath && (await isThere(stem + ending))) return stem + ending;
  return null;
}

async function readPlan(
  logPath: string,
  schedulePath: string | null,
  record: FiringRecord | null,
): Promise<Result<Pick<FiringFiles, "plan" | "planPath" | "remarks">>> {
  if (schedulePath !== null) return planAt(schedulePath);
  const named = record?.schedule;
  if (!named) return ok({ plan: null, planPath: null, remarks: [] });
  const folder = logPath === "-" ? "." : dirname(logPath);
  for (const path of placesFor(named, folder)) if (await isThere(path)) return planAt(path);
  const remark = `the record names the schedule ${named}, which is neither beside it nor in ../schedules: firing not compared with it`;
  return ok({ plan: null, planPath: null, remarks: [remark] });
}

async function planAt(
  path: string,
): Promise<Result<Pick<FiringFiles, "plan" | "planPath" | "remarks">>> {
  const schedule = await readSchedule(path);
  return schedule.ok
    ? ok({ plan: schedule.value, planPath: path, remarks: [] })
    : failed(...schedule.problems);
}

function placesFor(named: string, folder: string): readonly string[] {
  const names = extname(named) === "" ? [`${named}.yaml`, `${named}.json`, named] : [named];
  return names.flatMap((name) => [join(folder, name), join(folder, "..", "schedules", name)]);
}

/** Whether a file is there to be found; what a pipe or a device would give, nobody asked for. */
async function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    (facts) => facts.isFile(),
    () => false,
  );
}

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

/** A clay body of one's own from its YAML or JSON file. */
export async function readBody(path: string): Promise<Result<Body>> {
  const text = await readText(path);
  return text.ok ? parseBody(text.value, basename(path)) : text;
}

/** A glaze worked out from its YAML or JSON file, or from standard input for `-`. */
export async function readGlaze(path: string, wishes: GlazeWishes): Promise<Result<GlazeWork>> {
  const text = await readText(path);
  if (!text.ok) return text;
  return glazeWorkOf(text.value, path === "-" ? "standard input" : basename(path), wishes);
}

/** A schedule from its YAML or JSON file, or from standard input for `-`. */
export async function readSchedule(path: string): Promise<Result<Schedule>> {
  const text = await readText(path);
  if (!text.ok) return text;
  return parseSchedule(text.value, path === "-" ? "standard input" : basename(path));
}
