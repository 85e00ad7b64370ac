import { type LeachLimit, leachLimits } from "../cautions/leachLimits.ts";
import type { LeachAmount } from "../units/leachAmount.ts";
import type { LeachTest } from "./LeachTest.ts";

/** One amount found beside one limit. */
export interface LeachRow {
  readonly limit: LeachLimit;
  readonly found: LeachAmount;
  /** `open`: found in another unit, or less than an amount that is itself over the limit. */
  readonly stands: "under" | "over" | "open";
}

/** A leach test beside the limits for its ware: rows of every metal that was tested. */
export function leachSheet(test: LeachTest): readonly LeachRow[] {
  return leachLimits(test.ware).flatMap((limit) => {
    const found = test[limit.metal];
    return found === null ? [] : [{ limit, found, stands: standsAt(found, limit) }];
  });
}

function standsAt(found: LeachAmount, limit: LeachLimit): LeachRow["stands"] {
  if (found.unit !== limit.unit) return "open";
  if (found.value <= limit.most) return "under";
  return found.isBelow ? "open" : "over";
}
