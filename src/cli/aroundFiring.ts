import { basename, extname } from "node:path";
import type { EarlierLog } from "../core/firing/FiringHistory.ts";
import type { NextTimePaths } from "../core/firing/nextTime/NextTime.ts";
import { shellQuoted } from "../core/firing/nextTime/shellQuoted.ts";
import { earlierBeside } from "../node/earlierBeside.ts";
import { freeName } from "../node/freeName.ts";
import { readEarlierLogs } from "../node/readEarlierLogs.ts";
import type { FiringFiles } from "../node/readFiring.ts";
import { type CommonOptions, say } from "./conversation.ts";

interface AroundOptions extends CommonOptions {
  readonly record?: string;
  readonly kiln?: readonly string[];
}

/** Earlier logs that are offered at most; more say the same at greater length. */
const MOST_OFFERED = 5;

/**
 * The earlier logs that were given, and the files by their names for the next firing. Without
 * earlier logs, those that lie beside are offered on standard error, and not used.
 */
export async function aroundFiring(
  path: string,
  files: FiringFiles,
  { options, asWritten }: { readonly options: AroundOptions; readonly asWritten: boolean },
): Promise<{ readonly earlier: readonly EarlierLog[]; readonly next: NextTimePaths }> {
  const earlier = options.kiln === undefined ? [] : await readEarlierLogs(options.kiln);
  if (options.kiln === undefined && !options.quiet) await offer(path, files, options);
  const { planPath } = files;
  const isNamed = planPath !== null && planPath !== "-";
  const stem = isNamed ? `${basename(planPath, extname(planPath))}-next` : "next";
  return {
    earlier,
    next: {
      log: path === "-" || !asWritten ? null : path,
      recordBeside: options.record === undefined,
      schedule: isNamed ? planPath : null,
      output: await freeName(stem, ".yaml"),
    },
  };
}

async function offer(path: string, files: FiringFiles, options: AroundOptions): Promise<void> {
  const kiln = files.record?.kiln ?? null;
  const { start } = files.reading;
  if (path === "-" || kiln === null || start === null) return;
  const beside = await earlierBeside(path, { kiln, start });
  if (beside.length === 0) return;
  const logs = beside.slice(-MOST_OFFERED).map(shellQuoted).join(" ");
  say(
    `earlier logs of this kiln lie beside it; to see what has changed: undunted review ${shellQuoted(path)} --kiln ${logs}`,
    options,
  );
}
