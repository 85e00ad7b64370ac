/** A stretch of time in which nothing was measured; nothing is ever interpolated across it. */
export interface Gap {
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

/**
 * Temperature against time: a planned schedule and a measured log alike.
 * Two arrays of one length (at least 2): times [s from start], finite and strictly rising,
 * and temperatures [°C], finite. Between neighbouring points it is straight, except inside a gap.
 */
export interface Curve {
  readonly timesSeconds: Float64Array;
  readonly tempsC: Float64Array;
  /** In order, apart from each other; each spans exactly one step between neighbouring points. */
  readonly gaps: readonly Gap[];
}

/**
 * A Curve from its points, copied.
 * @throws RangeError when the lengths differ, fewer than two points are given, a value is not
 * finite, times do not strictly rise, or a gap is not one step between neighbouring points.
 */
export function makeCurve(
  timesSeconds: ArrayLike<number>,
  tempsC: ArrayLike<number>,
  gaps: readonly Gap[] = [],
): Curve {
  return curveOver(new Float64Array(timesSeconds), new Float64Array(tempsC), gaps);
}

/**
 * A Curve on the arrays themselves, which nobody may write to any more; Curves may share them.
 * @throws RangeError as `makeCurve` does.
 */
export function curveOver(
  timesSeconds: Float64Array,
  tempsC: Float64Array,
  gaps: readonly Gap[],
): Curve {
  if (timesSeconds.length !== tempsC.length || timesSeconds.length < 2)
    throw new RangeError(
      `makeCurve: ${timesSeconds.length} times and ${tempsC.length} temperatures`,
    );
  let previous = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < timesSeconds.length; i++) {
    const time = timesSeconds[i]!;
    if (!(Number.isFinite(time) && Number.isFinite(tempsC[i]!)))
      throw new RangeError(`makeCurve: point ${i} is not finite`);
    if (time <= previous) throw new RangeError(`makeCurve: time does not rise at point ${i}`);
    previous = time;
  }
  for (const gap of gaps) {
    const at = indexOfTime(timesSeconds, gap.fromSeconds);
    if (at < 0 || timesSeconds[at + 1] !== gap.toSeconds)
      throw new RangeError(`makeCurve: gap ${gap.fromSeconds}…${gap.toSeconds} s is not one step`);
  }
  return { timesSeconds, tempsC, gaps: gaps.map((gap) => ({ ...gap })) };
}

/** Place of a time among times that rise; −1 when it is not there. */
function indexOfTime(times: Float64Array, seconds: number): number {
  let low = 0;
  let high = times.length - 1;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (times[middle]! < seconds) low = middle + 1;
    else high = middle;
  }
  return times[low] === seconds ? low : -1;
}

/**
 * Temperature [°C] at a time [s], on the straight line between the neighbouring points.
 * @returns null before the first point, after the last, and inside a gap.
 */
export function temperatureAt(curve: Curve, seconds: number): number | null {
  const { timesSeconds, tempsC } = curve;
  const last = timesSeconds.length - 1;
  if (!(seconds >= timesSeconds[0]! && seconds <= timesSeconds[last]!)) return null;
  const left = lastAtOrBefore(timesSeconds, seconds);
  const from = timesSeconds[left]!;
  if (from === seconds) return tempsC[left]!;
  if (curve.gaps.some((gap) => gap.fromSeconds === from)) return null;
  const to = timesSeconds[left + 1]!;
  const share = (seconds - from) / (to - from);
  return tempsC[left]! * (1 - share) + tempsC[left + 1]! * share;
}

/** Index of the last time at or before a moment; −1 when all are later. Times must rise. */
export function lastAtOrBefore(timesSeconds: Float64Array, seconds: number): number {
  let low = 0;
  let high = timesSeconds.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (timesSeconds[middle]! <= seconds) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** The highest point of a Curve; the first of them when several are equal. */
export function peakOf(curve: Curve): {
  readonly tempC: number;
  readonly seconds: number;
  readonly index: number;
} {
  const { tempsC } = curve;
  let index = 0;
  let tempC = tempsC[0]!;
  for (let i = 1; i < tempsC.length; i++)
    if (tempsC[i]! > tempC) {
      index = i;
      tempC = tempsC[i]!;
    }
  return {
    tempC,
    seconds: curve.timesSeconds[index]!,
    index,
  };
}

/** The same Curve, later by some seconds. */
export function shifted(curve: Curve, seconds: number): Curve {
  const move = (gap: Gap): Gap => ({
    fromSeconds: gap.fromSeconds + seconds,
    toSeconds: gap.toSeconds + seconds,
  });
  return makeCurve(
    curve.timesSeconds.map((time) => time + seconds),
    curve.tempsC,
    curve.gaps.map(move),
  );
}

/** The same Curve, warmer by a difference [K]: a thermocouple's offset applied. */
export function offsetBy(curve: Curve, deltaK: number): Curve {
  return makeCurve(
    curve.timesSeconds,
    curve.tempsC.map((temp) => temp + deltaK),
    curve.gaps,
  );
}

/**
 * The part of a Curve between two times [s], with interpolated ends; ends inside a gap move inward.
 * @returns null when fewer than two points are left.
 */
export function sliced(curve: Curve, fromSeconds: number, toSeconds: number): Curve | null {
  const times: number[] = [];
  const temps: number[] = [];
  const start = temperatureAt(curve, fromSeconds);
  if (start !== null) {
    times.push(fromSeconds);
    temps.push(start);
  }
  for (
    let i = lastAtOrBefore(curve.timesSeconds, fromSeconds) + 1;
    i < curve.timesSeconds.length && curve.timesSeconds[i]! <= toSeconds;
    i++
  ) {
    times.push(curve.timesSeconds[i]!);
    temps.push(curve.tempsC[i]!);
  }
  const end = temperatureAt(curve, toSeconds);
  if (end !== null && toSeconds > (times.at(-1) ?? Number.POSITIVE_INFINITY)) {
    times.push(toSeconds);
    temps.push(end);
  }
  if (times.length < 2) return null;
  const first = times[0]!;
  const last = times.at(-1)!;
  return makeCurve(
    times,
    temps,
    curve.gaps.filter((gap) => gap.fromSeconds >= first && gap.toSeconds <= last),
  );
}
