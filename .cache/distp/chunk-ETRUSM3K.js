import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  AT_TOP_END_SECONDS,
  COOLING_BANDS,
  REFERENCE_KILN,
  aimMarginK,
  computedLimits,
  crossingsOf,
  expandSchedule,
  limitedCrossings,
  limitingRate,
  limitsFor,
  passageOf,
  peakSegment,
  pieceOf,
  predictFiring,
  topEndSeconds,
  topHoldIndex,
  withLimit,
  withStrain
} from "./chunk-GKWIKIYP.js";
import {
  FALLS_APART,
  NOISIER,
  NOISY_K,
  SPEED_WINDOW_SECONDS,
  STRONGER,
  WEAKER,
  climbCPerHour,
  fitUpperCooling,
  kilnFiringOf,
  learnKiln,
  offsetTrend,
  outputMean,
  scatterK,
  sharedPulls,
  speedsBetween,
  tooLittle,
  witnessOffset
} from "./chunk-QVXNA4U3.js";
import {
  lossKPerSecond
} from "./chunk-I7PXXNWR.js";
import {
  placedSounds,
  placedUnloading
} from "./chunk-I6LOXCIU.js";
import {
  compensated,
  dayNumber,
  emfMillivolts,
  weekday
} from "./chunk-CQRY3XKN.js";
import {
  heatworkOf,
  kilnHeatworkOf,
  totalSigmaK,
  usualOffset
} from "./chunk-4ME6ZCIX.js";
import {
  CONE_MODELS
} from "./chunk-XM3JYZUM.js";
import {
  SAFE_RATIO,
  STRAIN_DRAWS,
  heatingOf,
  isJudged,
  openingStrains,
  pieceStrain,
  strainSeverity
} from "./chunk-BX5CJHE4.js";
import {
  shifted,
  sliced
} from "./chunk-S4DLFBTW.js";
import {
  crossingTimes
} from "./chunk-BNESJYXC.js";
import {
  makeCurve
} from "./chunk-M4BL2XKO.js";
import {
  CRISTOBALITE_BAND,
  QUARTZ_BAND,
  RUNAWAY,
  crackFacts,
  diagnosisOf,
  hasCristobalite,
  hottestZone,
  lastAtOrBefore,
  medianInPlace,
  ordered,
  peakOf,
  sizedAsMug,
  slopeMeter,
  tellingApart,
  temperatureAt,
  wareOf,
  wareStrain
} from "./chunk-VFKPH3SJ.js";
import {
  cautionsFor
} from "./chunk-4LHYQSW7.js";
import {
  quoted,
  statementText
} from "./chunk-GU4RVAU5.js";
import {
  FASTEST_C_PER_HOUR,
  HOTTEST_C,
  freeRamp,
  freeSpeed,
  parseRate
} from "./chunk-2XN66YSB.js";
import {
  printDifference,
  printDuration,
  printMm,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import {
  parseTimeOfDay
} from "./chunk-OBEK7CUI.js";
import {
  parseTemperature
} from "./chunk-PYB7INDF.js";
import {
  basedOn,
  bodyNamed
} from "./chunk-O435DZD7.js";
import {
  CONE_TABLES,
  celsiusDeltaFromFahrenheitDelta,
  celsiusFromFahrenheit,
  coneIndex,
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  wholeCones
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// node_modules/date-fns/constants.js
var daysInYear = 365.2425;
var maxTime = Math.pow(10, 8) * 24 * 60 * 60 * 1e3;
var minTime = -maxTime;
var millisecondsInMinute = 6e4;
var millisecondsInHour = 36e5;
var secondsInHour = 3600;
var secondsInDay = secondsInHour * 24;
var secondsInWeek = secondsInDay * 7;
var secondsInYear = secondsInDay * daysInYear;
var secondsInMonth = secondsInYear / 12;
var secondsInQuarter = secondsInMonth * 3;
var constructFromSymbol = /* @__PURE__ */ Symbol.for("constructDateFrom");

// node_modules/date-fns/constructFrom.js
function constructFrom(date, value) {
  if (typeof date === "function") return date(value);
  if (date && typeof date === "object" && constructFromSymbol in date)
    return date[constructFromSymbol](value);
  if (date instanceof Date) return new date.constructor(value);
  return new Date(value);
}

// node_modules/date-fns/toDate.js
function toDate(argument, context) {
  return constructFrom(context || argument, argument);
}

// node_modules/date-fns/addMilliseconds.js
function addMilliseconds(date, amount, options) {
  return constructFrom(options?.in || date, +toDate(date) + amount);
}

// node_modules/date-fns/isDate.js
function isDate(value) {
  return value instanceof Date || typeof value === "object" && Object.prototype.toString.call(value) === "[object Date]";
}

// node_modules/date-fns/isValid.js
function isValid(date) {
  return !(!isDate(date) && typeof date !== "number" || isNaN(+toDate(date)));
}

// node_modules/date-fns/parseISO.js
function parseISO(argument, options) {
  const invalidDate = () => constructFrom(options?.in, NaN);
  const additionalDigits = options?.additionalDigits ?? 2;
  const dateStrings = splitDateString(argument);
  let date;
  if (dateStrings.date) {
    const parseYearResult = parseYear(dateStrings.date, additionalDigits);
    date = parseDate(parseYearResult.restDateString, parseYearResult.year);
  }
  if (!date || isNaN(+date)) return invalidDate();
  const timestamp = +date;
  let time2 = 0;
  let offset;
  if (dateStrings.time) {
    time2 = parseTime(dateStrings.time);
    if (isNaN(time2)) return invalidDate();
  }
  if (dateStrings.timezone) {
    offset = parseTimezone(dateStrings.timezone);
    if (isNaN(offset)) return invalidDate();
  } else {
    const tmpDate = new Date(timestamp + time2);
    const result = toDate(0, options?.in);
    result.setFullYear(
      tmpDate.getUTCFullYear(),
      tmpDate.getUTCMonth(),
      tmpDate.getUTCDate()
    );
    result.setHours(
      tmpDate.getUTCHours(),
      tmpDate.getUTCMinutes(),
      tmpDate.getUTCSeconds(),
      tmpDate.getUTCMilliseconds()
    );
    return result;
  }
  return toDate(timestamp + time2 + offset, options?.in);
}
var patterns = {
  dateTimeDelimiter: /[T ]/,
  timeZoneDelimiter: /[Z ]/i,
  timezone: /([Z+-].*)$/
};
var dateRegex = /^-?(?:(\d{3})|(\d{2})(?:-?(\d{2}))?|W(\d{2})(?:-?(\d{1}))?|)$/;
var timeRegex = /^(\d{2}(?:[.,]\d*)?)(?::?(\d{2}(?:[.,]\d*)?))?(?::?(\d{2}(?:[.,]\d*)?))?$/;
var timezoneRegex = /^([+-])(\d{2})(?::?(\d{2}))?$/;
function splitDateString(dateString) {
  const dateStrings = {};
  const array = dateString.split(patterns.dateTimeDelimiter);
  let timeString;
  if (array.length > 2) {
    return dateStrings;
  }
  if (/:/.test(array[0])) {
    timeString = array[0];
  } else {
    dateStrings.date = array[0];
    timeString = array[1];
    if (patterns.timeZoneDelimiter.test(dateStrings.date)) {
      dateStrings.date = dateString.split(patterns.timeZoneDelimiter)[0];
      timeString = dateString.substr(
        dateStrings.date.length,
        dateString.length
      );
    }
  }
  if (timeString) {
    const token = patterns.timezone.exec(timeString);
    if (token) {
      dateStrings.time = timeString.replace(token[1], "");
      dateStrings.timezone = token[1];
    } else {
      dateStrings.time = timeString;
    }
  }
  return dateStrings;
}
function parseYear(dateString, additionalDigits) {
  const regex = new RegExp(
    "^(?:(\\d{4}|[+-]\\d{" + (4 + additionalDigits) + "})|(\\d{2}|[+-]\\d{" + (2 + additionalDigits) + "})$)"
  );
  const captures = dateString.match(regex);
  if (!captures) return { year: NaN, restDateString: "" };
  const year = captures[1] ? parseInt(captures[1]) : null;
  const century = captures[2] ? parseInt(captures[2]) : null;
  return {
    year: century === null ? year : century * 100,
    restDateString: dateString.slice((captures[1] || captures[2]).length)
  };
}
function parseDate(dateString, year) {
  if (year === null) return /* @__PURE__ */ new Date(NaN);
  const captures = dateString.match(dateRegex);
  if (!captures) return /* @__PURE__ */ new Date(NaN);
  const isWeekDate = !!captures[4];
  const dayOfYear = parseDateUnit(captures[1]);
  const month = parseDateUnit(captures[2]) - 1;
  const day = parseDateUnit(captures[3]);
  const week = parseDateUnit(captures[4]);
  const dayOfWeek = parseDateUnit(captures[5]) - 1;
  if (isWeekDate) {
    if (!validateWeekDate(year, week, dayOfWeek)) {
      return /* @__PURE__ */ new Date(NaN);
    }
    return dayOfISOWeekYear(year, week, dayOfWeek);
  } else {
    const date = /* @__PURE__ */ new Date(0);
    if (!validateDate(year, month, day) || !validateDayOfYearDate(year, dayOfYear)) {
      return /* @__PURE__ */ new Date(NaN);
    }
    date.setUTCFullYear(year, month, Math.max(dayOfYear, day));
    return date;
  }
}
function parseDateUnit(value) {
  return value ? parseInt(value) : 1;
}
function parseTime(timeString) {
  const captures = timeString.match(timeRegex);
  if (!captures) return NaN;
  const hours2 = parseTimeUnit(captures[1]);
  const minutes = parseTimeUnit(captures[2]);
  const seconds = parseTimeUnit(captures[3]);
  if (!validateTime(hours2, minutes, seconds)) {
    return NaN;
  }
  return hours2 * millisecondsInHour + minutes * millisecondsInMinute + seconds * 1e3;
}
function parseTimeUnit(value) {
  return value && parseFloat(value.replace(",", ".")) || 0;
}
function parseTimezone(timezoneString) {
  if (timezoneString === "Z") return 0;
  const captures = timezoneString.match(timezoneRegex);
  if (!captures) return 0;
  const sign = captures[1] === "+" ? -1 : 1;
  const hours2 = parseInt(captures[2]);
  const minutes = captures[3] && parseInt(captures[3]) || 0;
  if (!validateTimezone(hours2, minutes)) {
    return NaN;
  }
  return sign * (hours2 * millisecondsInHour + minutes * millisecondsInMinute);
}
function dayOfISOWeekYear(isoWeekYear, week, day) {
  const date = /* @__PURE__ */ new Date(0);
  date.setUTCFullYear(isoWeekYear, 0, 4);
  const fourthOfJanuaryDay = date.getUTCDay() || 7;
  const diff = (week - 1) * 7 + day + 1 - fourthOfJanuaryDay;
  date.setUTCDate(date.getUTCDate() + diff);
  return date;
}
var daysInMonths = [31, null, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
function isLeapYearIndex(year) {
  return year % 400 === 0 || year % 4 === 0 && year % 100 !== 0;
}
function validateDate(year, month, date) {
  return month >= 0 && month <= 11 && date >= 1 && date <= (daysInMonths[month] || (isLeapYearIndex(year) ? 29 : 28));
}
function validateDayOfYearDate(year, dayOfYear) {
  return dayOfYear >= 1 && dayOfYear <= (isLeapYearIndex(year) ? 366 : 365);
}
function validateWeekDate(_year, week, day) {
  return week >= 1 && week <= 53 && day >= 0 && day <= 6;
}
function validateTime(hours2, minutes, seconds) {
  if (hours2 === 24) {
    return minutes === 0 && seconds === 0;
  }
  return seconds >= 0 && seconds < 60 && minutes >= 0 && minutes < 60 && hours2 >= 0 && hours2 < 25;
}
function validateTimezone(_hours, minutes) {
  return minutes >= 0 && minutes <= 59;
}

// src/core/schedule/clock.ts
var ISO_DAY = /^(\d{4}-\d{2}-\d{2})(?:[T ]+|$)/;
var MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
var NAME = MONTHS.map((month) => `${month}[a-z]*`).join("|");
var MONTH_FIRST = new RegExp(
  `^(${NAME})\\.?\\s+(\\d{1,2})(?:st|nd|rd|th)?(?:,?\\s+(\\d{4}))?,?\\s+`,
  "i"
);
var DAY_FIRST = new RegExp(
  `^(\\d{1,2})(?:st|nd|rd|th)?\\.?\\s+(${NAME})\\.?(?:,?\\s+(\\d{4}))?,?\\s+`,
  "i"
);
var NEAR_DAY = /^(today|tomorrow|tonight)(?:\s+at)?\s+/i;
var DAY_SECONDS = 86400;
function parseStart(text, where, now = null) {
  const said = text.trim();
  const day = dayOf(said, now);
  const problem = {
    code: "schedule/not-a-start",
    what: `"${said.slice(0, 40)}" is not a day and a time`,
    where,
    expected: 'a start like "2026-12-01 18:00"',
    fix: "write year, month and day with hyphens, then hours and minutes"
  };
  if (day !== null && day.rest === "")
    return failed({
      ...problem,
      what: `"${said}" has no time of day`,
      fix: `write "${said} 18:00"`
    });
  const seconds = day === null ? null : parseTimeOfDay(day.rest);
  if (day === null || seconds === null) {
    const isOff = day !== null && /^\d{1,2}:\d{2}(?::\d{2})?$/.test(day.rest) && !/^24/.test(day.rest);
    return failed(isOff ? { ...problem, what: offCalendar(said) } : problem);
  }
  const wall = clockAtDay(day, seconds, now);
  return wall === null ? failed({ ...problem, what: offCalendar(said) }) : ok(wall);
}
function dayOf(said, now) {
  const iso = ISO_DAY.exec(said);
  if (iso) return { dates: [iso[1]], rest: said.slice(iso[0].length) };
  const monthFirst = MONTH_FIRST.exec(said);
  const named = monthFirst ?? DAY_FIRST.exec(said);
  if (named) {
    const [all, one = "", two = "", year] = named;
    const [month, date] = monthFirst ? [one, two] : [two, one];
    const number = MONTHS.indexOf(month.slice(0, 3).toLowerCase()) + 1;
    const ending = `${pad(number)}-${pad(Number(date))}`;
    const first = now === null ? null : Number(now.slice(0, 4));
    const years = year === void 0 ? first === null ? [] : [first, first + 1] : [year];
    if (years.length === 0) return null;
    return { dates: years.map((each) => `${each}-${ending}`), rest: said.slice(all.length) };
  }
  if (now === null) return null;
  const today = now.slice(0, 10);
  const near = NEAR_DAY.exec(said);
  if (near) {
    const isNext = near[1]?.toLowerCase() === "tomorrow";
    return { dates: [isNext ? dayAfter(today) : today], rest: said.slice(near[0].length) };
  }
  return parseTimeOfDay(said) === null ? null : { dates: [today, dayAfter(today)], rest: said };
}
function clockAtDay(day, seconds, now) {
  const walls = day.dates.filter((date) => isValid(parseISO(`${date}T00:00:00Z`))).map((date) => clockAt(`${date}T00:00:00`, seconds));
  const isSaid = day.dates.length === 1 || now === null;
  return (isSaid ? walls[0] : walls.find((wall) => wall >= now)) ?? null;
}
function dayAfter(date) {
  return clockAt(`${date}T00:00:00`, DAY_SECONDS).slice(0, 10);
}
function offCalendar(said) {
  return `"${said}" is not on the calendar or the clock`;
}
function pad(value) {
  return String(value).padStart(2, "0");
}
function clockAt(start, seconds) {
  const moment = addMilliseconds(parseISO(`${start}Z`), Math.round(seconds) * 1e3);
  if (!isValid(moment)) throw new RangeError(`clockAt: ${start} + ${seconds} s`);
  return moment.toISOString().slice(0, 19);
}

// src/core/schedule/checks/Judged.ts
function rawWareOf({ schedule, expansion, raw, peakC }) {
  const { thickestMm, state } = schedule.ware;
  const { curve } = expansion;
  return { curve, isRaw: raw, isDamp: state === "damp", thickestMm, peakC, tense: "plan" };
}
function finding(parts) {
  return { zone: null, span: null, advice: "", ...parts };
}

// src/core/schedule/checks/afterwards.ts
var NOTICED_K = 150;
function checkAfterwards(judged2) {
  const { heatwork } = judged2;
  const endC = judged2.expansion.curve.tempsC.at(-1);
  if (endC < judged2.peakC - NOTICED_K) return [];
  const withFall = heatworkOf(judged2.untilCool, {
    series: heatwork.series,
    offsetK: heatwork.offsetK
  });
  return [
    finding({
      topic: "heat after the end",
      severity: "note",
      statement: `The schedule stops at {end}, hot enough for cones to go on bending: with the fall by itself it reaches ${withFall.position.label}.`,
      evidence: [{ name: "end", value: endC, kind: "temperature" }],
      basis: `the same cone model, with the natural cooling of ${judged2.kiln.basis}`,
      advice: "Add a last segment that cools, so that the fall is counted.",
      span: { fromSeconds: judged2.endSeconds, toSeconds: judged2.endSeconds }
    })
  ];
}

// src/core/schedule/checks/heatingTimes.ts
function wayUp(curve, fromC, toC) {
  const startC = curve.tempsC[0];
  const lowC = Math.max(fromC, startC);
  const from = startC >= fromC ? curve.timesSeconds[0] : firstUp(curve, fromC);
  const to = firstUp(curve, toC);
  if (from === null || to === null || to <= from || toC <= lowC) return null;
  return {
    fromSeconds: from,
    toSeconds: to,
    seconds: to - from,
    meanCPerHour: (toC - lowC) * 3600 / (to - from)
  };
}
var STEP_K = 5;
function fastestPassage(curve, within, spanK) {
  const lowestC = Math.max(within.fromC, curve.tempsC[0]);
  let fastest = null;
  for (let fromC = lowestC; fromC + spanK <= within.toC + 1e-6; fromC += STEP_K) {
    const toC = fromC + spanK;
    const to = firstUp(curve, toC);
    if (to === null) break;
    const from = lastUpBefore(curve, fromC, to);
    if (from === null || to <= from) continue;
    const meanCPerHour = spanK * 3600 / (to - from);
    if (fastest === null || meanCPerHour > fastest.meanCPerHour)
      fastest = { fromSeconds: from, toSeconds: to, seconds: to - from, meanCPerHour, fromC, toC };
  }
  return fastest;
}
function firstUp(curve, tempC) {
  const peak = peakOf(curve);
  return crossingTimes(curve, tempC).find(
    (crossing) => crossing.direction === "heating" && crossing.seconds <= peak.seconds
  )?.seconds ?? null;
}
function lastUpBefore(curve, tempC, before) {
  if (curve.tempsC[0] >= tempC) return curve.timesSeconds[0];
  return crossingTimes(curve, tempC).findLast(
    ({ direction, seconds }) => direction === "heating" && seconds < before
  )?.seconds ?? null;
}

// src/core/schedule/checks/RawWare.ts
var GLAZE_FROM_C = 1100;
var BISQUE_FROM_C = 850;
function mayBeRaw({ isRaw: isRaw2, peakC, tense }) {
  if (isRaw2 !== null) return isRaw2;
  return peakC < GLAZE_FROM_C && (tense === "plan" || peakC >= BISQUE_FROM_C);
}

// src/core/schedule/checks/carbon.ts
var SLOW_C_PER_HOUR = 80;
var QUICK_C_PER_HOUR = 112;
var CARBON = { fromC: 700, toC: 900, spanK: 50 };
var BURN_OUT = { fromC: 770, toC: 850, seconds: 3500 };
var UNKNOWN_TIMES = 2;
function checkCarbon(judged2) {
  return carbonFindings(rawWareOf(judged2));
}
function carbonFindings(ware) {
  if (!mayBeRaw(ware)) return [];
  const { curve, tense, isRaw: isRaw2 } = ware;
  const burning = fastestPassage(curve, CARBON, CARBON.spanK);
  const whole = wayUp(curve, 650, 950);
  if (burning === null || whole === null) return [];
  const rate = burning.meanCPerHour;
  const quick = rate > QUICK_C_PER_HOUR * 1.005 && !hasBurnOut(ware);
  if (tense === "past" && isRaw2 === null && !(quick && rate > UNKNOWN_TIMES * QUICK_C_PER_HOUR))
    return [];
  const climbs = tense === "plan" ? "climbs" : "climbed";
  return [
    finding({
      topic: "carbon burning out",
      severity: quick ? "caution" : "note",
      statement: quick ? `Between {low} and {high} the ware ${climbs} at up to {rate}, with {time} from {from} to {to}: carbon may ${tense === "plan" ? "stay in" : "have stayed in"} and bloat or pinhole later.` : rate > SLOW_C_PER_HOUR ? `Between {low} and {high} the ware ${climbs} at up to {rate}, as usual bisques do; dark or thick clay wants it slower.` : `Between {low} and {high} the ware ${climbs} at up to {rate}, slow enough for dark clay.`,
      evidence: [
        { name: "low", value: 700, kind: "temperature" },
        { name: "high", value: 900, kind: "temperature" },
        { name: "rate", value: rate, kind: "rate" },
        { name: "from", value: 650, kind: "temperature" },
        { name: "to", value: 950, kind: "temperature" },
        { name: "time", value: whole.seconds, kind: "duration" },
        { name: "usual", value: 100, kind: "rate" },
        { name: "hold at", value: 815, kind: "temperature" }
      ],
      basis: basedOn(
        "the fastest 50 \xB0C (90 \xB0F) there; 100 \xB0C/h (180 \xB0F/h) up to 900 \xB0C (1650 \xB0F); slow school 60 to 80 \xB0C/h (108 to 144 \xB0F/h) from 700 to 900 \xB0C (1290 to 1650 \xB0F); or about 1 h at 816 \xB0C (1500 \xB0F)",
        "mastering-cone-6",
        "bisque-carbon",
        "burn-out-hold"
      ),
      advice: quick ? "Slow down to {usual} there, or hold for an hour at {hold at}." : "",
      span: { fromSeconds: whole.fromSeconds, toSeconds: whole.toSeconds }
    })
  ];
}
function hasBurnOut({ curve }) {
  const stretch = wayUp(curve, BURN_OUT.fromC, BURN_OUT.toC);
  const usual = (BURN_OUT.toC - BURN_OUT.fromC) * 3600 / QUICK_C_PER_HOUR;
  return stretch !== null && stretch.seconds >= Math.max(BURN_OUT.seconds, usual);
}

// src/core/schedule/checks/coneWanted.ts
var BASIS = "cone model anchored to the published chart, holds and cooling counted, and what the thermocouple is known to be out by, or what kilns usually are";
function checkCone(judged2) {
  const { cone } = judged2.schedule;
  const { heatwork } = judged2;
  const common = { topic: "cone wanted", basis: BASIS };
  if (cone === null)
    return [
      finding({
        ...common,
        topic: "cone reached",
        severity: "note",
        statement: `The schedule names no cone; it reaches ${heatwork.position.label}.`,
        evidence: [{ name: "peak", value: judged2.peakC, kind: "temperature" }]
      })
    ];
  const state = heatwork.cones.find((candidate) => candidate.cone === cone);
  if (!state)
    return [
      finding({
        ...common,
        severity: "caution",
        statement: `There is no model of cone ${cone} in this series; the schedule reaches ${heatwork.position.label}.`,
        evidence: [{ name: "peak", value: judged2.peakC, kind: "temperature" }],
        advice: "Judge it by witness cones."
      })
    ];
  return [finding({ ...common, ...verdict(state, judged2) })];
}
function verdict(state, judged2) {
  const { heatwork } = judged2;
  const { cone, marginK, downAtSeconds } = state;
  const sigmaK = totalSigmaK(heatwork.offsetSigmaK, state.marginSigmaK);
  const reaches = `the schedule reaches ${heatwork.position.label}`;
  const topEnd = topEndSeconds(judged2.schedule, judged2.expansion);
  const fromTop = topEnd === null || downAtSeconds === null ? 0 : downAtSeconds - topEnd;
  const evidence2 = [
    { name: "margin", value: Math.abs(marginK), kind: "difference" },
    { name: "uncertainty", value: sigmaK, kind: "difference" }
  ];
  const next = nextWholeCone(cone, heatwork.cones);
  if (downAtSeconds === null || topEnd === null)
    return {
      severity: marginK < -sigmaK ? "warning" : "note",
      statement: `Cone ${cone} is not reached, short by {margin}: ${reaches}.`,
      evidence: evidence2,
      advice: "Raise the peak by {margin}, or hold longer, and look at the cone before it cools."
    };
  const timed = [
    ...evidence2,
    { name: "from the end of the hold", value: Math.abs(fromTop), kind: "duration" }
  ];
  const span = { fromSeconds: downAtSeconds, toSeconds: downAtSeconds };
  if (next !== null && next.marginK >= 0 && marginK > sigmaK)
    return {
      severity: "warning",
      statement: `Cone ${cone} is overshot by a whole cone, {margin} above its end point: ${reaches}.`,
      evidence: timed,
      advice: "Lower the peak by {margin}, or hold for less.",
      span
    };
  if (fromTop > AT_TOP_END_SECONDS)
    return {
      severity: "note",
      statement: `Cone ${cone} falls only {from the end of the hold} after the top hold ends, while the kiln is already cooling: ${reaches}. Whoever looks at the end of the hold still sees it bending.`,
      evidence: [...timed, shortAtTop(judged2, cone)],
      advice: "Raise the peak by {short at the top}, or hold longer; --repair and --solve do it.",
      span
    };
  return {
    severity: "note",
    statement: `Cone ${cone} falls ${fromTop < -AT_TOP_END_SECONDS ? "{from the end of the hold} before" : "at"} the end of the top hold: ${reaches}.`,
    evidence: timed,
    advice: "",
    span
  };
}
function shortAtTop({ schedule, heatwork, kiln }, cone) {
  const { offsetK } = heatwork;
  const marginK = aimMarginK(schedule, { cone, kiln, offsetK }) ?? 0;
  return { name: "short at the top", value: Math.max(1, -marginK), kind: "difference" };
}
function nextWholeCone(cone, cones) {
  const at2 = cones.findIndex((state) => state.cone === cone);
  return cones.find((state, index) => index > at2 && !state.cone.includes(".")) ?? null;
}

// src/core/schedule/checks/cooling.ts
function checkCooling(judged2) {
  const crossings = limitedCrossings(judged2.untilCool, {
    limitFor: judged2.limitFor,
    directions: ["cooling"]
  });
  const strained = crossings.some(isOverGuide) ? strainedCrossings(judged2, crossings) : crossings;
  return strained.flatMap((crossing) => {
    const { limitCPerHour, fastestCPerHour } = crossing;
    return limitCPerHour === null || fastestCPerHour === null ? [] : [judgedCrossing(judged2, crossing, { guide: limitCPerHour, fastest: -fastestCPerHour })];
  });
}
function isOverGuide({ limitCPerHour, fastestCPerHour }) {
  return limitCPerHour !== null && fastestCPerHour !== null && -fastestCPerHour > limitCPerHour;
}
function strainedCrossings({ untilCool: untilCool3, schedule }, crossings) {
  const { ware } = pieceOf(schedule.ware);
  const fall2 = sliced(
    untilCool3,
    peakOf(untilCool3).seconds,
    untilCool3.timesSeconds.at(-1)
  );
  const worst = fall2 === null ? [] : wareStrain(fall2, ware).worst;
  return crossings.map((crossing) => {
    const ratio = worst.find(({ band }) => band === crossing.band)?.ratio;
    return withStrain(
      crossing,
      ratio === void 0 ? null : { ratio, low: ratio, high: ratio },
      ware.body
    );
  });
}
function judgedCrossing(judged2, crossing, { guide, fastest }) {
  const severity = crossing.severity ?? "note";
  const start = crossing.startSeconds ?? judged2.endSeconds;
  const end = crossing.endSeconds ?? judged2.endSeconds;
  const byItself = start >= judged2.endSeconds - 1 ? ", falling by itself after the schedule" : "";
  const mean2 = crossing.meanCPerHour === null ? "" : ", {mean} on average";
  const who = quoted(crossing.limitMeantFor ?? "");
  return finding({
    topic: `cooling through ${crossing.band.replace(" inversion", "")}`,
    severity,
    statement: `The kiln cools through the ${crossing.band} at up to {fastest}${mean2}${byItself}: ${severity === "warning" ? "by our reckoning enough to break the ware" : severity === "caution" ? "hard on the ware" : "the ware bears it"}. The guide is {limit}, for ${who}.`,
    evidence: [
      { name: "fastest", value: fastest, kind: "rate" },
      ...crossing.meanCPerHour === null ? [] : [{ name: "mean", value: Math.abs(crossing.meanCPerHour), kind: "rate" }],
      { name: "limit", value: guide, kind: "rate" },
      { name: "high", value: crossing.limitFromC ?? crossing.fromC, kind: "temperature" },
      { name: "low", value: crossing.limitToC ?? crossing.toC, kind: "temperature" },
      ...crossing.strainRatio === null ? [] : [{ name: "stress", value: crossing.strainRatio, kind: "ratio" }]
    ],
    basis: crossing.limitBasis ?? "",
    advice: severity === "note" ? "" : "Programme {limit} or less from {high} to {low}.",
    span: end > start ? { fromSeconds: start, toSeconds: end } : null
  });
}

// src/core/ware/WareSize.ts
var SANITARY_WALL_MM = 12;
var WIDE_MM = 300;
function isDemanding(ware) {
  return (ware.thickestMm ?? 0) > SANITARY_WALL_MM || (ware.widestMm ?? 0) >= WIDE_MM;
}

// src/core/schedule/checks/heating.ts
var STEADY_C_PER_HOUR = 100;
function checkQuartzHeating(judged2) {
  const stretch = wayUp(judged2.expansion.curve, 520, 620);
  if (stretch === null || !isDemanding(judged2.schedule.ware)) return [];
  const quick = stretch.meanCPerHour > STEADY_C_PER_HOUR * 1.02;
  return [
    finding({
      topic: "heating through quartz",
      severity: "note",
      statement: quick ? "Thick or wide ware climbs through the quartz inversion at {rate}; books advise {advice} or less for it." : "Thick or wide ware climbs through the quartz inversion at {rate}, no faster than books advise.",
      evidence: [
        { name: "rate", value: stretch.meanCPerHour, kind: "rate" },
        { name: "advice", value: STEADY_C_PER_HOUR, kind: "rate" },
        { name: "low", value: 520, kind: "temperature" },
        { name: "high", value: 620, kind: "temperature" }
      ],
      basis: basedOn(
        "100 \xB0C/h (180 \xB0F/h) from 100 to 900 \xB0C (210 to 1650 \xB0F); no rule for this inversion on the way up was found",
        "mastering-cone-6",
        "european-bisque"
      ),
      advice: "",
      span: { fromSeconds: stretch.fromSeconds, toSeconds: stretch.toSeconds }
    })
  ];
}
function checkLastHundred(judged2) {
  const rate = judged2.heatwork.lastHundredCPerHour;
  if (rate === null) return [];
  const slow = rate < 60 * 0.98;
  const outside = rate > 150 * 1.02 || rate < 15 * 0.98;
  return [
    finding({
      topic: "the last 100 degrees",
      severity: outside ? "caution" : "note",
      statement: outside ? "The last {span} before the peak are climbed at {rate}, outside the rates of the cone chart: the cone is less certain." : slow ? "The last {span} before the peak are climbed at {rate}, slower than the usual columns of the cone chart but inside it." : "The last {span} before the peak are climbed at {rate}, inside the rates of the cone chart.",
      evidence: [
        { name: "span", value: 100, kind: "difference" },
        { name: "rate", value: rate, kind: "rate" },
        { name: "low", value: 60, kind: "rate" },
        { name: "high", value: 150, kind: "rate" }
      ],
      basis: basedOn(
        "chart rates of 15, 60 and 150 \xB0C/h (27, 108 and 270 \xB0F/h) hold for the last 100 \xB0C (180 \xB0F)",
        "cone-chart-rates"
      ),
      advice: outside ? "Climb the last {span} at {low} to {high}." : ""
    })
  ];
}

// src/core/schedule/checks/peak.ts
var LONG_HOLD_SECONDS = 3600;
var ROUNDING_SECONDS = 0.5;
function checkPeakHold(judged2) {
  const holds2 = judged2.expansion.timeline.filter(
    (row) => row.kind === "hold" && row.toC >= judged2.peakC - 5
  );
  const seconds = holds2.reduce((sum, row) => sum + row.endSeconds - row.startSeconds, 0);
  const first = holds2[0];
  const last = holds2.at(-1);
  if (!(first && last)) return [];
  const long = seconds > LONG_HOLD_SECONDS + ROUNDING_SECONDS;
  return [
    finding({
      topic: "hold at the peak",
      severity: long ? "caution" : "note",
      statement: long ? "The peak is held for {hold}; glazes run and cones go on bending." : "The peak is held for {hold}, inside what is published.",
      evidence: [{ name: "hold", value: seconds, kind: "duration" }],
      basis: basedOn("15 to 20 min is enough for gloss, runs appear beyond 1 h", "soak-length"),
      advice: long ? "Go a little hotter and hold for less." : "",
      span: { fromSeconds: first.startSeconds, toSeconds: last.endSeconds }
    })
  ];
}

// src/core/thermocouple/serviceLimits.ts
var GAUGES_MM = [3.25, 1.63, 0.81, 0.51, 0.33, 0.25];
function limits(...tempsC) {
  return tempsC.map((limitC, at2) => ({ wireMm: GAUGES_MM[at2], limitC }));
}
var SERVICE = {
  K: limits(1260, 1090, 980, 870, 870, 760),
  N: limits(1260, 1090, 980, 870, 870, 760),
  J: limits(760, 590, 480, 370, 370, 320),
  T: [
    { wireMm: 1.63, limitC: 370 },
    { wireMm: 0.81, limitC: 260 },
    { wireMm: 0.51, limitC: 200 },
    { wireMm: 0.33, limitC: 200 },
    { wireMm: 0.25, limitC: 150 }
  ],
  R: [{ wireMm: 0.51, limitC: 1480 }],
  S: [{ wireMm: 0.51, limitC: 1480 }],
  B: [{ wireMm: 0.51, limitC: 1700 }]
};
var SAME_GAUGE = 0.95;
function serviceLimitC(type, wireMm) {
  const rows = SERVICE[type];
  const row = wireMm === null ? rows[0] : rows.find((each) => wireMm >= SAME_GAUGE * each.wireMm);
  return (row ?? rows.at(-1)).limitC;
}

// src/core/schedule/checks/ratings.ts
var FAR_K = 50;
var SLACK_K = 1;
var BASE_METAL_C = 1260;
function checkRatings({ schedule, peakC }) {
  return ratingFindings({
    peakC,
    type: schedule.thermocouple?.type ?? null,
    wireMm: schedule.thermocouple?.wireMm ?? null,
    kilnRatingC: schedule.kilnRatingC ?? null,
    tense: "plan"
  });
}
function ratingFindings(ratings) {
  return [...kilnRating(ratings), ...thermocoupleRating(ratings)];
}
function kilnRating({ peakC, kilnRatingC, tense }) {
  if (kilnRatingC === null || peakC <= kilnRatingC + SLACK_K) return [];
  return [
    finding({
      topic: "above the kiln's rating",
      severity: "warning",
      statement: `The top of {peak} ${tense === "plan" ? "is" : "was"} {over} above the {rating} that the kiln is rated for.`,
      evidence: [
        { name: "peak", value: peakC, kind: "temperature" },
        { name: "over", value: peakC - kilnRatingC, kind: "difference" },
        { name: "rating", value: kilnRatingC, kind: "temperature" }
      ],
      basis: "the rating in the file, as the plate on the kiln gives it",
      advice: tense === "plan" ? "Fire to a lower cone, or in a kiln that is rated for this one: elements, bricks and wiring of this one are not." : "Have a licensed electrician look at elements, terminals and wiring under your local code before the next firing, and stay below the rating."
    })
  ];
}
function thermocoupleRating(ratings) {
  const { peakC, type, wireMm, tense } = ratings;
  if (type === null) return tense === "plan" ? unknownType(peakC) : [];
  const limitC = serviceLimitC(type, wireMm);
  if (peakC <= limitC + SLACK_K) return [];
  const wire = wireMm === null ? "even its thickest wire" : `wire of ${Number(wireMm.toFixed(2))} mm`;
  const isBase = type !== "S" && type !== "R" && type !== "B";
  return [
    finding({
      topic: "above the thermocouple's rating",
      severity: peakC > limitC + FAR_K ? "warning" : "caution",
      statement: `The top of {peak} ${tense === "plan" ? "is" : "was"} above the {limit} up to which a type ${type} thermocouple lasts, with ${wire}, in a tube: hotter, it drifts, and breaks early.`,
      evidence: [
        { name: "peak", value: peakC, kind: "temperature" },
        { name: "limit", value: limitC, kind: "temperature" }
      ],
      basis: basedOn(
        "suggested upper limits of protected thermocouples by type and gauge",
        "astm-e230-service"
      ),
      advice: `${isBase ? "Use type S or R there" : "Use type B there"}, and go by the witness cones: a thermocouple that reads low lets the kiln go on heating.`
    })
  ];
}
function unknownType(peakC) {
  if (peakC <= BASE_METAL_C + SLACK_K) return [];
  return [
    finding({
      topic: "above the thermocouple's rating",
      severity: peakC > BASE_METAL_C + FAR_K ? "caution" : "note",
      statement: "The top of {peak} is above the {limit} up to which the usual type K thermocouple lasts; which one this kiln has is not said.",
      evidence: [
        { name: "peak", value: peakC, kind: "temperature" },
        { name: "limit", value: BASE_METAL_C, kind: "temperature" }
      ],
      basis: basedOn(
        "suggested upper limits of protected thermocouples by type and gauge",
        "astm-e230-service"
      ),
      advice: "See that kiln and thermocouple are rated for it, and say so in the schedule: kilnRating, thermocouple."
    })
  ];
}

// src/core/schedule/checks/ownReach.ts
var LATE_SECONDS = 900;
function ownReach(judged2, own) {
  return [
    ...own.stall === null ? [] : [stalls(own.stall, judged2, own)],
    ...own.segments.flatMap(
      (went2) => went2.behindFromC === null ? [] : [behind(went2, went2.behindFromC, judged2, own)]
    ),
    ...coneOnTheKiln(judged2, own)
  ];
}
function stalls(stall, judged2, own) {
  const { rising, beforePeak } = stall;
  const common = {
    evidence: [
      { name: "segment", value: stall.segment + 1, kind: "count" },
      { name: "stalled", value: stall.tempC, kind: "temperature" },
      { name: "to", value: stall.toC, kind: "temperature" }
    ],
    basis: basisOf(judged2)
  };
  if (!rising)
    return finding({
      ...common,
      topic: "reach while cooling",
      severity: "note",
      statement: "In segment {segment} your kiln all but stops falling at about {stalled}, above {to}: that is near the temperature of its room."
    });
  return finding({
    ...common,
    topic: "reach while heating",
    severity: beforePeak && own.powerFrom === "output" ? "warning" : "caution",
    statement: `Your kiln stalls in segment {segment}: with everything on it gets to about {stalled}, short of {to}.${atLeast(own)}`,
    advice: `${STALL_HELP} Or draft for a softer cone.`
  });
}
var STALL_HELP = "By common practice fewer shelves, a lighter load, a slower climb before it so that the bricks soak, or new elements, fitted by a licensed electrician under your local code, help.";
function behind(went2, fromC, judged2, own) {
  const rising = went2.toC > went2.fromC;
  const isLate = rising && went2.behindSeconds > LATE_SECONDS;
  return finding({
    topic: rising ? "reach while heating" : "reach while cooling",
    severity: isLate ? "caution" : "note",
    statement: rising ? `Your kiln falls behind in segment {segment}, from about {behind} on: it climbs to {to} at about {able}, not {wanted}, and is about {late} late.${atLeast(own)}` : "Your kiln falls more slowly than segment {segment} asks, from about {behind} on: to {to} at about {able}, not {wanted}, so the controller waits and it takes about {late} longer.",
    evidence: [
      { name: "segment", value: went2.segment + 1, kind: "count" },
      { name: "behind", value: fromC, kind: "temperature" },
      { name: "to", value: went2.toC, kind: "temperature" },
      { name: "able", value: Math.abs(went2.meanCPerHour), kind: "rate" },
      { name: "wanted", value: Math.abs(Number(went2.askedCPerHour)), kind: "rate" },
      { name: "late", value: went2.behindSeconds, kind: "duration" }
    ],
    basis: basisOf(judged2),
    advice: isLate ? "Ask for a rate that it manages, or for free; --repair does." : "",
    span: { fromSeconds: went2.startSeconds, toSeconds: went2.rampEndSeconds }
  });
}
function coneOnTheKiln(judged2, own) {
  const { cone } = judged2.schedule;
  const onPlan = judged2.heatwork.cones.find((state) => state.cone === cone);
  const onKiln = own.heatwork.cones.find((state) => state.cone === cone);
  if (onPlan === void 0 || onKiln === void 0) return [];
  const isShort = onKiln.marginK < 0;
  const saidAlready = isWarned(judged2) && onPlan.marginK < 0 === isShort;
  if (saidAlready || !isWarned({ ...judged2, heatwork: own.heatwork })) return [];
  const gets = `it gets to ${own.heatwork.position.label}`;
  return [
    finding({
      topic: "cone on your kiln",
      severity: "warning",
      statement: isShort ? `On your kiln cone ${cone} is not reached, short by about {margin}: ${gets}${own.stall?.rising ? ", switched off where it stalls" : ""}.${atLeast(own)}` : `On your kiln cone ${cone} is overshot by a whole cone, about {margin} above its end point, for it lingers: ${gets}.`,
      evidence: [{ name: "margin", value: Math.abs(onKiln.marginK), kind: "difference" }],
      basis: basisOf(judged2),
      advice: isShort ? own.stall === null ? STALL_HELP : "" : "Lower the peak, hold for less, or ask for a rate that it manages."
    })
  ];
}
function isWarned(judged2) {
  return checkCone(judged2).some(({ severity }) => severity === "warning");
}
function atLeast({ powerFrom }) {
  return powerFrom === "output" ? "" : " The logs carry no output of the controller, so this is the least that it can do.";
}
function basisOf({ kiln }) {
  return `simulated with ${kiln.basis}`;
}

// src/core/schedule/checks/reach.ts
var SLACK = 1.05;
function checkReach(judged2) {
  if (judged2.own !== null) return ownReach(judged2, judged2.own);
  return judged2.expansion.timeline.flatMap((row) => {
    if (row.kind !== "ramp" || row.assumedRate) return [];
    const limit = slowestOnTheWay(row, judged2);
    const wanted = Math.abs(row.rateCPerHour);
    return wanted <= limit.speed * SLACK ? [] : [cannotFollow(row, limit, judged2)];
  });
}
function slowestOnTheWay(row, judged2) {
  let slowest = { speed: Number.POSITIVE_INFINITY, atC: row.fromC };
  const steps = Math.max(1, Math.ceil(Math.abs(row.toC - row.fromC) / 20));
  for (let k = 0; k <= steps; k++) {
    const atC = row.fromC + (row.toC - row.fromC) * k / steps;
    const speed = freeSpeed(judged2.kiln, atC, row.toC > row.fromC);
    if (speed < slowest.speed) slowest = { speed, atC };
  }
  return slowest;
}
function cannotFollow(row, limit, judged2) {
  const rising = row.toC > row.fromC;
  const own = judged2.kilnIsKnown;
  const subject = own ? "The kiln" : "A typical loaded kiln";
  return finding({
    topic: rising ? "reach while heating" : "reach while cooling",
    severity: own && rising ? "caution" : "note",
    statement: rising ? `${subject} may not keep up with {wanted} from {from} to {to}: at {worst} it manages {able}.` : `${subject} falls more slowly than {wanted} from {from} to {to}: at {worst} it falls at {able}, so the controller waits and the firing takes longer.`,
    evidence: [
      { name: "wanted", value: Math.abs(row.rateCPerHour), kind: "rate" },
      { name: "from", value: row.fromC, kind: "temperature" },
      { name: "to", value: row.toC, kind: "temperature" },
      { name: "worst", value: limit.atC, kind: "temperature" },
      { name: "able", value: limit.speed, kind: "rate" }
    ],
    basis: `speed of ${judged2.kiln.basis}`,
    advice: rising ? "Look in your own logs for how fast the kiln climbs there." : "",
    span: { fromSeconds: row.startSeconds, toSeconds: row.endSeconds }
  });
}

// src/core/schedule/checks/unloading.ts
var UNLOAD_C = 100;
function checkUnloading(judged2) {
  const { curve } = judged2.expansion;
  const endC = curve.tempsC.at(-1);
  if (endC <= UNLOAD_C + 0.5) return [];
  const coolAt = judged2.untilCool.timesSeconds.at(-1);
  return [
    finding({
      topic: "unloading",
      severity: "note",
      statement: "The schedule ends at {end}; by itself the kiln falls to {unload} in about {wait}, {total} after the start.",
      evidence: [
        { name: "end", value: endC, kind: "temperature" },
        { name: "unload", value: UNLOAD_C, kind: "temperature" },
        { name: "wait", value: coolAt - judged2.endSeconds, kind: "duration" },
        { name: "total", value: coolAt, kind: "duration" }
      ],
      basis: `${basedOn("unload at 100 to 120 \xB0C (210 to 250 \xB0F)", "opening-practice")}; natural cooling of ${judged2.kiln.basis}`,
      advice: "Leave the lid shut until {unload}.",
      span: { fromSeconds: judged2.endSeconds, toSeconds: coolAt }
    })
  ];
}
function checkCrackle(judged2) {
  if (!judged2.schedule.ware.crackle) return [];
  return [
    finding({
      topic: "crackle",
      severity: "note",
      statement: "A crackle glaze usually begins to crack below about {below}, and goes on for days; slow cooling through the inversions guards the clay, it neither makes nor prevents crackle.",
      evidence: [{ name: "below", value: 450, kind: "temperature" }],
      basis: "our own estimate: a 0.4 mm coat, stiff near 600 \xB0C, whose expansion is above the body's by 0.75 to 2 millionths per kelvin first cracks 150 to 400 \xB0C below that",
      advice: "Write down when you hear pinging, and look again after a day and after a week."
    })
  ];
}

// src/core/schedule/checks/water.ts
var FAST_START_C_PER_HOUR = 139;
var SLOW_START_C_PER_HOUR = 33;
var FASTEST_START_C_PER_HOUR = 300;
var ORDINARY_MM = 12;
var BURSTING = 2;
var STEAM = { fromC: 60, toC: 120, spanK: 15 };
var THICK_MM = 15;
var SCULPTURE_MM = 25;
function mostSteamCPerHour(thickestMm) {
  const wallMm = Math.max(ORDINARY_MM, thickestMm ?? ORDINARY_MM);
  return Math.max(SLOW_START_C_PER_HOUR, FAST_START_C_PER_HOUR * (ORDINARY_MM / wallMm) ** 2);
}
function checkWater(judged2) {
  return waterFindings(rawWareOf(judged2));
}
function waterFindings(ware) {
  return mayBeRaw(ware) ? [...startRate(ware), ...dryingTime(ware)] : [];
}
function startRate(ware) {
  const fastest = fastestPassage(ware.curve, STEAM, STEAM.spanK);
  if (fastest === null) return [];
  const rate = fastest.meanCPerHour;
  const most = mostSteamCPerHour(ware.thickestMm);
  const severity = steamSeverity(rate, most, ware);
  if (severity === null) return [];
  const climbs = ware.tense === "plan" ? "climbs" : "climbed";
  const wall = ware.thickestMm === null ? "" : ` for walls of ${wallText(ware.thickestMm)}`;
  return [
    finding({
      topic: "water, rate of the start",
      severity,
      statement: severity === "note" ? `Up to {upper} it ${climbs} at {rate} at its fastest, inside what potters use${wall}.` : `From {lower} to {high} it ${climbs} at {rate}, faster than the {usual} that is safe${wall}; steam ${ware.tense === "plan" ? "may burst" : "may have burst"} raw ware.`,
      evidence: [
        { name: "upper", value: STEAM.toC, kind: "temperature" },
        { name: "lower", value: fastest.fromC, kind: "temperature" },
        { name: "high", value: fastest.toC, kind: "temperature" },
        { name: "rate", value: rate, kind: "rate" },
        { name: "usual", value: most, kind: "rate" }
      ],
      basis: basedOn(
        "the fastest 15 \xB0C (27 \xB0F) between 60 and 120 \xB0C (140 and 248 \xB0F); raw ware goes to 121 \xB0C (250 \xB0F) at 33 to 139 \xB0C/h (60 to 250 \xB0F/h); industry goes from 100 to 150 \xB0C (212 to 302 \xB0F) at 300 \xB0C/h (540 \xB0F/h) at most; between these by the square of the wall, our own estimate",
        "bisque-guide",
        "cautious-bisque",
        "fortuna-2000"
      ),
      advice: severity === "note" ? "" : "Go to {upper} at {usual} or less, or hold below boiling.",
      span: spanOf(fastest)
    })
  ];
}
function steamSeverity(rate, most, { isRaw: isRaw2, tense }) {
  const isFast = rate > most * 1.005;
  if (tense === "past" && isRaw2 === null) return rate > FASTEST_START_C_PER_HOUR ? "caution" : null;
  if (!isFast) return "note";
  const isBursting = rate > FASTEST_START_C_PER_HOUR || rate > BURSTING * most;
  return isBursting && isRaw2 === true ? "warning" : "caution";
}
function dryingTime(ware) {
  const { curve, isDamp, tense } = ware;
  const thickestMm = ware.thickestMm ?? 0;
  const neededHours = thickestMm >= SCULPTURE_MM ? 6 : isDamp || thickestMm >= THICK_MM ? 1 : 0;
  const stretch = wayUp(curve, 65, 120);
  if (neededHours === 0 || stretch === null) return [];
  const enough = stretch.seconds >= neededHours * 3600 - 1;
  const had = tense === "plan" ? "has" : "had";
  return [
    finding({
      topic: "water, time to dry",
      severity: enough ? "note" : isDamp ? "warning" : "caution",
      statement: enough ? `The ware ${had} {time} between {lower} and {upper} to dry.` : `${isDamp ? "Damp" : "Thick"} ware ${had} only {time} between {lower} and {upper} to dry.`,
      evidence: [
        { name: "time", value: stretch.seconds, kind: "duration" },
        { name: "lower", value: 65, kind: "temperature" },
        { name: "upper", value: 120, kind: "temperature" },
        { name: "wanted", value: neededHours * 3600, kind: "duration" }
      ],
      basis: basedOn(
        "damp ware is held at 82 \xB0C (180 \xB0F) for 1 to 4 h, sculpture for 6 h or more at 65 to 120 \xB0C (150 to 250 \xB0F)",
        "european-bisque",
        "candling-sculpture"
      ),
      advice: enough ? "" : "Hold for {wanted} or more between {lower} and the boiling point.",
      span: { fromSeconds: stretch.fromSeconds, toSeconds: stretch.toSeconds }
    })
  ];
}
function wallText(mm) {
  return `${Number(mm.toFixed(1))} mm`;
}
function spanOf({ fromSeconds, toSeconds }) {
  return { fromSeconds, toSeconds };
}

// src/core/schedule/checkSchedule.ts
var CHECKS = [
  checkWater,
  checkCarbon,
  checkQuartzHeating,
  checkLastHundred,
  checkPeakHold,
  checkCone,
  checkAfterwards,
  checkCooling,
  checkReach,
  checkRatings,
  checkUnloading,
  checkCrackle
];
function checkSchedule(input) {
  const { schedule, expansion, heatwork } = input;
  const kiln = input.kiln ?? REFERENCE_KILN;
  const judged2 = {
    schedule,
    expansion,
    heatwork,
    kiln,
    limitFor: input.limitFor ?? limitsFor(schedule.ware),
    kilnIsKnown: input.kiln !== void 0,
    own: input.own ?? null,
    untilCool: untilCool(expansion.curve, kiln),
    endSeconds: expansion.curve.timesSeconds.at(-1),
    raw: isRaw(schedule.ware.state),
    peakC: peakOf(expansion.curve).tempC
  };
  return ordered(CHECKS.flatMap((check) => check(judged2)));
}
function isRaw(state) {
  if (state === null) return null;
  return state === "bone dry" || state === "damp" || state === "glazed raw";
}
function untilCool(curve, kiln) {
  const endC = curve.tempsC.at(-1);
  const endSeconds = curve.timesSeconds.at(-1);
  if (endC <= UNLOAD_C) return curve;
  const fall2 = freeRamp({ fromC: endC, toC: UNLOAD_C, kiln });
  return makeCurve(
    [...curve.timesSeconds, ...fall2.map((point) => endSeconds + point.seconds)],
    [...curve.tempsC, ...fall2.map((point) => point.tempC)],
    curve.gaps
  );
}

// src/core/schedule/checks/hours.ts
var NIGHT = { fromHour: 22, toHour: 6 };
var NEAR_NIGHT = { fromHour: 21, toHour: 7 };
var STEP_SECONDS = 900;
var DAY_SECONDS2 = 86400;
var AT_TOP_K = 2;
function hoursFindings(start, expansion, own) {
  const top = topOf(expansion, own);
  if (start === null || !isAt(NIGHT, start, top)) return [];
  const shift = dayShift(start, top);
  const other = shift === null ? "" : `, or start ${shift < 0 ? "earlier" : "later"}, at ${dayAndTime(start, shift)}: the top then comes at ${time(start, top.fromSeconds + shift)}`;
  return [
    finding({
      topic: "top at night",
      severity: "caution",
      statement: `The top comes at ${time(start, top.fromSeconds)} and the kiln should switch off at ${time(start, top.toSeconds)}: at night, when nobody looks.`,
      basis: "between 22:00 and 06:00, by the start; common practice is to be there at the top",
      advice: `Be there at ${time(start, top.fromSeconds)}, and see that it switches off${other}.`,
      evidence: [],
      span: top
    })
  ];
}
function topOf({ curve }, own) {
  const { timesSeconds, tempsC } = own?.firing.curve ?? curve;
  const peakC = peakOf(own?.firing.curve ?? curve).tempC;
  const isTop = (tempC) => tempC >= peakC - AT_TOP_K;
  return {
    fromSeconds: timesSeconds[tempsC.findIndex(isTop)],
    toSeconds: timesSeconds[tempsC.findLastIndex(isTop)]
  };
}
function isAt(hours2, start, { fromSeconds, toSeconds }) {
  return isHour(hours2, start, fromSeconds) || isHour(hours2, start, toSeconds);
}
function isHour({ fromHour, toHour }, start, seconds) {
  const hour = Number(clockAt(start, seconds).slice(11, 13));
  return hour >= fromHour || hour < toHour;
}
function dayShift(start, top) {
  const shifts = Array.from(
    { length: DAY_SECONDS2 / STEP_SECONDS },
    (_, i) => (i + 1) * STEP_SECONDS
  ).flatMap((seconds) => [-seconds, seconds]).map((seconds) => seconds - untilQuarter(start)).filter((seconds) => !isAt(NEAR_NIGHT, start, moved(top, seconds)));
  return shifts.find((seconds) => !isHour(NIGHT, start, seconds)) ?? shifts[0] ?? null;
}
function moved({ fromSeconds, toSeconds }, seconds) {
  return { fromSeconds: fromSeconds + seconds, toSeconds: toSeconds + seconds };
}
function untilQuarter(start) {
  return (Number(start.slice(14, 16)) * 60 + Number(start.slice(17, 19))) % STEP_SECONDS;
}
function time(start, seconds) {
  return clockAt(start, seconds).slice(11, 16);
}
function dayAndTime(start, seconds) {
  return clockAt(start, seconds).slice(0, 16).replace("T", " ");
}

// src/core/schedule/energyOf.ts
var STEP_K2 = 10;
var JOULES_PER_KWH = 36e5;
function segmentsKWh(fired) {
  const { schedule, kiln } = fired;
  if (kiln.learned !== void 0) {
    const { segments, startC } = schedule;
    const firing = fired.own?.firing ?? predictFiring(kiln.learned, { segments, startC });
    return predictedKWh(firing, schedule);
  }
  const { heatCapacityJPerK } = kiln;
  if (heatCapacityJPerK === void 0) return null;
  const sums = schedule.segments.map(() => 0);
  for (const row of expandSchedule(schedule, { kiln }).timeline)
    sums[row.segment] = (sums[row.segment] ?? 0) + rowKWh(row, kiln, heatCapacityJPerK);
  return sums;
}
function energyKWh(fired) {
  return segmentsKWh(fired)?.reduce((sum, kWh) => sum + kWh, 0) ?? null;
}
function predictedKWh({ segments, stalled }, schedule) {
  const known = segments.flatMap(
    (segment) => segment.energyKWh === null ? [] : [segment.energyKWh]
  );
  if (known.length < segments.length) return null;
  if (stalled === null) return known;
  const unfinished = schedule.segments.slice(stalled.segment);
  const isLastFall = unfinished.length === 1 && (unfinished[0]?.toC ?? 0) < stalled.tempC;
  return isLastFall && known.length > 0 ? [...known, 0] : null;
}
function rowKWh(row, kiln, heatCapacityJPerK) {
  if (row.assumedRate && row.toC < row.fromC) return 0;
  const seconds = row.endSeconds - row.startSeconds;
  const steps = Math.max(1, Math.ceil(Math.abs(row.toC - row.fromC) / STEP_K2));
  let kelvins = 0;
  for (let k = 0; k < steps; k++) {
    const tempC = row.fromC + (row.toC - row.fromC) * (k + 0.5) / steps;
    const loss = kiln.naturalCoolingCPerHour(tempC);
    const stepC = (row.toC - row.fromC) / steps;
    const hours2 = row.assumedRate ? Math.abs(stepC) / freeSpeed(kiln, tempC, true) : seconds / steps / 3600;
    kelvins += Math.max(0, stepC + loss * hours2);
  }
  return kelvins * heatCapacityJPerK / JOULES_PER_KWH;
}

// src/core/schedule/ownKilnFiring.ts
function ownKilnFiring(learned2, schedule, known) {
  const firing = predictFiring(learned2, { segments: schedule.segments, startC: schedule.startC });
  return {
    firing,
    segments: firing.segments.map((went2) => ({
      ...went2,
      askedCPerHour: asked(schedule, went2.segment).rateCPerHour
    })),
    stall: stallOf(firing, schedule),
    heatwork: kilnHeatworkOf(firing.curve, { ...known, series: schedule.series }),
    powerFrom: learned2.power.from,
    bricksApart: learned2.twoNode !== null,
    powerWatt: learned2.powerWatt,
    tariffPerKWh: learned2.tariffPerKWh
  };
}
function stallOf({ stalled }, schedule) {
  if (stalled === null) return null;
  const { toC } = asked(schedule, stalled.segment);
  const hottest = Math.max(...schedule.segments.map((segment) => segment.toC));
  const peakAt = schedule.segments.findIndex((segment) => segment.toC === hottest);
  return {
    ...stalled,
    toC,
    rising: toC > stalled.tempC,
    beforePeak: stalled.segment <= peakAt && toC > stalled.tempC
  };
}
function asked(schedule, index) {
  const segment = schedule.segments[index];
  if (segment === void 0) throw new RangeError(`ownKilnFiring: there is no segment ${index}`);
  return segment;
}

// src/core/schedule/strainedPiece.ts
var MAY_OPEN_C = [200, 150, 100];
function strainedPiece(ware, curve) {
  const { ware: piece } = pieceOf(ware);
  return pieceStrain(curve, { name: "the ware", ware: piece, state: ware.state }, MAY_OPEN_C);
}

// src/core/schedule/draftSchedule.ts
function draftSchedule(input) {
  const { schedule, start } = input;
  const kiln = input.kiln === void 0 ? {} : { kiln: input.kiln };
  const limitFor = input.limitFor ?? limitsFor(schedule.ware);
  const expansion = expandSchedule(schedule, kiln);
  const strained = input.findingsOnly ? null : strainedPiece(schedule.ware, expansion.curve);
  const heatwork = kilnHeatworkOf(expansion.curve, {
    series: schedule.series,
    offsetK: input.offsetK ?? null,
    ...input.offsetSigmaK !== void 0 && { offsetSigmaK: input.offsetSigmaK }
  });
  const learned2 = input.kiln?.learned;
  const own = learned2 === void 0 ? null : ownKilnFiring(learned2, schedule, input);
  return {
    schedule,
    expansion,
    start,
    heatwork,
    own,
    energyKWh: input.kiln === void 0 ? null : energyKWh({ schedule, kiln: input.kiln, own }),
    crossings: limitedCrossings(expansion.curve, { limitFor }).map(
      (crossing) => withStrain(
        crossing,
        strained === null ? null : passageOf(strained, crossing),
        pieceOf(schedule.ware).ware.body
      )
    ),
    strains: strained === null ? [] : [strained],
    findings: ordered([
      ...checkSchedule({ schedule, expansion, heatwork, limitFor, own, ...kiln }),
      ...hoursFindings(start, expansion, own)
    ]),
    cautions: cautionsFor({
      kiln: true,
      opening: true,
      crackle: schedule.ware.crackle,
      dampWare: schedule.ware.state === "damp",
      estimate: true
    })
  };
}

// src/core/schedule/wholeUnits.ts
var WHOLE = 1e-6;
function temperatureUp(tempC, unit, step = 1) {
  return stepped(tempC, { unit, step, round: (value) => Math.ceil(value - WHOLE) });
}
function temperatureDown(tempC, unit, step = 1) {
  return stepped(tempC, { unit, step, round: (value) => Math.floor(value + WHOLE) });
}
function rateDown(rateCPerHour, unit, step = 1) {
  const rate = unit === "C" ? rateCPerHour : fahrenheitDeltaFromCelsiusDelta(rateCPerHour);
  const whole = Math.max(1, Math.floor(rate / step + WHOLE)) * step;
  return unit === "C" ? whole : celsiusDeltaFromFahrenheitDelta(whole);
}
function stepped(tempC, by) {
  const shown = by.unit === "C" ? tempC : fahrenheitFromCelsius(tempC);
  const whole = by.round(shown / by.step) * by.step;
  return by.unit === "C" ? whole : celsiusFromFahrenheit(whole);
}
function temperatureNear(tempC, unit) {
  return stepped(tempC, { unit, step: 1, round: Math.round });
}

// src/core/schedule/paced.ts
var SAME_RATE = 1.0005;
var SLIVER_K = 2;
var SHORTEST_K = 10;
var CHEAP_SECONDS = 360;
function paced(schedule, pace2, kiln) {
  const rising = pace2.toC > pace2.fromC;
  const peakAt = peakSegment(schedule)?.index ?? -1;
  let fromC = schedule.startC;
  const segments = schedule.segments.flatMap((segment, index) => {
    const startC = fromC;
    fromC = segment.toC;
    const concerned = segment.toC > startC === rising && index <= peakAt === rising;
    return concerned ? pieces({ segment, startC, kiln, unit: schedule.unit }, pace2) : [segment];
  });
  return { ...schedule, segments: merged(segments, pace2.why) };
}
function pieces(ramp, pace2) {
  const { segment, startC } = ramp;
  const sign = segment.toC > startC ? 1 : -1;
  const enterC = sign * Math.max(sign * startC, sign * pace2.fromC);
  const edgeC = sign * Math.min(sign * segment.toC, sign * pace2.toC);
  if (sign * (edgeC - enterC) < SLIVER_K / 4) return [segment];
  const isFree = segment.rateCPerHour === "free";
  const leaveC = pace2.isAsked && isFree ? edgeC : lastTooFastC(ramp, { enterC, edgeC }, pace2.mostCPerHour);
  if (leaveC === null) return [segment];
  const keepsStart = isWorthKeeping(ramp, sign * (enterC - startC), pace2.mostCPerHour);
  const keepsEnd = isWorthKeeping(ramp, sign * (segment.toC - leaveC), pace2.mostCPerHour);
  const slow = { rateCPerHour: sign * pace2.mostCPerHour, why: pace2.why };
  return [
    ...keepsStart ? [{ ...segment, toC: enterC, holdSeconds: 0 }] : [],
    keepsEnd ? { ...slow, toC: leaveC, holdSeconds: 0 } : { ...segment, ...slow },
    ...keepsEnd ? [segment] : []
  ];
}
function lastTooFastC(ramp, stretch, most) {
  const { segment, kiln, unit } = ramp;
  const { enterC, edgeC } = stretch;
  const tooFast = most * SAME_RATE;
  if (segment.rateCPerHour !== "free")
    return Math.abs(segment.rateCPerHour) > tooFast ? edgeC : null;
  const rising = edgeC > enterC;
  const steps = Math.ceil(Math.abs(edgeC - enterC));
  for (let k = steps; k >= 0; k--) {
    const atC = enterC + (edgeC - enterC) * k / steps;
    if (freeSpeed(kiln, atC, rising) <= tooFast) continue;
    if (k === steps) return edgeC;
    const nextC = enterC + (edgeC - enterC) * (k + 1) / steps;
    return rising ? Math.min(edgeC, temperatureUp(Math.max(nextC, enterC + SHORTEST_K), unit)) : Math.max(edgeC, temperatureDown(Math.min(nextC, enterC - SHORTEST_K), unit));
  }
  return null;
}
function isWorthKeeping(ramp, widthK, most) {
  const { rateCPerHour } = ramp.segment;
  if (widthK < SLIVER_K) return false;
  if (rateCPerHour === "free") return true;
  return widthK * (1 / most - 1 / Math.abs(rateCPerHour)) * 3600 > CHEAP_SECONDS;
}
function merged(segments, why) {
  return segments.filter((segment, index) => {
    const next = segments[index + 1];
    return !(next && segment.holdSeconds === 0 && segment.rateCPerHour !== "free" && segment.rateCPerHour === next.rateCPerHour && segment.why === why && next.why === why);
  });
}

// src/core/schedule/mends/cooling.ts
var WINDOW_REACH_HOURS = 0.14;
var MEND_COOLING = COOLING_BANDS.map((band) => ({
  topic: coolingTopic(band),
  mend: (schedule, _, { kiln, limitFor }) => {
    const limit = limitFor(band);
    if (limit === null) return { ok: true, schedule, did: "left as it is" };
    const slowed = cooledWithin(untilCool2(schedule), { band, kiln, limitFor });
    return {
      ok: true,
      schedule: slowed,
      did: `held to ${printRate(pace(limit, schedule), schedule.unit)} through the ${band.name}`
    };
  }
}));
function coolingTopic(band) {
  return `cooling through ${band.name.replace(" inversion", "")}`;
}
function cooledWithin(schedule, by) {
  const { band, kiln, limitFor } = by;
  const { unit } = schedule;
  const limit = limitFor(band);
  if (limit === null) return schedule;
  const mostCPerHour = pace(limit, schedule);
  const padK = mostCPerHour * WINDOW_REACH_HOURS;
  return paced(
    schedule,
    {
      fromC: temperatureUp(band.highC + padK, unit),
      toC: temperatureDown(band.lowC - padK, unit),
      mostCPerHour,
      why: `${band.name}: ${printRate(mostCPerHour, unit)} for ${limit.meantFor}`
    },
    kiln
  );
}
function untilCool2(schedule) {
  const endC = schedule.segments.at(-1)?.toC ?? schedule.startC;
  if (endC <= UNLOAD_C + 0.5) return schedule;
  const fall2 = { toC: UNLOAD_C, rateCPerHour: "free", holdSeconds: 0, why: null };
  return { ...schedule, segments: [...schedule.segments, fall2] };
}
function pace({ limitCPerHour }, schedule) {
  return rateDown(limitCPerHour, schedule.unit);
}

// src/core/schedule/mends/heating.ts
var MEND_START = {
  topic: "water, rate of the start",
  mend: slowing({
    fromC: null,
    toC: 120,
    mostCPerHour: ({ ware }) => mostSteamCPerHour(ware.thickestMm),
    rateOf: (curve) => fastestPassage(curve, STEAM, STEAM.spanK)?.meanCPerHour ?? null,
    reason: "water leaves as steam"
  })
};
var MEND_CARBON = {
  topic: "carbon burning out",
  mend: slowing({
    fromC: 700,
    toC: 900,
    mostCPerHour: () => QUICK_C_PER_HOUR,
    rateOf: (curve) => fastestPassage(curve, CARBON, CARBON.spanK)?.meanCPerHour ?? null,
    reason: "carbon burns out"
  })
};
var MEND_QUARTZ_HEATING = {
  topic: "heating through quartz",
  mend: slowing({
    fromC: 520,
    toC: 620,
    mostCPerHour: () => STEADY_C_PER_HOUR,
    rateOf: (curve) => wayUp(curve, 520, 620)?.meanCPerHour ?? null,
    reason: "quartz inversion of thick or wide ware on the way up"
  })
};
var DRYING_C = 80;
var DRYING_F_IN_C = (180 - 32) / 1.8;
var MEND_DRYING = {
  topic: "water, time to dry",
  mend: (schedule, findings) => {
    const missing = evidence(findings, "wanted") - evidence(findings, "time");
    const holdSeconds = Math.ceil(missing / 60) * 60;
    const why = "dries below boiling";
    const atC = schedule.unit === "C" ? DRYING_C : DRYING_F_IN_C;
    const segments = withHold(schedule, { atC, holdSeconds, why });
    return segments === null ? {
      ok: false,
      why: "The schedule does not pass below boiling, where thick or damp ware dries."
    } : {
      ok: true,
      schedule: { ...schedule, segments },
      did: `held below boiling, at about ${printTemperature(atC, schedule.unit)}`
    };
  }
};
var MEND_REACH = {
  topic: "reach while heating",
  mend: (schedule, _, { kiln }) => {
    let fromC = schedule.startC;
    const simulated = kiln.learned === void 0 ? null : lateFrom(schedule, kiln.learned);
    const segments = schedule.segments.flatMap((segment, index) => {
      const startC = fromC;
      fromC = segment.toC;
      const keepsUpToC = simulated === null ? keptUpTo(segment, startC, kiln) : simulated.get(index) ?? segment.toC;
      return asFastAsItCan(segment, startC, temperatureDown(keepsUpToC, schedule.unit));
    });
    return {
      ok: true,
      schedule: { ...schedule, segments },
      did: "left to the kiln's full power where it cannot keep the rate"
    };
  }
};
function slowing(stretch) {
  return (schedule, _, { kiln }) => {
    const { unit } = schedule;
    const toC = stretch.toC;
    const fromC = stretch.fromC ?? schedule.startC;
    const pacedTo = (mostCPerHour2) => {
      const why = `${stretch.reason}: ${printRate(mostCPerHour2, unit)} at most`;
      return paced(schedule, { fromC, toC, mostCPerHour: mostCPerHour2, why }, kiln);
    };
    const mostCPerHour = gentlest(unit, (rate) => {
      const went2 = stretch.rateOf(expandSchedule(pacedTo(rate), { kiln }).curve);
      return went2 === null || went2 <= stretch.mostCPerHour(schedule);
    });
    return {
      ok: true,
      schedule: pacedTo(mostCPerHour),
      did: `slowed to ${printRate(mostCPerHour, unit)} up to ${printTemperature(toC, unit)}`
    };
  };
}
function gentlest(unit, isSlowEnough) {
  let low = 1;
  let high = FASTEST_C_PER_HOUR;
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (isSlowEnough(rateDown(middle, unit))) low = middle;
    else high = middle;
  }
  return rateDown(low, unit);
}
function evidence(findings, name) {
  const found = findings[0]?.evidence.find((item) => item.name === name);
  if (found === void 0) throw new RangeError(`mends: no evidence {${name}}`);
  return found.value;
}
function withHold(schedule, hold) {
  const { atC, holdSeconds, why } = hold;
  let fromC = schedule.startC;
  for (const [index, segment] of schedule.segments.entries()) {
    if (segment.toC <= fromC) return null;
    const rest = schedule.segments.slice(index + 1);
    const before = schedule.segments.slice(0, index);
    if (segment.toC >= 65 && segment.toC <= 100)
      return [
        ...before,
        { ...segment, holdSeconds: segment.holdSeconds + holdSeconds, why: segment.why ?? why },
        ...rest
      ];
    if (segment.toC > atC && fromC < atC)
      return [...before, { ...segment, toC: atC, holdSeconds, why }, segment, ...rest];
    fromC = segment.toC;
  }
  return null;
}
function asFastAsItCan(segment, startC, keepsUpToC) {
  if (segment.rateCPerHour === "free" || segment.toC <= startC || keepsUpToC >= segment.toC)
    return [segment];
  const full = { ...segment, rateCPerHour: "free", why: "all the kiln gives" };
  return keepsUpToC - startC < 2 ? [full] : [{ ...segment, toC: keepsUpToC, holdSeconds: 0 }, full];
}
function keptUpTo(segment, startC, kiln) {
  const rate = segment.rateCPerHour;
  let keptC = startC;
  if (rate === "free") return keptC;
  while (keptC < segment.toC && kiln.fullHeatingCPerHour(keptC + 1) >= rate) keptC += 1;
  return Math.min(keptC, segment.toC);
}
function lateFrom(schedule, learned2) {
  const { segments } = predictFiring(learned2, schedule);
  return new Map(
    segments.flatMap(
      ({ segment, behindSeconds, behindFromC }) => behindFromC === null || behindSeconds <= LATE_SECONDS ? [] : [[segment, behindFromC]]
    )
  );
}

// src/core/schedule/kilnReach.ts
var SLOWEST_C_PER_HOUR = 15;
var STEP_C = 5;
var HAIR_K = 0.02;
function kilnReachC(kiln) {
  if (kiln.learned !== void 0) return simulatedReachC(kiln.learned);
  let reachC = 0;
  while (reachC < HOTTEST_C && kiln.fullHeatingCPerHour(reachC + STEP_C) >= SLOWEST_C_PER_HOUR)
    reachC += STEP_C;
  return reachC;
}
function simulatedReachC(learned2) {
  const { curve } = predictFiring(learned2, {
    segments: [{ toC: HOTTEST_C, rateCPerHour: "free", holdSeconds: 0 }]
  });
  const { timesSeconds, tempsC } = curve;
  let reachC = tempsC[0];
  for (let i = 1; i < tempsC.length; i++) {
    const climbedC = tempsC[i] - tempsC[i - 1];
    const hours2 = (timesSeconds[i] - timesSeconds[i - 1]) / 3600;
    if (climbedC / hours2 < SLOWEST_C_PER_HOUR) break;
    reachC = tempsC[i];
  }
  return Math.floor((reachC + HAIR_K) / STEP_C) * STEP_C;
}

// src/core/schedule/solvePeak.ts
var CLOSE_ENOUGH_K = 2e-3;
var APART_K = 1;
function solvePeak(input) {
  const { schedule, cone } = input;
  const peak = peakSegment(schedule);
  if (peak === null)
    return failed({
      code: "schedule/no-peak",
      what: "no segment heats",
      where: schedule.title,
      expected: "a segment that climbs to the peak",
      fix: "add a segment whose target is above the start"
    });
  const topIndex = topHoldIndex(schedule) ?? peak.index;
  const marginAt = (peakC) => aimMarginK(withPeak(schedule, peak.index, peakC), { ...input, topIndex });
  let low = peak.floorC + APART_K;
  let high = HOTTEST_C;
  const atLow = marginAt(low);
  const atHigh = marginAt(high);
  if (atLow === null || atHigh === null)
    return failed({
      code: "schedule/no-model",
      what: `there is no model of cone ${cone} among ${schedule.series} cones`,
      where: schedule.title,
      expected: "a cone whose end points are published for several rates",
      fix: "set the peak by hand and judge it by witness cones"
    });
  if (atLow > 0 || atHigh < 0) {
    const rest = atLow > 0 ? "the rest of the schedule is too hot" : "the ramp is too fast for it";
    return failed({
      code: "schedule/no-such-peak",
      what: `no peak makes cone ${cone}: ${rest}`,
      where: schedule.title,
      expected: `a peak between ${printTemperature(low, schedule.unit)} and ${printTemperature(high, schedule.unit)}`,
      fix: "change the neighbouring segments or the cone"
    });
  }
  while (high - low > CLOSE_ENOUGH_K) {
    const middle = (low + high) / 2;
    if (marginAt(middle) < 0) low = middle;
    else high = middle;
  }
  return ok({ ...withPeak(schedule, peak.index, high), cone });
}
function withPeak(schedule, index, toC) {
  return {
    ...schedule,
    segments: schedule.segments.map((segment, i) => i === index ? { ...segment, toC } : segment)
  };
}

// src/core/schedule/tidied.ts
var SAME_C_PER_HOUR = 1e-6;
var LONGEST_WHY = 300;
function wholeSchedule(schedule) {
  const { unit, startC } = schedule;
  let fromC = startC;
  const segments = [];
  let wasC = startC;
  for (const segment of schedule.segments) {
    const rising = segment.toC > wasC;
    wasC = segment.toC;
    const last = segments.at(-1);
    const toC = targetOf(segment.toC, { unit, rising, isFirst: last === void 0 });
    if (last !== void 0 && Math.abs(toC - fromC) < SAME_C_PER_HOUR) {
      segments[segments.length - 1] = {
        ...last,
        holdSeconds: last.holdSeconds + segment.holdSeconds,
        why: bothReasons(last, segment)
      };
      continue;
    }
    segments.push({ ...segment, toC, rateCPerHour: wholeRate(segment.rateCPerHour, unit) });
    fromC = toC;
  }
  return { ...schedule, segments };
}
function tidied(schedule) {
  const joined2 = [];
  let fromC = schedule.startC;
  let wasRising = false;
  for (const segment of schedule.segments) {
    const rising = segment.toC > fromC;
    const last = joined2.at(-1);
    fromC = segment.toC;
    if (last !== void 0 && rising === wasRising && goOnAlike(last, segment))
      joined2[joined2.length - 1] = { ...segment, why: bothReasons(last, segment) };
    else joined2.push(segment);
    wasRising = rising;
  }
  return joined2.length === schedule.segments.length ? schedule : { ...schedule, segments: joined2 };
}
function targetOf(tempC, by) {
  const { unit, rising, isFirst } = by;
  if (!isFirst) return temperatureNear(tempC, unit);
  return rising ? temperatureUp(tempC, unit) : temperatureDown(tempC, unit);
}
function wholeRate(rate, unit) {
  return typeof rate === "string" ? rate : Math.sign(rate) * rateDown(Math.abs(rate), unit);
}
function goOnAlike(last, next) {
  if (last.holdSeconds > 0) return false;
  const [a, b] = [last.rateCPerHour, next.rateCPerHour];
  if (typeof a === "string" || typeof b === "string") return a === b;
  return Math.abs(a - b) < SAME_C_PER_HOUR;
}
function bothReasons(first, second) {
  const reasons = [...new Set([first.why, second.why].filter((why) => why !== null))];
  const both = reasons.join("; ");
  return reasons.length === 0 ? null : both.length <= LONGEST_WHY ? both : reasons[0];
}

// src/core/schedule/solveSchedule.ts
var LONGEST_HOLD_SECONDS = 6 * 3600;
var SLOWEST_C_PER_HOUR2 = 15;
var FASTEST_C_PER_HOUR2 = 300;
var HOLD_STEP_SECONDS = 60;
function solveSchedule(input) {
  const whole = { ...input, schedule: wholeSchedule(input.schedule) };
  const solved2 = { peak: peakFor, hold: holdFor, rate: rateFor }[input.solve](whole);
  return solved2.ok ? ok(tidied(solved2.value)) : solved2;
}
function peakFor(input) {
  const solved2 = solvePeak(input);
  if (!solved2.ok) return solved2;
  const peakC = temperatureUp(highestC(solved2.value), solved2.value.unit);
  const reachC = kilnReachC(input.kiln ?? REFERENCE_KILN);
  if (peakC > reachC) return failed(tooWeak(input, peakC, reachC));
  return ok(withPeakSegment(solved2.value, (segment) => ({ ...segment, toC: peakC })));
}
function holdFor(input) {
  const { schedule, cone } = input;
  const held = (holdSeconds) => withPeakSegment(schedule, (segment) => ({ ...segment, holdSeconds }));
  const margin = (seconds2) => aimMarginK(held(seconds2), input);
  const without = margin(0);
  const longest = margin(LONGEST_HOLD_SECONDS);
  if (without === null || longest === null || peakSegment(schedule) === null) return peakFor(input);
  if (without > 0 || longest < 0)
    return failed({
      code: "schedule/no-such-hold",
      what: without > 0 ? `no hold makes cone ${cone}: without any the schedule reaches ${labelOf(held(0), input)}` : `no hold makes cone ${cone}: with ${printDuration(LONGEST_HOLD_SECONDS)} the schedule reaches ${labelOf(held(LONGEST_HOLD_SECONDS), input)}`,
      where: schedule.title,
      expected: `a hold up to ${printDuration(LONGEST_HOLD_SECONDS)}`,
      fix: nearestPeak(input)
    });
  const seconds = rootOf(
    (value) => margin(value),
    { low: 0, high: LONGEST_HOLD_SECONDS },
    0.5
  );
  const whole = Math.ceil(seconds / HOLD_STEP_SECONDS) * HOLD_STEP_SECONDS;
  return ok({ ...held(whole), cone });
}
function rateFor(input) {
  const { schedule, cone } = input;
  const peak = peakSegment(schedule);
  const climbing = (rateCPerHour) => withPeakSegment(schedule, (segment) => ({ ...segment, rateCPerHour }));
  const margin = (rate) => aimMarginK(climbing(rate), input);
  const fastest = fastestClimb(input);
  const slow = margin(SLOWEST_C_PER_HOUR2);
  const fast = margin(fastest);
  if (slow === null || fast === null || peak === null) return peakFor(input);
  if (slow < 0 || fast > 0) {
    const rate = slow < 0 ? SLOWEST_C_PER_HOUR2 : fastest;
    const at2 = printRate(rate, schedule.unit);
    return failed({
      code: "schedule/no-such-rate",
      what: `no rate of the last climb makes cone ${cone}: even at ${at2} the schedule reaches ${labelOf(climbing(rate), input)}`,
      where: schedule.title,
      expected: `a climb to the peak at ${printRate(SLOWEST_C_PER_HOUR2, schedule.unit)} to ${printRate(fastest, schedule.unit)}`,
      fix: nearestPeak(input)
    });
  }
  const slowness = rootOf(
    (value) => margin(1 / value),
    { low: 1 / fastest, high: 1 / SLOWEST_C_PER_HOUR2 },
    1e-7
  );
  return ok({ ...climbing(rateDown(1 / slowness, schedule.unit)), cone });
}
function rootOf(rising, between2, closeEnough) {
  let { low, high } = between2;
  while (high - low > closeEnough) {
    const middle = (low + high) / 2;
    if (rising(middle) < 0) low = middle;
    else high = middle;
  }
  return high;
}
function fastestClimb(input) {
  const speed = freeSpeed(input.kiln ?? REFERENCE_KILN, highestC(input.schedule), true);
  return Math.min(FASTEST_C_PER_HOUR2, Math.max(SLOWEST_C_PER_HOUR2 + 1, speed));
}
function nearestPeak(input) {
  const solved2 = peakFor(input);
  if (!solved2.ok) return solved2.problems[0]?.fix ?? "";
  return `--solve peak, which gives ${printTemperature(highestC(solved2.value), input.schedule.unit)}`;
}
function tooWeak(input, peakC, reachC) {
  const { schedule, cone } = input;
  const atReach = withPeakSegment(schedule, (segment) => ({ ...segment, toC: reachC }));
  const hotEnough = peakSegment(atReach)?.index === peakSegment(schedule)?.index;
  const gets = hotEnough ? `, which makes ${labelOf(atReach, input)} here` : "";
  return {
    code: "schedule/kiln-too-weak",
    what: `cone ${cone} needs ${printTemperature(peakC, schedule.unit)}, and the kiln still climbs at ${printRate(SLOWEST_C_PER_HOUR2, schedule.unit)} up to ${printTemperature(reachC, schedule.unit)} only${gets}`,
    where: schedule.title,
    expected: "a peak that the kiln reaches with power to spare",
    fix: "ask for a softer cone, or a longer hold below; by common practice new elements, a lighter load and fewer shelves help the kiln"
  };
}
function labelOf(schedule, input) {
  const { curve } = expandSchedule(schedule, input.kiln === void 0 ? {} : { kiln: input.kiln });
  return kilnHeatworkOf(curve, { ...input, series: schedule.series }).position.label;
}
function withPeakSegment(schedule, change2) {
  const at2 = peakSegment(schedule)?.index;
  return {
    ...schedule,
    segments: schedule.segments.map((segment, index) => index === at2 ? change2(segment) : segment)
  };
}
function highestC(schedule) {
  return Math.max(...schedule.segments.map((segment) => segment.toC));
}

// src/core/schedule/mends/peak.ts
var NEAR_PEAK_K = 5;
var CHART_C_PER_HOUR = 150;
var MEND_PEAK_HOLD = {
  topic: "hold at the peak",
  mend: (schedule) => {
    const peakC = highestC2(schedule);
    const near = (toC) => toC >= peakC - NEAR_PEAK_K;
    const sum = schedule.segments.reduce(
      (seconds, { toC, holdSeconds }) => seconds + (near(toC) ? holdSeconds : 0),
      0
    );
    const share = LONG_HOLD_SECONDS / sum;
    return {
      ok: true,
      schedule: {
        ...schedule,
        segments: schedule.segments.map(
          (segment) => near(segment.toC) && segment.holdSeconds > 0 ? {
            ...segment,
            holdSeconds: Math.floor(segment.holdSeconds * share / 60) * 60,
            why: `held for ${printDuration(LONG_HOLD_SECONDS)} at most: glazes run`
          } : segment
        )
      },
      did: `hold at the peak shortened to ${printDuration(LONG_HOLD_SECONDS)}`
    };
  }
};
var MEND_LAST_HUNDRED = {
  topic: "the last 100 degrees",
  mend: (schedule, findings, { kiln }) => {
    const { unit } = schedule;
    const rate = findings[0]?.evidence.find((item) => item.name === "rate")?.value ?? 0;
    const peakC = highestC2(schedule);
    const mostCPerHour = rateDown(CHART_C_PER_HOUR, unit);
    if (rate < mostCPerHour)
      return {
        ok: false,
        why: "The last climb is slower than the cone chart goes: a hold stands in it, or the kiln gives no more. Trust the witness cones."
      };
    const why = `the last climb inside the cone chart: ${printRate(mostCPerHour, unit)} at most`;
    return {
      ok: true,
      schedule: paced(
        schedule,
        { fromC: temperatureUp(peakC - 101, unit), toC: peakC, mostCPerHour, why },
        kiln
      ),
      did: `last climb slowed to ${printRate(mostCPerHour, unit)}`
    };
  }
};
var MEND_CONE = {
  topic: "cone wanted",
  mend: (schedule, _, { kiln, offsetK }) => {
    const { cone, unit } = schedule;
    const solved2 = cone === null ? null : solveSchedule({ schedule, cone, solve: "peak", kiln, offsetK });
    const peak = peakSegment(schedule);
    if (solved2 === null || peak === null)
      return { ok: false, why: "The schedule names no cone, or has no climb to a peak." };
    if (!solved2.ok) {
      const [problem] = solved2.problems;
      return {
        ok: false,
        why: `Cone ${cone}: ${problem?.what}. What would help: ${problem?.fix}.`
      };
    }
    const peakC = temperatureUp(highestC2(solved2.value), unit);
    return {
      ok: true,
      schedule: {
        ...schedule,
        segments: schedule.segments.map(
          (segment, index) => index === peak.index ? { ...segment, toC: peakC, why: `peak for cone ${cone}` } : segment
        )
      },
      did: `peak moved from ${printTemperature(highestC2(schedule), unit)} to ${printTemperature(peakC, unit)}`
    };
  }
};
function highestC2(schedule) {
  return Math.max(...schedule.segments.map((segment) => segment.toC));
}

// src/core/schedule/repairSchedule.ts
var MENDS = [
  MEND_START,
  MEND_DRYING,
  MEND_QUARTZ_HEATING,
  MEND_CARBON,
  MEND_REACH,
  MEND_PEAK_HOLD,
  MEND_LAST_HUNDRED,
  ...MEND_COOLING,
  MEND_CONE
];
var MOST_ROUNDS = 6;
function repairSchedule(input) {
  const before = input.schedule;
  const kiln = input.kiln ?? REFERENCE_KILN;
  const limitFor = input.limitFor ?? limitsFor(before.ware);
  const context = { kiln, limitFor, offsetK: input.offsetK ?? null };
  const judge = (schedule) => draftSchedule({ ...input, schedule, start: null, findingsOnly: true }).findings;
  const steps = [];
  const start = wholeSchedule(before);
  let round = { after: start, findings: judge(start), steps, given: /* @__PURE__ */ new Map() };
  for (let k = 0; k < MOST_ROUNDS; k++) {
    round = mendedOnce({ ...round, steps: [] }, { context, judge });
    if (round.steps.length === 0) break;
    steps.push(...round.steps);
  }
  const { findings, given } = round;
  const after = tidied(round.after);
  return {
    before,
    after,
    steps,
    limits: [
      ...findings.flatMap((finding2) => {
        const why = isMended(finding2) ? given.get(finding2.topic) : void 0;
        return why === void 0 ? [] : [`${statementText(finding2, before.unit)} ${why}`];
      }),
      ...kilnLimits({ after, steps, findings, kiln, limitFor })
    ],
    ...cost(before, after, kiln)
  };
}
function mendedOnce(from, by) {
  const steps = [];
  const given = /* @__PURE__ */ new Map();
  let { after, findings } = from;
  for (const { topic, mend } of MENDS) {
    const [worst, ...others] = findings.filter((each) => each.topic === topic && isMended(each));
    if (worst === void 0) continue;
    const mended = mend(after, [worst, ...others], by.context);
    const later = mended.ok ? by.judge(mended.schedule) : findings;
    if (!mended.ok || isTrouble(later, topic)) {
      given.set(topic, mended.ok ? "No change of the schedule alone brings it under." : mended.why);
      continue;
    }
    steps.push({
      topic,
      severity: worst.severity,
      reason: statementText(worst, after.unit),
      did: mended.did,
      ...cost(after, mended.schedule, by.context.kiln)
    });
    after = mended.schedule;
    findings = later;
  }
  return { after, findings, steps, given };
}
function isTrouble(findings, topic) {
  return findings.some((finding2) => finding2.topic === topic && isMended(finding2));
}
function isMended({ topic, severity, advice: advice2 }) {
  return severity !== "note" || topic === MEND_CONE.topic && advice2 !== "";
}
function cost(before, after, kiln) {
  const [old, mended] = [before, after].map((schedule) => {
    const expansion = expandSchedule(schedule, { kiln });
    return {
      seconds: expansion.timeline.at(-1)?.endSeconds ?? 0,
      kWh: energyKWh({ schedule, kiln })
    };
  });
  return {
    costSeconds: mended.seconds - old.seconds,
    costKWh: mended.kWh === null || old.kWh === null ? null : mended.kWh - old.kWh
  };
}
function kilnLimits(judged2) {
  const { after, steps, findings, kiln, limitFor } = judged2;
  const { unit } = after;
  const powered = COOLING_BANDS.flatMap((band) => {
    const limit = limitFor(band)?.limitCPerHour ?? null;
    const natural = freeSpeed(kiln, band.highC, false);
    const isSlowed = steps.some((step) => step.topic === coolingTopic(band));
    if (!isSlowed || limit === null || natural <= limit) return [];
    return [
      `At the ${band.name} the kiln falls at ${printRate(natural, unit)} by itself, above the limit of ${printRate(limit, unit)}: it has to be held back with the elements on. A controller that cannot programme a fall cannot do this.`
    ];
  });
  const slow = findings.filter((finding2) => finding2.topic === "reach while cooling").map(
    (finding2) => `${statementText(finding2, unit)} That cannot be hurried; an open lid or a fan would chill the ware unevenly.`
  );
  return [...powered, ...slow];
}

// src/core/schedule/wishedPace.ts
function keptTo(schedule, by) {
  return by.paces.reduce((each, pace2) => {
    const { unit } = each;
    const { fromC, toC, mostCPerHour } = pace2;
    const rising = toC > fromC;
    const roomK = mostCPerHour * WINDOW_REACH_HOURS;
    const why = `no faster than ${printRate(mostCPerHour, unit)} here, as asked`;
    return paced(
      rising ? each : untilCool2(each),
      {
        fromC: rising ? temperatureDown(fromC - roomK, unit) : temperatureUp(fromC + roomK, unit),
        toC: rising ? temperatureUp(toC + roomK, unit) : temperatureDown(toC - roomK, unit),
        mostCPerHour,
        why
      },
      by.kiln
    );
  }, schedule);
}
var FORM = /^(.+?)\s+from\s+(.+?)\s+to\s+(.+)$/i;
function parsePace(text, context) {
  const parts = FORM.exec(text.trim());
  if (parts === null) return failed(notAPace(text, context.where, "it has no rate, from and to"));
  const [, rate = "", from = "", to = ""] = parts;
  const most = parseRate(rate, context);
  const [fromC, toC] = [parseTemperature(from, context), parseTemperature(to, context)];
  if (!most.ok || !fromC.ok || !toC.ok)
    return failed(...[most, fromC, toC].flatMap((part) => part.ok ? [] : part.problems));
  if (most.value <= 0) return failed(notAPace(text, context.where, "its rate is not above 0"));
  if (Math.abs(fromC.value - toC.value) < 1)
    return failed(notAPace(text, context.where, "it goes nowhere"));
  return ok({ fromC: fromC.value, toC: toC.value, mostCPerHour: most.value });
}
function notAPace(text, where, why) {
  return {
    code: "schedule/pace",
    where,
    what: `"${text.trim().slice(0, 60)}" is no rate with where it holds: ${why}`,
    expected: "the most that a stretch may be travelled at, in the order of travel",
    fix: `${where} "60 C/h from 620 C to 520 C"`
  };
}
function paceWords(pace2, unit) {
  const degrees = (tempC) => `${Math.round(unit === "C" ? tempC : fahrenheitFromCelsius(tempC))}${unit}`;
  const rate = unit === "C" ? pace2.mostCPerHour : fahrenheitDeltaFromCelsiusDelta(pace2.mostCPerHour);
  return `${Number(rate.toFixed(1))}${unit}/h from ${degrees(pace2.fromC)} to ${degrees(pace2.toC)}`;
}

// src/core/schedule/changedSchedule.ts
function changedSchedule(schedule, by) {
  const { paces, solve, repair: mends, ...known } = by;
  const kiln = by.kiln ?? REFERENCE_KILN;
  const kept = keptTo(paces.length > 0 ? wholeSchedule(schedule) : schedule, { paces, kiln });
  const repair = mends ? repairSchedule({ schedule: kept, ...known }) : null;
  const mended = repair?.after ?? (paces.length > 0 ? tidied(kept) : kept);
  if (solve === null) return ok({ after: mended, repair });
  const solved2 = solveSchedule({
    schedule: mended,
    cone: solve.cone,
    solve: solve.part,
    ...known
  });
  return solved2.ok ? ok({ after: solved2.value, repair }) : solved2;
}

// src/core/schedule/holdProblems.ts
var BELOW_PEAK_K = 20;
var COOLEST_HOLD_C = UNLOAD_C;
function holdTooHot(hold, peakC, unit) {
  const near = hold.atC > peakC - BELOW_PEAK_K;
  const at2 = `${printDuration(hold.seconds)} at ${printTemperature(hold.atC, unit)}`;
  const peak = printTemperature(peakC, unit);
  return {
    code: "schedule/hold-too-hot",
    what: near ? `a hold of ${at2} on the way down, and the peak of this cone is ${peak}` : `a hold of ${at2} on the way down makes more of the cone than it may: no peak above it is left`,
    where: "--cooling",
    expected: near ? `a hold at least ${unit === "C" ? "20 \xB0C" : "36 \xB0F"} below the peak, for its heat works on the cone too` : `a hold that leaves the peak above it, which is ${peak} before the hold is counted`,
    fix: "a cooler hold"
  };
}
function holdTooCool(cooling, unit) {
  if (cooling.kind !== "hold" || cooling.atC > COOLEST_HOLD_C) return [];
  return [
    {
      code: "schedule/hold-too-cool",
      what: `a hold at ${printTemperature(cooling.atC, unit)} on the way down`,
      where: "--cooling",
      expected: `a temperature above ${printTemperature(COOLEST_HOLD_C, unit)}, where the schedule ends`,
      fix: `crystals in a glaze want a hold like --cooling "hold ${unit === "C" ? "900C" : "1650F"} ${printDuration(cooling.seconds)}"`
    }
  ];
}

// src/core/schedule/newCooling.ts
var SLOW_C_PER_HOUR2 = 50;
var CRYSTALS_FROM_C = 700;
var ROOM_K = 10;
function cooled(schedule, by) {
  const { cooling } = by;
  const held = cooling.kind === "hold" ? [
    {
      toC: cooling.atC,
      rateCPerHour: "free",
      holdSeconds: cooling.seconds,
      why: cooling.atC >= CRYSTALS_FROM_C ? "crystals grow in the glaze" : "the ware evens out"
    }
  ] : [];
  const start = untilCool2({ ...schedule, segments: [...schedule.segments, ...held] });
  const slow = cooling.kind === "slow" ? slowly(start, by) : start;
  return {
    ...slow,
    segments: slow.segments.map(
      (segment) => segment.why === null ? { ...segment, why: "falls by itself, lid shut" } : segment
    )
  };
}
function slowly(schedule, by) {
  const { unit } = schedule;
  return COOLING_BANDS.reduce((each, band) => {
    const guide = by.limitFor(band);
    if (guide === null) return each;
    const { limitCPerHour, meantFor } = guide;
    const eased = by.share < 1 ? Math.min(SLOW_C_PER_HOUR2, limitCPerHour * by.share) : limitCPerHour;
    const mostCPerHour = rateDown(eased, unit);
    const roomK = Math.max(ROOM_K, mostCPerHour * WINDOW_REACH_HOURS);
    const natural = freeSpeed(by.kiln, band.highC, false);
    const bears = `${printRate(limitCPerHour, unit)} is the guide for ${meantFor}`;
    const unneeded = natural <= limitCPerHour ? `; it would not need it, for by itself the kiln falls at ${printRate(natural, unit)} here` : "";
    return paced(
      each,
      {
        fromC: temperatureUp(band.highC + roomK, unit, 10),
        toC: temperatureDown(band.lowC - roomK, unit, 10),
        mostCPerHour,
        why: `${band.name}, slow as asked: ${bears}${unneeded}`,
        isAsked: true
      },
      by.kiln
    );
  }, schedule);
}

// src/core/schedule/newHeating.ts
var LAST_CLIMB_K = 110;
var LAST_CLIMB_C_PER_HOUR = 60;
var THICK_MM2 = 15;
var SCULPTURE_MM2 = 25;
var SPEED_SHARE = 0.9;
var NEAR_K = 20;
var LEG_K = 50;
var SURE_SHARE = 0.9;
var WORTH_SECONDS = 600;
function climb(input) {
  const { peakC, raw, damp } = input;
  const lastC = peakC - LAST_CLIMB_K;
  const staged = raw ? rawStages(input) : bisquedStages(input);
  const early = staged.filter((_, index) => (staged[index - 1]?.toC ?? 0) < lastC - NEAR_K);
  const stages = [
    ...early.map((stage) => ({ ...stage, toC: Math.min(stage.toC, lastC) })),
    ...(early.at(-1)?.toC ?? 0) >= lastC - NEAR_K ? [] : [
      {
        toC: lastC,
        rateCPerHour: (raw || input.demanding ? 110 : 150) * input.factor,
        holdMinutes: 0,
        why: "little is at stake here, so the climb is quick"
      }
    ],
    {
      toC: peakC,
      rateCPerHour: LAST_CLIMB_C_PER_HOUR,
      holdMinutes: input.thickestMm > 12 ? 20 : 15,
      why: input.charted ? "the last climb at a rate of the cone chart; the hold evens out the ware" : "a steady last climb, slower than the chart of these cones; the hold evens out the ware"
    }
  ];
  let fromC = 20;
  const segments = stages.flatMap((stage, index) => {
    const startC = fromC;
    const isPeak = index === stages.length - 1;
    const toC = isPeak ? stage.toC : temperatureDown(stage.toC, input.unit, 5);
    fromC = toC;
    return fitted({ ...stage, toC }, startC, input);
  });
  const state = damp ? "damp" : raw ? "bone dry" : "glazed on bisque";
  return { segments, state };
}
function rawStages(input) {
  const { damp, thickestMm } = input;
  const thick = thickestMm >= THICK_MM2;
  const slow = thick || damp;
  const dryHours = thickestMm >= SCULPTURE_MM2 ? 6 : damp ? Math.min(4, Math.max(1, thickestMm / 6)) : thick ? 1 : 0.25;
  return [
    {
      toC: 80,
      rateCPerHour: slow ? 30 : 60,
      holdMinutes: Math.ceil(dryHours * 60 / 15) * 15,
      why: `${damp ? "damp" : thick ? "thick" : "the"} ware dries below boiling`
    },
    {
      toC: 130,
      rateCPerHour: slow ? 25 : 50,
      holdMinutes: 0,
      why: "the last free water leaves as steam"
    },
    {
      toC: 650,
      rateCPerHour: slow || input.demanding ? 60 : 100,
      holdMinutes: 0,
      why: "bound water leaves, and quartz inverts on the way up"
    },
    {
      toC: 900,
      rateCPerHour: slow || input.demanding ? 60 : 85,
      holdMinutes: 0,
      why: "carbon and sulphur burn out"
    }
  ];
}
function bisquedStages(input) {
  const { demanding, thickestMm } = input;
  return [
    {
      toC: 110,
      rateCPerHour: demanding ? 50 : 60,
      holdMinutes: thickestMm > 12 ? 45 : 20,
      why: "water of the glaze leaves"
    },
    ...demanding ? [
      {
        toC: 650,
        rateCPerHour: 90,
        holdMinutes: 0,
        why: "quartz inversion of thick or wide ware on the way up"
      }
    ] : []
  ];
}
function fitted(stage, fromC, by) {
  const { unit, kiln } = by;
  const { toC, why } = stage;
  const holdSeconds = stage.holdMinutes * 60;
  const rateCPerHour = rateDown(stage.rateCPerHour, unit, 5);
  const able = (tempC) => SPEED_SHARE * kiln.fullHeatingCPerHour(tempC);
  if (able(toC) >= rateCPerHour) return [{ toC, rateCPerHour, holdSeconds, why }];
  const slowCPerHour = rateDown(Math.max(1, able(toC)), unit);
  const slow = {
    toC,
    rateCPerHour: slowCPerHour,
    holdSeconds,
    why: `${why}; no faster, for the kiln loses its breath here`
  };
  let breathC = fromC;
  while (breathC + LEG_K < toC && able(breathC + LEG_K) >= rateCPerHour) breathC += LEG_K;
  const legC = temperatureDown(breathC, unit, 10);
  const gainedSeconds = (legC - fromC) * (1 / slowCPerHour - 1 / rateCPerHour) * 3600;
  const isWorthIt = slowCPerHour < SURE_SHARE * rateCPerHour && gainedSeconds > WORTH_SECONDS;
  return legC - fromC < LEG_K || !isWorthIt ? [slow] : [{ toC: legC, rateCPerHour, holdSeconds: 0, why }, slow];
}

// src/core/schedule/tooLittleTime.ts
var HOLD_STEP_SECONDS2 = 900;
var ALIKE_SECONDS = 60;
var WAYS = {
  natural: "natural cooling",
  slow: "slow cooling",
  hold: "this hold on the way down"
};
function tooLittleTime(short) {
  const { cooling, unit, kiln, takesSeconds, withinSeconds } = short;
  const fall2 = printRate(kiln.naturalCoolingCPerHour(500), unit);
  return {
    code: "schedule/too-little-time",
    what: `this cone with ${WAYS[cooling.kind]} takes ${printDuration(takesSeconds)} from the start to ${printTemperature(100, unit)} at the least, not ${printDuration(withinSeconds)}`,
    where: "--within",
    expected: `a limit that ware and kiln allow; at ${printTemperature(500, unit)} the kiln falls at ${fall2} by itself; that is ${kiln.basis}`,
    fix: nearestWishes(short)
  };
}
function nearestWishes(short) {
  const { naturalSeconds, takesSeconds, withinSeconds } = short;
  const longer = `--within ${hours(takesSeconds)}`;
  if (naturalSeconds <= withinSeconds) {
    const held = longestHold(short);
    const first = held ?? `--cooling natural, which takes ${printDuration(naturalSeconds)} at the least`;
    return `${first}; or ${longer}`;
  }
  return naturalSeconds < takesSeconds - ALIKE_SECONDS ? `${longer}; or --cooling natural --within ${hours(naturalSeconds)}` : longer;
}
function longestHold({ cooling, takesSeconds, withinSeconds, canHold, unit }) {
  if (cooling.kind !== "hold") return null;
  const rest = cooling.seconds - (takesSeconds - withinSeconds);
  const seconds = Math.floor(rest / HOLD_STEP_SECONDS2) * HOLD_STEP_SECONDS2;
  if (seconds < HOLD_STEP_SECONDS2 || !canHold(seconds)) return null;
  const at2 = printTemperature(cooling.atC, unit).replace(" \xB0", "");
  return `--cooling "hold ${at2} ${printDuration(seconds)}"`;
}
function hours(seconds) {
  return `${Math.ceil(seconds / 3600)}h`;
}

// src/core/schedule/wareSizeProblems.ts
var THINNEST_MM = 1;
var THICKEST_MM = 100;
var WIDEST_MM = 3e3;
function wareSizeProblems(ware) {
  const { wallMm, baseMm, widestMm } = ware;
  const thick = [
    ...thicknessProblems("--wall", wallMm),
    ...baseMm === wallMm ? [] : thicknessProblems("--base", baseMm)
  ];
  const thickestMm = Math.max(wallMm ?? 0, baseMm ?? 0);
  if (thick.length > 0 || widestMm === null) return thick;
  if (widestMm >= thickestMm && widestMm <= WIDEST_MM) return [];
  return [
    {
      code: "schedule/ware-width",
      what: `a piece ${Math.round(widestMm)} mm wide with clay ${Math.round(thickestMm)} mm thick`,
      where: "--width",
      expected: `a width from its thickness, ${Math.round(thickestMm)} mm, to ${WIDEST_MM} mm`,
      fix: "give the widest dimension of the largest piece, like --width 150mm"
    }
  ];
}
function thicknessProblems(where, mm) {
  if (mm === null || mm >= THINNEST_MM && mm <= THICKEST_MM) return [];
  const thin = mm < THINNEST_MM;
  return [
    {
      code: "schedule/ware-thickness",
      what: `clay ${Number(mm.toPrecision(3))} mm thick`,
      where,
      expected: `a thickness from ${THINNEST_MM} to ${THICKEST_MM} mm; a bare number is in millimetres`,
      fix: thin ? `inches want their unit, like ${where} 1/4in; the thinnest that can be drafted is ${where} ${THINNEST_MM}` : `check the number; the thickest that can be drafted is ${where} ${THICKEST_MM}`
    }
  ];
}

// src/core/schedule/newSchedule.ts
var SERIES_WORDS = {
  "self-supporting": "cone",
  "self-supporting-iron-free": "iron-free cone",
  large: "large cone",
  "large-iron-free": "large iron-free cone",
  small: "small cone"
};
var START_C = 20;
var GLAZE_PEAK_C = 1100;
var PLAIN_RAMP = { toC: HOTTEST_C, rateCPerHour: 60, holdSeconds: 900, why: null };
function newSchedule(input) {
  const { cooling, ware } = input;
  const wrong = [...wareSizeProblems(ware), ...holdTooCool(cooling, input.unit)];
  if (wrong.length > 0) return failed(...wrong);
  const wanted = drafted(input, { cooling, ease: EASY });
  if (!wanted.ok) return failed(...wanted.problems.map((problem) => withWayOut(problem, input)));
  if (fits(wanted.value, input)) return wanted;
  const tight = drafted(input, { cooling, ease: TIGHT });
  if (!tight.ok || fits(tight.value, input)) return tight;
  return failed(tooLittleTime(timesOf(input, tight.value)));
}
function timesOf(input, wished) {
  const { cooling, unit, withinSeconds } = input;
  const natural = drafted(input, { cooling: { kind: "natural" }, ease: TIGHT });
  const takesSeconds = totalSeconds(wished, input);
  return {
    cooling,
    unit,
    withinSeconds: withinSeconds ?? 0,
    takesSeconds,
    naturalSeconds: natural.ok ? totalSeconds(natural.value, input) : takesSeconds,
    kiln: input.kiln ?? REFERENCE_KILN,
    canHold: (seconds) => {
      if (cooling.kind !== "hold") return false;
      const shorter = drafted(input, { cooling: { ...cooling, seconds }, ease: TIGHT });
      return shorter.ok && fits(shorter.value, input);
    }
  };
}
function withWayOut(problem, input) {
  const { cooling, series } = input;
  if (problem.code === "schedule/hold-too-hot" && cooling.kind === "hold")
    return { ...problem, fix: coolerHold(input, cooling) };
  if (problem.code !== "schedule/kiln-too-weak") return { ...problem, where: "--cone" };
  const reached2 = wholeCones(series).filter((cone) => coneIndex(cone) < coneIndex(input.cone)).findLast((cone) => drafted({ ...input, cone }, { cooling, ease: EASY }).ok);
  const nearest = reached2 === void 0 ? "" : `--cone ${reached2}, which it reaches; or `;
  return {
    ...problem,
    where: "--cone",
    what: `${problem.what}; that is ${(input.kiln ?? REFERENCE_KILN).basis}`,
    fix: `${nearest}help the kiln: by common practice new elements, a lighter load and fewer shelves`
  };
}
function coolerHold(input, { atC, seconds }) {
  const { unit } = input;
  const works = (tempC) => drafted(input, { cooling: { kind: "hold", atC: tempC, seconds }, ease: EASY }).ok;
  let low = Math.ceil(COOLEST_HOLD_C / 10);
  let high = Math.ceil(Math.min(atC, HOTTEST_C) / 10);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (works(temperatureDown(10 * middle, unit, 10))) low = middle;
    else high = middle;
  }
  const nearestC = temperatureDown(10 * low, unit, 10);
  return `--cooling "hold ${printTemperature(nearestC, unit).replace(" \xB0", "")} ${printDuration(seconds)}", the hottest that leaves the peak above it`;
}
var EASY = { coolingShare: 0.8, climbFactor: 1 };
var TIGHT = { coolingShare: 1, climbFactor: 1.25 };
function drafted(input, how) {
  const { unit, cone } = input;
  const kiln = input.kiln ?? REFERENCE_KILN;
  const limitFor = input.limitFor ?? limitsFor({ ...input.ware, ...sizeOf(input), state: null, crackle: false });
  const guess = peakOf2(input, shaped(input, { state: null, segments: [PLAIN_RAMP] }));
  if (!guess.ok) return guess;
  const second = peakOf2(input, shaped(input, climbFor(input, guess.value, how.ease)));
  if (!second.ok) return second;
  const peakC = second.value;
  const held = how.cooling.kind === "hold" ? how.cooling : null;
  if (held && held.atC > peakC - BELOW_PEAK_K) return failed(holdTooHot(held, peakC, unit));
  const schedule = shaped(input, climbFor(input, peakC, how.ease));
  const falling = cooled(schedule, {
    cooling: how.cooling,
    share: how.ease.coolingShare,
    kiln,
    limitFor
  });
  const kept = keptTo(falling, { paces: input.paces ?? [], kiln });
  const solved2 = solveSchedule({ ...input, schedule: kept, solve: "peak" });
  if (!solved2.ok) return held ? failed(holdTooHot(held, peakC, unit)) : solved2;
  const { after } = repairSchedule({
    schedule: { ...solved2.value, cone },
    limitFor,
    offsetK: input.offsetK ?? null,
    ...input.kiln && { kiln: input.kiln }
  });
  return held && overshoots(after, input) ? failed(holdTooHot(held, peakC, unit)) : ok(after);
}
function overshoots(schedule, input) {
  const { findings } = draftSchedule({
    schedule,
    start: null,
    offsetK: input.offsetK ?? null,
    findingsOnly: true,
    ...input.kiln && { kiln: input.kiln }
  });
  return findings.some(({ topic, severity }) => topic === "cone wanted" && severity === "warning");
}
function peakOf2(input, schedule) {
  const solved2 = solveSchedule({ ...input, schedule, solve: "peak" });
  return solved2.ok ? ok(highestC3(solved2.value)) : solved2;
}
function climbFor(input, peakC, ease) {
  const { unit, ware } = input;
  const size = sizeOf(input);
  return climb({
    unit,
    peakC,
    raw: ware.damp || peakC < GLAZE_PEAK_C,
    damp: ware.damp,
    thickestMm: size.thickestMm,
    demanding: isDemanding(size),
    factor: ease.climbFactor,
    charted: input.series !== "small",
    kiln: input.kiln ?? REFERENCE_KILN
  });
}
function shaped(input, rising) {
  const { cone, series, unit, ware } = input;
  const size = sizeOf(input);
  const kind = SERIES_WORDS[series];
  const body = ware.body === null ? "" : `, ${ware.body.name.replace(/ cone \S+/, "")}`;
  const offset = input.offsetK ?? 0;
  const told = Math.abs(offset) < 0.5 ? [] : [
    `The peak allows for a thermocouple that reads ${printDifference(Math.abs(offset), unit)} too ${offset > 0 ? "low" : "high"}.`
  ];
  return {
    title: `${kind.replace(/^\w/, (letter) => letter.toUpperCase())} ${cone}${body}, up to ${printMm(size.thickestMm)} thick`,
    unit,
    cone,
    series,
    startC: START_C,
    segments: rising.segments,
    ware: {
      ...ware.body && { body: ware.body },
      wallMm: ware.wallMm,
      baseMm: ware.baseMm,
      thickestMm: size.thickestMm,
      widestMm: size.widestMm,
      state: rising.state,
      crackle: false
    },
    notes: told.length === 0 ? null : told.join(" "),
    basis: `Worked out by the cone model so that ${kind} ${cone} falls by the end of the top hold; climbs after published ranges; cooling limits of this ware.`
  };
}
function sizeOf({ ware }) {
  return { thickestMm: Math.max(ware.wallMm, ware.baseMm), widestMm: ware.widestMm };
}
function fits(schedule, input) {
  return input.withinSeconds === null || totalSeconds(schedule, input) <= input.withinSeconds;
}
function totalSeconds(schedule, input) {
  const { timeline } = expandSchedule(schedule, input.kiln ? { kiln: input.kiln } : {});
  return timeline.at(-1)?.endSeconds ?? 0;
}
function highestC3(schedule) {
  return Math.max(...schedule.segments.map((segment) => segment.toC));
}

// src/core/schedule/toldWare.ts
function toldWare(ware, told) {
  const { body, wallMm, baseMm, widestMm } = told;
  const sized = wallMm !== null || baseMm !== null;
  return {
    ...ware,
    ...body && { body },
    ...wallMm !== null && { wallMm },
    ...baseMm !== null && { baseMm },
    ...sized && { thickestMm: Math.max(wallMm ?? 0, baseMm ?? 0) },
    ...widestMm !== null && { widestMm }
  };
}

// src/core/schedule/pastOffset.ts
var BETWEEN_FIRINGS_K = 5;
var ODD_ONE_OUT_K = 15;
var NOTHING_TOLD = 1e-5;
function pastOffset(offsets) {
  const bounded = offsets.flatMap((each) => {
    const { lowK, highK } = each;
    return lowK === null || highK === null ? [] : [{ ...each, lowK, highK }];
  });
  const [first] = bounded;
  if (first === void 0) return null;
  const { usual } = first;
  const told = bounded.flatMap(({ offsetK, sigmaK, usual: before }) => {
    const precision2 = sigmaK ** -2 - before.sigmaK ** -2;
    if (precision2 < NOTHING_TOLD) return [];
    return [{ precision: precision2, aloneK: aloneOf({ offsetK, sigmaK }, before, precision2) }];
  });
  const middleK = medianInPlace(told.map(({ aloneK }) => aloneK));
  let precision = usual.sigmaK ** -2;
  let sum = usual.offsetK * precision;
  for (const each of told) {
    const awayK = told.length > 2 ? Math.abs(each.aloneK - middleK) : 0;
    const weight = each.precision * Math.min(1, ODD_ONE_OUT_K / awayK) ** 2;
    precision += weight;
    sum += weight * each.aloneK;
  }
  const all = bounded.map(({ offsetK }) => offsetK);
  return {
    offsetK: sum / precision,
    sigmaK: Math.min(usual.sigmaK, Math.hypot(precision ** -0.5, BETWEEN_FIRINGS_K)),
    lowK: bounded.length === 1 ? first.lowK : Math.min(...all),
    highK: bounded.length === 1 ? first.highK : Math.max(...all),
    firings: bounded.length
  };
}
function aloneOf(both, usual, precision) {
  return (both.offsetK * both.sigmaK ** -2 - usual.offsetK * usual.sigmaK ** -2) / precision;
}

// src/core/firing/optimalPieces.ts
function optimalPieces(bins, penalty, shortestSeconds) {
  const n = bins.timesSeconds.length;
  const sums = prefixSums(bins);
  const best = new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY);
  const cameFrom = new Int32Array(n + 1);
  const droppedBy = new Int32Array(n + 1).fill(n + 1);
  const totals = new Float64Array(n + 1);
  best[0] = 0;
  const open = new Int32Array(n + 1);
  let kept = 0;
  let opened2 = 0;
  for (let end = 1; end <= n; end++) {
    while (opened2 < end && lasts(bins, opened2, end) >= shortestSeconds) {
      const newest = opened2++;
      if (!Number.isFinite(best[newest])) continue;
      kept = withoutDropped(open.subarray(0, kept), droppedBy, newest);
      open[kept++] = newest;
    }
    const starts = open.subarray(0, kept);
    costsTo({ end, penalty, starts }, sums, totals);
    cameFrom[end] = bestStart({ end, starts }, totals, best);
    drop({ end, starts, hopeless: best[end] + 2 * penalty }, totals, droppedBy);
  }
  if (!Number.isFinite(best[n]))
    return [pieceOf2({ first: 0, end: n, penalty }, sums, bins)];
  const pieces2 = [];
  for (let end = n; end > 0; end = cameFrom[end])
    pieces2.unshift(pieceOf2({ first: cameFrom[end], end, penalty }, sums, bins));
  return pieces2;
}
function bestStart({ end, starts }, totals, best) {
  let found = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let s = 0; s < starts.length; s++) {
    const start = starts[s];
    const total = best[start] + totals[start];
    totals[start] = total;
    if (total < least) {
      least = total;
      found = start;
    }
  }
  best[end] = least;
  return found;
}
function drop(at2, totals, droppedBy) {
  const { end, starts, hopeless } = at2;
  for (let s = 0; s < starts.length; s++) {
    const start = starts[s];
    if (droppedBy[start] > end && totals[start] >= hopeless)
      droppedBy[start] = end;
  }
}
function withoutDropped(starts, droppedBy, newest) {
  let kept = 0;
  for (let s = 0; s < starts.length; s++) {
    const start = starts[s];
    if (droppedBy[start] > newest) starts[kept++] = start;
  }
  return kept;
}
function prefixSums({ timesSeconds: times2, tempsC: temps }) {
  const n = times2.length;
  const originSeconds = times2[0];
  const originC = temps[0];
  const made = () => new Float64Array(n + 1);
  const sums = { t: made(), y: made(), tt: made(), ty: made(), yy: made() };
  for (let i = 0; i < n; i++) {
    const t = (times2[i] - originSeconds) / 3600;
    const y = temps[i] - originC;
    sums.t[i + 1] = sums.t[i] + t;
    sums.y[i + 1] = sums.y[i] + y;
    sums.tt[i + 1] = sums.tt[i] + t * t;
    sums.ty[i + 1] = sums.ty[i] + t * y;
    sums.yy[i + 1] = sums.yy[i] + y * y;
  }
  return sums;
}
function lasts({ timesSeconds: times2, widthSeconds }, first, end) {
  return times2[end - 1] - times2[first] + widthSeconds;
}
function costsTo({
  end,
  penalty,
  starts
}, sums, into) {
  const { t: sumT, y: sumY, tt: sumTT, ty: sumTY, yy: sumYY } = sums;
  const endT = sumT[end];
  const endY = sumY[end];
  const endTT = sumTT[end];
  const endTY = sumTY[end];
  const endYY = sumYY[end];
  for (let s = 0; s < starts.length; s++) {
    const first = starts[s];
    const t = endT - sumT[first];
    const y = endY - sumY[first];
    const perBin = 1 / (end - first);
    const tt = endTT - sumTT[first] - t * t * perBin;
    const ty = endTY - sumTY[first] - t * y * perBin;
    const constant = endYY - sumYY[first] - y * y * perBin;
    const line2 = tt > 0 ? constant - ty * ty / tt : constant;
    into[first] = Math.min(Math.max(0, constant) + penalty, Math.max(0, line2) + 2 * penalty);
  }
}
function pieceOf2({
  first,
  end,
  penalty
}, sums, bins) {
  const count = end - first;
  const t = sums.t[end] - sums.t[first];
  const y = sums.y[end] - sums.y[first];
  const tt = sums.tt[end] - sums.tt[first] - t * t / count;
  const ty = sums.ty[end] - sums.ty[first] - t * y / count;
  const saved = tt > 0 ? ty * ty / tt : 0;
  const flat = saved <= penalty;
  const driftCPerSecond = tt > 0 ? ty / tt / 3600 : 0;
  return {
    first,
    end,
    flat,
    middleC: bins.tempsC[0] + y / count,
    middleSeconds: bins.timesSeconds[0] + 3600 * t / count,
    slopeCPerSecond: flat ? 0 : driftCPerSecond,
    driftCPerSecond
  };
}

// src/core/firing/stableHold.ts
var STABLE_SECONDS = 600;
var MEAN_OFF_TARGET_K = 5;
var DRIFT_K = 2;
var READING_OFF_MEAN_K = 10;
var ROUNDING_K = 1e-9;
function isStableHold(curve, hold) {
  if (hold.toSeconds - hold.fromSeconds < STABLE_SECONDS) return false;
  if (curve.gaps.some((gap) => gap.fromSeconds < hold.toSeconds && gap.toSeconds > hold.fromSeconds))
    return false;
  const { timesSeconds, tempsC } = curve;
  let from = Math.max(0, lastAtOrBefore(timesSeconds, hold.fromSeconds));
  if (timesSeconds[from] < hold.fromSeconds) from++;
  const to = lastAtOrBefore(timesSeconds, hold.toSeconds) + 1;
  const times2 = timesSeconds.subarray(from, to);
  const temps = tempsC.subarray(from, to);
  if (times2.length < 3) return false;
  const meanC = mean(temps);
  const driftK = Math.abs(slope(times2, temps)) * STABLE_SECONDS;
  let furthestK = 0;
  for (let i = 0; i < temps.length; i++)
    furthestK = Math.max(furthestK, Math.abs(temps[i] - meanC));
  return Math.abs(meanC - (hold.targetC ?? meanC)) <= MEAN_OFF_TARGET_K + ROUNDING_K && driftK <= DRIFT_K + ROUNDING_K && furthestK <= READING_OFF_MEAN_K + ROUNDING_K;
}
function mean(values) {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i];
  return sum / values.length;
}
function slope(times2, temps) {
  const meanTime = mean(times2);
  const meanTemp = mean(temps);
  let products = 0;
  let squares = 0;
  times2.forEach((time2, i) => {
    products += (time2 - meanTime) * (temps[i] - meanTemp);
    squares += (time2 - meanTime) ** 2;
  });
  return products / squares;
}

// src/core/firing/timeBins.ts
var MOST_BINS = 2e3;
var NARROWEST_SECONDS = 30;
function timeBins(curve) {
  const known = KNOWN.get(curve);
  if (known !== void 0) return known;
  const bins = binnedStretches(curve);
  KNOWN.set(curve, bins);
  return bins;
}
var KNOWN = /* @__PURE__ */ new WeakMap();
function binnedStretches(curve) {
  const { timesSeconds: times2 } = curve;
  const span = times2[times2.length - 1] - times2[0];
  const width = Math.max(NARROWEST_SECONDS, span / MOST_BINS);
  const gapStarts = new Set(curve.gaps.map((gap) => gap.fromSeconds));
  const stretches = [];
  let first = 0;
  for (let i = 0; i < times2.length; i++) {
    if (i < times2.length - 1 && !gapStarts.has(times2[i])) continue;
    stretches.push(binned(curve, first, i, width));
    first = i + 1;
  }
  return stretches;
}
function binned(curve, first, last, width) {
  const start = curve.timesSeconds[first];
  const times2 = [];
  const temps = [];
  let from = first;
  let bin = 0;
  for (let i = first; i <= last; i++) {
    const next = i < last ? Math.floor((curve.timesSeconds[i + 1] - start) / width) : -1;
    if (next === bin) continue;
    times2.push(middleTime(curve.timesSeconds, from, i + 1));
    temps.push(medianInPlace(curve.tempsC.slice(from, i + 1)));
    from = i + 1;
    bin = next;
  }
  const step = times2.length > 1 ? (times2.at(-1) - times2[0]) / (times2.length - 1) : width;
  return {
    timesSeconds: Float64Array.from(times2),
    tempsC: Float64Array.from(temps),
    fromSeconds: start,
    toSeconds: curve.timesSeconds[last],
    widthSeconds: step
  };
}
function middleTime(times2, from, to) {
  const high = times2[from + to >> 1];
  return (to - from) % 2 === 1 ? high : (times2[(from + to >> 1) - 1] + high) / 2;
}

// src/core/firing/segments.ts
var TOLERANCE_K = 2;
var TOLERANCE_SECONDS = 10 * 60;
var SHORTEST_SECONDS = 8 * 60;
var HOLD_TRAVEL_K = 2 * MEAN_OFF_TARGET_K;
function foundSegments(curve) {
  return timeBins(curve).flatMap((bins) => {
    if (bins.timesSeconds.length < 2) return [];
    const penalty = TOLERANCE_K ** 2 * TOLERANCE_SECONDS / bins.widthSeconds;
    const pieces2 = optimalPieces(bins, penalty, SHORTEST_SECONDS);
    const bounds = boundsOf(pieces2, bins);
    return pieces2.map((piece, i) => {
      const startSeconds = bounds[i];
      const endSeconds = bounds[i + 1];
      const isHold = holds(piece, endSeconds - startSeconds);
      return {
        kind: isHold ? "hold" : "ramp",
        startSeconds,
        endSeconds,
        fromC: at(piece, startSeconds),
        toC: at(piece, endSeconds),
        rateCPerHour: piece.driftCPerSecond * 3600,
        stable: isHold && isStableHold(curve, { fromSeconds: startSeconds, toSeconds: endSeconds })
      };
    });
  });
}
function holds(piece, seconds) {
  const drift = Math.abs(piece.slopeCPerSecond);
  return piece.flat || drift * STABLE_SECONDS <= DRIFT_K && drift * seconds <= HOLD_TRAVEL_K;
}
function boundsOf(pieces2, bins) {
  const bounds = [bins.fromSeconds];
  for (let i = 0; i + 1 < pieces2.length; i++)
    bounds.push(corner(pieces2[i], pieces2[i + 1], bins));
  bounds.push(bins.toSeconds);
  return bounds;
}
function corner(before, after, bins) {
  const times2 = bins.timesSeconds;
  const edge = (times2[before.end - 1] + times2[after.first]) / 2;
  const turn = after.slopeCPerSecond - before.slopeCPerSecond;
  if (turn === 0) return edge;
  const apart = at(before, edge) - at(after, edge);
  const crossing = edge + apart / turn;
  return Math.abs(crossing - edge) < SHORTEST_SECONDS / 2 ? crossing : edge;
}
function at(piece, seconds) {
  return piece.middleC + piece.slopeCPerSecond * (seconds - piece.middleSeconds);
}

// src/core/thermocouple/newWireLimits.ts
function rule(fromC, toC, [fixedK, share]) {
  return { fromC, toC, fixedK, share };
}
var E230_BASE = {
  standard: [rule(0, 1260, [2.2, 75e-4])],
  special: [rule(0, 1260, [1.1, 4e-3])]
};
var IEC_K_N = {
  "class 1": [rule(-40, 1e3, [1.5, 4e-3])],
  "class 2": [rule(-40, 1200, [2.5, 75e-4])],
  "class 3": [rule(-200, 40, [2.5, 0.015])]
};
var NOBLE = {
  standard: [rule(0, 1480, [1.5, 25e-4])],
  special: [rule(0, 1480, [0.6, 1e-3])],
  "class 1": [
    rule(0, 1100, [1, 0]),
    { fromC: 1100, toC: 1600, fixedK: 1, share: 3e-3, addedAboveC: 1100 }
  ],
  "class 2": [rule(0, 1600, [1.5, 25e-4])]
};
var RULES = {
  K: {
    ...E230_BASE,
    standard: [rule(-200, 0, [2.2, 0.02]), rule(0, 1260, [2.2, 75e-4])],
    ...IEC_K_N
  },
  N: { ...E230_BASE, ...IEC_K_N },
  S: NOBLE,
  R: NOBLE,
  B: {
    standard: [rule(870, 1700, [0, 5e-3])],
    special: [rule(870, 1700, [0, 25e-4])],
    "class 2": [rule(600, 1700, [0, 25e-4])],
    "class 3": [rule(600, 1700, [4, 5e-3])]
  },
  J: {
    standard: [rule(0, 760, [2.2, 75e-4])],
    special: [rule(0, 760, [1.1, 4e-3])],
    "class 1": [rule(-40, 750, [1.5, 4e-3])],
    "class 2": [rule(-40, 750, [2.5, 75e-4])]
  },
  T: {
    standard: [rule(-200, 0, [1, 0.015]), rule(0, 370, [1, 75e-4])],
    special: [rule(0, 370, [0.5, 4e-3])],
    "class 1": [rule(-40, 350, [0.5, 4e-3])],
    "class 2": [rule(-40, 350, [1, 75e-4])],
    "class 3": [rule(-200, 40, [1, 0.015])]
  }
};
function newWireLimit(type, wireClass, tempC) {
  const rules = RULES[type][wireClass];
  if (rules === void 0) return { limitK: null, range: null };
  const range = {
    fromC: Math.min(...rules.map(({ fromC }) => fromC)),
    toC: Math.max(...rules.map(({ toC }) => toC))
  };
  const found = rules.find(({ fromC, toC }) => tempC >= fromC && tempC <= toC);
  return { limitK: found === void 0 ? null : sizeOf2(found, tempC), range };
}
function sizeOf2({ fixedK, share, addedAboveC }, tempC) {
  return addedAboveC === void 0 ? Math.max(fixedK, share * Math.abs(tempC)) : fixedK + share * (tempC - addedAboveC);
}
function wireClassOf(written) {
  const word = written.trim().toLowerCase();
  if (word === "standard" || word === "special") return word;
  const number = /^(?:iec\s*)?(?:class\s*)?([123])$/.exec(word)?.[1];
  return number === void 0 ? null : `class ${number}`;
}

// src/core/thermocouple/sensorSigma.ts
function sensorSigmaK(wire, tempC, usualSigmaK) {
  const { limitK } = newWireLimit(wire.type, wire.wireClass, tempC);
  const common = newWireLimit("K", "standard", tempC).limitK ?? 0;
  const rest = Math.max(0, usualSigmaK ** 2 - common ** 2 / 3);
  return limitK === null ? null : Math.sqrt(limitK ** 2 / 3 + rest);
}

// src/core/firing/thermocoupleWire.ts
function knownWire(record2, reading) {
  const type = record2?.thermocouple?.type ?? reading.thermocouple ?? null;
  if (type === null) return null;
  const written = record2?.thermocouple?.class ?? null;
  const wireClass = written === null ? null : wireClassOf(written);
  if (wireClass !== null) return { type, wireClass, assumed: "" };
  const assumed = written === null ? "the record names no class, and standard is assumed" : "the class in the record is not one that is known here, and standard is assumed";
  return { type, wireClass: "standard", assumed };
}
function usualOffsetOf(wire, peakC) {
  const usual = usualOffset(peakC);
  const sigmaK = wire === null ? null : sensorSigmaK(wire, peakC, usual.sigmaK);
  return sigmaK === null ? usual : { ...usual, sigmaK };
}

// src/core/firing/zoneReview.ts
var NEAR_PEAK_K2 = 5;
var LONE_READING_K = 5;
function zoneReview(name, curve, options) {
  const peak = firmPeak(curve);
  const last = curve.tempsC.length - 1;
  return {
    name,
    curve,
    peakC: peak.tempC,
    peakAtSeconds: peak.seconds,
    secondsWithinFiveOfPeak: secondsAbove(curve, peak.tempC - NEAR_PEAK_K2),
    lastReadingC: curve.tempsC[last],
    lastReadingAtSeconds: curve.timesSeconds[last],
    heatwork: kilnHeatworkOf(curve, {
      series: options.series,
      offsetK: options.witnessed?.offsetK ?? null,
      offsetSigmaK: options.witnessed?.sigmaK ?? usualOffsetOf(options.wire ?? null, peak.tempC).sigmaK
    }),
    segments: foundSegments(curve),
    crossings: crossingsOf(curve)
  };
}
function firmPeak(curve) {
  const { index, tempC, seconds } = peakOf(curve);
  const temp = (i) => curve.tempsC[i];
  const before = temp(index - 1);
  const after = temp(index + 1);
  if (before === void 0 || after === void 0) return { tempC, seconds };
  const fromBefore = before + Math.max(0, before - (temp(index - 2) ?? before));
  const fromAfter = after + Math.max(0, after - (temp(index + 2) ?? after));
  const isLone = tempC - Math.max(fromBefore, fromAfter) > LONE_READING_K;
  return isLone ? highestOfMedians(curve) : { tempC, seconds };
}
function highestOfMedians(curve) {
  const { timesSeconds, tempsC } = curve;
  let best = { tempC: Number.NEGATIVE_INFINITY, seconds: 0 };
  for (let i = 1; i + 1 < tempsC.length; i++) {
    const a = tempsC[i - 1];
    const b = tempsC[i];
    const c = tempsC[i + 1];
    const middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    if (middle > best.tempC) best = { tempC: middle, seconds: timesSeconds[i] };
  }
  return best;
}
function secondsAbove(curve, tempC) {
  const { timesSeconds, tempsC } = curve;
  const gapStarts = new Set(curve.gaps.map((gap) => gap.fromSeconds));
  let total = 0;
  for (let i = 0; i + 1 < tempsC.length; i++) {
    const here = tempsC[i] - tempC;
    const there = tempsC[i + 1] - tempC;
    if (!(here >= 0 || there >= 0)) continue;
    const from = timesSeconds[i];
    if (gapStarts.has(from)) continue;
    const span = timesSeconds[i + 1] - from;
    if (here >= 0 && there >= 0) total += span;
    else total += span * Math.max(here, there) / Math.abs(here - there);
  }
  return total;
}

// src/core/kiln/asAssumedKiln.ts
function asAssumedKiln(learned2) {
  const { cooling, power, roomC, powerWatt } = learned2;
  const balance = { cooling, pullKPerSecond: power.pullKPerSecond, roomC };
  return {
    fullHeatingCPerHour: (tempC) => Math.max(0, climbCPerHour(balance, tempC)),
    naturalCoolingCPerHour: (tempC) => Math.max(0, 3600 * lossKPerSecond(cooling, tempC, roomC)),
    ...powerWatt !== null && power.from === "output" && { heatCapacityJPerK: powerWatt / power.pullKPerSecond },
    learned: learned2,
    basis: basisOf2(learned2)
  };
}
function basisOf2({ firings, power }) {
  const names = firings.map(({ name }) => name);
  const logs = names.length === 1 ? names[0] : `${names.length} logs, ${names.join(", ")}`;
  const least = power.from === "output" ? "" : "; full heating is the fastest climb seen, the least it can do";
  return `your kiln as learned from ${logs}${least}`;
}

// src/core/firing/historyFindings.ts
var TOPIC = "since earlier firings";
var DRIFT_BASIS = "offsets by witness cones: this firing's minus the median of the earlier ones; between them the interval that all the cones allow. A difference only: cones bend alike in both, so their own error is mostly the same";
function historyFindings(parts) {
  const { used, changes, drift, trend, whyNoKiln } = parts;
  return [
    ...leftOut(parts),
    ...used.length === 0 ? [] : unnamed(parts),
    ...used.length > 0 && whyNoKiln !== null ? [cannotLearn(whyNoKiln)] : [],
    ...changes,
    ...used.length === 0 ? [] : [
      trend?.isPlain ? plainDrift(trend) : drift === null ? noDrift(parts) : drifted(drift, parts)
    ],
    ...used.length > 0 && whyNoKiln === null && changes.length === 0 ? [unchanged(parts)] : []
  ];
}
function leftOut({ leftOut: logs, used }) {
  if (logs.length === 0) return [];
  const why = logs.map(({ name, why: why2 }) => `${quoted(name)} (${quoted(why2)})`).join("; ");
  const rest = used.length === 0 ? "; none is left to compare with" : "";
  return [
    note(
      "logs left out",
      `{count} of {given} earlier logs ${logs.length === 1 ? "was" : "were"} left out: ${why}${rest}.`,
      {
        evidence: [
          { name: "count", value: logs.length, kind: "count" },
          { name: "given", value: logs.length + used.length, kind: "count" }
        ],
        basis: "the logs and the records beside them"
      }
    )
  ];
}
function unnamed({ unnamed: logs }) {
  if (logs.length === 0) return [];
  return [
    note(
      "kiln not named",
      `No record says which kiln ${listed(logs)} ${logs.length === 1 ? "was" : "were"} fired in; taken for this one because you gave ${logs.length === 1 ? "it" : "them"}.`,
      { evidence: [], basis: "the records beside the logs" }
    )
  ];
}
function cannotLearn(why) {
  return note("kiln", `Whether the kiln has changed cannot be told: ${quoted(why)}.`, {
    evidence: [],
    basis: "what a kiln can be learned from: a whole climb, and a fall by itself with the lid shut"
  });
}
function unchanged({ used, now }) {
  return note(
    "kiln",
    `Nothing that these logs show of the kiln differs enough to be told between ${listed(used)} and ${quoted(now.name)}.`,
    {
      evidence: [],
      basis: "pull at equal temperature, share of the time fully on, fall by itself, scatter of the readings"
    }
  );
}
function plainDrift({ driftK, sigmaK, firings }) {
  return {
    ...note(
      "thermocouple",
      `By the witness cones of {firings} firings in a row the thermocouple came to read {drift} ${driftK > 0 ? "lower" : "higher"} than it did, give or take {sigma}.`,
      {
        evidence: [
          { name: "firings", value: firings, kind: "count" },
          { name: "drift", value: Math.abs(driftK), kind: "difference" },
          { name: "sigma", value: sigmaK, kind: "difference" }
        ],
        basis: "a line through the middles of what the witness cones of each firing allow; plain from three sigmas on",
        advice: "Renew the thermocouple; until then go by the cones."
      }
    ),
    severity: "caution"
  };
}
function noDrift({ now, used, otherProbes }) {
  const others = otherProbes.length === 0 ? "" : ` ${listed(otherProbes)} had another type of thermocouple by ${otherProbes.length === 1 ? "its record" : "their records"} and ${otherProbes.length === 1 ? "says" : "say"} nothing of this one.`;
  return note(
    "thermocouple",
    `Whether the thermocouple has drifted cannot be told: it takes witness cones that pin its offset from both sides in ${quoted(now.name)} and in an earlier firing (${listed(used)}).${others}`,
    {
      evidence: [],
      basis: DRIFT_BASIS,
      advice: "Set three cones in a row every time: one that falls, the one you want, one that stands."
    }
  );
}
function drifted(drift, { now, otherProbes }) {
  const { driftK, lowK, highK, earlier, nowK, beforeK } = drift;
  const tooClose = lowK <= 0 && highK >= 0;
  const before = earlier.firings === 1 ? "in the one earlier firing" : "in the middle of {firings} earlier firings";
  const way = driftK > 0 ? "lower" : "higher";
  const verdict2 = tooClose ? "That is too close to tell: the cones allow {lowest} to {highest}" : `So it reads {drift} ${way} than it did (the cones allow {lowest} to {highest} between them)`;
  const others = otherProbes.length === 0 ? "" : ` Left out, for another type of thermocouple: ${listed(otherProbes)}.`;
  return note(
    "thermocouple",
    `By witness cones {now} was to be added to the readings in ${quoted(now.name)} and {before} ${before}. ${verdict2}.${others}`,
    {
      evidence: [
        { name: "now", value: nowK, kind: "difference" },
        { name: "before", value: beforeK, kind: "difference" },
        { name: "firings", value: earlier.firings, kind: "count" },
        { name: "drift", value: Math.abs(driftK), kind: "difference" },
        { name: "lowest", value: lowK, kind: "difference" },
        { name: "highest", value: highK, kind: "difference" }
      ],
      basis: DRIFT_BASIS,
      advice: tooClose ? "" : "Look at the tip and where it sits; a thermocouple that keeps moving wants replacing."
    }
  );
}
function note(about, statement, rest) {
  return {
    topic: `${TOPIC}, ${about}`,
    severity: "note",
    statement,
    advice: "",
    ...rest,
    zone: null,
    span: null
  };
}
function listed(names) {
  const words = names.map(quoted);
  const end = words.at(-1) ?? "";
  return words.length < 2 ? end : `${words.slice(0, -1).join(", ")} and ${end}`;
}

// src/core/firing/kilnChanges.ts
var LIKE_PEAKS_K = 30;
var FULL_ON_APART = 0.15;
function kilnChanges(kiln, name) {
  const at2 = kiln.firings.findLastIndex((firing) => firing.name === name);
  const now = kiln.firings[at2];
  if (now === void 0)
    throw new RangeError(`kilnChanges: ${name} is none of this kiln's firings`);
  const before = kiln.firings.filter((_, index) => index !== at2);
  const pull = strongestBefore(now, before);
  return {
    weakerBy: pull !== null && pull.share <= WEAKER ? 1 - pull.share : null,
    findings: [
      ...elements(now, before, pull),
      ...fullOn(now, before),
      ...fall(now, before),
      ...scatter(now, before)
    ]
  };
}
function strongestBefore(now, before) {
  const pulls = before.flatMap((earlier) => {
    const shared = sharedPulls(now, earlier);
    if (shared === null) return [];
    const mean2 = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const nowKPerSecond = mean2(shared.map(({ newerKPerSecond }) => newerKPerSecond));
    const thenKPerSecond = mean2(shared.map(({ olderKPerSecond }) => olderKPerSecond));
    return [
      {
        earlier,
        nowKPerSecond,
        thenKPerSecond,
        share: nowKPerSecond / thenKPerSecond,
        lowC: Math.min(...shared.map(({ lowC }) => lowC)),
        highC: Math.max(...shared.map(({ highC }) => highC))
      }
    ];
  });
  return pulls.toSorted((a, b) => a.share - b.share)[0] ?? null;
}
function elements(now, before, pull) {
  if (pull === null) return [noPull(now, before)];
  if (pull.share > WEAKER && pull.share < STRONGER) return [];
  const weaker = pull.share <= WEAKER;
  const why = weaker ? "worn elements, a leg that is out, low mains, or a heavier load" : "new elements or a lighter load";
  return [
    note2("elements", {
      statement: `At the same temperatures, {low} to {high}, full power heated by {now} in ${quoted(now.name)} and by {then} in ${quoted(pull.earlier.name)}, losses left aside: {share} ${weaker ? "less" : "more"}. That is ${why}; the logs cannot say which.`,
      evidence: [
        { name: "low", value: pull.lowC, kind: "temperature" },
        { name: "high", value: pull.highC, kind: "temperature" },
        { name: "now", value: 3600 * pull.nowKPerSecond, kind: "rate" },
        { name: "then", value: 3600 * pull.thenKPerSecond, kind: "rate" },
        { name: "share", value: Math.abs(1 - pull.share), kind: "percent" }
      ],
      basis: "power over heat capacity, from the output column and the climb, mean of the stretches of 100 \xB0C (180 \xB0F) that both firings share; against the strongest of the earlier ones",
      advice: weaker ? "Have a licensed electrician measure the elements under your local code, kiln isolated and cold, and compare firings with the same load." : ""
    })
  ];
}
function noPull(now, before) {
  const lacking = now.fullOnFraction === null ? `${quoted(now.name)} has no column of the controller's output` : before.every(({ fullOnFraction }) => fullOnFraction === null) ? "no earlier log has a column of the controller's output" : "no two stretches of 100 \xB0C (180 \xB0F) were heated in both firings";
  return note2("elements", {
    statement: `Whether the elements have weakened cannot be told: ${lacking}.`,
    evidence: [],
    basis: "pull at equal temperature needs the controller's output in both logs",
    advice: "Log the output as well, if the controller shows it."
  });
}
function fullOn(now, before) {
  const share = now.fullOnFraction;
  if (share === null) return [];
  const [other] = before.flatMap(
    (each) => each.fullOnFraction !== null && Math.abs(each.peakC - now.peakC) <= LIKE_PEAKS_K ? [{ name: each.name, share: each.fullOnFraction }] : []
  ).toSorted((a, b) => Math.abs(b.share - share) - Math.abs(a.share - share));
  if (other === void 0 || Math.abs(other.share - share) < FULL_ON_APART) return [];
  return [
    note2("time fully on", {
      statement: `The elements were fully on for {now} of the climb in ${quoted(now.name)} and for {then} in ${quoted(other.name)}, which peaked within {like} of it; schedule and load count in this as well.`,
      evidence: [
        { name: "now", value: share, kind: "percent" },
        { name: "then", value: other.share, kind: "percent" },
        { name: "like", value: LIKE_PEAKS_K, kind: "difference" }
      ],
      basis: "the output column up to the peak",
      advice: ""
    })
  ];
}
function fall(now, before) {
  const rate = now.fallAtQuartzCPerHour;
  if (rate === null)
    return [
      note2("fall by itself", {
        statement: `Whether it cools differently cannot be told: ${quoted(now.name)} does not show it falling by itself near {at}.`,
        evidence: [{ name: "at", value: 573, kind: "temperature" }],
        basis: "a fall with the power off and the lid shut",
        advice: ""
      })
    ];
  const [other] = before.flatMap(({ name, fallAtQuartzCPerHour: then }) => then === null ? [] : [{ name, then }]).toSorted((a, b) => Math.abs(Math.log(b.then / rate)) - Math.abs(Math.log(a.then / rate)));
  if (other === void 0) return [];
  const apart = Math.max(rate, other.then) / Math.min(rate, other.then);
  if (apart < 1 + FALLS_APART) return [];
  return [
    note2("fall by itself", {
      statement: `By itself it fell at {now} at {at} in ${quoted(now.name)} and at {then} in ${quoted(other.name)}: load, room, vent or thermocouple differed, and the logs cannot say which.`,
      evidence: [
        { name: "now", value: rate, kind: "rate" },
        { name: "then", value: other.then, kind: "rate" },
        { name: "at", value: 573, kind: "temperature" }
      ],
      basis: "the two cooling constants fitted to each firing alone",
      advice: ""
    })
  ];
}
function scatter(now, before) {
  const [quietest] = before.toSorted((a, b) => a.noiseK - b.noiseK);
  if (!quietest || now.noiseK < NOISY_K || now.noiseK < NOISIER * quietest.noiseK) return [];
  return [
    note2("scatter", {
      statement: `Readings scatter {times} times as much in ${quoted(now.name)} (about {now} tenths of a degree C) as in ${quoted(quietest.name)} (about {then} tenths): the thermocouple, its lead or the logger differs.`,
      evidence: [
        { name: "times", value: now.noiseK / quietest.noiseK, kind: "ratio" },
        { name: "now", value: 10 * now.noiseK, kind: "count" },
        { name: "then", value: 10 * quietest.noiseK, kind: "count" }
      ],
      basis: "how much neighbouring readings jump about, one sigma",
      advice: "Look at the tip and the terminals; a log cannot show whether it reads true."
    })
  ];
}
function note2(about, parts) {
  return {
    topic: `since earlier firings, ${about}`,
    severity: "note",
    zone: null,
    span: null,
    ...parts
  };
}

// src/core/firing/thermocoupleDrift.ts
function thermocoupleDrift(now, earlier) {
  if (now === null || now.lowK === null || now.highK === null) return null;
  const past = pastOffset(earlier);
  if (past === null) return null;
  const pinned = earlier.flatMap(
    ({ lowK, highK }) => lowK === null || highK === null ? [] : [{ lowK, highK }]
  );
  const nowK = 0.5 * (now.lowK + now.highK);
  const beforeK = medianInPlace(pinned.map(({ lowK, highK }) => 0.5 * (lowK + highK)));
  return {
    earlier: past,
    nowK,
    beforeK,
    driftK: nowK - beforeK,
    lowK: now.lowK - medianInPlace(pinned.map(({ highK }) => highK)),
    highK: now.highK - medianInPlace(pinned.map(({ lowK }) => lowK))
  };
}

// src/core/firing/historyOf.ts
function historyOf(now, earlier) {
  const { kept, leftOut: leftOut2 } = parted(now, earlier);
  const used = inOrder(kept);
  const { kiln, why } = learned(now, used);
  const sameProbe = used.filter((past) => isSameProbe(past, now));
  const offsets = sameProbe.flatMap(({ offset }) => offset === null ? [] : [offset]);
  const drift = thermocoupleDrift(now.offset, offsets);
  const changes = kiln === null ? { weakerBy: null, findings: [] } : kilnChanges(kiln, now.name);
  return {
    used,
    leftOut: leftOut2,
    kiln,
    weakerBy: changes.weakerBy,
    drift,
    findings: historyFindings({
      now,
      used: used.map(({ name }) => name),
      leftOut: leftOut2,
      unnamed: used.filter(({ firing }) => !firing.kiln).map(({ name }) => name),
      otherProbes: used.filter((past) => !isSameProbe(past, now)).map(({ name }) => name),
      drift,
      trend: offsetTrend([...offsets, ...now.offset === null ? [] : [now.offset]]),
      whyNoKiln: why,
      changes: changes.findings
    })
  };
}
function parted(now, earlier) {
  const kept = [];
  const leftOut2 = [];
  const named = now.firing?.kiln ?? onlyKiln(earlier);
  for (const log of earlier) {
    const why = reasonAgainst(log, now, named);
    const seen = kept.some((other) => isSameLog(other, log));
    if (why !== null || seen) leftOut2.push({ name: log.name, why: why ?? "it was given twice" });
    else kept.push(log);
  }
  return { kept, leftOut: leftOut2 };
}
function onlyKiln(earlier) {
  const kilns = new Set(
    earlier.flatMap((log) => "broken" in log || !log.firing?.kiln ? [] : [log.firing.kiln])
  );
  return kilns.size > 1 ? "several" : [...kilns][0] ?? null;
}
function reasonAgainst(log, now, named) {
  if ("broken" in log) return `it could not be read: ${log.broken}`;
  const { firing } = log;
  if (firing === null) return "it holds no temperature";
  if (isSameLog(log, now)) return "it is this firing itself";
  if (firing.kiln && named !== null && firing.kiln !== named)
    return now.firing?.kiln ? `its record names another kiln, ${firing.kiln}` : `its record names the kiln ${firing.kiln}, other records name others, and this firing's names none`;
  const began = now.firing?.start ?? null;
  if (began !== null && firing.start !== null && firing.start >= began)
    return "it did not begin before this firing";
  const [lack] = tooLittle([firing]);
  return lack === void 0 ? null : lack.what;
}
function isSameLog(one, other) {
  if ("broken" in other || one.firing === null || other.firing === null) return false;
  return one.name === other.name && one.firing.start === other.firing.start;
}
function inOrder(kept) {
  if (kept.some(({ firing }) => firing.start === null)) return kept;
  return kept.toSorted(
    (a, b) => a.firing.start < b.firing.start ? -1 : 1
  );
}
function learned(now, used) {
  if (now.firing === null || used.length === 0) return { kiln: null, why: null };
  const result = learnKiln([...used.map(({ firing }) => firing), now.firing]);
  if (result.ok) return { kiln: result.value, why: null };
  return { kiln: null, why: result.problems.map(({ what }) => what).join("; ") };
}
function isSameProbe(past, now) {
  return past.thermocouple === null || now.thermocouple === null ? true : past.thermocouple === now.thermocouple;
}

// src/core/firing/planComparison.ts
var ABOVE_START_K = 30;
var STEP_SECONDS2 = 60;
function comparedWithPlan(zone, plan) {
  const expansion = expandSchedule(plan);
  const shiftSeconds = planShiftSeconds(zone.curve, expansion);
  if (shiftSeconds === null) return null;
  const planned = shifted(expansion.curve, shiftSeconds);
  const differences2 = differencesOf(zone.curve, planned, comparedSpan(expansion, shiftSeconds));
  if (differences2 === null) return null;
  return {
    title: plan.title,
    planned,
    shiftSeconds,
    zone: zone.name,
    ...differences2,
    peakDeviationC: zone.peakC - peakOf(planned).tempC,
    peakDelaySeconds: firstNear(zone.curve, zone.peakC) - firstNear(planned, peakOf(planned).tempC)
  };
}
function planShiftSeconds(curve, expansion) {
  const startsC = [curve.tempsC[0], expansion.curve.tempsC[0]];
  const assumed = [];
  for (const row of expansion.timeline) {
    if (!row.assumedRate) break;
    assumed.push(row.toC);
  }
  const lowC = Math.max(...startsC.map((tempC) => tempC + ABOVE_START_K), ...assumed);
  const rise = (of) => crossingTimes(of, lowC).find((crossing) => crossing.direction === "heating")?.seconds;
  const measured = rise(curve);
  const planned = rise(expansion.curve);
  return measured === void 0 || planned === void 0 ? null : measured - planned;
}
function comparedSpan(expansion, shiftSeconds) {
  const firstOwn = expansion.timeline.find((row) => !row.assumedRate);
  const from = firstOwn?.startSeconds ?? 0;
  const firstFall = expansion.timeline.find(
    (row) => row.assumedRate && row.startSeconds > from && row.toC < row.fromC
  );
  const end = firstFall?.startSeconds ?? expansion.curve.timesSeconds.at(-1);
  return { fromSeconds: from + shiftSeconds, toSeconds: end + shiftSeconds };
}
function differencesOf(curve, planned, span) {
  const from = Math.max(span.fromSeconds, curve.timesSeconds[0]);
  let largest = { deviation: 0, seconds: from };
  let between2 = 0;
  let under = 0;
  for (let seconds = from; seconds <= span.toSeconds; seconds += STEP_SECONDS2) {
    const measuredC = temperatureAt(curve, seconds);
    const plannedC = temperatureAt(planned, seconds);
    if (measuredC === null || plannedC === null) continue;
    const deviation = measuredC - plannedC;
    between2 += deviation;
    under += plannedC;
    if (Math.abs(deviation) > Math.abs(largest.deviation)) largest = { deviation, seconds };
  }
  if (!(under > 0)) return null;
  return {
    largestDeviationC: largest.deviation,
    largestDeviationAtSeconds: largest.seconds,
    areaDeviation: between2 / under
  };
}
function firstNear(curve, peakC) {
  return crossingTimes(curve, peakC - NEAR_PEAK_K2)[0]?.seconds ?? peakOf(curve).seconds;
}

// src/core/firing/askedHeat.ts
var PROGRAMME_K = 50;
var OFF_C = 40;
var ZERO_F = -20;
var NEAR_K2 = 15;
var TELLING_OUTPUT = 0.05;
var TELLING_SECONDS = 1200;
var INVERTED_OUTPUT = 0.7;
var COLD_C = 250;
var COLD_CLIMB_K = 50;
var CHANCE = 1e-5;
function askedOf(reading, curve) {
  const { intervalSeconds } = reading;
  const setPoints = reading.channels.flatMap(
    (channel) => channel.role === "set-point" && channel.curve !== null ? [channel.curve] : []
  );
  const outputs = reading.channels.flatMap(({ outputFraction }) => outputFraction ?? []);
  const range = rangeOf(setPoints);
  const isZero = outputs.length > 0 && outputs.every(({ fraction }) => fraction.every(isNone));
  const outputAt = (from, to) => greatest(outputs.map((output) => outputMean(output, from, to)));
  return {
    setPoint: setPointKind({ setPoints, range, isZero, curve }),
    setPointAt: (seconds) => {
      const lasts2 = setPoints.map(({ timesSeconds }) => timesSeconds.at(-1));
      if (seconds > Math.max(...lasts2) + 2 * intervalSeconds) return "over";
      return greatest(setPoints.map((setPoint) => temperatureAt(setPoint, seconds)));
    },
    isOff: (setPointC) => setPointC <= Math.max(OFF_C, range.leastC),
    outputAt,
    isOutputTelling: !isZero && isTelling(curve, outputAt),
    silentSeconds: (rows) => silentSeconds(rows)
  };
}
function setPointKind(known) {
  const { setPoints, range, isZero, curve } = known;
  if (setPoints.length === 0) return "none";
  if (range.mostC - range.leastC > PROGRAMME_K) return "programme";
  if (range.mostC > OFF_C) {
    const reached2 = curve.tempsC.filter((tempC) => Math.abs(tempC - range.mostC) < NEAR_K2);
    return range.mostC > 2 * OFF_C && reached2.length > 0 ? "programme" : "none";
  }
  return isZero && range.leastC > ZERO_F ? "idle" : "none";
}
function isTelling(curve, outputAt) {
  const peak = peakOf(curve);
  const last = curve.timesSeconds.at(-1);
  let [tells, highCold, highFalling] = [false, false, false];
  for (let from = curve.timesSeconds[0]; from < last; from += TELLING_SECONDS) {
    const to = Math.min(last, from + TELLING_SECONDS);
    const [fromC, toC] = [temperatureAt(curve, from), temperatureAt(curve, to)];
    const mean2 = outputAt(from, to);
    if (fromC === null || toC === null || mean2 === null) continue;
    if (toC > fromC + NEAR_K2 && mean2 > TELLING_OUTPUT) tells = true;
    if (mean2 < INVERTED_OUTPUT) continue;
    if (from < peak.seconds && toC < COLD_C && toC < fromC + COLD_CLIMB_K) highCold = true;
    if (from > peak.seconds && toC < fromC) highFalling = true;
  }
  return tells && !(highCold && highFalling);
}
function silentSeconds(rows) {
  const known = rows.filter(({ output }) => output !== null);
  const on = known.filter(({ output }) => !isNone(output)).length;
  const share = Math.min(0.99, Math.max(0.01, on / Math.max(1, known.length)));
  const span = ((known.at(-1)?.seconds ?? 0) - (known[0]?.seconds ?? 0)) / Math.max(1, known.length);
  return span * Math.log(CHANCE) / Math.log(1 - share);
}
var KEPT = { nearK: 15, share: 0.7, seconds: 7200 };
function plannedCourse(curve, rows, plan) {
  const expansion = expandSchedule(plan);
  const shift = planShiftSeconds(curve, expansion);
  if (shift === null) return null;
  const planned = shifted(expansion.curve, shift);
  const peak = peakOf(planned);
  const after = expansion.timeline.filter((row) => row.startSeconds + shift >= peak.seconds);
  return {
    planned,
    peakC: peak.tempC,
    peakAtSeconds: peak.seconds,
    isClimbingAfterwards: after.some((row) => row.toC > row.fromC + NEAR_K2),
    keptUntil: keptTo2(planned, rows, peak.seconds)
  };
}
function keptTo2(planned, rows, peakAtSeconds) {
  const seen = { compared: 0, kept: 0, above: 0 };
  const keptAt = /* @__PURE__ */ new Map();
  let isKept = false;
  for (const { seconds, tempC } of rows) {
    const planC = seconds > peakAtSeconds ? null : temperatureAt(planned, seconds);
    const first = rows[0]?.seconds ?? seconds;
    if (planC !== null && tempC > planC + KEPT.nearK) seen.above++;
    else if (planC !== null) {
      seen.compared += seen.above + 1;
      seen.above = 0;
      if (tempC > planC - KEPT.nearK) seen.kept++;
      isKept = seconds - first >= KEPT.seconds && seen.kept >= KEPT.share * seen.compared;
    }
    keptAt.set(seconds, isKept);
  }
  return (seconds) => keptAt.get(seconds) === true;
}
function rangeOf(curves) {
  let leastC = Number.POSITIVE_INFINITY;
  let mostC = Number.NEGATIVE_INFINITY;
  for (const { tempsC } of curves)
    for (const tempC of tempsC) {
      leastC = Math.min(leastC, tempC);
      mostC = Math.max(mostC, tempC);
    }
  return { leastC, mostC };
}
function greatest(values) {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : Math.max(...known);
}
function isNone(fraction) {
  return Number.isNaN(fraction) || fraction <= 5e-3;
}

// src/core/firing/heatRows.ts
var NEAR_SECONDS = 150;
function rowsOf(curve, outputAt) {
  return timeBins(curve).flatMap(({ timesSeconds, tempsC, widthSeconds }) => {
    const sums = [0];
    for (const tempC of tempsC) sums.push(sums.at(-1) + tempC);
    return Array.from(timesSeconds, (seconds, i) => {
      const first = lastAtOrBefore(timesSeconds, seconds - NEAR_SECONDS - 1e-6) + 1;
      const last = lastAtOrBefore(timesSeconds, seconds + NEAR_SECONDS);
      const reach = Math.min(i - first, last - i);
      const [from, until] = [i - reach, i + reach + 1];
      return {
        seconds,
        tempC: (sums[until] - sums[from]) / (until - from),
        rawC: tempsC[i],
        output: outputAt(seconds - widthSeconds, seconds)
      };
    });
  });
}
var FEWEST_ROWS = 3;
function rateOver(rows, at2, seconds) {
  const end = rows[at2].seconds;
  let first = at2;
  while (first > 0 && (end - rows[first - 1].seconds <= seconds || at2 - first + 1 < FEWEST_ROWS))
    first--;
  const used = rows.slice(first, at2 + 1);
  const line2 = lineThrough(used);
  if (line2 === null) return null;
  const middle = used.length >> 1;
  return {
    ...line2,
    earlyCPerHour: between(used[0], used[middle]),
    lateCPerHour: between(used[middle], used.at(-1))
  };
}
function between(from, to) {
  return 3600 * (to.tempC - from.tempC) / Math.max(1, to.seconds - from.seconds);
}
function lineThrough(rows) {
  const n = rows.length;
  if (n < FEWEST_ROWS) return null;
  const meanT = rows.reduce((sum, row) => sum + row.seconds, 0) / n;
  const meanC = rows.reduce((sum, row) => sum + row.rawC, 0) / n;
  let tt = 0;
  let tc = 0;
  let cc = 0;
  for (const { seconds, rawC } of rows) {
    tt += (seconds - meanT) ** 2;
    tc += (seconds - meanT) * (rawC - meanC);
    cc += (rawC - meanC) ** 2;
  }
  if (!(tt > 0)) return null;
  const slope2 = tc / tt;
  const residual = Math.max(0, cc - slope2 * tc) / (n - 2);
  return { rateCPerHour: 3600 * slope2, sigmaCPerHour: 3600 * Math.sqrt(residual / tt) };
}

// src/core/firing/runaway.ts
var ABOVE_K = 15;
var LONG_SECONDS = 600;
var SOAK_BACK_K = 15;
var SLOWING = 0.7;
var FAR_RISE_K = 30;
var ZONE_APART_K = 60;
var NO_OUTPUT = 0.03;
var FALLEN_K = 15;
var PAST_PEAK_K = 30;
function runawayOf(reading, plan) {
  const zones = reading.channels.flatMap(
    ({ name, role, curve }) => role === "temperature" && curve !== null ? [{ name, curve }] : []
  );
  const found = zones.flatMap(({ name, curve }) => {
    const others = zones.flatMap((zone) => zone.curve === curve ? [] : [zone.curve]);
    return stretchesOf({ name, curve, others }, reading, plan);
  });
  return found.toSorted((a, b) => b.toC - b.fromC - (a.toC - a.fromC))[0] ?? null;
}
function stretchesOf(zone, reading, plan) {
  const asked2 = askedOf(reading, zone.curve);
  const rows = rowsOf(zone.curve, asked2.outputAt);
  return rulesFor(zone, { asked: asked2, rows, plan }).flatMap((rule2) => climbsBy(rule2, rows, zone.name));
}
function rulesFor(zone, known) {
  const { asked: asked2, rows, plan } = known;
  if (asked2.setPoint === "idle") return [idleRule];
  if (asked2.setPoint === "programme") return [setPointRule(zone, asked2)];
  return [
    ...asked2.isOutputTelling ? [outputRule(asked2, rows)] : [],
    ...plan === null ? [] : planRules(zone.curve, rows, plan)
  ];
}
var idleRule = {
  why: "columns at 0",
  unasked: ({ tempC }) => tempC > 60 ? { askedC: null } : null,
  riseK: () => 60,
  seconds: LONG_SECONDS,
  growthK: 0,
  rateCPerHour: 30
};
function setPointRule({ others }, asked2) {
  return {
    why: "above the set point",
    unasked: ({ seconds, tempC, output }) => {
      const setC = asked2.setPointAt(seconds);
      const isHeating = output !== null && output > NO_OUTPUT;
      if (setC === null) return "unknown";
      if (setC === "over" && isHeating) return null;
      if (setC === "over") return { askedC: null };
      if (tempC - setC <= ABOVE_K) return null;
      if (asked2.isOff(setC) && !isHeating) return { askedC: null };
      const isShared = others.every((curve) => {
        const otherC = temperatureAt(curve, seconds);
        return otherC === null || otherC - setC > ABOVE_K;
      });
      return !isShared && tempC - setC < ZONE_APART_K ? null : { askedC: setC };
    },
    riseK: ({ askedC }) => askedC === null ? SOAK_BACK_K : 5,
    seconds: LONG_SECONDS,
    growthK: 5,
    rateCPerHour: 15
  };
}
function outputRule(asked2, rows) {
  const seconds = Math.max(2 * LONG_SECONDS, asked2.silentSeconds(rows));
  return {
    why: "output at 0",
    unasked: ({ output }) => output !== null && output <= NO_OUTPUT ? { askedC: null } : null,
    riseK: () => 20,
    seconds,
    growthK: 0,
    rateCPerHour: 20
  };
}
function planRules(curve, rows, plan) {
  const course = plannedCourse(curve, rows, plan);
  if (course === null) return [];
  const { planned, peakC, peakAtSeconds, isClimbingAfterwards, keptUntil } = course;
  const isIdle = ({ output }) => output === null || output <= NO_OUTPUT;
  let hottestC = Number.NEGATIVE_INFINITY;
  let before = Number.POSITIVE_INFINITY;
  const hottestUntil = (row) => {
    if (row.seconds < before) hottestC = Number.NEGATIVE_INFINITY;
    before = row.seconds;
    hottestC = Math.max(hottestC, row.tempC);
    return hottestC;
  };
  const above = {
    why: "above the plan",
    unasked: (row) => {
      const { seconds, tempC } = row;
      if (!isIdle(row) || !keptUntil(seconds)) return null;
      const planC = temperatureAt(planned, seconds);
      const askedC = seconds > peakAtSeconds ? peakC : planC;
      const least = askedC === peakC ? ABOVE_K : 2 * ABOVE_K;
      return askedC !== null && tempC > askedC + least ? { askedC } : null;
    },
    riseK: () => 10,
    seconds: LONG_SECONDS,
    growthK: 10,
    rateCPerHour: 15
  };
  const afterwards = {
    why: "after the end",
    unasked: (row) => {
      const top = hottestUntil(row);
      const isPast = top > peakC - 20 && row.tempC < top - PAST_PEAK_K;
      return isIdle(row) && isPast && !isClimbingAfterwards && row.seconds > peakAtSeconds ? { askedC: null } : null;
    },
    riseK: () => 20,
    seconds: LONG_SECONDS,
    growthK: 0,
    rateCPerHour: 20
  };
  return [above, afterwards];
}
function climbsBy(rule2, rows, zone) {
  const found = [];
  const lastC = rows.at(-1)?.tempC ?? 0;
  let lowest = null;
  let isOpen = false;
  for (const [at2, row] of rows.entries()) {
    const sign = rule2.unasked(row);
    if (sign === "unknown") continue;
    if (sign === null) {
      lowest = null;
      isOpen = false;
      continue;
    }
    const here = { at: at2, row, askedC: sign.askedC };
    if (lowest === null || !isOpen && isBetterStart(here, lowest)) lowest = here;
    const last = found.at(-1);
    if (isOpen && last !== void 0) {
      if (row.tempC > last.hottest.row.tempC) last.hottest = here;
    } else if (isRunaway(rule2, { lowest, here, rows })) {
      isOpen = true;
      found.push({ open: lowest, hottest: here });
    }
  }
  return found.map((each) => runawayFrom(rule2, each, { zone, lastC }));
}
function isBetterStart(here, lowest) {
  if (here.askedC !== null && lowest.askedC === null) return true;
  return here.row.tempC < lowest.row.tempC;
}
function isRunaway(rule2, walk) {
  const { lowest, here, rows } = walk;
  const rise = here.row.tempC - lowest.row.tempC;
  if (here.row.seconds - lowest.row.seconds < rule2.seconds || rise < rule2.riseK(lowest))
    return false;
  const growth2 = rise - ((here.askedC ?? 0) - (lowest.askedC ?? 0));
  if (here.askedC !== null && lowest.askedC !== null && growth2 < rule2.growthK) return false;
  const rate = rateOver(rows, here.at, LONG_SECONDS);
  if (rate === null || rate.rateCPerHour < Math.max(rule2.rateCPerHour, 3 * rate.sigmaCPerHour))
    return false;
  return rise >= FAR_RISE_K || rate.lateCPerHour >= SLOWING * rate.earlyCPerHour;
}
function runawayFrom(rule2, { open, hottest }, { zone, lastC }) {
  return {
    zone,
    why: rule2.why,
    fromSeconds: open.row.seconds,
    fromC: open.row.tempC,
    toSeconds: hottest.row.seconds,
    toC: hottest.row.tempC,
    askedC: hottest.askedC,
    isOver: lastC < hottest.row.tempC - FALLEN_K
  };
}

// src/core/firing/FiringFacts.ts
function zoneNamed(facts, zone) {
  return facts.zones.length > 1 ? zone.name : null;
}

// src/core/firing/rawWareFindings.ts
var RAW = /* @__PURE__ */ new Set(["bone dry", "damp", "glazed raw"]);
function rawWareFindings(facts) {
  const zone = hottestZone(facts.zones);
  const { curve, peakC } = zone;
  const ware = { ...rawOf(facts), curve, peakC, tense: "past" };
  const name = zoneNamed(facts, zone);
  return [...waterFindings(ware), ...carbonFindings(ware)].map((each) => ({ ...each, zone: name }));
}
function rawOf({ record: record2, plan }) {
  const said = (record2?.ware ?? []).filter(({ state: state2 }) => state2 !== null);
  if (said.length > 0) {
    const raw = said.filter(({ state: state2 }) => RAW.has(state2));
    return {
      isRaw: raw.length > 0,
      isDamp: raw.some(({ state: state2 }) => state2 === "damp"),
      thickestMm: greatest2(
        raw.flatMap(({ thickestMm, wallMm, baseMm }) => [thickestMm, wallMm, baseMm])
      )
    };
  }
  const state = plan?.ware.state ?? null;
  return {
    isRaw: state === null ? null : RAW.has(state),
    isDamp: state === "damp",
    thickestMm: plan?.ware.thickestMm ?? null
  };
}
function greatest2(sizes) {
  const known = sizes.filter((size) => size !== null);
  return known.length === 0 ? null : Math.max(...known);
}

// src/core/firing/nextTime/climbChanges.ts
var LATE_SECONDS2 = 1800;
var VERY_LATE_SECONDS = 2 * LATE_SECONDS2;
var DRIFTED_K = 5;
var NEAR_PEAK_K3 = 15;
function climbChanges(context) {
  return [
    ...outOfReach(context),
    ...behind2(context),
    ...lostPower(context),
    ...rawWare(context),
    ...driftingHold(context)
  ];
}
function outOfReach({ facts, reachC, wantedCone: wantedCone2, history }) {
  if (reachC === null) return [];
  const below = facts.comparison?.peakDeviationC ?? 0;
  const weakerBy = history?.weakerBy ?? null;
  return [
    {
      about: "elements",
      change: `Have a licensed electrician see to elements, relays and mains, kiln isolated and cold, before the next hot firing: as it is, no schedule makes cone ${wantedCone2}.`,
      because: `It stayed {below} below its planned peak, and by the log it hardly climbs beyond {reach}.${weakerBy === null ? "" : " At the same temperatures it gave {less} less than in the strongest earlier firing."} A softer cone, or a lighter load, is all that a schedule can do.`,
      evidence: [
        { name: "below", value: Math.abs(below), kind: "difference" },
        { name: "reach", value: reachC, kind: "temperature" },
        ...weakerBy === null ? [] : [{ name: "less", value: weakerBy, kind: "percent" }]
      ],
      standing: "firm",
      ask: null
    }
  ];
}
function behind2({ facts, reachC }) {
  const { comparison } = facts;
  if (comparison === null || reachC !== null || comparison.peakDelaySeconds < LATE_SECONDS2)
    return [];
  const isBelow = comparison.largestDeviationC < 0;
  return [
    {
      about: "climb",
      change: "Plan a climb that this kiln can follow: slower where it fell behind, or at full power with the time that takes.",
      because: `It came to its peak {late} after the plan${isBelow ? " and was {below} below it at {when} after the start" : ""}.`,
      evidence: [
        { name: "late", value: comparison.peakDelaySeconds, kind: "duration" },
        { name: "below", value: Math.abs(comparison.largestDeviationC), kind: "difference" },
        { name: "when", value: comparison.largestDeviationAtSeconds, kind: "elapsed" }
      ],
      standing: comparison.peakDelaySeconds >= VERY_LATE_SECONDS ? "firm" : "worth trying",
      ask: { kind: "climb" }
    }
  ];
}
var LEAVES = {
  "water, rate of the start": STEAM,
  "carbon burning out": CARBON
};
function rawWare({ facts }) {
  const unit = facts.reading.unit === "F" ? "F" : "C";
  return rawWareFindings(facts).filter(({ severity }) => severity !== "note").map(({ topic, statement, advice: advice2, evidence: evidence2, severity }) => {
    const usual = evidence2.find(({ name }) => name === "usual");
    const at2 = LEAVES[topic];
    return {
      about: "climb",
      change: advice2,
      because: statement,
      evidence: evidence2,
      standing: severity === "warning" ? "firm" : "worth trying",
      ask: at2 === void 0 || typeof usual?.value !== "number" ? null : {
        kind: "pace",
        fromC: at2.fromC,
        toC: at2.toC,
        mostCPerHour: rateDown(usual.value, unit)
      }
    };
  });
}
function lostPower({ facts }) {
  const [first] = facts.powerLosses;
  if (first === void 0) return [];
  return [
    {
      about: "power",
      change: "Have a licensed electrician find out why the heat failed before firing again: mains, relays, plugs, lid switch, under your local code.",
      because: "On the way up, at {when}, it fell from {from} to {lowest}; {count} such places in all.",
      evidence: [
        { name: "when", value: first.fromSeconds, kind: "elapsed" },
        { name: "from", value: first.fromC, kind: "temperature" },
        { name: "lowest", value: first.lowestC, kind: "temperature" },
        { name: "count", value: facts.powerLosses.length, kind: "count" }
      ],
      standing: "worth trying",
      ask: null
    }
  ];
}
function driftingHold({ zone }) {
  const hold = zone.segments.filter(
    ({ kind, toC, fromC, startSeconds, endSeconds }) => kind === "hold" && Math.min(fromC, toC) > zone.peakC - NEAR_PEAK_K3 && endSeconds > startSeconds
  ).toSorted((a, b) => Math.abs(b.toC - b.fromC) - Math.abs(a.toC - a.fromC))[0];
  if (hold === void 0 || Math.abs(hold.toC - hold.fromC) <= DRIFTED_K) return [];
  const rising = hold.toC > hold.fromC;
  return [
    {
      about: "hold",
      change: rising ? "Let the controller settle before the hold: a slower last climb, or its tuning run anew." : "See why the hold sagged: the controller's tuning, or elements near their limit, which a licensed electrician measures with the kiln isolated and cold.",
      because: `The hold at the peak ${rising ? "rose" : "sagged"} from {from} to {to} in {span}.`,
      evidence: [
        { name: "from", value: hold.fromC, kind: "temperature" },
        { name: "to", value: hold.toC, kind: "temperature" },
        { name: "span", value: hold.endSeconds - hold.startSeconds, kind: "duration" }
      ],
      standing: "worth trying",
      ask: null
    }
  ];
}

// src/core/firing/nextTime/coneChanges.ts
var TOO_FAR_CONES = 1;
var OFF_PLAN_K = 10;
function coneChanges(context) {
  const { zone, wantedCone: cone, reachC } = context;
  if (cone === null || reachC !== null) return [];
  const { position, cones, sigmaCones } = zone.heatwork;
  const state = cones.find((each) => each.cone === cone);
  if (state === void 0) return [];
  const off = position.index === null ? null : position.index - coneIndex(cone);
  const isShort = state.marginK < 0;
  if (!isShort && (off === null || off <= TOO_FAR_CONES)) return missedByPlan(context, cone);
  const sigma = sigmaCones ?? 0;
  const standing = standingOf(off, sigma);
  const size = off !== null && Math.abs(off) < 0.05 ? "less than 0.1 cones" : "{off} cones";
  const kilnDidIt = standing !== "too close to tell" && planLeadsThere(context, cone, isShort);
  return [
    {
      about: "cone",
      change: kilnDidIt ? kilnWords(cone, isShort) : plainWords(cone, { isShort, isClose: standing === "too close to tell" }),
      because: `It reached ${position.label}, ${size} ${isShort ? "short of" : "over"} cone ${cone}; two firings in three lie within {sigma} cones of what is computed.${kilnDidIt ? "" : cause(context, isShort)}`,
      evidence: [
        { name: "margin", value: Math.abs(state.marginK), kind: "difference" },
        { name: "off", value: Math.abs(off ?? coneIndex(cone)), kind: "cones" },
        { name: "sigma", value: sigma, kind: "cones" },
        { name: "below plan", value: Math.abs(belowPlan(context)), kind: "difference" },
        ...context.facts.plan === null ? [] : [
          {
            name: "planned",
            value: topOf2(context.facts.plan).toC,
            kind: "temperature"
          }
        ]
      ],
      standing,
      ask: kilnDidIt || standing === "too close to tell" ? null : { kind: "cone", cone }
    }
  ];
}
function missedByPlan(context, cone) {
  const { plan } = context.facts;
  if (plan === null) return [];
  const { schedule, known } = plannedFor(context, plan);
  const { findings, heatwork } = draftSchedule({
    schedule: { ...schedule, cone },
    start: null,
    findingsOnly: true,
    ...known
  });
  const isMissed = findings.some(
    ({ topic, severity }) => topic === "cone wanted" && severity === "warning"
  );
  const state = heatwork.cones.find((each) => each.cone === cone);
  if (!isMissed || state === void 0) return [];
  const isShort = state.marginK < 0;
  return [
    {
      about: "cone",
      change: plainWords(cone, { isShort, isClose: false }),
      because: `Its schedule, laid out for this kiln and thermocouple, leads to ${heatwork.position.label}.`,
      evidence: [
        { name: "margin", value: Math.abs(state.marginK), kind: "difference" },
        { name: "planned", value: topOf2(plan).toC, kind: "temperature" }
      ],
      standing: "worth trying",
      ask: { kind: "cone", cone }
    }
  ];
}
function plannedFor({ kiln, ware }, plan) {
  return {
    schedule: { ...plan, ware: toldWare(plan.ware, ware) },
    known: { offsetK: kiln.offsetK, ...kiln.own && { kiln: kiln.own } }
  };
}
function standingOf(off, sigma) {
  if (off === null || Math.abs(off) > 2 * sigma) return "firm";
  return Math.abs(off) > sigma ? "worth trying" : "too close to tell";
}
function planLeadsThere(context, cone, isShort) {
  const { plan } = context.facts;
  const offK = belowPlan(context);
  if (plan === null || (isShort ? offK > -OFF_PLAN_K : offK < OFF_PLAN_K)) return false;
  const { schedule, known } = plannedFor(context, plan);
  const solved2 = solveSchedule({ schedule, cone, solve: "peak", ...known });
  if (!solved2.ok) return false;
  const moreK = topOf2(solved2.value).toC - topOf2(schedule).toC;
  return isShort ? moreK < 1 : moreK > -1;
}
function kilnWords(cone, isShort) {
  return isShort ? `Leave the schedule as it is, which leads to cone ${cone} at {planned}, and find out why the kiln stopped {below plan} short of that: switched off early, a limit in the controller, or weak elements.` : `Leave the schedule as it is, which leads to cone ${cone} at {planned}, and find out why the kiln went {below plan} beyond that: a relay that sticks, or the controller's tuning.`;
}
function plainWords(cone, { isShort, isClose }) {
  if (isClose)
    return `Leave the peak as it is and look at cone ${cone} again: {margin} ${isShort ? "short" : "over"} is within the uncertainty.`;
  return `Give ${isShort ? "more" : "less"} heat for cone ${cone}: about {margin} ${isShort ? "more" : "less"} at the peak, or a ${isShort ? "longer" : "shorter"} hold.`;
}
function withPeakSaid(change2, schedule) {
  if (change2.ask?.kind !== "cone") return change2;
  const { toC, holdSeconds } = topOf2(schedule);
  const isMore = change2.change.startsWith("Give more");
  const hold = holdSeconds > 0 ? " with {hold} there" : "";
  const instead = change2.evidence.some(({ name }) => name === "planned") ? ", where {planned} was planned" : "";
  return {
    ...change2,
    change: `Give ${isMore ? "more" : "less"} heat for cone ${change2.ask.cone}: peak at {peak}${hold}${instead}.`,
    evidence: [
      ...change2.evidence,
      { name: "peak", value: toC, kind: "temperature" },
      { name: "hold", value: holdSeconds, kind: "duration" }
    ]
  };
}
function topOf2({ segments }) {
  return segments.reduce((top, each) => each.toC >= top.toC ? each : top);
}
function cause(context, isShort) {
  if (!isShort || belowPlan(context) > -OFF_PLAN_K) return "";
  return " The kiln itself stayed {below plan} below the planned peak.";
}
function belowPlan({ facts }) {
  return facts.comparison?.peakDeviationC ?? 0;
}

// src/core/firing/nextTime/coolingChanges.ts
var ROUNDING = 1.01;
var TELLING = 1.1;
var CLEARLY = 2;
var FASTER_THAN_PLANNED = 1.3;
function coolingChanges(context) {
  const { facts } = context;
  const over = facts.zones.flatMap(({ crossings }) => crossings).filter(({ direction }) => direction === "cooling").flatMap((crossing) => {
    const ratio = overLimit(crossing);
    return ratio > ROUNDING ? [{ crossing, ratio }] : [];
  }).toSorted((a, b) => b.ratio - a.ratio);
  const bands = [...new Set(over.map(({ crossing }) => crossing.band))];
  return bands.flatMap((band) => {
    const worst = over.find(({ crossing }) => crossing.band === band);
    return worst ? [change(worst.crossing, worst.ratio, context)] : [];
  });
}
function overLimit({ fastestCPerHour, limitCPerHour, severity }) {
  if (severity === null || severity === "note") return 0;
  if (fastestCPerHour === null || limitCPerHour === null) return 0;
  return Math.abs(fastestCPerHour) / limitCPerHour;
}
function change(crossing, ratio, context) {
  const fastest = Math.abs(crossing.fastestCPerHour);
  const pace2 = paceOf(crossing, crossing.limitCPerHour, context);
  const limit = crossing.limitCPerHour;
  const planned = plannedRate(crossing.band, context);
  const standing = ratio > CLEARLY ? "firm" : ratio > TELLING ? "worth trying" : "too close to tell";
  const asked2 = planned !== null && planned.fastest <= ROUNDING * pace2.mostCPerHour;
  const hurried = asked2 && fastest > FASTER_THAN_PLANNED * planned.fastest;
  const from = "from {from} to {to}";
  return {
    about: "cooling",
    change: hurried ? `Let the kiln cool ${from} no faster than the schedule leads to, {planned}: lid and vents shut.` : standing === "too close to tell" ? `Leave the cooling ${from} as it is unless pieces cracked: {fastest} against {limit} is within what either is known to.` : `Cool ${from}, through the ${crossing.band}, at {limit} or slower.`,
    because: `It went at up to {fastest}, ${standing === "too close to tell" ? "just over" : "{times} times"} the guide of {limit} for ${quoted(crossing.limitMeantFor ?? "")}.${hurried ? " The schedule leads to less, so it was not the cause." : ""}`,
    evidence: [
      { name: "from", value: crossing.fromC, kind: "temperature" },
      { name: "to", value: crossing.toC, kind: "temperature" },
      { name: "fastest", value: fastest, kind: "rate" },
      { name: "limit", value: limit, kind: "rate" },
      { name: "times", value: ratio, kind: "cones" },
      ...planned === null ? [] : [{ name: "planned", value: planned.fastest, kind: "rate" }]
    ],
    standing,
    ask: asked2 || standing === "too close to tell" ? null : pace2
  };
}
function paceOf({ fromC, toC }, mostCPerHour, { facts }) {
  const unit = facts.reading.unit === "F" ? "F" : "C";
  return { kind: "pace", fromC, toC, mostCPerHour: rateDown(mostCPerHour, unit) };
}
function plannedRate(band, { facts, kiln, ware }) {
  if (facts.plan === null) return null;
  const plan = { ...facts.plan, ware: toldWare(facts.plan.ware, ware) };
  const { curve } = expandSchedule(plan, kiln.own === null ? {} : { kiln: kiln.own });
  const crossing = limitedCrossings(curve, { limitFor: limitsFor(plan.ware) }).find(
    (each) => each.band === band && each.direction === "cooling"
  );
  if (!crossing || crossing.fastestCPerHour === null) return null;
  return { fastest: Math.abs(crossing.fastestCPerHour) };
}

// src/core/firing/nextTime/handlingChanges.ts
var FIRST_CRACK_C = 200;
var BOLDEST_C = 250;
var COOL_C = 100;
var STILL_HOT_C = 120;
var OFF_K = 5;
var FIRMLY_WEAKER = 0.2;
function handlingChanges(context) {
  return [
    ...openedHot(context),
    ...weakElements(context),
    ...thermocouple(context),
    ...driftedProbe(context),
    ...endedHot(context),
    ...record(context)
  ];
}
function openedHot({ facts }) {
  const { tempC, from } = facts.opening;
  if (tempC === null || tempC <= FIRST_CRACK_C) return [];
  return [
    {
      about: "lid",
      change: "Leave the kiln shut until it is below {cool}.",
      because: `It ${from === "log" ? "seems to have been" : "was"} opened at {opened}; cold air on ware as hot as that cracks it.`,
      evidence: [
        { name: "cool", value: COOL_C, kind: "temperature" },
        { name: "opened", value: tempC, kind: "temperature" }
      ],
      standing: tempC > BOLDEST_C ? "firm" : "worth trying",
      ask: null
    }
  ];
}
function weakElements({ history, reachC }) {
  const weakerBy = history?.weakerBy ?? null;
  if (weakerBy === null || reachC !== null) return [];
  return [
    {
      about: "elements",
      change: "Have a licensed electrician measure the elements, kiln isolated and cold, before the next hot firing.",
      because: "At the same temperatures they gave {less} less than in the strongest earlier firing; a heavier load or low mains would look the same.",
      evidence: [{ name: "less", value: weakerBy, kind: "percent" }],
      standing: weakerBy >= FIRMLY_WEAKER ? "firm" : "worth trying",
      ask: null
    }
  ];
}
function thermocouple({ facts }) {
  const offset = facts.witness?.offset;
  if (!offset || offset.lowK === null || offset.highK === null) return [];
  if (!offset.agree)
    return [
      plain(
        "thermocouple",
        "Set fresh witness cones beside the thermocouple, three in a row, and check their numbers.",
        "The witness cones of this firing contradict one another."
      )
    ];
  const { offsetK, sigmaK } = offset;
  const awayK = Math.abs(offsetK - offset.usual.offsetK);
  if (awayK < OFF_K || awayK < sigmaK) return [];
  return [
    {
      about: "thermocouple",
      change: `Reckon with a thermocouple that reads about {off} too ${offsetK > 0 ? "low" : "high"}: in the draft or in the controller, not in both.`,
      because: "The witness cones allow {lowest} to {highest} to be added to its readings.",
      evidence: [
        { name: "off", value: Math.abs(offsetK), kind: "difference" },
        { name: "lowest", value: offset.lowK, kind: "difference" },
        { name: "highest", value: offset.highK, kind: "difference" }
      ],
      standing: awayK > 2 * sigmaK ? "firm" : "worth trying",
      ask: null
    }
  ];
}
function driftedProbe({ history }) {
  const drift = history?.drift;
  if (!drift || drift.lowK <= 0 && drift.highK >= 0) return [];
  return [
    {
      about: "thermocouple",
      change: "Look at the thermocouple: its tip, its terminals, how deep it sits.",
      because: `It reads {drift} ${drift.driftK > 0 ? "lower" : "higher"} than in the middle of {firings} earlier firings; the cones allow {lowest} to {highest} between them.`,
      evidence: [
        { name: "drift", value: Math.abs(drift.driftK), kind: "difference" },
        { name: "firings", value: drift.earlier.firings, kind: "count" },
        { name: "lowest", value: drift.lowK, kind: "difference" },
        { name: "highest", value: drift.highK, kind: "difference" }
      ],
      standing: "worth trying",
      ask: null
    }
  ];
}
function endedHot({ zone }) {
  if (zone.lastReadingC <= STILL_HOT_C) return [];
  return [
    {
      about: "log",
      change: "Let the log run until the kiln is opened.",
      because: "The readings end at {last}; nothing is known of how it cooled from there.",
      evidence: [{ name: "last", value: zone.lastReadingC, kind: "temperature" }],
      standing: "firm",
      ask: null
    }
  ];
}
function record({ facts, diagnosis }) {
  const [first, second] = diagnosis.filter(
    ({ standing, evidence: evidence2 }) => standing !== "speaks against" && evidence2.length > 0
  );
  const apart = first && second ? tellingApart(diagnosis)[0] : void 0;
  return [
    ...first && second && apart ? [
      plain(
        "record",
        `Note what tells ${first.name} from ${second.name}. ${quoted(apart.ask)} ${quoted(apart.look)}`.trim(),
        "Both kinds of crack are left standing by this firing."
      )
    ] : [],
    ...facts.witness === null ? [
      plain(
        "record",
        "Stand three witness cones beside the thermocouple: one that falls, the one you want, one that stands.",
        "Without them the cone is computed from a thermocouple that nothing has checked."
      )
    ] : []
  ];
}
function plain(about, change2, because) {
  return { about, change: change2, because, evidence: [], standing: "worth trying", ask: null };
}

// src/core/firing/nextTime/cures.ts
var MOST_CURES = 3;
var RULE_C_PER_HOUR = 50;
var WARMING_C = { from: 100, to: 650 };
var WARMING_C_PER_HOUR = { least: 30, most: 100 };
var CURES = {
  "crackle by fit": ({ facts }) => isCrackleWanted(facts) ? null : {
    about: "glaze",
    change: "If the crackle is not wanted, make the glaze shrink less: more silica or some boron in it, less soda and potash; a thinner coat helps a little. The firing is not to blame."
  },
  "delayed crazing": () => ({
    about: "glaze",
    change: "Against crazing that comes later: make the glaze shrink less (more silica or some boron, less soda and potash), and fire the clay tighter, hotter or longer, so that it takes up less water and swells less."
  }),
  shivering: () => ({
    about: "glaze",
    change: "Against shivering: make the glaze shrink more (less silica, more soda and potash) or the clay shrink less (a clay with less free silica), round the rims and edges, and put less glaze on them. Keep such pieces from use: the flakes are sharp."
  }),
  "one-sided glaze": ({ facts, diagnosis }) => ({
    about: "glaze",
    change: `Against splitting by glaze on one side: a thinner coat, or the same coat inside and outside${fitWords(facts, diagnosis)}.`
  }),
  "dunting at quartz": (context, said) => slowerFall(context, said, "quartz inversion"),
  "dunting at cristobalite": (context, said) => slowerFall(context, said, "cristobalite inversion"),
  "lid opened hot": (_, said) => said.some(({ about }) => about === "lid") ? null : {
    about: "lid",
    change: "Leave lid, vents and spy holes shut until it is below {cool}, and unpack when the ware is hand-warm.",
    evidence: [{ name: "cool", value: COOL_C, kind: "temperature" }]
  },
  "heating crack": slowerClimb,
  "bisque crack": () => ({
    about: "bisque",
    change: "Tap every piece before it is glazed, and glaze none that rings dull. In the bisque: drier ware, a slower climb to red heat, pieces not stacked tight, and no opening while it is hot."
  }),
  "drying crack": () => ({
    about: "drying",
    change: "Dry slower and more evenly: rims and handles covered, off a board that drinks, turned over in time; join parts of the same wetness, and keep walls of one thickness."
  }),
  "S-crack": () => ({
    about: "drying",
    change: "Compress the base well when throwing, leave no water standing in it, keep it no thicker than the wall, and dry it slowly, upside down once the rim bears it."
  }),
  "something else": () => ({
    about: "record",
    change: "Keep the broken pieces and note edges, place and pattern of the cracks in the record: none of the usual causes fits what is there."
  })
};
function cures(context, said) {
  const likely = likelyCauses(context.diagnosis);
  const possible = hasBroken(context) ? context.diagnosis.filter(isPossible) : [];
  return [...likely, ...possible].slice(0, MOST_CURES).flatMap((cause2) => {
    const isLikely = likely.includes(cause2);
    const remedy = CURES[cause2.kind](context, said);
    if (remedy === null || !isLikely && remedy.ask) return [];
    return [
      {
        evidence: [],
        ask: null,
        ...remedy,
        because: `${isLikely ? "A likely" : "A possible"} cause of what was heard or found: ${cause2.name}.`,
        standing: isLikely ? "firm" : "worth trying"
      }
    ];
  });
}
function likelyCauses(diagnosis) {
  return diagnosis.filter(({ standing }) => standing === "speaks for");
}
function isPossible({ standing, evidence: evidence2 }) {
  return standing === "open" && evidence2.some(({ direction }) => direction === "for");
}
function hasBroken({ facts }) {
  const { record: record2 } = facts;
  return (record2?.trials ?? []).some(({ cracked }) => cracked === "through") || (record2?.found ?? []).some(
    ({ what, rings }) => rings === "dull" || what !== null && what !== "crackle"
  );
}
function isCrackleWanted({ plan, record: record2 }) {
  return plan?.ware.crackle === true || (record2?.trials ?? []).length > 0;
}
function fitWords({ record: record2 }, diagnosis) {
  const isSqueezed = likelyCauses(diagnosis).some(({ kind }) => kind === "shivering");
  if (isSqueezed) return ", or a glaze that shrinks more (less silica, more soda and potash)";
  const isPulled = (record2?.trials ?? []).some(({ cracked }) => cracked === "crackle") || (record2?.found ?? []).some(({ what }) => what === "crackle");
  return isPulled ? ", or a glaze that shrinks less (more silica or some boron, less soda and potash)" : ", or a glaze that fits the clay more nearly";
}
function slowerFall(context, said, band) {
  const passages = context.facts.zones.flatMap(({ crossings }) => crossings).filter((crossing) => crossing.band === band && crossing.direction === "cooling");
  const [first] = passages;
  if (first === void 0 || said.some(({ about, evidence: evidence2 }) => about === "cooling" && isThere(evidence2, first.fromC)))
    return null;
  const fastest = Math.max(
    ...passages.map(({ fastestCPerHour }) => Math.abs(fastestCPerHour ?? 0))
  );
  const pace2 = paceOf(first, fastest > 0 ? fastest / 2 : RULE_C_PER_HOUR, context);
  return {
    about: "cooling",
    change: `Cool from {from} to {to}, through the ${band}, at {limit} or slower${fastest > 0 ? ", half as fast as this time, {fastest}" : ""}.`,
    evidence: [
      { name: "from", value: pace2.fromC, kind: "temperature" },
      { name: "to", value: pace2.toC, kind: "temperature" },
      { name: "limit", value: pace2.mostCPerHour, kind: "rate" },
      { name: "fastest", value: fastest, kind: "rate" }
    ],
    ask: pace2
  };
}
function isThere(evidence2, fromC) {
  return evidence2.some(({ name, value }) => name === "from" && value === fromC);
}
function slowerClimb(context) {
  const fastest = Math.max(
    0,
    ...context.facts.zones.flatMap(({ crossings }) => crossings).filter(({ direction }) => direction === "heating").map(({ fastestCPerHour }) => fastestCPerHour ?? 0)
  );
  const { least, most } = WARMING_C_PER_HOUR;
  const half = fastest > 0 ? fastest / 2 : most;
  const pace2 = paceOf(
    { fromC: WARMING_C.from, toC: WARMING_C.to },
    Math.min(most, Math.max(least, half)),
    context
  );
  return {
    about: "climb",
    change: `Put the ware in quite dry, and climb from {from} to {to} at {limit} or slower.`,
    evidence: [
      { name: "from", value: pace2.fromC, kind: "temperature" },
      { name: "to", value: pace2.toC, kind: "temperature" },
      { name: "limit", value: pace2.mostCPerHour, kind: "rate" }
    ],
    ask: pace2
  };
}

// src/core/firing/nextTime/kilnTooWeak.ts
var FELL_SHORT_K = 10;
function kilnTooWeak({ plan, comparison }, cone, kiln) {
  if (plan === null || cone === null || kiln.own === null) return null;
  if (kiln.own.learned?.power.from !== "output") return null;
  if (comparison === null || comparison.peakDeviationC > -FELL_SHORT_K) return null;
  const solved2 = solveSchedule({
    schedule: plan,
    cone,
    solve: "peak",
    kiln: kiln.own,
    offsetK: kiln.offsetK
  });
  if (solved2.ok) return null;
  const isWeak = solved2.problems.some(({ code }) => code === "schedule/kiln-too-weak");
  return isWeak ? kilnReachC(kiln.own) : null;
}
function mendedKiln(kiln, why) {
  const { isOwn } = kiln;
  const offsetK = isOwn && kiln.offsetK !== null ? Math.round(kiln.offsetK) : null;
  return { own: null, logs: [], offsetK, isOwn, tellsOffset: isOwn, whyNone: why };
}

// src/core/firing/nextTime/asFile.ts
function asFile(path) {
  return path.startsWith("-") && path !== "-" ? `./${path}` : path;
}

// src/core/firing/nextTime/shellQuoted.ts
var PLAIN = /^[\w@%+=:,./-]+$/;
function shellQuoted(word) {
  return PLAIN.test(word) ? word : `'${word.replaceAll("'", String.raw`'\''`)}'`;
}

// src/core/firing/nextTime/nextCommand.ts
var NOT_SHOWN = "with yours, as far as the logs show it, no schedule mends everything";
var AS_IT_WAS = "no schedule makes the cone with yours as it was, so have it mended first";
function nextCommand(context, changes, paths) {
  const { facts, reachC, kiln } = context;
  const { plan } = facts;
  if (reachC !== null)
    return nextCommand(
      { ...context, reachC: null, kiln: mendedKiln(kiln, AS_IT_WAS) },
      changes,
      paths
    );
  const asks = changes.flatMap(({ ask }) => ask ?? []);
  if (plan !== null && paths.schedule !== null)
    return forPlan(context, { plan, path: paths.schedule, asks, output: paths.output });
  return forNew(context, asks, paths.output);
}
function none(why) {
  return {
    command: null,
    commandSays: `No command is given: ${why}.`,
    scheduleSays: `No schedule is given: ${why}.`,
    schedule: null
  };
}
function forPlan(context, planned) {
  const { plan, asks, output } = planned;
  const { kiln, ware, wantedCone: wantedCone2 } = context;
  const schedule = { ...plan, cone: plan.cone ?? wantedCone2, ware: toldWare(plan.ware, ware) };
  const head = ["undunted", "draft", asFile(planned.path)];
  const tail = [
    ...plan.cone === null && wantedCone2 !== null ? ["--cone", wantedCone2] : [],
    ...wareWords(context),
    ...kilnWords2(context)
  ];
  if (asks.length === 0)
    return {
      command: line([...head, ...tail]),
      ...says(`Nothing above changes the schedule; this lays it out again ${byKiln(context)}.`, {
        reminder: ownBodyLeftOut(context)
      }),
      schedule
    };
  const known = { offsetK: kiln.offsetK, ...kiln.own && { kiln: kiln.own } };
  const cone = asks.some(({ kind }) => kind === "cone") ? schedule.cone : null;
  const paces = pacesOf(asks);
  const repair = asks.some(({ kind }) => kind !== "cone");
  const solve = cone === null ? null : { part: "peak", cone };
  const changed = changedSchedule(schedule, { paces, repair, solve, ...known });
  const left = changed.ok ? draftSchedule({
    schedule: changed.value.after,
    start: null,
    findingsOnly: true,
    ...known
  }).findings.filter(({ severity }) => severity === "warning") : [];
  if ((!changed.ok || left.length > 0) && kiln.own !== null)
    return forPlan({ ...context, kiln: mendedKiln(kiln, NOT_SHOWN) }, planned);
  if (!changed.ok) return none(whyRefused(changed.problems));
  const limits2 = [...new Set(left.map(({ topic }) => topic))];
  return {
    command: line([
      ...head,
      ...repair ? ["--repair"] : [],
      ...solve ? ["--solve", solve.part] : [],
      ...paceOptions(context, paces),
      ...tail,
      ...["-o", output]
    ]),
    ...says(`${changeSaid({ cone, paces, repair })}, ${byKiln(context)}.`, {
      reminder: reminders(context),
      limits: limits2.length === 0 ? "" : ` It cannot mend all: ${limits2.join(", ")} still warns.`
    }),
    schedule: changed.value.after
  };
}
function changeSaid(change2) {
  const { cone, paces, repair } = change2;
  if (!repair)
    return `This moves the peak alone, so that cone ${cone} falls by the end of the top hold`;
  const kept = paces.length > 0 ? "keeps the schedule to what is said above, and " : "";
  const peak = cone === null ? "" : `, and moves the peak so that cone ${cone} falls by the end of the top hold`;
  return `This ${kept}mends it with the smallest change in time${peak}`;
}
function pacesOf(asks) {
  return asks.flatMap((ask) => ask.kind === "pace" ? [ask] : []);
}
function paceOptions({ facts }, paces) {
  return paces.flatMap((pace2) => ["--at-most", paceWords(pace2, unitOf(facts))]);
}
function unitOf({ reading }) {
  return reading.unit === "F" ? "F" : "C";
}
function whyRefused(problems) {
  return `draft would refuse it, ${problems.map(({ code, where }) => `${where} (${code})`).join("; ")}`;
}
function forNew(context, asks, output) {
  const { zone, kiln, ware, wantedCone: wantedCone2, facts } = context;
  const cone = wantedCone2 ?? zone.heatwork.position.cone;
  const { series } = zone.heatwork;
  if (cone === null) return none("no cone is wanted by the record, and none was down");
  const unit = unitOf(facts);
  const paces = pacesOf(asks);
  const cooling = coolingWord(context, paces);
  const made = newSchedule({
    cone,
    series,
    unit,
    ware: { ...ware, ...sizedAsMug(ware) },
    cooling: { kind: cooling },
    paces,
    withinSeconds: null,
    offsetK: kiln.offsetK,
    ...kiln.own && { kiln: kiln.own }
  });
  const weak = made.ok ? void 0 : made.problems.find(({ code }) => code.endsWith("too-weak"));
  if (weak !== void 0 && kiln.own !== null)
    return forNew({ ...context, kiln: mendedKiln(kiln, NOT_SHOWN) }, asks, output);
  if (!made.ok) return none(whyRefused(made.problems));
  return {
    command: line([
      ...["undunted", "draft", "--new", "--cone", cone],
      ...series === "self-supporting" ? [] : ["--series", series],
      ...wareWords(context),
      ...ware.damp ? ["--damp"] : [],
      ...["--cooling", cooling],
      ...paceOptions(context, paces),
      ...unit === "F" ? ["--unit", "F"] : [],
      ...kilnWords2(context),
      ...["-o", output]
    ]),
    ...says(
      `The schedule of this firing is not known, so this writes a new one for cone ${cone}${wantedCone2 === null ? ", the one that was reached" : ""}, ${byKiln(context)}.`,
      { reminder: reminders(context) }
    ),
    schedule: made.value
  };
}
function coolingWord({ zone }, paces) {
  const falling = zone.crossings.filter(({ direction }) => direction === "cooling");
  const seen = falling.length > 0 && falling.every(({ measured }) => measured !== "no");
  return seen && paces.every(({ fromC, toC }) => toC > fromC) ? "natural" : "slow";
}
function wareWords({ ware }) {
  const { body, wallMm, baseMm, widestMm } = ware;
  return [
    ...body === null ? [] : ["--body", body.name],
    ...wallMm === null ? [] : ["--wall", millimetres(wallMm)],
    ...baseMm === null ? [] : ["--base", millimetres(baseMm)],
    ...widestMm === null ? [] : ["--width", millimetres(widestMm)]
  ];
}
function millimetres(mm) {
  return `${Number(mm.toPrecision(4))}mm`;
}
function kilnWords2({ kiln }) {
  return [
    ...kiln.tellsOffset ? ["--offset", `${kiln.offsetK}C`] : [],
    ...kiln.logs.length === 0 ? [] : ["--kiln", ...kiln.logs.map(asFile)]
  ];
}
function byKiln({ kiln }) {
  if (kiln.whyNone === null)
    return kiln.logs.length === 1 ? "for the kiln and the thermocouple as this log shows them" : "for the kiln and the thermocouple as these logs show them";
  return `for a kiln that is assumed, not yours (${kiln.whyNone})`;
}
function says(text, { reminder = "", limits: limits2 = "" } = {}) {
  return { commandSays: `${text}${reminder}${limits2}`, scheduleSays: `${text}${limits2}` };
}
function reminders(context) {
  return `${sameAgain(context)}${ownBodyLeftOut(context)}`;
}
function ownBodyLeftOut({ ware, facts }) {
  const unsaid = ware.ownBodies.filter((name) => name !== facts.plan?.ware.body?.name);
  if (unsaid.length === 0) return "";
  return ` It knows nothing of ${unsaid.join(", ")}: save that body as a file of its own and add --body FILE, or the limits are those of other clay.`;
}
function sameAgain({ kiln }) {
  if (!kiln.isOwn) return "";
  const words = kiln.tellsOffset ? "--offset" : "--kiln";
  return ` The new file is for this thermocouple: give the same ${words} whenever it is drafted again.`;
}
function line(words) {
  return words.map(shellQuoted).join(" ");
}

// src/core/firing/nextTime/nextKiln.ts
function nextKiln(now, earlier, paths) {
  const told = pastOffset(now.offset === null ? [] : [now.offset]);
  const isUsual = told === null || now.offset === null || !isWorthTelling(told.offsetK, now.offset.usual.offsetK);
  const offsetK = isUsual ? null : Math.round(told.offsetK);
  const without = (whyNone) => ({
    own: null,
    logs: [],
    offsetK,
    isOwn: offsetK !== null,
    tellsOffset: offsetK !== null,
    whyNone
  });
  if (paths.log === null) return without("draft cannot read this log as it was read here");
  if (now.firing === null) return without("the log holds no temperature");
  const learned2 = learnKiln([...earlier.flatMap(({ firing }) => firing ?? []), now.firing]);
  if (!learned2.ok) return without(whyNot(learned2.problems));
  const offsets = [...earlier, now].flatMap(({ offset }) => offset ?? []);
  const past = pastOffset(offsets);
  const tellsOffset = !paths.recordBeside && offsetK !== null;
  const own = asAssumedKiln(learned2.value);
  return {
    own,
    logs: [...earlier.flatMap(({ path }) => path ?? []), paths.log],
    offsetK: tellsOffset ? offsetK : past?.offsetK ?? null,
    isOwn: offsetK !== null,
    tellsOffset,
    whyNone: null
  };
}
var TELLING_OFFSET_K = 2;
function isWorthTelling(offsetK, usualK) {
  return Math.abs(offsetK - usualK) >= TELLING_OFFSET_K;
}
function whyNot(problems) {
  return problems.some(({ code }) => code === "kiln/no-natural-cooling") ? "no stretch of the log shows it falling by itself, lid shut and power off" : "the log does not show enough of it to learn from";
}

// src/core/firing/nextTime/nextWare.ts
var NOTHING = {
  body: null,
  ownBodies: [],
  wallMm: null,
  baseMm: null,
  widestMm: null,
  damp: false
};
function nextWare(record2) {
  const ware = record2?.ware ?? [];
  if (ware.length === 0) return NOTHING;
  const bodied = ware.filter(({ body }) => body !== null && isListed(body));
  const among = bodied.length > 0 ? bodied : ware;
  const worst = among.toSorted((a, b) => thickness(b) - thickness(a))[0];
  const sized = bodied.length > 0 || ware.every((piece) => thickness(piece) > 0);
  const widths = among.flatMap(({ widestMm }) => widestMm ?? []);
  return {
    body: bodied.length > 0 ? worst.body : null,
    ownBodies: [
      ...new Set(ware.flatMap(({ body }) => body === null || isListed(body) ? [] : [body.name]))
    ],
    wallMm: sized ? worst.wallMm ?? worst.thickestMm : null,
    baseMm: sized ? worst.baseMm ?? worst.thickestMm : null,
    widestMm: widths.length === 0 ? null : Math.max(...widths),
    damp: ware.some(({ state }) => state === "damp")
  };
}
function thickness({ wallMm, baseMm, thickestMm }) {
  return Math.max(wallMm ?? 0, baseMm ?? 0, thickestMm ?? 0);
}
function isListed(body) {
  const named = bodyNamed(body.name, "");
  return named.ok && JSON.stringify(named.value) === JSON.stringify(body);
}

// src/core/firing/nextTime/nextTimeOf.ts
var STANDINGS = ["firm", "worth trying", "too close to tell"];
var SUBJECTS = [
  "lid",
  "cooling",
  "elements",
  "power",
  "cone",
  "climb",
  "glaze",
  "clay",
  "drying",
  "bisque",
  "thermocouple",
  "hold",
  "log",
  "record"
];
var CHANGES_WARE = /* @__PURE__ */ new Set(["lid", "cooling", "cone", "climb"]);
var OUTSIDE_FIRING = /* @__PURE__ */ new Set([
  "glaze",
  "clay",
  "drying",
  "bisque",
  "elements"
]);
function nextTimeOf(facts, known, paths) {
  if (runawayOf(facts.reading, facts.plan) !== null) return AFTER_RUNAWAY;
  const wantedCone2 = facts.plan?.cone ?? facts.record?.cone ?? null;
  const kiln = nextKiln(known.now, known.history?.used ?? [], paths);
  const context = {
    facts,
    zone: hottestZone(facts.zones),
    wantedCone: wantedCone2,
    diagnosis: known.diagnosis,
    history: known.history,
    kiln,
    reachC: kilnTooWeak(facts, wantedCone2, kiln),
    ware: nextWare(facts.record)
  };
  const wanted = ranked(wantedChanges(context));
  const command = nextCommand(context, wanted, paths);
  const changes = wanted.map((change2) => ({
    ...command.schedule === null ? change2 : withPeakSaid(change2, command.schedule),
    inSchedule: change2.ask !== null && command.schedule !== null
  }));
  return { changes, advice: advice(context, wanted), ...command };
}
function wantedChanges(context) {
  const ofFiring = [
    ...coneChanges(context),
    ...coolingChanges(context),
    ...climbChanges(context),
    ...handlingChanges(context)
  ];
  const cured = cures(context, ofFiring);
  const isCured = ({ about, standing }) => about === "cooling" && standing === "too close to tell" && cured.some((cure) => cure.about === about);
  return [...ofFiring.filter((change2) => !isCured(change2)), ...cured];
}
var AFTER_RUNAWAY = {
  changes: [
    {
      about: "power",
      change: "Do not fire this kiln again until a licensed electrician has found, under your local code, why it heated by itself.",
      because: "The schedule was not the cause, and no schedule can cure it.",
      evidence: [],
      standing: "firm",
      ask: null,
      inSchedule: false
    }
  ],
  advice: [],
  command: null,
  commandSays: "No schedule is drafted from this firing.",
  scheduleSays: "No schedule is drafted from this firing.",
  schedule: null
};
function ranked(changes) {
  return changes.toSorted(
    (a, b) => STANDINGS.indexOf(a.standing) - STANDINGS.indexOf(b.standing) || SUBJECTS.indexOf(a.about) - SUBJECTS.indexOf(b.about)
  );
}
function advice(context, changes) {
  const real = changes.filter(
    ({ about, standing }) => CHANGES_WARE.has(about) && standing !== "too close to tell"
  );
  const subjects = [...new Set(real.map(({ about }) => about))];
  const [first] = real;
  if (first === void 0) return [whereNothingChanges(context, changes)];
  if (subjects.length === 1) return [];
  return [
    `These would change ${listed2(subjects.map((subject) => WORDS[subject] ?? subject))} together, and afterwards nobody could say which of them made the difference. If ware is not at risk, change ${WORDS[first.about] ?? first.about} first and the rest in the firing after.`
  ];
}
function whereNothingChanges(context, changes) {
  if (changes.some(({ about }) => OUTSIDE_FIRING.has(about)))
    return "The firing itself asks for no change: what has to change is said above.";
  if (hasBroken(context))
    return "Something broke, and nothing here says that the firing did it. Find out first: tap every piece, and note edges, place and pattern of the cracks in the record.";
  return "Nothing to change in the firing: fire it the same way again. One firing that went well proves little, two alike begin to.";
}
var WORDS = {
  lid: "when the kiln is opened",
  cooling: "the cooling",
  cone: "the heat at the peak",
  climb: "the climb"
};
function listed2(words) {
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

// src/core/firing/beforeAndNext.ts
function beforeAndNext(facts, asked2) {
  const { reading, record: record2, witness } = facts;
  const now = {
    name: reading.name,
    path: asked2.next?.log ?? null,
    firing: kilnFiringOf(reading, record2),
    offset: witness?.offset ?? null,
    thermocouple: record2?.thermocouple?.type ?? null
  };
  const history = asked2.earlier.length === 0 ? null : historyOf(now, asked2.earlier);
  const { diagnosis, next } = asked2;
  return {
    history,
    nextTime: next && nextTimeOf(facts, { diagnosis, now, history }, next)
  };
}

// src/core/firing/strainsOnce.ts
function strainsOnce() {
  const known = /* @__PURE__ */ new Map();
  return (curve, piece) => {
    const ofCurve = known.get(curve) ?? /* @__PURE__ */ new Map();
    const strain = ofCurve.get(piece) ?? pieceStrain(curve, piece);
    known.set(curve, ofCurve.set(piece, strain));
    return strain;
  };
}

// src/core/firing/firedCrossings.ts
function firedCrossings(curve, by) {
  const { strainOf = strainsOnce(), shut = curve, opened: opened2 = null } = by;
  const pieces2 = by.pieces.map((piece) => ({ piece, limitFor: computedLimits(piece) }));
  return crossingsOf(curve).map((each) => {
    const crossing = opened2 !== null && each.direction === "cooling" && opened2.tempC > each.toC ? { ...each, openedC: opened2.tempC } : each;
    const borne = pieces2.filter(({ piece }) => isComputed(piece, crossing.direction)).map((of) => ({ ...of, computed: passageOf(strainOf(shut, of.piece), crossing) }));
    const [worst] = borne.toSorted(
      (a, b) => Number(isJudged(crossing, b.piece.ware.body)) - Number(isJudged(crossing, a.piece.ware.body)) || (b.computed?.ratio ?? 0) - (a.computed?.ratio ?? 0)
    );
    if (worst === void 0) return crossing;
    const limited = crossing.direction === "heating" ? crossing : withLimit(crossing, guideAt(crossing.band, worst.limitFor));
    return withStrain(limited, worst.computed, worst.piece.ware.body);
  });
}
function isComputed({ state }, direction) {
  return direction === "cooling" || heatingOf(state) === "computed";
}
function guideAt(name, limitFor) {
  const band = COOLING_BANDS.find((each) => each.name === name);
  return band === void 0 ? null : limitFor(band);
}

// src/core/firing/firedPieces.ts
function firedPieces(record2, plan) {
  const listed4 = record2?.ware ?? [];
  const planned = plan?.ware ?? {};
  if (listed4.length > 0)
    return listed4.map((piece) => {
      const taken = firedPiece(piece, planned);
      return { ...taken, name: piece.name, meantFor: `${piece.name} (${taken.meantFor})` };
    });
  const only = firedPiece({}, planned);
  return [{ ...only, name: only.isMug ? "an ordinary mug" : "the ware" }];
}
function firedPiece(piece, planned) {
  const sizes = (said) => [said.wallMm, said.baseMm, said.thickestMm];
  const isSized = sizes(piece).some((mm) => mm != null);
  const thickness2 = isSized ? piece : planned;
  const taken = [
    ...!piece.body && planned.body ? ["body"] : [],
    ...!isSized && sizes(planned).some((mm) => mm != null) ? ["thickness"] : [],
    ...piece.widestMm == null && planned.widestMm != null ? ["width"] : []
  ];
  const { assumed, ...rest } = wareOf({
    body: piece.body ?? planned.body,
    wallMm: thickness2.wallMm ?? null,
    baseMm: thickness2.baseMm ?? null,
    thickestMm: thickness2.thickestMm,
    widestMm: piece.widestMm ?? planned.widestMm ?? null,
    name: piece.name,
    heightMm: piece.heightMm ?? planned.heightMm,
    stands: piece.stands ?? planned.stands,
    shelfMm: piece.shelfMm ?? planned.shelfMm,
    footGapMm: piece.footGapMm ?? planned.footGapMm,
    glazedSides: piece.glazedSides ?? planned.glazedSides
  });
  return {
    ...rest,
    state: piece.state ?? planned.state ?? null,
    assumed: [
      ...taken.length === 0 ? [] : [`${taken.join(", ")} taken from the schedule`],
      ...assumed
    ]
  };
}

// src/core/ware/weakestFirst.ts
function weakestFirst(pieces2) {
  return pieces2.map((piece) => ({ piece, limit: lowestLimit(piece.ware) })).toSorted((a, b) => a.limit - b.limit).map(({ piece }) => piece);
}
function lowestLimit(ware) {
  const bands = hasCristobalite(ware.body) ? [QUARTZ_BAND, CRISTOBALITE_BAND] : [QUARTZ_BAND];
  return Math.min(...bands.map((band) => limitingRate(ware, { band, ratio: SAFE_RATIO })));
}

// src/core/firing/firedStrains.ts
function firedStrains(curve, fired) {
  const { pieces: pieces2, strainOf, openedC } = fired;
  return weakestFirst(pieces2).map((piece) => ({
    ...strainOf(curve, piece),
    openings: openedC === null ? [] : openingStrains(piece.ware, [openedC], STRAIN_DRAWS)
  }));
}

// src/core/findings/agreed.ts
var WORST_BY = ["stress", "fastest", "rate"];
function agreed(findings) {
  const groups = /* @__PURE__ */ new Map();
  for (const finding2 of findings) {
    const { topic, severity, zone } = finding2;
    const key = zone === null ? `${groups.size}` : `${severity} ${topic}`;
    groups.set(key, [...groups.get(key) ?? [], finding2]);
  }
  return [...groups.values()].map((group) => {
    const worst = group.reduce((a, b) => badness(b) > badness(a) ? b : a);
    const zones = [...new Set(group.flatMap(({ zone }) => zone ?? []))];
    return zones.length < 2 ? worst : { ...worst, zone: listed3(zones) };
  });
}
function badness({ evidence: evidence2 }) {
  const values = WORST_BY.flatMap((by) => evidence2.find(({ name }) => name === by)?.value ?? []);
  return values[0] ?? 0;
}
function listed3(zones) {
  return `${zones.slice(0, -1).join(", ")} and ${zones.at(-1)}`;
}

// src/core/firing/coneFindings.ts
var FAR_SIGMAS = 2.5;
var TOO_FAR_CONES2 = 1;
var MODEL_BASIS = "heatwork model anchored to the published cone table; one sigma in it covers model, thermocouple and place in the kiln";
function coneFindings(facts) {
  const zone = hottestZone(facts.zones);
  const wanted = facts.plan?.cone ?? facts.record?.cone ?? null;
  return [
    ...wanted === null ? [reached(zone, facts)] : [wantedCone(wanted, zone, facts)],
    ...extrapolated(zone, facts),
    ...facts.witness ? [offsetApplied(facts.witness, zoneNamed(facts, zone))] : []
  ];
}
function reached(zone, facts) {
  return {
    topic: "cone reached",
    severity: "note",
    statement: `It reached ${zone.heatwork.position.label}, peaking at {peak}.`,
    evidence: peakEvidence(zone),
    basis: MODEL_BASIS,
    advice: "",
    zone: zoneNamed(facts, zone),
    span: null
  };
}
function wantedCone(cone, zone, facts) {
  const { position, cones } = zone.heatwork;
  const state = cones.find((each) => each.cone === cone);
  if (!state) return notModelled(cone, zone, facts);
  const sigma = zone.heatwork.sigmaCones ?? 0;
  const over = position.index === null ? null : position.index - coneIndex(cone);
  const [severity, words] = judgement({ isDown: state.marginK >= 0, over, sigma });
  return {
    topic: "cone reached",
    severity,
    statement: `It reached ${position.label}, peaking at {peak}; cone ${cone} was wanted: ${words}.`,
    evidence: [
      ...peakEvidence(zone),
      { name: "margin", value: Math.abs(state.marginK), kind: "difference" },
      ...over === null ? [] : [{ name: "off by", value: Math.abs(over), kind: "cones" }],
      { name: "one sigma", value: sigma, kind: "cones" }
    ],
    basis: MODEL_BASIS,
    advice: severity === "note" ? "" : state.marginK < 0 ? "Look at the witness cones; if they agree, hold longer or peak higher by about {margin}." : "Look at the witness cones; if they agree, peak lower by about {margin} or shorten the hold.",
    zone: zoneNamed(facts, zone),
    span: null
  };
}
function judgement(given) {
  const { isDown, over, sigma } = given;
  if (isDown && over !== null && over > TOO_FAR_CONES2)
    return ["caution", "{off by} cones more than that"];
  if (isDown) return ["note", "it is down"];
  if (over !== null && -over <= sigma)
    return ["note", "{margin} short of it, too close to tell within {one sigma} cones"];
  return ["warning", over === null ? "not reached" : "{off by} cones short"];
}
function notModelled(cone, zone, facts) {
  return {
    ...reached(zone, facts),
    statement: `It reached ${zone.heatwork.position.label}, peaking at {peak}; cone ${cone} was wanted, which has no model in the ${zone.heatwork.series} series.`
  };
}
function extrapolated(zone, facts) {
  const { extrapolations, lastHundredCPerHour: rate, series } = zone.heatwork;
  const base = { zone: zoneNamed(facts, zone), span: null };
  const reasons = extrapolations.map((reason) => ({
    ...base,
    topic: "cone reached, how far to trust it",
    severity: "caution",
    statement: `The cone is a guess beyond what was published: ${reason}.`,
    evidence: [],
    basis: MODEL_BASIS,
    advice: "Trust the witness cones in the kiln, not this number."
  }));
  const printed = CONE_TABLES[series].ratesCPerHour.filter((each) => each !== null);
  const [slowest, fastest] = [Math.min(...printed), Math.max(...printed)];
  if (rate === null || rate >= slowest && rate <= fastest) return reasons;
  return [
    ...reasons,
    {
      ...base,
      topic: "rate to the peak",
      severity: "note",
      statement: "The last 100 \xB0C (180 \xB0F) below the peak went at {rate}, off the published cone table, which goes from {slowest} to {fastest}.",
      evidence: [
        { name: "rate", value: rate, kind: "rate" },
        { name: "slowest", value: slowest, kind: "rate" },
        { name: "fastest", value: fastest, kind: "rate" }
      ],
      basis: "columns of the published cone table; the cone above is computed for the rate as it was",
      advice: ""
    }
  ];
}
function offsetApplied({ offset, labelAsRead }, zone) {
  const { usual, offsetK, agree } = offset;
  const isFar = Math.abs(offsetK - usual.offsetK) > FAR_SIGMAS * usual.sigmaK;
  return {
    topic: "witness cones",
    severity: agree && !isFar ? "note" : "caution",
    statement: offsetWords(offset, labelAsRead),
    evidence: [
      { name: "offset", value: Math.abs(offsetK), kind: "difference" },
      { name: "give or take", value: offset.sigmaK, kind: "difference" },
      { name: "usual offset", value: usual.offsetK, kind: "difference" },
      ...bound("lowest offset", offset.lowK),
      ...bound("highest offset", offset.highK)
    ],
    basis: `the offset with which the cone model gives what the cones showed: ${offset.witnesses.map((witness) => `cone ${witness.cone} ${quoted(witness.said)}`).join(", ")}`,
    advice: !agree ? "Check the cones' numbers and where each of them stood." : isFar ? "That is far more than thermocouples are usually out: check the cones' numbers, the type that the instrument is set to, and how deep the tip sits." : "",
    zone,
    span: null
  };
}
function bound(name, value) {
  return value === null ? [] : [{ name, value, kind: "difference" }];
}
function offsetWords(offset, labelAsRead) {
  const { offsetK, agree, usual } = offset;
  const direction = offsetK > 0 ? "low" : "high";
  const applied = `${offsetK > 0 ? "added to" : "taken from"} the readings for the cone, and for nothing else. As read it was ${labelAsRead}.`;
  if (!agree)
    return `The witness cones contradict one another: ${leftOutWords(offset)} cannot be right if the others are. Without that the thermocouple read {offset} too ${direction}, which was ${applied}`;
  if (Math.abs(offsetK) < 0.5)
    return "The witness cones fit the thermocouple as it read; nothing was added for the cone.";
  if (Math.abs(offsetK - usual.offsetK) < 0.5)
    return `The witness cones fit a kiln that runs {offset} hotter for the cone than it reads, as kilns usually do, give or take {give or take}: that much was ${applied}`;
  return `By the witness cones the thermocouple read about {offset} too ${direction}, give or take {give or take}: that much was ${applied}`;
}
function leftOutWords({ witnesses }) {
  return witnesses.flatMap(({ cone, said, leftOut: leftOut2 }) => leftOut2 ? [`cone ${cone} ${quoted(said)}`] : []).join(" and ");
}
function peakEvidence(zone) {
  return [
    { name: "peak", value: zone.peakC, kind: "temperature" },
    { name: "time within 5 \xB0C of it", value: zone.secondsWithinFiveOfPeak, kind: "duration" }
  ];
}

// src/core/firing/coolingFindings.ts
function coolingFindings(facts) {
  return facts.zones.flatMap(
    (zone) => zone.crossings.filter((crossing) => crossing.direction === "cooling").flatMap((crossing) => passageFindings(crossing, zone, zoneNamed(facts, zone)))
  );
}
function passageFindings(crossing, zone, zoneName) {
  const { fastestCPerHour } = crossing;
  const isSeen = crossing.measured !== "no" && fastestCPerHour !== null;
  const common = {
    topic: topicOf(crossing),
    severity: crossing.severity ?? "note",
    zone: zoneName
  };
  if (!isSeen) return isPlain(crossing) ? [] : [{ ...common, ...unseen(crossing, zone) }];
  return [
    {
      ...common,
      ...crossing.limitCPerHour === null ? plain2(crossing) : crossing.severity === null ? unjudged(crossing) : judged(crossing, crossing.severity),
      span: spanOf2(crossing)
    }
  ];
}
function isPlain({ band, isCristobalitic }) {
  return band === CRISTOBALITE_BAND.name && !isCristobalitic;
}
function judged(crossing, severity) {
  const { limitCPerHour, strainRatio, limitMeantFor } = crossing;
  const fastest = Math.abs(crossing.fastestCPerHour);
  const limit = limitCPerHour;
  const who = quoted(limitMeantFor ?? "");
  const range = "(anywhere from {stress low} to {stress high}, depending on the clay)";
  const verdict2 = {
    note: fastest > limit ? "it bears this as well" : "",
    caution: `this was hard on it: by our reckoning {stress} of its strength ${range}`,
    warning: `this was by our reckoning enough to break it: {stress} of its strength ${range}`
  }[severity];
  return {
    statement: `${went(crossing)}. The guide for ${who} is {limit}${verdict2 === "" ? "" : `; ${verdict2}`}.`,
    evidence: [
      ...ratesOf(crossing),
      { name: "limit", value: limit, kind: "rate" },
      { name: "times over", value: fastest / limit, kind: "cones" },
      ...stressOf(crossing),
      ...edges(crossing)
    ],
    basis: `rate measured on the log${strainRatio === null ? "" : ", stress computed from it"}${notesOf(crossing)}`,
    advice: severity === "note" ? "" : "Tap every piece: a dull ring means that it is cracked, often with one long line through the wall. Next time {limit} or slower from {guide from} to {guide to}."
  };
}
function unjudged(crossing) {
  const { openedC } = crossing;
  return {
    statement: openedC === null ? `${went(crossing)}, as far as it was seen. The guide for ${quoted(crossing.limitMeantFor ?? "")} is {limit}.` : `From {opened} on the kiln was open: what was measured of the ${crossing.band} after it is the draught, not the ware.`,
    evidence: [
      ...ratesOf(crossing),
      { name: "limit", value: crossing.limitCPerHour, kind: "rate" },
      ...openedC === null ? [] : [{ name: "opened", value: openedC, kind: "temperature" }],
      ...edges(crossing)
    ],
    basis: `rate measured on the log${notesOf(crossing)}`,
    advice: ""
  };
}
function plain2(crossing) {
  const { openedC } = crossing;
  return {
    statement: openedC === null ? "From {from} to {to} it fell at up to {fastest}; without cristobalite there is little but plain shrinkage there." : "From {from} to {to} it fell at up to {fastest}, the kiln being open from {opened} on.",
    evidence: [
      ...ratesOf(crossing),
      ...openedC === null ? [] : [{ name: "opened", value: openedC, kind: "temperature" }],
      ...stressOf(crossing),
      ...edges(crossing)
    ],
    basis: `rate measured on the log${notesOf(crossing)}; no rate is published for pots there, and the computed stress is too strict to judge by`,
    advice: ""
  };
}
function unseen(crossing, zone) {
  const endedAbove = zone.lastReadingC > crossing.toC;
  return {
    statement: endedAbove ? `The readings end at {last reading}: how it cooled through the ${crossing.band} ({from} to {to}) was not measured.` : `How it cooled through the ${crossing.band} ({from} to {to}) was not measured.`,
    evidence: [
      { name: "last reading", value: zone.lastReadingC, kind: "temperature" },
      ...edges(crossing)
    ],
    basis: `measured on the log${notesOf(crossing)}`,
    advice: "Let the log run until the kiln is opened.",
    span: null
  };
}
function went(crossing) {
  const mean2 = crossing.meanCPerHour === null ? "" : ", {mean} on average";
  return `It cooled through the ${crossing.band} at up to {fastest}${mean2}`;
}
function ratesOf(crossing) {
  const { fastestCPerHour, meanCPerHour } = crossing;
  return [
    { name: "fastest", value: Math.abs(fastestCPerHour), kind: "rate" },
    { name: "window", value: (crossing.windowMinutes ?? 0) * 60, kind: "duration" },
    ...meanCPerHour === null ? [] : [{ name: "mean", value: Math.abs(meanCPerHour), kind: "rate" }]
  ];
}
function stressOf({ strainRatio, strainRatioLow, strainRatioHigh }) {
  if (strainRatio === null || strainRatioLow === null || strainRatioHigh === null) return [];
  return [
    { name: "stress", value: strainRatio, kind: "ratio" },
    { name: "stress low", value: strainRatioLow, kind: "ratio" },
    { name: "stress high", value: strainRatioHigh, kind: "ratio" }
  ];
}
function edges(crossing) {
  const { limitFromC, limitToC } = crossing;
  return [
    { name: "from", value: crossing.fromC, kind: "temperature" },
    { name: "to", value: crossing.toC, kind: "temperature" },
    ...limitFromC === null || limitToC === null ? [] : [
      { name: "guide from", value: limitFromC, kind: "temperature" },
      { name: "guide to", value: limitToC, kind: "temperature" }
    ]
  ];
}
function topicOf(crossing) {
  return isPlain(crossing) ? "cooling to the end" : `cooling through ${crossing.band.replace(/ inversion$/, "")}`;
}
function notesOf({ notes }) {
  return notes.map((note3) => `; ${note3}`).join("");
}
function spanOf2(crossing) {
  const { startSeconds, endSeconds } = crossing;
  return startSeconds === null || endSeconds === null ? null : { fromSeconds: startSeconds, toSeconds: endSeconds };
}

// src/core/firing/heardFindings.ts
var BASIS2 = "what is known of how glaze and clay contract: glaze that fits badly cracks at any temperature below the one where it sets, clay cracks where its quartz or cristobalite changes; evidence to weigh, not a verdict";
function heardFindings(facts) {
  const zone = hottestZone(facts.zones);
  return facts.heard.map((sound) => {
    const opened2 = facts.opening.atSeconds;
    const words = speaksFor(sound, zone, opened2 !== null && sound.atSeconds >= opened2);
    const note3 = sound.note === null ? "" : ` Noted: ${quoted(sound.note)}.`;
    return {
      topic: "what was heard",
      severity: "note",
      statement: `"${quoted(sound.what)}" was heard at {heard at}${sound.tempC === null ? "" : ", at {temperature}"}: ${words}.${note3}`,
      evidence: [
        { name: "heard at", value: sound.atSeconds, kind: "elapsed" },
        ...sound.tempC === null ? [] : [{ name: "temperature", value: sound.tempC, kind: "temperature" }],
        ...sound.orElse?.tempC == null ? [] : [{ name: "or else", value: sound.orElse.tempC, kind: "temperature" }]
      ],
      basis: BASIS2,
      advice: sound.orElse === null ? "" : sayTheDay(sound, facts),
      zone: null,
      span: { fromSeconds: sound.atSeconds, toSeconds: sound.atSeconds }
    };
  });
}
function sayTheDay({ said, orElse }, { reading }) {
  const date = reading.start?.slice(0, 10) ?? null;
  const how = date === null ? 'the time since the first reading, such as "+14:05"' : `its date before it: "${date} ${said}" or the day after`;
  return `${said} comes more than once in this log${orElse?.tempC == null ? "" : ", at {or else} the other time"}. Write ${how}.`;
}
function speaksFor(sound, zone, isOpened) {
  const begin = zone.curve.timesSeconds[0];
  if (isOpened) return openedWords(sound.tempC);
  if (sound.atSeconds < begin) return "before the first reading, so its temperature is not known";
  if (sound.atSeconds > zone.lastReadingAtSeconds)
    return "after the last reading, so its temperature is not known; cooler than that, it speaks for the fit of the glaze rather than for an inversion";
  if (sound.tempC === null) return "inside a gap in the readings, so its temperature is not known";
  if (sound.atSeconds < zone.peakAtSeconds)
    return "while the kiln was heating, when glaze is not yet pulled tight; it speaks for ware or shelves moving or cracking on the way up";
  return coolingWords(sound.tempC);
}
function openedWords(tempC) {
  return tempC !== null && tempC >= CRISTOBALITE_BAND.lowC ? "after the kiln was opened, still hot enough for a draught to crack the wall (dunting); look for that first, and read nothing of the fit of the glaze from it" : "after the kiln was opened; a burst then comes of the draught and says little, pinging that goes on in ware that is evenly cool speaks for the fit of the glaze";
}
function coolingWords(tempC) {
  if (tempC > QUARTZ_BAND.highC)
    return "hotter than both inversions, where most glazes are still soft; kiln and shelves make such sounds too";
  if (tempC >= QUARTZ_BAND.lowC)
    return "while passing the quartz inversion; look for a long crack through the wall (dunting) first, though glaze that fits badly may crack here as well";
  if (tempC > CRISTOBALITE_BAND.highC)
    return "between the inversions; that speaks for glaze crackle, and so early for a strong misfit of glaze and clay, rather than for dunting";
  if (tempC >= CRISTOBALITE_BAND.lowC)
    return "while passing the cristobalite inversion; look for a long crack through the wall (dunting) first, though glaze that fits badly cracks here as well";
  return "below both inversions; that speaks for glaze crackle from the fit of glaze and clay rather than for dunting";
}

// src/core/log/rejectedCount.ts
function rejectedCount({ rejected, unlisted = [] }) {
  return unlisted.reduce((sum, { count }) => sum + count, rejected.length);
}

// src/core/firing/measuringFindings.ts
var WIDE_SPREAD_K = 28;
var SEVERITY = {
  spike: "note",
  stuck: "caution",
  open: "caution",
  gap: "note",
  clock: "note",
  coarse: "note"
};
var ABOUT = {
  spike: "spikes in the readings",
  stuck: "a reading that stood still",
  open: "an open thermocouple",
  gap: "gaps in the readings",
  clock: "the log's clock",
  coarse: "coarse readings"
};
var LEFT_OUT = "found while the log was read; such readings are left out, nothing is put in their place";
var KEPT2 = "found while the log was read; the readings are kept as they are";
var FAULT_BASIS = {
  gap: "nothing is measured or assumed inside a gap",
  spike: LEFT_OUT,
  open: LEFT_OUT,
  stuck: KEPT2,
  clock: "found while the log was read; every row that is left out is listed",
  coarse: KEPT2
};
function measuringFindings(facts) {
  return [...faultFindings(facts), ...rejectedRows(facts), ...spreadFindings(facts)];
}
function faultFindings(facts) {
  const groups = /* @__PURE__ */ new Map();
  for (const fault of facts.reading.faults) {
    const key = `${fault.kind} ${fault.channel ?? ""}`;
    const group = groups.get(key);
    if (group === void 0) groups.set(key, [fault]);
    else group.push(fault);
  }
  return [...groups.values()].map((faults) => faultFinding(faults, facts));
}
function faultFinding(faults, facts) {
  const [first] = faults;
  const more = faults.length > 1 ? " There are {places} such places in all." : "";
  const hides = first.kind === "gap" ? hiddenPart(faults, facts.zones) : null;
  return {
    topic: ABOUT[first.kind],
    severity: hides === null ? SEVERITY[first.kind] : "caution",
    statement: `${sentence(first.what)}${more}${hides === null ? "" : ` The gap hides ${hides}.`}`,
    evidence: [
      { name: "places", value: faults.length, kind: "count" },
      {
        name: "readings",
        value: faults.reduce((sum, fault) => sum + fault.count, 0),
        kind: "count"
      }
    ],
    basis: FAULT_BASIS[first.kind],
    advice: first.kind === "stuck" || first.kind === "open" ? "Check the thermocouple." : "",
    zone: facts.zones.length > 1 ? first.channel : null,
    span: {
      fromSeconds: Math.min(...faults.map((fault) => fault.fromSeconds)),
      toSeconds: Math.max(...faults.map((fault) => fault.toSeconds))
    }
  };
}
function hiddenPart(gaps, zones) {
  for (const zone of zones) {
    const { timesSeconds, tempsC } = zone.curve;
    for (const gap of gaps) {
      const from = timesSeconds.findLastIndex((t) => t <= gap.fromSeconds);
      const to = timesSeconds.findIndex((t) => t >= gap.toSeconds);
      if (from < 0 || to < 0) continue;
      const ends = [tempsC[from], tempsC[to]];
      if (Math.max(...ends) >= zone.peakC - 50) return "a part near the peak";
      const isCooling = timesSeconds[from] > zone.peakAtSeconds;
      const band = [QUARTZ_BAND, CRISTOBALITE_BAND].find(
        ({ lowC, highC }) => Math.max(...ends) > lowC && Math.min(...ends) < highC
      );
      if (isCooling && band) return `some of the cooling through the ${band.name}`;
    }
  }
  return null;
}
function rejectedRows(facts) {
  const { rows } = facts.reading;
  const count = rejectedCount(rows);
  if (count === 0) return [];
  const share = count / rows.total;
  return [
    {
      topic: "rows left out",
      severity: share > 0.05 ? "caution" : "note",
      statement: `{rejected} of {rows} rows of the log gave no reading and ${count === 1 ? "was" : "were"} left out.`,
      evidence: [
        { name: "rejected", value: count, kind: "count" },
        { name: "rows", value: rows.total, kind: "count" }
      ],
      basis: rows.unlisted === void 0 ? "each rejected row is listed with its reason" : "the first rejected rows are listed, all of them are counted by reason",
      advice: share > 0.05 ? "Look at the list of rejected rows." : "",
      zone: null,
      span: null
    }
  ];
}
function spreadFindings(facts) {
  const { spread, zones } = facts;
  if (spread === null) return [];
  const cones = conesApart(zones);
  return [
    {
      topic: "zones apart",
      severity: spread.atPeakC > WIDE_SPREAD_K ? "caution" : "note",
      statement: `The zones were {at peak} apart at the peak and at most {largest}, at {largest at}${cones === null ? "" : "; in heatwork {cones apart} cones apart"}.`,
      evidence: [
        { name: "at peak", value: spread.atPeakC, kind: "difference" },
        { name: "largest", value: spread.largestC, kind: "difference" },
        { name: "largest at", value: spread.largestAtSeconds, kind: "elapsed" },
        ...cones === null ? [] : [{ name: "cones apart", value: cones, kind: "cones" }]
      ],
      basis: basedOn(
        "zones at the same moments; a caution above \xB1 28 \xB0C (\xB1 50 \xB0F), the widest class of industrial furnaces in AMS 2750",
        "ams-2750"
      ),
      advice: spread.atPeakC > WIDE_SPREAD_K ? "Put witness cones by every thermocouple, and hold longer at the peak." : "",
      zone: null,
      span: null
    }
  ];
}
function conesApart(zones) {
  const indices = zones.map((zone) => zone.heatwork.position.index);
  const known = indices.filter((index) => index !== null);
  return known.length < indices.length ? null : Math.max(...known) - Math.min(...known);
}
function sentence(text) {
  const flat = quoted(text);
  const begun = flat.charAt(0).toUpperCase() + flat.slice(1);
  return /[.!?]$/.test(begun) ? begun : `${begun}.`;
}

// src/core/firing/openingFindings.ts
var BOLDEST_C2 = 250;
var CHANGED_C = 200;
var KINDER_C = 120;
var STILL_HOT_C2 = 120;
var PRACTICE = basedOn("unloading at or below 100 to 120 \xB0C (210 to 250 \xB0F)", "opening-practice");
function openingFindings(facts) {
  const { unloading, opening, logged } = facts;
  const { main } = logged;
  const isRecorded = unloading !== null && unloading.tempC !== null;
  return [
    ...isRecorded && opening.from !== "log" ? [opened(unloading.tempC, unloading, worstOpening(facts))] : [],
    ...main !== null && opening.from !== "both" && opening.from !== "record" ? [openedByLog(facts, main)] : [],
    ...opening.contradiction === null ? [] : contradicted(facts),
    ...main === null && unloading && unloading.tempC === null && unloading.atSeconds !== null ? [openedUnknown(unloading.atSeconds)] : [],
    ...endedHot2(facts)
  ];
}
function openedByLog(facts, main) {
  const stress = worstOpening(facts);
  const clock = clockSaid(facts.reading, main.atSeconds);
  const isLid = main.how === "opened";
  const severity = isLid ? severityOf(main.tempC, stress) : "note";
  return {
    topic: "opening",
    severity,
    statement: `${isLid ? "The lid seems to have been opened" : "Cold air seems to have come in (a propped lid, a vent, a fan)"} at {opened}, ${clock ?? "{at} after the start"}: from there it fell at {after}, before that at {before}.${stressSaid(stress)}`,
    evidence: [
      { name: "opened", value: main.tempC, kind: "temperature" },
      { name: "give or take", value: main.plusMinusK, kind: "difference" },
      { name: "at", value: main.atSeconds, kind: "elapsed" },
      { name: "give or take in time", value: main.plusMinusSeconds, kind: "duration" },
      { name: "after", value: main.afterCPerHour, kind: "rate" },
      { name: "before", value: main.beforeCPerHour, kind: "rate" },
      { name: "by itself", value: main.ownCPerHour, kind: "rate" },
      ...stressEvidence(stress)
    ],
    basis: `the log: a shut kiln without power only slows down as it cools, and nothing in the log explains a fall that quickens; ${PRACTICE}`,
    advice: isLid ? adviceOn(main.tempC, severity) : "",
    zone: null,
    span: { fromSeconds: main.atSeconds, toSeconds: main.atSeconds }
  };
}
function contradicted({ reading, unloading, opening, logged }) {
  const said = unloading?.tempC ?? null;
  if (said === null || opening.contradiction === null) return [];
  const { main, shutDownToC } = logged;
  const at2 = main?.atSeconds ?? unloading?.atSeconds ?? null;
  const seen = opening.contradiction === "still shut" || main === null ? "the log goes on falling as a shut kiln does, down to {shut}" : `the log shows the lid opened at {seen}, ${clockSaid(reading, main.atSeconds) ?? "{at} after the start"}`;
  return [
    {
      topic: "opening, record against log",
      severity: "caution",
      statement: `The record says that the kiln was opened at {said}, but ${seen}.`,
      evidence: [
        { name: "said", value: said, kind: "temperature" },
        ...main === null ? [] : [
          { name: "seen", value: main.tempC, kind: "temperature" },
          { name: "at", value: main.atSeconds, kind: "elapsed" }
        ],
        ...shutDownToC === null ? [] : [{ name: "shut", value: shutDownToC, kind: "temperature" }]
      ],
      basis: "the record held against the log",
      advice: opening.contradiction === "opened before" ? "Note when the lid was first opened or propped, not only when the ware came out." : "Look at your notes: the day, the unit, and which thermocouple was read.",
      zone: null,
      span: at2 === null ? null : { fromSeconds: at2, toSeconds: at2 }
    }
  ];
}
var DAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
function clockSaid({ start }, seconds) {
  if (start === null) return null;
  const wall = clockAt(start, seconds);
  const [year, month, day] = wall.slice(0, 10).split("-").map(Number);
  const days = dayNumber(year, month, day);
  return `${DAYS[weekday(days)]} ${wall.slice(11, 16)}`;
}
function worstOpening({ strains }) {
  const suffered = strains.flatMap(({ name, ware, openings }) => {
    const [lid, lifted] = ["lid opened", "lifted out"].map(
      (way) => openings.find((each) => each.way === way)
    );
    if (!lid || !lifted || lid.tempC <= CHANGED_C || !hasCristobalite(ware.body)) return [];
    return [{ name, lid, lifted }];
  });
  return suffered.toSorted((a, b) => b.lid.ratio - a.lid.ratio)[0] ?? null;
}
function opened(tempC, unloading, stress) {
  const { atSeconds, basis } = unloading;
  const severity = severityOf(tempC, stress);
  const inside = stress !== null && tempC <= CRISTOBALITE_BAND.highC ? ", while cristobalite was changing" : "";
  return {
    topic: "opening",
    severity,
    statement: `The kiln was opened at {opened}${inside}${severity === "note" ? "" : "; the draught cools the ware far faster than the kiln does"}.${stressSaid(stress)}`,
    evidence: [{ name: "opened", value: tempC, kind: "temperature" }, ...stressEvidence(stress)],
    basis: `temperature from the ${basis ?? "record"}; ${PRACTICE}`,
    advice: adviceOn(tempC, severity),
    zone: null,
    span: atSeconds === null ? null : { fromSeconds: atSeconds, toSeconds: atSeconds }
  };
}
function adviceOn(tempC, severity) {
  if (severity !== "note")
    return "Wait until it is below {cool}, and look for cracks that began at a rim or an edge.";
  return tempC > KINDER_C ? "Opening below {cool} would be kinder." : "";
}
function stressSaid(stress) {
  return stress === null ? "" : ` By our reckoning that put {stress} of their strength on ${quoted(stress.name)}, and lifting them out there would put {stress lifted}.`;
}
function stressEvidence(stress) {
  const cool = { name: "cool", value: 100, kind: "temperature" };
  if (stress === null) return [cool];
  return [
    cool,
    { name: "stress", value: stress.lid.ratio, kind: "ratio" },
    { name: "stress lifted", value: stress.lifted.ratio, kind: "ratio" }
  ];
}
function severityOf(tempC, stress) {
  if (tempC > BOLDEST_C2) return "warning";
  return stress === null ? "note" : strainSeverity(stress.lid.ratio);
}
function openedUnknown(atSeconds) {
  return {
    topic: "opening",
    severity: "note",
    statement: "The kiln was opened at {opened} by the log's clock, where there are no readings: how hot it was is not known.",
    evidence: [{ name: "opened", value: atSeconds, kind: "elapsed" }],
    basis: "the record's time on the log",
    advice: "Note the temperature when you open the kiln.",
    zone: null,
    span: { fromSeconds: atSeconds, toSeconds: atSeconds }
  };
}
function endedHot2(facts) {
  const zone = hottestZone(facts.zones);
  if (zone.lastReadingC <= STILL_HOT_C2) return [];
  return [
    {
      topic: "end of the log",
      severity: "note",
      statement: "The readings end at {last reading}, {after} after the peak: nothing is known of how it cooled from there.",
      evidence: [
        { name: "last reading", value: zone.lastReadingC, kind: "temperature" },
        {
          name: "after",
          value: zone.lastReadingAtSeconds - zone.peakAtSeconds,
          kind: "duration"
        }
      ],
      basis: "the log itself",
      advice: "Let the log run until the kiln is opened.",
      zone: zoneNamed(facts, zone),
      span: null
    }
  ];
}

// src/core/firing/planFindings.ts
var PEAK_OFF_K = 10;
var AREA_OFF = 0.025;
function planFindings(facts) {
  const { comparison } = facts;
  return [
    ...facts.plan && !comparison ? [notComparable(facts.plan.title)] : [],
    ...comparison ? againstPlan(comparison, facts) : [],
    ...facts.powerLosses.map((loss) => powerLost(loss, facts))
  ];
}
function againstPlan(comparison, facts) {
  const zone = facts.zones.length > 1 ? comparison.zone : null;
  const isOff = Math.abs(comparison.peakDeviationC) > PEAK_OFF_K || Math.abs(comparison.areaDeviation) > AREA_OFF;
  return [
    {
      topic: "against the schedule",
      severity: isOff ? "caution" : "note",
      statement: `The peak was {peak off} ${comparison.peakDeviationC < 0 ? "below" : "above"} the planned one and came {peak delay} ${comparison.peakDelaySeconds < 0 ? "early" : "late"}; at most it was {largest} ${comparison.largestDeviationC < 0 ? "below" : "above"}, at {largest at}, and the area under its curve was ${areaWords(comparison.areaDeviation)}.`,
      evidence: [
        { name: "peak off", value: Math.abs(comparison.peakDeviationC), kind: "difference" },
        { name: "peak delay", value: Math.abs(comparison.peakDelaySeconds), kind: "duration" },
        { name: "largest", value: Math.abs(comparison.largestDeviationC), kind: "difference" },
        { name: "largest at", value: comparison.largestDeviationAtSeconds, kind: "elapsed" },
        { name: "area", value: Math.abs(comparison.areaDeviation), kind: "percent" }
      ],
      basis: basedOn(
        "lined up where both pass the same low temperature on the way up, compared until the plan leaves the cooling to the kiln; area as the Fire Test Procedures Code judges furnace curves, where 2.5 % is allowed after the first hour",
        "imo-ftp-2010"
      ),
      advice: isOff ? "If the kiln fell behind, have a licensed electrician check elements, relays and mains under your local code, kiln isolated and cold." : "",
      zone,
      span: null
    }
  ];
}
function areaWords(deviation) {
  if (Math.abs(deviation) < 5e-3) return "the same within 1 %";
  return `{area} ${deviation < 0 ? "smaller" : "larger"}`;
}
function notComparable(title) {
  return {
    topic: "against the schedule",
    severity: "note",
    statement: `The log and the schedule "${quoted(title)}" share no rise by which they could be lined up.`,
    evidence: [],
    basis: "the first temperature that both should pass on the way up",
    advice: "Check that this is the schedule that was fired.",
    zone: null,
    span: null
  };
}
function powerLost(loss, facts) {
  const gap = loss.hasGap ? " Part of it was not measured." : "";
  return {
    topic: "power loss",
    severity: "caution",
    statement: `On the way up, at {when}, it fell from {from} to {lowest} and took {away} to come back: the power may have failed, or the kiln was stopped or opened.${gap}`,
    evidence: [
      { name: "when", value: loss.fromSeconds, kind: "elapsed" },
      { name: "from", value: loss.fromC, kind: "temperature" },
      { name: "lowest", value: loss.lowestC, kind: "temperature" },
      { name: "away", value: loss.toSeconds - loss.fromSeconds, kind: "duration" }
    ],
    basis: `a fall of more than 15 \xB0C (27 \xB0F) for 10 min or more before the peak${facts.plan ? " that the schedule does not ask for" : "; there is no schedule to compare it with"}`,
    advice: "Look at the record of that hour; have a licensed electrician check mains and relays under your local code.",
    zone: zoneNamed(facts, hottestZone(facts.zones)),
    span: { fromSeconds: loss.fromSeconds, toSeconds: loss.toSeconds }
  };
}

// src/core/firing/runawayFindings.ts
var BASIS3 = "climbs of 10 min or more that neither set point, output nor plan asks for; an overshoot, heat that soaks back and a zone hotter than the one controlled are left out; the limits are our own estimates";
var SWITCH_OFF = "Switch the kiln off by hand at its main switch or breaker, if that is safe to reach. Leave the lid shut. If anything smokes or burns, or you cannot reach the switch, get everybody out and call the fire service.";
var NOT_AGAIN = "Do not fire this kiln again until a licensed electrician has found the cause under your local code: most often a relay that sticks closed.";
function runawayFindings(reading, plan) {
  const found = runawayOf(reading, plan);
  if (found === null) return [];
  const { fromSeconds, toSeconds, fromC, toC, askedC, isOver } = found;
  const severalZones = reading.channels.filter(({ role }) => role === "temperature").length > 1;
  return [
    {
      topic: RUNAWAY,
      severity: "warning",
      statement: isOver ? `DANGER: this kiln heated by itself. It climbed from {from} to {to} in {for} ${whyWords(found)}.` : `EMERGENCY: the kiln is heating by itself. It has climbed from {from} to {to} in {for} ${whyWords(found)}.`,
      evidence: [
        { name: "from", value: fromC, kind: "temperature" },
        { name: "to", value: toC, kind: "temperature" },
        { name: "for", value: toSeconds - fromSeconds, kind: "duration" },
        ...askedC === null ? [] : [{ name: "asked", value: askedC, kind: "temperature" }]
      ],
      basis: BASIS3,
      advice: isOver ? `Keep it switched off at its main switch or breaker. ${NOT_AGAIN}` : `${SWITCH_OFF} ${NOT_AGAIN}`,
      zone: severalZones ? found.zone : null,
      span: { fromSeconds, toSeconds }
    }
  ];
}
function whyWords({ why, askedC }) {
  switch (why) {
    case "columns at 0":
      return "while set point and output stood at 0 (unless you are firing it by hand)";
    case "output at 0":
      return "while its output stood at 0";
    case "above the set point":
      return askedC === null ? "while its controller asked for no heat" : "and past its set point, which stood at {asked}";
    case "above the plan":
      return "and past its schedule, which stood at {asked}";
    case "after the end":
      return "after the top of its schedule, which only cools from there";
  }
}
var FLAT_OUT = 0.95;
var STANDING_SECONDS = 1800;
var STANDING_C_PER_HOUR = 5;
var FALLEN_K2 = 10;
var WORN = { fromC: 900, nearK: 40, seconds: 3600 };
var WARM_C = 60;
var AT_SET_POINT_K = 15;
function standingFindings(reading) {
  const zones = reading.channels.filter(({ role }) => role === "temperature");
  return zones.flatMap(({ name, curve }) => {
    const stand = curve === null ? null : longestStand(curve, reading);
    return stand === null ? [] : [standingFinding(stand, zones.length > 1 ? name : null)];
  });
}
function standingFinding({ from, to, isNearTop }, zone) {
  const hasFallen = from.tempC - to.tempC > FALLEN_K2;
  return {
    topic: "reading not to be trusted",
    severity: isNearTop ? "caution" : "warning",
    statement: `With the elements flat out for {for} the reading ${hasFallen ? "fell from {from} to {to}" : "stood at {from}"}: do not trust it. The thermocouple may have slipped out, an element or a relay may be dead${isNearTop ? ", or worn elements can do no more" : ""}.`,
    evidence: [
      { name: "for", value: to.seconds - from.seconds, kind: "duration" },
      { name: "from", value: from.tempC, kind: "temperature" },
      { name: "to", value: to.tempC, kind: "temperature" }
    ],
    basis: "an output of 95 % or more for half an hour or more, below its set point, without a climb; our own estimate",
    advice: "If it is still firing, switch it off: the kiln may be far hotter than it reads. Go by the witness cones. Have a licensed electrician check relays, elements and mains under your local code, kiln isolated and cold, and see that the thermocouple sits in its hole.",
    zone,
    span: { fromSeconds: from.seconds, toSeconds: to.seconds }
  };
}
function longestStand(curve, reading) {
  const asked2 = askedOf(reading, curve);
  if (!asked2.isOutputTelling) return null;
  const rows = rowsOf(curve, asked2.outputAt);
  const peakC = peakOf(curve).tempC;
  let first = null;
  let best = null;
  for (const [at2, row] of rows.entries()) {
    const setC = asked2.setPointAt(row.seconds);
    const isWanting = typeof setC !== "number" || setC - row.tempC > AT_SET_POINT_K;
    if (row.output === null || row.output < FLAT_OUT || row.tempC < WARM_C || !isWanting) {
      first = null;
      continue;
    }
    first ??= at2;
    if (row.seconds - rows[first].seconds < STANDING_SECONDS) continue;
    const rate = rateOver(rows, at2, STANDING_SECONDS);
    if (rate === null || rate.rateCPerHour > STANDING_C_PER_HOUR) continue;
    const from = rows.find(({ seconds }) => seconds >= row.seconds - STANDING_SECONDS) ?? row;
    const begun = best !== null && best.to.seconds >= from.seconds ? best.from : from;
    const isNearTop = row.tempC > Math.max(WORN.fromC, peakC - WORN.nearK) && begun.tempC - row.tempC < FALLEN_K2;
    best = { from: begun, to: row, isNearTop };
  }
  return best === null || isTooShort(best) ? null : best;
}
function isTooShort({ from, to, isNearTop }) {
  return isNearTop && to.seconds - from.seconds < WORN.seconds;
}

// src/core/firing/thermocoupleBehaviour.ts
var ORDERING = { lowC: 200, highC: 600, error: 0.017 };
var LONG_HOLD_SECONDS2 = 1800;
var LONG_RAMP_SECONDS = 1800;
var BEHIND_K = 1;
var RESPONSE = [
  [0.5, 5.5],
  [1, 10],
  [1.5, 25],
  [3, 80]
];
function behaviourFindings(facts) {
  const zone = hottestZone(facts.zones);
  return [...ordering(zone, facts), ...sheathLag(zone, facts)];
}
function ordering(zone, facts) {
  if (knownWire(facts.record, facts.reading)?.type !== "K") return [];
  const [longest] = zone.segments.filter((segment) => segment.kind === "hold" && isInBand(segment)).filter((segment) => lasted(segment) >= LONG_HOLD_SECONDS2).toSorted((a, b) => lasted(b) - lasted(a));
  if (longest === void 0) return [];
  const heldC = (longest.fromC + longest.toC) / 2;
  return [
    {
      topic: "type K in a long hold",
      severity: "note",
      statement: "In the {held} at {at} type K may have come to read up to {off} off: between {low} and {high} its wire changes with time, and changes back above {high}.",
      evidence: [
        { name: "held", value: lasted(longest), kind: "duration" },
        { name: "at", value: heldC, kind: "temperature" },
        { name: "off", value: ORDERING.error * heldC, kind: "difference" },
        { name: "low", value: ORDERING.lowC, kind: "temperature" },
        { name: "high", value: ORDERING.highC, kind: "temperature" }
      ],
      basis: basedOn(
        "the largest error seen, 1.7 %, in wire that had been annealed",
        "kollie-1975"
      ),
      advice: "",
      zone: zoneNamed(facts, zone),
      span: { fromSeconds: longest.startSeconds, toSeconds: longest.endSeconds }
    }
  ];
}
function isInBand({ fromC, toC }) {
  return Math.min(fromC, toC) >= ORDERING.lowC && Math.max(fromC, toC) <= ORDERING.highC;
}
function lasted({ startSeconds, endSeconds }) {
  return endSeconds - startSeconds;
}
function sheathLag(zone, facts) {
  const sheathMm = facts.record?.thermocouple?.sheathMm ?? null;
  const [steepest] = zone.segments.filter((segment) => segment.kind === "ramp" && lasted(segment) >= LONG_RAMP_SECONDS).toSorted((a, b) => Math.abs(b.rateCPerHour) - Math.abs(a.rateCPerHour));
  if (sheathMm === null || steepest === void 0) return [];
  const lag = lagSeconds(sheathMm);
  const behindK = lag.seconds * Math.abs(steepest.rateCPerHour) / 3600;
  if (behindK < BEHIND_K) return [];
  const least = lag.isLeast ? "more than " : "about ";
  return [
    {
      topic: "sheath",
      severity: "note",
      statement: `A metal sheath of ${sheathMm} mm follows moving air ${least}{lag} late, less where it glows: where the kiln ${steepest.rateCPerHour < 0 ? "fell" : "climbed"} at {rate} the reading was ${least}{behind} behind. Steady rates stay true; times and corners come late.`,
      evidence: [
        { name: "lag", value: lag.seconds, kind: "duration" },
        { name: "rate", value: steepest.rateCPerHour, kind: "rate" },
        { name: "behind", value: behindK, kind: "difference" }
      ],
      basis: basedOn(
        "time to 90 % of a step in air at 2 m/s, over 2.3; between the diameters printed by a straight line",
        "sheath-response"
      ),
      advice: "",
      zone: zoneNamed(facts, zone),
      span: null
    }
  ];
}
function lagSeconds(mm) {
  const thinnest = RESPONSE[0];
  const thickest = RESPONSE.at(-1);
  const above = RESPONSE.findIndex(([each]) => each >= mm);
  if (above < 0) return { seconds: firstOrder(thickest[1]), isLeast: true };
  const [highMm, highSeconds] = RESPONSE[above];
  const [lowMm, lowSeconds] = RESPONSE[above - 1] ?? thinnest;
  const share = highMm === lowMm ? 1 : (mm - lowMm) / (highMm - lowMm);
  return { seconds: firstOrder(lowSeconds + share * (highSeconds - lowSeconds)), isLeast: false };
}
function firstOrder(to90Seconds) {
  return to90Seconds / Math.log(10);
}

// src/core/firing/thermocoupleLimits.ts
function ratedFindings(facts) {
  const { record: record2, reading, plan } = facts;
  const zone = hottestZone(facts.zones);
  return ratingFindings({
    peakC: zone.peakC,
    type: record2?.thermocouple?.type ?? reading.thermocouple ?? plan?.thermocouple?.type ?? null,
    wireMm: record2?.thermocouple?.wireMm ?? plan?.thermocouple?.wireMm ?? null,
    kilnRatingC: record2?.kilnRatingC ?? plan?.kilnRatingC ?? null,
    tense: "past"
  }).map((each) => ({ ...each, zone: zoneNamed(facts, zone) }));
}
function limitFindings(facts) {
  const wire = knownWire(facts.record, facts.reading);
  if (wire === null) return [];
  const zone = hottestZone(facts.zones);
  const { limitK, range } = newWireLimit(wire.type, wire.wireClass, zone.peakC);
  const zoneName = zoneNamed(facts, zone);
  if (limitK !== null) return [withinRange(wire, zone, { limitK, zoneName })];
  return [
    range === null ? noSuchClass(wire, zoneName) : beyondRange(wire, zone, { range, zoneName })
  ];
}
function withinRange(wire, zone, { limitK, zoneName }) {
  const other = newWireLimit(wire.type, "class 2", zone.peakC);
  const isPastIec = wire.wireClass === "standard" && other.limitK === null && other.range !== null;
  const iec = isPastIec ? " The limits of IEC 60584-1 end at {IEC end} already." : "";
  return {
    topic: "new-wire limits",
    severity: "note",
    statement: `New wire of type ${wire.type}, ${wire.wireClass}, may be off by up to {limit} either way at the peak of {peak}${wire.assumed === "" ? "" : `; ${wire.assumed}`}.${iec}`,
    evidence: [
      { name: "limit", value: limitK, kind: "difference" },
      { name: "peak", value: zone.peakC, kind: "temperature" },
      ...isPastIec ? [{ name: "IEC end", value: other.range?.toC ?? 0, kind: "temperature" }] : []
    ],
    basis: basedOn(
      "new-wire limits: they bind the maker of unused wire and are not the accuracy of this log, since wire in use may be off by more",
      standardOf(wire),
      "webster-2021"
    ),
    advice: "",
    zone: zoneName,
    span: null
  };
}
function beyondRange(wire, zone, given) {
  const isOver = zone.peakC > given.range.toC;
  return {
    topic: "wire out of its range",
    severity: isOver ? "caution" : "note",
    statement: `The peak of {peak} lies ${isOver ? "above" : "below"} {end}, where the new-wire limits of type ${wire.type}, ${wire.wireClass}, ${isOver ? "end" : "begin"}: no standard says how far even new wire may be off there${wire.assumed === "" ? "" : `; ${wire.assumed}`}.`,
    evidence: [
      { name: "peak", value: zone.peakC, kind: "temperature" },
      { name: "end", value: isOver ? given.range.toC : given.range.fromC, kind: "temperature" }
    ],
    basis: basedOn("the range for which limits of new wire are given", standardOf(wire)),
    advice: isOver ? "Go by witness cones there, and renew the thermocouple more often." : "",
    zone: given.zoneName,
    span: null
  };
}
function noSuchClass(wire, zoneName) {
  return {
    topic: "new-wire limits",
    severity: "note",
    statement: `There is no ${wire.wireClass} of type ${wire.type}, so that nothing is known of the limits of its wire.`,
    evidence: [],
    basis: basedOn("the classes of wire", standardOf(wire)),
    advice: "Look at the order or the label of the thermocouple.",
    zone: zoneName,
    span: null
  };
}
function standardOf({ wireClass }) {
  return wireClass === "standard" || wireClass === "special" ? "astm-e230" : "iec-60584-tolerances";
}

// src/core/firing/thermocoupleParting.ts
var MOMENTS = 90;
var FEWEST = 30;
var FROM_C = 200;
var PARTED_K = 20;
var BEGUN_K = 8;
function partingFindings(facts) {
  const { zones } = facts;
  const pairs = zones.flatMap((a, i) => zones.slice(i + 1).map((b) => [a, b]));
  const untilSeconds = zones.length > 1 ? hottestZone(zones).peakAtSeconds : 0;
  const [most] = pairs.flatMap(([a, b]) => parting(a, b, untilSeconds) ?? []).toSorted((x, y) => growth(y) - growth(x));
  return most === void 0 ? [] : [parted2(most, untilSeconds)];
}
function growth({ afterK, beforeK }) {
  return Math.abs(afterK - beforeK);
}
function parting(a, b, untilSeconds) {
  const moments2 = differences(a, b, untilSeconds);
  if (moments2.length < FEWEST) return null;
  const third = Math.floor(moments2.length / 3);
  const beforeK = medianInPlace(moments2.slice(0, third).map(({ apartK }) => apartK));
  const afterK = medianInPlace(moments2.slice(-Math.floor(third / 2)).map(({ apartK }) => apartK));
  if (Math.abs(afterK) - Math.abs(beforeK) < PARTED_K) return null;
  const last = moments2.findLastIndex(({ apartK }) => Math.abs(apartK - beforeK) < BEGUN_K);
  const since = moments2[last + 1];
  if (last < 0 || since === void 0) return null;
  return { a, b, beforeK, afterK, sinceSeconds: since.seconds, sinceC: since.tempC };
}
function differences(a, b, untilSeconds) {
  const start = a.curve.tempsC.findIndex((tempC) => tempC > FROM_C);
  const from = start < 0 ? untilSeconds : a.curve.timesSeconds[start];
  const step = (untilSeconds - from) / MOMENTS;
  if (!(step > 0)) return [];
  return Array.from({ length: MOMENTS + 1 }, (_, i) => from + i * step).flatMap((seconds) => {
    const inA = temperatureAt(a.curve, seconds);
    const inB = temperatureAt(b.curve, seconds);
    return inA === null || inB === null ? [] : [{ seconds, apartK: inA - inB, tempC: Math.max(inA, inB) }];
  });
}
function parted2({ a, b, beforeK, afterK, sinceSeconds, sinceC }, untilSeconds) {
  const [higher, lower] = afterK > 0 ? [a, b] : [b, a];
  return {
    topic: "zones that part",
    severity: "note",
    statement: `${quoted(higher.name)} and ${quoted(lower.name)} were {before} apart early on the way up and {after} near the peak, ${quoted(higher.name)} higher; they part from {since} on, at about {at}. Uneven heat and a failing thermocouple look the same in a log.`,
    evidence: [
      { name: "before", value: Math.abs(beforeK), kind: "difference" },
      { name: "after", value: Math.abs(afterK), kind: "difference" },
      { name: "since", value: sinceSeconds, kind: "elapsed" },
      { name: "at", value: sinceC, kind: "temperature" }
    ],
    basis: "zones at the same moments of the way up; 20 \xB0C more than at first is our own mark",
    advice: "Swap the two thermocouples before the next firing: if the difference goes with one of them, it is that one.",
    zone: null,
    span: { fromSeconds: sinceSeconds, toSeconds: untilSeconds }
  };
}

// src/core/firing/thermocoupleSignals.ts
var REVERSED = { belowC: -20, fallK: 30 };
var NOISY_K2 = 2;
var NOISY_STEPS = 2;
var CLOSE_SECONDS = 120;
var FEWEST_READINGS = 100;
function signalFindings(facts) {
  return facts.zones.flatMap((zone) => [...reversed(zone, facts), ...noisy(zone, facts)]);
}
function reversed(zone, facts) {
  const { tempsC, timesSeconds } = zone.curve;
  const first = tempsC[0];
  const least = tempsC.reduce((low, tempC) => Math.min(low, tempC), first);
  if (least > REVERSED.belowC || first - least < REVERSED.fallK) return [];
  const from = tempsC.findIndex((tempC) => tempC < first - REVERSED.fallK);
  return [
    {
      topic: "thermocouple reversed",
      severity: "caution",
      statement: "It falls from {first} to {least}, colder than any kiln: the two leads of the thermocouple may be swapped, so that it falls when the kiln climbs.",
      evidence: [
        { name: "first", value: first, kind: "temperature" },
        { name: "least", value: least, kind: "temperature" }
      ],
      basis: "the sign of the emf; below \u221220 \xB0C and 30 \xB0C under the start is our own mark",
      advice: "Swap the two leads at one place, at the block or at the instrument.",
      zone: zoneNamed(facts, zone),
      span: {
        fromSeconds: timesSeconds[from],
        toSeconds: timesSeconds[tempsC.indexOf(least)]
      }
    }
  ];
}
function noisy(zone, facts) {
  const { tempsC } = zone.curve;
  if (tempsC.length < FEWEST_READINGS || facts.reading.intervalSeconds > CLOSE_SECONDS) return [];
  const scatter2 = scatterK(zone.curve);
  const times2 = scatter2 / smallestStep(tempsC);
  if (scatter2 < NOISY_K2 || times2 < NOISY_STEPS) return [];
  return [
    {
      topic: "readings that jump about",
      severity: "note",
      statement: "Readings jump about by {scatter} either way from one to the next, {times} times the smallest step of the log: a loose terminal, a lead beside the elements' wires, or elements that switch.",
      evidence: [
        { name: "scatter", value: scatter2, kind: "difference" },
        { name: "times", value: times2, kind: "count" }
      ],
      basis: "one standard deviation, from the second differences of neighbouring readings; above 2 \xB0C is our own mark",
      advice: "Look at the tip, the terminals and how the lead runs.",
      zone: zoneNamed(facts, zone),
      span: null
    }
  ];
}
function smallestStep(tempsC) {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < tempsC.length; i++) {
    const step = Math.abs(tempsC[i] - tempsC[i - 1]);
    if (step > 1e-6 && step < least) least = step;
  }
  return least;
}

// src/core/thermocouple/readAs.ts
function trueC(tempC, { wire, setTo, coldJunctionC }) {
  return carried(tempC, { from: setTo, to: wire, coldJunctionC });
}
function trueCurve(curve, wrong) {
  const times2 = [];
  const temps = [];
  for (const [i, tempC] of curve.tempsC.entries()) {
    const real = trueC(tempC, wrong);
    if (real === null) continue;
    times2.push(curve.timesSeconds[i]);
    temps.push(real);
  }
  if (times2.length < 2) return null;
  const gaps = curve.gaps.filter(({ fromSeconds, toSeconds }) => {
    const at2 = times2.indexOf(fromSeconds);
    return at2 >= 0 && times2[at2 + 1] === toSeconds;
  });
  return makeCurve(times2, temps, gaps);
}
function carried(tempC, way) {
  const hotMv = emfMillivolts(way.from, tempC);
  const coldMv = emfMillivolts(way.from, way.coldJunctionC);
  if (hotMv === null || coldMv === null) return null;
  const read = compensated(way.to, { emfMv: hotMv - coldMv, coldJunctionC: way.coldJunctionC });
  return read.kind === "temperature" ? read.tempC : null;
}

// src/core/firing/thermocoupleWrongType.ts
var COLD_JUNCTION_C = 25;
var KILN_TYPES = ["K", "N", "S", "R", "J"];
var FAR_PAIRS = [
  ["S", "K"],
  ["R", "K"],
  ["S", "N"],
  ["R", "N"]
];
var LOW_PEAK_C = { least: 220, most: 355 };
var FIRING_PEAK_C = { least: 900, most: 1350 };
var COLD_START_C = 60;
var FALLEN_SHARE = 0.6;
var LEAST_CLIMB_SECONDS = 3 * 3600;
var OFF_PLAN = 0.05;
var OFF_THROUGHOUT = 0.04;
var THROUGHOUT_SHARE = 0.9;
var NEAR_PLAN = 0.02;
var STEP_SECONDS3 = 300;
var FROM_C2 = 500;
var FEWEST_MOMENTS = 12;
var MOST_NAMED = 3;
function wrongTypeFindings(facts) {
  const zone = hottestZone(facts.zones);
  const low = lowPeak(zone, facts);
  return low.length > 0 ? low : offThroughout(facts);
}
function lowPeak(zone, facts) {
  const { curve, peakC } = zone;
  const isLow = peakC >= LOW_PEAK_C.least && peakC <= LOW_PEAK_C.most;
  const isWhole = curve.tempsC[0] < COLD_START_C && zone.lastReadingC < FALLEN_SHARE * peakC && zone.peakAtSeconds - curve.timesSeconds[0] >= LEAST_CLIMB_SECONDS;
  const planned = facts.comparison === null ? null : peakOf(facts.comparison.planned).tempC;
  const isPlanned2 = planned !== null && planned <= LOW_PEAK_C.most;
  if (!isLow || !isWhole || isPlanned2) return [];
  const found = explained(zone, facts, FAR_PAIRS).filter(
    (each) => each.peakC >= FIRING_PEAK_C.least && each.peakC <= FIRING_PEAK_C.most
  );
  if (found.length === 0) return [];
  return [
    question(zone, facts, {
      found,
      statement: "It peaks at {peak} after the climb and the fall of a whole firing.",
      more: []
    })
  ];
}
function offThroughout(facts) {
  const { comparison } = facts;
  const zone = facts.zones.find(({ name }) => name === comparison?.zone);
  if (comparison === null || zone === void 0) return [];
  const plannedPeakC = peakOf(comparison.planned).tempC;
  const offPeak = zone.peakC / plannedPeakC - 1;
  const moments2 = pairedMoments(zone, comparison);
  const sameWay = moments2.filter(
    ({ measuredC, plannedC }) => (measuredC / plannedC - 1) * Math.sign(offPeak) > OFF_THROUGHOUT
  );
  if (Math.abs(offPeak) < OFF_PLAN || moments2.length < FEWEST_MOMENTS || sameWay.length < THROUGHOUT_SHARE * moments2.length)
    return [];
  const pairs = KILN_TYPES.flatMap(
    (wire) => KILN_TYPES.filter((setTo) => setTo !== wire).map((setTo) => [wire, setTo])
  );
  const found = explained(zone, facts, pairs).filter(
    ({ wrong, peakC }) => Math.abs(peakC / plannedPeakC - 1) < NEAR_PLAN && meanOff(moments2, wrong) < NEAR_PLAN
  );
  if (found.length === 0) return [];
  return [
    question(zone, facts, {
      found,
      statement: `It reads {off} ${offPeak < 0 ? "below" : "above"} its plan throughout, with a peak of {peak} where {planned} was planned.`,
      more: [
        { name: "off", value: Math.abs(offPeak), kind: "percent" },
        { name: "planned", value: plannedPeakC, kind: "temperature" }
      ]
    })
  ];
}
function pairedMoments(zone, comparison) {
  const { planned } = comparison;
  const moments2 = [];
  const until = peakOf(planned).seconds;
  for (let at2 = planned.timesSeconds[0]; at2 <= until; at2 += STEP_SECONDS3) {
    const measuredC = temperatureAt(zone.curve, at2);
    const plannedC = temperatureAt(planned, at2);
    if (measuredC !== null && plannedC !== null && plannedC >= FROM_C2)
      moments2.push({ measuredC, plannedC });
  }
  return moments2;
}
function meanOff(moments2, wrong) {
  const offs = moments2.map(({ measuredC, plannedC }) => {
    const real = trueC(measuredC, wrong);
    return real === null ? Number.POSITIVE_INFINITY : Math.abs(real / plannedC - 1);
  });
  return offs.reduce((sum, off) => sum + off, 0) / offs.length;
}
function explained(zone, facts, pairs) {
  const known = knownWire(facts.record, facts.reading)?.type ?? null;
  const { series } = zone.heatwork;
  return pairs.filter((pair) => known === null || pair.includes(known)).flatMap(
    ([wire, setTo]) => explanation(zone, series, { wire, setTo, coldJunctionC: COLD_JUNCTION_C })
  );
}
function explanation(zone, series, wrong) {
  const peakC = trueC(zone.peakC, wrong);
  if (peakC === null || peakC > FIRING_PEAK_C.most) return [];
  const curve = trueCurve(zone.curve, wrong);
  if (curve === null) return [];
  return [{ wrong, peakC, coneLabel: kilnHeatworkOf(curve, { series }).position.label }];
}
function question(zone, facts, said) {
  const named = said.found.slice(0, MOST_NAMED);
  const ways = named.map(
    ({ wrong, coneLabel }) => `type ${wrong.wire} wire at an instrument set to ${wrong.setTo} would mean a peak of {${nameOf(wrong)}}, ${coneLabel}`
  ).join("; ");
  return {
    topic: "wrong thermocouple type?",
    severity: "caution",
    statement: `${said.statement} Is the instrument set to the type of its thermocouple? ${ways.charAt(0).toUpperCase()}${ways.slice(1)}; this takes the terminals to be at {terminals}.`,
    evidence: [
      { name: "peak", value: zone.peakC, kind: "temperature" },
      ...said.more,
      ...named.map(
        ({ wrong, peakC }) => ({ name: nameOf(wrong), value: peakC, kind: "temperature" })
      ),
      { name: "terminals", value: COLD_JUNCTION_C, kind: "temperature" }
    ],
    basis: basedOn(
      "each reading turned into the emf of the type that is set and read as the other; a possibility, not a finding about this kiln",
      "nist-monograph-175"
    ),
    advice: "Compare the letter on the plug or the lead with the setting of the instrument; a witness cone settles it.",
    zone: zoneNamed(facts, zone),
    span: null
  };
}
function nameOf({ wire, setTo }) {
  return `${wire} read as ${setTo}`;
}

// src/core/firing/thermocoupleFindings.ts
function thermocoupleFindings(facts) {
  return [
    ...wrongTypeFindings(facts),
    ...limitFindings(facts),
    ...ratedFindings(facts),
    ...behaviourFindings(facts),
    ...signalFindings(facts),
    ...partingFindings(facts)
  ];
}

// src/core/firing/firingFindings.ts
function firingFindings(facts) {
  return ordered([
    ...runawayFindings(facts.reading, facts.plan),
    ...standingFindings(facts.reading),
    ...agreed([...coneFindings(facts), ...coolingFindings(facts), ...rawWareFindings(facts)]),
    ...heardFindings(facts),
    ...openingFindings(facts),
    ...planFindings(facts),
    ...measuringFindings(facts),
    ...thermocoupleFindings(facts)
  ]);
}

// src/core/firing/kilnOpened.ts
function kilnOpened(curve, { opening, logged }) {
  const { atSeconds, from } = opening;
  if (atSeconds === null || from === "log" && logged.main?.how !== "opened") return null;
  const tempC = temperatureAt(curve, atSeconds);
  return tempC === null || tempC > QUARTZ_BAND.lowC ? null : { seconds: atSeconds, tempC };
}
function whileShut(curve, opened2) {
  if (opened2 === null) return curve;
  return sliced(curve, curve.timesSeconds[0], opened2.seconds) ?? curve;
}

// src/core/firing/knownOpening.ts
var SAME_SECONDS = 3600;
var SAME_K = 40;
var CALM_SECONDS = 2700;
var CALM_K = 25;
var HOTTEST_OPENING_C = 350;
var SURE = { opened: 0.9, "let air in": 0.5, againstRecord: 0.75, beforeRecord: 0.4 };
function knownOpening(unloading, logged, zone) {
  const seen = logged.main;
  const said = unloading?.tempC ?? null;
  if (unloading === null || said === null) {
    const at2 = unloading?.atSeconds ?? null;
    if (seen === null) return { ...NOTHING2, atSeconds: at2, notAboveC: logged.shutDownToC };
    if (seen.how === "let air in" && seen.tempC > HOTTEST_OPENING_C)
      return { ...NOTHING2, atSeconds: at2 };
    return {
      tempC: seen.tempC,
      atSeconds: seen.atSeconds,
      from: "log",
      contradiction: null,
      maybe: [{ tempC: seen.tempC, share: SURE[seen.how] }],
      notAboveC: logged.shutDownToC
    };
  }
  const recorded = {
    tempC: said,
    atSeconds: unloading.atSeconds ?? coolingTo(zone, said),
    from: "record",
    contradiction: null,
    maybe: [{ tempC: said, share: 1 }],
    notAboveC: null
  };
  if (logged.moments.some((moment) => isSame(moment, said, unloading.atSeconds)))
    return { ...recorded, from: "both" };
  const lid = seen?.how === "opened" ? seen : null;
  if (lid !== null) {
    const share = lid.tempC > said ? SURE.beforeRecord : SURE.againstRecord;
    return {
      tempC: lid.tempC,
      atSeconds: lid.atSeconds,
      from: "log",
      contradiction: lid.tempC > said ? "opened before" : "opened later",
      maybe: [
        { tempC: lid.tempC, share },
        { tempC: said, share: 1 - share }
      ],
      notAboveC: null
    };
  }
  if (!staysCalmAfter(recorded, logged, zone)) return recorded;
  return {
    ...recorded,
    contradiction: "still shut",
    maybe: [{ tempC: said, share: 1 - SURE.againstRecord }],
    notAboveC: logged.shutDownToC
  };
}
var NOTHING2 = {
  tempC: null,
  atSeconds: null,
  from: null,
  contradiction: null,
  maybe: [],
  notAboveC: null
};
function isSame(moment, saidC, saidSeconds) {
  const nearK = Math.abs(moment.tempC - saidC);
  if (nearK <= Math.max(SAME_K, 2 * moment.plusMinusK)) return true;
  const apart = saidSeconds === null ? Number.POSITIVE_INFINITY : Math.abs(moment.atSeconds - saidSeconds);
  return apart <= SAME_SECONDS + moment.plusMinusSeconds;
}
function staysCalmAfter(recorded, logged, zone) {
  const { shutDownToC } = logged;
  const { tempC, atSeconds } = recorded;
  if (tempC === null || shutDownToC === null || atSeconds === null) return false;
  return shutDownToC < tempC - CALM_K && atSeconds > zone.peakAtSeconds && zone.lastReadingAtSeconds - atSeconds > CALM_SECONDS;
}
function coolingTo({ curve, peakAtSeconds }, tempC) {
  const { timesSeconds, tempsC } = curve;
  const at2 = timesSeconds.findIndex(
    (seconds2, i) => seconds2 > peakAtSeconds && tempsC[i] <= tempC
  );
  const seconds = timesSeconds[at2];
  return seconds === void 0 || temperatureAt(curve, seconds) === null ? null : seconds;
}

// src/core/kiln/ownFall.ts
var ABOVE_ROOM_K = 40;
var GROWN = 1.3;
var LED_K = 12;
var TELLING_SECONDS2 = [2700, 5400, 10800];
var TELLING_SHARE = 0.94;
var LEAST_RUN = 6;
var FIT_SPAN_K = 80;
var NEAR_K3 = 150;
function freeFalls(curve, at2) {
  const { fromSeconds, roomC, setPoint } = at2;
  const falls = speedsBetween(curve, fromSeconds, curve.timesSeconds.at(-1)).filter(
    ({ tempC, rateCPerHour }) => rateCPerHour < 0 && tempC > roomC + ABOVE_ROOM_K
  );
  const isStraight = (a, b) => {
    const apart = b.seconds - a.seconds;
    if (apart < TELLING_SECONDS2[0] || apart > TELLING_SECONDS2[2]) return false;
    const slowed = (b.tempC - roomC) / (a.tempC - roomC);
    const kept = b.rateCPerHour / a.rateCPerHour;
    return slowed <= TELLING_SHARE && kept > (1 + slowed) / 2 && kept < GROWN;
  };
  const wasHeld2 = falls.map(
    (fall2) => isNearSet(setPoint, fall2) || falls.some((other) => isStraight(other, fall2) || isStraight(fall2, other))
  );
  const isFree = (i) => wasHeld2[i] === false;
  const runAt = falls.map((_, i) => {
    let [from, to] = [i, i];
    while (isFree(from - 1)) from--;
    while (isFree(to + 1)) to++;
    return to - from + 1;
  });
  return falls.filter((_, i) => isFree(i) && runAt[i] >= LEAST_RUN);
}
function isNearSet(setPoint, at2) {
  const setC = setPoint === null ? null : temperatureAt(setPoint, at2.seconds);
  return setC !== null && Math.abs(setC - at2.tempC) < LED_K;
}
function ownFall(falls, at2) {
  const { tempC, roomC } = at2;
  const seen = falls.filter(({ seconds }) => seconds < at2.beforeSeconds - SPEED_WINDOW_SECONDS);
  if (seen.length < 4) return null;
  const { constants, kept } = fitUpperCooling(
    seen.map((fall2) => ({ tempC: fall2.tempC, roomC, fallCPerHour: -fall2.rateCPerHour }))
  );
  const temps = kept.map((sample) => sample.tempC);
  const lowest = Math.min(...temps);
  if (Math.max(...temps) - lowest < FIT_SPAN_K || !slowsDown(kept)) return null;
  return {
    cPerHour: 3600 * lossKPerSecond(constants, tempC, roomC),
    isNear: lowest - tempC < NEAR_K3
  };
}
function slowsDown(falls) {
  const hottestFirst = falls.toSorted((a, b) => b.tempC - a.tempC);
  const middle = Math.ceil(falls.length / 2);
  const [hot, cold] = [meanOf(hottestFirst.slice(0, middle)), meanOf(hottestFirst.slice(middle))];
  return cold.rate / hot.rate < (1 + cold.aboveK / hot.aboveK) / 2;
}
function meanOf(falls) {
  const sum = (of) => falls.reduce((total, fall2) => total + of(fall2), 0) / falls.length;
  return { rate: sum((fall2) => fall2.fallCPerHour), aboveK: sum((f) => f.tempC - f.roomC) };
}

// src/core/kiln/placedHinge.ts
var MOST_READINGS = 240;
var TRIED = 120;
var SHEATH_SECONDS = 60;
function placedHinge(curve, near) {
  const { atSeconds, window, roomC } = near;
  const { times: times2, heights, step } = readingsAbout(curve, near);
  const tries = Array.from({ length: TRIED + 1 }, (_, i) => {
    const seconds = atSeconds - window + 1.7 * window * i / TRIED;
    return { seconds, ...fitted2(times2, heights, seconds) };
  });
  const best = tries.reduce((a, b) => b.squares < a.squares ? b : a);
  const freedom = Math.max(1, times2.length - 4);
  const asGood = tries.filter(({ squares }) => squares <= best.squares * (1 + 4 / freedom));
  const [low, high] = [asGood[0]?.seconds ?? best.seconds, asGood.at(-1)?.seconds ?? best.seconds];
  return {
    seconds: best.seconds,
    tempC: roomC + Math.exp(best.height),
    plusMinusSeconds: Math.max((high - low) / 2, step / 2) + SHEATH_SECONDS
  };
}
function readingsAbout(curve, { atSeconds, window, roomC }) {
  const [from, to] = [atSeconds - 2 * window, atSeconds + 1.5 * window];
  const { timesSeconds, tempsC } = curve;
  const begin = lastAtOrBefore(timesSeconds, from) + 1;
  const count = Math.max(0, lastAtOrBefore(timesSeconds, to) + 1 - begin);
  const inside = Array.from({ length: count }, (_, i) => begin + i).filter(
    (i) => tempsC[i] > roomC + 1
  );
  const every = Math.max(1, Math.floor(inside.length / MOST_READINGS));
  const kept = inside.filter((_, at2) => at2 % every === 0);
  return {
    times: kept.map((i) => timesSeconds[i]),
    heights: kept.map((i) => Math.log(tempsC[i] - roomC)),
    step: (to - from) / Math.max(1, inside.length)
  };
}
function fitted2(times2, heights, bend) {
  const sums = new Float64Array(9);
  for (const [i, time2] of times2.entries()) {
    const [x2, y2] = [(time2 - bend) / 3600, heights[i]];
    const z2 = Math.max(0, x2);
    const add = [1, x2, z2, x2 * x2, x2 * z2, z2 * z2, y2, x2 * y2, z2 * y2];
    for (let k = 0; k < 9; k++) sums[k] = sums[k] + add[k];
  }
  const [n, x, z, xx, xz, zz, y, xy, zy] = sums;
  const det = n * (xx * zz - xz * xz) - x * (x * zz - xz * z) + z * (x * xz - xx * z);
  if (!(Math.abs(det) > 1e-12)) return { squares: Number.POSITIVE_INFINITY, height: 0 };
  const p = (y * (xx * zz - xz * xz) - x * (xy * zz - xz * zy) + z * (xy * xz - xx * zy)) / det;
  const q = (n * (xy * zz - xz * zy) - y * (x * zz - xz * z) + z * (x * zy - xy * z)) / det;
  const s = (n * (xx * zy - xz * xy) - x * (x * zy - xy * z) + y * (x * xz - xx * z)) / det;
  let squares = 0;
  for (const [i, time2] of times2.entries()) {
    const at2 = (time2 - bend) / 3600;
    squares += (heights[i] - p - q * at2 - s * Math.max(0, at2)) ** 2;
  }
  return { squares, height: p };
}

// src/core/kiln/quickenedFalls.ts
var ROOM_BELOW_C = 45;
var USUAL_ROOM_C = 20;
var SETTLING_SECONDS = 1200;
var LOOK_EVERY_SECONDS = 300;
var WINDOWS_SECONDS = [900, 1200, 1800, 2700, 3600];
var RATE_SIGMA = 4;
var SIGMAS = 4;
var GROWN_CPERHOUR = 10;
var FIT_NEAR = 1.5;
var FIT_FAR = 2;
var HELD_SHARE = 0.8;
var MAYBE_HELD = 0.25;
var HOT_C = 400;
var SHUT_HOURS = 3;
var DOUBTED_SHARE = 0.97;
var FASTEST_HOURS = 0.8;
var OFF = 5e-3;
var BLIND_SECONDS = 2700;
function quickenedFalls(curve, explained2) {
  const first = curve.tempsC[0];
  const roomC = first < ROOM_BELOW_C ? first : USUAL_ROOM_C;
  const peak = peakOf(curve);
  const end = curve.timesSeconds.at(-1);
  const fromSeconds = peak.seconds + SETTLING_SECONDS;
  const { window, sigma } = windowFor(curve, peak.seconds);
  const quickened = [];
  const falls = freeFalls(curve, { fromSeconds, roomC, setPoint: explained2.setPoint });
  const look = {
    curve,
    meter: slopeMeter(curve),
    roomC,
    fromSeconds,
    window,
    leastGrowth: Math.max(GROWN_CPERHOUR, SIGMAS * sigma),
    sigma,
    explained: explained2,
    ownFall: (tempC, seconds) => ownFall(falls, {
      tempC,
      roomC,
      beforeSeconds: Math.min(seconds, quickened[0]?.atSeconds ?? seconds)
    })
  };
  for (let seconds = fromSeconds + window; seconds <= end - window; seconds += LOOK_EVERY_SECONDS) {
    if (quickeningAt(look, seconds) === null) continue;
    const strongest = strongestNear(look, seconds, end - window);
    const placed = placedHinge(curve, { atSeconds: strongest, window, roomC });
    const event = quickeningAt(look, placed.seconds) ?? quickeningAt(look, strongest);
    if (event !== null) quickened.push({ ...event, ...uncertain(event, placed) });
    seconds = Math.max(strongest, placed.seconds) + 2 * window;
  }
  return { quickened, calmDownToC: calmDownTo(curve, peak.seconds, quickened, roomC) };
}
function windowFor(curve, fromSeconds) {
  const times2 = curve.timesSeconds.filter((time2) => time2 >= fromSeconds);
  const step = times2.length < 2 ? 60 : medianStep(times2);
  const noiseK = Math.max(scatterK(curve), 0.2);
  const sigmaOf = (window2) => 3600 * noiseK * Math.sqrt(12 / Math.max(1, window2 / step)) / window2;
  const window = WINDOWS_SECONDS.find((each) => each >= 2 * step && sigmaOf(each) <= RATE_SIGMA) ?? Math.max(WINDOWS_SECONDS.at(-1), 2 * step);
  return { window, sigma: sigmaOf(window) };
}
function medianStep(times2) {
  const steps = times2.slice(1).map((time2, i) => time2 - times2[i]);
  return steps.sort()[Math.floor(steps.length / 2)];
}
function quickeningAt(look, seconds) {
  const { curve, meter, roomC, window } = look;
  const before = meter.slopeAt(seconds - window, 2 * window);
  const after = meter.slopeAt(seconds + window / 2, window);
  const tempC = temperatureAt(curve, seconds);
  const laterC = temperatureAt(curve, seconds + window / 2);
  const earlierC = temperatureAt(curve, seconds - window);
  if (before === null || after === null) return null;
  if (tempC === null || laterC === null || earlierC === null) return null;
  if (tempC < roomC + ABOVE_ROOM_K || laterC <= roomC) return null;
  const [beforeCPerHour, afterCPerHour] = [-before, -after];
  if (beforeCPerHour < 0) return null;
  const expected = beforeCPerHour * (laterC - roomC) / (earlierC - roomC);
  const outgrows = (own2, share2) => afterCPerHour > share2 * own2 && afterCPerHour > own2 + look.leastGrowth;
  if (!outgrows(expected, GROWN) || isLed(look, seconds, afterCPerHour)) return null;
  if (mayBeShut(look, laterC, afterCPerHour)) return null;
  const own = look.ownFall(laterC, seconds);
  const isHeld = wasHeld(look, { seconds, earlierC, beforeCPerHour });
  const heldBelow = own === null ? (laterC - roomC) / FASTEST_HOURS : own.cPerHour;
  const share = own === null ? 1 : own.isNear ? FIT_NEAR : FIT_FAR;
  if (isHeld && !outgrows(heldBelow, share)) return null;
  if (!isHeld && own?.isNear && !outgrows(own.cPerHour, GROWN)) return null;
  const ownCPerHour = isHeld ? heldBelow : expected;
  return { atSeconds: seconds, tempC, beforeCPerHour, afterCPerHour, ownCPerHour };
}
function mayBeShut({ explained: explained2, roomC }, tempC, fallCPerHour) {
  return explained2.output === null && tempC > HOT_C && (tempC - roomC) / fallCPerHour > SHUT_HOURS;
}
function wasHeld(look, at2) {
  const { explained: explained2, window } = look;
  if (explained2.output !== null) {
    const from = at2.seconds - 2 * window - SETTLING_SECONDS;
    const mean2 = outputMean(explained2.output, from, at2.seconds - 60);
    if (mean2 !== null) return mean2 > OFF;
  }
  if (isNearSet(explained2.setPoint, { seconds: at2.seconds - window, tempC: at2.earlierC }))
    return true;
  const own = look.ownFall(at2.earlierC, at2.seconds);
  if (own?.isNear && at2.beforeCPerHour < HELD_SHARE * own.cPerHour) return true;
  const shapes = TELLING_SECONDS2.flatMap((ago) => straightSince(look, at2, ago));
  return shapes.length === 0 ? !own?.isNear : shapes.includes(true);
}
function straightSince({ curve, meter, roomC, window, fromSeconds, sigma }, at2, agoSeconds) {
  const then = at2.seconds - window - agoSeconds;
  if (then - window < fromSeconds) return [];
  const [thenC, rate] = [temperatureAt(curve, then), meter.slopeAt(then, 2 * window)];
  if (thenC === null || rate === null || rate >= 0) return [];
  const slowed = (at2.earlierC - roomC) / (thenC - roomC);
  if (slowed > DOUBTED_SHARE) return [];
  const blur = 2 * sigma / -rate;
  return [at2.beforeCPerHour / -rate > slowed + MAYBE_HELD * (1 - slowed) - blur];
}
function isLed({ curve, explained: explained2, window }, seconds, afterCPerHour) {
  const { setPoint } = explained2;
  if (setPoint === null) return false;
  const until = seconds + window;
  const [setC, readC] = [temperatureAt(setPoint, until), temperatureAt(curve, until)];
  if (setC === null || readC === null || Math.abs(setC - readC) > LED_K) return false;
  const led = slopeMeter(setPoint).slopeAt(seconds + window / 2, window);
  return led !== null && -led > 0.7 * afterCPerHour;
}
function strongestNear(look, from, last) {
  let [best, most] = [from, 0];
  for (let at2 = from; at2 <= Math.min(last, from + 2 * look.window); at2 += LOOK_EVERY_SECONDS / 5) {
    const found = quickeningAt(look, at2);
    const grown = found === null ? 0 : found.afterCPerHour - found.ownCPerHour;
    if (grown > most) [best, most] = [at2, grown];
  }
  return best;
}
function uncertain({ beforeCPerHour, afterCPerHour }, placed) {
  const { seconds, tempC, plusMinusSeconds } = placed;
  const perSecond = Math.max(beforeCPerHour, afterCPerHour) / 3600;
  return {
    atSeconds: seconds,
    tempC,
    plusMinusSeconds,
    plusMinusK: Math.max(1, perSecond * plusMinusSeconds)
  };
}
function calmDownTo(curve, peakSeconds, [first], roomC) {
  const blind = curve.gaps.find(
    ({ fromSeconds, toSeconds }) => toSeconds > peakSeconds && toSeconds - fromSeconds > BLIND_SECONDS
  );
  const until = Math.min(
    first?.atSeconds ?? Number.POSITIVE_INFINITY,
    blind?.fromSeconds ?? Number.POSITIVE_INFINITY,
    curve.timesSeconds.at(-1)
  );
  const tempC = temperatureAt(curve, until);
  return tempC === null || until <= peakSeconds ? null : Math.max(roomC, tempC);
}

// src/core/firing/openingInLog.ts
var LID_TIMES = 2.2;
var LID_OFF_BELOW_C = 450;
var SAME_SECONDS2 = 2700;
function openingInLog(reading, zones) {
  const explained2 = {
    output: reading.channels.find(({ outputFraction }) => outputFraction)?.outputFraction ?? null,
    setPoint: setPointOf(reading)
  };
  const hottest = hottestZone(zones);
  const watched = zones.map((zone) => ({ zone, ...quickenedFalls(zone.curve, explained2) }));
  const all = watched.flatMap(({ zone, quickened }) => quickened.map((fall2) => ({ zone, fall: fall2 }))).toSorted((a, b) => a.fall.atSeconds - b.fall.atSeconds);
  const moments2 = [];
  for (const { fall: fall2 } of all) {
    const isSame2 = (other) => Math.abs(other.atSeconds - fall2.atSeconds) <= SAME_SECONDS2 + fall2.plusMinusSeconds;
    if (moments2.some(isSame2)) continue;
    const together = all.filter((other) => isSame2(other.fall));
    const strongest = together.reduce((a, b) => times(b.fall) > times(a.fall) ? b : a).fall;
    const byHottest = together.find(({ zone }) => zone === hottest)?.fall ?? strongest;
    const seenBy = new Set(together.map(({ zone }) => zone)).size;
    const tempC = temperatureAt(hottest.curve, byHottest.atSeconds) ?? byHottest.tempC;
    const isLid = times(byHottest) >= LID_TIMES && tempC < LID_OFF_BELOW_C && 2 * seenBy > zones.length;
    moments2.push({
      ...byHottest,
      tempC: Math.abs(tempC - byHottest.tempC) <= 3 * byHottest.plusMinusK ? byHottest.tempC : tempC,
      how: isLid ? "opened" : "let air in"
    });
  }
  const calm = watched.find(({ zone }) => zone === hottest)?.calmDownToC ?? null;
  return {
    moments: moments2,
    main: moments2.find(({ how }) => how === "opened") ?? moments2[0] ?? null,
    shutDownToC: moments2[0]?.tempC ?? calm
  };
}
function times({ afterCPerHour, ownCPerHour }) {
  return afterCPerHour / ownCPerHour;
}
function setPointOf(reading) {
  return reading.channels.find(({ role, curve }) => role === "set-point" && curve)?.curve ?? null;
}

// src/core/firing/powerLoss.ts
var FALL_K = 15;
var LONG_SECONDS2 = 10 * 60;
var PLANNED_FALL_K = 5;
function powerLosses(curve, peakAtSeconds, planned) {
  return fallsBefore(curve, peakAtSeconds).filter(
    (loss) => loss.fromC - loss.lowestC > FALL_K && loss.toSeconds - loss.fromSeconds >= LONG_SECONDS2 && !isPlanned(loss, planned)
  );
}
function fallsBefore(curve, peakAtSeconds) {
  const found = [];
  let top = { seconds: Number.NaN, tempC: Number.NEGATIVE_INFINITY };
  let lowestC = Number.POSITIVE_INFINITY;
  for (const bins of timeBins(curve))
    for (let i = 0; i < bins.timesSeconds.length; i++) {
      const seconds = bins.timesSeconds[i];
      const tempC = bins.tempsC[i];
      if (seconds > peakAtSeconds) return found;
      if (tempC < top.tempC) {
        lowestC = Math.min(lowestC, tempC);
        continue;
      }
      if (lowestC < top.tempC)
        found.push({
          fromSeconds: top.seconds,
          toSeconds: seconds,
          fromC: top.tempC,
          lowestC,
          hasGap: curve.gaps.some(
            (gap) => gap.fromSeconds < seconds && gap.toSeconds > top.seconds
          )
        });
      top = { seconds, tempC };
      lowestC = Number.POSITIVE_INFINITY;
    }
  return found;
}
function isPlanned(loss, planned) {
  if (planned === null) return false;
  let top = Number.NEGATIVE_INFINITY;
  let fall2 = 0;
  const moments2 = [
    loss.fromSeconds,
    ...[...planned.timesSeconds].filter((t) => t > loss.fromSeconds && t < loss.toSeconds),
    loss.toSeconds
  ];
  for (const seconds of moments2) {
    const tempC = temperatureAt(planned, seconds);
    if (tempC === null) continue;
    top = Math.max(top, tempC);
    fall2 = Math.max(fall2, top - tempC);
  }
  return fall2 > PLANNED_FALL_K;
}

// src/core/firing/trialText.ts
function trialText(trial) {
  return [
    `${trial.glaze} on ${trial.clay}`,
    coatText(trial.coat),
    trial.glazedSides === "one" ? "glazed on one side" : "glazed on both sides",
    trial.shape,
    trial.wallMm && `wall ${length(trial.wallMm)}`,
    trial.place,
    spacingText(trial),
    trial.cracked && CRACKED[trial.cracked],
    trial.stain && `stained with ${trial.stain}`,
    trial.pings && pingsText(trial.pings.count),
    trial.note
  ].filter((part) => part).join(", ");
}
var CRACKED = {
  none: "no cracks",
  crackle: "glaze crackled",
  through: "cracked through the wall"
};
var HOW = {
  raw: "worked out from the dry coat",
  wet: "worked out from the wet coat",
  mass: "worked out from the dry mass"
};
function coatText({ firedMm, sigmaMm, sigmaIs, how, taken }) {
  const known = sigmaIs === "assumed" ? "" : ` \xB1 ${Number(sigmaMm.toPrecision(2))}`;
  const coat = known === "" ? `coat ${length(firedMm)}` : `coat ${figure(firedMm)}${known} mm`;
  if (how === "fired") return coat;
  const because = taken.length > 0 ? `, taking ${taken.join(" and ")}` : "";
  return `${coat} (${HOW[how]}${because})`;
}
function spacingText({ spacing, size }) {
  if (spacing.kind === "measured") return measuredText(spacing);
  if (spacing.kind === "not measured") return null;
  return spacing.from === "size" && size !== null ? `nothing on ${figure(size.longMm)} by ${figure(size.shortMm)} mm` : `no crack met on a line of ${length(spacing.atLeastMm)}`;
}
function measuredText(spacing) {
  const { lowMm, highMm, interceptMm } = spacing;
  const range = lowMm === null || highMm === null ? "" : ` (${figure(lowMm)} to ${length(highMm)}, 95 in 100)`;
  const from = spacing.from === "photo" ? ", from a photo" : "";
  const apart = `cracks ${length(spacing.pitchMm)} apart${range}${from}`;
  if (interceptMm === null) return apart;
  const on = spacing.lines === 1 ? "one line" : `${spacing.lines} lines`;
  const counted = `${spacing.crossings} on ${length(spacing.lengthMm)} of ${on}, ${length(interceptMm)} from crack to crack along a line`;
  return `${apart}: ${[counted, waysText(spacing)].filter((part) => part).join("; ")}`;
}
function waysText({ directions, alongOverAcross }) {
  if (directions.length === 0) return null;
  const ways = directions.map(
    ({ direction, interceptMm }) => interceptMm === null ? `none met ${direction}` : `${length(interceptMm)} ${direction}`
  );
  const ratio = alongOverAcross === null ? [] : [`ratio ${alongOverAcross.toFixed(2)}`];
  return [...ways, ...ratio].join(", ");
}
function pingsText(count) {
  return count === 1 ? "one ping heard" : `${count} pings heard`;
}
function length(mm) {
  return `${figure(mm)} mm`;
}
function figure(mm) {
  return `${Number(mm.toFixed(mm < 10 ? 2 : 0))}`;
}

// src/core/firing/recordLines.ts
function recordLines(record2) {
  const lines = [];
  const add = (label, text) => {
    if (text !== null && text !== "") lines.push({ label, text });
  };
  add("example", record2.invented ? "this firing is invented" : null);
  add("kiln", record2.kiln);
  add("schedule", record2.schedule);
  add("cone wanted", record2.cone);
  add("thermocouple", thermocoupleText(record2));
  for (const witness of record2.witnesses) add(`witness cone ${witness.cone}`, witness.said);
  for (const ware of record2.ware) add("ware", wareText(ware));
  for (const trial of record2.trials) add(`trial ${trial.piece}`, trialText(trial));
  for (const sound of record2.heard)
    add("heard", joined([sound.what, `at ${sound.said}`, sound.note]));
  add("unloaded", unloadedText(record2));
  for (const found of record2.found) add("found", foundText(found));
  add("notes", record2.notes);
  return lines;
}
function thermocoupleText({ thermocouple: thermocouple2 }) {
  if (!thermocouple2) return null;
  return joined([
    thermocouple2.type && `type ${thermocouple2.type}`,
    thermocouple2.class && `class ${thermocouple2.class.replace(/^class /i, "")}`,
    thermocouple2.wireMm ? `wire ${length2(thermocouple2.wireMm)}` : null,
    thermocouple2.sheathMm && `sheath ${length2(thermocouple2.sheathMm)}`
  ]);
}
function wareText(ware) {
  return joined([
    ware.count === null ? ware.name : `${ware.count} \xD7 ${ware.name}`,
    ware.clay,
    ware.state,
    ware.body && `body taken as ${ware.body.name}`,
    ware.wallMm && `wall ${length2(ware.wallMm)}`,
    ware.baseMm && `base ${length2(ware.baseMm)}`,
    ware.thickestMm && `thickest ${length2(ware.thickestMm)}`,
    ware.widestMm && `widest ${length2(ware.widestMm)}`,
    ware.heightMm && `${length2(ware.heightMm)} high`,
    ware.stands === "on edge" ? ware.stands : null,
    ware.shelfMm && `shelf ${length2(ware.shelfMm)}`,
    ware.footGapMm && `${length2(ware.footGapMm)} of air under the foot`,
    ware.glazedSides && GLAZED[ware.glazedSides]
  ]);
}
var GLAZED = {
  none: "not glazed",
  one: "glazed on one side",
  both: "glazed on both sides"
};
function unloadedText({ unloaded }) {
  if (!unloaded) return null;
  const temperature = unloaded.temperatureC === null ? null : `${printTemperature(unloaded.temperatureC, "C")} (${printTemperature(unloaded.temperatureC, "F")})`;
  return joined([unloaded.said, temperature]);
}
function foundText(found) {
  return joined([
    found.piece,
    found.what && FOUND[found.what],
    found.pattern,
    found.where && `begins at the ${found.where}`,
    found.edges && `edges ${found.edges}`,
    found.when && `first seen ${found.when}`,
    found.rings && `rings ${found.rings}`,
    found.note
  ]);
}
var FOUND = {
  "through-crack": "cracked through the wall",
  crackle: "glaze crackled",
  crazing: "glaze crazed",
  crack: "cracked, how deep is not known",
  dunt: "dunted",
  "S-crack": "S-crack",
  "drying crack": "drying crack",
  "bisque crack": "bisque crack",
  burst: "burst",
  shivering: "glaze flaked off",
  chip: "chipped",
  blister: "glaze blistered",
  pinhole: "pinholes",
  crawling: "glaze crawled"
};
function joined(parts) {
  return parts.filter((part) => part).join(", ");
}
function length2(mm) {
  return printMm(mm);
}

// src/core/firing/spread.ts
var MOST_MOMENTS = 4e3;
function spreadOf(zones) {
  const [first] = zones;
  if (!first || zones.length < 2) return null;
  const curves = zones.map((zone) => zone.curve);
  let largest = null;
  for (const seconds of moments(first.curve)) {
    const apart = apartAt(curves, seconds);
    if (apart !== null && (largest === null || apart > largest.apart)) largest = { apart, seconds };
  }
  const atPeak = apartAt(curves, hottestZone(zones).peakAtSeconds);
  if (largest === null || atPeak === null) return null;
  return {
    largestC: Math.max(largest.apart, atPeak),
    largestAtSeconds: atPeak > largest.apart ? hottestZone(zones).peakAtSeconds : largest.seconds,
    atPeakC: atPeak
  };
}
function moments(curve) {
  const every = Math.ceil(curve.timesSeconds.length / MOST_MOMENTS);
  const found = [];
  for (let i = 0; i < curve.timesSeconds.length; i += every)
    found.push(curve.timesSeconds[i]);
  return found;
}
function apartAt(curves, seconds) {
  const temps = curves.map((curve) => temperatureAt(curve, seconds)).filter((temp) => temp !== null);
  return temps.length < 2 ? null : Math.max(...temps) - Math.min(...temps);
}

// src/core/firing/reviewFiring.ts
function reviewFiring(input) {
  const { reading, record: record2, plan } = input;
  const series = input.series ?? record2?.series ?? plan?.series ?? "self-supporting";
  const channels = temperatureChannels(reading);
  const hottest = hottestChannel(channels);
  if (!hottest) return failed(noTemperature(reading));
  const witnesses = record2?.witnesses ?? [];
  const unknown = unknownCones(witnesses, series, record2?.name ?? "");
  if (unknown.length > 0) return failed(...unknown);
  const witness = witnesses.length === 0 ? null : solved(hottest.curve, { series, witnesses, wire: knownWire(record2, reading) });
  const measured = channels.map(
    ({ name, curve }) => zoneReview(name, curve, {
      series,
      witnessed: curve === hottest.curve ? witness?.offset ?? null : null,
      wire: knownWire(record2, reading)
    })
  );
  const zone = measured.find(({ curve }) => curve === hottest.curve) ?? hottestZone(measured);
  const sounds = placedSounds(reading, zone, { record: record2, heard: input.heard ?? [] });
  const logged = openingInLog(reading, measured);
  const unloading = placedUnloading(reading, zone, record2, logged);
  if (!sounds.ok || !unloading.ok) return bothProblems(sounds, unloading);
  const opening = knownOpening(unloading.value, logged, zone);
  const pieces2 = firedPieces(record2, plan);
  const opened2 = kilnOpened(zone.curve, { opening, logged });
  const shut = whileShut(zone.curve, opened2);
  const strainOf = strainsOnce();
  const zones = measured.map((each) => ({
    ...each,
    crossings: firedCrossings(each.curve, {
      pieces: pieces2,
      strainOf,
      opened: opened2,
      shut: each === zone ? shut : whileShut(each.curve, opened2)
    })
  }));
  const comparison = plan && comparedWithPlan(zone, plan);
  const facts = {
    reading,
    record: record2,
    plan,
    zones,
    spread: spreadOf(zones),
    witness,
    comparison,
    powerLosses: powerLosses(zone.curve, zone.peakAtSeconds, comparison?.planned ?? null),
    heard: sounds.value,
    unloading: unloading.value,
    logged,
    opening,
    strains: firedStrains(shut, {
      pieces: pieces2,
      strainOf,
      openedC: opening.tempC
    })
  };
  const { causes: diagnosis, pieces: diagnosedPieces } = diagnosisOf(crackFacts(facts));
  const { history, nextTime } = beforeAndNext(facts, {
    diagnosis,
    earlier: input.earlier ?? [],
    next: input.next ?? null
  });
  return ok({
    title: record2?.title ?? reading.name,
    reading,
    zones,
    openingInLog: logged.main,
    spread: facts.spread,
    pieces: pieces2,
    strains: facts.strains,
    offset: witness?.offset ?? null,
    comparison,
    heard: sounds.value.map(({ what, atSeconds, tempC, note: note3 }) => ({
      what,
      atSeconds,
      tempC,
      note: note3
    })),
    recordLines: record2 ? recordLines(record2) : [],
    diagnosis,
    diagnosedPieces,
    nextTime,
    findings: ordered([...firingFindings(facts), ...history?.findings ?? []]),
    cautions: cautionsOf(facts)
  });
}
function temperatureChannels(reading) {
  return reading.channels.flatMap(
    ({ name, role, curve }) => role === "temperature" && curve ? [{ name, curve }] : []
  );
}
function hottestChannel(channels) {
  return channels.map((channel) => ({ channel, peakC: firmPeak(channel.curve).tempC })).reduce(
    (best, each) => best && best.peakC >= each.peakC ? best : each,
    void 0
  )?.channel;
}
function solved(curve, given) {
  const { series, witnesses, wire } = given;
  const usual = usualOffsetOf(wire, firmPeak(curve).tempC);
  return {
    offset: witnessOffset({ curve, series, witnesses, usual }),
    labelAsRead: heatworkOf(curve, { series }).position.label
  };
}
function unknownCones(witnesses, series, name) {
  const known = CONE_MODELS[series].map((model) => model.cone);
  return witnesses.flatMap(
    ({ cone }, i) => known.includes(cone) ? [] : [
      {
        code: "firing/no-such-cone",
        what: `cone ${cone} has no model in the ${series} series`,
        where: `${name}: witnessCones[${i}].cone`,
        expected: `a cone from ${known[0]} to ${known.at(-1)}`,
        fix: "check the cone's number and the series; without a model it cannot judge the thermocouple"
      }
    ]
  );
}
function noTemperature(reading) {
  const columns = reading.channels.map((channel) => channel.name).join(", ");
  return {
    code: "firing/no-temperature",
    what: `no temperature was found among the columns ${columns || "(none)"}`,
    where: reading.name,
    expected: "at least one column of measured temperatures with two readings or more",
    fix: "name the column with --column"
  };
}
function bothProblems(...results) {
  return failed(...results.flatMap((result) => result.ok ? [] : result.problems));
}
function cautionsOf(facts) {
  const trials = facts.record?.trials ?? [];
  const ware = facts.record?.ware ?? [];
  const found = facts.record?.found ?? [];
  return cautionsFor({
    kiln: true,
    opening: true,
    crackle: facts.plan?.ware.crackle === true || trials.some((trial) => trial.cracked === "crackle") || found.some(({ what }) => what === "crackle" || what === "crazing"),
    dampWare: ware.some(({ state }) => state === "damp" || state === "glazed raw"),
    estimate: true
  });
}

export {
  segmentsKWh,
  parseStart,
  draftSchedule,
  temperatureUp,
  temperatureDown,
  rateDown,
  paced,
  WINDOW_REACH_HOURS,
  untilCool2 as untilCool,
  MEND_REACH,
  solveSchedule,
  parsePace,
  changedSchedule,
  wareSizeProblems,
  newSchedule,
  toldWare,
  pastOffset,
  firmPeak,
  secondsAbove,
  planShiftSeconds,
  asFile,
  shellQuoted,
  asAssumedKiln,
  firedCrossings,
  firedPieces,
  rejectedCount,
  runawayFindings,
  reviewFiring
};
