import { basename, extname } from "node:path";
import type { NextTimePaths } from "../core/advice/NextFiring.ts";
import { asFile, shellQuoted } from "../core/advice/nextCommand.ts";
import type { EarlierLog } from "../core/history/history.ts";
import type { LogOptions } from "../core/log/reading/LogReading.ts";
import type { Result } from "../core/problem.ts";
import type { SoundSaid } from "../core/record/moment.ts";
import type { FiringReview } from "../core/review/FiringReview.ts";
import { reviewFiring } from "../core/review/reviewFiring.ts";
import { earlierBeside } from "../node/filesBeside.ts";
import { type FiringFiles, readFiring } from "../node/readFiring.ts";
import { freeName } from "../node/writeOutput.ts";

/** How a log is to be reviewed; the same for every log of a command. */
export interface ReviewWays {
  readonly logOptions: Omit<LogOptions, "name">;
  readonly heard: readonly SoundSaid[];
  readonly recordPath: string | null;
  readonly schedulePath: string | null;
  /** Logs that were given as earlier ones, read; null when none were given. */
  readonly earlier: readonly EarlierLog[] | null;
  /** Whether earlier logs that lie beside are offered. */
  readonly offers: boolean;
}

/** Reads and reviews one log with what lies beside it: a map from its files, remarks beside. */
export async function reviewedLog(
  path: string,
  ways: ReviewWays,
): Promise<{ readonly review: Result<FiringReview>; readonly remarks: readonly string[] }> {
  const files = await readFiring(path, {
    options: ways.logOptions,
    recordPath: ways.recordPath,
    schedulePath: ways.schedulePath,
  });
  if (!files.ok) return { review: files, remarks: [] };
  const around = await aroundFiring(path, files.value, {
    earlier: ways.earlier,
    offers: ways.offers,
    recordNamed: ways.recordPath !== null,
    asWritten: Object.keys(ways.logOptions).length === 0,
  });
  const { earlier, next, remarks } = around;
  return {
    review: reviewFiring({ ...files.value, heard: ways.heard, earlier, next }),
    remarks: [...files.value.remarks, ...remarks],
  };
}

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
