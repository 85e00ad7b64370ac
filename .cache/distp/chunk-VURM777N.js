import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  tQuantile
} from "./chunk-2JS2W74R.js";

// src/core/crackle/crackPitch.ts
function crackPitch(interceptMm, pattern) {
  return (pattern === "net" ? 4 : 2) / Math.PI * interceptMm;
}
function grainSizeNumber(interceptMm) {
  return -6.643856 * Math.log10(interceptMm) - 3.288;
}

// src/core/crackle/lineIntercept.ts
var WITHIN = 0.95;
function lineIntercept(lines) {
  if (lines.length === 0) throw new RangeError("lineIntercept: needs a line");
  for (const { lengthMm: lengthMm2, crossings: crossings2 } of lines)
    if (!(lengthMm2 > 0 && crossings2 >= 0))
      throw new RangeError(`lineIntercept: ${crossings2} crossings on ${lengthMm2} mm`);
  const lengthMm = sum(lines.map((line) => line.lengthMm));
  const crossings = sum(lines.map((line) => line.crossings));
  const interceptMm = crossings === 0 ? null : lengthMm / crossings;
  const share = relativeError(lines);
  return {
    lines: lines.length,
    lengthMm,
    crossings,
    interceptMm,
    intervalMm: interceptMm === null || share === null ? null : interceptInterval(interceptMm, share, lines.length - 1),
    atLeastMm: interceptMm === null ? lengthMm / -Math.log(1 - WITHIN) : null,
    ofLines: ofLines(lines)
  };
}
function interceptInterval(interceptMm, standardError, freedom) {
  const factor = Math.exp(tQuantile(WITHIN, freedom) * standardError);
  return { low: interceptMm / factor, high: interceptMm * factor };
}
function relativeError(lines) {
  const crossings = sum(lines.map((line) => line.crossings));
  if (lines.length < 2 || crossings === 0) return null;
  const perMm = crossings / sum(lines.map((line) => line.lengthMm));
  const squares = sum(lines.map((line) => (line.crossings - perMm * line.lengthMm) ** 2));
  return Math.sqrt(lines.length / (lines.length - 1) * squares) / crossings;
}
function ofLines(lines) {
  if (lines.length < 2 || lines.some(({ crossings }) => crossings === 0)) return null;
  const each = lines.map(({ lengthMm, crossings }) => lengthMm / crossings);
  const meanMm = sum(each) / each.length;
  const standardDeviationMm = Math.sqrt(
    sum(each.map((value) => (value - meanMm) ** 2)) / (each.length - 1)
  );
  const halfWidthMm = tQuantile(WITHIN, each.length - 1) * standardDeviationMm / Math.sqrt(each.length);
  return { meanMm, standardDeviationMm, halfWidthMm, relativeAccuracy: halfWidthMm / meanMm };
}
function sum(values) {
  return values.reduce((total, value) => total + value, 0);
}

export {
  crackPitch,
  grainSizeNumber,
  lineIntercept
};
