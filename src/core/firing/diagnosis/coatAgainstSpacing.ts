import type { Evidence } from "../../findings/Finding.ts";
import type { CrackFacts } from "./crackFacts.ts";

/** Fewer test pieces than this say nothing about spacing against coat. */
const FEWEST_PIECES = 4;

/** Agreement in order from which spacing counts as growing with the coat, 1 being every pair. */
const GROWS_FROM = 0.6;

/**
 * Whether cracks stand farther apart on thicker coats: of all pairs of test pieces with different
 * coats, those in that order minus those in the other, as a share.
 *
 * @returns null with fewer than four measured pieces or with one coat only.
 */
export function coatAgainstSpacing({ trials }: CrackFacts): {
  readonly grows: boolean;
  readonly evidence: readonly Evidence[];
} | null {
  const measured = trials.flatMap(({ coatMm, crackSpacingMm }) =>
    crackSpacingMm === null ? [] : [{ coatMm, crackSpacingMm }],
  );
  const pairs = measured.flatMap((a, i) =>
    measured
      .slice(i + 1)
      .filter((b) => a.coatMm !== b.coatMm)
      .map((b) => Math.sign((a.coatMm - b.coatMm) * (a.crackSpacingMm - b.crackSpacingMm))),
  );
  if (measured.length < FEWEST_PIECES || pairs.length === 0) return null;
  const agreement = pairs.reduce<number>((sum, sign) => sum + sign, 0) / pairs.length;
  return {
    grows: agreement >= GROWS_FROM,
    evidence: [{ name: "pieces", value: measured.length, kind: "count" }],
  };
}
