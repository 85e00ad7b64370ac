import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/curve/crossingTimes.ts
function crossingTimes(curve, tempC) {
  const { timesSeconds, tempsC } = curve;
  const gapStarts = new Set(curve.gaps.map((gap) => gap.fromSeconds));
  const found = [];
  for (let i = 0; i + 1 < tempsC.length; i++) {
    const here = tempsC[i];
    const there = tempsC[i + 1];
    if (here >= tempC === there >= tempC || gapStarts.has(timesSeconds[i])) continue;
    const from = timesSeconds[i];
    const to = timesSeconds[i + 1];
    found.push({
      seconds: from + (tempC - here) / (there - here) * (to - from),
      direction: there > here ? "heating" : "cooling"
    });
  }
  return found;
}

export {
  crossingTimes
};
