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
  const times = Float64Array.from(timesSeconds);
  const temps = Float64Array.from(tempsC);
  if (times.length !== temps.length || times.length < 2)
    throw new RangeError(`makeCurve: ${times.length} times and ${temps.length} temperatures`);
  let previous = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < times.length; i++) {
    const time = times[i] as number;
    if (!(Number.isFinite(time) && Number.isFinite(temps[i] as number)))
      throw new RangeError(`makeCurve: point ${i} is not finite`);
    if (time <= previous) throw new RangeError(`makeCurve: time does not rise at point ${i}`);
    previous = time;
  }
  for (const gap of gaps) {
    const at = times.indexOf(gap.fromSeconds);
    if (at < 0 || times[at + 1] !== gap.toSeconds)
      throw new RangeError(`makeCurve: gap ${gap.fromSeconds}…${gap.toSeconds} s is not one step`);
  }
  return {
    timesSeconds: times,
    tempsC: temps,
    gaps: gaps.map((gap) => ({ ...gap })),
  };
}
