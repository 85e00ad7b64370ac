import { parseCone } from "../core/cones/coneName.ts";
import { failed, ok, type Result } from "../core/problem.ts";
import type { WantedCooling } from "../core/schedule/newCooling.ts";
import { parseDuration } from "../core/units/parseDuration.ts";
import { parseLength } from "../core/units/parseLength.ts";
import { parseTemperature } from "../core/units/parseTemperature.ts";
import type { TemperatureUnit } from "../core/units/temperature.ts";
import { bodyNamed } from "../core/ware/bodies.ts";
import type { Body } from "../core/ware/Ware.ts";

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
  readonly cooling?: string;
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
  readonly cooling: WantedCooling;
  readonly withinSeconds: number | null;
}

/** The cone, the cooling and the time allowed, or every problem with them. */
export function wishesFrom(options: WishOptions, unit: TemperatureUnit): Result<Wishes> {
  const cone = coneFrom(options.cone);
  const cooling = coolingFrom(options.cooling ?? "natural", unit);
  const within =
    options.within === undefined
      ? ok(null)
      : parseDuration(options.within, { bareUnit: "h", where: "--within" });
  if (cone.ok && cooling.ok && within.ok)
    return ok({ cone: cone.value, cooling: cooling.value, withinSeconds: within.value });
  return failed(...[cone, cooling, within].flatMap((part) => (part.ok ? [] : part.problems)));
}

/** A cone as the command line names it. */
export function coneFrom(text: string | undefined): Result<string> {
  if (text !== undefined) return parseCone(text, { series: "self-supporting", where: "--cone" });
  return failed({
    code: "command/no-cone",
    where: "--cone",
    what: "no cone is named",
    expected: "the cone to reach, with its leading zero: 5, 05, 5.5",
    fix: "--cone 5",
  });
}

/** The ware as the command line describes it; its body is looked for at the cone it is fired to. */
export function wareFrom(options: WareOptions, cone: string | null): Result<WantedWare> {
  const body = options.body === undefined ? ok(null) : bodyFrom(options.body, cone);
  const [wall, base, width] = (["wall", "base", "width"] as const).map((name) => {
    const text = options[name];
    return text === undefined ? ok(null) : parseLength(text, { where: `--${name}` });
  }) as [Result<number | null>, Result<number | null>, Result<number | null>];
  if (body.ok && wall.ok && base.ok && width.ok)
    return ok({
      body: body.value,
      wallMm: wall.value,
      baseMm: base.value,
      widestMm: width.value,
    });
  return failed(...[body, wall, base, width].flatMap((part) => (part.ok ? [] : part.problems)));
}

function bodyFrom(words: string, cone: string | null): Result<Body> {
  const named = bodyNamed(words, "--body");
  if (cone === null || /\d/.test(words)) return named;
  const fired = bodyNamed(`${words} ${cone}`, "--body");
  return fired.ok ? fired : named;
}

const HOLD = /^hold\s+([\d.]+\s*°?\s*[cf]?)\s+(?:for\s+)?(\d.*)$/i;

function coolingFrom(text: string, unit: TemperatureUnit): Result<WantedCooling> {
  const words = text.trim();
  if (words === "natural" || words === "slow") return ok({ kind: words });
  const hold = HOLD.exec(words);
  const at = parseTemperature(hold?.[1] ?? "", { unit, where: "--cooling" });
  const span = parseDuration(hold?.[2] ?? "", { where: "--cooling" });
  if (at.ok && span.ok && span.value > 0)
    return ok({ kind: "hold", atC: at.value, seconds: span.value });
  return failed({
    code: "command/cooling",
    where: "--cooling",
    what: `"${words.slice(0, 40)}" is no way of cooling that is known`,
    expected: 'natural, slow, or a hold on the way down: "hold 900C 1h"',
    fix: "--cooling slow",
  });
}
