import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/units/parseQuantity.ts
var WRITTEN = /^([+\-−]?)(\d+(?:[.,]\d+)*|\.\d+)\s*(.*)$/s;
var GROUPED = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/;
var DECIMAL_COMMA = /^(?:\d+,\d{1,2}|0,\d+|\d+,\d{4,})$/;
function writtenQuantity(text, threes = "either") {
  const parts = WRITTEN.exec(text.trim());
  if (!parts) return null;
  const size = sizeOf(parts[2], threes);
  if (!Number.isFinite(size)) return null;
  const value = parts[1] === "-" || parts[1] === "\u2212" ? -size : size;
  const unit = parts[3].trim().toLowerCase().replaceAll(/\s+/g, " ");
  return { value, unit };
}
function sizeOf(digits, threes) {
  if (GROUPED.test(digits))
    return threes === "thousands" ? Number(digits.replaceAll(",", "")) : Number.NaN;
  return Number(DECIMAL_COMMA.test(digits) ? digits.replace(",", ".") : digits);
}
function shown(value) {
  if (typeof value === "number") return String(value).replace("-", "\u2212");
  const flat = value.replaceAll(/\s+/g, " ");
  return `"${flat.length > 40 ? `${flat.slice(0, 39)}\u2026` : flat}"`;
}
function notThatQuantity(value, form, where) {
  const either = typeof value === "string" ? /^[+\-−]?(\d+),(\d{3})(?!\d)/.exec(value.trim()) : null;
  return failed({
    code: form.code,
    what: `${shown(value)} is not ${form.kind}`,
    where,
    expected: form.expected,
    fix: either ? `write ${either[1]}${either[2]} or ${either[1]}.${either[2]}: a comma may mean either` : `write it like ${form.expected.split(", ")[0]}`
  });
}
function bareNumber(value, form, where) {
  return Number.isFinite(value) ? ok(value) : notThatQuantity(value, form, where);
}

export {
  writtenQuantity,
  shown,
  notThatQuantity,
  bareNumber
};
