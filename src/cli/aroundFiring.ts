import { basename, extname } from "node:path";
import type { EarlierLog } from "../core/firing/FiringHistory.ts";
import type { NextTimePaths } from "../core/firing/nextTime/NextTime.ts";
import { asFile, shellQuoted } from "../core/firing/nextTime/nextCommand.ts";
import { earlierBeside } from "../node/earlierBeside.ts";
import { freeName } from "../node/freeName.ts";
import type { FiringFiles } from "../node/readFiring.ts";

/** What is asked about the files around a log. */
interface Around {
  /** Logs that were given as earlier ones, read; null when none were given. */
  readonly earlier: readonly EarlierLog[] | null;
  /** Whether logs that lie beside are offered when none were given. */
  readonly offers: boolean;
  /** Whether the record was named rather than found beside the log. */
  readonly recordNamed: boolean;
  /** Whether the log was read without any option. */
  readonly asWritten: boolean;
}

/** Earlier logs that are offered at most; more say the same at greater length. */
const MOST_OFFERED = 5;

/**
 * The earlier logs that were given, and the files by their names for the next firing. Without
 * earlier logs, those that lie beside are offered in a remark, and not used.
 */
export async function aroundFiring(
  path: string,
  files: FiringFiles,
  around: Around,
): Promise<{
  readonly earlier: readonly EarlierLog[];
  readonly next: NextTimePaths;
  readonly remarks: readonly string[];
}> {
  const remarks = around.earlier === null && around.offers ? await offered(path, files) : [];
  const { planPath } = files;
  const isNamed = planPath !== null && planPath !== "-";
  const stem = isNamed ? `${basename(planPath, extname(planPath))}-next` : "next";
  return {
    earlier: around.earlier ?? [],
    remarks,
    next: {
      log: path === "-" || !around.asWritten ? null : path,
      recordBeside: !around.recordNamed,
      schedule: isNamed ? planPath : null,
      output: await freeName(stem, ".yaml"),
    },
  };
}

async function offered(path: string, files: FiringFiles): Promise<readonly string[]> {
  const kiln = files.record?.kiln ?? null;
  const { start } = files.reading;
  if (path === "-" || kiln === null || start === null) return [];
  const beside = await earlierBeside(path, { kiln, start });
  if (beside.length === 0) return [];
  const logs = beside.slice(-MOST_OFFERED).map(asFile).map(shellQuoted).join(" ");
  return [
    `earlier logs of this kiln lie beside it; to see what has changed: undunted review ${shellQuoted(asFile(path))} --kiln ${logs}`,
  ];
}
