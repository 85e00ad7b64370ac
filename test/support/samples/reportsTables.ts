import type { ConeInput, ConesInput } from "../../../src/core/reports/coneBlocks.ts";
import type { ComparedFiring, Comparison } from "../../../src/core/review/compareFirings.ts";
import { hours, sampleCautions, sampleCurve } from "./reports.ts";

/** One column of a comparison. */
export function sampleCompared(overrides: Partial<ComparedFiring> = {}): ComparedFiring {
  return {
    title: "14 March, second firing",
    zone: "upper",
    aligned: sampleCurve(),
    peakC: 1187.3,
    coneLabel: "cone 5 + 40 %",
    coneIndex: 4.4,
    sigmaCones: 0.58,
    lastHundredCPerHour: 59.7,
    secondsWithinFiveOfPeak: 1320,
    secondsAbove1100C: 8160,
    quartzCooling: { meanCPerHour: -71.4, fastestCPerHour: -83.6 },
    cristobaliteCooling: { meanCPerHour: -39.4, fastestCPerHour: -46.2 },
    lastReadingC: 64.2,
    totalSeconds: hours(26),
    warnings: 1,
    ...overrides,
  };
}

/** Four firings, one of which ended before the cristobalite inversion. */
export function sampleComparison(overrides: Partial<Comparison> = {}): Comparison {
  return {
    thermocoupleShifts: [],
    firings: [
      sampleCompared(),
      sampleCompared({
        title: "21 March, slow cool",
        peakC: 1181.2,
        coneLabel: "cone 5 + 10 %",
        coneIndex: 4.1,
        quartzCooling: { meanCPerHour: -44.1, fastestCPerHour: -49.3 },
        warnings: 0,
      }),
      sampleCompared({
        title: "28 March, opened early",
        cristobaliteCooling: { meanCPerHour: null, fastestCPerHour: null },
        lastReadingC: 241,
        totalSeconds: hours(18.7),
        warnings: 2,
      }),
      sampleCompared({
        title: "4 April, test of the lower shelf",
        zone: "lower",
        coneLabel: "cone 14 or more",
        coneIndex: null,
        sigmaCones: null,
      }),
    ],
    cautions: sampleCautions(),
    ...overrides,
  };
}

/** A small invented table in which every confidence occurs and one cell is missing. */
export function sampleCones(overrides: Partial<ConesInput> = {}): ConesInput {
  const cell = (tempC: number, confidence: "two-copies" | "one-copy" | "from-memory") => ({
    tempC,
    confidence,
  });
  return {
    series: "self-supporting",
    ratesCPerHour: [15, 60, 150],
    rows: [
      {
        cone: "x1",
        cells: [cell(1141, "two-copies"), cell(1162, "one-copy"), cell(1171, "two-copies")],
      },
      { cone: "x2", cells: [cell(1165, "from-memory"), cell(1186, "two-copies"), null] },
    ],
    sources: ["An invented chart, p. 2"],
    ...overrides,
  };
}

/** What rates do to an invented cone. */
export function sampleCone(overrides: Partial<ConeInput> = {}): ConeInput {
  return {
    series: "self-supporting",
    cone: "5",
    rows: [
      {
        rateCPerHour: 10,
        tempC: 1156.2,
        sigmaK: 6.2,
        basis: "model",
        confidence: null,
        extrapolated: false,
      },
      {
        rateCPerHour: 60,
        tempC: 1186,
        sigmaK: 0.4,
        basis: "printed",
        confidence: "two-copies",
        extrapolated: false,
      },
      {
        rateCPerHour: 300,
        tempC: 1214.8,
        sigmaK: 9.7,
        basis: "model",
        confidence: null,
        extrapolated: true,
      },
    ],
    printedCPerHour: [15, 60, 150],
    sources: ["An invented chart, p. 2"],
    ...overrides,
  };
}
