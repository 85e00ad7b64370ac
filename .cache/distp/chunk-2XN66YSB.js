import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  parseDuration
} from "./chunk-OQY4R7CT.js";
import {
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import {
  parseTemperature
} from "./chunk-PYB7INDF.js";
import {
  bareNumber,
  notThatQuantity,
  shown,
  writtenQuantity
} from "./chunk-BKGWRYOW.js";
import {
  celsiusDeltaFromFahrenheitDelta
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/units/parseRate.ts
var FORM = {
  code: "units/not-a-rate",
  kind: "a rate",
  expected: '"60 C/h", "108 F/h", "2 C/min", or a bare number in the declared unit per hour'
};
var RATE_UNIT = /^(?:(?:°|deg)? ?(c|f|celsius|fahrenheit)?)? ?(?:(?:\/|per) ?(h|hr|hour|m|min|minute))?$/;
function parseRate(value, context) {
  if (typeof value === "number") {
    const bare = bareNumber(value, FORM, context.where);
    return bare.ok ? ok(inCelsius(bare.value, context.unit)) : bare;
  }
  const written = writtenQuantity(value, "thousands");
  const parts = written && RATE_UNIT.exec(written.unit);
  if (!(written && parts)) return notThatQuantity(value, FORM, context.where);
  const [, scale, time] = parts;
  if (written.unit !== "" && time === void 0) return notThatQuantity(value, FORM, context.where);
  const perHour = time?.startsWith("m") ? written.value * 60 : written.value;
  const unit = scale === void 0 ? context.unit : scale.startsWith("c") ? "C" : "F";
  return ok(inCelsius(perHour, unit));
}
function inCelsius(rate, unit) {
  return unit === "C" ? rate : celsiusDeltaFromFahrenheitDelta(rate);
}

// src/core/schedule/freeRamp.ts
var SLOWEST_FREE_C_PER_HOUR = 1;
var STEP_SECONDS = 300;
function isFreeRate(written) {
  return /^\s*(free|full)\s*$/i.test(written);
}
function freeSpeed(kiln, tempC, rising) {
  const speed = rising ? kiln.fullHeatingCPerHour(tempC) : kiln.naturalCoolingCPerHour(tempC);
  if (!Number.isFinite(speed)) throw new RangeError(`freeSpeed: ${speed} \xB0C/h at ${tempC} \xB0C`);
  return Math.max(SLOWEST_FREE_C_PER_HOUR, speed);
}
function freeRamp(ramp) {
  const { fromC, toC, kiln, mostCPerHour = Number.POSITIVE_INFINITY } = ramp;
  const rising = toC > fromC;
  const sign = rising ? 1 : -1;
  const slowness = (tempC2) => 3600 / Math.min(mostCPerHour, freeSpeed(kiln, tempC2, rising));
  const points = [];
  let tempC = fromC;
  let seconds = 0;
  while (tempC !== toC) {
    const reach = STEP_SECONDS / slowness(tempC) * sign;
    const left = toC - tempC;
    const step = Math.abs(left) <= Math.abs(reach) ? left : Math.abs(left) < 2 * Math.abs(reach) ? left / 2 : reach;
    const next = step === left ? toC : tempC + step;
    const mean = (slowness(tempC) + 4 * slowness((tempC + next) / 2) + slowness(next)) / 6;
    seconds += Math.abs(next - tempC) * mean;
    tempC = next;
    points.push({ seconds, tempC });
  }
  return points;
}

// src/core/schedule/parseSegments.ts
var COLDEST_C = -20;
var HOTTEST_C = 1400;
var FASTEST_C_PER_HOUR = 3e3;
var LONGEST_HOLD_SECONDS = 7 * 24 * 3600;
var NOWHERE_K = 0.05;
function parseSegments(segments, context) {
  const problems = [];
  const parsed = [];
  let fromC = context.startC;
  segments.forEach((segment, index) => {
    const where = (key) => context.placeOf(["segments", index, key]);
    const to = targetOf(segment.to, { unit: context.unit, where: where("to") });
    const ramp = { fromC, toC: to.ok ? to.value : null };
    const rate = rateOf(segment.rate, { ...ramp, unit: context.unit, where: where("rate") });
    const hold = holdOf(segment.hold, where("hold"));
    const nowhere = goesNowhere(ramp, index, { unit: context.unit, where: where("to") });
    for (const part of [to, rate, hold, nowhere]) if (!part.ok) problems.push(...part.problems);
    if (to.ok && rate.ok && hold.ok)
      parsed.push({
        toC: to.value,
        rateCPerHour: rate.value,
        holdSeconds: hold.value,
        why: segment.why ?? null
      });
    fromC = ramp.toC;
  });
  return problems.length > 0 ? failed(...problems) : ok(parsed);
}
function targetOf(value, place) {
  const temperature = parseTemperature(value, place);
  if (!temperature.ok) return temperature;
  const tempC = temperature.value;
  if (tempC >= COLDEST_C && tempC <= HOTTEST_C) return temperature;
  const hot = tempC > HOTTEST_C;
  const asFahrenheit = hot && place.unit === "C" && (tempC - 32) / 1.8 <= HOTTEST_C;
  return failed({
    code: hot ? "schedule/too-hot" : "schedule/too-cold",
    what: `the temperature is ${printTemperature(tempC, place.unit)}`,
    where: place.where,
    expected: `between ${printTemperature(COLDEST_C, place.unit)} and ${printTemperature(HOTTEST_C, place.unit)}`,
    fix: asFahrenheit ? `write "${tempC} F" or unit: F, if it is in Fahrenheit` : "check the number and its unit"
  });
}
function goesNowhere(ramp, index, place) {
  if (ramp.fromC === null || ramp.toC === null || Math.abs(ramp.toC - ramp.fromC) >= NOWHERE_K)
    return ok(null);
  return failed({
    code: "schedule/goes-nowhere",
    what: `the segment stays at ${printTemperature(ramp.toC, place.unit)}, where it begins`,
    where: place.where,
    expected: "a target other than the temperature before it",
    fix: index === 0 ? "give the first segment a target away from the start, and hold there" : `remove it and add its hold to segments[${index - 1}]`
  });
}
function rateOf(value, ramp) {
  if (typeof value === "string" && isFreeRate(value)) return ok("free");
  const parsed = parseRate(value, ramp);
  if (!parsed.ok) return failed(...parsed.problems.map(mentionFree));
  const rate = parsed.value;
  const { where, unit } = ramp;
  if (rate === 0)
    return failed({
      code: "schedule/zero-rate",
      what: `the rate is ${shown(value)}`,
      where,
      expected: `a rate above 0 \xB0${unit}/h; the direction follows from the target`,
      fix: "use hold on the segment before, to stay at a temperature"
    });
  if (Math.abs(rate) > FASTEST_C_PER_HOUR)
    return failed({
      code: "schedule/rate-too-fast",
      what: `the rate is ${shown(value)}`,
      where,
      expected: `at most ${printRate(FASTEST_C_PER_HOUR, unit)}`,
      fix: "write rate: free for as fast as it goes"
    });
  if (ramp.fromC === null || ramp.toC === null) return ok(rate);
  const rising = ramp.toC > ramp.fromC;
  if (rate < 0 && rising)
    return failed({
      code: "schedule/direction",
      what: `the rate ${shown(value)} cools, but the target ${printTemperature(ramp.toC, unit)} is above ${printTemperature(ramp.fromC, unit)}`,
      where,
      expected: "a rate without a sign; the direction follows from the target",
      fix: "remove the minus sign, or lower the target"
    });
  return ok(rising ? rate : -Math.abs(rate));
}
function mentionFree(problem) {
  return { ...problem, expected: `${problem.expected}, or free` };
}
function holdOf(value, where) {
  if (value === void 0) return ok(0);
  const hold = parseDuration(value, { where });
  if (!hold.ok || hold.value <= LONGEST_HOLD_SECONDS) return hold;
  return failed({
    code: "schedule/hold-too-long",
    what: `the hold is ${shown(value)}${typeof value === "number" ? " minutes" : ""}`,
    where,
    expected: "at most 7 days (10080 min)",
    fix: "check the number; a bare number is minutes"
  });
}

export {
  SLOWEST_FREE_C_PER_HOUR,
  freeSpeed,
  freeRamp,
  parseRate,
  HOTTEST_C,
  FASTEST_C_PER_HOUR,
  parseSegments,
  targetOf
};
