import type { RecordedTrial } from "../FiringRecord.ts";

/** Fewer test pieces than this say nothing about spacing against coat. */
const FEWEST_PIECES = 3;

/** Agreement in order from which spacing counts as growing with the coat, 1 being every pair. */
const GROWS_FROM = 0.6;

/** Coats that differ by less are one coat, for what reading them is worth. */
const SAME_COAT = 1.1;

/**
 * Whether cracks stand farther apart on thicker coats: of all pairs of like test pieces (one clay, one glaze,
 * the same sides glazed) with different coats, those in that order minus those in the other, as a share.
 *
 * @returns null with fewer than three pieces that can be held against each other.
 */
export function coatAgainstSpacing(
  trials: readonly RecordedTrial[],
): { readonly grows: boolean; readonly pieces: number } | null {
  const pairs = trials.flatMap((a, i) =>
    trials.slice(i + 1).flatMap((b) => {
      const [thin, thick] = a.coatMm < b.coatMm ? [a, b] : [b, a];
      const isPair = areAlike(a, b) && thick.coatMm > SAME_COAT * thin.coatMm;
      return isPair && thin.crackSpacingMm !== null && thick.crackSpacingMm !== null
        ? [{ pair: [a, b], sign: Math.sign(thick.crackSpacingMm - thin.crackSpacingMm) }]
        : [];
    }),
  );
  const pieces = new Set(pairs.flatMap(({ pair }) => pair)).size;
  if (pieces < FEWEST_PIECES) return null;
  const agreement = pairs.reduce((sum, { sign }) => sum + sign, 0) / pairs.length;
  return { grows: agreement >= GROWS_FROM, pieces };
}

function areAlike(a: RecordedTrial, b: RecordedTrial): boolean {
  return a.clay === b.clay && a.glaze === b.glaze && a.glazedSides === b.glazedSides;
}
