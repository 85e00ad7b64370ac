import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  asAssumedKiln,
  pastOffset,
  reviewFiring
} from "./chunk-ETRUSM3K.js";
import {
  kilnFiringOf,
  learnKiln
} from "./chunk-QVXNA4U3.js";
import {
  readFiring
} from "./chunk-CQRY3XKN.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/cli/ownKiln.ts
async function ownKiln(paths, told) {
  const problems = [];
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
    ...told.powerWatt !== null && { powerWatt: told.powerWatt },
    ...told.tariffPerKWh !== null && { tariffPerKWh: told.tariffPerKWh }
  });
  if (!learned.ok) return learned;
  return ok({ kiln: asAssumedKiln(learned.value), offset: pastOffset(offsets) });
}

export {
  ownKiln
};
