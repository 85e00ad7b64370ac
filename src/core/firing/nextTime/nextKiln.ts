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
  /** Added to planned temperatures [K]; null where no witness cone says it. */
  readonly offsetK: number | null;
  /** It differs from what kilns are usually out by. */
  readonly isOwn: boolean;
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
  const told = pastOffset(now.offset === null ? [] : [now.offset]);
  const isUsual =
    told === null || now.offset === null || !isWorthTelling(told.offsetK, now.offset.usual.offsetK);
  const offsetK = isUsual ? null : Math.round(told.offsetK);
  const without = (whyNone: string): NextKiln => ({
    own: null,
    logs: [],
    offsetK,
    isOwn: offsetK !== null,
    tellsOffset: offsetK !== null,
    whyNone,
  });
  if (paths.log === null) return without("draft cannot read this log as it was read here");
  if (now.firing === null) return without("the log holds no temperature");
  const learned = learnKiln([...earlier.flatMap(({ firing }) => firing ?? []), now.firing]);
  if (!learned.ok) return without(whyNot(learned.problems));
  const offsets = [...earlier, now].flatMap(({ offset }) => offset ?? []);
  const past = pastOffset(offsets);
  const tellsOffset = !paths.recordBeside && offsetK !== null;
  const own = asAssumedKiln(learned.value);
  return {
    own,
    logs: [...earlier.flatMap(({ path }) => path ?? []), paths.log],
    offsetK: tellsOffset ? offsetK : (past?.offsetK ?? null),
    isOwn: offsetK !== null,
    tellsOffset,
    whyNone: null,
  };
}

/** An offset this near to what kilns are usually out by moves no cone by more than the model is out [K]. */
const TELLING_OFFSET_K = 2;

function isWorthTelling(offsetK: number, usualK: number): boolean {
  return Math.abs(offsetK - usualK) >= TELLING_OFFSET_K;
}

/** In words without numbers, for they are said in the reader's own unit elsewhere. */
function whyNot(problems: readonly Problem[]): string {
  return problems.some(({ code }) => code === "kiln/no-natural-cooling")
    ? "no stretch of the log shows it falling by itself, lid shut and power off"
    : "the log does not show enough of it to learn from";
}
