import type { Glaze } from "./Glaze.ts";
import { OXIDES } from "./oxides.ts";

/** Largest difference in one oxide between close relatives [mol %]; our own judgement. */
const CLOSE_MOL_PERCENT = 5;

/** A glaze set against the first one. */
export interface GlazeDifference {
  readonly name: string;
  /** Expansion of this one less that of the first [1/K]. */
  readonly differencePerK: number;
  /** One standard deviation of it [1/K]. */
  readonly sigmaPerK: number;
  /** Whether no oxide differs by more than 5 mol %, so that most errors are common to both. */
  readonly areRelatives: boolean;
  /** Whether a measured value stands against a computed one, or their ranges differ. */
  readonly isMixed: boolean;
}

/** Every glaze after the first, set against the first. */
export function compareGlazes(glazes: readonly Glaze[]): readonly GlazeDifference[] {
  const [first, ...others] = glazes;
  if (first === undefined) return [];
  return others.map((other) => {
    const [a, b] = [first.expansion, other.expansion];
    const isMixed = a.from !== b.from || a.fromC !== b.fromC || a.toC !== b.toC;
    const areRelatives = areClose(first, other);
    const isRelative = areRelatives && !isMixed && a.from === "computed";
    return {
      name: other.name,
      differencePerK: b.meanPerK - a.meanPerK,
      sigmaPerK: isRelative
        ? Math.max(a.relativeSigmaPerK, b.relativeSigmaPerK)
        : Math.hypot(a.sigmaPerK, b.sigmaPerK),
      areRelatives,
      isMixed,
    };
  });
}

function areClose(a: Glaze, b: Glaze): boolean {
  return OXIDES.every(
    (oxide) => 100 * Math.abs((a.oxides[oxide] ?? 0) - (b.oxides[oxide] ?? 0)) <= CLOSE_MOL_PERCENT,
  );
}
