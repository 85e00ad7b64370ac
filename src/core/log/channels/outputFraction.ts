import type { Channel } from "../LogReading.ts";
import type { Column } from "../text/table.ts";

/** Highest share and highest percentage that a controller writes, rounding allowed for. */
const WHOLE = 1.001;
const WHOLE_PERCENT = 100.5;

/**
 * An output column as share of full power, 0–1: as it stands, or from percent when the heading says
 * so or a number is over 1. Cells without a number are left out.
 * @returns null when its numbers are no share of anything, or fewer than two.
 */
export function outputFraction(
  column: Column,
  rows: Int32Array,
  seconds: Float64Array,
): NonNullable<Channel["outputFraction"]> | null {
  const times = new Float64Array(rows.length);
  const values = new Float64Array(rows.length);
  let count = 0;
  let lowest = 0;
  let highest = 0;
  for (let i = 0; i < rows.length; i++) {
    const value = column.numbers[rows[i] as number] as number;
    if (!Number.isFinite(value)) continue;
    lowest = Math.min(lowest, value);
    highest = Math.max(highest, value);
    times[count] = seconds[i] as number;
    values[count++] = value;
  }
  if (count < 2 || lowest < 0 || highest > WHOLE_PERCENT) return null;
  const whole =
    highest > WHOLE || /%|percent|prozent/i.test(`${column.name} ${column.unitText}`) ? 100 : 1;
  return {
    timesSeconds: times.subarray(0, count),
    fraction: values.subarray(0, count).map((value) => Math.min(1, value / whole)),
  };
}
