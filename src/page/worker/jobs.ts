import type { Result } from "../../core/problem.ts";
import { columnsJob } from "./columnsJob.ts";
import { compareJob } from "./compareJob.ts";
import { compareReadJob } from "./compareReadJob.ts";
import { draftJob } from "./draftJob.ts";
import { learnJob } from "./learnJob.ts";
import { newJob } from "./newJob.ts";
import { photoJob } from "./photoJob.ts";
import { repairJob } from "./repairJob.ts";
import { reviewJob } from "./reviewJob.ts";
import { solveJob } from "./solveJob.ts";
import { studyJob } from "./studyJob.ts";

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
