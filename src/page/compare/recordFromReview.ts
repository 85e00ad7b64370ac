import type { KeptFile } from "../bench/KeptFile.ts";
import { sameFile } from "../bench/KeptFile.ts";
import type { Bench } from "../bench/store.ts";
import { stemOf } from "../review/changeReview.ts";
import type { FiringGroup } from "../worker/readGroup.ts";
import { changeCompare } from "./changeCompare.ts";

/** The record of this firing as it stands on the Review table; null when it is the one that lies here. */
export function recordFromReview(bench: Bench, { log, record }: FiringGroup): KeptFile | null {
  const { review } = bench.state().work;
  if (review.record === null || review.log === null || !sameFile(review.log, log)) return null;
  const own = stemOf(review.record.name) === stemOf(log.name);
  const name = own ? review.record.name : `${stemOf(log.name)}.yaml`;
  const written = { name, bytes: review.record.bytes };
  return record !== null && sameFile(record, written) ? null : written;
}

/** Lays that record beside its log, in the place of the one that lies here. */
export function takeRecord(bench: Bench, { log, record }: FiringGroup, written: KeptFile): void {
  const { files } = bench.state().work.compare;
  const others = files.filter((file) => file !== record);
  changeCompare(bench, `taking the record of ${log.name}`, { files: [...others, written] });
}
