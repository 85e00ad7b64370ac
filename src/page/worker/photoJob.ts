import { measurePhoto } from "../../core/photo/measurePhoto.ts";
import type { PhotoInput, PhotoMeasurement } from "../../core/photo/PhotoMeasurement.ts";
import type { Result } from "../../core/problem.ts";
import type { Progress } from "./jobs.ts";

/** Counts the cracks in a photograph. */
export function photoJob(
  asked: { readonly input: PhotoInput },
  progress: Progress,
): Result<PhotoMeasurement> {
  return measurePhoto(asked.input, progress);
}
