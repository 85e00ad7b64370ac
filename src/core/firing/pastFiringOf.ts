import type { LogReading } from "../log/LogReading.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { PastFiring } from "./FiringHistory.ts";
import type { FiringRecord } from "./FiringRecord.ts";
import { kilnFiringOf } from "./kilnFiringOf.ts";
import { reviewFiring } from "./reviewFiring.ts";

/** What a log of the past, with what lies beside it, says about its kiln and its thermocouple. */
export function pastFiringOf(
  path: string,
  files: {
    readonly reading: LogReading;
    readonly record: FiringRecord | null;
    readonly plan: Schedule | null;
  },
): PastFiring {
  const { reading, record, plan } = files;
  const review = record === null ? null : reviewFiring({ reading, record, plan });
  return {
    name: reading.name,
    path,
    firing: kilnFiringOf(reading, record),
    offset: review?.ok ? review.value.offset : null,
    thermocouple: record?.thermocouple?.type ?? null,
  };
}
