import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  seededEven
} from "./chunk-F6MWUWUD.js";

// src/core/ware/drawn.ts
var SIGMAS_TO_90 = 1.2815515655446004;
function drawn({ value, low, high }, sigmas) {
  const share = Math.abs(sigmas) / SIGMAS_TO_90;
  const end = sigmas < 0 ? low : high;
  if (low > 0) return value * Math.exp(share * Math.log(end / value));
  return Math.max(0, value + (end - value) * share);
}

// src/core/ware/seededNormal.ts
function seededNormal(seed) {
  const even = seededEven(seed);
  return () => Math.sqrt(-2 * Math.log(1 - even())) * cosineOfTurn(even());
}
function cosineOfTurn(turn) {
  const half = turn > 0.5 ? 1 - turn : turn;
  const quarter = half > 0.25 ? 0.5 - half : half;
  const size = quarter > 0.125 ? series(2 * Math.PI * (0.25 - quarter), 1) : series(2 * Math.PI * quarter, 0);
  return half > 0.25 ? -size : size;
}
function series(angle, firstPower) {
  const square = angle * angle;
  let sum = 0;
  for (let power = 18 + firstPower; power > firstPower; power -= 2)
    sum = -square * (1 + sum) / (power * (power - 1));
  return (1 + sum) * (firstPower === 1 ? angle : 1);
}

// src/core/ware/spreadOf.ts
function spreadOf(values) {
  const sorted = values.toSorted();
  const at = (share) => sorted[Math.round(share * (sorted.length - 1))];
  return { low: at(0.1), median: at(0.5), high: at(0.9) };
}

export {
  SIGMAS_TO_90,
  drawn,
  seededNormal,
  spreadOf
};
