import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  bareNumber,
  notThatQuantity,
  writtenQuantity
} from "./chunk-BKGWRYOW.js";

// src/core/units/volume.ts
var LITRES_PER_PINT = { imperial: 0.56826125, us: 0.473176473 };
var FORM = {
  code: "units/not-a-volume",
  kind: "a volume",
  expected: '"5 L", "500 mL", "2 imperial gal", "2 US gal", or a bare number of litres'
};
var LITRES = {
  "": 1,
  l: 1,
  litre: 1,
  litres: 1,
  liter: 1,
  liters: 1,
  ml: 1e-3,
  "imperial pint": LITRES_PER_PINT.imperial,
  "imperial pints": LITRES_PER_PINT.imperial,
  "us pint": LITRES_PER_PINT.us,
  "us pints": LITRES_PER_PINT.us,
  "imperial gal": 8 * LITRES_PER_PINT.imperial,
  "us gal": 8 * LITRES_PER_PINT.us
};
function parseVolume(text, context) {
  const written = writtenQuantity(text);
  const litres = written ? written.value * (LITRES[spaced(written.unit)] ?? Number.NaN) : Number.NaN;
  return litres > 0 ? bareNumber(litres, FORM, context.where) : notThatQuantity(text, FORM, context.where);
}
function spaced(unit) {
  return unit.replaceAll("-", " ");
}

// src/core/units/isBareNumber.ts
function isBareNumber(written) {
  return typeof written === "number" || /^[\s\d.,/+-]+$/.test(written);
}

// src/core/glaze/brongniart.ts
var WATER = 1;
function dryGPerLitre({ slipGPerCm3, solidGPerCm3 }) {
  return 1e3 * (slipGPerCm3 - WATER) * solidGPerCm3 / (solidGPerCm3 - WATER);
}
function waterGPerLitre(slip) {
  return 1e3 * slip.slipGPerCm3 - dryGPerLitre(slip);
}
function waterForDryG(dryG, { slipGPerCm3, solidGPerCm3 }) {
  return dryG * (1 - slipGPerCm3 / solidGPerCm3) / (slipGPerCm3 - WATER);
}

// src/core/glaze/firedCoat.ts
function firedCoatMm(dryGPerCm2, { lossFraction, firedGPerCm3 }) {
  return 10 * dryGPerCm2 * (1 - lossFraction) / firedGPerCm3;
}
function dryCoatGPerCm2(coatMm, { lossFraction, firedGPerCm3 }) {
  return coatMm * firedGPerCm3 / (10 * (1 - lossFraction));
}

export {
  isBareNumber,
  LITRES_PER_PINT,
  parseVolume,
  dryGPerLitre,
  waterGPerLitre,
  waterForDryG,
  firedCoatMm,
  dryCoatGPerCm2
};
