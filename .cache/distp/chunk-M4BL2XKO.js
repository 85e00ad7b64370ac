import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/curve/Curve.ts
function makeCurve(timesSeconds, tempsC, gaps = []) {
  return curveOver(new Float64Array(timesSeconds), new Float64Array(tempsC), gaps);
}
function curveOver(timesSeconds, tempsC, gaps) {
  if (timesSeconds.length !== tempsC.length || timesSeconds.length < 2)
    throw new RangeError(
      `makeCurve: ${timesSeconds.length} times and ${tempsC.length} temperatures`
    );
  let previous = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < timesSeconds.length; i++) {
    const time = timesSeconds[i];
    if (!(Number.isFinite(time) && Number.isFinite(tempsC[i])))
      throw new RangeError(`makeCurve: point ${i} is not finite`);
    if (time <= previous) throw new RangeError(`makeCurve: time does not rise at point ${i}`);
    previous = time;
  }
  for (const gap of gaps) {
    const at = indexOfTime(timesSeconds, gap.fromSeconds);
    if (at < 0 || timesSeconds[at + 1] !== gap.toSeconds)
      throw new RangeError(`makeCurve: gap ${gap.fromSeconds}\u2026${gap.toSeconds} s is not one step`);
  }
  return { timesSeconds, tempsC, gaps: gaps.map((gap) => ({ ...gap })) };
}
function indexOfTime(times, seconds) {
  let low = 0;
  let high = times.length - 1;
  while (low < high) {
    const middle = low + high >>> 1;
    if (times[middle] < seconds) low = middle + 1;
    else high = middle;
  }
  return times[low] === seconds ? low : -1;
}

export {
  makeCurve,
  curveOver
};
