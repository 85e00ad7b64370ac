import type { TimePlace } from "./timeColumn.ts";

const DAY_SECONDS = 86_400;

/**
 * A count for each row that rises evenly with time, in any unit and from any zero, before the times
 * are decided: good enough to see whether a column runs in straight lines. Null without times.
 */
export function roughClock(place: TimePlace): Float64Array | null {
  if (place.kind === "none") return null;
  if (place.kind === "number") return place.column.numbers;
  if (place.clock === null) return null;
  const ofDay = place.clock.stamps.seconds;
  const running = new Float64Array(ofDay.length);
  let days = 0;
  let last = Number.NaN;
  for (let i = 0; i < ofDay.length; i++) {
    const seconds = ofDay[i] as number;
    if (seconds - last < -DAY_SECONDS / 2) days++;
    else if (seconds - last > DAY_SECONDS / 2) days--;
    running[i] = seconds + days * DAY_SECONDS;
    if (!Number.isNaN(seconds)) last = seconds;
  }
  return spreadOut(running);
}

/** Share of rows with the stamp of the row before, from which stamps are merely coarse. */
const COARSE_SHARE = 0.2;

/** Rows of one coarse stamp, spread evenly up to the next. */
function spreadOut(times: Float64Array): Float64Array {
  const repeats = times.filter((time, i) => time === times[i - 1]).length;
  if (repeats < COARSE_SHARE * times.length) return times;
  const spread = times.slice();
  let from = 0;
  for (let i = 1; i < times.length; i++) {
    if (times[i] === times[from]) continue;
    const [here, next] = [times[from] as number, times[i] as number];
    for (let k = from; k < i; k++) spread[k] = here + ((next - here) * (k - from)) / (i - from);
    from = i;
  }
  return spread.fill(Number.NaN, from);
}
