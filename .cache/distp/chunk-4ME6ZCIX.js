import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  CONE_MODELS,
  anchored,
  arrheniusRate,
  equivalentRampRate,
  extrapolationsOf,
  logEffectiveRate,
  marginSigmaK,
  scaledArrheniusIntegral
} from "./chunk-XM3JYZUM.js";
import {
  lastAtOrBefore
} from "./chunk-VFKPH3SJ.js";
import {
  printElapsed
} from "./chunk-IOGTIVWI.js";
import {
  coneIndex,
  kelvinFromCelsius,
  wholeCones
} from "./chunk-R2H4YYDI.js";

// src/core/cones/budget.ts
var FLAT_K = 1e-3;
var IGNORED_FOLDS = 14;
var MOST_BUDGETS = 1e4;
function pieceBudget(model, piece) {
  const { activationKJ, logPreFactor } = model;
  const { fromK, toK } = piece;
  const hours = piece.seconds / 3600;
  if (Math.abs(toK - fromK) < FLAT_K)
    return hours * arrheniusRate(0.5 * (fromK + toK), activationKJ, logPreFactor);
  const rise = scaledArrheniusIntegral(toK, activationKJ, logPreFactor) - scaledArrheniusIntegral(fromK, activationKJ, logPreFactor);
  return hours * rise / (toK - fromK);
}
function cumulateBudget(model, heat, into) {
  const { first, last } = warmBudget(model, heat, into);
  into.fill(0, 0, first);
  into.fill(into[last], last + 1);
}
function warmBudget(model, heat, into) {
  const { timesSeconds, gaps } = heat.curve;
  const peakK = kelvinFromCelsius(heat.peakC) + heat.offsetK;
  const coldK = Math.min(model.endPoint60K, peakK) - IGNORED_FOLDS * model.perFoldK;
  const warm = warmPieces(heat, coldK);
  const known = knownLevels(model, heat, warm);
  let first = warm.first;
  let budget = 0;
  for (const gap of gaps) {
    const end = lastAtOrBefore(timesSeconds, gap.toSeconds);
    if (end < first || end > warm.last) continue;
    const last2 = addPieces(known, { first, last: end - 1, coldK, budget }, into);
    budget = last2 < warm.first ? 0 : into[last2];
    if (budget >= MOST_BUDGETS) return { first: warm.first, last: last2 };
    into[end] = budget;
    first = end + 1;
  }
  const last = addPieces(known, { first, last: warm.last, coldK, budget }, into);
  return { first: warm.first, last: Math.max(last, warm.first) };
}
function knownLevels(model, { curve, offsetK, levels }, warm) {
  const levelOf = levels?.levelOf ?? Int32Array.from(curve.tempsC, (_, i) => i);
  const count = levels?.tempsC.length ?? curve.tempsC.length;
  const integrals = new Float64Array(count);
  const rates = new Float64Array(count);
  const known = { model, curve, offsetK, levelOf, integrals, rates };
  workOut(known, warm);
  return known;
}
function workOut({ model, curve, offsetK, levelOf, integrals }, { first, last }) {
  const { tempsC } = curve;
  const { activationKJ, logPreFactor } = model;
  for (let i = first - 1; i <= last; i++) {
    const level = levelOf[i];
    if (integrals[level] !== 0) continue;
    const tempK = kelvinFromCelsius(tempsC[i]) + offsetK;
    integrals[level] = scaledArrheniusIntegral(tempK, activationKJ, logPreFactor);
  }
}
function addPieces(known, on, into) {
  const { curve, offsetK, levelOf, integrals } = known;
  const { timesSeconds, tempsC } = curve;
  const { last, coldK } = on;
  let { budget } = on;
  let fromSeconds = timesSeconds[on.first - 1];
  let fromK = kelvinFromCelsius(tempsC[on.first - 1]) + offsetK;
  let from = integrals[levelOf[on.first - 1]];
  for (let i = on.first; i <= last; i++) {
    const toSeconds = timesSeconds[i];
    const toK = kelvinFromCelsius(tempsC[i]) + offsetK;
    const to = integrals[levelOf[i]];
    if (fromK >= coldK || toK >= coldK) {
      const hours = (toSeconds - fromSeconds) / 3600;
      const riseK = toK - fromK;
      if (Math.abs(riseK) < FLAT_K) budget += hours * flatRate(known, i, riseK);
      else budget += hours * (to - from) / riseK;
      if (budget >= MOST_BUDGETS) {
        into[i] = MOST_BUDGETS;
        return i;
      }
    }
    into[i] = budget;
    fromSeconds = toSeconds;
    fromK = toK;
    from = to;
  }
  return last;
}
function flatRate(known, index, riseK) {
  const { model, curve, offsetK, levelOf, rates } = known;
  const level = levelOf[index];
  if (riseK === 0 && rates[level] !== 0) return rates[level];
  const toK = kelvinFromCelsius(curve.tempsC[index]) + offsetK;
  const fromK = kelvinFromCelsius(curve.tempsC[index - 1]) + offsetK;
  const rate = arrheniusRate(0.5 * (fromK + toK), model.activationKJ, model.logPreFactor);
  if (riseK === 0) rates[level] = rate;
  return rate;
}
function warmPieces(heat, coldK) {
  const { before, after } = heat.peaks ?? peaksOf(heat.curve.tempsC);
  const isCold = (tempC) => kelvinFromCelsius(tempC) + heat.offsetK < coldK;
  const first = partition(before.length, (i) => isCold(before[i]));
  const last = partition(after.length, (i) => !isCold(after[i])) - 1;
  return { first: Math.max(1, first), last: Math.min(before.length - 1, last + 1) };
}
function partition(count, holds) {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = low + high >> 1;
    if (holds(middle)) low = middle + 1;
    else high = middle;
  }
  return low;
}
function peaksOf(tempsC) {
  const after = new Float64Array(tempsC.length);
  let peakC = Number.NEGATIVE_INFINITY;
  for (let i = tempsC.length - 1; i >= 0; i--) {
    if (tempsC[i] > peakC) peakC = tempsC[i];
    after[i] = peakC;
  }
  return { before: runningPeakC(tempsC), after };
}
function runningPeakC(tempsC) {
  const peaksC = new Float64Array(tempsC.length);
  let peakC = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < tempsC.length; i++) {
    if (tempsC[i] > peakC) peakC = tempsC[i];
    peaksC[i] = peakC;
  }
  return peaksC;
}

// src/core/cones/conePosition.ts
var CHART_SIGMA_K = 3;
function conePosition(series, states) {
  const whole = new Set(wholeCones(series));
  const cones = states.filter((state) => whole.has(state.cone));
  const last = cones.findLastIndex((state) => state.marginK >= 0);
  const below = cones[last];
  const above = cones[last + 1];
  if (below === void 0) return outside(`below cone ${above?.cone}`, null, above?.cone ?? null);
  if (above === void 0) return outside(`cone ${below.cone} or more`, below.cone, null);
  const spacingK = below.marginK - above.marginK;
  const fraction = below.marginK / spacingK;
  const from = coneIndex(below.cone);
  const modelSigmaK = Math.max(below.marginSigmaK, above.marginSigmaK);
  return {
    position: {
      cone: below.cone,
      fraction,
      next: above.cone,
      label: `cone ${below.cone} + ${Math.min(99, Math.round(fraction * 100))} %`,
      index: from + fraction * (coneIndex(above.cone) - from)
    },
    modelSigmaCones: halfSpread(cones, modelSigmaK),
    sigmaCones: (offsetSigmaK) => halfSpread(cones, totalSigmaK(offsetSigmaK, modelSigmaK))
  };
}
function totalSigmaK(offsetSigmaK, marginSigmaK2) {
  return Math.sqrt(offsetSigmaK ** 2 + Math.max(0, marginSigmaK2 ** 2 - CHART_SIGMA_K ** 2));
}
function halfSpread(cones, sigmaK) {
  const high = indexAt(cones, sigmaK);
  const low = indexAt(cones, -sigmaK);
  const here = indexAt(cones, 0);
  if (here === null) return null;
  if (high !== null && low !== null) return (high - low) / 2;
  return high !== null ? high - here : low !== null ? here - low : null;
}
function indexAt(cones, moreK) {
  const last = cones.findLastIndex((state) => state.marginK + moreK >= 0);
  const below = cones[last];
  const above = cones[last + 1];
  if (below === void 0 || above === void 0) return null;
  const from = coneIndex(below.cone);
  const fraction = (below.marginK + moreK) / (below.marginK - above.marginK);
  return from + fraction * (coneIndex(above.cone) - from);
}
function outside(label, cone, next) {
  return {
    position: { cone, fraction: null, next, label, index: null },
    modelSigmaCones: null,
    sigmaCones: () => null
  };
}

// src/core/cones/bend.ts
var LEVELS = [
  { oClock: 0, heatwork: 0.4, low: 0.3, high: 0.5 },
  { oClock: 3, heatwork: 0.8, low: 0.74, high: 0.86 },
  { oClock: 4, heatwork: 0.945, low: 0.93, high: 0.96 },
  { oClock: 6, heatwork: 1, low: 0.985, high: 1.015 }
];
var WELL_PAST = 1.2;
var NEARLY_DOWN = 0.9;
function bendOf(heatwork) {
  if (heatwork < 0.4) return "upright";
  if (heatwork < 0.8) return "starting to bend";
  if (heatwork < NEARLY_DOWN) return "half down";
  if (heatwork < 1) return "nearly down";
  return heatwork > WELL_PAST ? "well past down" : "down";
}
function heatworkAtClock(oClock) {
  const upper = LEVELS.findIndex((level) => level.oClock >= oClock);
  const to = LEVELS[upper] ?? LEVELS.at(-1) ?? LEVELS[0];
  const from = LEVELS[upper - 1] ?? to;
  const share = to === from ? 0 : (oClock - from.oClock) / (to.oClock - from.oClock);
  const between = (a, b) => Math.exp(Math.log(a) + share * Math.log(b / a));
  return {
    heatwork: between(from.heatwork, to.heatwork),
    low: between(from.low, to.low),
    high: between(from.high, to.high)
  };
}

// src/core/cones/followCone.ts
var NOTHING = 1e-300;
function followCone(model, heat, scratch) {
  const peakC = heat.peaksC.at(-1);
  const { curve, offsetK, levels, peaks } = heat;
  const warm = warmBudget(
    model,
    { curve, offsetK, peakC, levels: levels ?? null, ...peaks && { peaks } },
    scratch
  );
  const downAtSeconds = timeDown(model, heat, { budget: scratch, ...warm });
  const logHeatwork = logOf(scratch[warm.last]);
  const peakK = kelvinFromCelsius(peakC) + heat.offsetK;
  const atEnd = anchored(model, peakK, logHeatwork);
  const isDown = downAtSeconds !== null;
  const heatwork = isDown ? Math.max(1, atEnd.heatwork) : atEnd.heatwork;
  return {
    model,
    logHeatwork,
    state: {
      cone: model.cone,
      heatwork,
      marginK: isDown ? Math.max(0, atEnd.marginK) : atEnd.marginK,
      marginSigmaK: marginSigmaK(model, logEffectiveRate(model, peakK, logHeatwork)),
      bend: bendOf(heatwork),
      downAtSeconds
    }
  };
}
function logOf(budget) {
  return Math.log(Math.max(budget, NOTHING));
}
function timeDown(model, heat, { budget, first, last }) {
  const shiftsK = model.shifts.map((shift) => shift.shiftK);
  const enough = Math.exp(2 * Math.min(0, ...shiftsK) / model.perFoldK);
  for (let i = firstAtLeast({ budget, first, last }, enough); i <= last; i++) {
    const before = i === first ? 0 : budget[i - 1];
    if (budget[i] === before && heat.peaksC[i] === heat.peaksC[i - 1]) continue;
    const marginK = marginAt(model, heat, { budget: budget[i], index: i });
    if (marginK >= 0)
      return timeInPiece(model, heat, { before, after: budget[i], index: i });
  }
  return null;
}
function marginAt(model, heat, at) {
  const peakK = kelvinFromCelsius(heat.peaksC[at.index]) + heat.offsetK;
  return anchored(model, peakK, logOf(at.budget)).marginK;
}
function timeInPiece(model, { curve, offsetK, peaksC }, at) {
  const { timesSeconds, tempsC } = curve;
  const start = timesSeconds[at.index - 1];
  const end = timesSeconds[at.index];
  const { before } = at;
  if (before === at.after) return end;
  const fromK = kelvinFromCelsius(tempsC[at.index - 1]) + offsetK;
  const endK = kelvinFromCelsius(tempsC[at.index]) + offsetK;
  const peakBeforeK = kelvinFromCelsius(peaksC[at.index - 1]) + offsetK;
  let low = 0;
  let high = 1;
  while (high - low > 1e-9) {
    const share = 0.5 * (low + high);
    const toK = fromK + share * (endK - fromK);
    const soFar = before + pieceBudget(model, { fromK, toK, seconds: share * (end - start) });
    const isDown = anchored(model, Math.max(peakBeforeK, toK), logOf(soFar)).marginK >= 0;
    if (isDown) high = share;
    else low = share;
  }
  return start + high * (end - start);
}
function firstAtLeast({ budget, first, last }, wanted) {
  let low = first;
  let high = last + 1;
  while (low < high) {
    const middle = low + high >> 1;
    if (budget[middle] < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}

// src/core/cones/lastHundred.ts
var NEAR_PEAK_K = 5;
var STRETCH_K = 100;
function lastHundredCPerHour(curve, peakC) {
  const { timesSeconds, tempsC, gaps } = curve;
  const topC = peakC - NEAR_PEAK_K;
  const bottomC = topC - STRETCH_K;
  const top = tempsC.findIndex((tempC) => tempC >= topC);
  let bottom = top;
  while (bottom > 0 && tempsC[bottom - 1] > bottomC) bottom--;
  if (top < 1 || bottom < 1) return null;
  const from = timesSeconds[bottom - 1];
  const to = timesSeconds[top];
  if (gaps.some((gap) => gap.fromSeconds < to && gap.toSeconds > from)) return null;
  const seconds = timeAt(curve, top, topC) - timeAt(curve, bottom, bottomC);
  return STRETCH_K * 3600 / seconds;
}
function timeAt({ timesSeconds, tempsC }, end, tempC) {
  const fromC = tempsC[end - 1];
  const fromSeconds = timesSeconds[end - 1];
  const share = (tempC - fromC) / (tempsC[end] - fromC);
  return fromSeconds + share * (timesSeconds[end] - fromSeconds);
}

// src/core/cones/levels.ts
var FEWEST_READINGS = 2e3;
var LEAST_SHARE = 4;
var PLACES = 1 << 17;
var NUMBER = new Float64Array(1);
var HALVES = new Int32Array(NUMBER.buffer);
function levelsOf(tempsC) {
  const most = Math.min(PLACES / 2, Math.floor(tempsC.length / LEAST_SHARE));
  if (tempsC.length < FEWEST_READINGS) return null;
  const levelOf = new Int32Array(tempsC.length);
  const levels = new Float64Array(most);
  const table = new Int32Array(PLACES).fill(-1);
  let count = 0;
  for (let i = 0; i < tempsC.length; i++) {
    const tempC = tempsC[i];
    let place = placeOf(tempC);
    while (table[place] >= 0 && levels[table[place]] !== tempC)
      place = place + 1 & PLACES - 1;
    if (table[place] < 0) {
      if (count === most) return null;
      table[place] = count;
      levels[count++] = tempC;
    }
    levelOf[i] = table[place];
  }
  return { levelOf, tempsC: levels.subarray(0, count) };
}
function placeOf(tempC) {
  NUMBER[0] = tempC + 0;
  const mixed = Math.imul(HALVES[0] ^ HALVES[1], 2654435761);
  return mixed >>> 15 & PLACES - 1;
}

// src/core/cones/heatwork.ts
var AS_READ_SIGMA_K = 12;
function heatworkOf(curve, options = {}) {
  const series = options.series ?? "self-supporting";
  const offsetK = options.offsetK ?? 0;
  const offsetSigmaK = options.offsetSigmaK ?? AS_READ_SIGMA_K;
  const { followed, measuredPeakC } = followedCones(CONE_MODELS[series], curve, offsetK);
  const peakC = measuredPeakC + offsetK;
  const cones = followed.map((each) => each.state);
  const placed = conePosition(series, cones);
  const rateCPerHour = effectiveRate(followed, peakC);
  return {
    series,
    position: placed.position,
    sigmaCones: placed.sigmaCones(offsetSigmaK),
    modelSigmaCones: placed.modelSigmaCones,
    offsetK,
    offsetSigmaK,
    offsetIs: options.offsetIs ?? "none",
    peakC,
    lastHundredCPerHour: lastHundredCPerHour(curve, measuredPeakC),
    effectiveRateCPerHour: rateCPerHour,
    extrapolations: extrapolationsOf({ curve, series, peakC: measuredPeakC, rateCPerHour }),
    cones
  };
}
function coneStateOf(curve, of) {
  const models = CONE_MODELS[of.series].filter((model) => model.cone === of.cone);
  const [only] = followedCones(models, curve, of.offsetK).followed;
  return only?.state ?? null;
}
function followedCones(models, curve, offsetK) {
  const peaks = peaksOf(curve.tempsC);
  const peaksC = peaks.before;
  const scratch = new Float64Array(peaksC.length);
  const heat = { curve, offsetK, peaksC, levels: levelsOf(curve.tempsC), peaks };
  return {
    followed: models.map((model) => followCone(model, heat, scratch)),
    measuredPeakC: peaksC.at(-1)
  };
}
function effectiveRate(followed, peakC) {
  const felt = followed.filter((each) => each.state.heatwork > 1e-3 && each.state.heatwork < 1e3);
  const nearest = felt.toSorted((a, b) => Math.abs(a.state.marginK) - Math.abs(b.state.marginK))[0];
  return nearest === void 0 ? null : equivalentRampRate(nearest.model, kelvinFromCelsius(peakC), nearest.logHeatwork);
}

// src/core/cones/usualOffset.ts
var BISQUE_UP_TO_C = 1075;
var GLAZE_FROM_C = 1105;
var BISQUE = { offsetK: 0, sigmaK: 14 };
var GLAZE = { offsetK: 8, sigmaK: 12 };
var USUAL_OFFSET_BASIS = "17 firings reported with the cones that fell, by potters on discussion lists, in books and on their own pages: their cones stood as if the readings had been 8.0 \xB0C (14 \xB0F) hotter on average, with a standard deviation of 12.1 \xB0C (22 \xB0F); the few below cone 1 show no such lead";
var TOLD_SIGMA_K = 6;
function usualOffset(peakC) {
  const way = (peakC - BISQUE_UP_TO_C) / (GLAZE_FROM_C - BISQUE_UP_TO_C);
  const inside = Math.min(1, Math.max(0, way));
  const share = inside * inside * (3 - 2 * inside);
  return {
    offsetK: BISQUE.offsetK + share * (GLAZE.offsetK - BISQUE.offsetK),
    sigmaK: BISQUE.sigmaK + share * (GLAZE.sigmaK - BISQUE.sigmaK)
  };
}
function offsetFor(curve, known) {
  const { offsetK } = known;
  const { offsetSigmaK } = known;
  if (offsetK !== void 0 && offsetK !== null)
    return { offsetK, sigmaK: offsetSigmaK ?? TOLD_SIGMA_K };
  let peakC = Number.NEGATIVE_INFINITY;
  for (const tempC of curve.tempsC) if (tempC > peakC) peakC = tempC;
  const usual = usualOffset(peakC);
  return { offsetK: usual.offsetK, sigmaK: offsetSigmaK ?? usual.sigmaK };
}
function kilnHeatworkOf(curve, known) {
  const { offsetK, sigmaK } = offsetFor(curve, known);
  const isKnown = known.offsetK !== void 0 && known.offsetK !== null;
  return heatworkOf(curve, {
    series: known.series,
    offsetK,
    offsetSigmaK: sigmaK,
    offsetIs: isKnown ? "known" : "usual"
  });
}

// src/core/reports/moments.ts
var DAY_SECONDS = 86400;
function clockText(startOfDaySeconds, atSeconds) {
  if (startOfDaySeconds === null) return null;
  const minutes = Math.round((startOfDaySeconds + atSeconds) / 60);
  const day = Math.floor(minutes / (DAY_SECONDS / 60)) + 1;
  const inDay = minutes - (day - 1) * (DAY_SECONDS / 60);
  const clock = `${two(Math.floor(inDay / 60))}:${two(inDay % 60)}`;
  if (day === 1) return clock;
  return day > 1 ? `${clock}, day ${day}` : `${clock}, the day before`;
}
function momentText(startOfDaySeconds, atSeconds) {
  const clock = clockText(startOfDaySeconds, atSeconds);
  const elapsed = atSeconds < 0 ? `${printElapsed(-atSeconds)} before the start` : `${printElapsed(atSeconds)} after the start`;
  return clock === null ? elapsed : `${elapsed} (${clock})`;
}
function momentLines(startOfDaySeconds, atSeconds) {
  const clock = clockText(startOfDaySeconds, atSeconds);
  return clock === null ? [printElapsed(atSeconds)] : [printElapsed(atSeconds), clock];
}
function momentColumns(what, startOfDaySeconds) {
  const elapsed = { head: { lines: [what, "after", "h:min"] }, align: "right" };
  return startOfDaySeconds === null ? [elapsed] : [elapsed, { head: { lines: [what, "by the", "clock"] }, align: "right" }];
}
function stretchText(startOfDaySeconds, span) {
  const { fromSeconds, toSeconds } = span;
  if (toSeconds - fromSeconds < 60 || fromSeconds < 0)
    return momentText(startOfDaySeconds, fromSeconds);
  const elapsed = `from ${printElapsed(fromSeconds)} to ${printElapsed(toSeconds)} after the start`;
  const from = clockText(startOfDaySeconds, fromSeconds);
  const to = clockText(startOfDaySeconds, toSeconds);
  return from === null || to === null ? elapsed : `${elapsed} (${betweenClocks(from, to)})`;
}
function startOfDayOf(wallTime) {
  const match = /T(\d{2}):(\d{2})(?::(\d{2}))?/.exec(wallTime ?? "");
  if (!match) return null;
  return Number(match[1]) * 3600 + Number(match[2]) * 60 + Number(match[3] ?? 0);
}
function betweenClocks(from, to) {
  const [clock = from, day] = from.split(", ");
  return day !== void 0 && to.endsWith(`, ${day}`) ? `${clock} to ${to}` : `${from} to ${to}`;
}
function two(value) {
  return String(value).padStart(2, "0");
}

export {
  cumulateBudget,
  peaksOf,
  runningPeakC,
  heatworkAtClock,
  followCone,
  logOf,
  CHART_SIGMA_K,
  totalSigmaK,
  levelsOf,
  heatworkOf,
  coneStateOf,
  USUAL_OFFSET_BASIS,
  TOLD_SIGMA_K,
  usualOffset,
  offsetFor,
  kilnHeatworkOf,
  clockText,
  momentText,
  momentLines,
  momentColumns,
  stretchText,
  startOfDayOf
};
