import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  climbShare,
  lossKPerSecond,
  stateAfter,
  twoNodeRates
} from "./chunk-I7PXXNWR.js";
import {
  coneStateOf,
  offsetFor
} from "./chunk-4ME6ZCIX.js";
import {
  SAFE_RATIO,
  isJudged,
  strainSeverity
} from "./chunk-BX5CJHE4.js";
import {
  makeCurve
} from "./chunk-M4BL2XKO.js";
import {
  BASE,
  CRISTOBALITE_BAND,
  LOAD,
  QUARTZ_BAND,
  STATE_SIZE,
  WALL,
  advanceWare,
  atRest,
  fourthPowerK,
  hasCristobalite,
  lastAsked,
  meanC,
  mismatch,
  passagesOf,
  shutKiln,
  spacedMoments,
  stressRatio,
  wareNumbers,
  wareOf
} from "./chunk-VFKPH3SJ.js";
import {
  SLOWEST_FREE_C_PER_HOUR,
  freeRamp,
  freeSpeed
} from "./chunk-2XN66YSB.js";

// src/core/kiln/AssumedKiln.ts
var ROOM_C = 25;
var COOLING = { conductionPerSecond: 37e-6, radiationM2KPerJ: 42e-9 };
var HEAT_CAPACITY_J_PER_K = 122e3;
var POWER_K_PER_SECOND = 10500 / HEAT_CAPACITY_J_PER_K;
var REFERENCE_KILN = {
  fullHeatingCPerHour: (tempC) => 3600 * climbShare(tempC) * (POWER_K_PER_SECOND - lossKPerSecond(COOLING, tempC, ROOM_C)),
  naturalCoolingCPerHour: (tempC) => 3600 * lossKPerSecond(COOLING, tempC, ROOM_C),
  heatCapacityJPerK: HEAT_CAPACITY_J_PER_K,
  basis: "a loaded 180 L kiln with 75 mm of firebrick and 10.5 kW, simulated, not measured; a light kiln falls up to twice as fast"
};

// src/core/kiln/predictFiring.ts
var STEP_SECONDS = 30;
var STALLED_CPERHOUR = 1;
var BEHIND_SHARE = 0.02;
var KEPT_EVERY = 4;
var WAITED_FOR_C = [200, 100, 50];
var CLOSE_KPERSECOND = 1e-9;
var HALVINGS = 20;
var JOULES_PER_KWH = 36e5;
function predictFiring(learned, plan) {
  if (plan.segments.length === 0) throw new RangeError("predictFiring: no segments");
  const roomC = plan.roomC ?? learned.roomC;
  const startC = plan.startC ?? roomC;
  const rates = ratesOf(learned);
  const kWhOf = energyBy(learned);
  const run = {
    state: { hotC: startC, brickC: startC },
    seconds: 0,
    fullSeconds: 0,
    times: [0],
    temps: [startC]
  };
  const segments = [];
  let stalled = null;
  for (const [segment, asked] of plan.segments.entries()) {
    const went = fireSegment(run, { asked, segment, rates, roomC, kWhOf });
    if (went === null) {
      stalled = { segment, tempC: run.state.hotC };
      break;
    }
    segments.push(went);
  }
  const endSeconds = stalled === null ? run.seconds : null;
  const cooledTo = coolDown(run, rates, roomC);
  const { tariffPerKWh } = learned;
  const energyKWh = kWhOf(run.fullSeconds);
  return {
    curve: makeCurve(run.times, run.temps),
    segments,
    endSeconds,
    stalled,
    cooledTo,
    energyKWh,
    cost: energyKWh === null || tariffPerKWh === null ? null : energyKWh * tariffPerKWh
  };
}
function energyBy({ power, powerWatt }) {
  return (fullSeconds) => powerWatt === null || power.from !== "output" ? null : fullSeconds * powerWatt / JOULES_PER_KWH;
}
function ratesOf(learned) {
  if (learned.twoNode !== null) return twoNodeRates(learned.twoNode);
  const { cooling, power } = learned;
  return ({ hotC }, { output, roomC }) => {
    const loss = lossKPerSecond(cooling, hotC, roomC);
    const net = power.pullKPerSecond * output - loss;
    return { hotC: net > 0 ? climbShare(hotC) * net : net, brickC: 0 };
  };
}
function fireSegment(run, given) {
  const { asked, segment } = given;
  const fromC = run.state.hotC;
  const startSeconds = run.seconds;
  const startFullSeconds = run.fullSeconds;
  const rising = asked.toC > fromC;
  const wantedKPerSecond = wantedRate(asked, rising);
  let behindFromC = null;
  while (rising ? run.state.hotC < asked.toC - 0.01 : run.state.hotC > asked.toC + 0.01) {
    const before = run.state.hotC;
    step(run, given, towards(asked.toC, wantedKPerSecond));
    const went = (run.state.hotC - before) / STEP_SECONDS;
    const needed = towards(asked.toC, wantedKPerSecond)(before);
    if (Math.abs(went) < STALLED_CPERHOUR / 3600 && Math.abs(needed) > Math.abs(went) * 1.5)
      return null;
    if (asked.rateCPerHour !== "free" && Math.abs(went) < Math.abs(needed) * (1 - BEHIND_SHARE))
      behindFromC ??= before;
  }
  const rampEndSeconds = run.seconds;
  const rampSeconds = rampEndSeconds - startSeconds;
  const rampFullSeconds = run.fullSeconds - startFullSeconds;
  keep(run);
  while (run.seconds < rampEndSeconds + asked.holdSeconds)
    step(run, given, towards(asked.toC, Number.POSITIVE_INFINITY));
  keep(run);
  const plannedSeconds = asked.rateCPerHour === "free" ? rampSeconds : (asked.toC - fromC) / wantedKPerSecond;
  const late = rampSeconds - plannedSeconds;
  const behind = behindFromC !== null && late > BEHIND_SHARE * plannedSeconds;
  return {
    segment,
    fromC,
    toC: asked.toC,
    startSeconds,
    rampEndSeconds,
    endSeconds: run.seconds,
    meanCPerHour: rampSeconds === 0 ? 0 : (asked.toC - fromC) * 3600 / rampSeconds,
    behindSeconds: behind ? late : 0,
    behindFromC: behind ? behindFromC : null,
    rampOutput: rampSeconds === 0 ? 0 : rampFullSeconds / rampSeconds,
    energyKWh: given.kWhOf(run.fullSeconds - startFullSeconds)
  };
}
function wantedRate({ toC, rateCPerHour }, rising) {
  if (rateCPerHour === "free") return rising ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  if (rising !== rateCPerHour > 0)
    throw new RangeError(`predictFiring: ${rateCPerHour} \xB0C/h does not lead to ${toC} \xB0C`);
  return rateCPerHour / 3600;
}
function towards(toC, rateKPerSecond) {
  return (hotC) => {
    const goal = (toC - hotC) / STEP_SECONDS;
    const size = Math.min(Math.abs(goal), Math.abs(rateKPerSecond));
    return Math.sign(goal) * size;
  };
}
function step(run, { rates, roomC }, wanted) {
  const change = (output) => rates(run.state, { output, roomC }).hotC;
  advance(run, rates, { output: outputFor(change, wanted(run.state.hotC)), roomC });
}
function outputFor(change, wantedKPerSecond) {
  if (change(0) >= wantedKPerSecond) return 0;
  if (change(1) <= wantedKPerSecond) return 1;
  const straight = (wantedKPerSecond - change(0)) / (change(1) - change(0));
  if (Math.abs(change(straight) - wantedKPerSecond) < CLOSE_KPERSECOND) return straight;
  let low = 0;
  let high = 1;
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (change(middle) < wantedKPerSecond) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
function advance(run, rates, drive) {
  run.state = stateAfter(rates, run.state, drive, STEP_SECONDS);
  run.seconds += STEP_SECONDS;
  run.fullSeconds += drive.output * STEP_SECONDS;
  if (run.seconds % (KEPT_EVERY * STEP_SECONDS) === 0) keep(run);
}
function keep(run) {
  if (run.times.at(-1) === run.seconds) return;
  run.times.push(run.seconds);
  run.temps.push(run.state.hotC);
}
function coolDown(run, rates, roomC) {
  const reached = [];
  for (const tempC of WAITED_FOR_C) {
    const passed = passedAt(run, tempC);
    if (passed !== null) {
      reached.push({ tempC, seconds: passed });
      continue;
    }
    while (run.state.hotC > tempC) {
      const before = run.state.hotC;
      advance(run, rates, { output: 0, roomC });
      if ((before - run.state.hotC) * 3600 / STEP_SECONDS < STALLED_CPERHOUR) return reached;
    }
    reached.push({ tempC, seconds: run.seconds });
  }
  return reached;
}
function passedAt(run, tempC) {
  if (run.state.hotC > tempC) return null;
  const last = run.temps.findLastIndex((temp) => temp > tempC);
  return last < 0 ? null : run.times[Math.min(last + 1, run.times.length - 1)];
}

// src/core/schedule/predictedRamp.ts
var APART_SECONDS = 300;
function predictedRamp(firing, segment, toC) {
  const went = firing.segments[segment];
  if (went === void 0 || went.rampEndSeconds <= went.startSeconds) return null;
  const { timesSeconds, tempsC } = firing.curve;
  const points = [];
  let lastSeconds = went.startSeconds;
  for (const [i, seconds] of timesSeconds.entries()) {
    if (seconds >= went.rampEndSeconds) break;
    if (seconds < lastSeconds + APART_SECONDS) continue;
    points.push({ seconds: seconds - went.startSeconds, tempC: tempsC[i] });
    lastSeconds = seconds;
  }
  return [...points, { seconds: went.rampEndSeconds - went.startSeconds, tempC: toC }];
}

// src/core/schedule/expandSchedule.ts
var GENTLE_C_PER_HOUR = 60;
function expandSchedule(schedule, options = {}) {
  const kiln = options.kiln ?? REFERENCE_KILN;
  const firing = freeFiring(schedule, kiln);
  const times = [0];
  const temps = [schedule.startC];
  const timeline = [];
  let now = 0;
  let hereC = schedule.startC;
  schedule.segments.forEach((segment, index) => {
    const predicted = firing !== null && segment.rateCPerHour === "free" ? predictedRamp(firing, index, segment.toC) : null;
    const points = predicted ?? rampPoints(segment, hereC, kiln);
    for (const point of points) {
      times.push(now + point.seconds);
      temps.push(point.tempC);
    }
    const rampSeconds = points.at(-1).seconds;
    const base = { segment: index, toC: segment.toC };
    timeline.push({
      ...base,
      kind: "ramp",
      fromC: hereC,
      rateCPerHour: segment.rateCPerHour === "free" ? (segment.toC - hereC) * 3600 / rampSeconds : segment.rateCPerHour,
      assumedRate: segment.rateCPerHour === "free",
      startSeconds: now,
      endSeconds: now + rampSeconds
    });
    now += rampSeconds;
    hereC = segment.toC;
    if (segment.holdSeconds === 0) return;
    timeline.push({
      ...base,
      kind: "hold",
      fromC: hereC,
      rateCPerHour: 0,
      assumedRate: false,
      startSeconds: now,
      endSeconds: now + segment.holdSeconds
    });
    now += segment.holdSeconds;
    times.push(now);
    temps.push(hereC);
  });
  return {
    curve: makeCurve(times, temps),
    timeline,
    assumptions: assumptionsOf(timeline, kiln)
  };
}
function freeFiring(schedule, { learned }) {
  const hasFree = schedule.segments.some(({ rateCPerHour }) => rateCPerHour === "free");
  if (learned === void 0 || !hasFree) return null;
  return predictFiring(learned, { segments: schedule.segments, startC: schedule.startC });
}
function rampPoints(segment, fromC, kiln) {
  const { toC, rateCPerHour } = segment;
  if (toC === fromC) throw new RangeError(`expandSchedule: a segment stays at ${toC} \xB0C`);
  if (rateCPerHour === "free") return freeRamp({ fromC, toC, kiln });
  const seconds = (toC - fromC) * 3600 / rateCPerHour;
  if (!(seconds > 0))
    throw new RangeError(
      `expandSchedule: ${rateCPerHour} \xB0C/h does not lead from ${fromC} to ${toC} \xB0C`
    );
  const isCounted = kiln !== REFERENCE_KILN || -rateCPerHour <= GENTLE_C_PER_HOUR;
  return isCounted && toC < fromC && freeSpeed(kiln, toC, false) < -rateCPerHour ? freeRamp({ fromC, toC, kiln, mostCPerHour: -rateCPerHour }) : [{ seconds, tempC: toC }];
}
function assumptionsOf(timeline, kiln) {
  const assumed = timeline.filter((row) => row.assumedRate);
  const heats = assumed.some((row) => row.toC > row.fromC);
  const cools = assumed.filter((row) => row.toC < row.fromC);
  const sentences = [];
  if (heats) sentences.push(`Full heating is that of ${kiln.basis}.`);
  if (cools.length > 0)
    sentences.push(`Falling by itself is the natural cooling, lid shut, of ${kiln.basis}.`);
  const crawls = cools.some((row) => freeSpeed(kiln, row.toC, false) === SLOWEST_FREE_C_PER_HOUR);
  if (crawls)
    sentences.push(
      "Close to room temperature the fall all but stops; the last of it is counted at 1 \xB0C an hour, or 1.8 \xB0F."
    );
  if (timeline.some((row) => !row.assumedRate && row.kind === "ramp"))
    sentences.push("Programmed ramps are taken to be followed exactly.");
  return sentences;
}

// src/core/schedule/coneAim.ts
var AIM_MARGIN_K = 2;
var NEAR_TOP_K = 5;
var AT_TOP_END_SECONDS = 90;
function aimMarginK(schedule, by) {
  const topIndex = by.topIndex ?? topHoldIndex(schedule);
  if (topIndex === null) return null;
  const untilTop = { ...schedule, segments: schedule.segments.slice(0, topIndex + 1) };
  const { curve } = expandSchedule(untilTop, by.kiln === void 0 ? {} : { kiln: by.kiln });
  const { offsetK } = offsetFor(curve, by);
  const state = coneStateOf(curve, { series: schedule.series, cone: by.cone, offsetK });
  return state === null ? null : state.marginK - AIM_MARGIN_K;
}
function topEndSeconds(schedule, { timeline }) {
  const index = topHoldIndex(schedule);
  if (index === null) return null;
  return timeline.findLast(({ segment }) => segment === index)?.endSeconds ?? null;
}
function topHoldIndex(schedule) {
  const peak = peakSegment(schedule);
  if (peak === null) return null;
  const peakC = schedule.segments[peak.index].toC;
  let index = peak.index;
  while ((schedule.segments[index + 1]?.toC ?? Number.NEGATIVE_INFINITY) >= peakC - NEAR_TOP_K)
    index++;
  return index;
}
function peakSegment(schedule) {
  const { segments, startC } = schedule;
  const before = (index2) => index2 === 0 ? startC : segments[index2 - 1].toC;
  let index = -1;
  segments.forEach((segment, i) => {
    const heats = segment.toC > before(i);
    if (heats && (index < 0 || segment.toC >= segments[index].toC)) index = i;
  });
  if (index < 0) return null;
  const after = segments[index + 1]?.toC ?? Number.NEGATIVE_INFINITY;
  return { index, floorC: Math.max(before(index), after) };
}

// src/core/ware/crossingsOf.ts
var BOTH_WAYS = ["heating", "cooling"];
function crossingsOf(curve, options = {}) {
  const passage = passagesOf(curve);
  return (options.directions ?? BOTH_WAYS).flatMap(
    (direction) => bandsMet(direction).map((band) => ({
      ...passage(band, direction),
      limitCPerHour: null,
      limitFromC: null,
      limitToC: null,
      limitBasis: null,
      limitMeantFor: null,
      isCristobalitic: false,
      severity: null,
      openedC: null,
      strainRatio: null,
      strainRatioLow: null,
      strainRatioHigh: null
    }))
  );
}
function bandsMet(direction) {
  return direction === "heating" ? [CRISTOBALITE_BAND, QUARTZ_BAND] : [QUARTZ_BAND, CRISTOBALITE_BAND];
}

// src/core/ware/limitingRate.ts
var FASTEST_C_PER_HOUR = 3e3;
var SLOWEST_C_PER_HOUR = 0.1;
var NEAR = 2e-3;
var MOST_TRIES = 24;
var FROM_ABOVE_K = 250;
var STEP_K = 4;
function limitingRate(ware, at) {
  const numbers = wareNumbers(ware);
  return rateReaching(at.ratio, (rate) => worstFalling(numbers, at.band, rate));
}
function limitingRateAt(ware, at) {
  const numbers = wareNumbers(ware);
  return rateReaching(at.ratio, (rate) => {
    const state = new Float64Array(STATE_SIZE);
    for (const _ of falling(state, numbers, at.tempC + FROM_ABOVE_K, rate))
      if (meanC(state, WALL) <= at.tempC) break;
    return stressRatio(state, numbers);
  });
}
function worstFalling(numbers, band, rateCPerHour) {
  const state = new Float64Array(STATE_SIZE);
  const states = [];
  for (const kilnC of falling(state, numbers, band.highC + FROM_ABOVE_K, rateCPerHour)) {
    if (kilnC > band.highC) continue;
    if (Math.max(kilnC, state[WALL], state[BASE] + state[LOAD]) < band.lowC) break;
    states.push(state.slice());
  }
  const mismatches = Float64Array.from(states, (each) => mismatch(each, numbers));
  const moments = spacedMoments([...states.keys()], mismatches);
  return Math.max(0, ...moments.map((step2) => stressRatio(states[step2], numbers)));
}
function* falling(state, numbers, fromC, rateCPerHour) {
  atRest(state, fromC);
  const around = shutKiln();
  const by = { around, seconds: STEP_K * 3600 / rateCPerHour };
  for (let kilnC = fromC - STEP_K; kilnC > COLD_C; kilnC -= STEP_K) {
    around.airC = kilnC;
    around.radiantK4 = fourthPowerK(kilnC);
    advanceWare(state, numbers, by);
    yield kilnC;
  }
  by.seconds = 120;
  for (let minutes = 0; minutes < 24 * 60; minutes += 2) {
    advanceWare(state, numbers, by);
    yield COLD_C;
  }
}
var COLD_C = 20;
function rateReaching(mark, ratioOf) {
  if (!(mark > 0)) throw new RangeError(`limitingRate: ratio ${mark}`);
  let high = { rate: FASTEST_C_PER_HOUR, ratio: ratioOf(FASTEST_C_PER_HOUR) };
  if (high.ratio <= mark) return FASTEST_C_PER_HOUR;
  let low = { rate: SLOWEST_C_PER_HOUR, ratio: ratioOf(SLOWEST_C_PER_HOUR) };
  if (low.ratio >= mark) return SLOWEST_C_PER_HOUR;
  let rate = 0;
  for (let i = 0; i < MOST_TRIES; i++) {
    const whole = Math.log(high.rate / low.rate);
    const guess = Math.log(mark / low.ratio) / Math.log(high.ratio / low.ratio);
    const share = i % 3 === 2 ? 0.5 : Math.min(0.95, Math.max(0.05, guess));
    rate = low.rate * Math.exp(whole * share);
    const ratio = ratioOf(rate);
    if (Math.abs(ratio / mark - 1) < NEAR) return rate;
    if (ratio > mark) high = { rate, ratio };
    else low = { rate, ratio };
  }
  return rate;
}

// src/core/schedule/coolingLimits.ts
var COOLING_BANDS = [QUARTZ_BAND, CRISTOBALITE_BAND];
var NOT_YET_K = 20;
var WHY = "computed: at this rate the stress in the ware is half its strength; never checked on cracked pots";
function computedLimits({
  ware,
  meantFor
}) {
  const known = /* @__PURE__ */ new Map();
  return (band) => {
    if (!COOLING_BANDS.some(({ name }) => name === band.name))
      throw new RangeError(`computedLimits: ${band.name}`);
    if (!isJudged({ band: band.name, direction: "cooling" }, ware.body)) return null;
    const limit = known.get(band.name) ?? {
      limitCPerHour: guideOf(ware, band),
      ...partOf(band),
      meantFor,
      why: WHY
    };
    known.set(band.name, limit);
    return limit;
  };
}
var GUIDES = lastAsked(100);
function guideOf(ware, band) {
  return GUIDES.of(
    JSON.stringify([band.name, ware]),
    () => limitingRate(ware, { band, ratio: SAFE_RATIO })
  );
}
function partOf(band) {
  return { fromC: band.highC - NOT_YET_K, toC: band.lowC };
}
function limitedCrossings(curve, options) {
  const { limitFor, ...rest } = options;
  return crossingsOf(curve, rest).map((crossing) => {
    const band = COOLING_BANDS.find((each) => each.name === crossing.band);
    return crossing.direction === "heating" || band === void 0 ? crossing : withLimit(crossing, limitFor(band));
  });
}
function withLimit(crossing, limit) {
  return {
    ...crossing,
    limitCPerHour: limit?.limitCPerHour ?? null,
    limitFromC: limit?.fromC ?? null,
    limitToC: limit?.toC ?? null,
    limitBasis: limit?.why ?? null,
    limitMeantFor: limit?.meantFor ?? null
  };
}
function passageOf({ passages }, crossing) {
  const passage = passages.find(
    ({ band, direction }) => band === crossing.band && direction === crossing.direction
  );
  return passage?.computed ?? null;
}
function withStrain(crossing, computed, body) {
  const isWhole = crossing.measured === "whole" && crossing.openedC === null;
  const isFit = isJudged(crossing, body);
  const known = computed !== null && (isWhole || isFit && strainSeverity(computed.ratio) !== "note") ? computed : null;
  return {
    ...crossing,
    isCristobalitic: hasCristobalite(body),
    severity: known !== null && isFit ? strainSeverity(known.ratio) : null,
    strainRatio: known?.ratio ?? null,
    strainRatioLow: known?.low ?? null,
    strainRatioHigh: known?.high ?? null
  };
}

// src/core/schedule/pieceOf.ts
function pieceOf(ware) {
  return wareOf({
    body: ware.body,
    wallMm: ware.wallMm ?? null,
    baseMm: ware.baseMm ?? null,
    thickestMm: ware.thickestMm,
    widestMm: ware.widestMm,
    heightMm: ware.heightMm,
    stands: ware.stands,
    shelfMm: ware.shelfMm,
    footGapMm: ware.footGapMm,
    glazedSides: ware.glazedSides
  });
}
function limitsFor(ware) {
  return computedLimits(pieceOf(ware));
}

export {
  limitingRate,
  limitingRateAt,
  REFERENCE_KILN,
  predictFiring,
  expandSchedule,
  AT_TOP_END_SECONDS,
  aimMarginK,
  topEndSeconds,
  topHoldIndex,
  peakSegment,
  crossingsOf,
  COOLING_BANDS,
  computedLimits,
  limitedCrossings,
  withLimit,
  passageOf,
  withStrain,
  pieceOf,
  limitsFor
};
