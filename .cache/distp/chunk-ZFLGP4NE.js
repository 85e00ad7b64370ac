import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  LITRES_PER_PINT,
  parseVolume
} from "./chunk-DAQTYWBQ.js";
import {
  bareNumber,
  notThatQuantity,
  writtenQuantity
} from "./chunk-BKGWRYOW.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/units/mass.ts
var GRAMS_PER_OUNCE = 453.59237 / 16;
var FORM = {
  code: "units/not-a-mass",
  kind: "a mass",
  expected: '"2 kg", "500 g", "5 lb", "16 oz", or a bare number of grams'
};
var GRAMS = {
  "": 1,
  g: 1,
  gram: 1,
  grams: 1,
  kg: 1e3,
  oz: GRAMS_PER_OUNCE,
  lb: 453.59237,
  lbs: 453.59237
};
function parseMass(text, context) {
  const written = writtenQuantity(text);
  const grams = written ? written.value * (GRAMS[written.unit] ?? Number.NaN) : Number.NaN;
  return grams > 0 ? bareNumber(grams, FORM, context.where) : notThatQuantity(text, FORM, context.where);
}

// src/core/units/coatMass.ts
var FORM2 = {
  code: "units/not-a-coat-mass",
  kind: "a dry mass on an area",
  expected: '"10g/100cm2", "0.1 g/cm2", "0.4 oz/16 in2"'
};
var WRITTEN = /^(\d+(?:\.\d+)?)\s*(g|oz)\s*(?:\/|on|per)\s*(\d+(?:\.\d+)?)?\s*(cm|in)(?:2|²)$/i;
var CM2_PER_IN2 = 2.54 ** 2;
function parseCoatMass(text, context) {
  const [, mass = "", massUnit = "", area = "1", areaUnit = ""] = WRITTEN.exec(text.trim()) ?? [];
  const grams = Number(mass) * (massUnit.toLowerCase() === "oz" ? GRAMS_PER_OUNCE : 1);
  const cm2 = Number(area) * (areaUnit.toLowerCase() === "in" ? CM2_PER_IN2 : 1);
  const perCm2 = mass === "" ? Number.NaN : grams / cm2;
  return perCm2 > 0 ? bareNumber(perCm2, FORM2, context.where) : notThatQuantity(text, FORM2, context.where);
}

// src/core/units/slipDensity.ts
var FORM3 = {
  code: "units/not-a-slip-density",
  kind: "the density of a slip",
  expected: '"1.45", "1450 g/L", "65g/50mL", "29 oz/imperial pint", "24 oz/US pint"'
};
var PER_PINT = {
  imperial: GRAMS_PER_OUNCE / (1e3 * LITRES_PER_PINT.imperial),
  us: GRAMS_PER_OUNCE / (1e3 * LITRES_PER_PINT.us)
};
var UNITS = { "": 1, sg: 1, "g/cm3": 1, "g/cm\xB3": 1 };
var RANGE = [1.02, 2.2];
function parseSlipDensity(text, context) {
  const written = writtenQuantity(text);
  const density = (written && UNITS[written.unit] ? written.value : null) ?? weighed(text);
  if (density === null) return notThatQuantity(text, FORM3, context.where);
  const [least, most] = RANGE;
  if (density >= least && density <= most) return ok(density);
  return failed({
    code: "units/slip-density-range",
    where: context.where,
    what: `"${text}" is ${density.toFixed(2)} times as heavy as water`,
    expected: `${least} to ${most} for a slip; a bare number is a specific gravity`,
    fix: density > 500 ? `write ${text.trim()}g/L` : "check the number and its unit"
  });
}
function ouncesPerPint(gPerCm3, pint) {
  return gPerCm3 / PER_PINT[pint];
}
function weighed(text) {
  const [over = "", under = "", ...more] = text.split("/");
  if (under === "" || more.length > 0) return null;
  const mass = parseMass(over, { where: "" });
  const volume = parseVolume(/^\s*\d/.test(under) ? under : `1 ${under}`, { where: "" });
  const isNamed = /[a-z]/i.test(over) && /[a-z]/i.test(under);
  return isNamed && mass.ok && volume.ok ? mass.value / (1e3 * volume.value) : null;
}

export {
  GRAMS_PER_OUNCE,
  parseMass,
  CM2_PER_IN2,
  parseCoatMass,
  parseSlipDensity,
  ouncesPerPint
};
