import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  bareNumber,
  notThatQuantity,
  writtenQuantity
} from "./chunk-BKGWRYOW.js";

// src/core/units/parseDuration.ts
var FORM = {
  code: "units/not-a-duration",
  kind: "a span of time",
  expected: '"45 min", "1 h 30 min", "1:30" (hours and minutes), or a bare number of minutes'
};
var CLOCK = /^(\d{1,4}):([0-5]\d)(?::([0-5]\d))?$/;
var PARTS = /^(?:(\d+(?:\.\d+)?) ?(?:h|hr|hrs|hour|hours))? ?(?:(\d+(?:\.\d+)?)(?![\d.]) ?(m|min|mins|minute|minutes)?)? ?(?:(\d+(?:\.\d+)?) ?(?:s|sec|secs|second|seconds))?$/;
var SECONDS = { s: 1, min: 60, h: 3600 };
function parseDuration(value, context) {
  const bareSeconds = SECONDS[context.bareUnit ?? "min"];
  const seconds = typeof value === "number" ? value * bareSeconds : secondsWritten(value, bareSeconds);
  if (seconds === null || seconds < 0) return notThatQuantity(value, FORM, context.where);
  return bareNumber(seconds, FORM, context.where);
}
function secondsWritten(text, bareSeconds) {
  const flat = text.trim().toLowerCase().replaceAll(/\s+/g, " ");
  const clock = CLOCK.exec(flat);
  if (clock) return Number(clock[1]) * 3600 + Number(clock[2]) * 60 + Number(clock[3] ?? 0);
  const bare = writtenQuantity(flat);
  if (bare?.unit === "") return bare.value * bareSeconds;
  const parts = flat === "" ? null : PARTS.exec(flat);
  if (!parts) return null;
  const [, hours, minutes, minuteUnit, seconds] = parts;
  const minutesAreNamed = minuteUnit !== void 0 || hours !== void 0 && seconds === void 0;
  if (minutes !== void 0 && !minutesAreNamed) return null;
  return Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + Number(seconds ?? 0);
}

export {
  parseDuration
};
