import { failed, ok, type Result } from "../problem.ts";
import { MOST_ALKALIS } from "./alkaliFindings.ts";
import { type AppenExpansion, appenExpansion } from "./appenExpansion.ts";
import { appenOutside } from "./appenOutside.ts";
import type { Glaze } from "./Glaze.ts";
import { glazeOf } from "./glazeOf.ts";
import { ALKALIS, scaledTo, totalOf } from "./oxides.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";
import type { OutsideRange } from "./setPointModel.ts";

/** A glaze as it is on the ware, and what its expansion rests on. */
interface FiredGlaze {
  readonly glaze: Glaze;
  /** By the Appen set; null when none of its oxides has a factor. */
  readonly computed: AppenExpansion | null;
  /** Oxides outside the ranges of that set. */
  readonly outside: readonly OutsideRange[];
}

/**
 * The fired glaze of a file.
 *
 * @param where What to call the file in problems.
 * @returns `glaze/no-expansion` when no oxide has a factor and none was measured.
 */
export function firedGlaze(parsed: ParsedGlaze, where: string): Result<FiredGlaze> {
  const { moles, own } = parsed;
  const computed = appenExpansion(moles);
  if (computed === null && own.expansion === null)
    return failed({
      code: "glaze/no-expansion",
      what: "no oxide of the glaze has a factor of expansion",
      where,
      expected: "silica and fluxes, or a measured expansion",
      fix: "check the oxides, or give expansion with value, to and how",
    });
  const outside = computed === null ? [] : appenOutside(computed);
  const isOutside = outside.length > 0 || totalOf(scaledTo(100, moles), ALKALIS) > MOST_ALKALIS;
  return ok({ glaze: glazeOf(parsed, computed, isOutside), computed, outside });
}
