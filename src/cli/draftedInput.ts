import { type AssumedKiln, REFERENCE_KILN } from "../core/kiln/LearnedKiln.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import type { Mending } from "../core/reports/mendingBlocks.ts";
import { pieceOf, toldWare } from "../core/schedule/coolingLimits.ts";
import { newSchedule } from "../core/schedule/newSchedule.ts";
import { changedSchedule } from "../core/schedule/repairSchedule.ts";
import type { Schedule } from "../core/schedule/Schedule.ts";
import type { Solvable } from "../core/schedule/solveSchedule.ts";
import { printDifference } from "../core/text/quantities.ts";
import { sizedAsMug } from "../core/ware/givenWare.ts";
import { readSchedule } from "../node/readFiring.ts";
import {
  coneFrom,
  newOnlyProblems,
  pacesFrom,
  type WishOptions,
  wantedOfRead,
  wareFrom,
  wishesFrom,
} from "./draftWishes.ts";
import { type OwnKiln, offsetFrom, ownKiln, tariffFrom, wattsFrom } from "./options.ts";

/** What the command line says of what to draft. */
export interface DraftWishOptions extends WishOptions {
  readonly new?: boolean;
  readonly solve?: Solvable;
  readonly repair?: boolean;
  readonly damp?: boolean;
  readonly kiln?: readonly string[];
  readonly power?: string;
  readonly tariff?: string;
  readonly offset?: string;
  readonly unit?: "C" | "F";
}

/** A schedule to draft: read, changed or new, with what is known of kiln, ware and thermocouple. */
export interface DraftedInput {
  readonly schedule: Schedule;
  /** Null when nothing was changed. */
  readonly mending: Mending | null;
  readonly known: {
    readonly kiln?: AssumedKiln;
    /** Null for what kilns are usually out by. */
    readonly offsetK: number | null;
    readonly offsetSigmaK?: number;
  };
  /** What the thermocouple is taken to be out by; null where it is the usual. */
  readonly thermocouple: string | null;
  /** What was assumed, as sentences. */
  readonly assumed: readonly string[];
}

/** The schedule that the command line asks for, or every problem with what it says. */
export async function draftedInput(
  path: string | undefined,
  options: DraftWishOptions,
): Promise<Result<DraftedInput>> {
  const clash = contradiction(path, options);
  if (clash !== null) return failed(clash);
  const offset = offsetFrom(options.offset);
  const power = wattsFrom(options.power);
  const tariff = tariffFrom(options.tariff);
  if (!power.ok || !tariff.ok)
    return failed(...[power, tariff].flatMap((part) => (part.ok ? [] : part.problems)));
  const told = { powerWatt: power.value, tariffPerKWh: tariff.value };
  const own = options.kiln === undefined ? ok(null) : await ownKiln(options.kiln, told);
  if (!offset.ok || !own.ok)
    return failed(...[offset, own].flatMap((part) => (part.ok ? [] : part.problems)));
  const past = options.offset === undefined ? (own.value?.offset ?? null) : null;
  const known = {
    offsetK: past?.offsetK ?? offset.value,
    ...(past !== null && { offsetSigmaK: past.sigmaK }),
    ...(own.value && { kiln: own.value.kiln }),
  };
  const made =
    path === undefined ? await drafted(options, known) : await changedRead(path, options, known);
  if (!made.ok) return made;
  const unit = options.unit ?? made.value.schedule.unit;
  const thermocouple =
    past !== null
      ? pastText(past, unit)
      : offset.value === null
        ? null
        : toldText(offset.value, unit);
  return ok({ ...made.value, thermocouple });
}

async function drafted(
  options: DraftWishOptions,
  known: DraftedInput["known"],
): Promise<Result<Omit<DraftedInput, "thermocouple">>> {
  const unit = options.unit ?? "C";
  const wishes = wishesFrom(options, unit);
  const ware = await wareFrom(options, options.cone ?? null);
  if (!wishes.ok || !ware.ok)
    return failed(...[wishes, ware].flatMap((part) => (part.ok ? [] : part.problems)));
  const { body, widestMm } = ware.value;
  const { wallMm, baseMm } = sizedAsMug(ware.value);
  const made = newSchedule({
    ...wishes.value,
    ...known,
    unit,
    ware: {
      body,
      wallMm,
      baseMm,
      widestMm,
      damp: options.damp ?? false,
    },
  });
  if (!made.ok) return made;
  const sizes =
    ware.value.wallMm === null && ware.value.baseMm === null
      ? [
          `wall ${wallMm} mm and base ${baseMm} mm, as of an ordinary mug, are assumed; --wall and --base say it`,
        ]
      : [];
  return ok({
    schedule: made.value,
    mending: null,
    known,
    assumed: [...sizes, ...pieceOf(made.value.ware).assumed],
  });
}

async function changedRead(
  path: string,
  options: DraftWishOptions,
  known: DraftedInput["known"],
): Promise<Result<Omit<DraftedInput, "thermocouple">>> {
  const read = await readSchedule(path);
  const idle = newOnlyProblems(options);
  if (!read.ok || idle.length > 0) return failed(...(read.ok ? [] : read.problems), ...idle);
  const wanted = wantedOfRead(read.value, options);
  if (!wanted.ok) return wanted;
  const { schedule, said } = wanted.value;
  const told = await wareFrom(options, schedule.cone);
  if (!told.ok) return told;
  const before = { ...schedule, ware: toldWare(schedule.ware, told.value) };
  const paces = pacesFrom(options.atMost, schedule.unit);
  if (!paces.ok) return paces;
  const assumed = [...said, ...pieceOf(before.ware).assumed];
  const asked = { paces: paces.value, repair: options.repair ?? false };
  if (!asked.repair && options.solve === undefined && asked.paces.length === 0)
    return ok({ schedule: before, mending: null, known, assumed });
  const cone = before.cone === null ? coneFrom(undefined, before.series) : ok(before.cone);
  if (options.solve !== undefined && !cone.ok) return cone;
  const solve =
    options.solve === undefined || !cone.ok ? null : { part: options.solve, cone: cone.value };
  const changed = changedSchedule(before, { ...asked, solve, ...known });
  if (!changed.ok) return changed;
  const { after, repair } = changed.value;
  const kiln = known.kiln ?? REFERENCE_KILN;
  return ok({ schedule: after, mending: { before, after, repair, kiln }, known, assumed });
}

/** What past firings say of the thermocouple, in one sentence. */
function pastText(past: NonNullable<OwnKiln["offset"]>, unit: "C" | "F"): string {
  const { sigmaK, firings } = past;
  const count = firings === 1 ? "one past firing" : `${firings} past firings`;
  return `${offText(past.offsetK, unit)} by the witness cones of ${count}, give or take ${printDifference(sigmaK, unit)}; the cones here allow for that`;
}

function toldText(offsetK: number, unit: "C" | "F"): string {
  return `${offText(offsetK, unit)}, as --offset says; the cones here allow for that`;
}

function offText(offsetK: number, unit: "C" | "F"): string {
  const size = printDifference(Math.abs(offsetK), unit);
  return size.startsWith("0 ")
    ? "reads right"
    : `reads ${size} too ${offsetK < 0 ? "high" : "low"}`;
}

function contradiction(path: string | undefined, options: DraftWishOptions): Problem | null {
  const common = { code: "command/contradiction", where: "command line" } as const;
  if (options.new && path !== undefined)
    return {
      ...common,
      what: "both --new and a schedule are given",
      expected: "a schedule to draft, or --new for one that is not there yet",
      fix: "drop one",
    };
  if (!options.new && path === undefined)
    return {
      code: "command/no-schedule",
      where: "command line",
      what: "no schedule is given",
      expected: "a schedule file, - for standard input, or --new",
      fix: swallowed(options.kiln) ?? "undunted draft --new --cone 5",
    };
  const forKiln = (["power", "tariff"] as const).find((name) => options[name] !== undefined);
  if (options.kiln === undefined && forKiln !== undefined)
    return {
      code: "command/no-kiln",
      where: `--${forKiln}`,
      what: `--${forKiln} is given without --kiln`,
      expected: "logs of the kiln, from whose output column the electricity is worked out",
      fix: `add --kiln with its logs, or leave --${forKiln} out`,
    };
  const changes = [options.solve && "--solve", options.repair && "--repair"];
  const asked = changes.filter((change) => change);
  if (!options.new || asked.length === 0) return null;
  return {
    ...common,
    what: `${["--new", ...asked].join(" and ")} are given together`,
    expected: "--new, or changes of a schedule that is there",
    fix: "write the new one with -o, then change that file",
  };
}

/** --kiln takes every word after it; a schedule among its logs was meant to stand before. */
function swallowed(kiln: readonly string[] | undefined): string | null {
  const schedule = kiln?.find((path) => /\.(ya?ml|json)$/i.test(path));
  if (schedule === undefined) return null;
  const logs = kiln?.filter((path) => path !== schedule).join(" ");
  return `write the schedule before --kiln, which takes every name after it for a log: undunted draft ${schedule} --kiln ${logs}`;
}
