import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  watchDocument
} from "./chunk-WGBSP5TA.js";
import {
  ownKiln
} from "./chunk-7P5KF26O.js";
import "./chunk-DQZAGW2O.js";
import "./chunk-RLEK6R44.js";
import {
  logOptionsFrom
} from "./chunk-3SHC6X7O.js";
import {
  readLog
} from "./chunk-AZI3ESL7.js";
import {
  firedCrossings,
  firedPieces,
  firmPeak,
  planShiftSeconds,
  runawayFindings
} from "./chunk-ETRUSM3K.js";
import {
  REFERENCE_KILN,
  expandSchedule
} from "./chunk-GKWIKIYP.js";
import {
  kilnFiringOf,
  naturalFall,
  outputMean
} from "./chunk-QVXNA4U3.js";
import "./chunk-I7PXXNWR.js";
import "./chunk-I6LOXCIU.js";
import {
  readBeside,
  saidTogether,
  splitQuoted
} from "./chunk-CQRY3XKN.js";
import {
  TOLD_SIGMA_K,
  clockText,
  followCone,
  kilnHeatworkOf,
  runningPeakC,
  totalSigmaK,
  usualOffset
} from "./chunk-4ME6ZCIX.js";
import {
  capitalised,
  wrap
} from "./chunk-X6LO4HOH.js";
import {
  CONE_MODELS,
  coneModel
} from "./chunk-XM3JYZUM.js";
import {
  rateSeverity
} from "./chunk-BX5CJHE4.js";
import {
  sliced
} from "./chunk-S4DLFBTW.js";
import {
  crossingTimes
} from "./chunk-BNESJYXC.js";
import {
  makeCurve
} from "./chunk-M4BL2XKO.js";
import {
  hasWarning,
  lastAtOrBefore,
  medianInPlace,
  ordered,
  peakOf,
  runawayIn,
  temperatureAt
} from "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import {
  cautionsFor
} from "./chunk-4LHYQSW7.js";
import "./chunk-V6QCPP2T.js";
import "./chunk-F6MWUWUD.js";
import {
  adviceText,
  quoted,
  statementText
} from "./chunk-GU4RVAU5.js";
import {
  EXIT,
  answer,
  answerJsonLine,
  paintFor,
  refuse,
  say,
  visibleWidth
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import "./chunk-2XN66YSB.js";
import {
  parseDuration
} from "./chunk-OQY4R7CT.js";
import "./chunk-WA5SZDQ5.js";
import {
  systemProblem
} from "./chunk-2NHG2YQ4.js";
import {
  notNought,
  printDifference,
  printDuration,
  printElapsed,
  printRate,
  printTemperature
} from "./chunk-IOGTIVWI.js";
import "./chunk-OBEK7CUI.js";
import "./chunk-PMYOLCKT.js";
import "./chunk-DDB2KZF2.js";
import "./chunk-2Y6UMGL7.js";
import "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import "./chunk-O435DZD7.js";
import {
  celsiusFromKelvin,
  coneIndex,
  parseCone
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";
import {
  inert
} from "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/node/followFile.ts
import { open, stat } from "node:fs/promises";
import { performance } from "node:perf_hooks";
import { setTimeout as wait } from "node:timers/promises";

// src/node/wholeLines.ts
var LINE_FEED = 10;
var CARRIAGE_RETURN = 13;
function wholeLines(bytes) {
  const low = lowByteOf(bytes);
  if (low !== null) return wideLines(bytes, low);
  const mark = bytes.includes(LINE_FEED) ? LINE_FEED : CARRIAGE_RETURN;
  let count = 0;
  for (let at = bytes.indexOf(mark); at >= 0; at = bytes.indexOf(mark, at + 1)) count++;
  return { end: bytes.lastIndexOf(mark) + 1, count };
}
function lowByteOf(bytes) {
  const [a, b, c, d] = bytes;
  if (a === 255 && b === 254 || a !== 0 && b === 0 && c !== 0 && d === 0) return 0;
  if (a === 254 && b === 255 || a === 0 && b !== 0 && c === 0 && d !== 0) return 1;
  return null;
}
function wideLines(bytes, low) {
  let end = 0;
  let count = 0;
  for (let at = 0; at + 1 < bytes.length; at += 2)
    if (bytes[at + low] === LINE_FEED && bytes[at + 1 - low] === 0) {
      end = at + 2;
      count++;
    }
  return { end, count };
}

// src/node/followFile.ts
var LARGEST_BYTES = 64 * 2 ** 20;
var COMPARED_BYTES = 256;
var PASSING = ["ENOENT", "EBUSY", "ESTALE", "EIO", "ETIMEDOUT", "EHOSTDOWN", "EAGAIN"];
var SYSTEM_CLOCK = {
  seconds: () => performance.now() / 1e3,
  wait: async (seconds, signal) => {
    await wait(seconds * 1e3, void 0, { signal }).catch(() => void 0);
  }
};
async function* followFile(path, options) {
  const { everySeconds, untilStillSeconds, signal, clock = SYSTEM_CLOCK } = options;
  const kept = nothingKept(0);
  let changedAt = clock.seconds();
  while (!signal.aborted) {
    const looked = await look(path, kept);
    if (!looked.ok) {
      yield looked;
      return;
    }
    const change = looked.value;
    if (change === "grown" || change === "anew") changedAt = clock.seconds();
    const stillSeconds = clock.seconds() - changedAt;
    yield ok({ ...linesOf(kept), change, restarts: kept.restarts, stillSeconds });
    if (stillSeconds >= untilStillSeconds) return;
    await clock.wait(everySeconds, signal);
  }
}
function nothingKept(restarts) {
  return { bytes: new Uint8Array(0), length: 0, inode: -1, changedMs: -1, restarts };
}
function linesOf({ bytes, length }) {
  const { end, count } = wholeLines(bytes.subarray(0, length));
  return { bytes: bytes.subarray(0, end), lines: count, hasHalfLine: end < length };
}
async function look(path, kept) {
  let file = null;
  try {
    const facts = await stat(path);
    if (!facts.isFile() && !facts.isDirectory()) return failed(notAFile(path));
    file = await open(path, "r");
    return await lookInto(file, path, kept);
  } catch (error) {
    if (PASSING.includes(error.code ?? "")) return ok("missing");
    return failed(systemProblem(error, path, "read"));
  } finally {
    await file?.close();
  }
}
async function lookInto(file, path, kept) {
  const { size, mtimeMs, ino } = await file.stat();
  if (size > LARGEST_BYTES) return failed(tooLarge(path, size));
  const isFirst = kept.inode === -1;
  if (size === kept.length && mtimeMs === kept.changedMs && ino === kept.inode) return ok("same");
  const isNew = !isFirst && (size < kept.length || !await goesOn(file, kept, ino));
  if (isNew) Object.assign(kept, nothingKept(kept.restarts + 1));
  const before = kept.length;
  await readMore(file, kept, size);
  kept.inode = ino;
  kept.changedMs = mtimeMs;
  if (isNew) return ok("anew");
  return ok(kept.length > before ? "grown" : "same");
}
async function goesOn(file, kept, inode) {
  const { length } = kept;
  if (inode !== kept.inode) return isSame(file, kept, { from: 0, to: length });
  const head = Math.min(COMPARED_BYTES, length);
  return await isSame(file, kept, { from: 0, to: head }) && await isSame(file, kept, { from: Math.max(0, length - COMPARED_BYTES), to: length });
}
async function isSame(file, kept, { from, to }) {
  const now = Buffer.alloc(to - from);
  const { bytesRead } = await file.read(now, 0, to - from, from);
  return bytesRead === to - from && now.equals(kept.bytes.subarray(from, to));
}
async function readMore(file, kept, size) {
  if (size > kept.bytes.length) {
    const grown = new Uint8Array(Math.max(size, 2 * kept.bytes.length));
    grown.set(kept.bytes.subarray(0, kept.length));
    kept.bytes = grown;
  }
  while (kept.length < size) {
    const { bytesRead } = await file.read(kept.bytes, kept.length, size - kept.length, kept.length);
    if (bytesRead === 0) return;
    kept.length += bytesRead;
  }
}
function notAFile(path) {
  return {
    code: "watch/not-a-file",
    where: path,
    what: "it is a pipe or a device, which cannot be looked at again and again",
    expected: "the file that the logger writes",
    fix: "let the logger write a file; what comes through a pipe, undunted review reads once"
  };
}
function tooLarge(path, size) {
  return {
    code: "watch/too-large",
    where: path,
    what: `it has ${Math.round(size / 2 ** 20)} MB`,
    expected: `a log of at most ${LARGEST_BYTES / 2 ** 20} MB, which is weeks of one-second readings`,
    fix: "let the logger begin a new file for each firing"
  };
}

// src/cli/watchInput.ts
import { basename } from "node:path";
var SHORTEST_SECONDS = 0.02;
async function watchGiven(path, options) {
  if (path === "-") return failed(needsFile());
  const times = timesFrom(options);
  const logOptions = logOptionsFrom(options);
  const beside = await readBeside(path, {
    recordPath: options.record ?? null,
    schedulePath: options.against ?? null
  });
  const own = options.kiln === void 0 ? ok(null) : await ownKiln(options.kiln, { powerWatt: null, tariffPerKWh: null });
  if (!times.ok || !logOptions.ok || !beside.ok || !own.ok)
    return failed(
      ...[times, logOptions, beside, own].flatMap((part) => part.ok ? [] : part.problems)
    );
  const { record, plan, remarks } = beside.value;
  const cone = coneFrom(options.cone, record, plan);
  if (!cone.ok) return cone;
  return ok({
    known: {
      record,
      plan,
      cone: cone.value,
      kiln: own.value?.kiln ?? null,
      offsetK: own.value?.offset?.offsetK ?? null
    },
    logOptions: { ...saidTogether(record?.log ?? {}, logOptions.value), name: basename(path) },
    ...times.value,
    remarks
  });
}
function timesFrom(options) {
  const every = parseDuration(options.every, { bareUnit: "s", where: "--every" });
  const still = parseDuration(options.untilStill, { bareUnit: "min", where: "--until-still" });
  if (!every.ok || !still.ok)
    return failed(...[every, still].flatMap((part) => part.ok ? [] : part.problems));
  if (every.value >= SHORTEST_SECONDS && still.value > 0)
    return ok({ everySeconds: every.value, untilStillSeconds: still.value });
  return failed({
    code: "command/watch-times",
    where: "--every, --until-still",
    what: `"${options.every}" between looks, "${options.untilStill}" without a change`,
    expected: `times above nothing: at least ${SHORTEST_SECONDS} s between looks`,
    fix: "--every 10s --until-still 30min"
  });
}
function coneFrom(text, record, plan) {
  if (text === void 0) return ok(null);
  const series = record?.series ?? plan?.series ?? "self-supporting";
  return parseCone(text, { series, where: "--cone" });
}
function needsFile() {
  return {
    code: "command/needs-file",
    where: "command line",
    what: "standard input cannot be watched",
    expected: "the file that the logger writes",
    fix: "undunted watch firing.csv"
  };
}

// src/core/watch/coneExpectation.ts
var HORIZON_SECONDS = 12 * 3600;
function expectedDown(outlook) {
  const { curve, goingOn } = outlook;
  if (goingOn === null) throw new RangeError("expectedDown: nothing goes on");
  const nowSeconds = curve.timesSeconds.at(-1);
  const whole = joined(curve, outlook.courseWith(0));
  const atSeconds = downAt(whole, outlook, 0);
  const lastSeconds = nowSeconds + horizonOf(outlook);
  if (atSeconds === null || atSeconds > lastSeconds)
    return { expected: null, whyNot: whyNot(outlook.by) };
  const cut = sliced(whole, whole.timesSeconds[0], atSeconds) ?? whole;
  const { marginSigmaK } = coneIn(cut, outlook, 0);
  const sigmaK = totalSigmaK(outlook.offsetSigmaK, marginSigmaK);
  const sooner = [
    downAt(whole, outlook, sigmaK),
    downAt(joined(curve, outlook.courseWith(goingOn.sigmaCPerHour)), outlook, 0)
  ].map((seconds) => atSeconds - Math.max(nowSeconds, seconds ?? atSeconds));
  const later = [
    downAt(whole, outlook, -sigmaK),
    downAt(joined(curve, outlook.courseWith(-goingOn.sigmaCPerHour)), outlook, 0)
  ].map((seconds) => (seconds ?? Number.POSITIVE_INFINITY) - atSeconds);
  const latest = atSeconds + Math.hypot(...later);
  return {
    expected: {
      atSeconds,
      earliestSeconds: Math.max(nowSeconds, atSeconds - Math.hypot(...sooner)),
      latestSeconds: latest > lastSeconds ? null : latest,
      atC: temperatureAt(whole, atSeconds) ?? whole.tempsC.at(-1)
    },
    whyNot: null
  };
}
function horizonOf({ by }) {
  return by === "plan" ? Number.MAX_VALUE : HORIZON_SECONDS;
}
function joined(curve, { curve: ahead }) {
  if (ahead === null) return curve;
  return makeCurve(
    [...curve.timesSeconds, ...ahead.timesSeconds.subarray(1)],
    [...curve.tempsC, ...ahead.tempsC.subarray(1)],
    curve.gaps
  );
}
function whyNot(by) {
  return by === "plan" ? "the plan, as it is going, ends before it is down" : "not within 12 h at this rate";
}
function downAt(curve, which, warmerK) {
  return coneIn(curve, which, warmerK).downAtSeconds;
}
function coneIn(curve, which, warmerK) {
  const heat = {
    curve,
    offsetK: which.offsetK + warmerK,
    peaksC: runningPeakC(curve.tempsC)
  };
  const scratch = new Float64Array(curve.tempsC.length);
  return followCone(coneModel(which.series, which.cone), heat, scratch).state;
}

// src/core/watch/courseAhead.ts
var STEP_K = 5;
var STALLED_C_PER_HOUR = 1;
function courseAhead(now, course) {
  const run2 = {
    seconds: now.nowSeconds,
    tempC: now.tempC,
    alone: 0,
    alones: [0],
    times: [now.nowSeconds],
    temps: [now.tempC]
  };
  for (const segment of course.segments) {
    if (!ramped(run2, segment, course)) break;
    if (segment.holdSeconds > 0)
      add(run2, { seconds: segment.holdSeconds, tempC: run2.tempC, isAlone: false });
  }
  return {
    curve: run2.times.length < 2 ? null : makeCurve(run2.times, run2.temps),
    endSeconds: run2.seconds,
    endC: run2.tempC,
    aloneUntil: (seconds) => aloneUntil(run2, seconds)
  };
}
function secondsToFall(kiln, fall) {
  let seconds = 0;
  let tempC = fall.fromC;
  while (tempC > fall.toC) {
    const step = Math.min(STEP_K, tempC - fall.toC);
    const speed = kiln.naturalCoolingCPerHour(tempC - step / 2);
    if (speed < STALLED_C_PER_HOUR) return null;
    seconds += 3600 * step / speed;
    tempC -= step;
  }
  return seconds;
}
function ramped(run2, segment, course) {
  const { toC } = segment;
  while (run2.tempC !== toC) {
    const left = toC - run2.tempC;
    const step = Math.sign(left) * Math.min(Math.abs(left), STEP_K);
    const speed = speedOf(segment, course, { tempC: run2.tempC + step / 2, rising: left > 0 });
    if (speed < STALLED_C_PER_HOUR) return false;
    add(run2, {
      seconds: 3600 * Math.abs(step) / speed,
      tempC: Math.abs(left) <= STEP_K ? toC : run2.tempC + step,
      isAlone: left < 0 && speed !== Math.abs(segment.rateCPerHour)
    });
  }
  return true;
}
function speedOf({ rateCPerHour }, { kiln, knowsClimb }, at) {
  const asked = rateCPerHour === "free" ? Number.POSITIVE_INFINITY : Math.abs(rateCPerHour);
  if (!at.rising) return Math.min(asked, kiln.naturalCoolingCPerHour(at.tempC));
  const most = kiln.fullHeatingCPerHour(at.tempC);
  return knowsClimb || rateCPerHour === "free" ? Math.min(asked, most) : asked;
}
function add(run2, step) {
  run2.seconds += step.seconds;
  run2.tempC = step.tempC;
  if (step.isAlone) run2.alone += step.seconds;
  run2.times.push(run2.seconds);
  run2.temps.push(step.tempC);
  run2.alones.push(run2.alone);
}
function aloneUntil({ times, alones, alone }, seconds) {
  const next = times.findIndex((time) => time > seconds);
  return next < 0 ? alone : alones[Math.max(0, next - 1)];
}

// src/core/watch/coolingExpectation.ts
var WAITED_FOR_C = [200, 100, 50];
var FACTORS = { learnedAndSeen: 1.1, learned: 1.2, seen: 1.3, assumed: 2 };
function coolingExpectation(outlook) {
  const factor = factorOf(outlook);
  return {
    cooledBy: WAITED_FOR_C.flatMap((tempC) => cooledBy(tempC, outlook, factor)),
    from: outlook.from,
    kiln: outlook.isLearned ? "learned" : "reference",
    ownShare: outlook.own?.share ?? null,
    openedAtSeconds: outlook.own?.openedAtSeconds ?? null,
    factor,
    basis: basisOf(outlook)
  };
}
function factorOf({ isLearned, own }) {
  if (own?.isDoubtful) return FACTORS.assumed;
  if (isLearned) return own === null ? FACTORS.learned : FACTORS.learnedAndSeen;
  return own === null ? FACTORS.assumed : FACTORS.seen;
}
function cooledBy(tempC, outlook, factor) {
  const { curve, course } = outlook;
  const read = lastFallTo(curve, tempC);
  if (read !== null && read > outlook.peakAtSeconds && curve.tempsC.at(-1) < tempC)
    return [
      { tempC, atSeconds: read, earliestSeconds: read, latestSeconds: read, isMeasured: true }
    ];
  const programmed = course.curve && lastFallTo(course.curve, tempC);
  const left = programmed ?? fallenAt(tempC, outlook);
  if (left === null) return [];
  const alone = course.aloneUntil(left) + Math.max(0, left - course.endSeconds);
  const { ends } = outlook;
  const soonerBy = Math.hypot(
    alone - alone / factor,
    ends ? ends.atSeconds - ends.earliestSeconds : 0
  );
  const laterBy = Math.hypot(alone * factor - alone, ends ? laterEnd(ends) : 0);
  return [
    {
      tempC,
      atSeconds: left,
      earliestSeconds: Math.max(left - soonerBy, curve.timesSeconds.at(-1)),
      latestSeconds: Number.isFinite(laterBy) ? left + laterBy : null,
      isMeasured: false
    }
  ];
}
function laterEnd({ atSeconds, latestSeconds }) {
  return latestSeconds === null ? Number.POSITIVE_INFINITY : latestSeconds - atSeconds;
}
function fallenAt(tempC, { course, kiln }) {
  const alone = secondsToFall(kiln, { fromC: course.endC, toC: tempC });
  return alone === null ? null : course.endSeconds + alone;
}
function lastFallTo(curve, tempC) {
  const falls = crossingTimes(curve, tempC).filter(({ direction }) => direction === "cooling");
  return falls.at(-1)?.seconds ?? null;
}
function basisOf({ kiln, isLearned, own }) {
  const whose = isLearned ? kiln.basis : "a middling stand-in kiln";
  if (own === null)
    return isLearned ? whose : `${whose}, for yours is not known (--kiln): good to a factor of two`;
  const share = Math.round(100 * own.share);
  if (own.openedAtSeconds !== null)
    return `the speed of the last minutes, ${share} % of that of ${whose}, as an opened kiln falls: good to a factor of two`;
  const doubt = own.isDoubtful ? "; so slow that the elements may be holding it back" : "";
  return `this log's own fall of the last hours, ${share} % of the speed of ${whose}${doubt}`;
}

// src/core/watch/ownFall.ts
var LAST_SECONDS = 3 * 3600;
var LEAST_MOMENTS = 3;
var ROOM_BELOW_C = 45;
var USUAL_ROOM_C = 20;
var HELD_BACK = 0.8;
var LED_WITHIN_K = 8;
function ownFall(log, kiln) {
  const { curve, output, held, rateCPerHour } = log;
  const firstC = curve.tempsC[0];
  const roomC = firstC < ROOM_BELOW_C ? firstC : USUAL_ROOM_C;
  const since = curve.timesSeconds.at(-1) - LAST_SECONDS;
  const fall = naturalFall(curve, output, roomC);
  const nowC = curve.tempsC.at(-1);
  if (fall.openedAtSeconds !== null && rateCPerHour !== null && rateCPerHour < 0)
    return {
      share: -rateCPerHour / Math.max(1, kiln.naturalCoolingCPerHour(nowC)),
      fromSeconds: fall.openedAtSeconds,
      toSeconds: curve.timesSeconds.at(-1),
      isDoubtful: true,
      openedAtSeconds: fall.openedAtSeconds
    };
  const moments = fall.samples.filter(
    (moment) => moment.seconds > since && !isHeld(moment, output === null ? held : NOTHING_HOLDS)
  );
  const ratios = moments.flatMap(({ tempC, rateCPerHour: rateCPerHour2 }) => {
    const speed = kiln.naturalCoolingCPerHour(tempC);
    return speed > 0 ? [-rateCPerHour2 / speed] : [];
  });
  const [first, last] = [moments[0], moments.at(-1)];
  if (first === void 0 || last === void 0 || ratios.length < LEAST_MOMENTS) return null;
  const share = medianInPlace(ratios);
  return {
    share,
    fromSeconds: first.seconds,
    toSeconds: last.seconds,
    isDoubtful: output === null && share < HELD_BACK,
    openedAtSeconds: null
  };
}
var NOTHING_HOLDS = { planned: [], setPoint: null };
function isHeld({ seconds, tempC }, { planned, setPoint }) {
  if (planned.some(({ highC, lowC }) => tempC <= highC && tempC >= lowC)) return true;
  const setC = setPoint && temperatureAt(setPoint, seconds);
  return setC !== null && Math.abs(setC - tempC) < LED_WITHIN_K;
}

// src/core/watch/phaseOf.ts
var HOLDING_C_PER_HOUR = 5;
var SWING_K = 4;
var PAST_PEAK_K = 50;
var CRAWLING_C_PER_HOUR = 1;
function phaseOf(rate, now) {
  const below = now.peakC - now.tempC;
  const sure = 2 * rate.sigmaCPerHour;
  const telling = Math.max(HOLDING_C_PER_HOUR, sure);
  if (rate.rateCPerHour > telling) return "climbing";
  const least = below > PAST_PEAK_K ? Math.max(CRAWLING_C_PER_HOUR, sure) : telling;
  return rate.rateCPerHour < -least && below > SWING_K ? "falling" : "holding";
}

// src/core/watch/planPlace.ts
var AT_HOLD_K = 8;
var ARRIVED_K = 2;
var SHOT_PAST_K = 30;
function planPlace(expansion, shiftSeconds, now) {
  const clock = now.nowSeconds - shiftSeconds;
  const holds = now.phase === "falling" ? [] : holdPlaces(expansion, now, AT_HOLD_K);
  const places = holds.length > 0 ? holds : passingPlaces(expansion, now);
  const found = places.length > 0 ? places : holdPlaces(expansion, now, SHOT_PAST_K);
  const [nearest] = found.toSorted(
    (a, b) => Math.abs(a.planSeconds - clock) - Math.abs(b.planSeconds - clock)
  );
  return nearest ? { ...nearest, lateSeconds: clock - nearest.planSeconds } : null;
}
function holdPlaces({ timeline }, now, withinK) {
  return timeline.flatMap((row) => {
    if (row.kind !== "hold" || Math.abs(row.toC - now.tempC) > withinK) return [];
    const held = now.nowSeconds - arrivedAt(now, row.toC, withinK);
    const isClimbingTo = now.phase === "climbing" && held < row.endSeconds - row.startSeconds;
    if (isClimbingTo && now.tempC < row.toC - AT_HOLD_K / 2) return [];
    return [{ row, planSeconds: Math.min(row.endSeconds, row.startSeconds + held) }];
  });
}
function arrivedAt({ curve, nowSeconds }, tempC, withinK) {
  const { timesSeconds, tempsC } = curve;
  const away = tempsC.findLastIndex((temp) => Math.abs(temp - tempC) > withinK);
  const isBelow = away >= 0 && tempsC[away] < tempC;
  const there = tempsC.findIndex(
    (temp, i) => i > away && (isBelow ? temp >= tempC - ARRIVED_K : temp <= tempC + ARRIVED_K)
  );
  return timesSeconds[there] ?? nowSeconds;
}
function passingPlaces({ curve, timeline }, now) {
  const isOver = peakOf(now.curve).tempC - now.tempC > PAST_PEAK_K && now.phase !== "climbing";
  const way = now.phase === "falling" || isOver ? "cooling" : "heating";
  return crossingTimes(curve, now.tempC).filter(({ direction }) => direction === way).flatMap(({ seconds }) => {
    const row = timeline.find(
      (each) => seconds >= each.startSeconds && seconds <= each.endSeconds
    );
    return row ? [{ row, planSeconds: seconds }] : [];
  });
}

// src/core/watch/recentRate.ts
var RATE_WINDOW_SECONDS = 600;
var STEADY_WINDOWS_SECONDS = [600, 1200, 1800, 2700, 3600];
var STILL_STRAIGHT = 1.25;
var STILL_STRAIGHT_K = 0.3;
var LEAST_READINGS = 3;
var LEAST_STEPS = 3;
function recentRate(curve, stepSeconds) {
  const line = lineOver(curve, Math.max(RATE_WINDOW_SECONDS, LEAST_STEPS * stepSeconds));
  return line && rateOf(line);
}
function steadyRate(curve, stepSeconds) {
  let best = null;
  for (const window of STEADY_WINDOWS_SECONDS) {
    const line = lineOver(curve, Math.max(window, LEAST_STEPS * stepSeconds));
    if (line === null) continue;
    if (best !== null && !goesOn2(best, line)) break;
    best = line;
  }
  return best && rateOf(best);
}
function goesOn2(shorter, longer) {
  const apart = Math.abs(longer.rateCPerHour - shorter.rateCPerHour);
  const isStraight = longer.scatterK <= STILL_STRAIGHT * shorter.scatterK || longer.scatterK <= shorter.scatterK + STILL_STRAIGHT_K;
  return isStraight && apart <= 2 * Math.hypot(longer.sigmaCPerHour, shorter.sigmaCPerHour) + 1;
}
function rateOf({ rateCPerHour, sigmaCPerHour, overSeconds, readings }) {
  return { rateCPerHour, sigmaCPerHour, overSeconds, readings };
}
function lineOver(curve, windowSeconds) {
  const { timesSeconds, tempsC, gaps } = curve;
  const end = timesSeconds.length - 1;
  const now = timesSeconds[end];
  const from = Math.max(now - windowSeconds, gaps.at(-1)?.toSeconds ?? Number.NEGATIVE_INFINITY);
  const first = lastAtOrBefore(timesSeconds, from - 1e-6) + 1;
  const readings = end - first + 1;
  const overSeconds = now - timesSeconds[first];
  if (readings < LEAST_READINGS || overSeconds < windowSeconds / 2) return null;
  const times = timesSeconds.subarray(first).map((time) => (time - now) / 3600);
  const temps = tempsC.subarray(first);
  const meanTime = mean(times);
  const meanC = mean(temps);
  let tt = 0;
  let ty = 0;
  for (let i = 0; i < readings; i++) {
    const t = times[i] - meanTime;
    tt += t * t;
    ty += t * (temps[i] - meanC);
  }
  const rateCPerHour = ty / tt;
  let left = 0;
  for (let i = 0; i < readings; i++)
    left += (temps[i] - meanC - rateCPerHour * (times[i] - meanTime)) ** 2;
  const scatterK = Math.sqrt(left / (readings - 2));
  return { rateCPerHour, sigmaCPerHour: scatterK / Math.sqrt(tt), overSeconds, readings, scatterK };
}
function mean(values) {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

// src/core/watch/segmentsLeft.ts
var KEEPS_UP = 0.95;
var TELLING_SECONDS = 1e3;
function segmentsLeft(schedule, place, given) {
  const { row } = place;
  const segment = schedule.segments[row.segment];
  const later = schedule.segments.slice(row.segment + 1);
  const { now } = given;
  if (row.kind === "hold")
    return [
      {
        ...segment,
        toC: now.phase === "holding" ? now.tempC : row.toC,
        holdSeconds: row.endSeconds - place.planSeconds
      },
      ...later
    ];
  if (row.toC <= now.tempC) return [segment, ...later];
  return [{ ...segment, rateCPerHour: climbLeft(segment, given) }, ...later];
}
function climbLeft({ rateCPerHour }, { now, moreCPerHour }) {
  const { rateCPerHour: present, sigmaCPerHour, overSeconds } = now.steady;
  if (rateCPerHour === "free" && now.knowsClimb) return "free";
  const keepsUp = rateCPerHour !== "free" && (overSeconds < TELLING_SECONDS || present + 2 * sigmaCPerHour >= KEEPS_UP * rateCPerHour);
  return Math.max(0, (keepsUp ? rateCPerHour : present) + moreCPerHour);
}

// src/core/watch/setPointOf.ts
function setPointOf({ channels }) {
  return channels.find(({ role, curve }) => role === "set-point" && curve !== null)?.curve ?? null;
}

// src/core/watch/going.ts
var HOTTEST_C = 1400;
var LONG_HOLD_SECONDS = 24 * 3600;
function goingOf(curve, given) {
  const tempC = curve.tempsC.at(-1);
  const peak = firmPeak(curve);
  const { reading, plan } = given;
  const rate = recentRate(curve, reading.intervalSeconds);
  const base = given.kiln ?? REFERENCE_KILN;
  const output = kilnFiringOf(reading, null)?.output ?? null;
  const held = { planned: plannedFalls(plan), setPoint: setPointOf(reading) };
  const own = tempC < peak.tempC ? ownFall({ curve, output, held, rateCPerHour: rate?.rateCPerHour ?? null }, base) : null;
  const kiln = own === null ? base : atShare(base, own.share);
  const expansion = plan && expandSchedule(plan, { kiln });
  return {
    curve,
    nowSeconds: curve.timesSeconds.at(-1),
    tempC,
    peakC: peak.tempC,
    peakAtSeconds: peak.seconds,
    rate,
    steady: steadyRate(curve, reading.intervalSeconds),
    phase: rate && phaseOf(rate, { tempC, peakC: peak.tempC }),
    kiln,
    own,
    isLearned: given.kiln !== null,
    offsetK: given.offsetK,
    plan: plan && expansion && { schedule: plan, expansion }
  };
}
function plannedFalls(plan) {
  return (plan?.segments ?? []).flatMap(({ toC, rateCPerHour }, i) => {
    const highC = plan?.segments[i - 1]?.toC ?? toC;
    return rateCPerHour === "free" || highC <= toC ? [] : [{ highC, lowC: toC }];
  });
}
function atShare(kiln, share) {
  return { ...kiln, naturalCoolingCPerHour: (tempC) => share * kiln.naturalCoolingCPerHour(tempC) };
}
function placeOnPlan(going) {
  const { plan, phase, curve } = going;
  if (plan === null || phase === null) return null;
  const shift = planShiftSeconds(curve, plan.expansion);
  return shift === null ? null : planPlace(plan.expansion, shift, { ...going, phase });
}
function courseOf(going, moreCPerHour) {
  const { place, plan, phase, steady, tempC, kiln, isLearned } = going;
  const course = (segments) => courseAhead(going, { segments, kiln, knowsClimb: isLearned });
  if (phase === null || steady === null) return course([]);
  if (place !== null && plan !== null) {
    const now = { tempC, phase, steady, knowsClimb: isLearned };
    return course(segmentsLeft(plan.schedule, place, { now, moreCPerHour }));
  }
  const onward = { rateCPerHour: Math.max(0, steady.rateCPerHour + moreCPerHour), why: null };
  if (phase === "climbing") return course([{ ...onward, toC: HOTTEST_C, holdSeconds: 0 }]);
  return phase === "holding" ? course([{ ...onward, toC: tempC, holdSeconds: LONG_HOLD_SECONDS }]) : course([]);
}

// src/core/watch/planStanding.ts
var AT_PEAK_K = 0.5;
function planStanding(plan, going) {
  const { schedule, expansion, place } = plan;
  const { curve, course, series, offsetK } = going;
  const peak = peakOf(expansion.curve);
  const isAhead = place.planSeconds < peak.seconds && course.curve !== null;
  const reached = isAhead ? crossingTimes(course.curve, peak.tempC - AT_PEAK_K)[0]?.seconds : void 0;
  const left = kilnHeatworkOf(joined(curve, course), { series, offsetK });
  return {
    title: schedule.title,
    lateSeconds: place.lateSeconds,
    doing: doingOf(place),
    toC: place.row.toC,
    asked: place.row.assumedRate ? "free" : place.row.rateCPerHour,
    leftSeconds: place.row.endSeconds - place.planSeconds,
    peakAtSeconds: reached ?? null,
    peakC: peak.tempC,
    endSeconds: course.endSeconds,
    finalCone: left.position.label,
    finalIndex: left.position.index,
    finalSigmaCones: left.sigmaCones
  };
}
function doingOf({ row }) {
  if (row.kind === "hold") return "holding";
  return row.toC > row.fromC ? "climbing" : "falling";
}

// src/core/watch/aheadFindings.ts
var OVERSHOOT = "overshoot ahead";
var BEHIND_SECONDS = 900;
var BEHIND_SHARE = 0.03;
function aheadFindings(facts) {
  const { wanted, plan, phase, peakC, tempC } = facts.state;
  if (phase !== "climbing" && peakC - tempC > PAST_PEAK_K) return [];
  const late = plan === null ? [] : behindPlan(plan, facts);
  if (wanted === null || phase === null || phase === "falling") return late;
  return [...late, ...overshoot(wanted, facts), ...plan === null ? [] : shortOf(wanted, plan)];
}
function behindPlan(plan, { state }) {
  const least = Math.max(BEHIND_SECONDS, BEHIND_SHARE * state.nowSeconds);
  if (state.phase === "falling" || plan.lateSeconds < least) return [];
  return [
    {
      topic: "behind the plan",
      severity: "caution",
      statement: "The firing is {late} behind its plan.",
      evidence: [{ name: "late", value: plan.lateSeconds, kind: "duration" }],
      basis: "when the plan, lined up at the beginning, passes this place; 15 min or 3 % of the time are allowed, our own estimate",
      advice: "Expect the peak later. If the kiln cannot keep up, have a licensed electrician check elements and mains under your local code once it is cold.",
      zone: null,
      span: null
    }
  ];
}
function overshoot(wanted, { state }) {
  const { plan } = state;
  if (wanted.downAtSeconds !== null)
    return state.peakC - state.tempC > PAST_PEAK_K ? [] : [goingOnAfter(wanted, state)];
  const peakAt = plan?.peakAtSeconds ?? null;
  if (plan === null || peakAt === null || wanted.expected === null) return [];
  const early = peakAt - wanted.expected.atSeconds;
  if (early <= 0) return [];
  const latest = wanted.expected.latestSeconds;
  return [
    {
      topic: OVERSHOOT,
      severity: latest !== null && latest < peakAt ? "warning" : "caution",
      statement: `Cone ${wanted.cone} is expected down {early} before the plan reaches its highest, {peak}; the whole plan would leave ${plan.finalCone}.`,
      evidence: [
        { name: "early", value: early, kind: "duration" },
        { name: "peak", value: plan.peakC, kind: "temperature" }
      ],
      basis: "cone kinetics along the rest of the plan; a warning when even the late end of the span comes before",
      advice: "Watch the witness cones, through infrared-rated glasses, and be ready to end the climb by hand.",
      zone: null,
      span: null
    }
  ];
}
function goingOnAfter(wanted, { heatwork, nowSeconds }) {
  const next = nextWhole(wanted.cone, heatwork);
  const since = nowSeconds - wanted.downAtSeconds;
  return {
    topic: "still hot after the cone",
    severity: next !== null && next.downAtSeconds !== null ? "warning" : "caution",
    statement: `Cone ${wanted.cone} has been down for {since} by the readings, and the kiln is not falling.`,
    evidence: [{ name: "since", value: since, kind: "duration" }],
    basis: "cone kinetics on the readings; a warning when the next cone is down as well",
    advice: "Look at the witness cones, through infrared-rated glasses: switch the kiln off if they are down.",
    zone: null,
    span: { fromSeconds: wanted.downAtSeconds, toSeconds: nowSeconds }
  };
}
function nextWhole(cone, { cones }) {
  const above = cones.slice(cones.findIndex((each) => each.cone === cone) + 1);
  return above.find((each) => !each.cone.includes(".")) ?? null;
}
function shortOf(wanted, plan) {
  if (wanted.by !== "plan" || wanted.expected !== null || wanted.downAtSeconds !== null) return [];
  return [
    {
      topic: "cone not reached ahead",
      severity: isWithinSpread(wanted, plan) ? "note" : "caution",
      statement: `The plan, as it is going, leaves ${plan.finalCone}, good to ${(plan.finalSigmaCones ?? 0.5).toFixed(1)} cones: cone ${wanted.cone} would not be down.`,
      evidence: [],
      basis: "cone kinetics along the rest of the plan; a note when the spread reaches the cone",
      advice: "Watch the witness cones at the peak, through infrared-rated glasses, and hold longer if they are not down.",
      zone: null,
      span: null
    }
  ];
}
function isWithinSpread(wanted, plan) {
  const { finalIndex, finalSigmaCones } = plan;
  if (finalIndex === null || finalSigmaCones === null) return false;
  return coneIndex(wanted.cone) - finalIndex < finalSigmaCones;
}

// src/core/watch/climbFindings.ts
var STALLED = "stalled climb";
var STALLED_SECONDS = 1200;
var TELLING_PLAN_C_PER_HOUR = 20;
var FULLY_ON = 0.95;
var BEHIND_SET_POINT_K = 20;
var FALLEN_K = 15;
var BEGUN_C = 100;
var BASIS = "least squares over the last 20 min; the limits are our own estimates";
function climbFindings(facts) {
  const stalled = stalledFinding(facts);
  return stalled ? [stalled] : [...fallenFindings(facts), ...setPointFindings(facts)];
}
function stalledFinding({ state, reading, curve, place }) {
  const { tempC, peakC, nowSeconds, phase } = state;
  const line = lineOver2(curve);
  if (line === null || phase === "climbing" || tempC < BEGUN_C || peakC - tempC > PAST_PEAK_K)
    return null;
  const evidence = [
    { name: "at", value: tempC, kind: "temperature" },
    { name: "for", value: STALLED_SECONDS, kind: "duration" }
  ];
  const isFlatOut = isFullyOn(reading, nowSeconds);
  const why = reasonToClimb({ reading, nowSeconds, tempC, place });
  if (why === null || line.rateCPerHour > HOLDING_C_PER_HOUR) return null;
  return {
    topic: STALLED,
    severity: "warning",
    statement: `It has not climbed for {for}, at {at}, ${why}.`,
    evidence,
    basis: BASIS,
    advice: isFlatOut ? "Go and look, and do not trust the reading: the thermocouple may have slipped out, and the kiln may be far hotter. If its colour says so, switch it off by hand. Mains, relays and elements are for a licensed electrician under your local code." : "Go and look: the lid, the breaker, the thermocouple. Mains, relays and elements are for a licensed electrician under your local code.",
    zone: null,
    span: { fromSeconds: nowSeconds - STALLED_SECONDS, toSeconds: nowSeconds }
  };
}
function reasonToClimb(at) {
  const { reading, nowSeconds, tempC, place } = at;
  if (isFullyOn(reading, nowSeconds)) return "with the elements fully on";
  const wanted = setPointAt(reading, nowSeconds);
  if (wanted !== null && wanted.nowC - tempC > BEHIND_SET_POINT_K && wanted.nowC >= wanted.beforeC)
    return "while its set point stands higher";
  const isRamp = place?.row.kind === "ramp" && place.row.rateCPerHour > TELLING_PLAN_C_PER_HOUR;
  return isRamp && place.lateSeconds > STALLED_SECONDS / 2 ? "where the plan climbs" : null;
}
function isFullyOn(reading, nowSeconds) {
  const output = kilnFiringOf(reading, null)?.output ?? null;
  const on = output && outputMean(output, nowSeconds - STALLED_SECONDS, nowSeconds);
  return on !== null && on >= FULLY_ON;
}
function fallenFindings({ state, place, reading }) {
  const { wanted, heatwork, peakC, tempC, phase, nowSeconds, peakAtSeconds } = state;
  if (phase !== "falling" || wanted === null || wanted.downAtSeconds !== null) return [];
  const isAsked = place !== null && place.row.toC < place.row.fromC;
  if (peakC - tempC < FALLEN_K) return [];
  const reached = heatwork.cones.find((each) => each.cone === wanted.cone);
  const shortK = -(reached?.marginK ?? 0);
  const sigmaK = totalSigmaK(heatwork.offsetSigmaK, reached?.marginSigmaK ?? 0);
  const point = setPointAt(reading, nowSeconds);
  const isLed = isAsked || point !== null && point.nowC <= tempC + FALLEN_K;
  return [
    {
      topic: "falling before the cone is down",
      severity: shortK > sigmaK ? "warning" : "caution",
      statement: `It has fallen by {fallen} from its highest, {peak}, and cone ${wanted.cone} is not down.`,
      evidence: [
        { name: "fallen", value: peakC - tempC, kind: "difference" },
        { name: "peak", value: peakC, kind: "temperature" }
      ],
      basis: "cone kinetics on the readings so far; a warning when the cone is short by more than one sigma of cone and thermocouple",
      advice: isLed ? "See by the witness cones what was reached." : "Go and look: did the kiln switch off, was it stopped, or did the power fail?",
      zone: null,
      span: { fromSeconds: peakAtSeconds, toSeconds: nowSeconds }
    }
  ];
}
function setPointFindings({ reading, state }) {
  const point = setPointAt(reading, state.nowSeconds);
  const behindK = point === null ? 0 : point.nowC - state.tempC;
  if (point === null || behindK < BEHIND_SET_POINT_K || point.nowC < point.beforeC) return [];
  return [
    {
      topic: "behind the set point",
      severity: "caution",
      statement: "It is {behind} below its set point of {set}.",
      evidence: [
        { name: "behind", value: behindK, kind: "difference" },
        { name: "set", value: point.nowC, kind: "temperature" }
      ],
      basis: "the set point in the log; the limit is our own estimate",
      advice: "The kiln cannot keep up: the cone comes later than programmed.",
      zone: null,
      span: null
    }
  ];
}
function setPointAt(reading, seconds) {
  const curve = setPointOf(reading);
  const nowC = curve ? temperatureAt(curve, seconds) : null;
  const beforeC = curve ? temperatureAt(curve, seconds - STALLED_SECONDS) : null;
  return nowC === null || beforeC === null ? null : { nowC, beforeC };
}
function lineOver2(curve) {
  return recentRate(curve, STALLED_SECONDS / 3);
}

// src/core/watch/coolingFindings.ts
var SOON_SECONDS = 30 * 60;
var SUSTAINED_SECONDS = 900;
var GUIDANCE = "good to a factor of two, never checked on cracked pots";
var HOT_C = 110;
function coolingFindings(facts) {
  return [...openedFindings(facts), ...crossingFindings(facts)];
}
function openedFindings({ state }) {
  const openedAt = state.cooling?.openedAtSeconds ?? null;
  if (openedAt === null || state.phase !== "falling" || state.tempC < HOT_C) return [];
  return [
    {
      topic: "opened hot",
      severity: "caution",
      statement: "It falls faster than it did, as a kiln does whose lid or vent was opened.",
      evidence: [],
      basis: "a fall that grows by a fifth and more while the kiln gets colder",
      advice: "If the lid or a vent stands open and can be shut without reaching over the heat, stand aside and shut it, with gloves and eye protection; never reach in. If it has been open for long, leave it: the ware has had its shock. The draught cools it far faster than the kiln does.",
      zone: null,
      span: { fromSeconds: openedAt, toSeconds: state.nowSeconds }
    }
  ];
}
function crossingFindings(facts) {
  return facts.crossings.flatMap((crossing) => {
    const { direction, limitCPerHour } = crossing;
    if (direction === "heating" || limitCPerHour === null) return [];
    return passageFindings({ crossing, limitCPerHour }, facts);
  });
}
function passageFindings(passage, facts) {
  const { phase, rate, tempC } = facts.state;
  const { fromC, toC } = passage.crossing;
  if (phase !== "falling" || rate === null || tempC < toC) return goneThrough(passage);
  return tempC <= fromC ? [goingThrough(passage, rate, facts)] : aheadOf(passage, rate, facts);
}
function goingThrough(passage, rate, facts) {
  const { crossing, limitCPerHour } = passage;
  const nowFast = -rate.rateCPerHour;
  const inside = facts.state.nowSeconds - (crossing.startSeconds ?? facts.state.nowSeconds);
  const soFar = inside < SUSTAINED_SECONDS ? 0 : Math.abs(crossing.fastestCPerHour ?? 0);
  const fastest = Math.max(nowFast, soFar);
  const severity = rateSeverity(fastest, limitCPerHour);
  const isFastNow = rateSeverity(nowFast, limitCPerHour) !== "note";
  const before = soFar > 1.05 * nowFast ? ", {fastest} before" : "";
  return {
    topic: topicOf(crossing),
    severity,
    statement: `It is going through the ${crossing.band} at {now}${before}: ${verdict(severity)} of {limit} for ${quoted(crossing.limitMeantFor ?? "")}.`,
    evidence: [
      { name: "now", value: nowFast, kind: "rate" },
      { name: "fastest", value: fastest, kind: "rate" },
      ...limits(passage)
    ],
    basis: basisOf2(crossing),
    advice: isFastNow ? "Keep the lid shut and slow it to {limit} or less down to {to}." : "",
    zone: null,
    span: {
      fromSeconds: crossing.startSeconds ?? facts.state.nowSeconds,
      toSeconds: facts.state.nowSeconds
    }
  };
}
function aheadOf(passage, rate, facts) {
  const { crossing, limitCPerHour } = passage;
  const nowFast = -rate.rateCPerHour;
  const inSeconds = 3600 * (facts.state.tempC - crossing.fromC) / nowFast;
  const thenFast = rateAtEntry(crossing, nowFast, facts);
  if (inSeconds > SOON_SECONDS || rateSeverity(thenFast, limitCPerHour) === "note") return [];
  return [
    {
      topic: topicOf(crossing),
      severity: "caution",
      statement: `The ${crossing.band} begins in {in}, at {from}. It is falling at {now}, and by itself would still at {then} there; the guide is {limit} for ${quoted(crossing.limitMeantFor ?? "")}.`,
      evidence: [
        { name: "in", value: inSeconds, kind: "duration" },
        { name: "now", value: nowFast, kind: "rate" },
        { name: "then", value: thenFast, kind: "rate" },
        ...limits(passage)
      ],
      basis: basisOf2(crossing),
      advice: "Slow it to {limit} or less before {from}.",
      zone: null,
      span: null
    }
  ];
}
function rateAtEntry({ fromC }, nowFast, facts) {
  const { place, plan, kiln, state } = facts;
  const segments = place === null ? [] : plan?.segments.slice(place.row.segment) ?? [];
  const programmed = segments.find(({ toC }) => toC < fromC)?.rateCPerHour;
  if (programmed !== void 0 && programmed !== "free") return Math.min(nowFast, -programmed);
  const slowing = kiln.naturalCoolingCPerHour(fromC) / kiln.naturalCoolingCPerHour(state.tempC);
  return nowFast * Math.min(1, slowing);
}
function goneThrough(passage) {
  const { crossing, limitCPerHour } = passage;
  const { fastestCPerHour, startSeconds, endSeconds } = crossing;
  if (fastestCPerHour === null || crossing.measured === "no") return [];
  const fastest = Math.abs(fastestCPerHour);
  const severity = rateSeverity(fastest, limitCPerHour);
  if (severity === "note") return [];
  return [
    {
      topic: topicOf(crossing),
      severity,
      statement: `It went through the ${crossing.band} at up to {fastest}: ${verdict(severity)} of {limit} for ${quoted(crossing.limitMeantFor ?? "")}.`,
      evidence: [{ name: "fastest", value: fastest, kind: "rate" }, ...limits(passage)],
      basis: basisOf2(crossing),
      advice: "Look over every piece for one long crack when the kiln is cold.",
      zone: null,
      span: startSeconds === null || endSeconds === null ? null : { fromSeconds: startSeconds, toSeconds: endSeconds }
    }
  ];
}
function verdict(severity) {
  if (severity === "note") return "borne, beside the guide";
  return severity === "caution" ? "well over the guide" : "more than twice the guide";
}
function limits({ crossing, limitCPerHour }) {
  return [
    { name: "limit", value: limitCPerHour, kind: "rate" },
    { name: "from", value: crossing.fromC, kind: "temperature" },
    { name: "to", value: crossing.toC, kind: "temperature" }
  ];
}
function topicOf({ band }) {
  return `cooling through ${band.replace(/ inversion$/, "")}`;
}
function basisOf2({ limitBasis }) {
  return [
    `rate of the last minutes; ${GUIDANCE}`,
    ...limitBasis === null ? [] : [limitBasis]
  ].join("; ");
}

// src/core/watch/sensorFindings.ts
var SILENT_STEPS = 3;
var SILENT_SECONDS = 120;
var ROWS_WITHOUT = 2;
function sensorFindings(facts) {
  return [...brokenFindings(facts), ...silentFindings(facts), ...rowFindings(facts)];
}
function brokenFindings(facts) {
  const { reading, state } = facts;
  const faults = reading.faults.filter(({ kind }) => kind === "open" || kind === "stuck");
  const newest = newestSeconds(reading);
  return faults.map((fault) => {
    const isNow = newest - fault.toSeconds <= reading.intervalSeconds && isOut(fault, facts);
    const past = fault.kind === "open" && !isNow ? " It reads again." : "";
    return {
      topic: fault.kind === "open" ? "open thermocouple" : "frozen readings",
      severity: isNow ? "warning" : "caution",
      statement: `${sentence(fault)}${past}`,
      evidence: [{ name: "readings", value: fault.count, kind: "count" }],
      basis: "values that no thermocouple gives, or one value while all else moves",
      advice: isNow ? "Go and look: the controller may be blind. Check the thermocouple and its plug." : "Check the thermocouple and its plug.",
      zone: state.zones.length > 1 ? fault.channel : null,
      span: { fromSeconds: fault.fromSeconds, toSeconds: fault.toSeconds }
    };
  });
}
function isOut({ kind, channel, toSeconds }, { reading, state }) {
  const zone = state.zones.find(({ name }) => name === channel);
  return kind === "stuck" || zone === void 0 || toSeconds - zone.atSeconds > 1.5 * reading.intervalSeconds;
}
function silentFindings({ reading, state }) {
  const newest = newestSeconds(reading);
  const most = Math.max(SILENT_STEPS * reading.intervalSeconds, SILENT_SECONDS);
  return state.zones.filter(({ atSeconds }) => newest - atSeconds > most).filter(
    ({ name }) => !reading.faults.some(
      ({ kind, channel, toSeconds }) => kind === "open" && channel === name && toSeconds >= newest - most
    )
  ).map(({ name, atSeconds, tempC }) => ({
    topic: "silent thermocouple",
    severity: "warning",
    statement: `${quoted(name)} has given no reading for {silent}; its last was {last}.`,
    evidence: [
      { name: "silent", value: newest - atSeconds, kind: "duration" },
      { name: "last", value: tempC, kind: "temperature" }
    ],
    basis: "the other columns of the log go on",
    advice: "Go and look: check the thermocouple and its plug.",
    zone: null,
    span: { fromSeconds: atSeconds, toSeconds: newest }
  }));
}
function rowFindings({ reading, state, lines }) {
  const { rejected } = reading.rows;
  let line = lines;
  let count = 0;
  for (let i = rejected.length - 1; i >= 0 && rejected[i]?.line >= line; i--) {
    line = rejected[i]?.line - 1;
    count++;
  }
  if (count < ROWS_WITHOUT) return [];
  const reason = quoted(rejected.at(-1)?.reason ?? "");
  return [
    {
      topic: "rows without a reading",
      severity: "warning",
      statement: `The last {rows} rows of the log gave no reading (${reason}); what is shown is older.`,
      evidence: [{ name: "rows", value: count, kind: "count" }],
      basis: "the end of the log",
      advice: "Go and look: an open thermocouple or a stopped logger may be the cause.",
      zone: null,
      span: { fromSeconds: state.nowSeconds, toSeconds: state.nowSeconds }
    }
  ];
}
function newestSeconds({ channels, faults }) {
  const ends = channels.flatMap(({ curve, outputFraction }) => [
    ...curve ? [curve.timesSeconds.at(-1)] : [],
    ...outputFraction ? [outputFraction.timesSeconds.at(-1) ?? 0] : []
  ]);
  return Math.max(0, ...ends, ...faults.map(({ toSeconds }) => toSeconds));
}
function sentence({ what }) {
  const flat = quoted(what);
  return flat.charAt(0).toUpperCase() + flat.slice(1);
}

// src/core/watch/watchFindings.ts
function watchFindings(facts) {
  const climb = climbFindings(facts);
  const isStalled = climb.some(({ topic }) => topic === STALLED);
  const ahead = aheadFindings(facts).filter(({ topic }) => !isStalled || topic !== OVERSHOOT);
  const runaway = runawayFindings(facts.reading, facts.plan);
  return [...runaway, ...sensorFindings(facts), ...coolingFindings(facts), ...climb, ...ahead];
}

// src/core/watch/watched.ts
var LET_GO = 1.4;
function watched(input) {
  const { reading, record, plan } = input;
  const series = record?.series ?? plan?.series ?? "self-supporting";
  const cone = input.cone ?? plan?.cone ?? record?.cone ?? null;
  const followed = followedChannel(reading);
  if (followed === null) return failed(noTemperature(reading));
  if (cone !== null && !CONE_MODELS[series].some((model) => model.cone === cone))
    return failed(noSuchCone(cone, series));
  const going = goingOf(followed.curve, input);
  const heatwork = kilnHeatworkOf(followed.curve, { series, offsetK: input.offsetK });
  const place = placeOnPlan(going);
  const ahead = { ...going, place, series };
  const wanted = cone === null ? null : wantedCone(cone, ahead, heatwork);
  const standing = standingOf(ahead);
  const { curve } = followed;
  const state = {
    name: reading.name,
    start: reading.start,
    startOfDaySeconds: reading.startOfDaySeconds,
    readings: reading.rows.accepted,
    rejectedRows: reading.rows.total - reading.rows.accepted,
    nowSeconds: going.nowSeconds,
    zone: followed.name,
    zones: zonesOf(reading),
    tempC: going.tempC,
    peakC: going.peakC,
    peakAtSeconds: going.peakAtSeconds,
    rate: going.rate,
    phase: going.phase,
    heatwork,
    wanted,
    plan: standing,
    cooling: coolingOf(ahead, wanted),
    findings: []
  };
  const crossings = firedCrossings(curve, { pieces: firedPieces(record, plan) });
  return ok({
    ...state,
    findings: ordered(
      watchFindings({
        state,
        reading,
        curve,
        crossings,
        place,
        plan,
        kiln: going.kiln,
        lines: input.lines
      })
    )
  });
}
function wantedCone(cone, going, heatwork) {
  const { curve, series, phase, steady, place } = going;
  const reached = heatwork.cones.find((each) => each.cone === cone);
  const said = {
    cone,
    series,
    heatwork: reached.heatwork,
    bend: reached.bend,
    downAtSeconds: reached.downAtSeconds
  };
  const nothing = { ...said, expected: null, by: null, goingOn: null };
  if (reached.downAtSeconds !== null) return { ...nothing, whyNot: null };
  if (phase === null || steady === null)
    return { ...nothing, whyNot: "too few readings in the last minutes" };
  if (phase === "falling") return { ...nothing, whyNot: "the kiln is falling" };
  const { offsetK, sigmaK: offsetSigmaK } = coneOffset({ cone, series }, going.offsetK);
  const by = place === null ? "present rate" : "plan";
  const goingOn = steady;
  const found = expectedDown({
    curve,
    cone,
    series,
    offsetK,
    offsetSigmaK,
    goingOn,
    by,
    courseWith: (moreCPerHour) => courseOf(going, moreCPerHour)
  });
  return { ...said, ...found, by, goingOn };
}
function coneOffset(which, offsetK) {
  if (offsetK !== null) return { offsetK, sigmaK: TOLD_SIGMA_K };
  return usualOffset(celsiusFromKelvin(coneModel(which.series, which.cone).endPoint60K));
}
function standingOf(going) {
  const { plan, place } = going;
  if (plan === null || place === null) return null;
  return planStanding({ ...plan, place }, { ...going, course: courseOf(going, 0) });
}
function coolingOf(going, wanted) {
  const { phase, place, tempC, peakC, nowSeconds } = going;
  if (phase === null) return null;
  if (place !== null && !isLetGo(going))
    return coolingExpectation({
      ...going,
      course: courseOf(going, 0),
      from: phase === "falling" ? "now" : "end of the plan",
      ends: null
    });
  const isOver = phase === "falling" || peakC - tempC > PAST_PEAK_K;
  if (isOver || wanted?.downAtSeconds)
    return coolingExpectation({
      ...going,
      course: endAt(nowSeconds, tempC),
      from: "now",
      ends: null
    });
  const down = wanted?.expected;
  if (!down) return null;
  const course = endAt(down.atSeconds, down.atC);
  return coolingExpectation({ ...going, course, from: "cone down", ends: down });
}
function isLetGo({ phase, place, steady }) {
  if (phase !== "falling" || place === null || steady === null) return false;
  const { assumedRate, rateCPerHour } = place.row;
  return !assumedRate && steady.rateCPerHour < LET_GO * rateCPerHour;
}
function endAt(seconds, tempC) {
  return { curve: null, endSeconds: seconds, endC: tempC, aloneUntil: () => 0 };
}
function temperatureCurves(reading) {
  return reading.channels.flatMap(
    ({ name, role, curve }) => role === "temperature" && curve !== null ? [{ name, curve }] : []
  );
}
function followedChannel(reading) {
  let best = null;
  for (const each of temperatureCurves(reading)) {
    const peakC = firmPeak(each.curve).tempC;
    if (best === null || peakC > best.peakC) best = { ...each, peakC };
  }
  return best;
}
function zonesOf(reading) {
  return temperatureCurves(reading).map(({ name, curve }) => ({
    name,
    tempC: curve.tempsC.at(-1),
    atSeconds: curve.timesSeconds.at(-1),
    rateCPerHour: recentRate(curve, reading.intervalSeconds)?.rateCPerHour ?? null
  }));
}
function noTemperature(reading) {
  const columns = reading.channels.map(({ name }) => name).join(", ");
  return {
    code: "watch/no-temperature",
    what: `no temperature was found among the columns ${columns || "(none)"}`,
    where: reading.name,
    expected: "at least one column of measured temperatures with two readings or more",
    fix: "name the column with --column"
  };
}
function noSuchCone(cone, series) {
  const known = CONE_MODELS[series].map((model) => model.cone);
  return {
    code: "watch/no-such-cone",
    what: `cone ${cone} has no model in the ${series} series`,
    where: "--cone, or the schedule or record that names it",
    expected: `a cone from ${known[0]} to ${known.at(-1)}`,
    fix: "name a cone of that series with --cone"
  };
}

// src/cli/watchLook.ts
var ENOUGH_LINES = 20;
var NOTHING_LOOKED = {
  state: null,
  why: null,
  unread: null,
  intervalSeconds: null,
  unit: "C",
  restarts: 0
};
function lookedAt(look2, before, given) {
  if (look2.change === "missing")
    return ok({ ...before, why: "The file is not there; the watch looks for it again and again." });
  const isAnew = look2.restarts !== before.restarts;
  if (look2.change === "same" && before.state !== null && !isAnew)
    return ok({ ...before, why: before.unread });
  const last = isAnew ? { ...NOTHING_LOOKED, restarts: look2.restarts } : before;
  const reading = readLog(look2.bytes, given.logOptions, splitQuoted);
  if (!reading.ok) return notRead(reading.problems, look2, last);
  const state = watched({ ...given.known, reading: reading.value, lines: look2.lines });
  if (!state.ok) return notRead(state.problems, look2, last);
  const { unit, intervalSeconds } = reading.value;
  return ok({
    state: state.value,
    why: null,
    unread: null,
    intervalSeconds,
    unit: unit === "F" ? "F" : "C",
    restarts: look2.restarts
  });
}
function notRead(problems, look2, last) {
  const [{ what }] = problems;
  if (last.state !== null) {
    const unread = `The log cannot be read now: ${what}. What is shown is older.`;
    return ok({ ...last, why: unread, unread });
  }
  if (look2.lines >= ENOUGH_LINES) return failed(...problems);
  const lines = look2.lines === 1 ? "one whole line" : `${look2.lines} whole lines`;
  return ok({ ...last, why: `For readings. So far the log has ${lines}: ${what}.` });
}
function viewOf(look2, looked, given) {
  return {
    log: given.logOptions.name,
    state: looked.state,
    why: looked.why,
    isLast: look2.stillSeconds >= given.untilStillSeconds,
    file: {
      change: look2.change,
      restarts: look2.restarts,
      stillSeconds: look2.stillSeconds,
      hasHalfLine: look2.hasHalfLine,
      intervalSeconds: looked.intervalSeconds
    },
    untilStillSeconds: given.untilStillSeconds
  };
}

// src/core/reports/watchWords.ts
var ON_TIME_SECONDS = 150;
var LAST_RAMP_K = 60;
function headText({ log, state }) {
  if (state === null) return `${log} \xB7 no readings yet`;
  const clock = clockText(state.startOfDaySeconds, state.nowSeconds);
  const elapsed = `${printElapsed(state.nowSeconds)} after the start`;
  return [log, ...clock === null ? [] : [`last reading ${clock}`], elapsed].join(" \xB7 ");
}
function watchFacts({ why }, state, unit) {
  const { wanted, plan, cooling } = state;
  return [
    { label: why === null ? "Now" : "Last read", text: nowText(state, unit), style: "strong" },
    ...zoneFacts(state, unit),
    { label: "Reached", text: reachedText(state, unit) },
    ...wanted === null ? [] : under(`Cone ${wanted.cone}`, wantedTexts(wanted, state, unit)),
    ...plan === null ? [] : under("Plan", planTexts(plan, state, unit)),
    ...cooling === null ? [] : coolingFacts(cooling, state, unit)
  ];
}
function under(label, texts) {
  return texts.map((text, i) => ({ label: i === 0 ? label : "", text }));
}
var WORDS = {
  climbing: "climbing at",
  holding: "holding, drifting",
  falling: "falling at"
};
function nowText({ tempC, rate, phase, peakC, nowSeconds, peakAtSeconds }, unit) {
  const temp = printTemperature(tempC, unit);
  const peak = phase === "climbing" || peakC - tempC < 5 ? "" : `; peak ${printTemperature(peakC, unit)} ${printDuration(nowSeconds - peakAtSeconds)} ago`;
  if (rate === null || phase === null) return `${temp}; too few readings for a rate${peak}`;
  const sigma = notNought(printRate(rate.sigmaCPerHour, unit));
  const way = phase === "holding" ? rate.rateCPerHour < 0 ? " down" : " up" : "";
  const over = `over ${printDuration(rate.overSeconds)}`;
  return `${temp}, ${WORDS[phase]}${way} ${printRate(rate.rateCPerHour, unit)} \xB1 ${sigma} ${over}${peak}`;
}
function zoneFacts({ zones, zone }, unit) {
  if (zones.length < 2) return [];
  const texts = zones.map(({ name, tempC }) => `${name} ${printTemperature(tempC, unit)}`);
  return [{ label: "", text: `${texts.join(", ")}; all else is about ${zone}, the hottest` }];
}
function reachedText({ heatwork }, unit) {
  const { position, sigmaCones, offsetK, offsetIs } = heatwork;
  const sigma = sigmaCones === null ? "" : ` \xB1 ${sigmaCones.toFixed(1)} cones`;
  const offset = Math.abs(offsetK) < 0.5 ? "" : `, with ${printDifference(Math.abs(offsetK), unit)} ${offsetK < 0 ? "taken off" : "added"} ${offsetIs === "usual" ? "as kilns usually run hotter than they read" : "by past witness cones"}`;
  return `${position.label}${sigma}${offset}`;
}
function wantedTexts(wanted, state, unit) {
  if (wanted.downAtSeconds !== null) {
    const at = whenText(state, wanted.downAtSeconds);
    return [`${wanted.bend} by the readings, since ${at}`];
  }
  const percent = Math.floor(100 * wanted.heatwork);
  const so = wanted.bend === "upright" && percent < 1 ? "upright" : `${wanted.bend}, ${percent} % of its heatwork`;
  if (wanted.expected === null) return [`${so}; no time to expect: ${wanted.whyNot}`];
  const { atSeconds } = wanted.expected;
  const ahead = printDuration(atSeconds - state.nowSeconds);
  return [
    `down about ${whenText(state, atSeconds)}, in ${ahead}; ${spanText(state, wanted.expected)}`,
    `${conditionText(wanted, state, unit)}; now ${so}`
  ];
}
function conditionText(wanted, state, unit) {
  if (wanted.by === "plan") return "if the plan is kept";
  if (state.phase === "holding") return "if it goes on holding";
  const { rateCPerHour, overSeconds } = wanted.goingOn;
  const isFar = (wanted.expected?.atC ?? 0) - state.tempC > LAST_RAMP_K;
  const slower = isFar ? ", later if a slower ramp follows" : "";
  return `if it goes on at ${printRate(rateCPerHour, unit)}, as for ${printDuration(overSeconds)}${slower}`;
}
function planTexts(plan, state, unit) {
  const ends = `the programme ends ${whenText(state, plan.endSeconds)}`;
  const doing = doingText(plan, unit);
  if (state.phase === "falling") return [`${doing}; ${ends}`];
  const peak = plan.peakAtSeconds === null ? "" : `; peak ${printTemperature(plan.peakC, unit)} at ${whenText(state, plan.peakAtSeconds)}`;
  const sigma = plan.finalSigmaCones === null ? "" : ` \xB1 ${plan.finalSigmaCones.toFixed(1)} cones`;
  return [
    `${doing}, ${lateText(plan.lateSeconds)}${peak}`,
    `${ends} and would leave ${plan.finalCone}${sigma}`
  ];
}
function lateText(seconds) {
  if (Math.abs(seconds) < ON_TIME_SECONDS) return "on time";
  return `${printDuration(Math.abs(seconds))} ${seconds > 0 ? "behind" : "ahead"}`;
}
function doingText(plan, unit) {
  const to = printTemperature(plan.toC, unit);
  if (plan.doing === "holding") return `hold at ${to}, ${printDuration(plan.leftSeconds)} left`;
  const way = plan.doing === "climbing" ? "up" : "down";
  const rate = plan.asked === "free" ? "as fast as the kiln goes" : `at ${printRate(plan.asked, unit)}`;
  return `${way} to ${to} ${plan.asked === "free" && way === "down" ? "by itself" : rate}`;
}
function coolingFacts(cooling, state, unit) {
  const { cooledBy: cooledBy2 } = cooling;
  const isOver = cooledBy2.every(({ isMeasured }) => isMeasured);
  const from = {
    now: state.phase === "falling" ? "" : " if it is switched off now",
    "end of the plan": " after the plan",
    "cone down": " if it is switched off when the cone is down"
  }[cooling.from];
  const lid = cooling.openedAtSeconds === null ? "lid shut" : "left as it is";
  return [
    ...cooledBy2.map((each, i) => ({
      label: i === 0 ? "Cold" : "",
      text: cooledText(each, state, unit)
    })),
    ...isOver ? [] : [{ label: "", text: `${lid}${from}, by ${cooling.basis}` }]
  ];
}
function cooledText(cooled, state, unit) {
  const at = `${printTemperature(cooled.tempC, unit)} ${cooled.isMeasured ? "at" : "about"} ${whenText(state, cooled.atSeconds)}`;
  return cooled.isMeasured ? `${at}, as read` : `${at}; ${spanText(state, cooled)}`;
}
function spanText(state, { earliestSeconds, latestSeconds }) {
  const from = whenText(state, earliestSeconds);
  if (latestSeconds === null) return `not before ${from}, perhaps not at all`;
  const to = whenText(state, latestSeconds);
  const [time = from, day] = from.split(/ (?=\D)/);
  return `${day !== void 0 && to.endsWith(` ${day}`) ? time : from} to ${to}`;
}
function whenText({ startOfDaySeconds, nowSeconds }, atSeconds) {
  const clock = clockText(startOfDaySeconds, atSeconds);
  if (clock === null) return `${printElapsed(atSeconds)} after the start`;
  const [time = clock] = clock.split(", ");
  const days = dayOf(startOfDaySeconds, atSeconds) - dayOf(startOfDaySeconds, nowSeconds);
  if (days === 0) return time;
  const near = { [-1]: "yesterday", 1: "tomorrow" }[days];
  return near ? `${time} ${near}` : `${time} ${days > 0 ? `in ${days} days` : `${-days} days ago`}`;
}
function dayOf(startOfDaySeconds, atSeconds) {
  return Math.floor(Math.round(((startOfDaySeconds ?? 0) + atSeconds) / 60) * 60 / 86400);
}

// src/core/reports/watchScreen.ts
var LABEL_WIDTH = 10;
var QUIET_SECONDS = 120;
var QUIET_STEPS = 5;
function watchScreen(view, options) {
  const { width, paint } = options;
  const head = wrap(inert(headText(view)), { width });
  const alarm = alarmLines(view, options);
  const facts = view.state === null ? [] : watchFacts(view, view.state, options.unit);
  const shown = alarm.length === 0 ? facts : facts.slice(0, 1);
  const top = [
    ...alarm,
    ...head.map((line) => paint("heading", line)),
    paint("faint", "\u2500".repeat(Math.max(...head.map(visibleWidth)))),
    ...factLines(shown, options)
  ];
  const foot = [...fileLines(view, options), ...cautionLines(options)];
  const room = options.rows - top.length - foot.length;
  return [...top, ...newsLines(view, options, room), ...foot];
}
function alarmLines(view, { unit, width, paint }) {
  const found = runawayIn(view.state?.findings ?? []);
  if (found === null) return [];
  const text = `${statementText(found, unit)} ${adviceText(found, unit)}`;
  return wrap(inert(text), { width }).map((line) => paint("warning", line));
}
function factLines(facts, { width, paint }) {
  const rest = " ".repeat(LABEL_WIDTH);
  return facts.flatMap(({ label, text, style }) => {
    const lines = wrap(inert(text), { width, first: rest, rest });
    return lines.map((line, i) => {
      const left = i === 0 ? label : "";
      const words = line.slice(LABEL_WIDTH);
      const shown = style && i === 0 ? paint(style, words) : words;
      return `${left === "" ? "" : paint("faint", left)}${" ".repeat(LABEL_WIDTH - visibleWidth(left))}${shown}`;
    });
  });
}
function newsLines(view, options, room) {
  const all = view.state?.findings ?? [];
  const alarm = runawayIn(all);
  const findings = all.filter((finding) => finding !== alarm);
  const blocks = [
    ...view.why === null ? [] : [whyLines(view.why, view, options)],
    ...findings.map((finding) => findingLines(finding, options))
  ];
  const shown = [""];
  let left = blocks.length;
  for (const lines of blocks) {
    const needed = left > 1 ? 1 : 0;
    if (left < blocks.length && shown.length + lines.length + needed > room) break;
    shown.push(...lines);
    left--;
  }
  if (left > 0) shown.push(`${" ".repeat(LABEL_WIDTH)}and ${left} more (undunted review)`);
  return blocks.length === 0 ? [] : shown;
}
function whyLines(why, { state }, options) {
  if (state === null) return saidLines("caution", "Waiting", { text: why, options });
  const text = `${why} \u2192 Go and look at the kiln: nothing here says how hot it is now.`;
  return saidLines("warning", "Warning", { text, options });
}
function findingLines(finding, options) {
  const { unit } = options;
  const advice = finding.severity === "note" ? "" : adviceText(finding, unit);
  const zone = finding.zone === null ? "" : `${finding.zone}: `;
  const statement = `${zone}${statementText(finding, unit)}`;
  const text = advice === "" ? statement : `${statement} \u2192 ${advice}`;
  return saidLines(finding.severity, capitalised(finding.severity), { text, options });
}
function saidLines(style, word, said) {
  const { width, paint } = said.options;
  const rest = " ".repeat(LABEL_WIDTH);
  const [first = "", ...more] = wrap(inert(said.text), { width, first: rest, rest });
  const gap = " ".repeat(LABEL_WIDTH - word.length);
  return [`${paint(style, word)}${gap}${first.slice(LABEL_WIDTH)}`, ...more];
}
function fileLines(view, { width, paint }) {
  const { file, untilStillSeconds } = view;
  const quiet = Math.max(QUIET_SECONDS, QUIET_STEPS * (file.intervalSeconds ?? 0));
  const isQuiet = view.state !== null && file.stillSeconds > quiet;
  const age = file.change === "missing" ? "The file is not there just now." : isQuiet ? `No new reading for ${printDuration(file.stillSeconds)}: is the logger still running?` : `The log last grew ${printDuration(file.stillSeconds)} ago.`;
  const anew = file.restarts === 0 ? "" : ` It has begun anew ${file.restarts === 1 ? "once" : `${file.restarts} times`}: replaced or cut.`;
  const ends = view.isLast ? ` Still for ${printDuration(untilStillSeconds)}: the watch ends.` : ` Ends when still for ${printDuration(untilStillSeconds)}.`;
  const lines = wrap(`${age}${anew}${ends}`, { width });
  const style = isQuiet || file.change === "missing" ? "caution" : "faint";
  return ["", ...lines.map((line) => paint(style, line))];
}
function cautionLines({ width, paint }) {
  const attendance = cautionsFor({ kiln: true }).find(({ topic }) => topic === "attendance");
  if (attendance === void 0) throw new RangeError("watchScreen: no caution for attendance");
  return wrap(attendance.text, { width }).map((line) => paint("strong", line));
}

// src/cli/watchShow.ts
var WIDEST = 80;
var NARROWEST = 40;
var MOST_ROWS = 24;
var LEAST_ROWS = 12;
function showLooks(options) {
  if (options.jsonLines) return (view) => answerJsonLine(watchDocument(view));
  return drawsOver(options) ? screenShow(options) : blockShow(options);
}
function screenShow(options) {
  let drawn = 0;
  return (view, unit) => {
    const { columns = WIDEST, rows = MOST_ROWS } = process.stdout;
    const lines = watchScreen(view, {
      unit: options.unit ?? unit,
      paint: paintFor(options),
      width: Math.max(NARROWEST, Math.min(WIDEST, columns)),
      rows: Math.max(LEAST_ROWS, Math.min(MOST_ROWS, rows - 1))
    });
    const over = drawn === 0 ? "" : `\x1B[${drawn}A\x1B[0J`;
    answer(`${over}${lines.join("\n")}`);
    drawn = lines.length;
  };
}
function blockShow(options) {
  let last = "";
  return (view, unit) => {
    const isNew = view.file.change === "grown" || view.file.change === "anew";
    const about = `${view.file.change === "missing"} ${view.why}`;
    if (!isNew && !view.isLast && about === last) return;
    const lines = watchScreen(view, {
      unit: options.unit ?? unit,
      paint: paintFor(options),
      width: WIDEST,
      rows: MOST_ROWS
    });
    answer(`${last === "" ? "" : "\n"}${lines.join("\n")}`);
    last = about;
  };
}
function drawsOver(options) {
  const { NO_COLOR, TERM } = process.env;
  return process.stdout.isTTY === true && TERM !== "dumb" && !NO_COLOR && options.color !== false;
}

// src/cli/commands/watch.ts
var INTERRUPTED = 130;
async function run(path, options) {
  const given = await watchGiven(path, options);
  if (!given.ok) return refuse(given.problems, options);
  for (const remark of given.value.remarks) say(remark, options);
  const stop = new AbortController();
  const interrupted = () => stop.abort();
  process.once("SIGINT", interrupted);
  try {
    return await watch(path, { given: given.value, options, signal: stop.signal });
  } finally {
    process.removeListener("SIGINT", interrupted);
  }
}
async function watch(path, at) {
  const { given, options, signal } = at;
  const show = showLooks(options);
  let looked = NOTHING_LOOKED;
  for await (const look2 of followFile(path, { ...given, signal })) {
    if (!look2.ok) return refuse(look2.problems, options);
    const now = lookedAt(look2.value, looked, given);
    if (!now.ok) return refuse(now.problems, options);
    looked = now.value;
    show(viewOf(look2.value, looked, given), looked.unit);
  }
  if (signal.aborted) return INTERRUPTED;
  if (looked.state === null) return refuse([nothingCame(path, options)], options);
  const isBlind = looked.why !== null;
  return isBlind || hasWarning(looked.state.findings) ? EXIT.no : EXIT.fine;
}
function nothingCame(path, { untilStill }) {
  return {
    code: "watch/nothing-came",
    where: path,
    what: `it was still for ${untilStill} and gave no readings`,
    expected: "a log that begins to grow within the time of --until-still",
    fix: "start the logger, check the name of its file, or wait longer with --until-still 3h"
  };
}
export {
  run
};
