import { type AssumedKiln, REFERENCE_KILN } from "../kiln/AssumedKiln.ts";
import { segmentsKWh } from "./energyOf.ts";
import { expandSchedule } from "./expandSchedule.ts";
import type { Schedule, Segment } from "./Schedule.ts";

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
      (table[i] as number[])[j] = isSame(old[i]!, young[j]!)
        ? lengthAt(table, i + 1, j + 1) + 1
        : Math.max(lengthAt(table, i + 1, j), lengthAt(table, i, j + 1));
  return table;
}

function lengthAt(table: readonly (readonly number[])[], i: number, j: number): number {
  return table[i]?.[j] ?? 0;
}
