import { parseCone } from "../core/cones/coneName.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import type { Schedule } from "../core/schedule/Schedule.ts";
import { coneSeries } from "./coneSeries.ts";
import { coneFrom, type WishOptions } from "./draftWishes.ts";

/** What the command line wishes of a schedule that is read. */
interface ReadWishes extends WishOptions {
  readonly damp?: boolean;
  readonly solve?: string;
  readonly repair?: boolean;
}

/** A schedule with cone, series and dampness as the command line wants them. */
export interface WantedSchedule {
  readonly schedule: Schedule;
  /** What gave way, as sentences. */
  readonly said: readonly string[];
}

/** Wishes that only a new schedule is made by; a read one stays as it is. */
export function newOnlyProblems(options: WishOptions): readonly Problem[] {
  return (["cooling", "within"] as const)
    .filter((name) => options[name] !== undefined)
    .map((name) => ({
      code: "command/new-only",
      where: `--${name}`,
      what: "only a new schedule is made by it, and the schedule given is there already",
      expected: `--${name} together with --new`,
      fix: `leave --${name} out, or give --new and --cone in place of the schedule`,
    }));
}

/**
 * A read schedule as the command line wants it: cone and series instead of its own, and damp ware.
 * @returns the problems of the names; `command/damp-glazed` for ware that was bisqued.
 */
export function wantedOfRead(read: Schedule, options: ReadWishes): Result<WantedSchedule> {
  const series = options.series === undefined ? ok(read.series) : coneSeries(options.series);
  const damp = dampState(read.ware.state, options.damp === true);
  const cone = series.ok ? wantedCone(read, { ...options, to: series.value }) : ok(null);
  if (!series.ok || !damp.ok || !cone.ok)
    return failed(...[series, cone, damp].flatMap((part) => (part.ok ? [] : part.problems)));
  const schedule = {
    ...read,
    cone: cone.value,
    series: series.value,
    ware: { ...read.ware, state: damp.value },
  };
  return ok({ schedule, said: gaveWay(read, schedule, options) });
}

function wantedCone(
  read: Schedule,
  by: { readonly cone?: string; readonly to: Schedule["series"] },
): Result<string | null> {
  if (by.cone !== undefined) return coneFrom(by.cone, by.to);
  if (read.cone === null || by.to === read.series) return ok(read.cone);
  const same = parseCone(read.cone, { series: by.to, where: "--series" });
  if (same.ok) return same;
  return failed(
    ...same.problems.map((problem) => ({
      ...problem,
      what: `the cone of the schedule, ${read.cone}, is not one of the ${by.to} series`,
      fix: `${problem.fix.replace("write ", "--cone ").replaceAll('"', "")}, or leave --series out`,
    })),
  );
}

function dampState(
  state: Schedule["ware"]["state"],
  damp: boolean,
): Result<Schedule["ware"]["state"]> {
  if (!damp) return ok(state);
  if (state !== "bisqued" && state !== "glazed on bisque") return ok("damp");
  return failed({
    code: "command/damp-glazed",
    where: "--damp",
    what: `the ware of the schedule is ${state}, so its clay was fired before and cannot be damp`,
    expected: "raw clay, as ware.state of the schedule says it: bone dry, damp, glazed raw",
    fix: "leave --damp out; for raw ware, correct ware.state in the schedule",
  });
}

function gaveWay(read: Schedule, now: Schedule, options: ReadWishes): readonly string[] {
  const judged = options.solve === undefined && !options.repair;
  return [
    ...(now.series === read.series
      ? []
      : [`the schedule is made for ${read.series} cones; ${now.series} cones are judged here`]),
    ...(judged && read.cone !== null && now.cone !== null && now.cone !== read.cone
      ? [
          `the schedule is made for cone ${read.cone} and is judged by cone ${now.cone} as it stands; --solve peak changes it so that cone ${now.cone} goes down`,
        ]
      : []),
  ];
}
