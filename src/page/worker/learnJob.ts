import { kilnFiringOf } from "../../core/firing/kilnFiringOf.ts";
import { reviewFiring } from "../../core/firing/reviewFiring.ts";
import type { LearnedKiln } from "../../core/kiln/LearnedKiln.ts";
import { learnKiln } from "../../core/kiln/learnKiln.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { type PastOffset, pastOffset } from "../../core/schedule/pastOffset.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import type { Progress } from "./jobs.ts";
import { firingGroups, readGroup } from "./readGroup.ts";

/** Learns a kiln from its logs, and the offset of its thermocouple from the records beside them. */
export function learnJob(
  asked: {
    readonly files: readonly KeptFile[];
    readonly powerWatt: number | null;
    readonly tariffPerKWh: number | null;
  },
  progress: Progress,
): Result<{ readonly learned: LearnedKiln; readonly offset: PastOffset | null }> {
  const problems: Problem[] = [];
  const firings = [];
  const offsets = [];
  const groups = firingGroups(asked.files);
  for (const [index, group] of groups.entries()) {
    progress(index / groups.length, `reading ${group.log.name}`);
    const read = readGroup(group);
    if (!read.ok) {
      problems.push(...read.problems);
      continue;
    }
    const { reading, record } = read.value;
    const firing = kilnFiringOf(reading, record);
    if (firing !== null) firings.push(firing);
    const review = record === null ? null : reviewFiring(read.value);
    if (review?.ok && review.value.offset !== null) offsets.push(review.value.offset);
  }
  if (problems.length > 0) return failed(...problems);
  const learned = learnKiln(firings, {
    ...(asked.powerWatt !== null && { powerWatt: asked.powerWatt }),
    ...(asked.tariffPerKWh !== null && { tariffPerKWh: asked.tariffPerKWh }),
  });
  return learned.ok ? ok({ learned: learned.value, offset: pastOffset(offsets) }) : learned;
}
