import { failed, ok, type Problem, type Result } from "../problem.ts";
import { shown } from "../units/parseQuantity.ts";
import { bodyNamed, UNKNOWN_BODY } from "./bodies.ts";
import { BODY_PROPERTIES, type BodyProperty } from "./bodyProperties.ts";
import type { Body, Property } from "./Ware.ts";

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
