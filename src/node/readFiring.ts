import { access } from "node:fs/promises";
import { basename, dirname, extname, join } from "node:path";
import type { FiringRecord } from "../core/firing/record.ts";
import { parseRecord } from "../core/firing/record.ts";
import type { LogOptions, LogReading } from "../core/log/LogReading.ts";
import { readLog } from "../core/log/readLog.ts";
import { failed, ok, type Result } from "../core/problem.ts";
import type { Schedule } from "../core/schedule/Schedule.ts";
import { readInput, readText } from "./readInput.ts";
import { readSchedule } from "./readSchedule.ts";
import { splitQuoted } from "./splitQuoted.ts";

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
    readonly options: Omit<LogOptions, "name">;
    readonly recordPath: string | null;
    readonly schedulePath: string | null;
  },
): Promise<Result<FiringFiles>> {
  const bytes = await readInput(path);
  if (!bytes.ok) return bytes;
  const record = await readRecord(path, given.recordPath);
  if (!record.ok) return record;
  const name = path === "-" ? "standard input" : basename(path);
  const reading = readLog(
    bytes.value,
    { ...record.value?.log, ...given.options, name },
    splitQuoted,
  );
  if (!reading.ok) return reading;
  const plan = await readPlan(path, given.schedulePath, record.value);
  if (!plan.ok) return plan;
  return ok({ reading: reading.value, record: record.value, ...plan.value });
}

async function readRecord(
  logPath: string,
  recordPath: string | null,
): Promise<Result<FiringRecord | null>> {
  const path = recordPath ?? (await recordBeside(logPath));
  if (path === null) return ok(null);
  const text = await readText(path);
  return text.ok ? parseRecord(text.value, basename(path)) : text;
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

async function isThere(path: string): Promise<boolean> {
  try {
    await access(path);
    return true;
  } catch {
    return false;
  }
}
