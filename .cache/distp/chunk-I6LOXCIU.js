import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  soundKind,
  temperatureAt
} from "./chunk-VFKPH3SJ.js";
import {
  MOMENT_FORMS,
  parseMoment,
  placeMoment
} from "./chunk-OBEK7CUI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/firing/placedMoments.ts
var DAY_SECONDS = 86400;
var GLAZE_SET_BELOW_C = 700;
var HARDLY_OPENED_C = 300;
var NOTED_WITHIN_SECONDS = 5400;
function placedSounds(reading, zone, given) {
  const problems = [];
  const sounds = [];
  const add = (sound, moment, where) => {
    const placed = moment && placedOnce(moment, reading, zone, soundKind(sound.what));
    if (!moment) problems.push(notAMoment(sound.said, where));
    else if (!placed) problems.push(noClock(sound.said, where, moment));
    else
      sounds.push({
        ...sound,
        atSeconds: placed.seconds,
        tempC: temperatureAt(zone.curve, placed.seconds),
        note: [sound.note, placed.note].filter((note) => note !== null).join("; ") || null,
        orElse: placed.orElseSeconds === null ? null : {
          atSeconds: placed.orElseSeconds,
          tempC: temperatureAt(zone.curve, placed.orElseSeconds)
        }
      });
  };
  given.record?.heard.forEach((sound, i) => {
    add(sound, sound.at, `${given.record?.name}: heard[${i}].at`);
  });
  for (const sound of given.heard)
    add(
      { what: sound.what, said: sound.at, note: sound.note ?? null },
      parseMoment(sound.at),
      "--heard"
    );
  if (problems.length > 0) return failed(...problems);
  return ok(sounds.sort((a, b) => a.atSeconds - b.atSeconds));
}
function placedUnloading(reading, zone, record, logged = null) {
  const unloaded = record?.unloaded;
  if (!record || !unloaded) return ok(null);
  if (unloaded.at === null)
    return ok({
      atSeconds: null,
      tempC: unloaded.temperatureC,
      basis: unloaded.temperatureC === null ? null : "record"
    });
  const first = placeMoment(unloaded.at, reading);
  if (first === null)
    return failed(noClock(unloaded.said ?? "", `${record.name}: unloaded.at`, unloaded.at));
  const isFree = unloaded.at.kind === "clock" && unloaded.at.date === null;
  const atSeconds = isFree ? openedOnDay(first, zone, { logged, saidC: unloaded.temperatureC }) : first;
  const readC = temperatureAt(zone.curve, atSeconds);
  const tempC = unloaded.temperatureC ?? readC;
  return ok({
    atSeconds,
    tempC,
    basis: unloaded.temperatureC !== null ? "record" : readC !== null ? "log" : null
  });
}
function openedOnDay(first, zone, known) {
  const late = Math.max(0, Math.ceil((zone.peakAtSeconds - first) / DAY_SECONDS));
  const end = zone.curve.timesSeconds.at(-1);
  const earliest = first + late * DAY_SECONDS;
  const days = [earliest];
  while (days.at(-1) <= end) days.push(days.at(-1) + DAY_SECONDS);
  const heat = (seconds) => temperatureAt(zone.curve, seconds);
  const seen = known.logged?.main?.atSeconds;
  const bySeen = seen === void 0 ? void 0 : days.find((seconds) => Math.abs(seconds - seen) <= NOTED_WITHIN_SECONDS);
  if (bySeen !== void 0) return bySeen;
  const { saidC } = known;
  if (saidC !== null) {
    const away = (seconds) => Math.abs((heat(seconds) ?? saidC) - saidC);
    return days.reduce((a, b) => away(b) < away(a) ? b : a);
  }
  return days.find((seconds) => (heat(seconds) ?? 0) <= HARDLY_OPENED_C) ?? earliest;
}
function placedOnce(moment, reading, zone, kind = "other") {
  const first = placeMoment(moment, reading);
  if (first === null) return null;
  const sure = { seconds: first, note: null, orElseSeconds: null };
  if (moment.kind !== "clock" || moment.date !== null) return sure;
  const until = zone.lastReadingAtSeconds + (kind === "pinging" ? DAY_SECONDS : 0);
  const days = [first];
  while (days.at(-1) + DAY_SECONDS <= until)
    days.push(days.at(-1) + DAY_SECONDS);
  if (days.length === 1) return sure;
  const falling = days.filter((seconds2) => seconds2 >= zone.peakAtSeconds);
  const inLog = falling.filter((seconds2) => seconds2 <= zone.lastReadingAtSeconds);
  if (kind === "pinging") {
    const set = falling.filter(
      (seconds3) => (temperatureAt(zone.curve, seconds3) ?? 0) <= GLAZE_SET_BELOW_C
    );
    const [seconds2 = first, another2] = set;
    const other = another2 !== void 0 && another2 <= zone.lastReadingAtSeconds ? another2 : null;
    if (other === null && seconds2 === first) return sure;
    return other === null ? { seconds: seconds2, note: ONLY_ON_THE_WAY_DOWN, orElseSeconds: null } : { seconds: seconds2, note: SAY_THE_DAY, orElseSeconds: other };
  }
  const [seconds = first, another] = inLog;
  const before = days.findLast((each) => each < zone.peakAtSeconds);
  const orElseSeconds = another ?? before ?? null;
  return { seconds, note: orElseSeconds === null ? null : SAY_THE_DAY, orElseSeconds };
}
var ONLY_ON_THE_WAY_DOWN = "this time of day comes more than once; a glaze pings only once it has set, so it was taken on the way down";
var SAY_THE_DAY = "this time of day comes more than once in the log and was taken the first time on the way down; write the date to be sure";
function notAMoment(said, where) {
  return {
    code: "firing/not-a-moment",
    what: `"${said}" is not a moment`,
    where,
    expected: MOMENT_FORMS,
    fix: 'write it like "09:10", with a 24-hour clock'
  };
}
function noClock(said, where, moment) {
  const wantsDate = moment.kind === "clock" && moment.date !== null;
  return {
    code: "firing/no-clock",
    what: `"${said}" cannot be placed: the log has no ${wantsDate ? "date" : "clock"}`,
    where,
    expected: wantsDate ? "a time of day or a time since the start of the log" : "a time since the start of the log",
    fix: 'write the time since the first reading: "+14:05"'
  };
}

export {
  placedSounds,
  placedUnloading,
  placedOnce
};
