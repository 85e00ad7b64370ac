import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  distinctBodies,
  linesToRecord,
  ordered,
  tellingApart
} from "./chunk-VFKPH3SJ.js";
import {
  SAYABLE_FROM
} from "./chunk-OGOFPCXR.js";
import {
  adviceText,
  statementText
} from "./chunk-GU4RVAU5.js";

// src/core/reports/documents/pieces.ts
var UNITS = {
  temperature: "\xB0C",
  difference: "K",
  rate: "\xB0C/h",
  duration: "s",
  elapsed: "s",
  ratio: "1",
  percent: "1",
  count: "1",
  cones: "1"
};
function findingsPiece(findings) {
  return ordered(findings).map((finding) => ({
    topic: finding.topic,
    severity: finding.severity,
    text: statementText(finding, "C"),
    advice: adviceText(finding, "C"),
    evidence: evidencePiece(finding.evidence),
    basis: finding.basis,
    zone: finding.zone,
    span: finding.span === null ? null : { ...finding.span }
  }));
}
function evidencePiece(evidence) {
  return evidence.map(({ name, value, kind }) => ({ name, value, kind, unit: UNITS[kind] }));
}
function diagnosisPiece(causes, pieces = []) {
  if (causes.length === 0) return null;
  return {
    canSay: (causes[0]?.posterior ?? 0) >= SAYABLE_FROM,
    causes: causes.map(({ kind, name, posterior, likelihood, standing, balance, evidence }) => ({
      kind,
      name,
      posterior,
      likelihood,
      standing,
      balance,
      evidence: evidence.map((each) => ({
        question: each.question,
        direction: each.direction,
        weight: each.weight,
        ratio: each.ratio,
        text: statementText({ ...each, topic: each.question }, "C"),
        evidence: evidencePiece(each.evidence),
        basis: each.basis
      }))
    })),
    pieces: pieces.map((piece) => ({
      ...piece,
      causes: piece.causes.map((cause) => ({ ...cause }))
    })),
    tellApart: tellingApart(causes).map(({ ask, look, gainBits, answers }) => ({
      ask,
      look,
      gainBits,
      answers: answers.map((each) => ({ ...each }))
    })),
    linesToRecord: [...linesToRecord(causes)]
  };
}
function crossingsPiece(crossings) {
  return crossings.map((crossing) => ({
    band: crossing.band,
    direction: crossing.direction,
    fromC: crossing.fromC,
    toC: crossing.toC,
    measured: crossing.measured,
    startSeconds: crossing.startSeconds,
    endSeconds: crossing.endSeconds,
    seconds: crossing.seconds,
    meanCPerHour: crossing.meanCPerHour,
    fastestCPerHour: crossing.fastestCPerHour,
    fastestAtSeconds: crossing.fastestAtSeconds,
    windowMinutes: crossing.windowMinutes,
    recrossings: crossing.recrossings,
    notes: [...crossing.notes],
    limitCPerHour: crossing.limitCPerHour,
    limitFromC: crossing.limitFromC,
    limitToC: crossing.limitToC,
    limitBasis: crossing.limitBasis,
    limitMeantFor: crossing.limitMeantFor,
    cristobalitic: crossing.isCristobalitic,
    severity: crossing.severity,
    openedC: crossing.openedC,
    strainRatio: crossing.strainRatio,
    strainRatioLow: crossing.strainRatioLow,
    strainRatioHigh: crossing.strainRatioHigh
  }));
}
function heatworkPiece(heatwork) {
  const { position } = heatwork;
  return {
    series: heatwork.series,
    cone: position.cone,
    fraction: position.fraction,
    next: position.next,
    label: position.label,
    sigmaCones: heatwork.sigmaCones,
    modelSigmaCones: heatwork.modelSigmaCones,
    offsetK: heatwork.offsetK,
    offsetSigmaK: heatwork.offsetSigmaK,
    offsetIs: heatwork.offsetIs,
    peakC: heatwork.peakC,
    lastHundredCPerHour: heatwork.lastHundredCPerHour,
    effectiveRateCPerHour: heatwork.effectiveRateCPerHour,
    extrapolations: [...heatwork.extrapolations],
    cones: heatwork.cones.map((state) => ({
      cone: state.cone,
      heatwork: state.heatwork,
      marginK: state.marginK,
      marginSigmaK: state.marginSigmaK,
      bend: state.bend,
      downAtSeconds: state.downAtSeconds
    }))
  };
}
function bodiesPiece(wares) {
  return distinctBodies(wares).map((body) => ({
    name: body.name,
    densityKgPerM3: { ...body.densityKgPerM3 },
    heatCapacityJPerKgK: { ...body.heatCapacityJPerKgK },
    conductivityWPerMK: { ...body.conductivityWPerMK },
    youngGPa: { ...body.youngGPa },
    ruptureMPa: { ...body.ruptureMPa },
    quartzFraction: { ...body.quartzFraction },
    cristobaliteFraction: { ...body.cristobaliteFraction },
    matrixExpansionPerK: { ...body.matrixExpansionPerK }
  }));
}
function cautionsPiece(cautions) {
  return cautions.filter((caution, at) => cautions.findIndex(({ text }) => text === caution.text) === at).map(({ topic, text }) => ({ topic, text }));
}

export {
  findingsPiece,
  evidencePiece,
  diagnosisPiece,
  crossingsPiece,
  heatworkPiece,
  bodiesPiece,
  cautionsPiece
};
