import { draftSchedule } from "../../schedule/draftSchedule.ts";
import { newSchedule } from "../../schedule/newSchedule.ts";
import { repairSchedule } from "../../schedule/repairSchedule.ts";
import type { Schedule } from "../../schedule/Schedule.ts";
import { solveSchedule } from "../../schedule/solveSchedule.ts";
import { toldWare } from "../../schedule/toldWare.ts";
import { asFile } from "./asFile.ts";
import { mendedKiln } from "./kilnTooWeak.ts";
import type { NextContext } from "./NextContext.ts";
import type { NextChange, NextTime, NextTimePaths } from "./NextTime.ts";
import { shellQuoted } from "./shellQuoted.ts";

type Command = Pick<NextTime, "command" | "commandSays" | "scheduleSays" | "schedule">;

/** An offset of less moves no cone by more than the cone model is out by [K]. */
const TELLING_OFFSET_K = 2;

/** Why a kiln with which no schedule comes out clean is left aside. */
const NOT_SHOWN = "with yours, as far as the logs show it, no schedule mends everything";

/** Why a kiln that cannot make the cone is left aside. */
const AS_IT_WAS = "no schedule makes the cone with yours as it was, so have it mended first";

/** Where walls and base are not known, as `draft --new` takes them [mm]. */
const COMMON_WALL_MM = 6;

/**
 * The line that drafts the next firing. What it asks for is worked out here first, so that it is
 * offered only when it will run, and what it cannot mend is said.
 */
export function nextCommand(
  context: NextContext,
  changes: readonly NextChange[],
  paths: NextTimePaths,
): Command {
  const { facts, reachC, kiln } = context;
  const { plan } = facts;
  if (reachC !== null)
    return nextCommand(
      { ...context, reachC: null, kiln: mendedKiln(kiln, AS_IT_WAS) },
      changes,
      paths,
    );
  if (plan !== null && paths.schedule !== null)
    return forPlan(context, { plan, path: paths.schedule, changes, output: paths.output });
  return forNew(context, changes, paths.output);
}

interface Planned {
  readonly plan: Schedule;
  readonly path: string;
  readonly changes: readonly NextChange[];
  readonly output: string;
}

function forPlan(context: NextContext, planned: Planned): Command {
  const { plan, changes, output } = planned;
  const { kiln, ware, wantedCone } = context;
  const schedule = { ...plan, cone: plan.cone ?? wantedCone, ware: toldWare(plan.ware, ware) };
  const inSchedule = changes.filter((change) => change.inSchedule);
  const head = ["undunted", "draft", asFile(planned.path)];
  const tail = [
    ...(plan.cone === null && wantedCone !== null ? ["--cone", wantedCone] : []),
    ...wareWords(context),
    ...kilnWords(context),
  ];
  if (inSchedule.length === 0)
    return {
      command: line([...head, ...tail]),
      ...says(`Nothing above changes the schedule; this lays it out again ${byKiln(context)}.`, {
        reminder: ownBodyLeftOut(context),
      }),
      schedule,
    };
  const known = { offsetK: kiln.offsetK, ...(kiln.own && { kiln: kiln.own }) };
  const onlyCone = inSchedule.every(({ about }) => about === "cone") && schedule.cone !== null;
  const solved = onlyCone
    ? solveSchedule({ schedule, cone: schedule.cone as string, solve: "peak", ...known })
    : null;
  if (solved?.ok)
    return {
      command: line([...head, "--solve", "peak", ...tail, "-o", output]),
      ...says(
        `This moves the peak alone, so that cone ${schedule.cone} is just down, ${byKiln(context)}.`,
        { reminder: reminders(context) },
      ),
      schedule: solved.value,
    };
  const repair = repairSchedule({ schedule, ...known });
  const left = draftSchedule({ schedule: repair.after, start: null, ...known }).findings.filter(
    ({ severity }) => severity === "warning",
  );
  const limits = [...new Set(left.map(({ topic }) => topic))];
  if (limits.length > 0 && kiln.own !== null)
    return forPlan({ ...context, kiln: mendedKiln(kiln, NOT_SHOWN) }, planned);
  return {
    command: line([...head, "--repair", ...tail, "-o", output]),
    ...says(`This mends the schedule with the smallest change in time, ${byKiln(context)}.`, {
      reminder: reminders(context),
      limits: limits.length === 0 ? "" : ` It cannot mend all: ${limits.join(", ")} still warns.`,
    }),
    schedule: repair.after,
  };
}

function forNew(context: NextContext, changes: readonly NextChange[], output: string): Command {
  const { zone, kiln, ware, wantedCone, facts } = context;
  const none = (why: string): Command => ({
    command: null,
    commandSays: `No command is given: ${why}.`,
    scheduleSays: `No schedule is given: ${why}.`,
    schedule: null,
  });
  const cone = wantedCone ?? zone.heatwork.position.cone;
  const { series } = zone.heatwork;
  if (cone === null) return none("no cone is wanted by the record, and none was down");
  const unit = facts.reading.unit === "F" ? "F" : "C";
  const wallMm = ware.wallMm ?? ware.baseMm ?? COMMON_WALL_MM;
  const cooling = coolingWord(context, changes);
  const made = newSchedule({
    cone,
    series,
    unit,
    ware: { ...ware, wallMm, baseMm: ware.baseMm ?? wallMm },
    cooling: { kind: cooling },
    withinSeconds: null,
    offsetK: kiln.offsetK,
    ...(kiln.own && { kiln: kiln.own }),
  });
  const weak = made.ok ? undefined : made.problems.find(({ code }) => code.endsWith("too-weak"));
  if (weak !== undefined && kiln.own !== null)
    return forNew({ ...context, kiln: mendedKiln(kiln, NOT_SHOWN) }, changes, output);
  if (!made.ok)
    return none(
      `draft would refuse it, ${made.problems.map(({ code, where }) => `${where} (${code})`).join("; ")}`,
    );
  return {
    command: line([
      ...["undunted", "draft", "--new", "--cone", cone],
      ...(series === "self-supporting" ? [] : ["--series", series]),
      ...wareWords(context),
      ...(ware.damp ? ["--damp"] : []),
      ...["--cooling", cooling],
      ...(unit === "F" ? ["--unit", "F"] : []),
      ...kilnWords(context),
      ...["-o", output],
    ]),
    ...says(
      `The schedule of this firing is not known, so this writes a new one for cone ${cone}${wantedCone === null ? ", the one that was reached" : ""}, ${byKiln(context)}.`,
      { reminder: reminders(context) },
    ),
    schedule: made.value,
  };
}

/** Left to the kiln only where both inversions were seen to be cooled through slowly enough. */
function coolingWord({ zone }: NextContext, changes: readonly NextChange[]): "natural" | "slow" {
  const falling = zone.crossings.filter(({ direction }) => direction === "cooling");
  const seen = falling.length > 0 && falling.every(({ measured }) => measured !== "no");
  return seen && changes.every(({ about }) => about !== "cooling") ? "natural" : "slow";
}

function wareWords({ ware }: NextContext): readonly string[] {
  const { body, wallMm, baseMm, widestMm } = ware;
  return [
    ...(body === null ? [] : ["--body", body.name]),
    ...(wallMm === null ? [] : ["--wall", millimetres(wallMm)]),
    ...(baseMm === null ? [] : ["--base", millimetres(baseMm)]),
    ...(widestMm === null ? [] : ["--width", millimetres(widestMm)]),
  ];
}

function millimetres(mm: number): string {
  return `${Number(mm.toPrecision(4))}mm`;
}

function kilnWords({ kiln }: NextContext): readonly string[] {
  return [
    ...(kiln.tellsOffset ? ["--offset", `${kiln.offsetK}C`] : []),
    ...(kiln.logs.length === 0 ? [] : ["--kiln", ...kiln.logs.map(asFile)]),
  ];
}

/** By what kiln and thermocouple it is worked out, in words. */
function byKiln({ kiln }: NextContext): string {
  if (kiln.whyNone === null)
    return kiln.logs.length === 1
      ? "for the kiln and the thermocouple as this log shows them"
      : "for the kiln and the thermocouple as these logs show them";
  return `for a kiln that is assumed, not yours (${kiln.whyNone})`;
}

/** What a command does; the reminder speaks of its options, which nobody sees without it. */
function says(
  text: string,
  { reminder = "", limits = "" } = {},
): Pick<NextTime, "commandSays" | "scheduleSays"> {
  return { commandSays: `${text}${reminder}${limits}`, scheduleSays: `${text}${limits}` };
}

/** What a person has to add or repeat for the command to speak of this ware and this thermocouple. */
function reminders(context: NextContext): string {
  return `${sameAgain(context)}${ownBodyLeftOut(context)}`;
}

/** Says which bodies the command does not know; nothing where all are of the list or in the plan. */
function ownBodyLeftOut({ ware, facts }: NextContext): string {
  const unsaid = ware.ownBodies.filter((name) => name !== facts.plan?.ware.body?.name);
  if (unsaid.length === 0) return "";
  return ` It knows nothing of ${unsaid.join(", ")}: save that body as a file of its own and add --body FILE, or the limits are those of other clay.`;
}

/** A reminder that the new file is for this thermocouple; nothing where that makes no odds. */
function sameAgain({ kiln }: NextContext): string {
  if (Math.abs(kiln.offsetK) < TELLING_OFFSET_K) return "";
  const words = kiln.tellsOffset ? "--offset" : "--kiln";
  return ` The new file is for this thermocouple: give the same ${words} whenever it is drafted again.`;
}

function line(words: readonly string[]): string {
  return words.map(shellQuoted).join(" ");
}
