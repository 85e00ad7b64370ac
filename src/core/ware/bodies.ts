import { coneIndex } from "../cones/cone.ts";
import { failed, ok, type Result } from "../problem.ts";
import { cited } from "../sources/bibliography.ts";
import { nearWord } from "../text/nearWord.ts";
import type { Body, Property, Ware } from "./Ware.ts";

/** Source of a property that was remembered, not read again. */
export const FROM_MEMORY = "from memory";

/** Source of a property that nobody measured. */
export const OWN_ESTIMATE = "our own estimate";

/** Middle, low and high of a property, and where they come from; from memory when nothing is said. */
type Row = readonly [value: number, low: number, high: number, source?: string];

/** The property rows of a body in the order of `Body`. */
interface Rows {
  readonly density: Row;
  readonly conductivity: Row;
  readonly young: Row;
  readonly rupture: Row;
  readonly quartz: Row;
  readonly cristobalite: Row;
  /** Middle of the matrix expansion [10⁻⁶/K]: what makes the published expansion of the whole. */
  readonly matrix: number;
}

const CLADDING = cited("cladding-2018");
const PORCELAIN_SHEETS = `${cited("porcelain-c430")}; ${cited("porcelain-page")}; ${cited("cibse-guide-a")}`;

/** Heat capacity at 573 °C [J/kgK] of every body but earthenware, which is 1050. */
const CAPACITY: Row = [1080, 1000, 1150];

/** A body that is said to be unknown: the middle of stoneware, with room for what else it may be. */
export const UNKNOWN_BODY: Body = body("unknown body", {
  density: [2200, 1900, 2400, OWN_ESTIMATE],
  conductivity: [1.2, 0.9, 1.6, OWN_ESTIMATE],
  young: [45, 25, 65, OWN_ESTIMATE],
  rupture: [38, 20, 60, OWN_ESTIMATE],
  quartz: [0.2, 0.1, 0.35, OWN_ESTIMATE],
  cristobalite: [0.01, 0, 0.1, OWN_ESTIMATE],
  matrix: 4.5,
});

const STONEWARE_6 = body("stoneware cone 6", {
  density: [2200, 2050, 2350, CLADDING],
  conductivity: [1.2, 1.0, 1.5],
  young: [45, 30, 60],
  rupture: [38, 25, 55, `${CLADDING}; ${cited("ochen-2021")}; else ${FROM_MEMORY}`],
  quartz: [0.2, 0.1, 0.3],
  cristobalite: [0.01, 0, 0.05],
  matrix: 4.5,
});

/** What ware is taken to be made of that names no body. */
export const ORDINARY_BODY: Body = STONEWARE_6;

const PORCELAIN_6 = body("porcelain cone 6", {
  density: [2350, 2250, 2450],
  conductivity: [1.4, 1.1, 1.8],
  young: [62, 50, 72],
  rupture: [55, 35, 80, `${CLADDING}; ${cited("porcelain-stoneware-2020")}; else ${FROM_MEMORY}`],
  quartz: [0.18, 0.1, 0.25, `${cited("porcelain-stoneware-2020")}; range ${FROM_MEMORY}`],
  cristobalite: [0, 0, 0.02],
  matrix: 4.25,
});

const CRISTOBALITIC = body("stoneware cone 10 cristobalitic", {
  density: [2250, 2100, 2350],
  conductivity: [1.3, 1.0, 1.6],
  young: [45, 30, 55],
  rupture: [38, 25, 50],
  quartz: [0.15, 0.05, 0.25],
  cristobalite: [0.1, 0.05, 0.2],
  matrix: 4.5,
});

/**
 * Fired bodies of a studio, softest first, and the unknown one.
 * Most numbers are from memory and say so; free quartz, cristobalite, strength and stiffness of a
 * given clay are hardly ever known. Expansion of the matrix is set so that published expansions of
 * the whole come out about right; its range is our own estimate.
 */
export const BODIES: readonly Body[] = [
  {
    ...body("earthenware cone 04", {
      density: [1900, 1700, 2100],
      conductivity: [0.9, 0.5, 1.2],
      young: [20, 8, 30],
      rupture: [17, 8, 30],
      quartz: [0.28, 0.15, 0.4],
      cristobalite: [0, 0, 0.05],
      matrix: 5.5,
    }),
    heatCapacityJPerKgK: property([1050, 950, 1100]),
  },
  STONEWARE_6,
  PORCELAIN_6,
  body("stoneware cone 10", {
    density: [2300, 2150, 2400],
    conductivity: [1.3, 1.0, 1.6],
    young: [52, 40, 65],
    rupture: [45, 30, 60],
    quartz: [0.17, 0.08, 0.25],
    cristobalite: [0.03, 0, 0.1],
    matrix: 4.5,
  }),
  CRISTOBALITIC,
  body("porcelain cone 10", {
    density: [2400, 2300, 2500, PORCELAIN_SHEETS],
    conductivity: [1.5, 1.2, 1.8, PORCELAIN_SHEETS],
    young: [70, 60, 91, `${cited("porcelain-c430")}; else ${FROM_MEMORY}`],
    rupture: [65, 40, 90, `${cited("porcelain-c430")}; else ${FROM_MEMORY}`],
    quartz: [0.12, 0.03, 0.2],
    cristobalite: [0, 0, 0.02],
    matrix: 4.0,
  }),
  UNKNOWN_BODY,
];

const KINDS = ["earthenware", "stoneware", "porcelain", "cristobalitic", "unknown"] as const;

/** What people write for one of the kinds. */
const MEANT: ReadonlyMap<string, (typeof KINDS)[number]> = new Map([
  ["terracotta", "earthenware"],
  ["cristobalite", "cristobalitic"],
]);

/** Words that say nothing more. */
const IDLE = new Set(["cone", "δ", "body", "clay", "c", "fired", "to", "at"]);

/**
 * A body of the list from the words for it: `stoneware`, `porcelain 10`, `Stoneware, cone 6`.
 * Cones 4 to 7 count as 6, cones 8 to 13 as 10, cones with a leading zero as 04; without a cone,
 * earthenware is cone 04, cristobalitic stoneware cone 10, and the others cone 6.
 *
 * @param where Place to name in a problem: file and field, or option.
 * @returns The body, or `ware/unknown-body` with the nearest words.
 */
export function bodyNamed(words: string, where: string): Result<Body> {
  const said = words.toLowerCase().match(/[\p{L}]+|\d+(?:\.\d+)?/gu) ?? [];
  const kinds = said
    .map((word) => MEANT.get(word) ?? word)
    .filter((word) => /^\p{L}/u.test(word) && !IDLE.has(word));
  const cones = said.filter((word) => /^\d/.test(word));
  const found = cones.length > 1 ? undefined : listed(kinds, cones[0] ?? null);
  return found === undefined ? notListed(words, kinds, where) : ok(found);
}

function listed(kinds: readonly string[], cone: string | null): Body | undefined {
  const said = new Set(kinds);
  if (said.has("cristobalitic")) {
    said.delete("cristobalitic");
    said.delete("stoneware");
    return said.size === 0 && (cone === null || firedTo(cone) === "10") ? CRISTOBALITIC : undefined;
  }
  if (said.size !== 1) return undefined;
  const [kind] = said;
  if (kind === "unknown") return cone === null ? UNKNOWN_BODY : undefined;
  const end = cone === null ? (kind === "earthenware" ? "04" : "6") : firedTo(cone);
  return BODIES.find(({ name }) => name === `${kind} cone ${end}`);
}

/** The cone of the list that stands for a cone. */
function firedTo(cone: string): "04" | "6" | "10" | null {
  if (/^0\d/.test(cone)) return "04";
  const index = coneIndex(cone);
  if (index < coneIndex("4") || index > coneIndex("13")) return null;
  return index < coneIndex("8") ? "6" : "10";
}

function notListed(words: string, kinds: readonly string[], where: string): Result<never> {
  const known: readonly string[] = KINDS;
  const near = kinds.flatMap((word) => nearWord(word, known) ?? []);
  const corrected = [...new Set(near)].join(" ");
  const suggestions = BODIES.map(({ name }) => name).filter(
    (name) => corrected !== "" && name.includes(near[0]!),
  );
  return failed({
    code: "ware/unknown-body",
    what: `"${words}" is not a body of the list`,
    where,
    expected: `one of ${BODIES.map(({ name }) => name).join(", ")}`,
    fix:
      suggestions.length > 0
        ? `write ${suggestions.map((name) => `"${name}"`).join(" or ")}`
        : 'write the nearest of these, or "unknown"',
  });
}

function body(name: string, rows: Rows): Body {
  return {
    name,
    densityKgPerM3: property(rows.density),
    heatCapacityJPerKgK: property(CAPACITY),
    conductivityWPerMK: property(rows.conductivity),
    youngGPa: property(rows.young),
    ruptureMPa: property(rows.rupture),
    quartzFraction: property(rows.quartz),
    cristobaliteFraction: property(rows.cristobalite),
    matrixExpansionPerK: {
      value: rows.matrix * 1e-6,
      low: rows.matrix * 0.8e-6,
      high: rows.matrix * 1.2e-6,
      source: OWN_ESTIMATE,
    },
  };
}

function property([value, low, high, source = FROM_MEMORY]: Row): Property {
  return { value, low, high, source };
}

/** The bodies of some ware, each once, in order; two are one when all their numbers and words agree. */
export function distinctBodies(wares: readonly Ware[]): readonly Body[] {
  const bodies = new Map(wares.map(({ body }) => [JSON.stringify(body), body]));
  return [...bodies.values()];
}
