import { ATOMIC_WEIGHTS } from "./elements.ts";

/** Atoms of each element in one formula unit. */
export type AtomCounts = ReadonlyMap<string, number>;

const PIECE = /([A-Z][a-z]?|\(|\)|·)(\d+(?:\.\d+)?)?/gy;

/**
 * Atoms of each element in a formula such as `CaMg(CO3)2`, `Ca2B6O11·5H2O` or `Na0.33Al1.67`.
 * A number behind a middle dot multiplies all up to the next dot. RangeError for anything else.
 */
export function atomsIn(formula: string): AtomCounts {
  const total = new Map<string, number>();
  for (const part of formula.split("·")) {
    const [, times = "", rest = ""] = /^(\d+)?(.*)$/.exec(part) ?? [];
    for (const [element, count] of groupIn(rest, formula))
      add(total, element, count * (times === "" ? 1 : Number(times)));
  }
  return total;
}

/** Mass of one mole of a formula [g]. */
export function molarMass(formula: string): number {
  let mass = 0;
  for (const [element, count] of atomsIn(formula)) mass += count * weightOf(element, formula);
  return mass;
}

/**
 * Atoms in what a person may have meant as a formula.
 * @returns null where it is none, or names what is no element.
 */
export function atomsInWords(text: string): AtomCounts | null {
  try {
    const atoms = atomsIn(text);
    return atoms.size > 0 && [...atoms.keys()].every((each) => ATOMIC_WEIGHTS.has(each))
      ? atoms
      : null;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function groupIn(text: string, formula: string): AtomCounts {
  const stack: Map<string, number>[] = [new Map()];
  let end = 0;
  for (const [piece, token, digits] of text.matchAll(PIECE)) {
    end += piece.length;
    const count = digits === undefined ? 1 : Number(digits);
    if (token === "(") stack.push(new Map());
    else if (token === ")") closeGroup(stack, count, formula);
    else add(stack.at(-1) as Map<string, number>, token as string, count);
  }
  if (end !== text.length || stack.length !== 1) throw new RangeError(`atomsIn: "${formula}"`);
  return stack[0] as Map<string, number>;
}

function closeGroup(stack: Map<string, number>[], times: number, formula: string): void {
  const group = stack.pop();
  const around = stack.at(-1);
  if (group === undefined || around === undefined) throw new RangeError(`atomsIn: "${formula}"`);
  for (const [element, count] of group) add(around, element, count * times);
}

function add(counts: Map<string, number>, element: string, count: number): void {
  counts.set(element, (counts.get(element) ?? 0) + count);
}

function weightOf(element: string, formula: string): number {
  const weight = ATOMIC_WEIGHTS.get(element);
  if (weight === undefined) throw new RangeError(`molarMass: no element ${element} in ${formula}`);
  return weight;
}
