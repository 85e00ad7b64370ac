import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  shown
} from "./chunk-BKGWRYOW.js";
import {
  UNKNOWN_BODY,
  bodyNamed
} from "./chunk-O435DZD7.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/ware/bodyProperties.ts
var BODY_PROPERTIES = [
  "densityKgPerM3",
  "heatCapacityJPerKgK",
  "conductivityWPerMK",
  "youngGPa",
  "ruptureMPa",
  "quartzFraction",
  "cristobaliteFraction",
  "matrixExpansionPerK"
];

// src/core/ware/userBody.ts
var YOURS = "yours";
var SHARE = { least: 0, most: 1, unit: "as a share of volume" };
var LIMITS = {
  densityKgPerM3: { least: 500, most: 4e3, unit: "kg/m\xB3" },
  heatCapacityJPerKgK: { least: 500, most: 2e3, unit: "J/kgK" },
  conductivityWPerMK: { least: 0.1, most: 20, unit: "W/mK" },
  youngGPa: { least: 0.5, most: 400, unit: "GPa" },
  ruptureMPa: { least: 0.5, most: 500, unit: "MPa" },
  quartzFraction: SHARE,
  cristobaliteFraction: SHARE,
  matrixExpansionPerK: { least: 1e-7, most: 2e-5, unit: "per kelvin: 4.5e-6" }
};
function userBody(given, placeOf) {
  const named = bodyNamed(given.base ?? "unknown", placeOf(["base"]));
  const base = named.ok ? named.value : UNKNOWN_BODY;
  const own = BODY_PROPERTIES.filter((name) => given[name] !== void 0);
  const replaced = Object.fromEntries(
    own.map((name) => [name, replacement(name, given[name], base[name])])
  );
  const body = {
    ...base,
    ...replaced,
    name: given.name ?? (own.length > 0 ? `${base.name}, altered` : base.name)
  };
  const problems = [
    ...named.ok ? [] : named.problems,
    ...own.flatMap((name) => {
      const range = rangeProblems(name, given[name], placeOf);
      return range.length > 0 ? range : orderProblems(body[name], placeOf([name]));
    }),
    ...named.ok ? silicaProblems(body, placeOf([])) : []
  ];
  return problems.length > 0 ? failed(...problems) : ok(body);
}
function replacement(name, own, base) {
  const { value, low, high, source } = typeof own === "number" ? { value: own } : own;
  const stretch = base.value > 0 ? value / base.value : 0;
  const { least, most } = LIMITS[name];
  return {
    value,
    low: low ?? (stretch > 0 ? Math.max(least, fourDigits(base.low * stretch)) : value),
    high: high ?? (stretch > 0 ? Math.min(most, fourDigits(base.high * stretch)) : value),
    source: source ?? YOURS
  };
}
function fourDigits(value) {
  return Number(value.toPrecision(4));
}
function rangeProblems(name, own, placeOf) {
  const { least, most, unit } = LIMITS[name];
  return ["value", "low", "high"].flatMap((part) => {
    const number = typeof own === "number" ? part === "value" ? own : void 0 : own[part];
    if (number === void 0 || number >= least && number <= most) return [];
    return [
      {
        code: "ware/property-range",
        what: `${part === "value" ? "" : `${part} of `}${name} is ${shown(number)}`,
        where: placeOf(typeof own === "number" ? [name] : [name, part]),
        expected: `a number from ${least} to ${most} ${unit}`,
        fix: "give it in this unit, or leave it out to take that of the base body"
      }
    ];
  });
}
function orderProblems({ value, low, high }, where) {
  if (low <= value && value <= high) return [];
  return [
    {
      code: "ware/property-order",
      what: `low ${shown(low)}, value ${shown(value)}, high ${shown(high)}`,
      where,
      expected: "a value that lies between its low and its high",
      fix: "put the three in order"
    }
  ];
}
function silicaProblems(body, where) {
  const [quartz, cristobalite] = [body.quartzFraction.value, body.cristobaliteFraction.value];
  if (Math.max(quartz, cristobalite) > 1 || !(quartz + cristobalite > 1)) return [];
  const percent = (share) => `${Math.round(share * 100)} %`;
  return [
    {
      code: "ware/silica-over-100",
      what: `quartz ${percent(quartz)} and cristobalite ${percent(cristobalite)} make ${percent(quartz + cristobalite)}`,
      where,
      expected: "100 % of the body's volume at most, as shares of 1",
      fix: "lower quartzFraction or cristobaliteFraction"
    }
  ];
}

export {
  BODY_PROPERTIES,
  YOURS,
  userBody
};
