import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  bareNumber,
  notThatQuantity,
  shown,
  writtenQuantity
} from "./chunk-BKGWRYOW.js";
import {
  failed
} from "./chunk-2ZNPDJKQ.js";

// src/core/units/parseLength.ts
var FORM = {
  code: "units/not-a-length",
  kind: "a length",
  expected: '"6 mm", "2.5 cm", "1/4 in", or a bare number of millimetres'
};
var MM = {
  "": 1,
  mm: 1,
  cm: 10,
  m: 1e3,
  in: 25.4,
  inch: 25.4,
  inches: 25.4,
  '"': 25.4,
  "\u2033": 25.4
};
var FRACTION = /^(?:(\d+)[ -])?(\d+)\/(\d+)\s*(.*)$/s;
function parseLength(value, context) {
  const lengthMm = typeof value === "number" ? value : mmWritten(value);
  if (lengthMm !== null && lengthMm <= 0) return notAboveZero(value, context.where);
  if (lengthMm === null) return notThatQuantity(value, FORM, context.where);
  return bareNumber(lengthMm, FORM, context.where);
}
function notAboveZero(value, where) {
  return failed({
    code: FORM.code,
    what: `${shown(value)} is no more than 0`,
    where,
    expected: "a length above 0",
    fix: "measure it again, or take it out when it is not known; nothing is put in its place"
  });
}
function mmWritten(text) {
  const fraction = FRACTION.exec(text.trim());
  if (fraction) {
    const unit2 = MM[fraction[4].trim().toLowerCase()];
    const inches = Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
    return unit2 === void 0 || !Number.isFinite(inches) ? null : inches * unit2;
  }
  const written = writtenQuantity(text);
  const unit = written ? MM[written.unit] : void 0;
  return written && unit !== void 0 ? written.value * unit : null;
}

export {
  parseLength
};
