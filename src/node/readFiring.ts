import { stat } from "node:fs/promises";
import { basename, dirname, extname, join } from "node:path";
import type { FiringRecord } from "../core/firing/FiringRecord.ts";
import type { LogReading, LogSaid } from "../core/log/LogReading.ts";
import { saidTogether } from "../core/log/saidTogether.ts";
import { failed, ok, type Result } from "../core/problem.ts";
import type { Schedule } from "../core/schedule/Schedule.ts";
import { logChunks } from "./logChunks.ts";
import { readText } from "./readInput.ts";
import { type ReadLogSteps, readLogSteps } from "./readLogChunks.ts";

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
  const { parseRecord } = await import("../core/firing/record.ts");
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
  const { readSchedule } = await import("./readSchedule.ts");
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
