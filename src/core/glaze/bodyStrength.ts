import { cited } from "../sources/basedOn.ts";
import type { Body, Property } from "../ware/Ware.ts";

const MEMORY = cited("ceramics-toughness");

/** Poisson's ratio of a fired body: the 0.20 that the crack tables were made with. */
export const BODY_POISSON: Property = { value: 0.2, low: 0.16, high: 0.25, source: MEMORY };

/** Words in a body's name, and its resistance against a running crack [MPa·√m]. */
const TOUGHNESS: readonly (readonly [words: RegExp, toughness: Property])[] = [
  [/earthenware|terracotta|red clay|majolica|raku/, toughness(0.6, 0.4, 0.9)],
  [/porcelain/, toughness(1.2, 1.0, 1.4)],
  [/cristobalit/, toughness(1.0, 0.7, 1.4, "our own estimate")],
  [/stoneware/, toughness(1.1, 0.9, 1.4)],
];

const UNKNOWN = toughness(0.9, 0.5, 1.4, "our own estimate");

/**
 * Resistance of a body against a running crack [MPa·√m], by the kind that its name says.
 * From memory and wide; a name that says no kind gets the range of all of them.
 */
export function toughnessOf(body: Body): Property {
  const name = body.name.toLowerCase();
  return TOUGHNESS.find(([words]) => words.test(name))?.[1] ?? UNKNOWN;
}

function toughness(value: number, low: number, high: number, source = MEMORY): Property {
  return { value, low, high, source };
}
