import type { z } from "zod";
import { statementText } from "../../findings/Finding.ts";
import { scheduleYaml } from "../../schedule/scheduleFile.ts";
import type {
  FiringStudy,
  FitStudy,
  GlazeOnClay,
  GlazeStudy,
  GroupRatio,
  SpacingFit,
} from "../../trials/FiringStudy.ts";
import type { NextTest } from "../../trials/NextTest.ts";
import type { CoefficientInterval } from "../../trials/profileInterval.ts";
import type { GlazesCompared } from "../../trials/studyFirings.ts";
import type { Tile } from "../../trials/Tile.ts";
import type { TileFit } from "../../trials/tileFits.ts";
import type {
  confoundingShape,
  fitsShape,
  glazesComparedShape,
  nextShape,
  spacingShape,
  tileShape,
  trialsShape,
} from "./trialsShape.ts";

/** A study as its part of the document; charts' curves are left out. */
export function trialsPiece(study: FiringStudy): z.infer<typeof trialsShape> {
  const { firings, differences, tiles, confounding, glazes, fits, next } = study;
  return {
    facts: firings.map(({ title, record, facts }) => ({
      title,
      record,
      facts: facts.map(({ name, kind, value, sigma, sensorSigma }) => ({
        name,
        kind,
        value,
        sigma,
        sensorSigma,
      })),
    })),
    differences: differences.map(({ name, low, high, apart, sigma, verdict }) => ({
      name,
      low,
      high,
      apart,
      sigma,
      verdict,
    })),
    tiles: tiles.tiles.map(tilePiece),
    leftOut: tiles.leftOut.map((each) => ({ ...each })),
    confounding: confounding && structuredCopy(confounding),
    spacing: glazes.map(spacingPiece),
    glazesCompared: study.glazesCompared && comparedPiece(study.glazesCompared),
    fits: fits && fitsPiece(fits),
    next: next && nextPiece(next),
  };
}

function structuredCopy(
  confounding: NonNullable<FiringStudy["confounding"]>,
): z.infer<typeof confoundingShape> {
  const { causes, pairs, together, jointly, constant, everyOwn, unknown } = confounding;
  return {
    tiles: confounding.tiles,
    causes: causes.map(({ name, levels }) => ({ name, levels: [...levels] })),
    pairs: pairs.map((pair) => ({ ...pair, because: [...pair.because] })),
    together: together.map((each) => ({ causes: [...each.causes], because: [...each.because] })),
    jointly: jointly.map(({ cause, others }) => ({ cause, others: [...others] })),
    constant: constant.map((each) => ({ ...each })),
    everyOwn: [...everyOwn],
    unknown: [...unknown],
  };
}

function tilePiece(tile: Tile): z.infer<typeof tileShape> {
  const { firing, piece, clay, glaze, coat, glazedSides, shape, place, spacing, cracked } = tile;
  const measured = spacing.kind === "measured" ? spacing : null;
  return {
    firing,
    piece,
    clay,
    glaze,
    coatMm: coat.firedMm,
    coatSigmaMm: coat.sigmaMm,
    glazedSides,
    shape,
    place,
    spacing: spacing.kind,
    pitchMm: spacing.kind === "uncracked" ? spacing.atLeastMm : (measured?.pitchMm ?? null),
    pitchLowMm: measured?.lowMm ?? null,
    pitchHighMm: measured?.highMm ?? null,
    interceptMm: measured?.interceptMm ?? null,
    lines: measured?.lines ?? 0,
    lengthMm: measured?.lengthMm ?? 0,
    crossings: measured?.crossings ?? 0,
    directions: measured?.directions.map((each) => ({ ...each })) ?? [],
    alongOverAcross: measured?.alongOverAcross ?? null,
    stain: tile.stain,
    pings: tile.pings?.count ?? null,
    cracked,
  };
}

function spacingPiece({ glaze, spacing, problems }: GlazeStudy): z.infer<typeof spacingShape> {
  return {
    glaze,
    why: problems.map(({ what, expected }) => `${what}; it takes ${expected}`),
    fit: spacing && fitPiece(spacing),
  };
}

function fitPiece(value: SpacingFit): NonNullable<z.infer<typeof spacingShape>["fit"]> {
  return {
    tiles: value.tiles,
    uncracked: value.uncracked,
    firings: value.firings,
    coatsMm: { ...value.coatsMm },
    exponent: intervalPiece(value.exponent),
    exponentAsRead: value.exponentAsRead,
    exponentIfExact: intervalPiece(value.exponentIfExact),
    coatErrorAssumed: value.coatErrorAssumed,
    reliability: value.reliability,
    tileSigma: value.tileSigma,
    lineSigma: value.lineSigma,
    icc: value.icc,
    effectiveLines: value.effectiveLines,
    ratios: value.ratios.map(ratioPiece),
    untold: value.untold.map(({ factor, level, against }) => ({ factor, level, against })),
  };
}

function comparedPiece(compared: GlazesCompared): z.infer<typeof glazesComparedShape> {
  return {
    tiles: compared.tiles,
    ratios: compared.ratios.map(ratioPiece),
    untold: compared.untold.map(({ factor, level, against }) => ({ factor, level, against })),
    exponents: compared.slopes.map(({ level, exponent, tiles }) => ({
      glaze: level,
      exponent: intervalPiece(exponent),
      tiles,
    })),
  };
}

function ratioPiece({ ratio, test, ...group }: GroupRatio) {
  return {
    factor: group.factor,
    level: group.level,
    against: group.against,
    ratio: intervalPiece(ratio),
    tiles: group.tiles,
    tilesAgainst: group.tilesAgainst,
    isShared: group.isShared,
    p: test?.p ?? null,
    leastP: test?.leastP ?? null,
  };
}

function intervalPiece({ value, low, high }: CoefficientInterval) {
  const ended = (end: number) => (Number.isFinite(end) ? end : null);
  return { value, low: ended(low), high: ended(high) };
}

function nextPiece({ firing, tiles, open }: NextTest): z.infer<typeof nextShape> {
  return {
    firing: firing && {
      kind: firing.kind,
      follows: firing.follows,
      change: statementText(
        { topic: firing.kind, statement: firing.change, evidence: firing.evidence },
        "C",
      ),
      reason: firing.reason,
      scheduleYaml: firing.schedule && scheduleYaml(firing.schedule),
      onKiln: firing.onKiln && {
        basis: firing.onKiln.basis,
        isEased: firing.onKiln.isEased,
        findings: firing.onKiln.findings.map((finding) => ({
          severity: finding.severity,
          statement: statementText(finding, "C"),
        })),
      },
    },
    tiles: tiles && {
      ...tiles,
      tiles: tiles.tiles.map((tile) => ({ ...tile })),
      wanted: tiles.wanted.map((each) => ({ ...each })),
    },
    open: [...open],
  };
}

type Fits = z.infer<typeof fitsShape>;

/** Fits as their part of the document. */
function fitsPiece({ pairs, fits, leftOut }: FitStudy): Fits {
  return {
    pairs: pairs.map(pairPiece),
    tiles: fits.map(tileFitPiece),
    leftOut: leftOut.map(({ firing, piece, why }) => ({ firing, piece, why })),
  };
}

function pairPiece(pair: GlazeOnClay): Fits["pairs"][number] {
  return {
    glaze: pair.glaze,
    clay: pair.clay,
    body: pair.bodyName,
    expansionFrom: pair.expansionFrom,
    tiles: pair.tiles,
    computedPerK: { ...pair.computedPerK },
    found: pair.found.map((each) => ({ ...each, perK: { ...each.perK } })),
    foundOverExpected: pair.foundOverExpected && { ...pair.foundOverExpected },
    expectedIsFor: pair.expectedIsFor,
    expected: pair.expected.map((point) => ({ ...point })),
  };
}

function tileFitPiece({
  firing,
  piece,
  expected,
  crackingShare,
  measured,
}: TileFit): Fits["tiles"][number] {
  return {
    firing,
    piece,
    expected: { ...expected },
    crackingShare,
    found: measured.map(({ from, holds, mismatchPerK, glazePerK, agrees, ping }) => ({
      from,
      holds,
      perK: { ...mismatchPerK },
      glazePerK: { ...glazePerK },
      agrees,
      pingC: ping?.onsetC ?? null,
    })),
  };
}
