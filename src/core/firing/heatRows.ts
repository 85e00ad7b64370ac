import type { Curve } from "../curve/Curve.ts";
import { lastAtOrBefore } from "../curve/temperatureAt.ts";
import { timeBins } from "./timeBins.ts";

/** A moment of a kiln: how hot it is, and how much its elements are asked for. */
export interface Row {
  readonly seconds: number;
  /** Mean of the readings within two and a half minutes either way. */
  readonly tempC: number;
  /** As read, by median of half a minute. */
  readonly rawC: number;
  /** Share of full power up to here, 0–1; null where the log does not say. */
  readonly output: number | null;
}

/** Readings so near to a moment are taken together [s]. */
const NEAR_SECONDS = 150;

/** A Curve as moments; nothing is smoothed across its gaps. */
export function rowsOf(
  curve: Curve,
  outputAt: (fromSeconds: number, toSeconds: number) => number | null,
): readonly Row[] {
  return timeBins(curve).flatMap(({ timesSeconds, tempsC, widthSeconds }) => {
    const sums = [0];
    for (const tempC of tempsC) sums.push(sums.at(-1)! + tempC);
    return Array.from(timesSeconds, (seconds, i): Row => {
      const first = lastAtOrBefore(timesSeconds, seconds - NEAR_SECONDS - 1e-6) + 1;
      const last = lastAtOrBefore(timesSeconds, seconds + NEAR_SECONDS);
      // As many readings to each side: else the ends of a climb would be pulled towards its middle.
      const reach = Math.min(i - first, last - i);
      const [from, until] = [i - reach, i + reach + 1];
      return {
        seconds,
        tempC: (sums[until]! - sums[from]!) / (until - from),
        rawC: tempsC[i]!,
        output: outputAt(seconds - widthSeconds, seconds),
      };
    });
  });
}

/** How fast a kiln went over the time before a row, with one sigma, and over its earlier and later half [°C/h]. */
interface RowRate {
  readonly rateCPerHour: number;
  readonly sigmaCPerHour: number;
  readonly earlyCPerHour: number;
  readonly lateCPerHour: number;
}

/** Fewest rows that give a rate with a sigma. */
const FEWEST_ROWS = 3;

/** Least squares over the time up to a row; over more time where that holds under three rows, null where there are none. */
export function rateOver(rows: readonly Row[], at: number, seconds: number): RowRate | null {
  const end = rows[at]!.seconds;
  let first = at;
  while (first > 0 && (end - rows[first - 1]!.seconds <= seconds || at - first + 1 < FEWEST_ROWS))
    first--;
  const used = rows.slice(first, at + 1);
  const line = lineThrough(used);
  if (line === null) return null;
  const middle = used.length >> 1;
  return {
    ...line,
    earlyCPerHour: between(used[0]!, used[middle]!),
    lateCPerHour: between(used[middle]!, used.at(-1) as Row),
  };
}

function between(from: Row, to: Row): number {
  return (3600 * (to.tempC - from.tempC)) / Math.max(1, to.seconds - from.seconds);
}

function lineThrough(rows: readonly Row[]): Pick<RowRate, "rateCPerHour" | "sigmaCPerHour"> | null {
  const n = rows.length;
  if (n < FEWEST_ROWS) return null;
  const meanT = rows.reduce((sum, row) => sum + row.seconds, 0) / n;
  const meanC = rows.reduce((sum, row) => sum + row.rawC, 0) / n;
  let tt = 0;
  let tc = 0;
  let cc = 0;
  for (const { seconds, rawC } of rows) {
    tt += (seconds - meanT) ** 2;
    tc += (seconds - meanT) * (rawC - meanC);
    cc += (rawC - meanC) ** 2;
  }
  if (!(tt > 0)) return null;
  const slope = tc / tt;
  const residual = Math.max(0, cc - slope * tc) / (n - 2);
  return { rateCPerHour: 3600 * slope, sigmaCPerHour: 3600 * Math.sqrt(residual / tt) };
}
