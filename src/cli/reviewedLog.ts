import type { EarlierLog } from "../core/firing/FiringHistory.ts";
import type { FiringReview } from "../core/firing/FiringReview.ts";
import { reviewFiring } from "../core/firing/reviewFiring.ts";
import type { SoundSaid } from "../core/firing/soundSaid.ts";
import type { LogOptions } from "../core/log/LogReading.ts";
import type { Result } from "../core/problem.ts";
import { readFiring } from "../node/readFiring.ts";
import { aroundFiring } from "./aroundFiring.ts";

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
