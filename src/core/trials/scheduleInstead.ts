import { hottestZone } from "../firing/hottestZone.ts";
import { newSchedule } from "../schedule/newSchedule.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { sizedAsMug } from "../ware/wareOf.ts";
import type { NotedFiring } from "./firingFacts.ts";

/**
 * A schedule for a firing whose own is not known: for the cone it was to reach, or reached, and its
 * ware, cooling slowly through both inversions. Null when no cone was down or none can be made.
 */
export function scheduleInstead({ review, record }: NotedFiring): Schedule | null {
  const { heatwork } = hottestZone(review.zones);
  const cone = record?.cone ?? heatwork.position.cone;
  if (cone === null) return null;
  const ware = record?.ware[0];
  const made = newSchedule({
    cone,
    series: heatwork.series,
    unit: review.reading.unit === "F" ? "F" : "C",
    ware: {
      body: ware?.body ?? null,
      ...sizedAsMug({
        wallMm: ware?.wallMm ?? ware?.thickestMm ?? null,
        baseMm: ware?.baseMm ?? ware?.thickestMm ?? null,
      }),
      widestMm: ware?.widestMm ?? null,
      damp: false,
    },
    cooling: { kind: "slow" },
    withinSeconds: null,
  });
  return made.ok ? { ...made.value, ware: { ...made.value.ware, crackle: true } } : null;
}
