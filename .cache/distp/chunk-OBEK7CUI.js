import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/units/parseTimeOfDay.ts
var TIME = /^(\d{1,2})(?::(\d{2})(?::(\d{2}))?)?(?:\s*([ap])\.?m\.?)?$/i;
function parseTimeOfDay(text) {
  const [, hour, minutes, seconds = "0", half] = TIME.exec(text.trim()) ?? [];
  if (hour === void 0 || minutes === void 0 && half === void 0) return null;
  const hours = Number(hour);
  if (Number(minutes ?? 0) > 59 || Number(seconds) > 59) return null;
  if (half === void 0 ? hours > 23 : hours < 1 || hours > 12) return null;
  const ofDay = half === void 0 ? hours : hours % 12 + (half.toLowerCase() === "p" ? 12 : 0);
  return ofDay * 3600 + Number(minutes ?? 0) * 60 + Number(seconds);
}

// src/core/firing/moment.ts
var MOMENT_FORMS = 'a clock time such as "09:10", "3:40 pm" or "2026-03-15 09:10", or a time since the start of the log such as "+14:05" (h:mm)';
var DATE = /^(\d{4})-(\d{2})-(\d{2})(?:[T ]\s*)(?=\d)/;
var ELAPSED = /^\+\s*(\d{1,3}):(\d{2})(?::(\d{2}))?$/;
var DAY_SECONDS = 86400;
function parseMoment(text) {
  const trimmed = text.trim();
  const elapsed = ELAPSED.exec(trimmed);
  if (elapsed) {
    const [, hours, minutes, seconds = "0"] = elapsed;
    if (Number(minutes) > 59 || Number(seconds) > 59) return null;
    return { kind: "elapsed", seconds: hms(Number(hours), Number(minutes), Number(seconds)) };
  }
  const [written = "", year, month, day] = DATE.exec(trimmed) ?? [];
  const secondsOfDay = parseTimeOfDay(trimmed.slice(written.length));
  if (secondsOfDay === null) return null;
  if (year !== void 0 && !isDate(Number(year), Number(month), Number(day))) return null;
  return {
    kind: "clock",
    date: year === void 0 ? null : `${year}-${month}-${day}`,
    secondsOfDay
  };
}
function placeMoment(moment, clock) {
  if (moment.kind === "elapsed") return moment.seconds;
  const startOfDay = clock.startOfDaySeconds;
  if (startOfDay === null) return null;
  if (moment.date === null)
    return ((moment.secondsOfDay - startOfDay) % DAY_SECONDS + DAY_SECONDS) % DAY_SECONDS;
  if (clock.start === null) return null;
  const days = dayNumber(moment.date) - dayNumber(clock.start.slice(0, 10));
  return days * DAY_SECONDS + moment.secondsOfDay - startOfDay;
}
function hms(hours, minutes, seconds) {
  return hours * 3600 + minutes * 60 + seconds;
}
function isDate(year, month, day) {
  return month >= 1 && month <= 12 && day >= 1 && day <= monthLength(year, month);
}
function monthLength(year, month) {
  if (month === 2) return isLeap(year) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
function isLeap(year) {
  return year % 4 === 0 && year % 100 !== 0 || year % 400 === 0;
}
function dayNumber(date) {
  const [year = 0, month = 1, day = 1] = date.split("-").map(Number);
  const fromMarch = (month + 9) % 12;
  const y = month <= 2 ? year - 1 : year;
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + Math.floor((153 * fromMarch + 2) / 5) + day;
}

export {
  parseTimeOfDay,
  MOMENT_FORMS,
  parseMoment,
  placeMoment
};
