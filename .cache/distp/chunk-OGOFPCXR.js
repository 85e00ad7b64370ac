import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/firing/diagnosis/DiagnosedCause.ts
var CRACK_KINDS = {
  "crackle by fit": "crackle: the glaze shrinks more than the clay",
  "delayed crazing": "crazing that comes later, as the clay takes up moisture",
  shivering: "shivering: the clay squeezes the glaze until it flakes off",
  "dunting at quartz": "dunting at the quartz inversion",
  "dunting at cristobalite": "dunting at the cristobalite inversion",
  "lid opened hot": "opened too hot",
  "one-sided glaze": "pot split by thick glaze on one side",
  "heating crack": "cracked while heating",
  "bisque crack": "cracked in the bisque already",
  "drying crack": "cracked in drying",
  "S-crack": "S-crack in the base",
  "something else": "something else"
};
var KINDS = Object.keys(CRACK_KINDS);
var WEIGHTS = { weak: 1, fair: 2, strong: 3 };
var SAYABLE_FROM = 0.4;
var LIKELY_FROM = 0.6;
var POSSIBLE_FROM = 0.15;
function likelihoodOf(posterior) {
  if (posterior >= LIKELY_FROM) return "likely";
  return posterior >= POSSIBLE_FROM ? "possible" : "unlikely";
}

export {
  CRACK_KINDS,
  KINDS,
  WEIGHTS,
  SAYABLE_FROM,
  likelihoodOf
};
