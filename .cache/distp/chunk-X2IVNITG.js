import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  parseLength
} from "./chunk-P7LYRYX6.js";
import {
  failed
} from "./chunk-2ZNPDJKQ.js";

// src/core/ware/wareLength.ts
var CLAY = { code: "ware/thickness", leastMm: 1, mostMm: 100 };
var LIMITS = {
  wall: { thing: "the wall", ...CLAY },
  base: { thing: "the base", ...CLAY },
  thickest: { thing: "the ware", ...CLAY },
  shelf: { thing: "the shelf", ...CLAY },
  height: { thing: "the piece", code: "ware/height", leastMm: 1, mostMm: 3e3 },
  footGap: { thing: "the air under the foot", code: "ware/foot-gap", leastMm: 0.1, mostMm: 100 },
  widest: { thing: "the widest piece", code: "ware/width", leastMm: 1, mostMm: 3e3 }
};
var ZERO = /^0+(?:\.0+)?(?:$|[^\d./])/;
function wareLength(value, of) {
  const limits = LIMITS[of.name];
  const isZero = value === 0 || typeof value === "string" && ZERO.test(value.trim());
  const length = isZero ? { ok: true, value: 0 } : parseLength(value, { where: of.where });
  if (!length.ok) return length;
  const mm = length.value;
  const { thing, code, leastMm, mostMm } = limits;
  if (mm >= leastMm && mm <= mostMm) return length;
  const flat = of.name === "footGap" && mm < leastMm ? " (a foot that stands flat, rough on rough)" : "";
  return failed({
    code,
    what: `${thing} measures ${Number(mm.toPrecision(4))} mm`,
    where: of.where,
    expected: `${leastMm} to ${mostMm} mm`,
    fix: `check the number, a bare one is millimetres; the nearest possible is ${mm < leastMm ? leastMm : mostMm} mm${flat}`
  });
}

export {
  wareLength
};
