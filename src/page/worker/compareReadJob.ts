import { comparisonPart } from "../../core/firing/compareFirings.ts";
import type { FiringReview } from "../../core/firing/FiringReview.ts";
import { hottestZone } from "../../core/firing/hottestZone.ts";
import { reviewFiring } from "../../core/firing/reviewFiring.ts";
import { ok, type Result } from "../../core/problem.ts";
import type { ComparedLog } from "./CompareAnswer.ts";
import type { Progress } from "./jobs.ts";
import { type FiringGroup, readGroup } from "./readGroup.ts";

/** Reads a log with its record and reviews the firing, for a comparison. */
export function compareReadJob(asked: FiringGroup, progress: Progress): Result<ComparedLog> {
  progress(0.1, `reading ${asked.log.name}`);
  const files = readGroup(asked);
  if (!files.ok) return files;
  progress(0.6, `following the cones of ${asked.log.name}`);
  const review = reviewFiring({ ...files.value, heard: [] });
  if (!review.ok) return review;
  const { record, plan, reading } = files.value;
  const part = comparisonPart(review.value);
  const { peakC, coneLabel } = part.firing;
  return ok({
    part,
    planned: { review: light(review.value), record, plan },
    facts: {
      title: review.value.title,
      rows: { accepted: reading.rows.accepted, total: reading.rows.total },
      coneLabel,
      peakC,
      tiles: record === null ? null : record.trials.length,
    },
  });
}

/** A review without what a study of firings does not look at, which grows with the log. */
function light(review: FiringReview): FiringReview {
  return {
    ...review,
    zones: [hottestZone(review.zones)],
    reading: { ...review.reading, channels: [] },
  };
}
