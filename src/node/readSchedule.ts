import { basename } from "node:path";
import type { Result } from "../core/problem.ts";
import type { Schedule } from "../core/schedule/Schedule.ts";
import { parseSchedule } from "../core/schedule/scheduleFile.ts";
import { readText } from "./readInput.ts";

/** A schedule from its YAML or JSON file, or from standard input for `-`. */
export async function readSchedule(path: string): Promise<Result<Schedule>> {
  const text = await readText(path);
  if (!text.ok) return text;
  return parseSchedule(text.value, path === "-" ? "standard input" : basename(path));
}
