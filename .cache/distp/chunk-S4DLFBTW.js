import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  makeCurve
} from "./chunk-M4BL2XKO.js";
import {
  lastAtOrBefore,
  temperatureAt
} from "./chunk-VFKPH3SJ.js";

// src/core/curve/moved.ts
function shifted(curve, seconds) {
  const move = (gap) => ({
    fromSeconds: gap.fromSeconds + seconds,
    toSeconds: gap.toSeconds + seconds
  });
  return makeCurve(
    curve.timesSeconds.map((time) => time + seconds),
    curve.tempsC,
    curve.gaps.map(move)
  );
}
function sliced(curve, fromSeconds, toSeconds) {
  const times = [];
  const temps = [];
  const start = temperatureAt(curve, fromSeconds);
  if (start !== null) {
    times.push(fromSeconds);
    temps.push(start);
  }
  for (let i = lastAtOrBefore(curve.timesSeconds, fromSeconds) + 1; i < curve.timesSeconds.length && curve.timesSeconds[i] <= toSeconds; i++) {
    times.push(curve.timesSeconds[i]);
    temps.push(curve.tempsC[i]);
  }
  const end = temperatureAt(curve, toSeconds);
  if (end !== null && toSeconds > (times.at(-1) ?? Number.POSITIVE_INFINITY)) {
    times.push(toSeconds);
    temps.push(end);
  }
  if (times.length < 2) return null;
  const first = times[0];
  const last = times.at(-1);
  return makeCurve(
    times,
    temps,
    curve.gaps.filter((gap) => gap.fromSeconds >= first && gap.toSeconds <= last)
  );
}

export {
  shifted,
  sliced
};
