import { type AssumedKiln, REFERENCE_KILN } from "../kiln/LearnedKiln.ts";
import { type PredictedFiring, predictFiring } from "../kiln/predictFiring.ts";
import { expandSchedule, freeSpeed } from "./expandSchedule.ts";
import type { OwnKilnFiring } from "./ownKilnFiring.ts";
import type { Schedule, Segment, TimelineRow } from "./Schedule.ts";

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
function segmentsKWh(fired: Fired): readonly number[] | null {
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

/** One segment of a difference. */
export interface DifferenceLine {
  readonly kind: "same" | "removed" | "added";
  readonly segment: Segment;
  /** Where it starts [°C]. */
  readonly fromC: number;
  /** How long it lasts, hold included [s]. */
  readonly seconds: number;
  /** Electricity that it takes [kWh]; null when it is not known. */
  readonly kWh: number | null;
}

/**
 * Two schedules segment by segment: what stays, what goes, what comes, in the order of the firing.
 * A segment stays when start, target, rate and hold are the same; as many stay as can.
 * Seconds of what is added, less those of what is removed, are the cost of the change.
 */
export function scheduleDifference(
  before: Schedule,
  after: Schedule,
  kiln: AssumedKiln = REFERENCE_KILN,
): readonly DifferenceLine[] {
  const old = linesOf(before, kiln);
  const young = linesOf(after, kiln);
  const common = commonLengths(old, young);
  const lines: DifferenceLine[] = [];
  let i = 0;
  let j = 0;
  while (i < old.length || j < young.length) {
    const was = old[i];
    const is = young[j];
    if (was && is && isSame(was, is)) {
      lines.push({ ...is, kind: "same" });
      i++;
      j++;
    } else if (was && (!is || lengthAt(common, i + 1, j) >= lengthAt(common, i, j + 1))) {
      lines.push({ ...was, kind: "removed" });
      i++;
    } else if (is) {
      lines.push({ ...is, kind: "added" });
      j++;
    }
  }
  return lines;
}

type Line = Omit<DifferenceLine, "kind">;

function linesOf(schedule: Schedule, kiln: AssumedKiln): readonly Line[] {
  const { timeline } = expandSchedule(schedule, { kiln });
  const energies = segmentsKWh({ schedule, kiln });
  return schedule.segments.map((segment, index) => {
    const rows = timeline.filter((row) => row.segment === index);
    return {
      segment,
      fromC: rows[0]?.fromC ?? segment.toC,
      seconds: rows.reduce((sum, row) => sum + row.endSeconds - row.startSeconds, 0),
      kWh: energies?.[index] ?? null,
    };
  });
}

function isSame(a: Line, b: Line): boolean {
  return (
    a.fromC === b.fromC &&
    a.segment.toC === b.segment.toC &&
    a.segment.rateCPerHour === b.segment.rateCPerHour &&
    a.segment.holdSeconds === b.segment.holdSeconds
  );
}

/** Length of the longest common part from each pair of places on. */
function commonLengths(old: readonly Line[], young: readonly Line[]): readonly number[][] {
  const table = Array.from({ length: old.length + 1 }, () =>
    new Array<number>(young.length + 1).fill(0),
  );
  for (let i = old.length - 1; i >= 0; i--)
    for (let j = young.length - 1; j >= 0; j--)
      table[i]![j] = isSame(old[i]!, young[j]!)
        ? lengthAt(table, i + 1, j + 1) + 1
        : Math.max(lengthAt(table, i + 1, j), lengthAt(table, i, j + 1));
  return table;
}

function lengthAt(table: readonly (readonly number[])[], i: number, j: number): number {
  return table[i]?.[j] ?? 0;
}
