import type { Result } from "../../core/problem.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import { hire } from "../worker/hire.ts";
import type { ToldOfLog } from "./reviewState.ts";

const looker = hire();

/** What is handed over of a log to name its columns [bytes]. */
const HEAD_BYTES = 65_536;

/** The names of a log's columns, or why it is no log; null when another log was asked about since. */
export function columnsOf(
  log: KeptFile,
  { delimiter, decimal, encoding }: ToldOfLog,
): Promise<Result<readonly string[]> | null> {
  const head = { name: log.name, bytes: log.bytes.slice(0, HEAD_BYTES) };
  return looker.run("columns", { log: head, delimiter, decimal, encoding });
}
