import { z } from "zod";
import type { Heatwork } from "../../cones/cone.ts";
import {
  type DiagnosedCause,
  type DiagnosedPiece,
  SAYABLE_FROM,
} from "../../diagnosis/Diagnosis.ts";
import { linesToRecord, tellingApart } from "../../diagnosis/tellingApart.ts";
import {
  adviceText,
  type Evidence,
  type EvidenceKind,
  type Finding,
  ordered,
  statementText,
} from "../../findings/Finding.ts";
import type { Problem } from "../../problem.ts";
import { distinctBodies } from "../../ware/bodies.ts";
import type { Crossing } from "../../ware/inversions.ts";
import { type PieceStrain, STRAIN_DRAWS } from "../../ware/pieceStrain.ts";
import { passageRisk, strainRisk } from "../../ware/strainRisk.ts";
import type { Ware } from "../../ware/Ware.ts";
import type {
  bodyShape,
  crossingShape,
  diagnosisShape,
  findingShape,
  heatworkShape,
  strainShape,
} from "./shapes.ts";

const UNITS: Readonly<Record<EvidenceKind, "°C" | "K" | "°C/h" | "s" | "1">> = {
  temperature: "°C",
  difference: "K",
  rate: "°C/h",
  duration: "s",
  elapsed: "s",
  ratio: "1",
  percent: "1",
  count: "1",
  cones: "1",
};

/** Findings as they stand in a document: worst first, sentences in °C, numbers unrounded. */
export function findingsPiece(findings: readonly Finding[]): z.infer<typeof findingShape>[] {
  return ordered(findings).map((finding) => ({
    topic: finding.topic,
    severity: finding.severity,
    text: statementText(finding, "C"),
    advice: adviceText(finding, "C"),
    evidence: evidencePiece(finding.evidence),
    basis: finding.basis,
    zone: finding.zone,
    span: finding.span === null ? null : { ...finding.span },
  }));
}

/** Numbers of evidence with their units, unrounded. */
export function evidencePiece(
  evidence: readonly Evidence[],
): z.infer<typeof findingShape>["evidence"] {
  return evidence.map(({ name, value, kind }) => ({ name, value, kind, unit: UNITS[kind] }));
}

/** What speaks for which kind of crack as it stands in a document; null when nothing was weighed. */
export function diagnosisPiece(
  causes: readonly DiagnosedCause[],
  pieces: readonly DiagnosedPiece[] = [],
): z.infer<typeof diagnosisShape> | null {
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
        basis: each.basis,
      })),
    })),
    pieces: pieces.map((piece) => ({
      ...piece,
      causes: piece.causes.map((cause) => ({ ...cause })),
    })),
    tellApart: tellingApart(causes).map(({ ask, look, gainBits, answers }) => ({
      ask,
      look,
      gainBits,
      answers: answers.map((each) => ({ ...each })),
    })),
    linesToRecord: [...linesToRecord(causes)],
  };
}

/** Crossings as they stand in a document. */
export function crossingsPiece(crossings: readonly Crossing[]): z.infer<typeof crossingShape>[] {
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
    strainRatioHigh: crossing.strainRatioHigh,
  }));
}

/** The answer of the cone model as it stands in a document. */
export function heatworkPiece(heatwork: Heatwork): z.infer<typeof heatworkShape> {
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
      downAtSeconds: state.downAtSeconds,
    })),
  };
}

/** The bodies of some ware as they stand in a document, each once. */
export function bodiesPiece(wares: readonly Ware[]): z.infer<typeof bodyShape>[] {
  return distinctBodies(wares).map((body) => ({
    name: body.name,
    densityKgPerM3: { ...body.densityKgPerM3 },
    heatCapacityJPerKgK: { ...body.heatCapacityJPerKgK },
    conductivityWPerMK: { ...body.conductivityWPerMK },
    youngGPa: { ...body.youngGPa },
    ruptureMPa: { ...body.ruptureMPa },
    quartzFraction: { ...body.quartzFraction },
    cristobaliteFraction: { ...body.cristobaliteFraction },
    matrixExpansionPerK: { ...body.matrixExpansionPerK },
  }));
}

/** Cautions as they stand in a document, each once. */
export function cautionsPiece(
  cautions: readonly { readonly topic: string; readonly text: string }[],
): { topic: string; text: string }[] {
  return cautions
    .filter((caution, at) => cautions.findIndex(({ text }) => text === caution.text) === at)
    .map(({ topic, text }) => ({ topic, text }));
}

/** The stress in each piece as it stands in a document. */
export function strainsPiece(strains: readonly PieceStrain[]): z.infer<typeof strainShape>[] {
  return strains.map((strained) => ({
    piece: strained.name,
    body: strained.ware.body.name,
    state: strained.state,
    heating: strained.heating,
    draws: STRAIN_DRAWS.runs,
    seed: STRAIN_DRAWS.seed,
    passages: strained.passages.map(({ band, direction, measured, computed }) => ({
      band,
      direction,
      measured,
      ratio: computed?.ratio ?? null,
      low: computed?.low ?? null,
      high: computed?.high ?? null,
      shares: computed?.shares ?? null,
      risk:
        computed === null
          ? null
          : passageRisk({ band, direction, ratio: computed.ratio }, strained.ware.body),
      atSeconds: computed?.atSeconds ?? null,
      tempC: computed?.tempC ?? null,
      fromSeconds: computed?.fromSeconds ?? null,
      toSeconds: computed?.toSeconds ?? null,
    })),
    openings: strained.openings.map(({ way, tempC, ratio, low, high, shares }) => ({
      way,
      tempC,
      ratio,
      low,
      high,
      shares,
      risk: strainRisk(ratio),
    })),
    limits: strained.limits.map((limit) => ({ ...limit })),
  }));
}

/** Problems as any document holds them; at least one. */
export const problemsShape = z
  .array(
    z.strictObject({
      code: z
        .string()
        .regex(/^[^/]+\/[^/]+$/)
        .describe("stable name: room/kebab"),
      what: z.string(),
      where: z.string(),
      expected: z.string(),
      fix: z.string(),
    }),
  )
  .min(1);

/** The document of any command that could not answer. */
export const problemDocumentSchema = z.strictObject({
  schemaVersion: z.literal(1),
  ok: z.literal(false),
  problems: problemsShape,
});

/** What any command prints with `--json` when it could not answer. */
export type ProblemDocument = z.infer<typeof problemDocumentSchema>;

/** Problems as their JSON document; at least one, else a RangeError. */
export function problemDocument(problems: readonly Problem[]): ProblemDocument {
  if (problems.length === 0) throw new RangeError("problemDocument: needs at least one problem");
  return {
    schemaVersion: 1,
    ok: false,
    problems: problems.map(({ code, what, where, expected, fix }) => ({
      code,
      what,
      where,
      expected,
      fix,
    })),
  };
}
