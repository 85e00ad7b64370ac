import { recordYaml } from "../../core/firing/recordYaml.ts";
import type { Bench } from "../bench/store.ts";
import { download } from "../parts/download.ts";
import { textOf } from "../worker/readGroup.ts";
import { recordName, recordOf } from "./changeReview.ts";

/** Saves the record on the table as its file, comments and all. */
export function saveRecord(bench: Bench): void {
  const { work } = bench.state();
  const { review } = work;
  const name = recordName(review);
  const kept = review.record === null ? null : textOf(review.record);
  const text = kept?.ok ? kept.value : recordYaml(recordOf(work), null);
  download(name, text, name.endsWith(".json") ? "application/json" : "application/yaml");
}
