import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { type PredictedFiring, predictFiring } from "../kiln/predictFiring.ts";
import { expandSchedule } from "./expandSchedule.ts";
import { freeSpeed } from "./freeRamp.ts";
import type { OwnKilnFiring } from "./ownKilnFiring.ts";
import type { Schedule, TimelineRow } from "./Schedule.ts";

/** Longest temperature step when a ramp's power is added up [K]. */
const STEP_K = 10;

const JOULES_PER_KWH = 3.6e6;

/** A schedule, the kiln it is fired in, and its prediction when that was made already. */
interface Fired {
  readonly schedule: Schedule;
  readonly kiln: AssumedKiln;
  readonly own?: OwnKilnFiring | null;
}

/**
 * Electricity segment by segment, holds included [kWh]. A learned kiln is simulated; another is
 * counted by what it stores and loses.
 *
 * @returns null when the heat capacity or the power is not known, or when the kiln stalls on the way.
 */
export function segmentsKWh(fired: Fired): readonly number[] | null {
  const { schedule, kiln } = fired;
  if (kiln.learned !== undefined) {
    const { segments, startC } = schedule;
    const firing = fired.own?.firing ?? predictFiring(kiln.learned, { segments, startC });
    return predictedKWh(firing, schedule);
  }
  const { heatCapacityJPerK } = kiln;
  if (heatCapacityJPerK === undefined) return null;
  const sums = schedule.segments.map(() => 0);
  for (const row of expandSchedule(schedule, { kiln }).timeline)
    sums[row.segment] = (sums[row.segment] ?? 0) + rowKWh(row, kiln, heatCapacityJPerK);
  return sums;
}

/** Electricity of a whole schedule [kWh]; null where `segmentsKWh` is. */
export function energyKWh(fired: Fired): number | null {
  return segmentsKWh(fired)?.reduce((sum, kWh) => sum + kWh, 0) ?? null;
}

function predictedKWh(
  { segments, stalled }: PredictedFiring,
  schedule: Schedule,
): readonly number[] | null {
  const known = segments.flatMap((segment) =>
    segment.energyKWh === null ? [] : [segment.energyKWh],
  );
  if (known.length < segments.length) return null;
  if (stalled === null) return known;
  const unfinished = schedule.segments.slice(stalled.segment);
  // A last fall that comes to a stop near the room's temperature takes no power.
  const isLastFall = unfinished.length === 1 && (unfinished[0]?.toC ?? 0) < stalled.tempC;
  return isLastFall && known.length > 0 ? [...known, 0] : null;
}

/** C·(dT/dt + fall by itself), and nothing while the elements are off. */
function rowKWh(row: TimelineRow, kiln: AssumedKiln, heatCapacityJPerK: number): number {
  if (row.assumedRate && row.toC < row.fromC) return 0;
  const seconds = row.endSeconds - row.startSeconds;
  const steps = Math.max(1, Math.ceil(Math.abs(row.toC - row.fromC) / STEP_K));
  let kelvins = 0;
  for (let k = 0; k < steps; k++) {
    const tempC = row.fromC + ((row.toC - row.fromC) * (k + 0.5)) / steps;
    const loss = kiln.naturalCoolingCPerHour(tempC);
    const stepC = (row.toC - row.fromC) / steps;
    const hours = row.assumedRate
      ? Math.abs(stepC) / freeSpeed(kiln, tempC, true)
      : seconds / steps / 3600;
    kelvins += Math.max(0, stepC + loss * hours);
  }
  return (kelvins * heatCapacityJPerK) / JOULES_PER_KWH;
}
