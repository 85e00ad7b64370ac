import { z } from "zod";
import { type DocumentFormat, readDocument } from "../document/readDocument.ts";
import { schemaProblems } from "../document/schemaProblems.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { shown } from "../units/quantity.ts";
import { BODIES, bodyNamed, UNKNOWN_BODY } from "./bodies.ts";
import { BODY_WORDS, OwnBody } from "./bodyFormat.ts";
import type { Body, Property } from "./Ware.ts";

/** A body file, as YAML or JSON: one's own body, to be named on the command line. */
export const BodyFile = z
  .strictObject({ formatVersion: z.literal(1).describe("1"), ...OwnBody.shape })
  .describe("a clay body of one's own");

const BODY_DOCUMENT: DocumentFormat = {
  room: "body",
  thing: "a clay body",
  neededKeys: "formatVersion, and what is different from its base",
  example: "formatVersion: 1, base: stoneware cone 6, ruptureMPa: 30",
  schema: BodyFile,
  missingCode: "body/missing",
  otherWords: new Map([
    ["title", "name"],
    ["version", "formatVersion"],
    ["body", "base"],
    ...BODY_WORDS,
  ]),
  expected: new Map(),
  quotedKeys: [],
  shorten: new Map(),
};

/**
 * A body from the text of its file.
 *
 * @param name File name, for problems.
 * @returns All problems of the file at once, each with the place where it stands.
 */
export function parseBody(text: string, name: string): Result<Body> {
  const document = readDocument(text, name, BODY_DOCUMENT);
  if (!document.ok) return document;
  const shape = BodyFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, BODY_DOCUMENT));
  return userBody(shape.data, document.value.placeOf);
}

/** A property as a person gives it: the value alone, or with its 10 and 90 % points and source. */
type GivenProperty =
  | number
  | {
      readonly value: number;
      readonly low?: number | undefined;
      readonly high?: number | undefined;
      readonly source?: string | undefined;
    };

/** Name of a place inside the body, for problems. */
type PlaceOf = (path: readonly string[]) => string;

/** Source of a property that a person gave without saying where it comes from. */
export const YOURS = "yours";

/** A body of one's own: one of the list, and what is different about it. */
export type GivenBody = {
  /** Words for the body to start from; `unknown` when nothing is said. */
  readonly base?: string | undefined;
  readonly name?: string | undefined;
} & { readonly [P in BodyProperty]?: GivenProperty | undefined };

/** What a property may be, and how its unit is said. */
interface Limits {
  readonly least: number;
  readonly most: number;
  readonly unit: string;
}

const SHARE: Limits = { least: 0, most: 1, unit: "as a share of volume" };

const LIMITS: Readonly<Record<BodyProperty, Limits>> = {
  densityKgPerM3: { least: 500, most: 4000, unit: "kg/m³" },
  heatCapacityJPerKgK: { least: 500, most: 2000, unit: "J/kgK" },
  conductivityWPerMK: { least: 0.1, most: 20, unit: "W/mK" },
  youngGPa: { least: 0.5, most: 400, unit: "GPa" },
  ruptureMPa: { least: 0.5, most: 500, unit: "MPa" },
  quartzFraction: SHARE,
  cristobaliteFraction: SHARE,
  matrixExpansionPerK: { least: 0.1e-6, most: 20e-6, unit: "per kelvin: 4.5e-6" },
};

/**
 * A body of one's own: a body of the list with some properties replaced.
 * A low or high that is not given lies as far from the value, in proportion, as it does in the
 * property that is replaced, and inside what the property can be; where the replaced value is 0 the
 * new one is taken as exact. Without a source it is `yours`.
 *
 * @param placeOf Names a place inside the body for problems.
 * @returns The body, or all its problems: `ware/unknown-body`, `ware/property-range`,
 * `ware/property-order`, `ware/silica-over-100`.
 */
export function userBody(given: GivenBody, placeOf: PlaceOf): Result<Body> {
  const named = bodyNamed(given.base ?? "unknown", placeOf(["base"]));
  const base = named.ok ? named.value : UNKNOWN_BODY;
  const own = BODY_PROPERTIES.filter((name) => given[name] !== undefined);
  const replaced = Object.fromEntries(
    own.map((name) => [name, replacement(name, given[name]!, base[name])]),
  );
  const body: Body = {
    ...base,
    ...replaced,
    name: given.name ?? (own.length > 0 ? `${base.name}, altered` : base.name),
  };
  const problems = [
    ...(named.ok ? [] : named.problems),
    ...own.flatMap((name) => {
      const range = rangeProblems(name, given[name]!, placeOf);
      return range.length > 0 ? range : orderProblems(body[name], placeOf([name]));
    }),
    ...(named.ok ? silicaProblems(body, placeOf([])) : []),
  ];
  return problems.length > 0 ? failed(...problems) : ok(body);
}

function replacement(name: BodyProperty, own: GivenProperty, base: Property): Property {
  const { value, low, high, source } = typeof own === "number" ? { value: own } : own;
  const stretch = base.value > 0 ? value / base.value : 0;
  const { least, most } = LIMITS[name];
  return {
    value,
    low: low ?? (stretch > 0 ? Math.max(least, fourDigits(base.low * stretch)) : value),
    high: high ?? (stretch > 0 ? Math.min(most, fourDigits(base.high * stretch)) : value),
    source: source ?? YOURS,
  };
}

/** No more digits than an estimate bears, so that files stay readable. */
function fourDigits(value: number): number {
  return Number(value.toPrecision(4));
}

function rangeProblems(
  name: BodyProperty,
  own: GivenProperty,
  placeOf: PlaceOf,
): readonly Problem[] {
  const { least, most, unit } = LIMITS[name];
  return (["value", "low", "high"] as const).flatMap((part) => {
    const number = typeof own === "number" ? (part === "value" ? own : undefined) : own[part];
    if (number === undefined || (number >= least && number <= most)) return [];
    return [
      {
        code: "ware/property-range",
        what: `${part === "value" ? "" : `${part} of `}${name} is ${shown(number)}`,
        where: placeOf(typeof own === "number" ? [name] : [name, part]),
        expected: `a number from ${least} to ${most} ${unit}`,
        fix: "give it in this unit, or leave it out to take that of the base body",
      } as const,
    ];
  });
}

function orderProblems({ value, low, high }: Property, where: string): readonly Problem[] {
  if (low <= value && value <= high) return [];
  return [
    {
      code: "ware/property-order",
      what: `low ${shown(low)}, value ${shown(value)}, high ${shown(high)}`,
      where,
      expected: "a value that lies between its low and its high",
      fix: "put the three in order",
    },
  ];
}

function silicaProblems(body: Body, where: string): readonly Problem[] {
  const [quartz, cristobalite] = [body.quartzFraction.value, body.cristobaliteFraction.value];
  if (Math.max(quartz, cristobalite) > 1 || !(quartz + cristobalite > 1)) return [];
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  return [
    {
      code: "ware/silica-over-100",
      what: `quartz ${percent(quartz)} and cristobalite ${percent(cristobalite)} make ${percent(quartz + cristobalite)}`,
      where,
      expected: "100 % of the body's volume at most, as shares of 1",
      fix: "lower quartzFraction or cristobaliteFraction",
    },
  ];
}

/**
 * A body as a file writes it, so that reading it gives the same numbers, sources and name: the words
 * for a body of the list, else the nearest body of the list and what is different about it.
 */
export function bodyAsGiven(body: Body): string | GivenBody {
  const nearest = BODIES.map((base) => ({ base, own: differences(body, base) })).reduce(
    (best, each) => (each.own.length < best.own.length ? each : best),
  );
  const { base, own } = nearest;
  if (own.length === 0 && body.name === base.name) return base.name;
  return {
    base: base.name,
    name: body.name,
    ...Object.fromEntries(own.map((name) => [name, { ...body[name] }])),
  };
}

function differences(body: Body, base: Body): readonly BodyProperty[] {
  return BODY_PROPERTIES.filter((name) => {
    const [a, b] = [body[name], base[name]];
    return a.value !== b.value || a.low !== b.low || a.high !== b.high || a.source !== b.source;
  });
}

/**
 * A body from what a file says of it: words for one of the list, or one's own.
 *
 * @param placeOf Name of a place inside the body, for problems.
 * @returns The problems of `bodyNamed` or of `userBody`, each at its place.
 */
export function bodyGiven(
  given: string | GivenBody,
  placeOf: (path: readonly string[]) => string,
): Result<Body> {
  return typeof given === "string" ? bodyNamed(given, placeOf([])) : userBody(given, placeOf);
}

/** The properties of a body by name. */
export type BodyProperty = Exclude<keyof Body, "name">;

/** Every property of a body, in the order in which they are shown and written. */
export const BODY_PROPERTIES: readonly BodyProperty[] = [
  "densityKgPerM3",
  "heatCapacityJPerKgK",
  "conductivityWPerMK",
  "youngGPa",
  "ruptureMPa",
  "quartzFraction",
  "cristobaliteFraction",
  "matrixExpansionPerK",
];
