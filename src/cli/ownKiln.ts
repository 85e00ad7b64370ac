import { kilnFiringOf } from "../core/firing/kilnFiringOf.ts";
import { reviewFiring } from "../core/firing/reviewFiring.ts";
import type { AssumedKiln } from "../core/kiln/AssumedKiln.ts";
import { asAssumedKiln } from "../core/kiln/asAssumedKiln.ts";
import { learnKiln } from "../core/kiln/learnKiln.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { type PastOffset, pastOffset } from "../core/schedule/pastOffset.ts";
import { readFiring } from "../node/readFiring.ts";

/** What past logs say of a kiln and its thermocouple. */
export interface OwnKiln {
  readonly kiln: AssumedKiln;
  /** Null when no record pins an offset by its witness cones. */
  readonly offset: PastOffset | null;
}

/** A kiln from its logs, and the offset of its thermocouple from the witness cones beside them. */
export async function ownKiln(
  paths: readonly string[],
  told: { readonly powerWatt: number | null; readonly tariffPerKWh: number | null },
): Promise<Result<OwnKiln>> {
  const problems: Problem[] = [];
  const firings = [];
  const offsets = [];
  for (const path of paths) {
    const files = await readFiring(path, { options: {}, recordPath: null, schedulePath: null });
    if (!files.ok) {
      problems.push(...files.problems);
      continue;
    }
    const { reading, record, plan } = files.value;
    const firing = kilnFiringOf(reading, record);
    if (firing !== null) firings.push(firing);
    const review = record === null ? null : reviewFiring({ reading, record, plan });
    if (review?.ok && review.value.offset !== null) offsets.push(review.value.offset);
  }
  if (problems.length > 0) return failed(...problems);
  const learned = learnKiln(firings, {
    ...(told.powerWatt !== null && { powerWatt: told.powerWatt }),
    ...(told.tariffPerKWh !== null && { tariffPerKWh: told.tariffPerKWh }),
  });
  if (!learned.ok) return learned;
  return ok({ kiln: asAssumedKiln(learned.value), offset: pastOffset(offsets) });
}
