import { basename } from "node:path";
import { parseCone } from "../core/cones/coneName.ts";
import type { FiringRecord } from "../core/firing/FiringRecord.ts";
import type { LogOptions } from "../core/log/LogReading.ts";
import { saidTogether } from "../core/log/saidTogether.ts";
import { failed, ok, type Result } from "../core/problem.ts";
import type { Schedule } from "../core/schedule/Schedule.ts";
import { parseDuration } from "../core/units/parseDuration.ts";
import type { WatchInput } from "../core/watch/watched.ts";
import { readBeside } from "../node/readFiring.ts";
import { type LogCommandOptions, logOptionsFrom } from "./options.ts";
import { ownKiln } from "./ownKiln.ts";

/** What the command line says of a firing to watch. */
export interface WatchOptions extends LogCommandOptions {
  readonly cone?: string;
  readonly record?: string;
  readonly against?: string;
  readonly kiln?: readonly string[];
  readonly every: string;
  readonly untilStill: string;
}

/** All that is known before the first look. */
export interface WatchGiven {
  readonly known: Omit<WatchInput, "reading" | "lines">;
  readonly logOptions: LogOptions;
  readonly everySeconds: number;
  readonly untilStillSeconds: number;
  /** What was looked for and not found, as sentences. */
  readonly remarks: readonly string[];
}

/** Shortest time between looks [s]: more often only heats the room. */
const SHORTEST_SECONDS = 0.02;

/** What the command line names, read; or every problem with it. */
export async function watchGiven(path: string, options: WatchOptions): Promise<Result<WatchGiven>> {
  if (path === "-") return failed(needsFile());
  const times = timesFrom(options);
  const logOptions = logOptionsFrom(options);
  const beside = await readBeside(path, {
    recordPath: options.record ?? null,
    schedulePath: options.against ?? null,
  });
  const own =
    options.kiln === undefined
      ? ok(null)
      : await ownKiln(options.kiln, { powerWatt: null, tariffPerKWh: null });
  if (!times.ok || !logOptions.ok || !beside.ok || !own.ok)
    return failed(
      ...[times, logOptions, beside, own].flatMap((part) => (part.ok ? [] : part.problems)),
    );
  const { record, plan, remarks } = beside.value;
  const cone = coneFrom(options.cone, record, plan);
  if (!cone.ok) return cone;
  return ok({
    known: {
      record,
      plan,
      cone: cone.value,
      kiln: own.value?.kiln ?? null,
      offsetK: own.value?.offset?.offsetK ?? null,
    },
    logOptions: { ...saidTogether(record?.log ?? {}, logOptions.value), name: basename(path) },
    ...times.value,
    remarks,
  });
}

function timesFrom(
  options: WatchOptions,
): Result<Pick<WatchGiven, "everySeconds" | "untilStillSeconds">> {
  const every = parseDuration(options.every, { bareUnit: "s", where: "--every" });
  const still = parseDuration(options.untilStill, { bareUnit: "min", where: "--until-still" });
  if (!every.ok || !still.ok)
    return failed(...[every, still].flatMap((part) => (part.ok ? [] : part.problems)));
  if (every.value >= SHORTEST_SECONDS && still.value > 0)
    return ok({ everySeconds: every.value, untilStillSeconds: still.value });
  return failed({
    code: "command/watch-times",
    where: "--every, --until-still",
    what: `"${options.every}" between looks, "${options.untilStill}" without a change`,
    expected: `times above nothing: at least ${SHORTEST_SECONDS} s between looks`,
    fix: "--every 10s --until-still 30min",
  });
}

function coneFrom(
  text: string | undefined,
  record: FiringRecord | null,
  plan: Schedule | null,
): Result<string | null> {
  if (text === undefined) return ok(null);
  const series = record?.series ?? plan?.series ?? "self-supporting";
  return parseCone(text, { series, where: "--cone" });
}

function needsFile() {
  return {
    code: "command/needs-file",
    where: "command line",
    what: "standard input cannot be watched",
    expected: "the file that the logger writes",
    fix: "undunted watch firing.csv",
  } as const;
}
