import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  shifted
} from "./chunk-S4DLFBTW.js";
import {
  crossingTimes
} from "./chunk-BNESJYXC.js";

// src/core/firing/Alignment.ts
var AT_PEAK = { at: "peak" };

// src/core/firing/linedUp.ts
function linedUp({ aligned }, alignment) {
  const start = aligned.timesSeconds[0];
  const zero = zeroOf(aligned, alignment);
  if (zero === null) return null;
  return {
    secondsFromPeak: zero,
    secondsFromStart: zero - start,
    curve: zero === 0 ? aligned : shifted(aligned, -zero)
  };
}
function zeroOf(curve, alignment) {
  switch (alignment.at) {
    case "peak":
      return 0;
    case "start":
      return curve.timesSeconds[0];
    case "rising":
      return firstOf(curve, alignment.tempC, ({ seconds, direction }) => {
        return direction === "heating" && seconds <= 0;
      });
    case "falling":
      return firstOf(curve, alignment.tempC, ({ seconds, direction }) => {
        return direction === "cooling" && seconds >= 0;
      });
  }
}
function firstOf(curve, tempC, isMeant) {
  return crossingTimes(curve, tempC).find(isMeant)?.seconds ?? null;
}

export {
  AT_PEAK,
  linedUp
};
