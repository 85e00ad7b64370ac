import { basename } from "node:path";
import type { LogSaid } from "../core/log/LogReading.ts";
import type { Problem } from "../core/problem.ts";
import { explainText } from "../core/reports/explainText.ts";
import type { Paint } from "../core/reports/paint.ts";
import { readRecordedLog } from "../node/readFiring.ts";
import { EXIT } from "./conversation.ts";

/** How a log was read, in text; where it could not be read, how far, with its problems. */
export async function explainedLog(
  path: string,
  ways: { readonly logOptions: LogSaid; readonly recordPath: string | null },
  paint: Paint,
): Promise<{
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly exit: number;
}> {
  const { logOptions, recordPath } = ways;
  const log = await readRecordedLog(path, { options: logOptions, recordPath });
  if (!log.ok) return { text: "", problems: log.problems, exit: EXIT.wrongUse };
  const { reading, steps } = log.value;
  const name = path === "-" ? "standard input" : basename(path);
  const text = explainText({ name, steps, reading: reading.ok ? reading.value : null }, paint);
  return reading.ok
    ? { text, problems: [], exit: EXIT.fine }
    : { text, problems: reading.problems, exit: EXIT.wrongUse };
}
