import type { Problem } from "../problem.ts";
import { toldWare } from "../schedule/coolingLimits.ts";
import { draftSchedule } from "../schedule/draftSchedule.ts";
import { newSchedule } from "../schedule/newSchedule.ts";
import { changedSchedule } from "../schedule/repairSchedule.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { paceWords, type WishedPace } from "../schedule/wishedPace.ts";
import { sizedAsMug } from "../ware/givenWare.ts";
import {
  mendedKiln,
  type NextAsk,
  type NextContext,
  type NextTime,
  type NextTimePaths,
  type WantedChange,
} from "./NextFiring.ts";

type Command = Pick<NextTime, "command" | "commandSays" | "scheduleSays" | "schedule">;

/** Why a kiln with which no schedule comes out clean is left aside. */
const NOT_SHOWN = "with yours, as far as the logs show it, no schedule mends everything";

/** Why a kiln that cannot make the cone is left aside. */
const AS_IT_WAS = "no schedule makes the cone with yours as it was, so have it mended first";

/**
 * The line that drafts the next firing. What it asks for is worked out here first, so that it is
 * offered only when it will run, and what it cannot mend is said.
 */
export function nextCommand(
  context: NextContext,
  changes: readonly WantedChange[],
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
  const asks = changes.flatMap(({ ask }) => ask ?? []);
  if (plan !== null && paths.schedule !== null)
    return forPlan(context, { plan, path: paths.schedule, asks, output: paths.output });
  return forNew(context, asks, paths.output);
}

interface Planned {
  readonly plan: Schedule;
  readonly path: string;
  readonly asks: readonly NextAsk[];
  readonly output: string;
}

function none(why: string): Command {
  return {
    command: null,
    commandSays: `No command is given: ${why}.`,
    scheduleSays: `No schedule is given: ${why}.`,
    schedule: null,
  };
}

function forPlan(context: NextContext, planned: Planned): Command {
  const { plan, asks, output } = planned;
  const { kiln, ware, wantedCone } = context;
  const schedule = { ...plan, cone: plan.cone ?? wantedCone, ware: toldWare(plan.ware, ware) };
  const head = ["undunted", "draft", asFile(planned.path)];
  const tail = [
    ...(plan.cone === null && wantedCone !== null ? ["--cone", wantedCone] : []),
    ...wareWords(context),
    ...kilnWords(context),
  ];
  if (asks.length === 0)
    return {
      command: line([...head, ...tail]),
      ...says(`Nothing above changes the schedule; this lays it out again ${byKiln(context)}.`, {
        reminder: ownBodyLeftOut(context),
      }),
      schedule,
    };
  const known = { offsetK: kiln.offsetK, ...(kiln.own && { kiln: kiln.own }) };
  const cone = asks.some(({ kind }) => kind === "cone") ? schedule.cone : null;
  const paces = pacesOf(asks);
  const repair = asks.some(({ kind }) => kind !== "cone");
  const solve = cone === null ? null : ({ part: "peak", cone } as const);
  const changed = changedSchedule(schedule, { paces, repair, solve, ...known });
  const left = changed.ok
    ? draftSchedule({
        schedule: changed.value.after,
        start: null,
        findingsOnly: true,
        ...known,
      }).findings.filter(({ severity }) => severity === "warning")
    : [];
  if ((!changed.ok || left.length > 0) && kiln.own !== null)
    return forPlan({ ...context, kiln: mendedKiln(kiln, NOT_SHOWN) }, planned);
  if (!changed.ok) return none(whyRefused(changed.problems));
  const limits = [...new Set(left.map(({ topic }) => topic))];
  return {
    command: line([
      ...head,
      ...(repair ? ["--repair"] : []),
      ...(solve ? ["--solve", solve.part] : []),
      ...paceOptions(context, paces),
      ...tail,
      ...["-o", output],
    ]),
    ...says(`${changeSaid({ cone, paces, repair })}, ${byKiln(context)}.`, {
      reminder: reminders(context),
      limits: limits.length === 0 ? "" : ` It cannot mend all: ${limits.join(", ")} still warns.`,
    }),
    schedule: changed.value.after,
  };
}

function changeSaid(change: {
  readonly cone: string | null;
  readonly paces: readonly WishedPace[];
  readonly repair: boolean;
}): string {
  const { cone, paces, repair } = change;
  if (!repair)
    return `This moves the peak alone, so that cone ${cone} falls by the end of the top hold`;
  const kept = paces.length > 0 ? "keeps the schedule to what is said above, and " : "";
  const peak =
    cone === null
      ? ""
      : `, and moves the peak so that cone ${cone} falls by the end of the top hold`;
  return `This ${kept}mends it with the smallest change in time${peak}`;
}

function pacesOf(asks: readonly NextAsk[]): readonly WishedPace[] {
  return asks.flatMap((ask) => (ask.kind === "pace" ? [ask] : []));
}

function paceOptions({ facts }: NextContext, paces: readonly WishedPace[]): readonly string[] {
  return paces.flatMap((pace) => ["--at-most", paceWords(pace, unitOf(facts))]);
}

function unitOf({ reading }: NextContext["facts"]): "C" | "F" {
  return reading.unit === "F" ? "F" : "C";
}

function whyRefused(problems: readonly Problem[]): string {
  return `draft would refuse it, ${problems.map(({ code, where }) => `${where} (${code})`).join("; ")}`;
}

function forNew(context: NextContext, asks: readonly NextAsk[], output: string): Command {
  const { zone, kiln, ware, wantedCone, facts } = context;
  const cone = wantedCone ?? zone.heatwork.position.cone;
  const { series } = zone.heatwork;
  if (cone === null) return none("no cone is wanted by the record, and none was down");
  const unit = unitOf(facts);
  const paces = pacesOf(asks);
  const cooling = coolingWord(context, paces);
  const made = newSchedule({
    cone,
    series,
    unit,
    ware: { ...ware, ...sizedAsMug(ware) },
    cooling: { kind: cooling },
    paces,
    withinSeconds: null,
    offsetK: kiln.offsetK,
    ...(kiln.own && { kiln: kiln.own }),
  });
  const weak = made.ok ? undefined : made.problems.find(({ code }) => code.endsWith("too-weak"));
  if (weak !== undefined && kiln.own !== null)
    return forNew({ ...context, kiln: mendedKiln(kiln, NOT_SHOWN) }, asks, output);
  if (!made.ok) return none(whyRefused(made.problems));
  return {
    command: line([
      ...["undunted", "draft", "--new", "--cone", cone],
      ...(series === "self-supporting" ? [] : ["--series", series]),
      ...wareWords(context),
      ...(ware.damp ? ["--damp"] : []),
      ...["--cooling", cooling],
      ...paceOptions(context, paces),
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
function coolingWord({ zone }: NextContext, paces: readonly WishedPace[]): "natural" | "slow" {
  const falling = zone.crossings.filter(({ direction }) => direction === "cooling");
  const seen = falling.length > 0 && falling.every(({ measured }) => measured !== "no");
  return seen && paces.every(({ fromC, toC }) => toC > fromC) ? "natural" : "slow";
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
  if (!kiln.isOwn) return "";
  const words = kiln.tellsOffset ? "--offset" : "--kiln";
  return ` The new file is for this thermocouple: give the same ${words} whenever it is drafted again.`;
}

function line(words: readonly string[]): string {
  return words.map(shellQuoted).join(" ");
}

/** A file's name as a word of a command that cannot be taken for an option: `./-odd.csv`. */
export function asFile(path: string): string {
  return path.startsWith("-") && path !== "-" ? `./${path}` : path;
}

const PLAIN = /^[\w@%+=:,./-]+$/;

/** A word for a POSIX shell, in single quotes where it holds more than letters, digits and `-_./` and the like. */
export function shellQuoted(word: string): string {
  return PLAIN.test(word) ? word : `'${word.replaceAll("'", String.raw`'\''`)}'`;
}
