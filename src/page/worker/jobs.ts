import { hottestZone } from "../../core/firing/FiringFacts.ts";
import { kilnFiringOf } from "../../core/firing/kilnFiring.ts";
import type { LearnedKiln } from "../../core/kiln/LearnedKiln.ts";
import { learnKiln } from "../../core/kiln/learnKiln.ts";
import { logOpener } from "../../core/log/openLog.ts";
import { measurePhoto } from "../../core/photo/measurePhoto.ts";
import type { PhotoInput, PhotoMeasurement } from "../../core/photo/PhotoMeasurement.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { comparisonPart } from "../../core/review/compareFirings.ts";
import type { FiringReview } from "../../core/review/FiringReview.ts";
import { reviewFiring } from "../../core/review/reviewFiring.ts";
import { type PastOffset, pastOffset } from "../../core/schedule/coneAim.ts";
import { type Draft, draftSchedule } from "../../core/schedule/draftSchedule.ts";
import { type NewScheduleInput, newSchedule } from "../../core/schedule/newSchedule.ts";
import { type Repair, repairSchedule } from "../../core/schedule/repairSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { type Solvable, solveSchedule } from "../../core/schedule/solveSchedule.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import { type ComparedLog, type KilnAsked, knownKiln } from "./answers.ts";
import { compareJob, studyJob } from "./compareJob.ts";
import { type FiringGroup, firingGroups, readGroup, splitQuoted } from "./readGroup.ts";
import { reviewJob } from "./reviewJob.ts";

/** The names of a log's columns, in order, as far as its first lines are given; why it is no log when it is none. */
function columnsJob(asked: {
  readonly log: KeptFile;
  readonly delimiter: string | null;
  readonly decimal: "." | "," | null;
  readonly encoding: string | null;
}): Result<readonly string[]> {
  const { log, delimiter, decimal, encoding } = asked;
  const opener = logOpener(
    {
      name: log.name,
      ...(delimiter !== null && { delimiter }),
      ...(decimal !== null && { decimal }),
      ...(encoding !== null && { encoding }),
    },
    splitQuoted,
    () => {},
  );
  opener.push(log.bytes);
  const opened = opener.end();
  return opened.ok ? ok(opened.value.table.columns.map(({ name }) => name)) : opened;
}

/** Drafts a schedule whole, with the stress in its ware and the spread of that. */
function draftJob(asked: {
  readonly schedule: Schedule;
  readonly start: string | null;
  readonly kiln: KilnAsked;
}): Result<Draft> {
  const { schedule, start, kiln } = asked;
  return ok(draftSchedule({ schedule, start, ...knownKiln(kiln) }));
}

/** Learns a kiln from its logs, and the offset of its thermocouple from the records beside them. */
function learnJob(
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

/** Works out a new schedule for a cone, a piece of ware and a kiln. */
function newJob(asked: {
  readonly wanted: Omit<NewScheduleInput, "kiln" | "offsetK" | "limitFor">;
  readonly kiln: KilnAsked;
}): Result<Schedule> {
  return newSchedule({ ...asked.wanted, ...knownKiln(asked.kiln) });
}

/** Counts the cracks in a photograph. */
function photoJob(
  asked: { readonly input: PhotoInput },
  progress: Progress,
): Result<PhotoMeasurement> {
  return measurePhoto(asked.input, progress);
}

/** Mends every finding of a schedule with the smallest change in time. */
function repairJob(asked: {
  readonly schedule: Schedule;
  readonly kiln: KilnAsked;
}): Result<Repair> {
  return ok(repairSchedule({ schedule: asked.schedule, ...knownKiln(asked.kiln) }));
}

/** Changes one thing in a schedule so that its cone is just down. */
function solveJob(asked: {
  readonly schedule: Schedule;
  readonly cone: string;
  readonly solve: Solvable;
  readonly kiln: KilnAsked;
}): Result<Schedule> {
  const { kiln, ...rest } = asked;
  return solveSchedule({ ...rest, ...knownKiln(kiln) });
}

/** Reads a log with its record and reviews the firing, for a comparison. */
function compareReadJob(asked: FiringGroup, progress: Progress): Result<ComparedLog> {
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

/** Says how far a job has come, 0–1, and what it is at. */
export type Progress = (fraction: number, at: string) => void;

/** Work that takes longer than a frame, by name; each is a pure function of what it is asked. */
export const JOBS = {
  draft: draftJob,
  new: newJob,
  solve: solveJob,
  repair: repairJob,
  learn: learnJob,
  columns: columnsJob,
  review: reviewJob,
  compareRead: compareReadJob,
  study: studyJob,
  compare: compareJob,
  photo: photoJob,
};

/** Name of a job. */
export type JobName = keyof typeof JOBS;

/** What a job is asked. */
export type Asked<Name extends JobName> = Parameters<(typeof JOBS)[Name]>[0];

/** What a job answers with. */
export type Answered<Name extends JobName> =
  ReturnType<(typeof JOBS)[Name]> extends Result<infer T> ? T : never;

/** A job on its way to the worker. */
export interface Order {
  readonly job: JobName;
  readonly asked: unknown;
}

/** What comes back: how far it is, then one answer or the words of a fault of ours. */
export type Message =
  | { readonly kind: "progress"; readonly fraction: number; readonly at: string }
  | { readonly kind: "answer"; readonly answer: Result<unknown> }
  | { readonly kind: "fault"; readonly why: string };
