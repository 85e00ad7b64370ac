import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  CRISTOBALITE_BAND,
  QUARTZ_BAND,
  UNALTERED,
  WATCHED,
  WEIBULL,
  followedWare,
  hasCristobalite,
  isFlat,
  lastAsked,
  passagesOf,
  peakOf,
  pieceShape,
  strainedBar,
  temperatureAt,
  wareNumbers,
  worstOpening
} from "./chunk-VFKPH3SJ.js";
import {
  SIGMAS_TO_90,
  drawn,
  seededNormal,
  spreadOf
} from "./chunk-V6QCPP2T.js";
import {
  fillStrainTable,
  newStrainTable
} from "./chunk-GU4RVAU5.js";

// src/core/ware/safeRatio.ts
var SAFE_RATIO = 0.5;

// src/core/ware/strainRisk.ts
var AT_RISK = 0.7;
var LIKELY_TO_BREAK = 1;
var STRAIN_RISK_WORDS = `Low is below ${AT_RISK} of the strength, watch from there to ${LIKELY_TO_BREAK}, high from ${LIKELY_TO_BREAK} on, where a piece is likelier to break than not; guides are taken at ${SAFE_RATIO}. The marks are our own`;
function strainSeverity(ratio) {
  return ratio >= LIKELY_TO_BREAK ? "warning" : ratio >= AT_RISK ? "caution" : "note";
}
function rateSeverity(rateCPerHour, guideCPerHour) {
  return strainSeverity(SAFE_RATIO * rateCPerHour / guideCPerHour);
}
function strainRisk(ratio) {
  const severity = strainSeverity(ratio);
  return severity === "warning" ? "high" : severity === "caution" ? "watch" : "low";
}
function isJudged(passage, body) {
  if (passage.direction === "heating") return false;
  return passage.band !== CRISTOBALITE_BAND.name || hasCristobalite(body);
}
function passageRisk(passage, body) {
  return isJudged(passage, body) ? strainRisk(passage.ratio) : null;
}

// src/core/ware/modelLimits.ts
var CRISTOBALITE_FROM = 0.02;
var THICK_MM = 30;
var POROUS_BELOW_MPA = 20;
function modelLimits({ body, geometry }) {
  const shape = pieceShape(geometry);
  const limits = [];
  if (body.cristobaliteFraction.value < CRISTOBALITE_FROM)
    limits.push({
      topic: "plain shrinkage",
      errs: "too hard",
      why: "without cristobalite, stress below the quartz inversion is plain shrinkage; moving air, which evens out what radiation no longer does, is left out there, and ware is cooled faster than this in practice"
    });
  if (Math.max(shape.baseMm, shape.wallMm) > THICK_MM)
    limits.push({
      topic: "thick body",
      errs: "too hard",
      why: "so thick a piece is taken to stand on its whole underside, though bricks and sculptures stand on edge or hollow and lose heat all round"
    });
  if (body.ruptureMPa.value < POROUS_BELOW_MPA)
    limits.push({
      topic: "porous body",
      errs: "too hard",
      why: "a porous body stops small cracks that a dense one would not, and bears more than its strength says"
    });
  if (isFlat(shape) && geometry.stands !== "on edge")
    limits.push({
      topic: "flat",
      errs: "too hard",
      why: "tiles on edge or on narrow supports lose heat from both faces, and are strained less than flat on a shelf"
    });
  if (geometry.glazedSides !== "none")
    limits.push({
      topic: "glaze",
      errs: "too soft",
      why: "the pull of the glaze is not in it: a tight glaze inside puts some 5 to 19 MPa of tension into a wall of 6 mm"
    });
  if ([body.ruptureMPa, body.youngGPa].some(({ source }) => source.includes("from memory")))
    limits.push({
      topic: "strength from memory",
      errs: "either way",
      why: "strength and stiffness of this body are from memory, not measured on yours"
    });
  return limits;
}

// src/core/ware/strainSpread.ts
var STIFF_AND_STRONG = 0.8;
var SHAPE = { value: 1, low: 0.75, high: 1.4 };
var EXCHANGE = { value: 1, low: 0.7, high: 1.35 };
var HOT_STRAIN = { value: 1, low: 0.8, high: 1.25 };
var MOST_SILICA = 0.95;
function spreadOfMoments(ware, momentsOf, draws) {
  return WATCHED.flatMap(({ band, direction }, i) => {
    const moments = momentsOf(i);
    if (moments.length === 0) return [];
    return [{ band: band.name, direction, ...ratioSpread(ware, moments, draws) }];
  });
}
function ratioSpread(ware, moments, { runs, seed }) {
  if (!(runs >= 10)) throw new RangeError(`ratioSpread: ${runs} runs`);
  if (moments.length === 0) throw new RangeError("ratioSpread: no states");
  const numbers = wareNumbers(ware);
  const ratio = worstBar(numbers, moments, {}) / numbers.strainToFailure;
  if (!(ratio > 0))
    return { low: 0, median: 0, high: 0, shares: { body: 0, strength: 0, shape: 0, kiln: 0 } };
  const effects = effectsOf(ware, numbers, moments);
  const normal = seededNormal(seed);
  const ratios = new Float64Array(runs);
  for (let run = 0; run < runs; run++) {
    let log = 0;
    for (const { low, high } of effects) {
      const sigmas = normal();
      log += Math.abs(sigmas) / SIGMAS_TO_90 * (sigmas < 0 ? low : high);
    }
    ratios[run] = ratio * Math.exp(log + strengthDrawn(ware.body, normal));
  }
  return { ...spreadOf(ratios), shares: sharesOf(effects, ware.body) };
}
function effectsOf(ware, numbers, moments) {
  const { body } = ware;
  const middle = worstBar(numbers, moments, {});
  const effect = (of, altered) => {
    const log = (end) => Math.log(worstBar(numbers, moments, altered(end)) / middle);
    return { of, low: log("low"), high: log("high") };
  };
  const lag = (property) => (end) => ({
    alteration: { ...UNALTERED, lag: property[end] / property.value }
  });
  const linear = (of, property) => ({
    of,
    low: Math.log(property.low),
    high: Math.log(property.high)
  });
  const table = (name) => (end) => ({ table: dilation(body, name, end) });
  return [
    effect("body", table("quartzFraction")),
    effect("body", table("cristobaliteFraction")),
    effect("body", table("matrixExpansionPerK")),
    effect("body", lag(body.densityKgPerM3)),
    effect("body", lag(body.heatCapacityJPerKgK)),
    effect("body", (end) => ({
      alteration: {
        ...UNALTERED,
        deep: body.conductivityWPerMK.value / body.conductivityWPerMK[end]
      }
    })),
    effect("kiln", lag(EXCHANGE)),
    effect("strength", (end) => ({ modulus: WEIBULL[end] })),
    linear("strength", HOT_STRAIN),
    linear("shape", SHAPE)
  ];
}
function worstBar(numbers, moments, altered) {
  const by = { table: numbers.strain, ...altered };
  return Math.max(...moments.map((state) => strainedBar(state, numbers, by)));
}
function dilation(body, moved, end) {
  const at = (name) => body[name][name === moved ? end : "value"];
  const silica = at("quartzFraction") + at("cristobaliteFraction");
  const fit = silica > MOST_SILICA ? MOST_SILICA / silica : 1;
  const table = newStrainTable();
  fillStrainTable(table, {
    quartz: at("quartzFraction") * fit,
    cristobalite: at("cristobaliteFraction") * fit,
    matrixPerK: at("matrixExpansionPerK")
  });
  return table;
}
function strengthDrawn({ youngGPa, ruptureMPa }, normal) {
  const stiff = normal();
  const strong = STIFF_AND_STRONG * stiff + Math.sqrt(1 - STIFF_AND_STRONG * STIFF_AND_STRONG) * normal();
  return Math.log(drawn(youngGPa, stiff) / youngGPa.value) - Math.log(drawn(ruptureMPa, strong) / ruptureMPa.value);
}
function sharesOf(effects, body) {
  const variances = { body: 0, strength: strengthVariance(body), shape: 0, kiln: 0 };
  for (const { of, low, high } of effects) variances[of] += ((high - low) / 2 / SIGMAS_TO_90) ** 2;
  const whole = variances.body + variances.strength + variances.shape + variances.kiln;
  return {
    body: variances.body / whole,
    strength: variances.strength / whole,
    shape: variances.shape / whole,
    kiln: variances.kiln / whole
  };
}
function strengthVariance({ youngGPa, ruptureMPa }) {
  const sigma = ({ low, high }) => low > 0 && high > 0 ? Math.log(high / low) / 2 / SIGMAS_TO_90 : 0;
  const [stiff, strong] = [sigma(youngGPa), sigma(ruptureMPa)];
  return stiff * stiff + strong * strong - 2 * STIFF_AND_STRONG * stiff * strong;
}

// src/core/ware/openingStrain.ts
var WAYS = ["lid opened", "lifted out"];
var NOTHING = { body: 0, strength: 0, shape: 0, kiln: 0 };
var OPENINGS = lastAsked(200);
function openingStrains(ware, tempsC, draws) {
  const piece = JSON.stringify([ware, draws]);
  return tempsC.flatMap(
    (tempC) => WAYS.map(
      (way) => OPENINGS.of(`${way} ${tempC} ${piece}`, () => openingStrain(ware, { tempC, way }, draws))
    )
  );
}
function openingStrain(ware, { tempC, way }, draws) {
  const { ratio, moments } = worstOpening(wareNumbers(ware), tempC, way);
  if (moments.length === 0) return { way, tempC, ratio, low: 0, high: 0, shares: NOTHING };
  const { low, high, shares } = ratioSpread(ware, moments, draws);
  return { way, tempC, ratio, low: Math.min(low, ratio), high: Math.max(high, ratio), shares };
}

// src/core/ware/passageSpan.ts
function passageSpan(curve, strain, worst) {
  const { lowC, highC } = worst.band === QUARTZ_BAND.name ? QUARTZ_BAND : CRISTOBALITE_BAND;
  const peakSeconds = peakOf(curve).seconds;
  let [fromSeconds, toSeconds] = [worst.atSeconds, worst.atSeconds];
  for (const [i, seconds] of strain.timesSeconds.entries()) {
    const heating = seconds < peakSeconds;
    if (heating !== (worst.direction === "heating")) continue;
    const kilnC = temperatureAt(curve, seconds);
    if (kilnC === null) continue;
    const parts = [kilnC, strain.wallC[i], strain.baseC[i]];
    const within = heating ? kilnC >= lowC && Math.min(...parts) <= highC : kilnC <= highC && Math.max(...parts) >= lowC;
    if (!within) continue;
    fromSeconds = Math.min(fromSeconds, seconds);
    toSeconds = Math.max(toSeconds, seconds);
  }
  return { fromSeconds, toSeconds };
}

// src/core/ware/pieceStrain.ts
var STRAIN_DRAWS = { runs: 200, seed: 1 };
function pieceStrain(curve, piece, openedC = []) {
  const { name, ware, state } = piece;
  const { strain, moments } = followedWare(curve, ware);
  return {
    name,
    ware,
    state,
    strain,
    passages: passages(curve, piece, { strain, moments }),
    heating: heatingOf(state),
    openings: openingStrains(ware, openedC, STRAIN_DRAWS),
    limits: modelLimits(ware)
  };
}
function heatingOf(state) {
  if (state === null) return "state not known";
  return state === "bisqued" || state === "glazed on bisque" ? "computed" : "raw";
}
function passages(curve, { ware, state }, { strain, moments }) {
  const spreads = spreadOfMoments(ware, moments, STRAIN_DRAWS);
  const passage = passagesOf(curve);
  return WATCHED.flatMap(({ band, direction }) => {
    const isThis = (each) => each.band === band.name && each.direction === direction;
    const worst = strain.worst.find(isThis);
    const spread = spreads.find(isThis);
    if (worst === void 0 || spread === void 0) return [];
    const measured = passage(band, direction).measured === "whole" ? "whole" : "partly";
    const known = direction === "cooling" || heatingOf(state) === "computed";
    const computed = known ? {
      ratio: worst.ratio,
      low: Math.min(spread.low, worst.ratio),
      high: Math.max(spread.high, worst.ratio),
      shares: spread.shares,
      atSeconds: worst.atSeconds,
      tempC: worst.tempC,
      ...passageSpan(curve, strain, worst)
    } : null;
    return [{ band: band.name, direction, measured, computed }];
  });
}

export {
  SAFE_RATIO,
  STRAIN_RISK_WORDS,
  strainSeverity,
  rateSeverity,
  strainRisk,
  isJudged,
  passageRisk,
  openingStrains,
  STRAIN_DRAWS,
  pieceStrain,
  heatingOf
};
