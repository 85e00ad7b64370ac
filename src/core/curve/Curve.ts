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
