import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  parseDuration
} from "./chunk-OQY4R7CT.js";
import {
  delimiterNamed
} from "./chunk-PMYOLCKT.js";
import {
  parseTemperature
} from "./chunk-PYB7INDF.js";
import {
  writtenQuantity
} from "./chunk-BKGWRYOW.js";
import {
  celsiusDeltaFromFahrenheitDelta
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/cli/options.ts
function logOptionsFrom(given) {
  const orders = dateOrders(given);
  if (orders.length > 1)
    return failed({
      code: "command/contradiction",
      where: "command line",
      what: `both ${orders.join(" and ")} are given`,
      expected: "one of them, or none",
      fix: "drop one"
    });
  const interval = given.interval ? parseDuration(given.interval, { bareUnit: "s", where: "--interval" }) : ok(void 0);
  if (!interval.ok) return interval;
  const thermocouple = thermocoupleFrom(given);
  if (!thermocouple.ok) return thermocouple;
  const table = tableFrom(given);
  if (!table.ok) return table;
  const dayFirst = given.dayFirst ? true : given.monthFirst ? false : void 0;
  return ok({
    ...given.column && { columns: given.column },
    ...given.timeColumn && { timeColumn: given.timeColumn },
    ...given.logUnit && { unit: given.logUnit },
    ...given.timeKind && { timeKind: given.timeKind },
    ...given.timeUnit && { timeUnit: given.timeUnit },
    // Goes before a record that says another order.
    ...dayFirst !== void 0 && { dayFirst, yearFirst: false },
    ...given.yearFirst && { yearFirst: true },
    ...given.delimiter && { delimiter: delimiterNamed(given.delimiter) },
    ...given.decimal && { decimal: given.decimal },
    ...given.encoding && { encoding: given.encoding },
    ...interval.value !== void 0 && { intervalSeconds: interval.value },
    ...given.layout && { layout: given.layout },
    ...table.value,
    ...thermocouple.value
  });
}
function dateOrders(given) {
  return [
    ...given.dayFirst ? ["--day-first"] : [],
    ...given.monthFirst ? ["--month-first"] : [],
    ...given.yearFirst ? ["--year-first"] : []
  ];
}
function tableFrom({ header, role }) {
  const roles = role === void 0 ? ok(void 0) : rolesFrom(role);
  if (!roles.ok) return roles;
  const line = header === void 0 || header === "none" ? header : Number(header);
  if (typeof line === "number" && !(Number.isInteger(line) && line > 0))
    return failed({
      code: "command/header",
      where: "--header",
      what: `"${header}" is no line of a file`,
      expected: "the line that holds the names of the columns, counted from 1, or none",
      fix: "--header 3, or --header none"
    });
  return ok({
    ...line !== void 0 && { header: line },
    ...roles.value && { roles: roles.value }
  });
}
function rolesFrom(given) {
  const pairs = given.map((text) => {
    const at = text.lastIndexOf("=");
    return { text, name: text.slice(0, at).trim(), role: text.slice(at + 1).trim() };
  });
  const odd = pairs.filter(({ name, role }) => name === "" || !isRole(role));
  if (odd.length > 0)
    return failed(
      ...odd.map(({ text }) => ({
        code: "command/role",
        where: "--role",
        what: `"${text}" does not say what a column is`,
        expected: `a column and its role, ${ROLES.join(", ")}`,
        fix: '--role "SP 1=set-point"'
      }))
    );
  return ok(Object.fromEntries(pairs.map(({ name, role }) => [name, role])));
}
var ROLES = [
  "temperature",
  "set-point",
  "output",
  "cold-junction",
  "other"
];
function isRole(text) {
  return ROLES.some((role) => role === text);
}
function thermocoupleFrom({
  thermocouple,
  coldJunction
}) {
  const type = thermocouple === void 0 ? {} : { thermocouple };
  if (coldJunction === void 0) return ok(type);
  const tempC = parseTemperature(coldJunction, { unit: "C", where: "--cold-junction" });
  return tempC.ok ? ok({ ...type, coldJunctionC: tempC.value }) : tempC;
}
var OFFSET = /^([+−-]?\d+(?:\.\d+)?)\s*°?\s*([CF])?$/i;
var LARGEST_OFFSET_K = 100;
function offsetFrom(text) {
  if (text === void 0) return ok(null);
  const match = OFFSET.exec(text.trim());
  const value = match ? Number(match[1]?.replace("\u2212", "-")) : Number.NaN;
  const offsetK = match?.[2]?.toUpperCase() === "F" ? celsiusDeltaFromFahrenheitDelta(value) : value;
  if (Math.abs(offsetK) <= LARGEST_OFFSET_K) return ok(offsetK);
  return failed({
    code: "command/offset",
    where: "--offset",
    what: `"${text}" is not an offset of a thermocouple`,
    expected: `what to add to its readings, with its unit: 8C, -12F; at most ${LARGEST_OFFSET_K} \xB0C (180 \xB0F) either way`,
    fix: Number.isNaN(value) ? "--offset 8C" : "--offset 8C, the difference and not the temperature; a thermocouple further out than that wants replacing"
  });
}
var WATTS = { kw: 1e3, w: 1 };
function wattsFrom(text) {
  if (text === void 0) return ok(null);
  const written = writtenQuantity(text);
  const watts = written ? written.value * (WATTS[written.unit] ?? Number.NaN) : Number.NaN;
  if (watts >= 100 && watts <= 1e6) return ok(watts);
  return failed({
    code: "command/power",
    where: "--power",
    what: `"${text}" is not the wattage of a kiln`,
    expected: "a power with its unit, from the plate of the kiln: 10.5kW, 4400W",
    fix: "--power 10.5kW"
  });
}
function tariffFrom(text) {
  if (text === void 0) return ok(null);
  const written = writtenQuantity(text);
  if (written && written.unit === "" && written.value >= 0) return ok(written.value);
  return failed({
    code: "command/tariff",
    where: "--tariff",
    what: `"${text}" is not the price of a kilowatt-hour`,
    expected: "a plain number, in whatever money: 0.30",
    fix: "--tariff 0.30"
  });
}

export {
  logOptionsFrom,
  offsetFrom,
  wattsFrom,
  tariffFrom
};
