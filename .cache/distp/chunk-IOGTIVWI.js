import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius
} from "./chunk-R2H4YYDI.js";

// src/core/units/print.ts
function printTemperature(tempC, unit) {
  const value = unit === "C" ? tempC : fahrenheitFromCelsius(tempC);
  return `${whole(value)} \xB0${unit}`;
}
function printDifference(deltaC, unit) {
  const value = unit === "C" ? deltaC : fahrenheitDeltaFromCelsiusDelta(deltaC);
  return `${whole(value)} \xB0${unit}`;
}
function printRate(rateCPerHour, unit) {
  const rate = Math.abs(rateCPerHour);
  return `${whole(unit === "C" ? rate : fahrenheitDeltaFromCelsiusDelta(rate))} \xB0${unit}/h`;
}
function notNought(printed) {
  return printed.replace(/^[−-]?0 (?=\D)/, "under 1 ");
}
function printMm(mm) {
  return `${Number(mm.toFixed(mm < 2 ? 2 : mm < 100 ? 1 : 0))} mm`;
}
function printDuration(seconds) {
  const sign = seconds < 0 ? "\u2212" : "";
  const span = Math.abs(seconds);
  if (span < 59.5) return `${sign}${Math.round(span)} s`;
  const minutes = Math.round(span / 60);
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${sign}${minutes} min`;
  return rest === 0 ? `${sign}${hours} h` : `${sign}${hours} h ${String(rest).padStart(2, "0")} min`;
}
function printElapsed(seconds) {
  const minutes = Math.round(Math.abs(seconds) / 60);
  const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  return seconds < 0 && minutes > 0 ? `\u2212${clock}` : clock;
}
function whole(value) {
  const rounded = Math.round(value);
  return rounded < 0 ? `\u2212${-rounded}` : String(Math.abs(rounded));
}

export {
  printTemperature,
  printDifference,
  printRate,
  notNought,
  printMm,
  printDuration,
  printElapsed
};
