import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  STRAIN_DRAWS,
  passageRisk,
  strainRisk
} from "./chunk-BX5CJHE4.js";

// src/core/reports/documents/strainsPiece.ts
function strainsPiece(strains) {
  return strains.map((strained) => ({
    piece: strained.name,
    body: strained.ware.body.name,
    state: strained.state,
    heating: strained.heating,
    draws: STRAIN_DRAWS.runs,
    seed: STRAIN_DRAWS.seed,
    passages: strained.passages.map(({ band, direction, measured, computed }) => ({
      band,
      direction,
      measured,
      ratio: computed?.ratio ?? null,
      low: computed?.low ?? null,
      high: computed?.high ?? null,
      shares: computed?.shares ?? null,
      risk: computed === null ? null : passageRisk({ band, direction, ratio: computed.ratio }, strained.ware.body),
      atSeconds: computed?.atSeconds ?? null,
      tempC: computed?.tempC ?? null,
      fromSeconds: computed?.fromSeconds ?? null,
      toSeconds: computed?.toSeconds ?? null
    })),
    openings: strained.openings.map(({ way, tempC, ratio, low, high, shares }) => ({
      way,
      tempC,
      ratio,
      low,
      high,
      shares,
      risk: strainRisk(ratio)
    })),
    limits: strained.limits.map((limit) => ({ ...limit }))
  }));
}

export {
  strainsPiece
};
