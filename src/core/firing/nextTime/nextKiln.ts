import type { AssumedKiln } from "../../kiln/AssumedKiln.ts";
import { asAssumedKiln } from "../../kiln/asAssumedKiln.ts";
import { learnKiln } from "../../kiln/learnKiln.ts";
import type { Problem } from "../../problem.ts";
import { pastOffset } from "../../schedule/pastOffset.ts";
import type { PastFiring } from "../FiringHistory.ts";
import type { NextTimePaths } from "./NextTime.ts";

/** The kiln and the thermocouple as the drafting command will see them. */
export interface NextKiln {
  /** Null when the logs that can be given do not show the kiln. */
  readonly own: AssumedKiln | null;
  /** Paths behind `--kiln`; empty when none can be given. */
  readonly logs: readonly string[];
  /** Added to planned temperatures [K]. */
  readonly offsetK: number;
  /** `--offset` is needed, because no log carries the offset. */
  readonly tellsOffset: boolean;
  /** Why no log is given; null when some are. */
  readonly whyNone: string | null;
}

/** What `draft` learns from the logs that can be named to it, or why they cannot be. */
export function nextKiln(
  now: PastFiring,
  earlier: readonly PastFiring[],
  paths: NextTimePaths,
): NextKiln {
  const offsetK = pastOffset(now.offset === null ? [] : [now.offset])?.offsetK ?? 0;
  const without = (whyNone: string): NextKiln => ({
    own: null,
    logs: [],
    offsetK: Math.round(offsetK),
    tellsOffset: Math.round(offsetK) !== 0,
    whyNone,
  });
  if (paths.log === null) return without("draft cannot read this log as it was read here");
  if (now.firing === null) return without("the log holds no temperature");
  const learned = learnKiln([...earlier.flatMap(({ firing }) => firing ?? []), now.firing]);
  if (!learned.ok) return without(whyNot(learned.problems));
  const offsets = [...earlier, now].flatMap(({ offset }) => offset ?? []);
  const past = pastOffset(offsets);
  const tellsOffset = !paths.recordBeside && Math.round(offsetK) !== 0;
  const own = asAssumedKiln(learned.value);
  return {
    own,
    logs: [...earlier.flatMap(({ path }) => path ?? []), paths.log],
    offsetK: tellsOffset ? Math.round(offsetK) : (past?.offsetK ?? 0),
    tellsOffset,
    whyNone: null,
  };
}

/** In words without numbers, for they are said in the reader's own unit elsewhere. */
function whyNot(problems: readonly Problem[]): string {
  return problems.some(({ code }) => code === "kiln/no-natural-cooling")
    ? "no stretch of the log shows it falling by itself, lid shut and power off"
    : "the log does not show enough of it to learn from";
}
