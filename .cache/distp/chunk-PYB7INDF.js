import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  bareNumber,
  notThatQuantity,
  writtenQuantity
} from "./chunk-BKGWRYOW.js";
import {
  celsiusFromFahrenheit,
  celsiusFromKelvin
} from "./chunk-R2H4YYDI.js";
import {
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/units/parseTemperature.ts
var FORM = {
  code: "units/not-a-temperature",
  kind: "a temperature",
  expected: '"1186 C", "2167 F", or a bare number in the declared unit'
};
var UNITS = new Map(
  Object.entries({
    c: "C",
    "\xB0c": "C",
    "\xB0 c": "C",
    "deg c": "C",
    celsius: "C",
    f: "F",
    "\xB0f": "F",
    "\xB0 f": "F",
    "deg f": "F",
    fahrenheit: "F",
    k: "K",
    kelvin: "K"
  })
);
function parseTemperature(value, context) {
  if (typeof value === "number") {
    const bare2 = bareNumber(value, FORM, context.where);
    return bare2.ok ? ok(inCelsius(bare2.value, context.unit)) : bare2;
  }
  const written = writtenQuantity(value, "thousands");
  if (!written) return notThatQuantity(value, FORM, context.where);
  const bare = written.unit === "" || written.unit === "\xB0";
  const unit = bare ? context.unit : UNITS.get(written.unit);
  if (!unit) return notThatQuantity(value, FORM, context.where);
  return ok(inCelsius(written.value, unit));
}
function inCelsius(value, unit) {
  if (unit === "K") return celsiusFromKelvin(value);
  return unit === "C" ? value : celsiusFromFahrenheit(value);
}

export {
  parseTemperature
};
