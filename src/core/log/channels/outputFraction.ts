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
  const known = Array.from(rows, (row, i) => ({
    seconds: seconds[i] as number,
    value: column.numbers[row] as number,
  })).filter(({ value }) => Number.isFinite(value));
  const lowest = known.reduce((low, { value }) => Math.min(low, value), 0);
  const highest = known.reduce((high, { value }) => Math.max(high, value), 0);
  if (known.length < 2 || lowest < 0 || highest > WHOLE_PERCENT) return null;
  const whole =
    highest > WHOLE || /%|percent|prozent/i.test(`${column.name} ${column.unitText}`) ? 100 : 1;
  return {
    timesSeconds: Float64Array.from(known, (each) => each.seconds),
    fraction: Float64Array.from(known, ({ value }) => Math.min(1, value / whole)),
  };
}
