import type { LogFault } from "../LogReading.ts";
import { type WildStretch, wildStretch } from "./wildRows.ts";

/** A temperature column in °C beside the times of a log. */
export interface MeasuredColumn {
  readonly name: string;
  /** NaN where there is no reading [°C]. */
  readonly tempsC: Float64Array;
}

/** A column without its wild stretch, and what is said about that; null without one. */
export interface CalmedColumn {
  readonly tempsC: Float64Array;
  readonly fault: LogFault | null;
}

/**
 * Columns without the stretches in which one jumps wildly while another runs smoothly: a failing
 * thermocouple must not count as the hottest zone.
 * @param seconds Times of the readings [s].
 */
export function withoutWild(
  columns: readonly MeasuredColumn[],
  seconds: Float64Array,
): readonly CalmedColumn[] {
  return columns.map((column) => {
    const others = columns.filter((other) => other !== column);
    const stretch = wildStretch(
      column.tempsC,
      others.map(({ tempsC }) => tempsC),
    );
    if (stretch === null) return { tempsC: column.tempsC, fault: null };
    return {
      tempsC: column.tempsC.map((tempC, i) =>
        i >= stretch.from && i <= stretch.to ? Number.NaN : tempC,
      ),
      fault: faultOf(column, stretch, seconds),
    };
  });
}

function faultOf(column: MeasuredColumn, stretch: WildStretch, seconds: Float64Array): LogFault {
  const { from, to, usualJump } = stretch;
  const count = column.tempsC.subarray(from, to + 1).filter((tempC) => !Number.isNaN(tempC)).length;
  return {
    kind: "spike",
    channel: column.name,
    fromSeconds: seconds[from] as number,
    toSeconds: seconds[to] as number,
    count,
    what: `${column.name} jumps up and down by ${Math.round(usualJump / 2)} K from reading to reading while another thermocouple runs smoothly, as a failing one does; its ${count} readings there are left out.`,
  };
}
