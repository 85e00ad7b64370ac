import { failed, ok, type Problem, type Result } from "../problem.ts";
import { shown } from "../units/parseQuantity.ts";
import { bodyNamed } from "./bodies.ts";
import type { Body, Property } from "./Ware.ts";

/** The properties of a body by name. */
type BodyProperty = Exclude<keyof Body, "name">;

/** A property as a person gives it: the value alone, or with its 10 and 90 % points. */
type GivenProperty =
  | number
  | { readonly value: number; readonly low: number; readonly high: number };

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
 * A value given alone keeps the relative spread of the property that it replaces; where that is 0
 * it is taken as exact.
 *
 * @param where Place to name in problems; the property's name is put behind it.
 * @returns The body, or all its problems: `ware/unknown-body`, `ware/property-range`,
 * `ware/property-order`, `ware/silica-over-100`.
 */
export function userBody(given: GivenBody, where: string): Result<Body> {
  const base = bodyNamed(given.base ?? "unknown", `${where}.base`);
  if (!base.ok) return base;
  const names = Object.keys(LIMITS) as BodyProperty[];
  const problems = names.flatMap((name) => propertyProblems(name, given[name], where));
  const replaced = Object.fromEntries(
    names.flatMap((name) => {
      const own = given[name];
      return own === undefined ? [] : [[name, replacement(own, base.value[name])]];
    }),
  );
  const isOwn = Object.keys(replaced).length > 0;
  const body: Body = {
    ...base.value,
    ...replaced,
    name: given.name ?? (isOwn ? `${base.value.name}, altered` : base.value.name),
  };
  problems.push(...silicaProblems(body, where));
  return problems.length > 0 ? failed(...problems) : ok(body);
}

function replacement(own: GivenProperty, base: Property): Property {
  if (typeof own !== "number") return { ...own, source: "yours" };
  const stretch = base.value > 0 ? own / base.value : 0;
  return {
    value: own,
    low: stretch > 0 ? base.low * stretch : own,
    high: stretch > 0 ? base.high * stretch : own,
    source: "yours",
  };
}

function propertyProblems(
  name: BodyProperty,
  own: GivenProperty | undefined,
  where: string,
): readonly Problem[] {
  if (own === undefined) return [];
  const parts = typeof own === "number" ? { value: own } : own;
  const { least, most, unit } = LIMITS[name];
  const outside = Object.entries(parts).filter(([, part]) => !(part >= least && part <= most));
  const place = `${where}.${name}`;
  const problems: Problem[] = outside.map(([part, value]) => ({
    code: "ware/property-range",
    what: `${part === "value" ? "" : `${part} of `}${name} is ${shown(value)}`,
    where: place,
    expected: `a number from ${least} to ${most} ${unit}`,
    fix: "give it in this unit, or leave it out to take that of the base body",
  }));
  if (typeof own === "number" || problems.length > 0) return problems;
  if (own.low <= own.value && own.value <= own.high) return [];
  return [
    {
      code: "ware/property-order",
      what: `low ${shown(own.low)}, value ${shown(own.value)}, high ${shown(own.high)}`,
      where: place,
      expected: "a value that lies between its low and its high",
      fix: "put the three in order",
    },
  ];
}

function silicaProblems(body: Body, where: string): readonly Problem[] {
  const [quartz, cristobalite] = [body.quartzFraction.value, body.cristobaliteFraction.value];
  if (!(quartz + cristobalite > 1)) return [];
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
