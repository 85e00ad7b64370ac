import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  CRACK_KINDS
} from "./chunk-OGOFPCXR.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/reports/documents/shapes.ts
var seconds = external_exports.number().describe("seconds after the start");
var text = external_exports.string();
var number = external_exports.number();
var nothingOr = (schema) => schema.nullable();
var positive = external_exports.int().nonnegative();
var opening = (command) => ({
  schemaVersion: external_exports.literal(1),
  ok: external_exports.literal(true),
  command: external_exports.literal(command)
});
var propertyShape = external_exports.strictObject({
  value: number,
  low: number.describe("one in ten is lower"),
  high: number.describe("one in ten is higher"),
  source: text
}).describe("what is taken, what it may be, and who says so");
var bodyShape = external_exports.strictObject({
  name: text,
  densityKgPerM3: propertyShape,
  heatCapacityJPerKgK: propertyShape,
  conductivityWPerMK: propertyShape,
  youngGPa: propertyShape,
  ruptureMPa: propertyShape,
  quartzFraction: propertyShape,
  cristobaliteFraction: propertyShape,
  matrixExpansionPerK: propertyShape
});
var cautionShape = external_exports.strictObject({ topic: text, text });
var evidenceShape = external_exports.strictObject({
  name: text,
  value: number,
  kind: external_exports.enum([
    "temperature",
    "difference",
    "rate",
    "duration",
    "elapsed",
    "ratio",
    "percent",
    "count",
    "cones"
  ]),
  unit: external_exports.enum(["\xB0C", "K", "\xB0C/h", "s", "1"])
});
var findingShape = external_exports.strictObject({
  topic: text,
  severity: external_exports.enum(["note", "caution", "warning"]),
  text: text.describe("the statement, numbers in place, \xB0C"),
  advice: text.describe("what to do next; empty when there is nothing"),
  evidence: external_exports.array(evidenceShape),
  basis: text,
  zone: nothingOr(text),
  span: nothingOr(external_exports.strictObject({ fromSeconds: seconds, toSeconds: seconds }))
});
var openingInLogShape = external_exports.strictObject({
  how: external_exports.enum(["opened", "let air in"]).describe("a lid opened, or less: propped, a vent, a fan"),
  atSeconds: seconds,
  plusMinusSeconds: number,
  tempC: number,
  plusMinusK: number,
  beforeCPerHour: number,
  afterCPerHour: number,
  ownCPerHour: number.describe("what the shut kiln would have fallen at")
});
var crackKind = external_exports.enum(Object.keys(CRACK_KINDS));
var posterior = number.min(0).max(1).describe("probability; all causes together make 1");
var likelihood = external_exports.enum(["likely", "possible", "unlikely"]).describe("from 60 %, from 15 %, below");
var diagnosisShape = external_exports.strictObject({
  canSay: external_exports.boolean().describe("whether any cause reaches 40 %"),
  causes: external_exports.array(
    external_exports.strictObject({
      kind: crackKind,
      name: text,
      posterior,
      likelihood,
      standing: external_exports.enum(["speaks for", "open", "speaks against"]).describe("likely, possible, unlikely in older words"),
      balance: external_exports.int().describe("weights for it minus weights against it; 1 weak, 2 fair, 3 strong"),
      evidence: external_exports.array(
        external_exports.strictObject({
          question: text,
          direction: external_exports.enum(["for", "against"]),
          weight: external_exports.enum(["weak", "fair", "strong"]),
          ratio: number.describe("how many times as probable under this kind as under all others"),
          text: text.describe("the statement, numbers in place, \xB0C"),
          evidence: external_exports.array(evidenceShape),
          basis: text
        })
      )
    })
  ),
  pieces: external_exports.array(
    external_exports.strictObject({
      piece: nothingOr(text),
      what: external_exports.enum(["cracked", "flaked", "crackled", "not known"]),
      count: external_exports.int(),
      causes: external_exports.array(external_exports.strictObject({ kind: crackKind, name: text, posterior, likelihood }))
    })
  ).describe("each piece or kind of piece by itself"),
  tellApart: external_exports.array(
    external_exports.strictObject({
      ask: text,
      look: text,
      gainBits: number.describe("uncertainty that its answer takes away, on the whole"),
      answers: external_exports.array(
        external_exports.strictObject({
          answer: text,
          speaksFor: nothingOr(crackKind),
          speaksAgainst: nothingOr(crackKind)
        })
      )
    })
  ).describe("the two questions that would move it most"),
  linesToRecord: external_exports.array(text).describe("lines of YAML for the firing record")
});
var crossingShape = external_exports.strictObject({
  band: text,
  direction: external_exports.enum(["heating", "cooling"]),
  fromC: number,
  toC: number,
  measured: external_exports.enum(["whole", "partly", "no"]),
  startSeconds: nothingOr(seconds),
  endSeconds: nothingOr(seconds),
  seconds: nothingOr(number.describe("time from first entering to last leaving")),
  meanCPerHour: nothingOr(number),
  fastestCPerHour: nothingOr(number),
  fastestAtSeconds: nothingOr(seconds),
  windowMinutes: nothingOr(number),
  recrossings: positive,
  notes: external_exports.array(text),
  limitCPerHour: nothingOr(
    number.describe("the guide: rate at which the stress is half the strength, positive")
  ),
  limitFromC: nothingOr(number.describe("part of the band in which the guide is to be kept")),
  limitToC: nothingOr(number),
  limitBasis: nothingOr(text),
  limitMeantFor: nothingOr(text),
  cristobalitic: external_exports.boolean().describe("the ware's body has cristobalite, 2 % or more"),
  severity: nothingOr(
    external_exports.enum(["note", "caution", "warning"]).describe("by the stress; null where it is not judged")
  ),
  openedC: nothingOr(number.describe("the kiln was opened in it or before it, at this")),
  strainRatio: nothingOr(
    number.describe("computed stress over strength; good to a factor of two either way")
  ),
  strainRatioLow: nothingOr(
    number.describe("its 10 % point by what body, strength, shape and kiln may be")
  ),
  strainRatioHigh: nothingOr(
    number.describe("its 90 % point by what body, strength, shape and kiln may be")
  )
});
var risk = external_exports.enum(["low", "watch", "high"]).describe("below 0.7, to 1, from 1 on, by the number alone: our own marks");
var sharesShape = external_exports.strictObject({ body: number, strength: number, shape: number, kiln: number }).describe("shares of the variance of the logarithm, which add up to 1");
var strainShape = external_exports.strictObject({
  piece: text,
  body: text,
  state: nothingOr(text.describe("how it went into the kiln")),
  heating: external_exports.enum(["computed", "raw", "state not known"]).describe("whether the way up is computed, and if not why"),
  draws: external_exports.int().describe("draws of the body behind every low and high"),
  seed: external_exports.int(),
  passages: external_exports.array(
    external_exports.strictObject({
      band: text,
      direction: external_exports.enum(["heating", "cooling"]),
      measured: external_exports.enum(["whole", "partly"]).describe("partly: a gap or an end hides some of it, so the ratio is understated"),
      ratio: nothingOr(number.describe("worst stress over strength; null where not computed")),
      low: nothingOr(number.describe("10 % point by what body, strength, shape and kiln may be")),
      high: nothingOr(number.describe("90 % point by what body, strength, shape and kiln may be")),
      shares: nothingOr(sharesShape),
      risk: nothingOr(risk),
      atSeconds: nothingOr(seconds),
      tempC: nothingOr(number.describe("of the kiln at the worst moment")),
      fromSeconds: nothingOr(seconds),
      toSeconds: nothingOr(seconds)
    })
  ),
  openings: external_exports.array(
    external_exports.strictObject({
      way: external_exports.enum(["lid opened", "lifted out"]),
      tempC: number,
      ratio: number,
      low: number,
      high: number,
      shares: sharesShape,
      risk
    })
  ),
  limits: external_exports.array(
    external_exports.strictObject({
      topic: text,
      errs: external_exports.enum(["too hard", "too soft", "either way"]),
      why: text
    })
  ).describe("what the computed stress does not know about this piece, or knows too hard")
});
var ownSegmentShape = external_exports.strictObject({
  segment: external_exports.int().describe("index of the segment, from 0"),
  fromC: number,
  toC: number,
  askedCPerHour: nothingOr(number.describe("falling negative; null where the file says free")),
  meanCPerHour: number,
  startSeconds: seconds,
  rampEndSeconds: seconds,
  endSeconds: seconds,
  behindSeconds: number.describe("longer than asked; 0 on a free ramp"),
  behindFromC: nothingOr(number.describe("where it first cannot follow")),
  rampOutput: number.describe("mean share of full power over the ramp, 0 to 1"),
  energyKWh: nothingOr(number)
});
var heatworkShape = external_exports.strictObject({
  series: text,
  cone: nothingOr(text.describe("last cone that is down")),
  fraction: nothingOr(number.describe("share of the way to the next cone, 0 to 1")),
  next: nothingOr(text),
  label: text,
  sigmaCones: nothingOr(number.describe("one standard deviation")),
  modelSigmaCones: nothingOr(number),
  offsetK: number.describe("added to the readings first"),
  offsetSigmaK: number.describe("one standard deviation of that offset"),
  offsetIs: external_exports.enum(["none", "usual", "known"]).describe("nothing allowed for, what kilns are usually out by, or from witness cones or told"),
  peakC: number,
  lastHundredCPerHour: nothingOr(number),
  effectiveRateCPerHour: nothingOr(number),
  extrapolations: external_exports.array(text),
  cones: external_exports.array(
    external_exports.strictObject({
      cone: text,
      heatwork: number.describe("share of the budget of the cone; 1 is down"),
      marginK: number,
      marginSigmaK: number,
      bend: external_exports.enum([
        "upright",
        "starting to bend",
        "half down",
        "nearly down",
        "down",
        "well past down"
      ]),
      downAtSeconds: nothingOr(seconds)
    })
  )
});
var ownKilnShape = external_exports.strictObject({
  segments: external_exports.array(ownSegmentShape).describe("those that it gets through"),
  stall: nothingOr(
    external_exports.strictObject({
      segment: external_exports.int().describe("index of the segment, from 0"),
      tempC: number.describe("as far as it gets"),
      toC: number.describe("where the segment was to go"),
      rising: external_exports.boolean(),
      beforePeak: external_exports.boolean()
    })
  ),
  endSeconds: nothingOr(seconds.describe("end of the programme; null where it stalls")),
  cooledTo: external_exports.array(external_exports.strictObject({ tempC: number, seconds })).describe("power off, lid shut"),
  powerFrom: external_exports.enum(["output", "fastest climb"]).describe("fastest climb: the least that the kiln can do"),
  energyKWh: nothingOr(number.describe("up to the stall, where it stalls; null without a wattage")),
  cost: nothingOr(number.describe("in the money of the tariff; null without one")),
  heatwork: heatworkShape
});

export {
  opening,
  bodyShape,
  cautionShape,
  evidenceShape,
  findingShape,
  openingInLogShape,
  diagnosisShape,
  crossingShape,
  strainShape,
  heatworkShape,
  ownKilnShape
};
