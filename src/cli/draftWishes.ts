import { CONE_TABLES, type ConeSeries, parseCone } from "../core/cones/cone.ts";
import { CONE_MODELS } from "../core/cones/coneModel.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import type { WantedCooling } from "../core/schedule/newCooling.ts";
import type { Schedule } from "../core/schedule/Schedule.ts";
import { parsePace, type WishedPace, wareSizeProblems } from "../core/schedule/wishedPace.ts";
import { nearWord } from "../core/text/nearWord.ts";
import {
  parseDuration,
  parseTemperature,
  type TemperatureUnit,
} from "../core/units/temperature.ts";
import { bodyNamed } from "../core/ware/bodies.ts";
import { wareLength } from "../core/ware/givenWare.ts";
import type { Body } from "../core/ware/Ware.ts";
import { readBody } from "../node/readFiring.ts";

/** What the command line says of the ware, for new and for existing schedules. */
export interface WareOptions {
  readonly body?: string;
  readonly wall?: string;
  readonly base?: string;
  readonly width?: string;
}

/** What the command line wishes of a new schedule. */
export interface WishOptions extends WareOptions {
  readonly cone?: string;
  readonly series?: string;
  readonly cooling?: string;
  readonly atMost?: readonly string[];
  readonly within?: string;
}

/** Ware in numbers [mm]; null where nothing was said. */
export interface WantedWare {
  readonly body: Body | null;
  readonly wallMm: number | null;
  readonly baseMm: number | null;
  readonly widestMm: number | null;
}

/** The wishes for a new schedule, understood. */
export interface Wishes {
  readonly cone: string;
  readonly series: ConeSeries;
  readonly cooling: WantedCooling;
  readonly paces: readonly WishedPace[];
  readonly withinSeconds: number | null;
}

/** The cone and its series, the cooling and the time allowed, or every problem with them. */
export function wishesFrom(options: WishOptions, unit: TemperatureUnit): Result<Wishes> {
  const series = coneSeries(options.series ?? "self-supporting");
  const cone = series.ok ? coneFrom(options.cone, series.value) : ok("");
  const cooling = coolingFrom(options.cooling ?? "natural", unit);
  const paces = pacesFrom(options.atMost, unit);
  const within = withinFrom(options.within);
  if (series.ok && cone.ok && cooling.ok && paces.ok && within.ok)
    return ok({
      cone: cone.value,
      series: series.value,
      cooling: cooling.value,
      paces: paces.value,
      withinSeconds: within.value,
    });
  return failed(
    ...[series, cone, cooling, paces, within].flatMap((part) => (part.ok ? [] : part.problems)),
  );
}

/** Rates that a schedule is to keep to, each with where: `60 C/h from 620 C to 520 C`. */
export function pacesFrom(
  texts: readonly string[] = [],
  unit: TemperatureUnit,
): Result<readonly WishedPace[]> {
  const parsed = texts.map((text) => parsePace(text, { unit, where: "--at-most" }));
  const problems = parsed.flatMap((pace) => (pace.ok ? [] : pace.problems));
  if (problems.length > 0) return failed(...problems);
  return ok(parsed.flatMap((pace) => (pace.ok ? [pace.value] : [])));
}

function withinFrom(text: string | undefined): Result<number | null> {
  if (text === undefined) return ok(null);
  const span = parseDuration(text, { bareUnit: "h", where: "--within" });
  if (span.ok) return span;
  const expected = '"36 h", "30 h 30 min", "30:30" (hours and minutes), or a bare number of hours';
  return failed(...span.problems.map((problem) => ({ ...problem, expected, fix: "--within 36h" })));
}

/** A cone as the command line names it, in its series. */
export function coneFrom(text: string | undefined, series: ConeSeries): Result<string> {
  if (text !== undefined) return parseCone(text, { series, where: "--cone" });
  return failed({
    code: "command/no-cone",
    where: "--cone",
    what: "no cone is named",
    expected: "the cone to reach, with its leading zero: 5, 05, 5.5",
    fix: "--cone 5",
  });
}

/**
 * The ware as the command line describes it.
 * Its body is read from a file, or looked for in the list at the cone that it is fired to.
 */
export async function wareFrom(
  options: WareOptions,
  cone: string | null,
): Promise<Result<WantedWare>> {
  const body = options.body === undefined ? ok(null) : await bodyFrom(options.body, cone);
  const [wall, base, width] = (["wall", "base", "width"] as const).map((option) => {
    const text = options[option];
    const name = option === "width" ? "widest" : option;
    return text === undefined ? ok(null) : wareLength(text, { name, where: `--${option}` });
  }) as [Result<number | null>, Result<number | null>, Result<number | null>];
  if (body.ok && wall.ok && base.ok && width.ok) {
    const sizes = { wallMm: wall.value, baseMm: base.value, widestMm: width.value };
    const wrong = wareSizeProblems(sizes);
    return wrong.length > 0 ? failed(...wrong) : ok({ body: body.value, ...sizes });
  }
  return failed(...[body, wall, base, width].flatMap((part) => (part.ok ? [] : part.problems)));
}

const BODY_FILE = /\.(?:ya?ml|json)$/i;

async function bodyFrom(words: string, cone: string | null): Promise<Result<Body>> {
  if (BODY_FILE.test(words)) return await readBody(words);
  const named = bodyNamed(words, "--body");
  if (cone === null || /\d/.test(words)) return named;
  const fired = bodyNamed(`${words} ${cone}`, "--body");
  return fired.ok ? fired : named;
}

const HOLD = /^hold\s+([\d.]+\s*°?\s*[cf]?)\s+(?:for\s+)?(\d.*)$/i;

function coolingFrom(text: string, unit: TemperatureUnit): Result<WantedCooling> {
  const words = text.trim().toLowerCase();
  if (words === "natural" || words === "slow") return ok({ kind: words });
  const hold = HOLD.exec(words);
  const at = parseTemperature(hold?.[1] ?? "", { unit, where: "--cooling" });
  const span = parseDuration(hold?.[2] ?? "", { where: "--cooling" });
  if (at.ok && span.ok && span.value > 0)
    return ok({ kind: "hold", atC: at.value, seconds: span.value });
  return failed({
    code: "command/cooling",
    where: "--cooling",
    what: `"${text.trim().slice(0, 40)}" is no way of cooling that is known`,
    expected: 'natural, slow, or a hold on the way down with its length: "hold 900C 1h"',
    fix: nearestCooling(words, at.ok ? (hold?.[1] ?? null) : null),
  });
}

/** What was most likely meant by words that are no cooling. */
function nearestCooling(words: string, holdAt: string | null): string {
  if (!/^h[oe]l/.test(words)) return `--cooling ${nearWord(words, ["natural", "slow"]) ?? "slow"}`;
  const at = holdAt ?? /\d+(?:\.\d+)?\s*°?\s*[cf]\b/.exec(words)?.[0] ?? "900C";
  const span = /\d+(?:\.\d+)?\s*(?:h|min)\b/.exec(words)?.[0] ?? "1h";
  return `--cooling "hold ${at.replace(/\s+/g, "").toUpperCase()} ${span}"`;
}

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

/**
 * A series of cones that schedules can be worked out for, as `--series` names it.
 * @returns the series; `command/series-without-model` for a table that is only to look up,
 * `command/series` with the nearest name for anything else.
 */
function coneSeries(text: string): Result<ConeSeries> {
  const solvable = Object.keys(CONE_MODELS) as ConeSeries[];
  const name = text.trim().toLowerCase().replaceAll(/\s+/g, "-");
  const found = solvable.find((series) => series === name);
  if (found !== undefined) return ok(found);
  const common = { where: "--series", expected: `one of ${solvable.join(", ")}` };
  if (Object.hasOwn(CONE_TABLES, name))
    return failed({
      ...common,
      code: "command/series-without-model",
      what: `no schedule can be worked out for ${name} cones: their end points are a table to look up, with no model of holds and rates`,
      fix: `--series self-supporting; to see the table, undunted cones --series ${name}`,
    });
  const near = nearWord(name, solvable);
  return failed({
    ...common,
    code: "command/series",
    what: `"${text}" is not a series of cones`,
    fix: `--series ${near ?? "self-supporting"}`,
  });
}
